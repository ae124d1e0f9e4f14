package main

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"strconv"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// rockFlags are the options of rock.
type rockFlags struct {
	load, from, push string
	at, rate         string
	seconds          float64
	csv, json        bool
	every            float64
	pictures         drawing
}

func rockCommand() *cobra.Command {
	var flags rockFlags
	cmd := &cobra.Command{
		Use:   "rock [FILE] [section.key=value…]",
		Short: "rock it, push it, and see whether it goes over",
		Long: `Lets a load go, or pushes it, follows it in time on the floor of the design, and
says what it survives: the largest tilts, the hardest shove, somebody dropping in or
rising, the lever arms of published seating tests, a slope; what room it needs, how
near it is to going over sideways, and how it walks. With no FILE it rocks the
built-in reading chair. The floor is floor.surface = hardwood, boards, rug or stone;
where nothing is said of it, the usual one of the kind is taken and named.

--csv prints a line for each instant, in SI: time_s, tilt_rad (from as drawn, + back),
rate_rad_s, energy_j (over that of the rest), floor_forward_n and floor_up_n (of the
floor on the rockers), friction (needed).`,
		Example: `  rockerwright rock mine.toml
  rockerwright rock mine.toml floor.surface=boards --load "owner, lying back" --from 20
  rockerwright rock mine.toml --push "40 lb"
  rockerwright rock mine.toml --csv`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return rock(cmd.OutOrStdout(), args, flags)
		},
	}
	f := cmd.Flags()
	f.StringVar(&flags.load, "load", "", "the `load` to rock, as check names it; the beginning is enough")
	f.StringVar(&flags.from, "from", "", "let go from these `degrees` from rest, - forward")
	f.StringVar(&flags.push, "push", "", "push at the top of the back for 0.3 s with this `force`, + to the rear")
	f.StringVar(&flags.at, "at", "back", "push at the top of the `back`, or at the seat")
	f.StringVar(&flags.rate, "rate", "", "start at so many `degrees` a second, + back")
	f.Float64Var(&flags.seconds, "seconds", 30, "how long to follow it")
	f.BoolVar(&flags.csv, "csv", false, "the motion for a table: a line each --every seconds")
	f.Float64Var(&flags.every, "every", 0.02, "`seconds` between two lines of --csv")
	f.BoolVar(&flags.json, "json", false, "the numbers for a program: SI units, degrees")
	flags.pictures.flags(cmd, "tilt, energy and floor in time")
	return cmd
}

// rock answers one call of the rock command.
func rock(out io.Writer, args []string, flags rockFlags) error {
	if !(flags.seconds > 0 && flags.seconds <= 600) {
		return fmt.Errorf("--seconds is more than 0 and at most 600; %g is not", flags.seconds)
	}
	if !(flags.every > 0) || flags.seconds/flags.every > 1e6 {
		return fmt.Errorf("--every is more than 0, and so that there are at most a million lines; %g is not", flags.every)
	}
	files, f, err := readOne(args, "rock follows one design at a time;")
	if err != nil {
		return err
	}
	options := trial.RockOptions{Load: flags.load, Duration: flags.seconds}
	if flags.from != "" {
		if options.From, err = quantity.Parse(flags.from, quantity.Angle, f.Design.Units); err != nil || math.Abs(options.From) > math.Pi {
			return fmt.Errorf("--from is a tilt in degrees, up to 180; %q is not. For example: --from 15", flags.from)
		}
	}
	if flags.push != "" {
		if options.Force, err = quantity.Parse(flags.push, quantity.Force, f.Design.Units); err != nil {
			return fmt.Errorf("--push: %w", err)
		}
	}
	if flags.rate != "" {
		if options.Rate, err = quantity.Parse(flags.rate, quantity.Angle, f.Design.Units); err != nil {
			return fmt.Errorf("--rate is degrees a second, up to 360; %q is not. For example: --rate 40", flags.rate)
		}
	}
	if options.OnSeat = flags.at == "seat"; flags.at != "seat" && flags.at != "back" {
		return fmt.Errorf("--at is back or seat; %q is neither", flags.at)
	}
	onFloor, taken := f.Design.OnItsFloor()
	rocking, err := trial.Rock(onFloor, options)
	if err != nil {
		return f.Explain(err)
	}
	rocking.FloorTaken = taken
	err = flags.pictures.pictures(out, flags.json || flags.csv, files, func() []plots.Picture { return plots.Traces(rocking) })
	if err != nil {
		return err
	}
	switch {
	case flags.csv:
		err = printMotion(out, rocking, flags.every)
	case flags.json:
		err = wire.Print(out, wire.Rock(rocking))
	default:
		err = words.Rock(rocking, f.Name).Text(out, true, isTerminal(out))
	}
	if err == nil && !rocking.Report.Holds() {
		err = errLimit
	}
	return err
}

// printMotion prints the motion as comma-separated values.
func printMotion(out io.Writer, r trial.Rocking, every float64) error {
	var w bytes.Buffer // written at once, so that what is stopped leaves no half
	fmt.Fprintln(&w, "time_s,tilt_rad,rate_rad_s,energy_j,floor_forward_n,floor_up_n,friction")
	ground := r.Load.Rig.Rise(r.Load.Balance.Rest.Tilt)
	for i := 0; ; i++ {
		time := min(float64(i)*every, r.Trace.Duration)
		l := r.Trace.Look(r.Load.Rig, ground, time)
		var line []byte
		for k, x := range []float64{l.Time, l.Tilt, l.Rate, l.Energy, l.Forward, l.Up, math.Abs(l.Forward) / l.Up} {
			if k > 0 {
				line = append(line, ',')
			}
			line = strconv.AppendFloat(line, x+0, 'g', 12, 64)
		}
		fmt.Fprintf(&w, "%s\n", line)
		if time == r.Trace.Duration {
			_, err := w.WriteTo(out)
			return err
		}
	}
}
