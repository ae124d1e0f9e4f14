package trial

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// What hazards do, besides what a piece does by itself.
const (
	Arrives    = "arrives and goes over"
	LiftLeft   = "lift left"
	RockedHard = "rocked hard" // by its own rider, Got whole leans to and fro
	EveryDay   = "every day"   // of what everybody does, see Daily
)

// hazards returns what hazards do to the piece, those that take it over first: Got is the lift that is left, m, on
// the side of which there is less. Who arrives on the tail takes it over where it would rest, but not come to rest.
// Then come what happens every day and takes it over, and whoever does so with leaning once, or once to and fro.
func hazards(r *check.Report) []Finding {
	var over, left found
	goesOver := func(l *check.Load, what string, side check.Side) *Finding {
		f := over.add(Hazardous, what, "", quantity.Length, math.NaN(), math.NaN())
		f.Load, f.Who, f.Side = l, l.Sitter, side
		return f
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
			if side := sideOf(arrival(r, l).Outcome); side != check.NoSide {
				goesOver(l, Arrives, side)
				continue
			}
		}
		f := left.add(Hazardous, LiftLeft, "", quantity.Length, min(l.Back.Lift, l.Forward.Lift), math.NaN())
		f.Load, f.Who, f.Side = l, l.Sitter, check.Back
		if !(l.Back.Lift <= l.Forward.Lift) {
			f.Side = check.Forward
		}
	}
	for i := range r.Loads {
		l := &r.Loads[i]
		if l.Empty || !l.Asked() {
			continue
		}
		for _, d := range daily(r, l) {
			if d.harmless() {
				continue
			}
			t := try(r, d.on, d.name, Daily, d.start)
			if side := sideOf(t.Outcome); side != check.NoSide {
				goesOver(l, EveryDay, side).Trial = &t
			}
		}
		if back, forward := l.Leans(); back == forward || l.Posture == person.FeetOff {
			continue
		}
		if h := r.RockedHard(l, 1); h.Outcome != sim.Rocks && h.Survived() <= harmfulLeans(r) {
			f := goesOver(l, RockedHard, sideOf(wayOver(r, l, h.Outcome)))
			f.Got, f.Kind = float64(len(h.Leans)), quantity.Count
		}
	}
	return append(over, left...)
}

// harmfulLeans is from how many whole leans a piece may come back and still be told to go over when it is rocked hard: one, of
// what children rock; none of any other, for everybody sits up at once now and then. Our judgement.
func harmfulLeans(r *check.Report) int {
	if wild(r) == Play {
		return 1
	}
	return 0
}

// sideOf returns on which side an outcome goes over.
func sideOf(o sim.Outcome) check.Side {
	switch o {
	case sim.GoesOverBackwards:
		return check.Back
	case sim.GoesOverForwards:
		return check.Forward
	}
	return check.NoSide
}
