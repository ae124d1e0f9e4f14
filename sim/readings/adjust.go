package readings

import (
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// What is sought where a level was read.
const (
	ahead   = iota // of the balance point, m
	above          // of the balance point, m
	zero           // what the level shows at tilt 0, rad
	resting        // the tilt at rest, rad
	atTail         // the tail's end outwards along the edge, against the profile, m
	atNose         // the same of the nose's
	unknowns
)

type state [unknowns]float64

// centre returns the balance point, m.
func (x *state) centre() r2.Vec { return r2.Vec{X: x[ahead], Y: x[above]} }

// A sight is one thing that was read: what it would be at a state, and its derivatives there.
type sight struct {
	name            string // "" of what no key of [measured] says
	read, deviation float64
	of              func(x *state) (value float64, by state)
}

// only is the sight of one unknown.
func only(name string, which int, read, deviation float64) sight {
	return sight{name, read, deviation, func(x *state) (float64, state) {
		var by state
		by[which] = 1
		return x[which], by
	}}
}

// straight is the sight of a line.
func straight(l line) sight {
	return sight{l.name, l.place, l.deviation, func(x *state) (float64, state) {
		return r2.Dot(l.normal, x.centre()), state{ahead: l.normal.X, above: l.normal.Y}
	}}
}

// upright is the sight of a balance on a tip: the piece is turned by the tilt that brings G upright over its centre,
//
//	tan θ = (G − centre)ₓ / (G − centre)ᵧ,
//
// which is (G − p(θ))·u′(θ) = 0.
func upright(t *tilting, on tip, end int) sight {
	return sight{t.name, t.read, t.deviation, func(x *state) (float64, state) {
		d := r2.Sub(x.centre(), r2.Add(on.centre, r2.Scale(x[end], on.outward)))
		square := r2.Norm2(d)
		by := state{ahead: d.Y / square, above: -d.X / square, zero: 1}
		by[end] = -(by[ahead]*on.outward.X + by[above]*on.outward.Y)
		return math.Atan2(d.X, d.Y) + x[zero], by
	}}
}

// restsOn is the sight of the contact at rest, straight under G: H′ is zero, off by no more than the low point is.
func restsOn(edge rocker.Profile, read float64) sight {
	return sight{"", read, usualTape, func(x *state) (float64, state) {
		i, within := edge.Find(x[resting])
		_, off, curve := edge.Bearing(i).Above(x.centre(), within)
		_, du := rocker.Down(within)
		return off, state{ahead: -du.X, above: -du.Y, resting: curve}
	}}
}

// over is the sight of a tip's height over the floor at rest.
func over(edge rocker.Profile, name string, height float64, on tip, end int) sight {
	return sight{name, height, usualTape, func(x *state) (float64, state) {
		i, within := edge.Find(x[resting])
		value, rise, _ := edge.Bearing(i).Above(r2.Add(on.point, r2.Scale(x[end], on.outward)), within)
		u, _ := rocker.Down(within)
		by := state{resting: rise}
		by[end] = -r2.Dot(on.outward, u)
		return value, by
	}}
}

// sights returns all that was read of the balance point, and what is known of the other unknowns without: those that
// nothing was read of are held at zero.
func (r *Readings) sights(lines []line) []sight {
	var list []sight
	for _, l := range lines {
		list = append(list, straight(l))
	}
	rest, tail, nose := r.tiltings()
	onTail, onNose := r.tips()
	if rest != nil {
		read := *rest
		list = append(list, sight{read.name, read.read, read.deviation, func(x *state) (float64, state) {
			return x[zero] + x[resting], state{zero: 1, resting: 1}
		}})
	}
	if tail != nil {
		list = append(list, upright(tail, onTail, atTail))
	}
	if nose != nil {
		list = append(list, upright(nose, onNose, atNose))
	}
	for _, end := range []struct {
		name   string
		height float64
		on     tip
		which  int
	}{{"nose_tip", r.NoseTip, onNose, atNose}, {"tail_tip", r.TailTip, onTail, atTail}} {
		if end.height != 0 {
			list = append(list, over(r.Edge, end.name, end.height, end.on, end.which))
		}
	}
	list = append(list, only("", atTail, r.off.tailEnd, usualEnd), only("", atNose, r.off.noseEnd, usualEnd))
	switch read := rest != nil || tail != nil || nose != nil; {
	case !read:
		list = append(list, only("", zero, 0, 1))
	case r.SeatDrawn:
		list = append(list, only("seat", zero, r.SeatFall+r.off.seat, usualSeat))
	}
	if r.rested() {
		return append(list, restsOn(r.Edge, r.off.low))
	}
	return append(list, only("", resting, 0, 1))
}

// An adjusted is where the squares of what the sights are off, in their own deviations, add up to the least.
type adjusted struct {
	at     state
	spread mat.SymDense // covariance of the unknowns
	off    []float64    // of each sight, what was read less what it would be
	free   []float64    // the part of each sight that the others hold, 0 to 1: its redundancy number
	sum    float64      // of the squares
}

// adjust seeks from a place on, by Gauss and Newton. ok is false where the sights do not hold all the unknowns, or
// lead nowhere. The redundancy numbers are Baarda's, A testing procedure for use in geodetic networks (1968); from memory.
func adjust(sights []sight, from state) (a adjusted, ok bool) {
	a.at = from
	var factor mat.Cholesky
	for range 100 {
		normal, right := mat.NewSymDense(unknowns, nil), mat.NewVecDense(unknowns, nil)
		for _, s := range sights {
			value, by := s.of(&a.at)
			weight := 1 / (s.deviation * s.deviation)
			for i := range by {
				right.SetVec(i, right.AtVec(i)+weight*by[i]*(s.read-value))
				for j := i; j < unknowns; j++ {
					normal.SetSym(i, j, normal.At(i, j)+weight*by[i]*by[j])
				}
			}
		}
		if !factor.Factorize(normal) {
			return a, false
		}
		var step mat.VecDense
		if err := factor.SolveVecTo(&step, right); err != nil {
			return a, false
		}
		longest := 0.0
		for i := range a.at {
			a.at[i] += step.AtVec(i)
			longest = max(longest, math.Abs(step.AtVec(i)))
		}
		switch {
		case !(longest < 100): // m, rad: nowhere
			return a, false
		case longest < 1e-15:
			return a.judged(sights, &factor)
		}
		a.sum = longest
	}
	if a.sum > 1e-9 { // neither a rounding
		return a, false
	}
	return a.judged(sights, &factor)
}

// judged fills in how surely it is known, and what each sight is off.
func (a adjusted) judged(sights []sight, factor *mat.Cholesky) (adjusted, bool) {
	if err := factor.InverseTo(&a.spread); err != nil {
		return a, false
	}
	a.sum, a.off, a.free = 0, nil, nil
	for _, s := range sights {
		value, by := s.of(&a.at)
		held := 0.0
		for i := range by {
			for j := range by {
				held += by[i] * a.spread.At(i, j) * by[j]
			}
		}
		off := s.read - value
		a.off, a.free = append(a.off, off), append(a.free, 1-held/(s.deviation*s.deviation))
		a.sum += off / s.deviation * (off / s.deviation)
	}
	xx, xy, yy := a.spread.At(ahead, ahead), a.spread.At(ahead, above), a.spread.At(above, above)
	const most = 1 // m, the deviation of a place that is known at all
	return a, xx*yy-xy*xy > 1e-6*(xx+yy)*(xx+yy) && xx+yy < most*most
}

// least is the redundancy number from which on others hold a sight at all.
const least = 1e-6

// odd returns what a sight is off, in deviations of what it may be off; zero where no other holds it.
func (a *adjusted) odd(sights []sight, i int) float64 {
	if a.free[i] < least {
		return 0
	}
	return a.off[i] / (sights[i].deviation * math.Sqrt(a.free[i]))
}
