package main

import (
	"encoding/json"
	"fmt"
	"io"
	"math"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/rocker/rises"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/readings"
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
		encoder := json.NewEncoder(out)
		encoder.SetEscapeHTML(false)
		return encoder.Encode(findingsOf(f.Design, findings))
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

type findingsJSON struct {
	Design  string       `json:"design"`
	Values  []valueJSON  `json:"values"`
	Doubts  []doubtJSON  `json:"doubts"`
	Rockers []rockerJSON `json:"rockers"`
	One     *bool        `json:"rockers_one_curve"` // null where only one was read
	Apart   number       `json:"rockers_apart_m"`
}

type valueJSON struct {
	Name      string `json:"name"` // its unit at the end
	Value     number `json:"value"`
	Uncertain number `json:"uncertain_95"`
	Limits    string `json:"limited_by"`
}

type doubtJSON struct {
	Reading  string `json:"reading"`
	Read     number `json:"read"`
	Expected number `json:"expected"`
}

type rockerJSON struct {
	Side     string    `json:"side"`
	Arcs     []arcJSON `json:"arcs"`
	Explains bool      `json:"explained"`
	Suspect  *int      `json:"suspect_station"` // from 1 at the nose; null where none is
}

type arcJSON struct {
	Radius    number `json:"radius_m"`
	Uncertain number `json:"uncertain_95_m"`
	From      number `json:"from_m"`
	To        number `json:"to_m"`
}

func findingsOf(d piece.Design, f check.Findings) findingsJSON {
	j := findingsJSON{Design: d.Title, Values: []valueJSON{}, Doubts: []doubtJSON{}, Rockers: []rockerJSON{}, Apart: number(math.NaN())}
	if f.Result != nil {
		for _, v := range []struct {
			name  string
			value readings.Value
		}{{"mass_kg", f.Result.Mass}, {"ahead_m", f.Result.Ahead}, {"above_m", f.Result.Above}, {"inertia_kgm2", f.Result.Inertia}} {
			j.Values = append(j.Values, valueJSON{v.name, number(v.value.Value), number(v.value.Uncertain), v.value.Limits()})
		}
		for _, d := range f.Result.Doubts {
			j.Doubts = append(j.Doubts, doubtJSON{d.Reading, number(d.Read), number(d.Expected)})
		}
	}
	if c := f.Curve; c != nil {
		for _, side := range []struct {
			name string
			fit  *rises.Fit
		}{{"drawn", c.Drawn}, {"left", c.Left}, {"right", c.Right}} {
			if side.fit != nil {
				j.Rockers = append(j.Rockers, rockerOf(side.name, side.fit))
			}
		}
		if c.Left != nil && c.Right != nil {
			j.One, j.Apart = &c.One, number(math.Abs(c.Apart))
		}
	}
	return j
}

func rockerOf(side string, f *rises.Fit) rockerJSON {
	j := rockerJSON{Side: side, Explains: f.Explains}
	for _, a := range f.Arcs {
		j.Arcs = append(j.Arcs, arcJSON{number(a.Radius), number(a.Uncertain), number(a.From), number(a.To)})
	}
	if f.Suspect >= 0 {
		station := f.Suspect + 1
		j.Suspect = &station
	}
	return j
}
