package sim

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// TestSeatedHeld: what is held of each leg at the rest makes a rigid rig that rests there, and its small rock is
// T = 2π √(J/(g Σm (ρ − H))) by hand, of the masses about the contact.
func TestSeatedHeld(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 25))
	for i := range 200 {
		s := atEase(t, rng, 1+i%2, i%2 == 0)
		b := s.Balance()
		if b.Outcome != Rocks {
			continue
		}
		l, rest := &s.Legs[0], b.Rest.Tilt
		_, _, curve := s.Profile.Support(rest)
		h, _, _ := s.Profile.Support(rest)
		radius, hangs := h+curve, l.Mass()-b.Feet[0].Carried
		at := s.Profile.Contact(rest)
		J := s.Body.About(at) + hangs*r2.Norm2(r2.Sub(l.Knee, at))
		stiff := s.Body.Mass*(radius-s.Profile.Height(s.Body.Centre, rest)) + hangs*(radius-s.Profile.Height(l.Knee, rest))
		if want := 2 * math.Pi * math.Sqrt(J/(Gravity*stiff)); !sameTo(b.Period, want, 1e-11) {
			t.Errorf("%d: period %v, by hand %v (%v)", i, b.Period, want, b.Feet)
		}
		near := slices.ContainsFunc(b.Held.Equilibria(nil), func(e Equilibrium) bool {
			return e.Stable && math.Abs(e.Tilt-rest) < 1e-9
		})
		if near != (stiff > 0) || !sameTo(b.Held.Body.Mass, s.Body.Mass+hangs, 1e-14) {
			t.Errorf("%d: rest at %v, held %+v (%v)", i, rest, b.Held.Equilibria(nil), b.Feet)
		}
	}
}

// TestSeatedPressed: the calves press the piece back for as long as its moment with the stiff share is below zero,
// but a sole no further than to where its heel lifts and a toe no further than to where it leaves.
func TestSeatedPressed(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 26))
	var balanced, stopped, stays int
	for i := range 600 {
		s := atEase(t, rng, 1+i%3, i%3 == 0)
		if i%5 == 0 {
			s.Legs = append(s.Legs, atEase(t, rng, 1, false).Legs...)
		}
		if i%7 == 0 { // soles flat far beyond the hilltop
			s.Legs[0].Length += 0.4
		}
		b := s.Balance()
		if b.Outcome != Rocks {
			continue
		}
		stiff := make([]float64, len(s.Legs))
		room := func(tilt float64) float64 { // to the nearest height at which a foot changes, m
			least := math.Inf(1)
			for k, f := range b.Feet {
				y := s.Profile.Height(s.Legs[k].Knee, tilt)
				switch f.Stage {
				case body.SoleFlat:
					least = min(least, s.Legs[k].HeelHeight()-y)
				case body.HeelLifting, body.HeelLifted:
					least = min(least, s.Legs[k].ToeHeight()-y)
				}
			}
			return least
		}
		for k, f := range b.Feet {
			l := &s.Legs[k]
			stiff[k] = []float64{l.Mass() + l.Thigh, l.Full(), l.Full(), 0}[f.Stage]
			if want := stiff[k]; b.Pressed > b.Rest.Tilt && f.Pressed != want || b.Pressed == b.Rest.Tilt && f.Pressed != f.Carried {
				t.Errorf("%d: pressed %+v, want %v kg", i, f, want)
			}
		}
		for k := range 50 {
			tilt := b.Rest.Tilt + (b.Pressed-b.Rest.Tilt)*(float64(k)+0.5)/50
			if m := s.byHand(tilt, stiff...); b.Pressed > b.Rest.Tilt && (m > 1e-9 || room(tilt) < -1e-9) {
				t.Errorf("%d: pressed from %v to %v: at %v the moment is %v and the room %v", i, b.Rest.Tilt, b.Pressed, tilt, m, room(tilt))
				break
			}
		}
		m, left := s.byHand(b.Pressed, stiff...), room(b.Pressed)
		switch {
		case b.Pressed < b.Rest.Tilt || math.IsNaN(b.Pressed):
			t.Errorf("%d: pressed to %v, rest at %v", i, b.Pressed, b.Rest.Tilt)
		case b.Pressed == b.Rest.Tilt && m > -1e-9:
			stays++
		case math.Abs(m) < 1e-9:
			balanced++
		case m < 0 && (math.Abs(left) < 1e-9 || b.Pressed == b.Back.Tip):
			stopped++
		default:
			t.Errorf("%d: pressed from %v to %v, where the moment is %v kg·m and the room %v m (%+v)", i, b.Rest.Tilt, b.Pressed, m, left, b.Feet)
		}
	}
	if balanced < 50 || stopped < 50 || stays < 20 {
		t.Errorf("%d balanced, %d stopped, %d stay: too few", balanced, stopped, stays)
	}
}

// TestSeatedScales: k times as long and q times as heavy tilts alike, and rocks √k times as long; two people alike are
// one of twice the mass.
func TestSeatedScales(t *testing.T) {
	const k, q = 1.7, 0.3
	rng := rand.New(rand.NewPCG(17, 27))
	for i := range 50 {
		s := atEase(t, rng, 1, i%2 == 0)
		s.Profile = rocker.Single(1.07, 0.38, 0.48)
		big, l := s, s.Legs[0]
		big.Profile = rocker.Single(1.07*k, 0.38*k, 0.48*k)
		big.Body = body.Body{Mass: q * s.Body.Mass, Centre: r2.Scale(k, s.Body.Centre), Inertia: q * k * k * s.Body.Inertia}
		big.Legs = []body.Legs{{
			Knee: r2.Scale(k, l.Knee), Shank: q * l.Shank, Foot: q * l.Foot, Thigh: q * l.Thigh, Length: k * l.Length,
			Centre: l.Centre, Ankle: k * l.Ankle, Toe: k * l.Toe, Ahead: k * l.Ahead, Below: k * l.Below, Bend: l.Bend,
		}}
		twice, twins := s, s
		twins.Legs = []body.Legs{l, l}
		l.Shank, l.Foot, l.Thigh = 2*l.Shank, 2*l.Foot, 2*l.Thigh
		twice.Legs = []body.Legs{l}
		same := func(name string, a, b SeatedBalance, long, heavy float64) {
			const within = 1e-12
			if a.Feet[0].Stage != b.Feet[0].Stage || !sameTo(a.Period*math.Sqrt(long), b.Period, within) ||
				math.Abs(a.Rest.Tilt-b.Rest.Tilt) > within || math.Abs(a.Pressed-b.Pressed) > within ||
				math.Abs(a.Back.Tip-b.Back.Tip) > within || math.Abs(a.Forward.Tip-b.Forward.Tip) > within ||
				!sameTo(a.Back.Work*long*heavy, b.Back.Work, 1e-11) || !sameTo(a.Feet[0].Carried*heavy, b.Feet[0].Carried, 1e-9) {
				t.Errorf("%d, %s: %+v, want that of %+v", i, name, b, a)
			}
		}
		same("scaled", s.Balance(), big.Balance(), k, q)
		one, two := twice.Balance(), twins.Balance()
		two.Feet[0].Carried *= 2
		same("twins", one, two, 1, 1)
	}
}

// TestSeatedMisuse holds that what cannot sit at ease is told in words.
func TestSeatedMisuse(t *testing.T) {
	good := atEase(t, rand.New(rand.NewPCG(17, 28)), 1, false)
	for _, tt := range []struct {
		words  string
		change func(s *Seated)
	}{
		{"sim: who sits at ease has legs", func(s *Seated) { s.Legs = nil }},
		{"sim: a rig needs a floor edge", func(s *Seated) { s.Profile, s.Legs = rocker.Profile{}, nil }},
		{"sim: a rig needs a mass", func(s *Seated) { s.Body.Mass = 0 }},
		{"sim: a floor slopes by less", func(s *Seated) { s.Floor.Slope = 2 }},
		{"body: legs have lengths and masses", func(s *Seated) { s.Legs = append(s.Legs, body.Legs{}) }},
	} {
		s := good
		s.Legs = slices.Clone(s.Legs)
		tt.change(&s)
		for _, call := range []func(){func() { s.Balance() }, func() { s.Equilibria() }} {
			if got := panics(call); !strings.HasPrefix(got, tt.words) {
				t.Errorf("%q, want %q", got, tt.words)
			}
		}
	}
}
