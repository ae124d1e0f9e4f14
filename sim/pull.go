package sim

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Pull is what a hand at one point of the piece, the top of the back, must do along the floor to tip it backwards.
// A field is NaN where the point lies under the floor, or where there is no tip at the back.
type Pull struct {
	Slow   float64 // pulling slowly, N
	Sudden float64 // by a pull that comes at once and stays, N
}

// Pull returns what a hand at q (chair frame, m) must do about the balance b. A force along
// the floor at height y has the moment F·y about the contact, so held at a tilt it is
// m·g·Z/y. The slow pull is the largest of these up to the tip. A pull that comes at once works F·∫y dφ until then, so it tips if that
// stays above m·g·(E − E at rest) all along: it is the largest quotient of the two.
func (r Rig) Pull(b Balance, q r2.Vec) Pull {
	b.mustRest()
	none := Pull{math.NaN(), math.NaN()}
	if !b.Back.Exists() {
		return none
	}
	var most Pull // over each arc between the rest and the tip
	g, rest, tip := r.Floor.ground(), b.Rest, b.Rest.roll+b.Back.Angle
	begun := math.NaN() // s − y′ at the rest; q moves along the floor by s − y′, since y″ = ρ − y
	from := rest.roll
	for on := rest.home(1); from < tip; on = on.next(r.Profile, 1) {
		bearing := r.Profile.Bearing(on.index)
		turned := r.Profile.Perimeter() * on.shift / (2 * math.Pi) // length rolled on whole turns, m
		to := min(tip, on.end(r.Profile, 1))
		y := func(roll float64) (height, along float64) {
			height, ahead, _ := bearing.Above(q, roll-on.shift)
			return height, bearing.RolledAt(roll-on.shift) + turned - ahead
		}
		first, along := y(from)
		if math.IsNaN(begun) {
			begun = along
		}
		if last, _ := y(to); first <= 0 || last <= 0 {
			return none
		}
		held := func(turn float64) float64 {
			height, _ := y(from + turn)
			return r.weight() * g.arm(r.stand(bearing, from+turn-on.shift)) / height
		}
		most.Slow = max(most.Slow, largest(to-from, held))
		most.Sudden = max(most.Sudden, largest(to-from, func(turn float64) float64 {
			_, along := y(from + turn)
			if along <= begun {
				return held(turn) // at the rest itself, where both grow from nothing
			}
			risen := g.rise(r.stand(bearing, from+turn-on.shift)) - turned*g.sin - rest.rise
			return r.weight() * risen / (along - begun)
		}))
		from = to
	}
	return most
}

// Effort returns what a hand at q must do to hold the piece one degree back and one degree forward of the rest of b,
// N; NaN where the hilltop is nearer, for there nothing is to be held: it goes over.
func (r Rig) Effort(b Balance, q r2.Vec) (back, forward float64) {
	b.mustRest()
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

// Tread returns what feet that stand on the floor so far forward from where the low point touches as drawn, m, must carry,
// square to it, to hold the piece a turn back from the rest of b, rad: as a bathroom scale under them would show, N. Only
// that has a moment about the contact, N·(at − contact) = m·g·Z. It is NaN where the feet do not stand ahead of the contact.
func (r Rig) Tread(b Balance, at, turn float64) float64 {
	b.mustRest()
	bearing, roll := touching(r.Profile, b.Rest.roll+turn)
	ahead := at + bearing.RolledAt(roll)
	if !(ahead > 0) {
		return math.NaN()
	}
	return r.weight() * r.Floor.ground().arm(r.stand(bearing, roll)) / ahead
}

// hold returns the force at q that holds the rig at the given roll, N.
func (r *Rig) hold(q r2.Vec, roll float64) float64 {
	bearing, roll := touching(r.Profile, roll)
	height, _, _ := bearing.Above(q, roll)
	if height <= 0 {
		return math.NaN()
	}
	return r.weight() * r.Floor.ground().arm(r.stand(bearing, roll)) / height
}
