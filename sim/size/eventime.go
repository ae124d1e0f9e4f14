package size

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/optimize"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// An Evenness says how a rocker's time goes with how far it rocks.
type Evenness struct {
	Releases []float64 // from rest, + back, rad
	Periods  []float64 // s; NaN where it does not come back
	Spread   float64   // largest less least, as a part of the smallest rock's time
}

// evenness rocks a load from each of some releases.
func evenness(l *check.Load, releases []float64) Evenness {
	e := Evenness{Releases: releases}
	least, most := math.Inf(1), math.Inf(-1)
	for _, release := range releases {
		period := math.NaN()
		if s := l.Rig.Swing(l.Balance, release); s.Outcome == sim.Rocks {
			period = s.Period
			least, most = min(least, period), max(most, period)
		}
		e.Periods = append(e.Periods, period)
	}
	e.Spread = (most - least) / l.Balance.Period
	return e
}

// evenReleases are the releases at which evenness is read, rad.
func evenReleases() []float64 {
	const degree = math.Pi / 180
	return []float64{1 * degree, 4 * degree, 8 * degree, 12 * degree}
}

// evenTime returns the design on the rocker of so many arcs (1, 3 or 5) that comes nearest to the
// even-time edge for the owner at ease, in the time that is aimed for, or the one it has as drawn.
// Seat and low point stay where they are drawn, and the ends as long. ok is false where there is
// none: on a sloping floor, or where it would not rest.
func (q *question) evenTime(arcs int) (d piece.Design, ok bool) {
	f, ok := FeelOf(q.drawn)
	if !ok || f.floor.Slope != 0 {
		return d, false
	}
	period := q.target.OneRock
	if period == 0 {
		period = f.Period
	}
	d = q.design.Clone()
	for range 3 { // the rockers' wood moves the balance point a little
		r, err := q.company.Balance(d)
		if err != nil {
			return d, false
		}
		rig := r.Seated().Rig
		e, ok := fitEven(rig, period, q.start.nose, q.start.tail, arcs)
		if !ok {
			return d, false
		}
		spans, _ := e.spans(rig.Body, q.start.nose, q.start.tail)
		d.Rocker = q.design.Rocker
		d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Nose, d.Rocker.Arcs = 0, 0, q.start.nose, nil
		for _, span := range spans {
			d.Rocker.Arcs = append(d.Rocker.Arcs, piece.Arc{Radius: span.Radius, Length: span.Length})
		}
		if len(spans) == 1 {
			d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Arcs = spans[0].Radius, q.start.tail, nil
		}
	}
	return d, true
}

// An even is an edge of arcs that lie evenly about its rest: the radii from the middle outwards,
// and the tilts from the rest at which they join.
type even struct {
	radii  []float64 // m
	joints []float64 // rad
}

// fitEven returns the edge of so many arcs on which the times of a rock from several releases
// come nearest to one time, least squares, from the exact edge's own radii on.
func fitEven(rig sim.Rig, period, nose, tail float64, arcs int) (even, bool) {
	start, ok := startEven(rig, period, (nose+tail)/2, arcs)
	if !ok {
		return even{}, false
	}
	off := func(e even) float64 {
		rig.Profile, ok = e.edge(rig.Body, nose, tail)
		if !ok {
			return 1
		}
		b := rig.Balance()
		if b.Outcome != sim.Rocks {
			return 1
		}
		sum := 0.0
		for _, release := range evenReleases() {
			s := rig.Swing(b, release)
			if s.Outcome != sim.Rocks {
				return 1
			}
			sum += (s.Period/period - 1) * (s.Period/period - 1)
		}
		return sum
	}
	at := func(x []float64) even {
		e := even{radii: slices.Clone(start.radii), joints: slices.Clone(start.joints)}
		for i := range e.radii {
			e.radii[i] *= math.Exp(x[i] / 10)
		}
		for i := range e.joints {
			e.joints[i] *= math.Exp(x[len(e.radii)+i] / 10)
		}
		return e
	}
	problem := optimize.Problem{Func: func(x []float64) float64 { return off(at(x)) }}
	settings := &optimize.Settings{FuncEvaluations: 60 * arcs, Concurrent: 1}
	result, err := optimize.Minimize(problem, make([]float64, len(start.radii)+len(start.joints)), settings, &optimize.NelderMead{SimplexSize: 0.5})
	if result == nil || err != nil && result.X == nil {
		return start, off(start) < 1
	}
	return at(result.X), result.F < 1
}

// startEven returns the exact edge of [rocker.EvenTime] by arcs that turn alike, each of the
// exact radius in its middle. With λ = gT²/8π² the edge touches the floor as drawn where H = G_y
// and H′ = G_x, so with d = G_y − H₀ its equation gives d = λG_x²/(k² + G_x² + G_y²).
func startEven(rig sim.Rig, period, reach float64, arcs int) (even, bool) {
	b := rig.Body
	k2, w := b.Inertia/b.Mass, 2*math.Pi/period
	lambda := rig.Floor.FreeFall() / (2 * w * w)
	height := b.Centre.Y - lambda*b.Centre.X*b.Centre.X/(k2+r2.Norm2(b.Centre))
	atRest := height + (k2+height*height)/(2*lambda) // ρ there, the least of all
	turn := 2 * reach / atRest / float64(arcs)       // of one arc
	curve, err := rocker.EvenTime(math.Sqrt(k2), height, lambda, float64(arcs)/2*turn)
	if err != nil || !(height > 0) {
		return even{}, false
	}
	var e even
	for n := 0; n <= arcs/2; n++ {
		e.radii = append(e.radii, curve.Radius(float64(n)*turn))
		if n < arcs/2 {
			e.joints = append(e.joints, (float64(n)+0.5)*turn)
		}
	}
	return e, true
}

// edge returns the edge, reaching so far to either side of the origin.
func (e even) edge(b body.Body, nose, tail float64) (rocker.Profile, bool) {
	spans, ok := e.spans(b, nose, tail)
	if !ok {
		return rocker.Profile{}, false
	}
	p, err := rocker.Chain(nose, spans...)
	return p, err == nil
}

// spans returns the arcs from nose to tail for a body, whose rest lies in the middle of the
// middle arc; as drawn it has rolled from there by atan(G_x/(R − G_y)).
func (e even) spans(b body.Body, nose, tail float64) ([]rocker.Span, bool) {
	if !slices.IsSorted(e.joints) || e.radii[0] <= b.Centre.Y {
		return nil, false
	}
	drawn := math.Atan2(b.Centre.X, e.radii[0]-b.Centre.Y)
	front, rear := e.side(-drawn, nose), e.side(drawn, tail)
	slices.Reverse(front)
	first, last := front[len(front)-1], rear[0]
	spans := append(front[:len(front)-1:len(front)-1], rocker.Arc(first.Radius, first.Length))
	if first.Radius == last.Radius {
		spans[len(spans)-1].Length += last.Length
		rear = rear[1:]
	}
	return append(spans, rear...), true
}

// side returns the arcs on one side, from a tilt from the rest on, for a length.
func (e even) side(from, length float64) []rocker.Span {
	var spans []rocker.Span
	bounds := append(mirrored(e.joints), math.Inf(1))
	for i, to := range bounds {
		radius := e.radii[abs(i-len(e.joints))]
		if to <= from {
			continue
		}
		part := min((to-from)*radius, length)
		if part > 0 {
			spans = append(spans, rocker.Arc(radius, part))
		}
		length -= part
		from = to
	}
	return spans
}

// mirrored returns the joints on both sides of the rest, in order.
func mirrored(joints []float64) []float64 {
	var both []float64
	for i := len(joints) - 1; i >= 0; i-- {
		both = append(both, -joints[i])
	}
	return append(both, joints...)
}

func abs(n int) int { return max(n, -n) }
