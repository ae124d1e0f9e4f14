package sim

import (
	"cmp"
	"errors"
	"math"
	"slices"

	"rockerwright/body"
)

// A Seated is a rig with people at ease in it, whose feet stand on the floor: the Body of the Rig is all
// that rides, without their shanks and feet. With G and m of the piece and the people whole, shanks
// and feet as points at their knees K,
//
//	M(θ) = g (m Z_G − Σ N Z_K),   V(θ) = g (m E_G − Σ ∫N dy)
//
// [body.Legs] giving N by the height of each knee. Where no heel just lifts or turns on its toe this is a
// rigid body, of which the floor takes N at each knee; where one lifts, M jumps up, as on a flat.
// On a sloping floor y is square to it and N acts plumb, so that what the toes do there is true
// but for the square of the slope, and potential and work but for less than a fifth of the slope, as a share of the work.
type Seated struct {
	Rig
	Legs []body.Legs
}

// Feet say what the feet of one of the people do.
type Feet struct {
	Stage     body.Stage
	Carried   float64 // what the floor carries at the rest, kg
	Pressed   float64 // what it carries at the end of the band, kg
	HeelLifts float64 // the tilt at which the heels lift, rad; NaN where they do nowhere
	ToeLeaves float64 // the tilt at which the toes leave, rad; NaN where they do nowhere
}

// A SeatedBalance is where people rest who are at ease, and how near to going over.
type SeatedBalance struct {
	// Balance is that of Held about the relaxed rest. It has no Period where Held has no rest there.
	Balance
	// Back and Forward, which hide those of Held, are on the law of the feet, their Lift the Work over the whole weight.
	Back, Forward Margin
	// Held is the rig as it rocks there: of each leg what the floor does not carry at the rest, as a point at the knee.
	Held Rig
	Feet []Feet // of each of the Legs
	// Pressed is the tilt of the rest with the calves pressing, rad: as stiff ankles hold it, where the heels lift
	// or have lifted, but not past the toe's leaving; where the soles are flat, with the front edge of the seat
	// bearing nothing, but not past the heel's lift; in neither case past the hilltop. It is the rest where the feet
	// are off, and never forward of it.
	Pressed float64
}

// Validate returns what keeps people from sitting at ease: what [Rig.Validate] and [body.Legs.Validate] say, or no legs.
func (s *Seated) Validate() error {
	err := s.Rig.Validate()
	if len(s.Legs) == 0 {
		err = cmp.Or(err, errors.New("sim: who sits at ease has legs"))
	}
	for i := range s.Legs {
		err = cmp.Or(err, s.Legs[i].Validate())
	}
	return err
}

// Hanging returns the rig with all feet off the floor, what hangs being points at the knees.
func (s *Seated) Hanging() Rig { return s.held(make([]float64, len(s.Legs))) }

// held returns the rigid rig of which the floor carries so much of each leg, kg.
func (s *Seated) held(carried []float64) Rig {
	r := s.Rig
	for i := range s.Legs {
		l := &s.Legs[i]
		r.Body = body.Join(r.Body, body.Body{Mass: l.Mass() - carried[i], Centre: l.Knee})
	}
	return r
}

// Righting returns the righting arm of the whole, M over its weight, and the height of its centre of mass over the floor
// with shanks and feet as points at the knees, m, at a tilt (rad). Where heels just lift it is that of soles flat.
func (s Seated) Righting(tilt float64) (arm, height float64) {
	arc, roll := s.Profile.Find(tilt - s.Floor.Slope)
	b := s.Profile.Bearing(arc)
	carried := make([]float64, len(s.Legs))
	for i := range s.Legs {
		l := &s.Legs[i]
		y, _, _ := b.Above(l.Knee, roll)
		carried[i] = l.Carried(l.StageAt(y), y)
	}
	hanging := s.Hanging()
	_, height = hanging.Righting(tilt)
	return s.moment(arc, roll, carried) / hanging.Body.Mass, height
}

// Equilibria returns every rest and hilltop within a quarter of a turn of upright, in order of tilt. It panics for
// what [Seated.Validate] refuses.
func (s Seated) Equilibria() []Equilibrium {
	if err := s.Validate(); err != nil {
		panic(err)
	}
	var list []Equilibrium
	for _, e := range s.footings(s.reaches()) {
		list = append(list, e.Equilibrium)
	}
	return list
}

// Balance returns where people at ease rest: of the rests that stand above the floor the lowest. Without one its
// Outcome is NoRest and it holds NaN. It panics for what [Seated.Validate] refuses.
func (s Seated) Balance() SeatedBalance {
	if err := s.Validate(); err != nil {
		panic(err)
	}
	in := s.reaches()
	all := s.footings(in)
	best := -1
	for i, f := range all {
		if f.Stable && f.Height > 0 && (best < 0 || f.potential < all[best].potential) {
			best = i
		}
	}
	if best < 0 {
		none := Balance{Outcome: NoRest, Steadiness: math.NaN(), Period: math.NaN(), Back: noMargin, Forward: noMargin}
		return SeatedBalance{Balance: none, Back: noMargin, Forward: noMargin, Held: s.Hanging(), Pressed: math.NaN()}
	}
	rest := all[best]
	if !slices.ContainsFunc(all[best:], func(f footing) bool { return !f.Stable }) {
		hanging := s.Hanging()
		for _, e := range hanging.Equilibria(nil) { // past a quarter of a turn back all feet are off the floor
			if e.roll > math.Pi/2-s.Floor.Slope {
				all = append(all, footing{e, nil, s.potential(&hanging, e.before, e.roll)})
			}
		}
	}
	held := s.held(rest.carried)
	b := SeatedBalance{Held: held, Balance: held.about(rest.Equilibrium)}
	b.Back, b.Forward = s.margin(all, best, +1), s.margin(all, best, -1)
	b.Feet = make([]Feet, len(s.Legs))
	for i := range b.Feet {
		l, f := &s.Legs[i], &b.Feet[i]
		*f = Feet{Stage: s.stageAt(rest, i), Carried: rest.carried[i],
			HeelLifts: s.lifts(l, l.HeelHeight(), rest), ToeLeaves: s.lifts(l, l.ToeHeight(), rest)}
	}
	s.press(rest, &b)
	return b
}

// about returns the small rock of a rigid rig about what is nearly a rest of it, which it is given back as; no
// Period and no Steadiness where it is not one.
func (r Rig) about(rest Equilibrium) Balance {
	var store [16]Equilibrium
	all := r.Equilibria(store[:0])
	for i, e := range all {
		if e.Stable && math.Abs(e.roll-rest.roll) < near {
			b := r.balanceAt(all, i)
			b.Rest.Tilt, b.Rest.roll = rest.Tilt, rest.roll
			return b
		}
	}
	return Balance{Rest: rest, Steadiness: math.NaN(), Period: math.NaN(), Back: noMargin, Forward: noMargin}
}

// near is how far from a rest with the feet on the floor that of the rig with their share held is taken for the
// same, rad: on a level floor they are one, but for rounding.
const near = 1 * math.Pi / 180

// margin returns what lies between a rest and the next hilltop on one side.
func (s *Seated) margin(all []footing, i, side int) Margin {
	m, rest := noMargin, all[i]
	for k := i + side; k >= 0 && k < len(all) && all[k].Height > 0; k += side {
		hill := all[k]
		switch {
		case hill.Stable:
		case m.Exists():
			m.Over = hill.Tilt
		default:
			lift := hill.potential - rest.potential // times g is work
			m = Margin{Tip: hill.Tilt, Over: hill.Tilt, Angle: math.Abs(hill.roll - rest.roll), on: hill.before,
				Work: lift * s.Floor.FreeFall(), Lift: lift / s.Hanging().Body.Mass}
		}
	}
	return m
}

// stageAt returns how the feet of one of the people stand at a rest.
func (s *Seated) stageAt(rest footing, i int) body.Stage {
	l := &s.Legs[i]
	if least := l.OnToe(0); rest.carried[i] > least && rest.carried[i] < l.Full() {
		return body.HeelLifting
	}
	y, _, _ := s.Profile.Bearing(rest.before).Above(l.Knee, rest.roll)
	if stage := l.StageAt(y); stage < body.FeetOff || rest.carried[i] == 0 {
		return stage
	}
	return body.HeelLifted // the stop of the ankle just takes it off
}

// lifts returns the tilt nearest to a rest at which the knees of legs rise through a height y, going back; NaN where
// they do nowhere within a quarter of a turn of upright.
func (s *Seated) lifts(l *body.Legs, y float64, rest footing) float64 {
	best := math.NaN()
	var store [2]float64
	for arc := range s.Profile.Bearings() {
		b := s.Profile.Bearing(arc)
		for _, roll := range s.turns(b, l, y, store[:0]) {
			tilt := roll + s.Floor.Slope
			_, ahead, _ := b.Above(l.Knee, roll)
			if ahead > 0 && math.Abs(tilt) < math.Pi/2 && !(math.Abs(tilt-rest.Tilt) > math.Abs(best-rest.Tilt)) {
				best = tilt
			}
		}
	}
	return best
}

// press fills in where the calves press the piece to, and what the floor then carries.
func (s *Seated) press(rest footing, b *SeatedBalance) {
	stiff, last := slices.Clone(rest.carried), math.Inf(1)
	upTo := func(tilt float64) { // not forward of the rest
		if tilt > rest.Tilt-AtJoint {
			last = min(last, max(tilt, rest.Tilt))
		}
	}
	upTo(b.Back.Tip)
	for i := range s.Legs {
		l, f := &s.Legs[i], &b.Feet[i]
		f.Pressed = f.Carried
		switch f.Stage {
		case body.SoleFlat:
			stiff[i] = l.Mass() + l.Thigh
			upTo(f.HeelLifts)
		case body.HeelLifting, body.HeelLifted:
			stiff[i] = l.Full()
			upTo(f.ToeLeaves)
		}
	}
	b.Pressed = rest.Tilt
	r := s.held(stiff)
	if arm, _ := r.Righting(rest.Tilt); math.IsInf(last, 1) || last == rest.Tilt || !(arm < 0) || slices.Equal(stiff, rest.carried) {
		return
	}
	b.Pressed = last
	for _, e := range r.Equilibria(nil) {
		if e.Stable && rest.Tilt < e.Tilt {
			b.Pressed = min(b.Pressed, e.Tilt)
		}
	}
	for i := range b.Feet {
		b.Feet[i].Pressed = stiff[i]
	}
}
