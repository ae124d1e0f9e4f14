package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/papers"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// laying is a call of layout.
type laying struct {
	telling
	paper, spacing string
}

func layoutCommand() *cobra.Command {
	l := laying{telling: telling{all: true}}
	cmd := &cobra.Command{
		Use:   "layout [FILE] [section.key=value…]",
		Short: "full-size patterns, a card for the bench, a cut list",
		Long: `Writes a folder beside FILE, "mine-layout" for mine.toml: a bench card and a check
sheet, the rocker and its form at full size on paper to be glued, the legs, a cut
list, and outlines as DXF and SVG for those who cut by machine. With no FILE it lays
out the built-in reading chair in this folder.

The folder is written whole or not at all, and one that is there is kept unless
--replace. What is not drawn is taken, and every page says so: legs ([[leg]] at, rake,
splay, size, block), the rocker's depth, width, top, sole and ends, how it is made
(rocker.made = sawn, laminated or steamed), [[panel]] for coopered work, and [shop]
for paper, stations, saw, planer and boards.

Paper: ` + strings.Join(papers.Sizes(), ", ") + `; letter or A4 goes with the units.`,
		Example: `  rockerwright layout mine.toml
  rockerwright layout mine.toml --paper "roll 36 in" --spacing 1
  rockerwright layout mine.toml rocker.made=sawn rocker.wood="black walnut"`,
		RunE: l.run,
	}
	f := cmd.Flags()
	f.StringVar(&l.paper, "paper", "", "print the patterns on this `paper`")
	f.StringVar(&l.spacing, "spacing", "", "`distance` between the stations of the rocker (2 in or 50 mm)")
	f.BoolVar(&l.replace, "replace", false, "make a layout anew that is already there")
	return cmd
}

func (l *laying) run(cmd *cobra.Command, args []string) error {
	paths, f, err := readOne(args, "layout lays out one design at a time;")
	if err != nil {
		return err
	}
	options := layout.Options{}
	if l.spacing != "" {
		options.Spacing, err = quantity.Parse(l.spacing, quantity.Length, f.Design.Units)
		if err == nil && options.Spacing <= 0 {
			err = fmt.Errorf("stations are more than 0 apart; %s is not", l.spacing)
		}
		if err != nil {
			return fmt.Errorf("--spacing: %w", err)
		}
	}
	made, files, err := papers.Of(f, l.paper, options)
	if err != nil {
		return err
	}
	folder := "reading-chair-layout"
	if len(paths) > 0 { // beside the design
		folder = strings.TrimSuffix(paths[0], filepath.Ext(paths[0])) + "-layout"
	}
	if err := writeFolder(folder, files, l.replace); err != nil {
		return err
	}
	var pages []words.Laid
	for _, file := range files {
		pages = append(pages, words.Laid{Name: file.Name, Pages: file.Pages})
	}
	return l.tell(cmd, paths, answer{
		sheet: func() sheet.Sheet { return words.LaidOut(made, folder, pages) },
		fails: !made.Report.Holds(),
	})
}
