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

// draw draws pictures into a folder, all of them or none, and returns the files. option is
// what the folder was named by. No design file is written over.
func draw(pictures []plots.Picture, option string, to drawing, designs []string) (drawn []string, err error) {
	format := plots.Format(to.format)
	if format != plots.SVG && format != plots.PDF {
		return nil, fmt.Errorf("--format is svg or pdf; %q is neither", to.format)
	}
	if err := outputFolder(option, to.folder); err != nil {
		return nil, err
	}
	var files []output
	for _, picture := range pictures {
		path := filepath.Join(to.folder, picture.Name+"."+string(format))
		files = append(files, output{path, func(w io.Writer) error { return picture.Draw(w, format) }})
		drawn = append(drawn, path)
	}
	return drawn, writeOutputs(files, designs, to.replace, "Choose another folder, or add --replace")
}

// list says which files were drawn.
func list(out io.Writer, drawn []string) error {
	for _, path := range drawn {
		if _, err := fmt.Fprintf(out, "Drew %s\n", path); err != nil {
			return err
		}
	}
	return nil
}
