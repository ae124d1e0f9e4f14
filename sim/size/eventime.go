package size

import (
	"math"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/piece"
)

// An Evenness says how a rocker's time goes with how far it rocks.
type Evenness struct {
	Releases []float64 // from rest, to the side that reaches less far, rad
	Periods  []float64 // s; NaN where it does not come back
	Spread   float64   // largest less least, as a part of the smallest rock's time
}

// evenness rocks a load from each of some releases.
func evenness(l *piece.Load, releases []float64) Evenness {
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

// evenTime returns the design on the even-time rocker for the owner at ease, of so many arcs,
// in the time that is aimed for, or the one it has as drawn. Seat and low point stay where they
// are drawn, and the ends as long. ok is false where there is none: on a sloping floor, or where
// the edge does not reach so far.
func (q *question) evenTime(arcs int) (d piece.Design, ok bool) {
	f, ok := FeelOf(q.drawn)
	if !ok || f.floor.Slope != 0 {
		return d, false
	}
	period := q.target.OneRock
	if period == 0 {
		period = f.Period
	}
	w := 2 * math.Pi / period
	d = q.design.Clone()
	for range 4 { // the rockers' wood moves the balance point a little
		r, err := q.company.Balance(d)
		if err != nil {
			return d, false
		}
		e := evenEdge(r.Loads[min(1, len(r.Loads)-1)].Rig.Body, f.gravity/(2*w*w))
		spans, nose, err := e.arcs(q.start.nose, q.start.tail, arcs)
		if err != nil {
			return d, false
		}
		d.Rocker = q.design.Rocker
		d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Nose, d.Rocker.Arcs = 0, 0, nose, nil
		for _, span := range spans {
			d.Rocker.Arcs = append(d.Rocker.Arcs, piece.Arc{Radius: span.Radius, Length: span.Length})
		}
		if len(spans) == 1 {
			d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Arcs = spans[0].Radius, spans[0].Length-nose, nil
		}
	}
	return d, true
}

// An even is the even-time edge of one body, φ being the tilt from its rest.
type even struct {
	gyration, height, lambda float64 // k, H₀ and λ of [rocker.EvenTime], m
	drawn                    float64 // φ at tilt 0, rad
}

// evenEdge returns the edge on which a body rocks evenly that, as drawn, touches the floor at
// the origin: H = G_y and H′ = G_x there, so that with d = H − H₀
//
//	G_x² = d(k² + G_y²)/(λ − d),   d = λG_x²/(k² + G_x² + G_y²),
//
// and φ from du/dφ = ½√((k² + H²)/(λ − u²)), u² = d.
func evenEdge(b body.Body, lambda float64) even {
	k2 := b.Inertia / b.Mass
	d := lambda * b.Centre.X * b.Centre.X / (k2 + r2.Norm2(b.Centre))
	e := even{gyration: math.Sqrt(k2), height: b.Centre.Y - d, lambda: lambda}
	e.drawn = math.Copysign(quad.Fixed(func(u float64) float64 {
		h := e.height + u*u
		return 2 * math.Sqrt((lambda-u*u)/(k2+h*h))
	}, 0, math.Sqrt(d), 20, quad.Legendre{}, 0), b.Centre.X)
	return e
}

// arcs returns the edge as so many arcs, reaching so far to either side of the origin, and the
// length from the nose tip to the origin. They are laid evenly about the rest, one of them
// astride it, as far as the longer side reaches; the shorter side is cut off.
func (e even) arcs(nose, tail float64, arcs int) (spans []rocker.Span, toOrigin float64, err error) {
	atRest := e.height + (e.gyration*e.gyration+e.height*e.height)/(2*e.lambda) // ρ, the least
	reach := 1.05 * (max(nose, tail)/atRest + math.Abs(e.drawn))
	curve, err := rocker.EvenTime(e.gyration, e.height, e.lambda, reach)
	if err != nil {
		return nil, 0, err
	}
	front, rear := e.tiltAt(curve, nose, -reach), e.tiltAt(curve, tail, reach)
	further := max(-front, rear)
	if curve.Nose, curve.Tail = -further, further; !(further > 0) {
		return nil, 0, &UnsuitedError{"an even-time edge does not reach so far"}
	}
	all, _, err := curve.Arcs(arcs)
	if err != nil {
		return nil, 0, err
	}
	tilt := -further
	for _, s := range all {
		from, to := max(tilt, front), min(tilt+s.Length/s.Radius, rear)
		tilt += s.Length / s.Radius
		if to-from < 1e-3 {
			continue // cut off
		}
		spans = append(spans, rocker.Arc(s.Radius, (to-from)*s.Radius))
		toOrigin += s.Radius * max(0, min(to, e.drawn)-from)
	}
	return spans, toOrigin, nil
}

// tiltAt returns the tilt from the rest at a length along the curve from the origin, towards
// the tilt most.
func (e even) tiltAt(c rocker.Curve, length, most float64) float64 {
	low, high := e.drawn, most
	for range 50 {
		middle := (low + high) / 2
		if quad.Fixed(c.Radius, min(e.drawn, middle), max(e.drawn, middle), 12, quad.Legendre{}, 0) < length {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}
