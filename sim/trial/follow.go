package trial

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
)

// Follow works out the motion alone of a design that was checked. The error is a
// [*piece.KeyError], or one that says that there is no such load or that it has no rest.
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
	f.Ground, f.Losses = piece.GroundOf(d.Floor.Surface), losses(d, f.Load)
	if f.Start, err = start(d, &f, options); err != nil {
		return f, err
	}
	f.Trace = motion.Run(f.Load.Rig, f.Load.Balance, f.Start, motion.Options{Duration: cmp.Or(options.Duration, 30), Losses: f.Losses, Keep: true})
	f.HalvesIn = halvesIn(f.Trace, f.Load.Balance.Rest.Tilt)
	return f, nil
}

// fallen is how long a fall is followed at most, s, and how often it is asked whether
// something has reached the floor, at the speed of a falling crest rail each 2 cm; by
// mostFallen, rad, all that was drawn has.
const (
	fallen     = 4.0
	fallenStep = 0.005
	mostFallen = 3 * math.Pi / 4
)

// Whole returns the tilt (rad) of the motion in time, and how long it lasts, s. Where it
// goes over, the fall is part of it, on the tip, until the piece or the person touches the
// floor or lies on its side; where the piece lies then is not worked out.
func (r Rocking) Whole() (tilt func(time float64) float64, span float64) {
	span = r.Trace.Duration
	tilt = func(time float64) float64 { return r.Trace.At(time).Tilt }
	if r.Trace.End != motion.WentOver {
		return tilt, span
	}
	b := r.Load.Balance
	b.Back.Angle, b.Forward.Angle = math.NaN(), math.NaN() // there is no hilltop ahead any more
	last := r.Trace.Last
	fall := motion.Run(r.Load.Rig, b, motion.Start{Tilt: last.Tilt, Rate: last.Rate}, motion.Options{Duration: fallen, Losses: r.Losses, Keep: true})
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

// highest returns the points of the load that reach the floor first when it falls, chair
// frame.
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
