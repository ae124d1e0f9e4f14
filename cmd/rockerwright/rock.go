package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"strconv"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// rockFlags are the options of rock.
type rockFlags struct {
	load, from, push string
	seconds          float64
	csv, json        bool
	every            float64
	pictures, format string
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
built-in reading chair. The floor is floor.surface = hardwood, boards, rug or stone.

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
	f.SortFlags = false
	f.StringVar(&flags.load, "load", "", "the `load` to rock, as check names it; the beginning is enough")
	f.StringVar(&flags.from, "from", "", "let go from these `degrees` from rest, - forward")
	f.StringVar(&flags.push, "push", "", "push at the top of the back for 0.3 s with this `force`, + to the rear")
	f.Float64Var(&flags.seconds, "seconds", 30, "how long to follow it")
	f.BoolVar(&flags.csv, "csv", false, "the motion for a table: a line each --every seconds")
	f.Float64Var(&flags.every, "every", 0.02, "`seconds` between two lines of --csv")
	f.BoolVar(&flags.json, "json", false, "the numbers for a program: SI units, degrees")
	f.StringVar(&flags.pictures, "pictures", "", "draw tilt, energy and floor in time into this `folder`")
	f.StringVar(&flags.format, "format", "svg", "of the pictures: svg or pdf")
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
	files, variants, err := readDesigns(args)
	if err != nil {
		return err
	}
	if len(variants) != 1 {
		return fmt.Errorf("rock follows one design at a time; name one file, and one value for each change")
	}
	f := variants[0].file
	options := piece.RockOptions{Load: flags.load, Duration: flags.seconds}
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
	rocking, err := piece.Rock(f.Design, options)
	if err != nil {
		return f.Explain(err)
	}
	if flags.pictures != "" {
		drawn, err := draw(plots.Traces(rocking), "--pictures", flags.pictures, flags.format, files)
		if err != nil {
			return err
		}
		if !flags.json && !flags.csv {
			if err := list(out, drawn); err != nil {
				return err
			}
		}
	}
	switch {
	case flags.csv:
		err = printMotion(out, rocking, flags.every)
	case flags.json:
		encoder := json.NewEncoder(out)
		encoder.SetEscapeHTML(false)
		err = encoder.Encode(rockingOf(rocking))
	default:
		err = words.Rock(rocking, f.Name).Text(out, true, isTerminal(out))
	}
	if err == nil && !rocking.Report.Holds() {
		err = errLimit
	}
	return err
}

// printMotion prints the motion as comma-separated values.
func printMotion(out io.Writer, r piece.Rocking, every float64) error {
	w := bufio.NewWriter(out)
	fmt.Fprintln(w, "time_s,tilt_rad,rate_rad_s,energy_j,floor_forward_n,floor_up_n,friction")
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
		fmt.Fprintf(w, "%s\n", line)
		if time == r.Trace.Duration {
			return w.Flush()
		}
	}
}

type rockingJSON struct {
	Design    string         `json:"design"`
	Load      string         `json:"load"`
	Outcome   string         `json:"outcome"`
	End       string         `json:"end"`
	Duration  number         `json:"duration_s"`
	LastTilt  number         `json:"last_tilt_deg"`
	Friction  number         `json:"friction_needed"`
	Needs     number         `json:"floor_let_go_at_friction"` // null where it did not
	Margin    number         `json:"least_margin_deg"`
	Lift      number         `json:"largest_lift_share"`
	HalvesIn  number         `json:"halves_in_rocks"`
	Events    []eventJSON    `json:"events"`
	Survivals []survivalJSON `json:"survives"`
	Seating   []seatTestJSON `json:"seating_tests"`
	Slopes    []slopeJSON    `json:"slopes"`
	Room      roomJSON       `json:"room"`
	Sideways  []sidewayJSON  `json:"sideways"`
	Walk      *walkJSON      `json:"walk"`
}

type eventJSON struct {
	Kind string `json:"kind"`
	Time number `json:"time_s"`
	Tilt number `json:"tilt_deg"`
	Rate number `json:"rate_rad_s"`
}

type survivalJSON struct {
	Load    string     `json:"load"`
	Back    number     `json:"release_back_deg"`
	Forward number     `json:"release_forward_deg"`
	Shove   number     `json:"shove_n"` // null where none was found, or there is no back
	Speed   number     `json:"crest_speed_m_s"`
	Fates   []fateJSON `json:"trials"`
}

type fateJSON struct {
	Name    string `json:"name"`
	Outcome string `json:"outcome"`
	Margin  number `json:"least_margin_deg"`
	Lift    number `json:"largest_lift_share"`
}

type seatTestJSON struct {
	Name       string `json:"name"`
	Source     string `json:"source"`
	Confidence string `json:"confidence"`
	Force      number `json:"force_n"`
	Tips       number `json:"tips_at_n"`
	Outcome    string `json:"outcome"`
}

type slopeJSON struct {
	Name   string `json:"name"`
	Slope  number `json:"slope_deg"`
	Stands bool   `json:"stands"`
	Margin number `json:"margin_deg"`
}

type roomJSON struct {
	Behind number `json:"behind_m"`
	Front  number `json:"front_m"`
	Crest  number `json:"crest_behind_m"`
	Caught number `json:"caught_under_m"`
}

type sidewayJSON struct {
	Load  string `json:"load"`
	Angle number `json:"margin_deg"`
	Lift  number `json:"lift_m"`
}

type walkJSON struct {
	Heading number `json:"heading_deg"`
	Lean    number `json:"lean_deg"`
	Scrub   number `json:"scrub_m"`
	Enough  number `json:"equal_enough_m"`
}

func rockingOf(r piece.Rocking) rockingJSON {
	t := r.Trace
	j := rockingJSON{
		Design: r.Report.Design.Title, Load: r.Load.Name, Outcome: t.Outcome.String(), End: t.End.String(), Duration: number(t.Duration),
		LastTilt: degrees(t.Last.Tilt), Friction: number(t.Friction), Needs: number(math.NaN()), Margin: degrees(t.Margin), Lift: number(t.Lift), HalvesIn: number(r.HalvesIn),
		Events: []eventJSON{}, Survivals: []survivalJSON{}, Seating: []seatTestJSON{}, Slopes: []slopeJSON{}, Sideways: []sidewayJSON{},
		Room: roomJSON{number(r.Room.Behind), number(r.Room.Front), number(r.Room.Crest), number(r.Room.Caught)},
	}
	if t.Needs > 0 {
		j.Needs = number(t.Needs)
	}
	for _, e := range t.Events {
		j.Events = append(j.Events, eventJSON{e.Kind.String(), number(e.Time), degrees(e.Tilt), number(e.Rate)})
	}
	for _, s := range r.Survivals {
		one := survivalJSON{Load: s.Load, Back: degrees(s.Back), Forward: degrees(s.Forward), Shove: number(s.Shove), Speed: number(s.Speed), Fates: []fateJSON{}}
		if s.ShoveNone {
			one.Shove = number(math.NaN())
		}
		for _, f := range s.Fates {
			one.Fates = append(one.Fates, fateJSON{f.Name, f.Outcome.String(), degrees(f.Margin), number(f.Lift)})
		}
		j.Survivals = append(j.Survivals, one)
	}
	for _, s := range r.Seating {
		j.Seating = append(j.Seating, seatTestJSON{s.Name, s.Source, s.Confidence, number(s.Force), number(s.Tips), s.Outcome.String()})
	}
	for _, s := range r.Slopes {
		j.Slopes = append(j.Slopes, slopeJSON{s.Name, degrees(s.Slope), s.Rests, degrees(s.Margin)})
	}
	for _, s := range r.Sideways {
		j.Sideways = append(j.Sideways, sidewayJSON{s.Load, degrees(s.Angle), number(s.Lift)})
	}
	if w := r.Walk; w != nil {
		j.Walk = &walkJSON{degrees(w.Heading), degrees(w.Lean), number(w.Scrub), number(w.Enough)}
	}
	return j
}
