package motion

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// TestLeanKeepsAngularMomentum: in a slow-motion replay of a lean, 1 degree by 1 degree, the point masses of which all parts
// consist have no angular momentum about the contact: Σ m (x − p) × dx = 0 by central differences of where they are on the
// floor, from arc to arc and on a slope.
func TestLeanKeepsAngularMomentum(t *testing.T) {
	const h = 1e-4 // rad
	rng := rand.New(rand.NewPCG(14, 1))
	looked := 0
	for i := range 30 {
		w, _ := heaving(t, rng)
		places := func(tilt, lean float64) (masses []float64, at []r2.Vec) {
			add := func(b body.Body, hips r2.Vec, lean float64) { // two half masses, a radius of gyration from the centre
				arm := r2.Vec{X: math.Sqrt(b.Inertia/b.Mass) * 0.6, Y: math.Sqrt(b.Inertia/b.Mass) * 0.8}
				for _, q := range []r2.Vec{r2.Add(b.Centre, arm), r2.Sub(b.Centre, arm)} {
					along, over := w.Rig.Place(r2.Rotate(q, lean, hips), tilt)
					masses, at = append(masses, b.Mass/2), append(at, r2.Vec{X: along, Y: over})
				}
			}
			add(w.Rig.Body, r2.Vec{}, 0)
			for _, trunk := range w.Trunks {
				add(trunk.Body, trunk.Hips, lean)
			}
			return masses, at
		}
		tilt := 0.4 * (rng.Float64() - 0.5)
		for lean := -25 * degree; lean < 25*degree; lean += degree {
			before, after := w.Lean(tilt, lean, lean-h), w.Lean(tilt, lean, lean+h)
			one, _ := w.Rig.Profile.Find(before - w.Rig.Floor.Slope)
			other, _ := w.Rig.Profile.Find(after - w.Rig.Floor.Slope)
			if one == other { // else the differences reach over a joint
				looked++
				along, _ := w.Rig.Place(w.Rig.Profile.Contact(tilt-w.Rig.Floor.Slope), tilt)
				masses, at := places(tilt, lean)
				_, from := places(before, lean-h)
				_, to := places(after, lean+h)
				momentum, scale := 0.0, 0.0
				for k, m := range masses {
					arm, way := r2.Sub(at[k], r2.Vec{X: along}), r2.Sub(to[k], from[k])
					momentum += m * r2.Cross(arm, way)
					scale += m * r2.Norm(arm) * r2.Norm(way)
				}
				if math.Abs(momentum) > 1e-7*scale { // differences of the second order, h² and as much of their third derivatives
					t.Errorf("rig %d: at a tilt of %v and a lean of %v angular momentum %v of %v", i, tilt, lean, momentum, scale)
				}
			}
			tilt = w.Lean(tilt, lean, lean+degree)
		}
	}
	if looked < 1400 {
		t.Errorf("looked at %d", looked)
	}
}

// TestLeanOffFlat: from a flat a lean back turns the piece forward over the nose end of it, a lean forward back over the tail
// end: by hand, of a trunk of 14 kg, 0.05 m ahead of and 0.25 m above the hips, and 0.1 m to each end.
func TestLeanOffFlat(t *testing.T) {
	p, err := rocker.Chain(0.6, rocker.Arc(1, 0.5), rocker.Flat(0.2), rocker.Arc(1, 0.5))
	if err != nil {
		t.Fatal(err)
	}
	w := Rider{
		Rig:    sim.Rig{Profile: p, Body: body.Body{Mass: 26, Centre: r2.Vec{Y: 0.42}, Inertia: 2.2}},
		Trunks: []Trunk{{body.Body{Mass: 14, Centre: r2.Vec{X: 0.05, Y: 0.8}, Inertia: 0.5}, r2.Vec{Y: 0.55}}},
	}
	for _, tt := range []struct{ lean, ahead float64 }{{1e-6, 0.1}, {-1e-6, -0.1}} {
		carried := 0.5 + 14*((0.05-tt.ahead)*0.05+0.8*0.25)
		all := 2.2 + 26*(tt.ahead*tt.ahead+0.42*0.42) + 0.5 + 14*((0.05-tt.ahead)*(0.05-tt.ahead)+0.8*0.8)
		got := w.Lean(0, 0, tt.lean) / tt.lean
		if want := -carried / all; math.Abs(got-want) > 1e-5 { // the law changes by that with a millionth of a radian
			t.Errorf("leaning by %v turns by %v of it, want %v", tt.lean, got, want)
		}
	}
}

// still returns the tilt of [Rider.Lean] by Σ m z_θ·(z_θ dθ + z_λ dλ) + I·(turn) = 0, in many steps.
func (w *linked) still(tilt, from, to float64) float64 {
	const steps = 2000
	rate := func(tilt, lean float64) float64 {
		all, carried := w.piece.inertia+w.trunk.inertia, w.trunk.inertia
		for _, b := range []*link{&w.piece, &w.trunk} {
			byTilt, byLean, _, _ := w.at(b, tilt, lean)
			all, carried = all+b.mass*dot(byTilt, byTilt), carried+b.mass*dot(byTilt, byLean)
		}
		return -carried / all
	}
	step := (to - from) / steps
	for i := range steps { // by the rule of the middle
		lean := from + float64(i)*step
		tilt += step * rate(tilt+rate(tilt, lean)*step/2, lean+step/2)
	}
	return tilt
}

// inSteps returns the tilt of [Rider.Lean] by many short ones.
func inSteps(w *Rider, tilt, from, to float64, n int) float64 {
	for i := range n {
		tilt = w.Lean(tilt, from+(to-from)*float64(i)/float64(n), from+(to-from)*float64(i+1)/float64(n))
	}
	return tilt
}

// TestLeanSteps: [Rider.Lean] from 25 degrees to as far the other way is right to a millionth of a degree, also of somebody
// heavy on next to nothing, and of the fourth order: half the step errs by a sixteenth. Over a joint it is right to a
// thousandth, over a flat to a hundredth.
func TestLeanSteps(t *testing.T) {
	const each = 25 * degree
	worst, whole, halves := 0.0, 0.0, 0.0
	for _, radius := range []float64{0.5, 0.9, 1.3, 1.7} {
		w, two := horse(radius)
		w.Rig.Body.Mass, w.Trunks[0].Body.Mass, two.piece.mass, two.trunk.mass = 8, 45, 8, 45
		for tilt := -25 * degree; tilt < 26*degree; tilt += 5 * degree {
			for _, lean := range []float64{each, -each} {
				one, half, many := w.Lean(tilt, lean, -lean), inSteps(&w, tilt, lean, -lean, 2), inSteps(&w, tilt, lean, -lean, 40)
				whole, halves = whole+math.Abs(one-many), halves+math.Abs(half-many)
				worst = max(worst, math.Abs(one-many)/degree)
				if want := two.still(tilt, lean, -lean); math.Abs(many-want) > 3e-7*degree { // the rule of the middle, 1/2000²
					t.Errorf("radius %v m, leaning from %v: from %v to %v, want %v", radius, lean, tilt, many, want)
				}
			}
		}
	}
	t.Logf("right to %.1e°, half the step errs by 1/%.1f", worst, whole/halves)
	if worst > 1e-6 || whole/halves < 14 { // 16 in the limit, 14 leaves room for the next term
		t.Errorf("right to %v°, half the step errs by 1/%v", worst, whole/halves)
	}
	rng := rand.New(rand.NewPCG(16, 1))
	over := map[bool]float64{} // a flat, or joints alone
	for range 100 {
		w, _ := heaving(t, rng)
		tilt := rng.Float64() - 0.5
		flat := flats(w.Rig.Profile)
		over[flat] = max(over[flat], math.Abs(w.Lean(tilt, each, -each)-inSteps(&w, tilt, each, -each, 100))/degree)
	}
	t.Logf("over joints to %.1e°, over flats to %.1e°", over[false], over[true])
	if over[false] > 1e-3 || over[true] > 1e-2 {
		t.Errorf("over joints to %v°, over flats to %v°", over[false], over[true])
	}
}
