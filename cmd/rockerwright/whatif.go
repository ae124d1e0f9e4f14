package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"runtime/debug"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/plots/scene"
	"rockerwright/sim/size"
)

// wondering is a call of whatif.
type wondering struct {
	telling
	chairs int
	seed   uint64
}

// mostChairs is how many chairs one call makes; a million takes half a minute.
const mostChairs = 100_000_000

func whatIfCommand() *cobra.Command {
	var w wondering
	cmd := &cobra.Command{
		Use:   "whatif [FILE] [section.key=value…]",
		Short: "say what each measure does, and how exactly it must be held",
		Long: `Changes one measure of the design after the other, and says what that does to the
rests, the time of a rock, the push and the margin; and what a slid chair, cut rear
legs, a worn floor edge, a sloping porch and leaning an inch do. "Hold to" is the
largest error of the shop with which every limit still holds in 95 of 100 chairs.

--chairs makes many chairs with all measures off at once, each by a shop's errors, and
says how rests, times and margins lie, how often each limit fails, and what each
hangs on. What your shop holds goes under [shop]: length, radius, angle, weight.`,
		Example: `  rockerwright whatif mine.toml
  rockerwright whatif mine.toml shop.length=1/8
  rockerwright whatif mine.toml --chairs 100000
  rockerwright whatif mine.toml --pictures drawings`,
		RunE: w.run,
	}
	f := cmd.Flags()
	f.BoolVar(&w.all, "all", false, "every measure, every share, how it was found")
	w.jsonFlag(cmd)
	f.IntVar(&w.chairs, "chairs", 0, "make so many chairs with a shop's errors")
	f.Uint64Var(&w.seed, "seed", 0, "of the errors of --chairs")
	w.picturesFlags(cmd, "the bars")
	return cmd
}

func (w *wondering) run(cmd *cobra.Command, args []string) error {
	files, file, err := readOne(args, "whatif takes one design at a time:")
	if err != nil {
		return err
	}
	if w.chairs < 0 || w.chairs > mostChairs {
		return fmt.Errorf("--chairs is a number from 1 to 100,000,000; %d is not", w.chairs)
	}
	if w.chairs > 0 {
		return w.study(cmd, files, file)
	}
	table, err := size.WhatIf(file.Design)
	if err != nil {
		return explained(file, err)
	}
	return w.tell(cmd, files, answer{
		sheet:    func() sheet.Sheet { return words.WhatIf(table, file.Name, file.Changes) },
		json:     func() any { return wire.WhatIf(table) },
		pictures: func() []scene.Picture { return []scene.Picture{plots.Effects(table)} },
	})
}

// study makes many chairs. Ctrl-C ends it with what is done by then.
func (w *wondering) study(cmd *cobra.Command, files []string, file *design.File) error {
	debug.SetMemoryLimit(80 << 20) // however many chairs are made
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	options := size.StudyOptions{Seed: w.seed}
	progress := cmd.ErrOrStderr()
	shows := isTerminal(progress)
	if shows {
		options.Progress = func(done int) { fmt.Fprintf(progress, "\r%d of %d", done, w.chairs) }
	}
	s, err := size.Chairs(ctx, file.Design, w.chairs, options)
	if shows {
		fmt.Fprint(progress, "\r                              \r")
	}
	if err != nil {
		return explained(file, err)
	}
	a := answer{
		sheet: func() sheet.Sheet { return words.Study(file.Design, s, file.Name) },
		json:  func() any { return wire.Study(file.Design, s) },
	}
	if s.Chairs > 0 {
		a.pictures = func() []scene.Picture { return []scene.Picture{plots.Shares(file.Design, s)} }
	}
	return w.tell(cmd, files, a)
}
