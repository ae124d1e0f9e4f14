package main

import (
	"cmp"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/pattern"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// layoutFlags are the options of layout.
type layoutFlags struct {
	paper, spacing string
	replace        bool
}

func layoutCommand() *cobra.Command {
	var flags layoutFlags
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

Paper: ` + strings.Join(paperNames(), ", ") + `; letter or A4 goes with the units.`,
		Example: `  rockerwright layout mine.toml
  rockerwright layout mine.toml --paper "roll 36 in" --spacing 1
  rockerwright layout mine.toml rocker.made=sawn rocker.wood="black walnut"`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return lay(cmd.OutOrStdout(), args, flags)
		},
	}
	f := cmd.Flags()
	f.StringVar(&flags.paper, "paper", "", "print the patterns on this `paper`")
	f.StringVar(&flags.spacing, "spacing", "", "`distance` between the stations of the rocker (2 in or 50 mm)")
	f.BoolVar(&flags.replace, "replace", false, "make a layout anew that is already there")
	return cmd
}

// paperNames lists the papers.
func paperNames() []string {
	var names []string
	for _, p := range pattern.Papers() {
		names = append(names, p.Name)
	}
	return names
}

// lay answers one call of the layout command.
func lay(out io.Writer, args []string, flags layoutFlags) error {
	paths, f, err := readOne(args, "layout lays out one design at a time;")
	if err != nil {
		return err
	}
	options := layout.Options{}
	if flags.spacing != "" {
		if options.Spacing, err = quantity.Parse(flags.spacing, quantity.Length, f.Design.Units); err == nil && options.Spacing <= 0 {
			err = fmt.Errorf("stations are more than 0 apart; %s is not", flags.spacing)
		}
		if err != nil {
			return fmt.Errorf("--spacing: %w", err)
		}
	}
	l, files, err := laid(f, flags.paper, options)
	if err != nil {
		return err
	}
	folder := folderFor(paths)
	if err := writeFolder(folder, files, flags.replace); err != nil {
		return err
	}
	var pages []words.Laid
	for _, file := range files {
		pages = append(pages, words.Laid{Name: file.name, Pages: file.pages})
	}
	if err := words.LaidOut(l, folder, pages).Text(out, true, isTerminal(out)); err != nil {
		return err
	}
	if !l.Report.Holds() {
		return errLimit
	}
	return nil
}

// laid lays out a design on the paper asked for, and returns its files.
func laid(f *design.File, asked string, options layout.Options) (layout.Layout, []laidFile, error) {
	paper, err := paperFor(f, asked)
	if err != nil {
		return layout.Layout{}, nil, err
	}
	l, err := layout.Of(f.Design, options)
	if err != nil {
		return l, nil, f.Explain(err)
	}
	set := setOf(l, f, paper)
	set.asked = asked != ""
	files, err := set.files()
	if err != nil {
		return l, nil, f.Explain(err)
	}
	return l, files, nil
}

// paperFor returns the paper asked for, by the call, by the design, or by its units.
func paperFor(f *design.File, asked string) (pattern.Paper, error) {
	name := cmp.Or(asked, f.Design.Shop.Paper)
	if name == "" {
		return sheetFor(f.Design.Units), nil
	}
	paper, err := pattern.PaperNamed(name)
	if err == nil {
		return paper, nil
	}
	reason := strings.TrimPrefix(err.Error(), "pattern: ")
	if asked != "" {
		return paper, fmt.Errorf("--paper: %s", reason)
	}
	return paper, f.Explain(&piece.KeyError{Key: "shop.paper", Reason: reason, Give: "paper"})
}

// sheetFor returns the sheet of paper that goes with units.
func sheetFor(units quantity.System) pattern.Paper {
	name := "letter"
	if units == quantity.Metric {
		name = "A4"
	}
	paper, err := pattern.PaperNamed(name)
	if err != nil {
		panic(err) // it is in the table
	}
	return paper
}

// folderFor returns the folder of a layout, beside the design.
func folderFor(paths []string) string {
	if len(paths) == 0 {
		return "reading-chair-layout"
	}
	return strings.TrimSuffix(paths[0], filepath.Ext(paths[0])) + "-layout"
}
