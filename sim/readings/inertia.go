package readings

import (
	"fmt"
	"math"

	"rockerwright/body"
	"rockerwright/sim"
)

// inertia returns the inertia (kg·m²) of the piece about its balance point by ten timed
// rocks, empty or else with a rider; NaN where none were timed.
func (r Readings) inertia(piece body.Body) (float64, error) {
	switch {
	case r.TenRocks != 0:
		return r.timed(piece, body.Body{}, "ten_rocks", "let_go", r.TenRocks, r.LetGo)
	case r.RiddenTenRocks != 0:
		return r.timed(piece, r.Rider, "ten_rocks_ridden", "let_go_ridden", r.RiddenTenRocks, r.RiddenLetGo)
	}
	return math.NaN(), nil
}

// timed finds the inertia with which the piece and a rider, let go from a tilt, take a
// tenth of the time for a rock. The square of that time is very nearly straight in the
// inertia, so the secant through two of them is on it in a few steps. Rocks die away, and
// smaller ones take a little less time; a tenth of ten is taken for the first.
func (r Readings) timed(piece, rider body.Body, time, from string, tenRocks, letGo float64) (float64, error) {
	if !(letGo > 0) {
		return 0, wrong(from, "say from how many degrees of tilt it was let go")
	}
	want := tenRocks / 10
	squared := func(inertia float64) (float64, error) {
		piece.Inertia = inertia
		rig := sim.Rig{Profile: r.Edge, Body: body.Join(piece, rider), Floor: r.Floor}
		balance := rig.Balance()
		if balance.Outcome != sim.Rocks {
			return 0, wrong(time, "by its weight and balance point the piece has no rest to rock about, yet it was timed: read the scales again")
		}
		swing := rig.Swing(balance, letGo)
		if swing.Outcome != sim.Rocks {
			return 0, wrong(from, "let go from so far it would not come back")
		}
		return swing.Period * swing.Period, nil
	}
	least, err := squared(0)
	if err != nil {
		return 0, err
	}
	if want*want <= least {
		return 0, wrong(time, fmt.Sprintf("ten rocks in %.1f s are fewer seconds than a piece of this weight and balance point takes without any inertia (%.1f s): count ten there-and-backs and time again", tenRocks, 10*math.Sqrt(least)))
	}
	a, ya := 0.0, least
	b := piece.Mass * 0.1
	yb, err := squared(b)
	if err != nil {
		return 0, err
	}
	for range 30 {
		next := b + (want*want-yb)*(b-a)/(yb-ya)
		if math.Abs(next-b) <= 1e-13*next || next > 1e3*piece.Mass {
			b = next
			break
		}
		a, ya = b, yb
		b = next
		if yb, err = squared(b); err != nil {
			return 0, err
		}
		if yb == ya {
			break
		}
	}
	if b > longest*longest*piece.Mass {
		return 0, wrong(time, fmt.Sprintf("ten rocks in %.1f s are more seconds than any piece of this weight takes: count ten there-and-backs and time again", tenRocks))
	}
	return b, nil
}

// longest is the largest radius of gyration of a piece that is believed, m.
const longest = 1.0
