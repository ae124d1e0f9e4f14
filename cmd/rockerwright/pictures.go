package main

import (
	"fmt"
	"io"
	"path/filepath"

	"github.com/spf13/cobra"

	"rockerwright/plots"
)

// A drawing says where pictures go.
type drawing struct {
	folder, format string
	replace        bool
}

// flags adds the options of a command that draws, what says in a word or two what.
func (to *drawing) flags(cmd *cobra.Command, what string) {
	f := cmd.Flags()
	f.StringVar(&to.folder, "pictures", "", "draw "+what+" into this `folder`")
	f.StringVar(&to.format, "format", "svg", "of the pictures: svg or pdf")
	f.BoolVar(&to.replace, "replace", false, replaceFlag)
}

// pictures draws pictures where a folder is named for them, and says so unless it is to be quiet.
func (to drawing) pictures(out io.Writer, quiet bool, designs []string, pictures func() []plots.Picture) error {
	if to.folder == "" {
		return nil
	}
	if quiet {
		out = io.Discard
	}
	return to.draw(out, "--pictures", designs, pictures())
}

// draw draws pictures into the folder, all of them or none, and says which files were drawn. option is
// what the folder was named by. No design file is written over.
func (to drawing) draw(out io.Writer, option string, designs []string, pictures []plots.Picture) error {
	format := plots.Format(to.format)
	if format != plots.SVG && format != plots.PDF {
		return fmt.Errorf("--format is svg or pdf; %q is neither", to.format)
	}
	if err := outputFolder(option, to.folder); err != nil {
		return err
	}
	var files []output
	for _, picture := range pictures {
		path := filepath.Join(to.folder, picture.Name+"."+string(format))
		files = append(files, output{path, func(w io.Writer) error { return picture.Draw(w, format) }})
	}
	err := writeOutputs(files, designs, to.replace, "Choose another folder, or add --replace")
	for _, f := range files {
		if err == nil {
			_, err = fmt.Fprintf(out, "Drew %s\n", f.path)
		}
	}
	return err
}
