package check

import (
	"cmp"
	"math"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/rocker/rises"
	"rockerwright/rocker/root"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Sideway is how near a load is to going over sideways.
type Sideway struct {
	Load  string
	Angle float64 // rad
	Lift  float64 // m
	Lean  float64 // how far the person's own balance point was taken to the side, m
}

// leanOver is how far the balance point of somebody who leans over an arm goes to the side, as a part of the
// stature: 0.20 m of a man of the survey's mean stature (ANSUR II); and inFromEnd how far from the
// end of a settee's seat one sits, m; our judgement.
const (
	leanOver  = 0.20 / meanMan
	meanMan   = 1.756 // m, taken of who is given by plain numbers
	inFromEnd = 0.25
)

// Sideways returns the margin to the side of every load with a rest of which something is
// asked: as it sits, leaning over an arm, and at the end of a settee.
func (r *Report) Sideways() []Sideway {
	d := r.Design
	track, known := d.Track()
	if !known || d.Traits().Bed {
		return nil
	}
	var list []Sideway
	for i := range r.Loads {
		l := &r.Loads[i]
		if !l.Upright() || !l.Empty && !l.Asked() {
			continue
		}
		height := l.Balance.Rest.Height
		add := func(name string, lean float64) {
			angle, lift := sim.Sideways(height, lean*l.Rider().Mass/l.Rig.Body.Mass, track)
			list = append(list, Sideway{name, angle, lift, lean})
		}
		switch {
		case l.Empty, l.Posture == person.Riding, l.Posture == person.Unsaid:
			add(l.Name, 0)
		case l.Posture == person.AtEase && d.Traits().ForTwo && l.Sitter == piece.OneAtTheEnd.String():
			add(l.Name, max(0, d.Seat.Width/2-inFromEnd))
		case l.Posture == person.AtEase:
			add(l.Name, 0)
			add(l.Sitter+", leaning over an arm", cmp.Or(leanOver*r.sizesOf(l.Sitter)[person.Stature], leanOver*meanMan))
		}
	}
	return list
}

// A Walk is what unequal or toed-in rockers make a load do.
type Walk struct {
	sim.Walk
	From, To float64 // the tilts between which it rocks, rad
	Enough   float64 // difference at the tail tip that scrubs by Unnoticed in a rock, m; NaN where it is not known
	OneCurve bool    // the rockers were taken to be alike
}

// Unnoticed is the scrub of each rocker in one rock that is taken to matter to nobody, m; our judgement: 1/32 in.
const Unnoticed = 0.0254 / 32

// Walk returns how a load walks when it is rocked ten degrees either way of its rest; nil
// where the track is not known.
func (b *Balanced) Walk(l *Load) *Walk {
	d := b.Design
	track, known := d.Track()
	if !known {
		return nil
	}
	rest := l.Balance.Rest.Tilt - d.Floor.Slope
	w := Walk{From: rest - 10*quantity.Deg, To: rest + 10*quantity.Deg, Enough: math.NaN()}
	left, right := b.Edge, b.Edge
	switch {
	case b.Curve != nil && b.Curve.Left != nil && b.Curve.Right != nil:
		l, fitsLeft := edgeOf(b.Curve.Left, d.Rocker)
		r, fitsRight := edgeOf(b.Curve.Right, d.Rocker)
		if fitsLeft && fitsRight {
			left, right = l, r
		}
	case d.Rocker.Unequal != 0:
		if p, ok := risen(b.Edge, d.Rocker.Unequal); ok {
			left = p
		}
	default:
		w.OneCurve = true
	}
	w.Walk = sim.WalkOf(left, right, track, d.Rocker.ToeIn, w.From, w.To)
	const rise = 0.001
	if p, ok := risen(b.Edge, rise); ok {
		if scrub := sim.WalkOf(p, b.Edge, track, 0, w.From, w.To).Scrub; scrub > 0 {
			w.Enough = rise * Unnoticed / scrub
		}
	}
	return &w
}

// risen returns the floor edge with its radii made smaller by one factor, lengths kept, until its tail tip
// stands so much higher as drawn, m; ok is false where no factor from a half to four does that.
func risen(edge rocker.Profile, by float64) (rocker.Profile, bool) {
	want := edge.Tail().Y + by
	factor := root.Between(func(factor float64) float64 {
		p, err := bent(edge, factor, 0)
		if err != nil { // curled in on itself
			return math.NaN()
		}
		return p.Tail().Y - want
	}, 0.5, 4, 0)
	p, err := bent(edge, factor, 0)
	return p, err == nil && math.Abs(p.Tail().Y-want) < 1e-9 // m; found to a rounding
}

// bent returns the floor edge with its radii times a factor, lengths kept but for arcs at its ends, which go on so far, m.
func bent(edge rocker.Profile, factor, beyond float64) (rocker.Profile, error) {
	nose, _ := edge.Reach()
	var spans []rocker.Span
	for _, s := range edge.Drawn() {
		one := s.Span
		one.Radius *= factor
		spans = append(spans, one)
	}
	last := len(spans) - 1
	if spans[0].Radius > 0 {
		spans[0].Length, nose = spans[0].Length+beyond, nose+beyond
	}
	if spans[last].Radius > 0 {
		spans[last].Length += beyond
	}
	return rocker.Chain(nose, spans...)
}

func edgeOf(f *rises.Fit, k piece.Rocker) (rocker.Profile, bool) {
	spans, nose := f.Spans(k.Nose, k.Tail)
	p, err := rocker.Chain(nose, spans...)
	return p, err == nil
}
