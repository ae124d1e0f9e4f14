package piece

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
	"rockerwright/sim/motion"
)

// RockOptions say what is rocked, and how. The zero value lets the first person go from 15
// degrees, or from nine tenths of what it survives.
type RockOptions struct {
	Load     string  // its name, or the beginning of it; empty means the first person, else the piece alone
	From     float64 // tilt from the rest at which it is let go, rad, + back; zero and no Rate and no Force mean the usual
	Rate     float64 // with which it starts, rad/s
	Force    float64 // of a push at the top of the back, N, + back
	OnSeat   bool    // push at the seat instead, where back and seat meet
	Time     float64 // how long the push lasts, s; zero means ShoveTime
	Duration float64 // s; zero means 30
}

// A Rocking is what happens when a piece is rocked, pushed, and tried.
type Rocking struct {
	Report   Report
	Load     *Load
	Start    motion.Start
	Losses   motion.Losses
	Ground   Ground
	Trace    motion.Trace // with its steps
	HalvesIn float64      // in how many rocks the tilt falls to half; NaN where it does not

	Survivals []Survival
	Seating   []SeatTest
	Slopes    []SlopeTest // of a horse
	Room      Needed
	Sideways  []Sideway
	Walk      *Walk // nil where the track is not known
	Stops     []Stop

	FloorTaken bool // nothing was said of the floor; that of Report.Design is usual for its kind
}

// Rock works out the motion of a design. The error is a [*KeyError], or one that says that
// there is no such load or that it has no rest.
func Rock(d Design, options RockOptions) (Rocking, error) {
	report, err := Check(d, Options{})
	if err != nil {
		return Rocking{}, err
	}
	r, err := report.Follow(options)
	if err != nil {
		return r, err
	}
	r.Survivals = d.survivals(report)
	r.Seating = d.seating(report)
	r.Slopes = d.slopes(report)
	r.Room = d.needed(r.Load, report)
	r.Sideways = d.sideways(report)
	r.Walk = d.walk(r.Load, report)
	r.Stops = stops(r.Load)
	return r, nil
}

// pickLoad returns the load of a name.
func pickLoad(loads []Load, name string) (*Load, error) {
	if name == "" {
		return &loads[min(1, len(loads)-1)], nil
	}
	for i := range loads { // one name may be the beginning of another
		if loads[i].Name == name {
			return &loads[i], nil
		}
	}
	var names []string
	for i := range loads {
		if strings.HasPrefix(strings.ToLower(loads[i].Name), strings.ToLower(name)) {
			return &loads[i], nil
		}
		names = append(names, loads[i].Name)
	}
	return nil, fmt.Errorf("there is no load %q; there are %s", name, strings.Join(names, "; "))
}

// start returns how the motion begins.
func (d Design) start(r *Rocking, o RockOptions) (motion.Start, error) {
	rest := r.Load.Balance.Rest.Tilt
	s := motion.Start{Tilt: rest + o.From, Rate: o.Rate}
	if o.Force != 0 {
		top, known := d.TopOfBack()
		if o.OnSeat && d.Seat.drawn() {
			top, known = d.Seat.Meet(), true
		}
		if !known {
			return s, &KeyError{Key: "back.height", Reason: "a push needs the drawn back or seat that it acts on", Example: "height = 28"}
		}
		s.Push = motion.Push{At: d.carry(r.Report.Edge).point(top), Force: o.Force, Time: or(o.Time, ShoveTime)}
	}
	if o.From == 0 && o.Rate == 0 && o.Force == 0 {
		most, _ := r.Load.Rig.LargestRelease(r.Load.Balance)
		s.Tilt = rest + min(15*degree, 0.9*most)
	}
	return s, nil
}

// halvesIn returns in how many rocks, there and back, the tilt from the rest falls to half.
func halvesIn(t motion.Trace, rest float64) float64 {
	first := math.NaN()
	turns := 0.0
	for _, e := range t.Events {
		if e.Kind != motion.Turns || e.Tilt < rest {
			continue
		}
		turns++
		if math.IsNaN(first) {
			first = e.Tilt - rest
		} else if e.Tilt-rest <= first/2 {
			return turns - 1
		}
	}
	return math.NaN()
}

// survivals tries every load with a rest of which something is asked.
func (d Design) survivals(r Report) []Survival {
	var list []Survival
	for i := range r.Loads {
		if l := &r.Loads[i]; l.Upright() && (l.Empty || l.Asked()) {
			list = append(list, d.survival(l, &r.Loads[0], r.Edge, r.Loads))
		}
	}
	return list
}

// worstLimited returns the load of the limit that is nearest to failing and has a rest;
// nil where nothing is asked of anybody who rests.
func worstLimited(r *Report) *Load {
	var limits []Limit
	for _, l := range r.Limits {
		if l.Name != "rest" && !math.IsNaN(l.Got) {
			limits = append(limits, l)
		}
	}
	worst := worstOf(limits)
	for i := range r.Loads {
		if l := &r.Loads[i]; worst >= 0 && l.Name == limits[worst].Load && l.Upright() {
			return l
		}
	}
	return nil
}

// A Stop is a corner of the floor edge behind or before the low point, over which the piece
// turns: a block at the tail, a notch's lip.
type Stop struct {
	From, To          float64 // tilts between which it stands on the corner, rad
	ArmFirst, ArmLast float64 // righting arms there, m
	Left              float64 // angle from its end to the hilltop on that side, rad; NaN where it lies on the corner or there is none
}

// stops lists the corners between the tips.
func stops(l *Load) []Stop {
	var list []Stop
	p := l.Rig.Profile
	for i := 1; i < p.Bearings()-1; i++ {
		if b := p.Bearing(i); b.Radius == 0 && b.To > b.From {
			s := Stop{From: b.From + l.Rig.Floor.Slope, To: b.To + l.Rig.Floor.Slope}
			s.ArmFirst, _ = l.Rig.Righting(s.From)
			s.ArmLast, _ = l.Rig.Righting(s.To)
			s.Left = math.NaN()
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

// loadedAt returns the piece with a weight fixed at a place on it (chair frame).
func loadedAt(l *Load, mass float64, at r2.Vec) sim.Rig {
	rig := l.Rig
	rig.Body = joined(rig.Body, mass, at)
	return rig
}
