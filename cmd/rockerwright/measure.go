package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// measureFlags are the options of measure.
type measureFlags struct {
	json   bool
	units  string
	sheets drawing
}

func measureCommand() *cobra.Command {
	var flags measureFlags
	cmd := &cobra.Command{
		Use:   "measure [FILE] [section.key=value…]",
		Short: "print sheets to measure on, or say what the readings in FILE tell",
		Long: `Without FILE it writes two blank sheets, one for a person and one for a finished
piece, a page each, to print and fill in. Their numbers are those in the comments of
a new design.

With FILE it says what the readings under [measured] tell of the piece: its weight,
balance point and inertia and the curve of its rockers, how surely, which reading
limits each and how to better it, and whether the two rockers are one curve. The file
stays as it is; check uses the readings directly.`,
		Example: `  rockerwright measure
  rockerwright measure --units metric --into sheets
  rockerwright measure mine.toml`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return measure(cmd.OutOrStdout(), args, flags)
		},
	}
	f := cmd.Flags()
	f.BoolVar(&flags.json, "json", false, "the numbers for a program: SI units, degrees")
	f.StringVar(&flags.sheets.folder, "into", ".", "write the blank sheets into this `folder`")
	f.StringVar(&flags.units, "units", "inch", "of the blank sheets: inch (letter paper) or metric (A4)")
	f.StringVar(&flags.sheets.format, "format", "pdf", "of the blank sheets: pdf or svg")
	f.BoolVar(&flags.sheets.replace, "replace", false, replaceFlag)
	return cmd
}

// measure answers one call of the measure command.
func measure(out io.Writer, args []string, flags measureFlags) error {
	if len(args) == 0 {
		return blankSheets(out, flags)
	}
	const does = "measure explains one design at a time;"
	files, f, err := readOne(args, does)
	if err == nil && len(files) == 0 {
		err = notOne(does)
	}
	if err != nil {
		return err
	}
	findings, err := check.Examine(f.Design)
	if err != nil {
		return f.Explain(err)
	}
	if flags.json {
		return wire.Print(out, wire.Measure(f.Design, findings))
	}
	return words.Measure(f.Design, findings, f.Name).Text(out, true, isTerminal(out))
}

// blankSheets writes the two sheets.
func blankSheets(out io.Writer, flags measureFlags) error {
	units, known := map[string]quantity.System{"inch": quantity.Inch, "metric": quantity.Metric}[flags.units]
	if !known {
		return fmt.Errorf("--units is inch or metric; %q is neither", flags.units)
	}
	sheets := []plots.Picture{plots.PersonSheet(units), plots.PieceSheet(units)}
	return flags.sheets.draw(out, "--into", nil, sheets)
}
