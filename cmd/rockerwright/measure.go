package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/scene"
	"rockerwright/plots/sheets"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// measuring is a call of measure.
type measuring struct {
	telling
	units string // of the blank sheets
}

func measureCommand() *cobra.Command {
	m := measuring{telling: telling{all: true}}
	cmd := &cobra.Command{
		Use:   "measure [FILE] [section.key=value…]",
		Short: "print sheets to measure on, or say what the readings in FILE tell",
		Long: `Without FILE it writes three blank sheets, a page each, to print and fill in: one for
a person, one for a finished piece, and one for balancing it with a level. Their numbers
are those in the comments of a new design.

With FILE it says what the readings under [measured] tell of the piece: its weight,
balance point and inertia and the curve of its rockers, how surely, which reading
limits each and how to better it, and whether the two rockers are one curve. The file
stays as it is; check uses the readings directly.`,
		Example: `  rockerwright measure
  rockerwright measure --units metric --into sheets
  rockerwright measure mine.toml`,
		RunE: m.run,
	}
	f := cmd.Flags()
	m.jsonFlag(cmd)
	f.StringVar(&m.folder, "into", ".", "write the blank sheets into this `folder`")
	f.StringVar(&m.units, "units", "inch", "of the blank sheets: inch (letter paper) or metric (A4)")
	f.StringVar(&m.format, "format", "pdf", "of the blank sheets: pdf or svg")
	f.BoolVar(&m.replace, "replace", false, replaceFlag)
	return cmd
}

func (m *measuring) run(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		units, known := map[string]quantity.System{"inch": quantity.Inch, "metric": quantity.Metric}[m.units]
		if !known {
			return fmt.Errorf("--units is inch or metric; %q is neither", m.units)
		}
		pages := []scene.Picture{sheets.Person(units), sheets.Piece(units), sheets.Level(units)}
		return m.draw(cmd.OutOrStdout(), "--into", nil, pages)
	}
	const does = "measure explains one design at a time;"
	files, f, err := readOne(args, does)
	if err == nil && len(files) == 0 {
		err = notOne(does)
	}
	if err != nil {
		return err
	}
	found, err := check.Examine(f.Design)
	if err != nil {
		return f.Explain(err)
	}
	return m.tell(cmd, files, answer{
		sheet: func() sheet.Sheet { return words.Measure(found, f.Name) },
		json:  func() any { return wire.Measure(found) },
	})
}
