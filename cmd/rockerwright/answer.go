package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/plots/scene"
)

// errFails is returned by a command whose answer is that something does not hold.
var errFails = errors.New("a limit does not hold, or a case misses its answer")

// An answer is what a command found. Its parts are made as they are asked for.
type answer struct {
	sheet    func() sheet.Sheet
	letter   func() sheet.Sheet     // for --text
	json     func() any             // for --json
	printed  func(io.Writer) error  // in place of these three, as a table or into a file; nil where they are asked for
	pictures func() []scene.Picture // nil where there is nothing to draw
	fails    bool
}

// telling are the options on how an answer is told, which several commands share.
type telling struct {
	all, json, text bool
	folder, format  string // of pictures
	replace         bool   // files that are there are written over
}

// jsonFlag adds the option of a command whose answer a program reads.
func (to *telling) jsonFlag(cmd *cobra.Command) {
	cmd.Flags().BoolVar(&to.json, "json", false, "the numbers for a program: SI units, degrees")
}

// picturesFlags adds the options of a command that draws, what says in a word or two what.
func (to *telling) picturesFlags(cmd *cobra.Command, what string) {
	f := cmd.Flags()
	f.StringVar(&to.folder, "pictures", "", "draw "+what+" into this `folder`")
	f.StringVar(&to.format, "format", "svg", "of the pictures: svg or pdf")
	f.BoolVar(&to.replace, "replace", false, replaceFlag)
}

// tell draws and prints an answer to a question about designs. The error is errFails where something does not hold.
func (to *telling) tell(cmd *cobra.Command, designs []string, a answer) error {
	out := cmd.OutOrStdout()
	if to.folder != "" && a.pictures != nil {
		drawn := out
		if to.json || a.printed != nil { // a program reads the rest
			drawn = io.Discard
		}
		if err := to.draw(drawn, "--pictures", designs, a.pictures()); err != nil {
			return err
		}
	}
	var err error
	switch {
	case a.printed != nil:
		err = a.printed(out)
	case to.json:
		err = wire.Print(out, a.json())
	case to.text:
		err = a.letter().Text(out, true, false)
	default:
		err = a.sheet().Text(out, to.all, isTerminal(out))
	}
	if err == nil && a.fails {
		err = errFails
	}
	return err
}

// isTerminal reports whether bold may be used: out is a terminal, and NO_COLOR is not set.
func isTerminal(out io.Writer) bool {
	f, ok := out.(*os.File)
	return ok && os.Getenv("NO_COLOR") == "" && term.IsTerminal(int(f.Fd()))
}

// draw draws pictures into the folder, all of them or none, and says which files were drawn. option is
// what the folder was named by. No design file is written over.
func (to *telling) draw(out io.Writer, option string, designs []string, pictures []scene.Picture) error {
	format := scene.Format(to.format)
	if format != scene.SVG && format != scene.PDF {
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
	for i := 0; i < len(files) && err == nil; i++ {
		_, err = fmt.Fprintf(out, "Drew %s\n", files[i].path)
	}
	return err
}
