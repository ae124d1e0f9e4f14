package sim

import (
	"math"

	"rockerwright/rocker"
)

// An Equilibrium is a tilt at which the righting arm passes through zero: a rest, or stable
// equilibrium, where it passes upwards, a hilltop, or unstable one, where it passes downwards.
type Equilibrium struct {
	Tilt   float64 // against the vertical, rad, in (−π, π]
	Height float64 // H, of the centre of mass over the floor, m
	Stable bool    // a rest; else a hilltop

	roll          float64 // Tilt − slope, unwrapped in order, rad
	rise          float64 // E, m
	before, after int     // the Bearings on its two sides; the same off a joint
}

// onFlat reports whether e is a rest on a flat of p: the contact jumps there, and
// small rocks have no period of their own.
func (e Equilibrium) onFlat(p rocker.Profile) bool {
	return e.before != e.after && p.Bearing(e.before).Flat > 0
}

// Equilibria appends every rest and hilltop in one whole turn to dst, in order of roll, and returns it. Also those
// past the tips, and those with the centre of mass below the contact (Height < 0), on which a pendulum hangs. A range
// of tilts over which the balance is neutral has none, but where it is a level top the hilltops at both of its brims.
// Bearings are searched by
//
//	Z = |w| sin(θ − θ₀) − R sin α,   w = G − C,  θ₀ = atan2(−wx, −wy),
//
// with zeros θ₀ + β and θ₀ + π − β, sin β = R sin α/|w|, R = 0 at a corner. It panics for a
// rig that [Rig.Validate] refuses.
func (r Rig) Equilibria(dst []Equilibrium) []Equilibrium {
	if err := r.Validate(); err != nil {
		panic(err)
	}
	s := search{rig: &r, ground: r.Floor.ground()}
	first, n := len(dst), r.Profile.Bearings()
	opening := 0 // the sign at the very start, for the joint that closes the turn
	for i := range n {
		left := s.end
		s.enter(i)
		if i == 0 {
			opening = s.start
		} else {
			dst = s.joint(dst, i-1, i, left, s.start)
		}
		b := r.Profile.Bearing(i)
		dst = s.between(dst, i, b.From, b.To)
	}
	if last := r.Profile.Bearing(n - 1); last.Flat > 0 { // else one point all round
		dst = s.joint(dst, n-1, 0, s.end, opening)
	}
	return dropGrazing(dst, first)
}

// A search walks the Bearings of a rig and finds the zeros of Z by its signs, each
// taken once at each joint, so that none is lost or found twice between two arcs.
type search struct {
	rig *Rig
	ground
	start, end    int     // signs of Z just inside the two ends of the Bearing; 0 where it is neutral
	arm           float64 // Z at its end, m
	length, level float64 // |w| and θ₀

	climbing bool        // the last sign that was not 0 was +, and a neutral arc came behind it
	brim     Equilibrium // where that arc begins
}

// enter goes on to the i-th Bearing.
func (s *search) enter(i int) {
	b := s.rig.Profile.Bearing(i)
	first, last := s.rig.standAt(b, b.First), s.rig.standAt(b, b.Last)
	begin := s.ground.arm(first)
	if i > 0 {
		begin = s.arm + s.rig.Profile.Bearing(i-1).Flat*s.cos
	}
	s.arm = s.ground.arm(last)
	s.length, s.level = s.rig.turned(b)
	s.start, s.end = signInside(begin, s.slope(first)), signInside(s.arm, -s.slope(last))
	if s.neutral(b, s.length) {
		s.start, s.end = 0, 0
	}
}

// between finds the zeros between two rolls on the i-th Bearing, start and end being the signs there.
func (s *search) between(dst []Equilibrium, i int, from, to float64) []Equilibrium {
	b := s.rig.Profile.Bearing(i)
	sine := b.Radius * s.sin / s.length
	if s.start == 0 || !(math.Abs(sine) < 1) {
		return dst
	}
	lean := 0.0
	if sine != 0 {
		lean = math.Asin(sine)
	}
	middle := (from + to) / 2
	rest := within(s.level+lean-s.rig.Floor.Slope, middle)
	hill := within(s.level+math.Pi-lean-s.rig.Floor.Slope, middle)
	both := from < min(rest, hill) && max(rest, hill) < to
	switch {
	case s.start < s.end:
		dst = append(dst, s.found(i, i, max(from, min(to, rest)), true))
	case s.start > s.end:
		dst = append(dst, s.found(i, i, max(from, min(to, hill)), false))
	case s.start < 0 && both && rest < hill:
		dst = append(dst, s.found(i, i, rest, true), s.found(i, i, hill, false))
	case s.start > 0 && both && hill < rest:
		dst = append(dst, s.found(i, i, hill, false), s.found(i, i, rest, true))
	}
	return dst
}

// joint finds a zero exactly at the joint between two Bearings, or the jump of Z across
// the flat between them, by the signs on its two sides.
func (s *search) joint(dst []Equilibrium, before, after, left, right int) []Equilibrium {
	roll := s.rig.Profile.Bearing(before).To
	switch {
	case left != 0 && right == 0:
		s.climbing, s.brim = left > 0, s.found(before, after, roll, false)
	case left == 0 && right < 0 && s.climbing: // over a level top: a hilltop at either brim
		return append(dst, s.brim, s.found(before, after, roll, false))
	case left*right < 0:
		return append(dst, s.found(before, after, roll, left < 0))
	}
	return dst
}

// found makes the Equilibrium at a roll, and puts it on the joint that is AtJoint away or nearer.
func (s *search) found(before, after int, roll float64, stable bool) Equilibrium {
	p := s.rig.Profile
	b := p.Bearing(before)
	if before == after {
		if before > 0 && roll-b.From <= AtJoint {
			before--
		} else if after < p.Bearings()-1 && b.To-roll <= AtJoint {
			after++
		}
	}
	at := s.rig.stand(b, roll)
	return Equilibrium{
		Tilt:   wrapped(roll + s.rig.Floor.Slope),
		Height: at.height,
		Stable: stable,
		roll:   roll, rise: s.rise(at), before: before, after: after,
	}
}

// neutral reports whether Z is zero all along b: the centre of mass lies, to
// rounding, on the centre of the arc, and the floor does not slope.
func (s *search) neutral(b *rocker.Bearing, length float64) bool {
	c := s.rig.Body.Centre
	size := b.Radius + math.Abs(c.X) + math.Abs(c.Y)
	return length <= rounding*size && b.Radius*math.Abs(s.sin) <= rounding*size
}

// standAt returns the stance at a joint, without trigonometry.
func (r *Rig) standAt(b *rocker.Bearing, j rocker.Joint) stance {
	x, y := j.Point.X-r.Body.Centre.X, j.Point.Y-r.Body.Centre.Y
	return stance{
		height: x*j.Down.X + y*j.Down.Y,
		ahead:  x*j.Along.X + y*j.Along.Y,
		radius: b.Radius,
	}
}

// signInside returns the sign of a value just beside a point where it is arm and grows by slope on the way.
func signInside(arm, slope float64) int {
	switch {
	case arm > 0 || arm == 0 && slope > 0:
		return 1
	case arm < 0 || arm == 0 && slope < 0:
		return -1
	}
	return 0
}

// within returns the angle brought within half a turn of middle, rad. Neither is far from the other.
func within(angle, middle float64) float64 {
	for angle > middle+math.Pi {
		angle -= 2 * math.Pi
	}
	for angle < middle-math.Pi {
		angle += 2 * math.Pi
	}
	return angle
}

// wrapped returns the angle brought into (−π, π], rad.
func wrapped(angle float64) float64 {
	angle = math.Remainder(angle, 2*math.Pi)
	if angle == -math.Pi {
		return math.Pi
	}
	return angle
}

// dropGrazing removes each rest that is less than AtHilltop from a hilltop, and that hilltop, from dst[first:].
func dropGrazing(dst []Equilibrium, first int) []Equilibrium {
	kept := dst[:first]
	for _, e := range dst[first:] {
		if n := len(kept); n > first && kept[n-1].Stable != e.Stable && e.roll-kept[n-1].roll < AtHilltop {
			kept = kept[:n-1]
			continue
		}
		kept = append(kept, e)
	}
	return kept
}
