package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"runtime/debug"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/sim/size"
)

// whatIfFlags are the options of whatif.
type whatIfFlags struct {
	all, json bool
	chairs    int
	seed      uint64
	pictures  drawing
}

// mostChairs is how many chairs one call makes; a million takes half a minute.
const mostChairs = 100_000_000

func whatIfCommand() *cobra.Command {
	var flags whatIfFlags
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
		RunE: func(cmd *cobra.Command, args []string) error {
			return whatIf(cmd.OutOrStdout(), cmd.ErrOrStderr(), args, flags)
		},
	}
	f := cmd.Flags()
	f.BoolVar(&flags.all, "all", false, "every measure, every share, how it was found")
	f.BoolVar(&flags.json, "json", false, "the numbers for a program: SI units, degrees")
	f.IntVar(&flags.chairs, "chairs", 0, "make so many chairs with a shop's errors")
	f.Uint64Var(&flags.seed, "seed", 0, "of the errors of --chairs")
	flags.pictures.flags(cmd, "the bars")
	return cmd
}

// whatIf answers one call of whatif.
func whatIf(out, progress io.Writer, args []string, flags whatIfFlags) error {
	files, file, err := readOne(args, "whatif takes one design at a time:")
	if err != nil {
		return err
	}
	if flags.chairs < 0 || flags.chairs > mostChairs {
		return fmt.Errorf("--chairs is a number from 1 to 100,000,000; %d is not", flags.chairs)
	}
	if flags.chairs > 0 {
		return study(out, progress, files, file, flags)
	}
	table, err := size.WhatIf(file.Design)
	if err != nil {
		return explained(file, err)
	}
	err = flags.pictures.pictures(out, flags.json, files, func() []plots.Picture { return []plots.Picture{plots.Effects(table)} })
	if err != nil {
		return err
	}
	if flags.json {
		return wire.Print(out, wire.WhatIf(table))
	}
	return words.WhatIf(table, file.Name, file.Changes).Text(out, flags.all, isTerminal(out))
}

// study makes many chairs. Ctrl-C ends it with what is done by then.
func study(out, progress io.Writer, files []string, file *design.File, flags whatIfFlags) error {
	debug.SetMemoryLimit(80 << 20) // however many chairs are made
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	options := size.StudyOptions{Seed: flags.seed}
	shows := isTerminal(progress)
	if shows {
		options.Progress = func(done int) { fmt.Fprintf(progress, "\r%d of %d", done, flags.chairs) }
	}
	s, err := size.Chairs(ctx, file.Design, flags.chairs, options)
	if shows {
		fmt.Fprint(progress, "\r                              \r")
	}
	if err != nil {
		return explained(file, err)
	}
	if s.Chairs > 0 {
		err := flags.pictures.pictures(out, flags.json, files, func() []plots.Picture { return []plots.Picture{plots.Shares(file.Design, s)} })
		if err != nil {
			return err
		}
	}
	if flags.json {
		return wire.Print(out, wire.Study(file.Design, s))
	}
	return words.Study(file.Design, s, file.Name).Text(out, flags.all, isTerminal(out))
}
