package main

import (
	"fmt"
	"io"
	"math"
	"os"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// mostColumns is how many designs fit side by side in 80 columns.
const mostColumns = 5

// checkFlags are the options of check.
type checkFlags struct {
	all, json bool
	release   string
	pictures  drawing
}

func checkCommand() *cobra.Command {
	var flags checkFlags
	cmd := &cobra.Command{
		Use:   "check [FILE…] [section.key=value…]",
		Short: "say where a design rests, how it rocks, how near to going over",
		Long: `Says where a design rests (empty, sitting, lying back), how long a rock takes and
how near it is to going over. With no FILE it checks the built-in reading chair.

After FILE, change any entry of the design for this answer; the file stays as it is.
Several values, parted by commas, or several files, stand side by side; here the
decimal sign is a point.`,
		Example: `  rockerwright check mine.toml
  rockerwright check mine.toml rocker.tail=20-1/2
  rockerwright check mine.toml rocker.radius=36,39,42,48
  rockerwright check mine.toml "sitter.1.weight=95 kg"
  rockerwright check mine.toml hers.toml
  rockerwright check mine.toml --pictures drawings --format pdf`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return answerCheck(cmd.OutOrStdout(), args, flags)
		},
	}
	help := cmd.HelpFunc()
	cmd.SetHelpFunc(func(cmd *cobra.Command, args []string) { // the long list only where it is read
		cmd.Long += "\n\n" + entries()
		help(cmd, args)
	})
	f := cmd.Flags()
	f.BoolVar(&flags.all, "all", false, "every load and limit, times of a rock, assumptions, cautions")
	f.BoolVar(&flags.json, "json", false, "the numbers for a program: SI units, degrees")
	f.StringVar(&flags.release, "release", "", "let go from these `degrees` from rest, - forward, as in 5,15,-10")
	flags.pictures.flags(cmd, "the pictures")
	return cmd
}

// welcome checks the built-in chair and says what to do next.
func welcome(cmd *cobra.Command) error {
	out := cmd.OutOrStdout()
	err := answerCheck(out, nil, checkFlags{})
	if err != nil {
		return err
	}
	_, err = fmt.Fprintln(out, "That was a built-in example. Make your own: rockerwright new chair mine.toml")
	return err
}

// check answers one call of the check command.
func answerCheck(out io.Writer, args []string, flags checkFlags) error {
	degrees, err := releases(flags.release)
	if err != nil {
		return err
	}
	files, variants, err := readDesigns(args)
	if err != nil {
		return err
	}
	answers, err := answer(variants, degrees)
	if err != nil {
		return err
	}
	if flags.pictures.folder != "" && len(answers) > 1 {
		return fmt.Errorf("--pictures draws one design at a time; name one file, and one value for each change")
	}
	err = flags.pictures.pictures(out, flags.json, files, func() []plots.Picture { return plots.Pictures(answers[0].report.Report) })
	if err != nil {
		return err
	}
	if flags.json {
		err = printJSON(out, answers, degrees)
	} else {
		err = printSheet(out, answers, flags.all)
	}
	if err != nil {
		return err
	}
	for _, a := range answers {
		if !a.report.Holds() {
			return errLimit
		}
	}
	return nil
}

// releases reads the tilts to let go from, degrees.
func releases(text string) ([]float64, error) {
	if text == "" {
		return []float64{1, 2, 5, 10, 15, 20, 25}, nil
	}
	var degrees []float64
	for _, one := range strings.Split(text, ",") {
		rad, err := quantity.Parse(strings.TrimSpace(one), quantity.Angle, quantity.Metric)
		if err != nil || math.Abs(rad) > math.Pi {
			return nil, fmt.Errorf("--release takes tilts in degrees, up to 180, parted by commas; %q is none. For example: --release 5,15,-10", one)
		}
		given, err := strconv.ParseFloat(strings.TrimSpace(one), 64) // a plain number comes back as it was given
		if err != nil {
			given = rad * 180 / math.Pi
		}
		degrees = append(degrees, given)
	}
	return degrees, nil
}

// A variant is a design file with its changes, one column of an answer.
type variant struct {
	file   *design.File
	column words.Column // what sets it apart from the others, without its report
}

// answered is a variant and what was found out about it.
type answered struct {
	variant
	report trial.Answer
}

// answer checks each variant.
func answer(variants []variant, degrees []float64) ([]answered, error) {
	options := check.Options{Releases: make([]float64, len(degrees))}
	for i, d := range degrees {
		options.Releases[i] = d * math.Pi / 180
	}
	answers := make([]answered, len(variants))
	for i, v := range variants {
		report, err := trial.Check(v.file.Design, options)
		if err != nil {
			return nil, v.file.Explain(err)
		}
		answers[i] = answered{v, report}
	}
	return answers, nil
}

// printJSON prints the answers for a program: one object, or an array where several designs were
// asked for. released are the releases as they were given, degrees.
func printJSON(out io.Writer, answers []answered, released []float64) error {
	made := make([]wire.Object, len(answers))
	for i, a := range answers {
		made[i] = wire.Check(a.report, released, words.Notes(a.report.Report), words.Findings(a.report))
	}
	if len(made) == 1 {
		return wire.Print(out, made[0])
	}
	return wire.Print(out, made)
}

// printSheet prints what a maker reads.
func printSheet(out io.Writer, answers []answered, all bool) error {
	var sheet words.Sheet
	if len(answers) == 1 {
		a := answers[0]
		sheet = words.Check(a.report, a.file.Name, a.file.CallChanged, a.file.Changes)
	} else {
		if len(answers) > mostColumns {
			return fmt.Errorf("%d designs do not fit side by side; ask for %d at a time", len(answers), mostColumns)
		}
		columns := make([]words.Column, len(answers))
		for i, a := range answers {
			columns[i] = a.column
			columns[i].Report = a.report.Balanced
		}
		sheet = words.Columns("Side by side", sourceOf(answers), columns)
	}
	return sheet.Text(out, all, isTerminal(out))
}

// sourceOf returns the file of the answers, where it is one.
func sourceOf(answers []answered) string {
	for _, a := range answers {
		if a.file.Name != answers[0].file.Name {
			return ""
		}
	}
	return answers[0].file.Name
}

// isTerminal reports whether bold may be used: out is a terminal, and NO_COLOR is not
// set.
func isTerminal(out io.Writer) bool {
	f, ok := out.(*os.File)
	return ok && os.Getenv("NO_COLOR") == "" && term.IsTerminal(int(f.Fd()))
}
