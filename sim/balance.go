package sim

import (
	"math"
	"slices"
)

// An Outcome is what becomes of a piece, in one word or a few.
type Outcome int

const (
	Rocks                Outcome = iota // it has a rest, or comes back to it
	NoRest                              // there is no tilt at which it stands
	Neutral                             // it stays wherever it is put
	GoesOverBackwards                   // it passes the last hilltop at the back
	GoesOverForwards                    // it passes the last hilltop at the front
	SettlesInAnotherRest                // it passes a hilltop and is held behind it
	FloorLetsGo                         // the floor cannot hold the contact
)

// String returns the outcome in the words of the trade.
func (o Outcome) String() string {
	return [...]string{
		"rocks", "no rest", "neutral", "goes over backwards", "goes over forwards",
		"settles in another rest", "floor lets go",
	}[o]
}

// A Margin is what lies between the rest and the nearest tip on one side: the hilltop beyond which the piece does not
// come back by itself. Of a ship Angle is the range of stability and Work the dynamical stability there. All fields
// are NaN where there is no hilltop.
type Margin struct {
	Tip   float64 // tilt of the hilltop, rad
	Angle float64 // from the rest to the hilltop, rad, ≥ 0 on both sides
	Lift  float64 // how far the weight must be lifted, plumb, m
	Work  float64 // m·g·Lift, J
	Over  float64 // tilt of the last hilltop on this side, rad; Tip where no other rest follows

	on int // the Bearing on which the hilltop lies
}

// Exists reports whether there is a hilltop on this side.
func (m Margin) Exists() bool { return !math.IsNaN(m.Angle) }

// OverTip reports whether the hilltop stands on the tip of the rocker at that side,
// so that a longer rocker moves it; else it lies on an arc or a corner.
func (r Rig) OverTip(m Margin) bool {
	return m.Exists() && (m.on == 0 || m.on == r.Profile.Bearings()-1)
}

var noMargin = Margin{math.NaN(), math.NaN(), math.NaN(), math.NaN(), math.NaN(), 0}

// A Balance is where a rig rests and how near it is to going over. The methods of a Rig that ask
// about its rest panic for one that has none.
type Balance struct {
	Outcome    Outcome     // Rocks, NoRest or Neutral
	Rest       Equilibrium // meaningful only if Outcome is Rocks
	Steadiness float64     // Z′ at the rest, m, a ship's metacentric height; on a joint the smaller of the two; NaN on a flat
	Period     float64     // of the small rock there and back, s; NaN on a flat
	Back       Margin
	Forward    Margin
}

// Balance returns where the rig rests: of all rests with the centre of mass above
// the floor, and not upside down, the lowest, of two as low the one nearest to upright, then the one
// further forward. A Balance that does not rock holds NaN. It panics for a rig that
// [Rig.Validate] refuses.
func (r Rig) Balance() Balance {
	var store [16]Equilibrium
	all := r.Equilibria(store[:0])
	best := -1
	for i, e := range all {
		if e.Stable && e.Height > 0 && math.Abs(e.Tilt) < math.Pi-AtJoint && (best < 0 || lower(e, all[best])) {
			best = i
		}
	}
	if best >= 0 {
		return r.balanceAt(all, best)
	}
	none := Balance{Outcome: NoRest, Steadiness: math.NaN(), Period: math.NaN(), Back: noMargin, Forward: noMargin}
	if r.neutral() {
		none.Outcome = Neutral
	}
	return none
}

// BalanceAt returns the balance about a rest of [Rig.Equilibria], which it need not
// choose by itself: a second rest, or a pendulum's below its pivot. It panics for any other.
func (r Rig) BalanceAt(rest Equilibrium) Balance {
	var store [16]Equilibrium
	all := r.Equilibria(store[:0])
	i := slices.Index(all, rest)
	if i < 0 {
		panic("sim: this is no equilibrium of the rig: take one of its Equilibria")
	}
	return r.balanceAt(all, i)
}

// mustRest panics for a balance without a rest, of which there is nothing more to ask.
func (b *Balance) mustRest() {
	if b.Outcome != Rocks {
		panic("sim: this balance has no rest to rock about, its Outcome is: " + b.Outcome.String())
	}
}

// lower reports whether a comes before b as the rest of the piece.
func lower(a, b Equilibrium) bool {
	if same := rounding * (math.Abs(a.rise) + math.Abs(b.rise)); math.Abs(a.rise-b.rise) > same {
		return a.rise < b.rise
	}
	if math.Abs(math.Abs(a.Tilt)-math.Abs(b.Tilt)) > rounding {
		return math.Abs(a.Tilt) < math.Abs(b.Tilt)
	}
	return a.Tilt < b.Tilt
}

// neutral reports whether the balance is neutral on some arc or corner.
func (r *Rig) neutral() bool {
	s := search{rig: r, ground: r.Floor.ground()}
	for i := range r.Profile.Bearings() {
		b := r.Profile.Bearing(i)
		if length, _ := r.turned(b); s.neutral(b, length) {
			return true
		}
	}
	return false
}

// balanceAt reads the balance about the i-th of all equilibria.
func (r *Rig) balanceAt(all []Equilibrium, i int) Balance {
	rest := all[i]
	b := Balance{Rest: rest, Steadiness: math.NaN(), Period: math.NaN()}
	if !rest.onFlat(r.Profile) {
		b.Steadiness, b.Period = r.smallRock(rest)
	}
	b.Forward = r.margin(all, i, -1)
	b.Back = r.margin(all, i, +1)
	return b
}

// smallRock returns Z′ and the period of the small rock about a rest off a flat,
//
//	T = 2π √(J/(m·g·Z′)),
//
// on a joint the smaller Z′, and the mean of the periods of its two sides: half of each rock is on either arc.
func (r *Rig) smallRock(rest Equilibrium) (steadiness, period float64) {
	g := r.Floor.ground()
	side := func(i int) (float64, float64) {
		s := r.stand(r.Profile.Bearing(i), rest.roll)
		slope := g.slope(s)
		return slope, 2 * math.Pi * math.Sqrt(r.inertia(s)/(r.weight()*slope))
	}
	steadiness, period = side(rest.before)
	if rest.after != rest.before {
		slope, half := side(rest.after)
		steadiness, period = min(steadiness, slope), (period+half)/2
	}
	return steadiness, period
}

// margin returns what lies between the i-th of all equilibria, a rest, and the next
// hilltop on one side: +1 back, −1 forward.
func (r *Rig) margin(all []Equilibrium, i, side int) Margin {
	n := len(all)
	if n < 2 {
		return noMargin
	}
	rest, tip := all[i], all[((i+side)%n+n)%n]
	turns := 0.0 // how often the search for the tip has gone round
	if i+side < 0 {
		turns = -1
	} else if i+side >= n {
		turns = 1
	}
	m := Margin{Tip: tip.Tilt, Over: tip.Tilt, on: tip.before}
	m.Angle = math.Abs(tip.roll + 2*math.Pi*turns - rest.roll)
	m.Lift = tip.rise - turns*r.Profile.Perimeter()*math.Sin(r.Floor.Slope) - rest.rise
	m.Work = r.weight() * m.Lift
	for k := i + side; k >= 0 && k < n; k += side { // while it stands above the floor
		if e := all[k]; e.Height <= 0 {
			break
		} else if !e.Stable {
			m.Over = e.Tilt
		}
	}
	return m
}
