package motion

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// A Trunk is what somebody leans with: trunk, head and arms, which turn about the hips against all else, where it
// leans by nothing, chair frame.
type Trunk struct {
	Body body.Body
	Hips r2.Vec // m
}

// A Rider is a piece with people on it who lean to and fro, all at once and alike.
type Rider struct {
	Rig    sim.Rig // its Body is the piece and all of the people that does not lean
	Trunks []Trunk
}

// Leaning returns the rig with all trunks leaning so far, rad, + back.
func (w *Rider) Leaning(lean float64) sim.Rig {
	r := w.Rig
	for _, t := range w.Trunks {
		r.Body = body.Join(r.Body, t.Body.Turned(lean, t.Hips))
	}
	return r
}

// leanSteps is in how many steps a lean is followed. Of one from 25 degrees to as far the other way the tilt is then right
// to a millionth of a degree; over a joint of two arcs to a thousandth, over a flat to a hundredth.
const leanSteps = 12

// Lean returns the tilt at which a rig stands still that stood still at a tilt, when the trunks lean from one lean to
// another, quick against a rock, all in rad. The angular momentum about the contact stays zero, so that the piece turns the
// other way,
//
//	dθ/dλ = −M_θλ/M_θθ,  M_θθ = J,  M_θλ = Σ I + m (c − p)·(c − hips)
//
// with I, m and c of each trunk and p the contact; on a flat that end of it to which the piece turns.
//
// Leans that take their time, 0.4 s and more, each centred on the turn of a rock, take a piece less far from its rest, so
// that this errs to the side of more. One such lean alone, far from the rest, may take it further by up to a degree, and so
// may one that is a tenth of a second off the turn. Leans as quick as a blow, which nobody does, are another thing: the contact runs
// along the floor while the balance points rise and fall, which leaves the piece turning, by the square of the lean over
// its time (the tests of this package have both).
func (w *Rider) Lean(tilt, from, to float64) float64 {
	ahead := math.Copysign(sim.AtJoint, from-to) // so that the contact on a flat is the end to which it turns
	rate := func(tilt, lean float64) float64 {
		p := w.Rig.Profile.Contact(tilt - w.Rig.Floor.Slope + ahead)
		all, carried := w.Rig.Body.About(p), 0.0
		for _, t := range w.Trunks {
			trunk := t.Body.Turned(lean, t.Hips)
			all += trunk.About(p)
			carried += trunk.Inertia + trunk.Mass*r2.Dot(r2.Sub(trunk.Centre, p), r2.Sub(trunk.Centre, t.Hips))
		}
		return -carried / all
	}
	step := (to - from) / leanSteps
	for i := range leanSteps { // by the classical rule of Runge and Kutta
		lean := from + float64(i)*step
		a := rate(tilt, lean)
		b := rate(tilt+a*step/2, lean+step/2)
		c := rate(tilt+b*step/2, lean+step/2)
		d := rate(tilt+c*step, lean+step)
		tilt += step / 6 * (a + 2*b + 2*c + d)
	}
	return tilt
}

// A Leant is one lean of many: where the piece stands still after it, and where it turns then, or how far it was
// followed, rad.
type Leant struct {
	Lean     float64
	From, To float64
	Work     float64 // that it takes, J; below zero where it gives
}

// A Heaving is what becomes of a piece on which people lean to and fro at each turn of the rock.
type Heaving struct {
	Leans   []Leant     // with the last it goes over, unless it comes back from all
	Outcome sim.Outcome // Rocks where it comes back from all
}

// Work returns the most that one of the leans takes, J.
func (h *Heaving) Work() float64 {
	most := 0.0
	for _, l := range h.Leans {
		most = max(most, l.Work)
	}
	return most
}

// Survived returns from how many leans the piece comes back before it goes over.
func (h *Heaving) Survived() int {
	if h.Outcome == sim.Rocks {
		return len(h.Leans)
	}
	return max(0, len(h.Leans)-1) // none where it has no rest
}

// Heave lets people lean to one lean and to another (rad, + back) in turn, from leaning by nothing at the rest, then at each
// turn of the rock, at most so many times. What stays where it is is leant on there. It panics for what [Run] panics for,
// and for leans that are not finite.
func (w *Rider) Heave(first, second float64, most int, losses Losses) Heaving {
	if !(math.Abs(first)+math.Abs(second) < math.Inf(1)) {
		panic(fmt.Sprintf("motion: nobody leans to and fro between %g and %g rad", first, second))
	}
	still := w.Leaning(0)
	h := Heaving{Outcome: still.Balance().Outcome}
	if h.Outcome != sim.Rocks {
		return h
	}
	tilt, lean, before := still.Balance().Rest.Tilt, 0.0, still
	for range most {
		after, to := w.Leaning(first), w.Lean(tilt, lean, first)
		weight := after.Body.Mass * after.Floor.FreeFall()
		one := Leant{Lean: first, From: to, To: to, Work: weight * (after.Rise(to) - before.Rise(tilt))}
		balance := after.Balance()
		if balance.Outcome == sim.Rocks {
			t := Run(after, balance, Start{Tilt: to}, Options{Losses: losses, Turns: 1})
			one.To, h.Outcome = t.Last.Tilt, t.Outcome
		} else if arm, _ := after.Righting(to); arm > 0 {
			h.Outcome = sim.GoesOverForwards
		} else {
			h.Outcome = sim.GoesOverBackwards
		}
		h.Leans = append(h.Leans, one)
		if h.Outcome != sim.Rocks {
			return h
		}
		tilt, lean, before = one.To, first, after
		first, second = second, first
	}
	return h
}
