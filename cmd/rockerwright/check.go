package main

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/scene"
	"rockerwright/plots/view"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// mostColumns is how many designs fit side by side in 80 columns.
const mostColumns = 5

// checking is a call of check.
type checking struct {
	telling
	release string
}

func checkCommand() *cobra.Command {
	var c checking
	cmd := &cobra.Command{
		Use:   "check [FILE…] [section.key=value…]",
		Short: "say where a design rests, how it rocks, how near to going over",
		Long: `Says where a design rests (empty, at ease, feet off, rising), how long a rock takes and
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
		RunE: c.run,
	}
	help := cmd.HelpFunc()
	cmd.SetHelpFunc(func(cmd *cobra.Command, args []string) { // the long list only where it is read
		cmd.Long += "\n\n" + entries()
		help(cmd, args)
	})
	f := cmd.Flags()
	f.BoolVar(&c.all, "all", false, "every load and limit, times of a rock, assumptions, cautions")
	c.jsonFlag(cmd)
	f.StringVar(&c.release, "release", "", "let go from these `degrees` from rest, - forward, as in 5,15,-10")
	c.picturesFlags(cmd, "the pictures")
	return cmd
}

func (c *checking) run(cmd *cobra.Command, args []string) error {
	released, err := releases(c.release)
	if err != nil {
		return err
	}
	files, variants, err := readDesigns(args)
	if err != nil {
		return err
	}
	tilts := make([]float64, len(released))
	for i, degrees := range released {
		tilts[i] = degrees * math.Pi / 180
	}
	answers := make([]trial.Answer, len(variants))
	for i, v := range variants {
		if answers[i], err = trial.Check(v.file.Design); err != nil {
			return v.file.Explain(err)
		}
		answers[i].Releases = tilts
	}
	switch n := len(answers); {
	case c.folder != "" && n > 1:
		return notOne("--pictures draws one design at a time;")
	case !c.json && n > mostColumns:
		return fmt.Errorf("%d designs do not fit side by side; ask for %d at a time", n, mostColumns)
	}
	return c.tell(cmd, files, answer{
		sheet: func() sheet.Sheet { return checkSheet(variants, answers) },
		json: func() any {
			made := make([]wire.Object, len(answers))
			for i, a := range answers {
				made[i] = wire.Check(a, released, words.Notes(a.Report), words.Findings(a))
			}
			if len(made) == 1 {
				return made[0]
			}
			return made
		},
		pictures: func() []scene.Picture { return view.Pictures(answers[0].Report) },
		fails:    slices.ContainsFunc(answers, func(a trial.Answer) bool { return !a.Holds() }),
	})
}

// checkSheet is what a maker reads of one design, or of several side by side.
func checkSheet(variants []variant, answers []trial.Answer) sheet.Sheet {
	source := variants[0].file.Name
	if len(variants) == 1 {
		return words.Check(answers[0], source, variants[0].file.CallChanged, variants[0].file.Changes)
	}
	columns := make([]words.Column, len(variants))
	for i, v := range variants {
		columns[i] = v.column
		columns[i].Report = answers[i].Balanced
		if v.file.Name != source {
			source = "" // of several
		}
	}
	return words.Columns("Side by side", source, columns)
}

// welcome checks the built-in chair and says what to do next, where no command is typed.
func welcome(cmd *cobra.Command, typed []string) error {
	if len(typed) > 0 {
		return unknownCommand(typed[0])
	}
	if err := new(checking).run(cmd, nil); err != nil {
		return err
	}
	const next = "That was a built-in example. Make your own: rockerwright new chair mine.toml"
	_, err := fmt.Fprintln(cmd.OutOrStdout(), next)
	return err
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
			return nil, fmt.Errorf("--release takes tilts in degrees, up to 180, parted by commas; %q is none. "+
				"For example: --release 5,15,-10", one)
		}
		given, err := strconv.ParseFloat(strings.TrimSpace(one), 64) // a plain number comes back as it was given
		if err != nil {
			given = rad * 180 / math.Pi
		}
		degrees = append(degrees, given)
	}
	return degrees, nil
}

// entries lists every entry of a design file, as check's help shows them.
func entries() string {
	var b strings.Builder
	b.WriteString("Entries of a design file. Where a list has several, N counts from 1; with one it\nmay be left out.\n")
	for _, c := range piece.Choices() {
		words := strings.Join(c.Words, " | ")
		if words == "" {
			words = "a text"
		}
		fmt.Fprintf(&b, "  %-26s %s: %s\n", c.Key, c.Label, words)
	}
	for _, m := range piece.Measures() {
		fmt.Fprintf(&b, "  %-26s %s\n", m.Key, m.Label)
	}
	return strings.TrimRight(b.String(), "\n")
}
