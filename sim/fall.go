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

// next returns the place beside p, way = +1 towards the tail, −1 towards the nose.
func (p place) next(profile rocker.Profile, way int) place {
	n := profile.Bearings()
	switch p.index += way; {
	case p.index == n:
		return place{0, p.shift + 2*math.Pi}
	case p.index < 0:
		return place{n - 1, p.shift - 2*math.Pi}
	}
	return p
}

// home returns the place on which a rest stands, on the side given by way.
func (e Equilibrium) home(way int) place {
	switch {
	case way < 0:
		return place{index: e.before}
	case e.after < e.before: // on the chord between the tips
		return place{e.after, 2 * math.Pi}
	}
	return place{index: e.after}
}

// end returns the tilt at which p ends on the side given by way.
func (p place) end(profile rocker.Profile, way int) float64 {
	if way > 0 {
		return profile.Bearing(p.index).To + p.shift
	}
	return profile.Bearing(p.index).From + p.shift
}

// A fall walks a swing from a turning point in to the rest, a [stretch] at a time.
// The turning point must lie in the rest's own well.
type fall struct {
	rig   *Rig
	rest  Equilibrium
	way   int // the side of the turning point
	at    place
	outer float64 // where the next stretch begins, roll
	above float64 // height fallen so far, m
	done  bool
}

func (r *Rig) fallFrom(turning float64, rest Equilibrium) fall {
	f := fall{rig: r, rest: rest, way: 1, outer: turning}
	if turning < rest.roll {
		f.way = -1
	}
	f.at = rest.home(f.way)
	for float64(f.way)*(turning-f.at.end(r.Profile, f.way)) > 0 {
		f.at = f.at.next(r.Profile, f.way)
	}
	return f
}

// next returns the next stretch on the way in, and false when the rest is reached.
func (f *fall) next() (stretch, bool) {
	if f.done {
		return stretch{}, false
	}
	inner := f.at.end(f.rig.Profile, -f.way)
	if f.at == f.rest.home(f.way) {
		inner, f.done = f.rest.roll, true
	}
	s := f.rig.stretchOn(f.rig.Profile.Bearing(f.at.index), f.outer-f.at.shift, inner-f.at.shift, float64(f.way), f.above)
	f.outer, f.above = inner, s.at(s.end).fallen
	f.at = f.at.next(f.rig.Profile, -f.way)
	return s, true
}

// rising returns the roll at which the rig, going out from the rest on one side, has
// gained the given height, m, at the latest at the roll limit, up to which it climbs
// all the way. It is NaN where once round does not gain it: a wheel runs down a slope.
func (r *Rig) rising(rest Equilibrium, way int, height, limit float64) float64 {
	g := r.Floor.ground()
	side := float64(way)
	inner := rest.roll
	at := rest.home(way)
	for range r.Profile.Bearings() + 1 {
		b := r.Profile.Bearing(at.index)
		outer := side * min(side*at.end(r.Profile, way), side*limit)
		c := g.climbFrom(r.stand(b, inner-at.shift), side, b.Radius)
		most := side * (outer - inner)
		gained := c.gained(most)
		switch {
		case gained >= height:
			return inner + side*c.turn(height, most)
		case outer == limit:
			return limit
		}
		height -= gained
		inner, at = outer, at.next(r.Profile, way)
	}
	return math.NaN()
}
