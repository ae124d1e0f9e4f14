package main

import (
	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/check"
	"rockerwright/sim/trial"
)

// asBuilt is a call of as-built.
type asBuilt struct{ telling }

func asBuiltCommand() *cobra.Command {
	var b asBuilt
	cmd := &cobra.Command{
		Use:   "as-built FILE [section.key=value…]",
		Short: "set the finished piece beside its drawing, and check it as built",
		Long: `Sets what was read of the finished piece, under [measured] in its own design file,
beside what the drawing says or predicts: the rises of both rockers, their radius,
left against right, the weight, the balance point, the time of ten rocks. The worst
comes first; what differs by no more than is known agrees.

Then it says what check says, of the piece as built: what was read stands for what is
drawn, and what was not read is as drawn. The check sheet that layout writes has the
blanks. The exit code is that of check for the piece as built.`,
		Example: `  rockerwright as-built mine.toml
  rockerwright as-built mine.toml "measured.weight=28 lb"`,
		RunE: b.run,
	}
	cmd.Flags().BoolVar(&b.all, "all", false, "every load and limit of the piece as built, assumptions, cautions")
	b.jsonFlag(cmd)
	return cmd
}

func (b *asBuilt) run(cmd *cobra.Command, args []string) error {
	const does = "as-built compares one design at a time;"
	files, f, err := readOne(args, does)
	if err == nil && len(files) == 0 {
		err = notOne(does)
	}
	if err != nil {
		return err
	}
	built, err := check.AsBuilt(f.Design)
	if err != nil {
		return f.Explain(err)
	}
	released, err := releases("") // the usual ones, as those of the report
	if err != nil {
		return err
	}
	a := trial.Of(built.As)
	return b.tell(cmd, files, answer{
		sheet: func() sheet.Sheet { return words.AsBuilt(built, a, f.Name, f.Changes) },
		json: func() any {
			return wire.AsBuilt(built, words.Mends(built), wire.Check(a, released, words.Notes(a.Report), words.Findings(a)))
		},
		fails: !a.Holds(),
	})
}
