package readings

import (
	"fmt"
	"math"

	"rockerwright/body"
	"rockerwright/rocker/root"
	"rockerwright/sim"
)

// A timed is ten rocks on the watch, and who rode.
type timed struct {
	time, from      string // the names of the readings
	tenRocks, letGo float64
	rider           body.Body
}

// rocks returns the ten rocks that say the inertia, empty or else ridden; ok is false where none were timed.
func (r Readings) rocks() (t timed, ok bool) {
	if r.TenRocks != 0 {
		return timed{"ten_rocks", "let_go", r.TenRocks, r.LetGo, body.Body{}}, true
	}
	return r.ridden(), r.RiddenTenRocks != 0
}

func (r Readings) ridden() timed {
	return timed{"ten_rocks_ridden", "let_go_ridden", r.RiddenTenRocks, r.RiddenLetGo, r.Rider}
}

// period returns the time of a rock of the piece with its rider, s. Rocks die away, and
// smaller ones take a little less time; a tenth of ten is taken for the first.
func (r Readings) period(piece body.Body, t timed) (float64, error) {
	if !(t.letGo > 0) {
		return 0, wrong(t.from, "say from how many degrees of tilt it was let go")
	}
	rig := sim.Rig{Profile: r.Edge, Body: body.Join(piece, t.rider), Floor: r.Floor}
	balance := rig.Balance()
	if balance.Outcome != sim.Rocks {
		return 0, wrong(t.time, "by its weight and balance point the piece has no rest to rock about, yet it was timed: "+
			"read the scales again")
	}
	swing := rig.Swing(balance, t.letGo)
	if swing.Outcome != sim.Rocks {
		return 0, wrong(t.from, "let go from so far it would not come back")
	}
	return swing.Period, nil
}

// inertia returns the inertia (kg·m²) about its balance point with which piece and rider take a tenth of the time
// for a rock, and the time of ten without any (s). The square of the time is very nearly straight in the inertia,
// for the distance from G to the contact hardly goes with the tilt: it is sought between a quarter and four times
// of what that line says, which a G 0.1 mm over the floor keeps. Of rocks quicker than without any, or much too
// slow, the line is kept, for [judge] to tell an error of reading from a reading that cannot be.
func (r Readings) inertia(piece body.Body, t timed) (inertia, least float64, err error) {
	squared := func(inertia float64) float64 {
		if err != nil {
			return 0
		}
		piece.Inertia = inertia
		var period float64
		period, err = r.period(piece, t)
		return period * period
	}
	want := t.tenRocks / 10 * (t.tenRocks / 10)
	usual := 0.1 * piece.Mass
	without, with := squared(0), squared(usual)
	inertia, least = usual*(want-without)/(with-without), 10*math.Sqrt(without)
	if err == nil && inertia > 0 && inertia < 1e3*piece.Mass {
		inertia = root.Between(func(x float64) float64 { return squared(x) - want }, inertia/4, 4*inertia, 1e-13*inertia)
	}
	return inertia, least, err
}

// What is believed of the radius of gyration of a piece, m; our judgement.
const (
	longest = 1.0  // no piece has more
	usual   = 0.35 // a chair has about so much
)

// judge holds the inertia against its uncertainty: an error where no error of reading explains it. Where it is less
// sure than a piece's is large, or below zero, the rocks do not tell it, and it is NaN; the latter is doubtful.
func (r Readings) judge(result *Result, least float64) error {
	t, timed := r.rocks()
	if !timed {
		return nil
	}
	v, mass := &result.Inertia, result.Body.Mass
	off := doubtful / twoSided95 * v.Uncertain
	of := ""
	if t.time == "ten_rocks_ridden" {
		of = " with this rider"
	}
	switch {
	case v.Value+off <= 0:
		return wrong(t.time, fmt.Sprintf("ten rocks in %.1f s are fewer seconds than a piece of this weight and balance point "+
			"takes%s without any inertia (%.1f s): count ten there-and-backs and time again", t.tenRocks, of, least))
	case v.Value-off > longest*longest*mass:
		return wrong(t.time, fmt.Sprintf("ten rocks in %.1f s are more seconds than any piece of this weight takes%s: "+
			"count ten there-and-backs and time again", t.tenRocks, of))
	case v.Uncertain > usual*usual*mass:
	case v.Value <= 0:
		result.Doubts = append(result.Doubts, Doubt{Reading: t.time, Read: t.tenRocks, Expected: least})
	default:
		return nil
	}
	result.Untold = t.time
	v.Value, result.Body.Inertia = math.NaN(), math.NaN()
	return nil
}
