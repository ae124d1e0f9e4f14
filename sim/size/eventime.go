package size

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// evenness returns the time of a rock from each of EvenReleases, s; NaN where it does not come back.
func evenness(r sim.Rig, b sim.Balance) (periods []float64) {
	for _, release := range EvenReleases {
		periods = append(periods, r.Swing(b, release).Period)
	}
	return periods
}

// EvenReleases are the releases from rest, + back, by which a rocker's time goes with how far it rocks, rad.
var EvenReleases = [...]float64{1 * quantity.Deg, 4 * quantity.Deg, 8 * quantity.Deg, 12 * quantity.Deg}

// evenTime returns the design on the rocker of so many arcs (1, 3 or 5) nearest to the even-time edge for the owner
// at ease, in the time aimed for, or the one it has. Seat, low point and ends stay as drawn. ok is false where
// there is none: on a sloping floor, or where it would not rest.
func (q *question) evenTime(arcs int) (d piece.Design, ok bool) {
	f, ok := FeelOf(q.drawn)
	if !ok || f.floor.Slope != 0 {
		return d, false
	}
	period := cmp.Or(q.target.OneRock, f.Period)
	d = q.design.Clone()
	for range 3 { // the rockers' wood moves the balance point a little
		r, err := q.sitters.Balance(d)
		if err != nil {
			return d, false
		}
		rig := r.Seated().Rig
		e, ok := fitEven(rig, period, q.start.nose, q.start.tail, arcs)
		if !ok {
			return d, false
		}
		s, _ := e.shape(rig.Body, q.start.nose, q.start.tail)
		d = s.with(q.design)
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
		s, ok := e.shape(rig.Body, nose, tail)
		if !ok {
			return 1
		}
		var err error
		if rig.Profile, err = s.on(piece.Rocker{}).Profile(); err != nil {
			return 1
		}
		b := rig.Balance()
		if b.Outcome != sim.Rocks {
			return 1
		}
		sum := 0.0
		for _, took := range evenness(rig, b) {
			sum += (took/period - 1) * (took/period - 1)
		}
		if math.IsNaN(sum) {
			return 1
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
	x, least := downhill(func(x []float64) float64 { return off(at(x)) }, make([]float64, arcs), 0.5, 60*arcs, nil)
	return at(x), least < 1
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

// shape returns the arcs from nose to tail for a body, whose rest lies in the middle of the
// middle arc; as drawn it has rolled from there by atan(G_x/(R − G_y)).
func (e even) shape(b body.Body, nose, tail float64) (shape, bool) {
	if !slices.IsSorted(e.joints) || e.radii[0] <= b.Centre.Y {
		return shape{}, false
	}
	drawn := e.along(math.Atan2(b.Centre.X, e.radii[0]-b.Centre.Y))
	s := shape{radii: e.radii[:1], nose: nose, tail: tail}
	for i, joint := range e.joints {
		radius, off := e.radii[i+1:i+2], e.along(joint)
		s.radii = slices.Concat(radius, s.radii, radius)
		s.joints = slices.Concat([]float64{-off - drawn}, s.joints, []float64{off - drawn})
	}
	for len(s.joints) > 0 && s.joints[0] <= -nose { // a short end has fewer
		s.radii, s.joints = s.radii[1:], s.joints[1:]
	}
	for last := len(s.joints) - 1; last >= 0 && s.joints[last] >= tail; last-- {
		s.radii, s.joints = s.radii[:last+1], s.joints[:last]
	}
	return s, true
}

// along returns the length along the edge from the rest to where it touches at a tilt from there, m.
func (e even) along(tilt float64) float64 {
	length, from := 0.0, 0.0
	for i, radius := range e.radii {
		to := math.Abs(tilt)
		if i < len(e.joints) {
			to = min(to, e.joints[i])
		}
		length += radius * (to - from)
		from = to
	}
	return math.Copysign(length, tilt)
}
