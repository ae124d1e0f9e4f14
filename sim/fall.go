package sim

import (
	"math"

	"rockerwright/rocker"
)

// A place is a Bearing in the endless chain of a rocker that may roll round and
// round: its index, and the whole turns by which its tilts are shifted.
type place struct {
	index int
	shift float64 // a multiple of 2π, rad
}

// next returns the place beside p, on the side of the tail (+1) or of the nose (−1).
func (p place) next(profile rocker.Profile, side int) place {
	n := profile.Bearings()
	switch p.index += side; {
	case p.index == n:
		return place{0, p.shift + 2*math.Pi}
	case p.index < 0:
		return place{n - 1, p.shift - 2*math.Pi}
	}
	return p
}

// home returns the place on which a rest stands, on a joint that of the side asked for.
func (e Equilibrium) home(side int) place {
	switch {
	case side < 0:
		return place{index: e.before}
	case e.after < e.before: // on the chord between the tips
		return place{e.after, 2 * math.Pi}
	}
	return place{index: e.after}
}

// end returns the tilt at which p ends on a side.
func (p place) end(profile rocker.Profile, side int) float64 {
	if side > 0 {
		return profile.Bearing(p.index).To + p.shift
	}
	return profile.Bearing(p.index).From + p.shift
}

// A fall walks a swing from a turning point in to the rest, a [stretch] at a time.
// The turning point must lie in the rest's own well.
type fall struct {
	rig   *Rig
	rest  Equilibrium
	side  int // of the turning point
	at    place
	outer float64 // where the next stretch begins, roll
	above float64 // height fallen so far, m
	done  bool
}

func (r *Rig) fallFrom(turning float64, rest Equilibrium) fall {
	f := fall{rig: r, rest: rest, side: 1, outer: turning}
	if turning < rest.roll {
		f.side = -1
	}
	f.at = rest.home(f.side)
	for float64(f.side)*(turning-f.at.end(r.Profile, f.side)) > 0 {
		f.at = f.at.next(r.Profile, f.side)
	}
	return f
}

// next returns the next stretch inwards, and false when the rest is reached.
func (f *fall) next() (stretch, bool) {
	if f.done {
		return stretch{}, false
	}
	inner := f.at.end(f.rig.Profile, -f.side)
	if f.at == f.rest.home(f.side) {
		inner, f.done = f.rest.roll, true
	}
	s := f.rig.stretchOn(f.rig.Profile.Bearing(f.at.index), f.outer-f.at.shift, inner-f.at.shift, float64(f.side), f.above)
	f.outer, f.above = inner, s.at(s.end).fallen
	f.at = f.at.next(f.rig.Profile, -f.side)
	return s, true
}

// rising returns the roll at which the rig, going out from the rest on one side, has
// gained the given height, m, at the latest at the roll limit, up to which it climbs
// without a fall. It is NaN where once round does not gain it: a wheel runs down a slope.
func (r *Rig) rising(rest Equilibrium, side int, height, limit float64) float64 {
	g := r.Floor.ground()
	sign := float64(side)
	inner := rest.roll
	at := rest.home(side)
	for range r.Profile.Bearings() + 1 {
		b := r.Profile.Bearing(at.index)
		outer := sign * min(sign*at.end(r.Profile, side), sign*limit)
		c := g.climbFrom(r.stand(b, inner-at.shift), sign, b.Radius)
		most := sign * (outer - inner)
		gained := c.gained(most)
		switch {
		case gained >= height:
			return inner + sign*c.turn(height, most)
		case outer == limit:
			return limit
		}
		height -= gained
		inner, at = outer, at.next(r.Profile, side)
	}
	return math.NaN()
}
