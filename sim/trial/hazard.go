package trial

import (
	"math"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// LetsGo is what a hazard does that arrives on a floor which cannot hold it.
const LetsGo = "arrives and the floor lets go"

// hazards returns what hazards do to the piece, those that take it over first: Got is the lift that is left, m, on
// the side of which there is less. Who arrives on the tail takes it over where it would rest, but not come to rest.
func hazards(r *check.Report) []Finding {
	var over, left found
	goesOver := func(l *check.Load, what string, side check.Side) {
		f := over.add(Hazardous, what, "", quantity.Length, math.NaN(), math.NaN())
		f.Load, f.Who, f.Side = l, l.Sitter, side
	}
	for i := range r.Loads {
		l := &r.Loads[i]
		if l.Empty || l.Role != piece.Hazard {
			continue
		}
		if !l.Upright() {
			side := check.NoSide
			if l.Balance.Outcome == sim.NoRest {
				side = check.Back
				if arm, _ := l.Rig.Righting(0); arm > 0 {
					side = check.Forward
				}
			}
			goesOver(l, "goes over", side)
			continue
		}
		if arrives(l) && r.Loads[0].Upright() {
			switch arrival(r.Design, &r.Loads[0], l) {
			case sim.GoesOverBackwards:
				goesOver(l, "arrives and goes over", check.Back)
				continue
			case sim.GoesOverForwards:
				goesOver(l, "arrives and goes over", check.Forward)
				continue
			case sim.FloorLetsGo:
				goesOver(l, LetsGo, check.NoSide)
				continue
			}
		}
		f := left.add(Hazardous, "lift left", "", quantity.Length, min(l.Back.Lift, l.Forward.Lift), math.NaN())
		f.Load, f.Who, f.Side = l, l.Sitter, check.Back
		if !(l.Back.Lift <= l.Forward.Lift) {
			f.Side = check.Forward
		}
	}
	return append(over, left...)
}
