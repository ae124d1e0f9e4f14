package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// TestEquilibriaAgainstSampledOutline finds rests and hilltops of a level floor by brute
// force: the height of the centre of mass over the lowest of many points of the outline,
// its minima and maxima by scan. It shares no formula with the product.
func TestEquilibriaAgainstSampledOutline(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 2))
	for range 40 {
		r := random(t, rng)
		r.Floor.Slope = 0
		const chord = 1e-8 // m; the height of the outline is right to this
		outline := r.Profile.Outline(chord)
		height := func(tilt float64) float64 {
			u, _ := rocker.Down(tilt)
			most := math.Inf(-1)
			for _, p := range outline {
				most = max(most, r2.Dot(p, u))
			}
			return most - r2.Dot(r.Body.Centre, u)
		}
		type turn struct {
			tilt, height float64
			stable       bool
		}
		var want []turn
		const step = 0.004
		for tilt := -2.5; tilt < 2.5; tilt += step {
			a, b, c := height(tilt-step), height(tilt), height(tilt+step)
			if b < a && b <= c || b > a && b >= c {
				low := b < a
				from, to := tilt-step, tilt+step
				for range 60 { // thirds
					one, two := from+(to-from)/3, to-(to-from)/3
					if height(one) < height(two) == low {
						to = two
					} else {
						from = one
					}
				}
				want = append(want, turn{from, height(from), low})
			}
		}
		var got []Equilibrium
		for _, e := range r.Equilibria(nil) {
			if math.Abs(e.Tilt) < 2.5 {
				got = append(got, e)
			}
		}
		if len(got) != len(want) {
			t.Errorf("%d equilibria, brute force finds %d: %+v and %+v", len(got), len(want), got, want)
			continue
		}
		for i, w := range want {
			// heights are right to the chord, the place of a smooth one to its root
			if e := got[i]; e.Stable != w.stable || math.Abs(e.Tilt-w.tilt) > 10*math.Sqrt(chord) ||
				math.Abs(e.Height-w.height) > 10*chord {
				t.Errorf("got %+v, brute force finds %+v", e, w)
			}
		}
	}
}

// TestEquilibriaAlternate holds that between two rests there is a hilltop, and that Z is
// zero off the flats.
func TestEquilibriaAlternate(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 3))
	for range 500 {
		r := random(t, rng)
		all := r.Equilibria(nil)
		for i, e := range all {
			if i > 0 && e.Stable == all[i-1].Stable {
				t.Fatalf("two alike in a row: %+v of %+v", all, r)
			}
			arm, height := r.Righting(e.Tilt)
			if !e.onFlat(r.Profile) && math.Abs(arm) > 1e-13 || math.Abs(height-e.Height) > 1e-13 {
				t.Errorf("at %+v the arm is %v and the height %v", e, arm, height)
			}
		}
	}
}

// TestUpsideDown: a half disc stands on its round side and on its flat face, the chord
// between its two tips.
func TestUpsideDown(t *testing.T) {
	depth := 4 / (3 * math.Pi)
	half := Rig{Profile: rocker.Single(1, math.Pi/2, math.Pi/2-0.1),
		Body: body.Body{Mass: 1, Centre: r2.Vec{Y: 1 - depth}, Inertia: 0.5 - depth*depth}}
	var rests []Equilibrium
	for _, e := range half.Equilibria(nil) {
		if e.Stable {
			rests = append(rests, e)
		}
	}
	if len(rests) != 2 {
		t.Fatalf("%d rests, want two", len(rests))
	}
	nose, tail := half.Profile.Nose(), half.Profile.Tail()
	flat := math.Atan2(nose.Y-tail.Y, -(nose.X - tail.X)) // the chord from tail to nose as the floor
	if !rests[1].onFlat(half.Profile) || !sameTo(rests[1].Tilt, flat, 1e-12) {
		t.Errorf("on its face it tilts %v, want %v", rests[1].Tilt, flat)
	}
}

// TestNeutral: at the arc's centre every tilt of the arc is alike, a level top with a
// hilltop at either brim.
func TestNeutral(t *testing.T) {
	r := arc(1, 0)
	for _, e := range r.Equilibria(nil) {
		if e.Height > 0 && (e.Stable || math.Abs(e.Tilt+0.4) > 1e-15 && math.Abs(e.Tilt-0.5) > 1e-15) {
			t.Errorf("a wheel has a tilt of its own: %+v", e)
		}
	}
	if b := r.Balance(); b.Outcome != Neutral || !math.IsNaN(b.Period) || b.Back.Exists() {
		t.Errorf("balance %+v, want neutral", b)
	}
}

// TestGrazing: on a slope just below the steepest that has a rest, rest and hilltop come
// together; nearer than AtHilltop they are none.
func TestGrazing(t *testing.T) {
	// R sin α = d sin β; rest and hilltop lie π − 2β apart
	at := func(apart float64) Rig {
		r := arc(0.6, 0)
		r.Profile = rocker.Single(1, 2, 2)
		r.Floor.Slope = math.Asin(0.4 * math.Cos(apart/2))
		return r
	}
	upright := func(r Rig) int {
		n := 0
		for _, e := range r.Equilibria(nil) {
			if e.Height > 0 && e.Height < 1 && e.roll > 0 && e.roll < 2 {
				n++
			}
		}
		return n
	}
	if n := upright(at(1e-3)); n != 2 {
		t.Errorf("a milliradian apart: %d equilibria on the arc, want 2", n)
	}
	if n := upright(at(0)); n != 0 {
		t.Errorf("together: %d equilibria on the arc, want none", n)
	}
}
