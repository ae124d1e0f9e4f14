package main

import (
	"bytes"
	"fmt"
	"io"
	"math"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// rocking is a call of rock.
type rocking struct {
	telling
	load, from, push, at, rate string
	feet, ahead                string
	seconds, every             float64
	csv                        bool
}

func rockCommand() *cobra.Command {
	r := rocking{telling: telling{all: true}}
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
  rockerwright rock mine.toml floor.surface=boards --load "owner, feet off" --from 20
  rockerwright rock mine.toml --push "40 lb"
  rockerwright rock mine.toml --csv`,
		RunE: r.run,
	}
	f := cmd.Flags()
	f.StringVar(&r.load, "load", "", "the `load` to rock, as check names it; the beginning is enough")
	f.StringVar(&r.from, "from", "", "let go from these `degrees` from rest, - forward")
	f.StringVar(&r.push, "push", "", "push at the top of the back for 0.3 s with this `force`, + to the rear")
	f.StringVar(&r.at, "at", "back", "push at the top of the `back`, or at the seat")
	f.StringVar(&r.rate, "rate", "", "start at so many `degrees` a second, + back")
	f.StringVar(&r.feet, "feet", "", "push with the feet on the floor with this `force`, as a bathroom scale shows it")
	f.StringVar(&r.ahead, "feet-ahead", "", "how far these feet stand ahead of the hips, a `length`")
	f.Float64Var(&r.seconds, "seconds", 30, "how long to follow it")
	f.BoolVar(&r.csv, "csv", false, "the motion for a table: a line each --every seconds")
	f.Float64Var(&r.every, "every", 0.02, "`seconds` between two lines of --csv")
	r.jsonFlag(cmd)
	r.picturesFlags(cmd, "tilt, energy and floor in time")
	return cmd
}

func (r *rocking) run(cmd *cobra.Command, args []string) error {
	if !(r.seconds > 0 && r.seconds <= 600) {
		return fmt.Errorf("--seconds is more than 0 and at most 600; %g is not", r.seconds)
	}
	if !(r.every > 0) || r.seconds/r.every > 1e6 {
		return fmt.Errorf("--every is more than 0, and so that there are at most a million lines; %g is not", r.every)
	}
	files, f, err := readOne(args, "rock follows one design at a time;")
	if err != nil {
		return err
	}
	options := trial.RockOptions{Load: r.load, Duration: r.seconds}
	if r.from != "" {
		options.From, err = quantity.Parse(r.from, quantity.Angle, f.Design.Units)
		if err != nil || math.Abs(options.From) > math.Pi {
			return fmt.Errorf("--from is a tilt in degrees, up to 180; %q is not. For example: --from 15", r.from)
		}
	}
	if r.push != "" {
		if options.Force, err = quantity.Parse(r.push, quantity.Force, f.Design.Units); err != nil {
			return fmt.Errorf("--push: %w", err)
		}
	}
	if r.feet != "" {
		if options.Feet, err = quantity.Parse(r.feet, quantity.Force, f.Design.Units); err != nil || !(options.Feet > 0) {
			return fmt.Errorf("--feet is a force of more than nothing; %q is not. For example: --feet %q", r.feet, "20 lb")
		}
	}
	if r.ahead != "" {
		if options.FeetAhead, err = quantity.Parse(r.ahead, quantity.Length, f.Design.Units); err != nil || !(options.FeetAhead > 0) {
			return fmt.Errorf("--feet-ahead is a length of more than nothing; %q is not. For example: --feet-ahead %q", r.ahead, "18 in")
		}
	}
	if r.rate != "" {
		if options.Rate, err = quantity.Parse(r.rate, quantity.Angle, f.Design.Units); err != nil {
			return fmt.Errorf("--rate is degrees a second, up to 360; %q is not. For example: --rate 40", r.rate)
		}
	}
	if options.OnSeat = r.at == "seat"; r.at != "seat" && r.at != "back" {
		return fmt.Errorf("--at is back or seat; %q is neither", r.at)
	}
	onFloor, taken := f.Design.OnItsFloor()
	found, err := trial.Rock(onFloor, options)
	if err != nil {
		return f.Explain(err)
	}
	found.FloorTaken = taken
	a := answer{
		sheet:    func() sheet.Sheet { return words.Rock(found, f.Name) },
		json:     func() any { return wire.Rock(found) },
		pictures: func() []scene.Picture { return plots.OfMotion(found) },
		fails:    !found.Report.Holds(),
	}
	if r.csv {
		a.printed = func(out io.Writer) error { return printMotion(out, found, r.every) }
	}
	return r.tell(cmd, files, a)
}

// printMotion prints the motion as comma-separated values.
func printMotion(out io.Writer, r trial.Rocking, every float64) error {
	var w bytes.Buffer // written at once, so that what is stopped leaves no half
	fmt.Fprintln(&w, "time_s,tilt_rad,rate_rad_s,energy_j,floor_forward_n,floor_up_n,friction")
	ground := r.Load.Rig.Rise(r.Load.Balance.Rest.Tilt)
	for i := 0; ; i++ {
		time := min(float64(i)*every, r.Trace.Duration)
		l := r.Trace.Look(r.Load.Rig, ground, time)
		fmt.Fprintf(&w, "%.12g,%.12g,%.12g,%.12g,%.12g,%.12g,%.12g\n", l.Time, // x+0 is never -0
			l.Tilt+0, l.Rate+0, l.Energy+0, l.Forward+0, l.Up+0, math.Abs(l.Forward)/l.Up)
		if time == r.Trace.Duration {
			_, err := w.WriteTo(out)
			return err
		}
	}
}
