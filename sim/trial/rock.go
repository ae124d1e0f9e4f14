package trial

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
)

// RockOptions say what is rocked, and how. The zero value lets the first person go from 15
// degrees, or from nine tenths of what it survives and the floor holds.
type RockOptions struct {
	Load     string  // its name, or the beginning of it; empty means the first person, else the piece alone
	From     float64 // tilt from the rest at which it is let go, rad, + back; zero and no Rate and no Force mean the usual
	Rate     float64 // with which it starts, rad/s
	Force    float64 // of a push at the top of the back for ShoveTime, N, + back
	OnSeat   bool    // push at the seat instead, where back and seat meet
	Duration float64 // s; zero means 30

	Feet      float64 // of a push of the feet on the floor, as a scale under them shows, N; zero is a tenth of the weight
	FeetAhead float64 // how far they stand ahead of the hips at rest, m; zero is under the knees
}

// A Rocking is what happens when a piece is rocked, pushed, and tried.
type Rocking struct {
	Report   check.Report
	Load     *check.Load
	Start    motion.Start
	Losses   motion.Losses
	Ground   piece.Ground
	Trace    motion.Trace // with its steps
	HalvesIn float64      // in how many rocks the tilt falls to half; NaN where it does not

	Survivals []Survival
	Heaved    []Heaved
	Treads    []Tread
	Seating   []SeatTest
	Slopes    []SlopeTest // of a horse
	Room      Needed
	Sideways  []check.Sideway
	Walk      *check.Walk // nil where the track is not known
	Stops     []Stop

	Options    RockOptions // as they were asked
	FloorTaken bool        // nothing was said of the floor; that of Report.Design is usual for its kind
}

// Rock works out the motion of a design. The error is a [*piece.KeyError], or says that the load is none or has no rest.
func Rock(d piece.Design, options RockOptions) (Rocking, error) {
	report, err := check.Check(d)
	if err != nil {
		return Rocking{}, err
	}
	r, err := Follow(report, options)
	if err != nil {
		return r, err
	}
	for i := range report.Loads {
		if l := &report.Loads[i]; l.Moves() && (l.Empty || l.Asked()) {
			r.Survivals = append(r.Survivals, survival(&report, l))
		}
	}
	r.Options = options
	r.Heaved, r.Treads = heaved(&report), treads(&report, options.Feet, options.FeetAhead)
	r.Seating = seating(report)
	r.Slopes = slopes(report)
	r.Room = needed(r.Load, report)
	r.Sideways = report.Sideways()
	r.Walk = report.Walk(r.Load)
	r.Stops = stops(r.Load)
	return r, nil
}

// Released returns how far from its rest the load is let go, rad, below zero forward.
func (r *Rocking) Released() float64 { return r.Start.Tilt - r.Load.Balance.Rest.Tilt }

// Turns returns how many times the motion turns about.
func (r *Rocking) Turns() int {
	turns := 0
	for _, e := range r.Trace.Events {
		if e.Kind == motion.Turns {
			turns++
		}
	}
	return turns
}

// start returns how the motion begins.
func start(d piece.Design, r *Rocking, o RockOptions) (motion.Start, error) {
	rest := r.Load.Balance.Rest.Tilt
	s := motion.Start{Tilt: rest + o.From, Rate: o.Rate, Feet: r.Start.Feet}
	if o.Force != 0 {
		top, known := d.TopOfBack()
		if o.OnSeat && d.Seat.Drawn() {
			top, known = d.Seat.Meet(), true
		}
		if !known {
			return s, &piece.KeyError{Key: "back.height", Reason: "a push needs the drawn back or seat that it acts on", Give: "height"}
		}
		s.Push = motion.Push{At: r.Report.Placed(top), Force: o.Force, Time: ShoveTime}
	}
	if o.From == 0 && o.Rate == 0 && o.Force == 0 && o.Feet == 0 {
		_, s.Tilt = rock(r.Load)
		slides := func(release float64) bool { return r.Load.Swing(release).Outcome == sim.FloorLetsGo }
		if least, none := motion.Threshold(slides, s.Tilt-rest); !none {
			s.Tilt = rest + 0.9*least
		}
	}
	return s, nil
}

// halvesIn returns in how many rocks, there and back, the tilt from the rest falls to half.
func halvesIn(t motion.Trace, rest float64) float64 {
	var turns []float64 // from the rest, to the back
	for _, e := range t.Events {
		if e.Kind == motion.Turns && e.Tilt >= rest {
			turns = append(turns, e.Tilt-rest)
		}
	}
	for i, turn := range turns {
		if i > 0 && turn <= turns[0]/2 {
			return float64(i)
		}
	}
	return math.NaN()
}

// A Stop is a corner of the floor edge off the low point, over which it turns: a block at the tail, a notch's lip.
type Stop struct {
	From, To          float64 // tilts between which it stands on the corner, rad
	ArmFirst, ArmLast float64 // righting arms there, m
	Left              float64 // angle from its end to the hilltop on that side, rad; NaN where it lies on the corner or there is none
}

// stops lists the corners between the tips.
func stops(l *check.Load) []Stop {
	var list []Stop
	p := l.Rig.Profile
	for i := 1; i < p.Bearings()-1; i++ {
		if b := p.Bearing(i); b.Radius == 0 && b.To > b.From {
			s := Stop{From: b.From + l.Rig.Floor.Slope, To: b.To + l.Rig.Floor.Slope, Left: math.NaN()}
			s.ArmFirst, _ = l.Rig.Righting(s.From)
			s.ArmLast, _ = l.Rig.Righting(s.To)
			if left := l.Balance.Back.Tip - s.To; s.From > l.Balance.Rest.Tilt && left > 0 {
				s.Left = left
			} else if left := s.From - l.Balance.Forward.Tip; s.To < l.Balance.Rest.Tilt && left > 0 {
				s.Left = left
			}
			list = append(list, s)
		}
	}
	return list
}

// Follow works out the motion alone of a design that was checked. Its errors are those of [Rock].
func Follow(r check.Report, options RockOptions) (Rocking, error) {
	d := r.Design
	f := Rocking{Report: r}
	var err error
	if f.Load, err = r.LoadNamed(options.Load); err != nil {
		return f, err
	}
	if !f.Load.Upright() {
		return f, fmt.Errorf("%s does not stand upright, so it cannot be rocked: see check", f.Load.Name)
	}
	if !f.Load.Moves() {
		return f, fmt.Errorf("%s has part of the weight on the floor, so nothing is known of its rocks: see check", f.Load.Name)
	}
	if options.Feet != 0 {
		if !f.Load.Treads() {
			return f, fmt.Errorf("%s does not push with the feet on the floor: who sits at ease does, by height and weight", f.Load.Name)
		}
		pushing := *f.Load
		pushing.Rig, f.Start.Feet = r.Treading(f.Load, options.FeetAhead)
		if pushing.Balance = pushing.Rig.Balance(); !pushing.Upright() {
			return f, fmt.Errorf("%s does not stand upright with the legs riding, so nothing is known of their push", f.Load.Name)
		}
		f.Start.Feet.Force, f.Load = options.Feet, &pushing
	}
	f.Ground, f.Losses = piece.GroundOf(d.Floor.Surface), r.Losses(f.Load)
	if f.Start, err = start(d, &f, options); err != nil {
		return f, err
	}
	whole := motion.Options{Duration: cmp.Or(options.Duration, 30), Losses: f.Losses, Keep: true}
	f.Trace = motion.Run(f.Load.Rig, f.Load.Balance, f.Start, whole)
	f.HalvesIn = halvesIn(f.Trace, f.Load.Balance.Rest.Tilt)
	return f, nil
}

// fallen is how long a fall is followed at most, s, fallenStep how often it is asked whether something reached the
// floor, each 2 cm of a falling crest rail; by mostFallen, rad, all that was drawn has.
const (
	fallen     = 4.0
	fallenStep = 0.005
	mostFallen = 3 * math.Pi / 4
)

// Whole returns the tilt (rad) of the motion in time, and how long it lasts, s. A fall is part of it, on the tip,
// until piece or person touches the floor or lies on its side; where the piece lies then is not worked out.
func (r Rocking) Whole() (tilt func(time float64) float64, span float64) {
	span = r.Trace.Duration
	tilt = func(time float64) float64 { return r.Trace.At(time).Tilt }
	if r.Trace.End != motion.WentOver {
		return tilt, span
	}
	b := r.Load.Balance
	b.Back.Angle, b.Forward.Angle = math.NaN(), math.NaN() // there is no hilltop ahead any more
	from := motion.Start{Tilt: r.Trace.Last.Tilt, Rate: r.Trace.Last.Rate}
	fall := motion.Run(r.Load.Rig, b, from, motion.Options{Duration: fallen, Losses: r.Losses, Keep: true})
	points, time := r.highest(), 0.0
	for ; time < fall.Duration; time += fallenStep {
		at := fall.At(time).Tilt
		if math.Abs(at) > mostFallen || r.touches(points, at) {
			break
		}
	}
	over := span
	return func(t float64) float64 {
		if t <= over {
			return r.Trace.At(t).Tilt
		}
		return fall.At(min(t-over, time)).Tilt
	}, over + time
}

// highest returns the points of the load that reach the floor first when it falls, chair frame.
func (r Rocking) highest() []r2.Vec {
	d := r.Report.Design
	var points []r2.Vec
	for _, m := range d.Members(r.Report.Edge) {
		switch {
		case m.Outline != nil: // a corner of it may lie on the floor from the start
			points = append(points, r2.Vec{X: (m.Axis[0].X + m.Axis[1].X) / 2, Y: (m.Axis[0].Y + m.Axis[1].Y) / 2})
		case m.Leg == nil: // which ends on the rocker
			points = append(points, m.Side()...)
		}
	}
	for _, j := range r.Load.Figures {
		points = append(points, j.Vertex, j.Knee)
	}
	return append(points, r.Load.Rig.Body.Centre)
}

// touches reports whether one of some points of the load is on the floor at a tilt.
func (r Rocking) touches(points []r2.Vec, tilt float64) bool {
	return slices.ContainsFunc(points, func(p r2.Vec) bool {
		_, over := r.Load.Rig.Place(p, tilt)
		return over <= 0
	})
}
