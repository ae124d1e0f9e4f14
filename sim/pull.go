package sim

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Pull is what a hand at one point of the piece, the top of the back, must do
// along the floor to tip it backwards. A field is NaN where the point lies under the floor,
// or where there is no tip at the back.
type Pull struct {
	Slow   float64 // pulling slowly, N
	Sudden float64 // by a pull that comes at once and stays, N
}

// Pull returns what a hand at q (chair frame, m) must do about the balance b, which
// must have a rest. A force along the floor at height y has the moment F·y about the
// contact, so held at a tilt it is m·g·Z/y. The slow pull is the largest of these up to
// the tip. A pull that comes at once works F·∫y dφ on the way, so it tips if that
// stays above m·g·(E − E at rest) all the way: it is the largest quotient of the two.
func (r Rig) Pull(b Balance, q r2.Vec) Pull {
	if !b.Back.Exists() {
		return Pull{math.NaN(), math.NaN()}
	}
	slow, sudden := r.overPull(b, q)
	return Pull{slow, sudden}
}

// Effort returns what a hand at q must do to hold the
// piece one degree back and one degree forward of its rest, N; NaN where the hilltop is nearer, for
// there nothing is to be held: it goes over.
func (r Rig) Effort(b Balance, q r2.Vec) (back, forward float64) {
	const degree = math.Pi / 180
	back, forward = math.NaN(), math.NaN()
	if !(b.Back.Angle <= degree) {
		back = r.hold(q, b.Rest.roll+degree)
	}
	if !(b.Forward.Angle <= degree) {
		forward = -r.hold(q, b.Rest.roll-degree)
	}
	return back, forward
}

// hold returns the force at q that holds the rig at the given roll, N.
func (r *Rig) hold(q r2.Vec, roll float64) float64 {
	i, roll := r.Profile.Find(roll)
	bearing := r.Profile.Bearing(i)
	height, _, _ := bearing.Above(q, roll)
	if height <= 0 {
		return math.NaN()
	}
	return r.weight() * r.Floor.ground().arm(r.stand(bearing, roll)) / height
}

// overPull returns the slow and the sudden pull at q, N: the largest over each arc
// between the rest and the tip. The way of q along the floor is s − y′, since y″ = ρ − y.
func (r *Rig) overPull(b Balance, q r2.Vec) (slow, sudden float64) {
	g := r.Floor.ground()
	tip := b.Rest.roll + b.Back.Angle
	start := b.Rest.rise
	begun := math.NaN() // s − y′ at the rest
	gone := 0.0         // length rolled on whole turns, m
	from := b.Rest.roll
	for at := b.Rest.home(1); from < tip; at = at.next(r.Profile, 1) {
		bearing := r.Profile.Bearing(at.index)
		if at.index == 0 && from > b.Rest.roll {
			gone += r.Profile.Perimeter()
		}
		to := min(tip, at.end(r.Profile, 1))
		y := func(roll float64) (height, way float64) {
			height, ahead, _ := bearing.Above(q, roll-at.shift)
			return height, bearing.RolledAt(roll-at.shift) + gone - ahead
		}
		if math.IsNaN(begun) {
			_, begun = y(from)
		}
		if height, _ := y(from); height <= 0 {
			return math.NaN(), math.NaN()
		}
		if height, _ := y(to); height <= 0 {
			return math.NaN(), math.NaN()
		}
		held := func(turn float64) float64 {
			height, _ := y(from + turn)
			return r.weight() * g.arm(r.stand(bearing, from+turn-at.shift)) / height
		}
		slow = max(slow, largest(to-from, held))
		sudden = max(sudden, largest(to-from, func(turn float64) float64 {
			_, way := y(from + turn)
			if way <= begun {
				return held(turn) // at the rest itself, where both grow from nothing
			}
			risen := g.rise(r.stand(bearing, from+turn-at.shift)) - gone*g.sin - start
			return r.weight() * risen / (way - begun)
		}))
		from = to
	}
	return slow, sudden
}
