package motion

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// heaving returns a random rider of two trunks on a rig of several arcs, and the same seen from the other side.
func heaving(t *testing.T, rng *rand.Rand) (w, mirrored Rider) {
	t.Helper()
	w.Rig, mirrored.Rig = several(t, rng)
	for range 2 {
		hips := r2.Vec{X: 0.3 * (rng.Float64() - 0.5), Y: 0.4 + 0.2*rng.Float64()}
		trunk := body.Body{Mass: 5 + 15*rng.Float64(), Inertia: rng.Float64(),
			Centre: r2.Add(hips, r2.Vec{X: 0.2 * (rng.Float64() - 0.5), Y: 0.2 + 0.1*rng.Float64()})}
		w.Trunks = append(w.Trunks, Trunk{trunk, hips})
		trunk.Centre.X, hips.X = -trunk.Centre.X, -hips.X
		mirrored.Trunks = append(mirrored.Trunks, Trunk{trunk, hips})
	}
	return w, mirrored
}

// flats reports whether a rocker stands on a flat anywhere but upside down, over its two tips.
func flats(p rocker.Profile) bool {
	for i := range p.Bearings() - 1 {
		if p.Bearing(i).Flat > 0 {
			return true
		}
	}
	return false
}

// TestNoLean: who leans by nothing turns nothing, and stays at the rest however often.
func TestNoLean(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 1))
	for i := range 50 {
		w, _ := heaving(t, rng)
		tilt, lean := rng.Float64()-0.5, rng.Float64()-0.5
		if got := w.Lean(tilt, lean, lean); got != tilt {
			t.Errorf("rig %d: leaning from %v to the same turns it from %v to %v", i, lean, tilt, got)
		}
		rest := w.Leaning(0).Balance().Rest.Tilt
		h := w.Heave(0, 0, 5, Losses{Rolling: 0.001})
		if h.Outcome != sim.Rocks || len(h.Leans) != 5 || h.Work() != 0 || h.Survived() != 5 {
			t.Errorf("rig %d: leaning by nothing: %+v", i, h)
		}
		for _, l := range h.Leans {
			if l.From != rest || l.To != rest { // the resistance holds what a rounding moves
				t.Errorf("rig %d: leaning by nothing goes from %v to %v, the rest is at %v", i, l.From, l.To, rest)
			}
		}
	}
}

// TestMirroredHeave: seen from the other side people who lean the other way turn the piece the other way, by the same
// work, until it goes over the other way: from arc to arc, over flats, up and down a slope, with losses.
func TestMirroredHeave(t *testing.T) {
	rng := rand.New(rand.NewPCG(12, 1))
	swapped := map[sim.Outcome]sim.Outcome{sim.GoesOverBackwards: sim.GoesOverForwards, sim.GoesOverForwards: sim.GoesOverBackwards}
	seen := map[sim.Outcome]int{}
	for i := range 200 {
		w, m := heaving(t, rng)
		first, second := 0.8*(rng.Float64()-0.5), 0.8*(rng.Float64()-0.5)
		losses := Losses{Rolling: 0.002 * rng.Float64(), Viscous: rng.Float64()}
		h, o := w.Heave(first, second, 8, losses), m.Heave(-first, -second, 8, losses)
		want, turned := swapped[h.Outcome]
		if !turned {
			want = h.Outcome
		}
		seen[h.Outcome]++
		if o.Outcome != want || len(o.Leans) != len(h.Leans) || o.Survived() != h.Survived() || !alike(o.Work(), h.Work()) {
			t.Errorf("rig %d: %v after %d leans, %v J; mirrored %v after %d, %v J", i, h.Outcome, len(h.Leans), h.Work(),
				o.Outcome, len(o.Leans), o.Work())
			continue
		}
		for k, l := range h.Leans {
			if s := o.Leans[k]; s.Lean != -l.Lean || !alike(-s.From, l.From) || !alike(-s.To, l.To) || !alike(s.Work, l.Work) {
				t.Errorf("rig %d, flats %v: lean %d %+v, mirrored %+v", i, flats(w.Rig.Profile), k, l, s)
			}
		}
	}
	if seen[sim.Rocks] < 20 || seen[sim.GoesOverBackwards] < 5 || seen[sim.GoesOverForwards] < 5 {
		t.Errorf("too little of something was compared: %v", seen)
	}
	t.Log(seen)
}

// plumb returns the potential energy of piece and people at a tilt, part by part, J: of each its weight times the plumb
// height over where the low point touched as drawn, along the floor and square to it by [sim.Rig.Place].
func plumb(w *Rider, tilt, lean float64) float64 {
	sin, cos := math.Sincos(w.Rig.Floor.Slope)
	parts := []body.Body{w.Rig.Body}
	for _, trunk := range w.Trunks {
		c := r2.Sub(trunk.Body.Centre, trunk.Hips)
		s, k := math.Sincos(lean)
		trunk.Body.Centre = r2.Add(trunk.Hips, r2.Vec{X: c.X*k - c.Y*s, Y: c.X*s + c.Y*k})
		parts = append(parts, trunk.Body)
	}
	energy := 0.0
	for _, p := range parts {
		along, over := w.Rig.Place(p.Centre, tilt)
		energy += p.Mass * w.Rig.Floor.FreeFall() * (along*sin + over*cos)
	}
	return energy
}

// TestHeaveKeepsEnergy: each lean takes the potential energy after it less that before it; and what all of them took is
// the energy at the last turn, less that of the rest, and what the rolling resistance took, b·m·g·cos α for each radian
// rolled; a viscous loss takes some of every rock. Flats, whose knocks take more, apart.
func TestHeaveKeepsEnergy(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 1))
	compared := 0
	for i := range 200 {
		w, _ := heaving(t, rng)
		if flats(w.Rig.Profile) {
			continue
		}
		w.Rig.Floor.Gravity = 1 + 10*rng.Float64()
		losses := Losses{Rolling: 0.004 * rng.Float64()}
		h := w.Heave(0.3*rng.Float64(), -0.3*rng.Float64(), 6, losses)
		if h.Outcome != sim.Rocks {
			continue
		}
		compared++
		mass := w.Rig.Body.Mass
		for _, trunk := range w.Trunks {
			mass += trunk.Body.Mass
		}
		resistance := losses.Rolling * mass * w.Rig.Floor.Gravity * math.Cos(w.Rig.Floor.Slope) // N·m
		tilt, lean := w.Leaning(0).Balance().Rest.Tilt, 0.0
		start, work, lost, scale, most := plumb(&w, tilt, lean), 0.0, 0.0, 0.0, 0.0
		for k, l := range h.Leans {
			want := plumb(&w, l.From, l.Lean) - plumb(&w, tilt, lean)
			if math.Abs(l.Work-want) > 1e-9 { // roundings of some 700 J
				t.Errorf("rig %d: lean %d takes %v J, want %v", i, k, l.Work, want)
			}
			tilt, lean = l.To, l.Lean
			work, lost, scale = work+l.Work, lost+resistance*math.Abs(l.To-l.From), scale+math.Abs(want)
			most = max(most, want)
		}
		if got := plumb(&w, tilt, lean) - start + lost; math.Abs(got-work) > 1e-9*(scale+lost) { // a minute keeps it so too
			t.Errorf("rig %d: energy gained and lost %v J, work %v J", i, got, work)
		}
		for k, l := range w.Heave(0.2, -0.2, 4, Losses{Viscous: 1}).Leans { // which takes ∫c·θ̇² dt
			if l.From != l.To && !(plumb(&w, l.To, l.Lean) < plumb(&w, l.From, l.Lean)-1e-9) {
				t.Errorf("rig %d: damped it turns at %v after lean %d from %v", i, l.To, k, l.From)
			}
		}
		if math.Abs(h.Work()-most) > 1e-9 {
			t.Errorf("rig %d: at most %v J, want %v", i, h.Work(), most)
		}
	}
	if compared < 40 {
		t.Errorf("compared %d", compared)
	}
}

// TestHeaveGoesOver: the lean with which a piece goes over is the last, and comes from the first that is not come back from:
// from there it falls to the side that is said, without a hilltop before it lies on its side. Before, leans alternate.
func TestHeaveGoesOver(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 1))
	// weight that hangs from hips in the centre of the arc: the other way up there is no rest, and the whole is over that
	// centre, 60 kg · 0.3 m · sin 20° forward of it
	hanging := Rider{
		Rig:    sim.Rig{Profile: rocker.Single(0.6, 0.9, 0.9), Body: body.Body{Mass: 40, Centre: r2.Vec{Y: 0.5}, Inertia: 4}},
		Trunks: []Trunk{{body.Body{Mass: 60, Centre: r2.Vec{Y: 0.3}}, r2.Vec{Y: 0.6}}},
	}
	for _, tt := range []struct {
		lean float64
		want sim.Outcome
	}{{160 * degree, sim.GoesOverForwards}, {-160 * degree, sim.GoesOverBackwards}} {
		if out := hanging.Leaning(tt.lean).Balance().Outcome; out != sim.NoRest {
			t.Fatalf("leaning by %v: %v", tt.lean, out)
		}
		if h := hanging.Heave(tt.lean, 0, 9, Losses{}); h.Outcome != tt.want || len(h.Leans) != 1 || h.Survived() != 0 {
			t.Errorf("leaning by %v: %+v", tt.lean, h)
		}
	}
	seen := map[sim.Outcome]int{}
	for i := range 200 {
		w, _ := heaving(t, rng)
		first, second := 0.8*(rng.Float64()-0.5), 0.8*(rng.Float64()-0.5)
		h := w.Heave(first, second, 9, Losses{})
		for k, l := range h.Leans {
			if want := []float64{first, second}[k%2]; l.Lean != want {
				t.Errorf("rig %d: lean %d is %v, want %v", i, k, l.Lean, want)
			}
		}
		seen[h.Outcome]++
		side, over := map[sim.Outcome]float64{sim.GoesOverBackwards: 1, sim.GoesOverForwards: -1}[h.Outcome]
		if !over {
			if h.Survived() != 9 || len(h.Leans) != 9 {
				t.Errorf("rig %d: %v from %d of %d leans", i, h.Outcome, h.Survived(), len(h.Leans))
			}
			continue
		}
		last := h.Leans[len(h.Leans)-1]
		for turn := 0.0; math.Abs(last.From+side*turn) < math.Pi/2; turn += degree {
			if plumb(&w, last.From+side*turn, last.Lean) > plumb(&w, last.From, last.Lean)+1e-9 { // roundings of some 700 J
				t.Errorf("rig %d: %v from %v, but it would rise at %v", i, h.Outcome, last.From, last.From+side*turn)
				break
			}
		}
		if o := w.Heave(first, second, h.Survived(), Losses{}); o.Outcome != sim.Rocks || o.Survived() != len(h.Leans)-1 {
			t.Errorf("rig %d: %v from %d leans, %v from one less", i, h.Outcome, len(h.Leans), o.Outcome)
		}
	}
	if seen[sim.Rocks] < 20 || seen[sim.GoesOverBackwards] < 5 || seen[sim.GoesOverForwards] < 5 {
		t.Errorf("too little of something was looked at: %v", seen)
	}
}

// TestHeaveMisuse: leans that are no numbers, and what [Run] refuses, are told in words; a piece without a rest is not
// leant on, and comes back from no lean.
func TestHeaveMisuse(t *testing.T) {
	w := Rider{Rig: chair()}
	for _, tt := range []struct {
		words         string
		w             Rider
		first, second float64
		losses        Losses
	}{
		{"motion: nobody leans to and fro between +Inf and 0 rad", w, math.Inf(1), 0, Losses{}},
		{"motion: nobody leans to and fro between 0.1 and -Inf rad", w, 0.1, math.Inf(-1), Losses{}},
		{"motion: nobody leans to and fro between NaN and 0 rad", w, math.NaN(), 0, Losses{}},
		{"motion: nobody leans to and fro between 0 and NaN rad", w, 0, math.NaN(), Losses{}},
		{"motion: nothing is followed with", w, 0.1, -0.1, Losses{Rolling: -1}},
		{"sim: a rig needs a floor edge", Rider{}, 0.1, -0.1, Losses{}},
	} {
		if got := panics(func() { tt.w.Heave(tt.first, tt.second, 3, tt.losses) }); !strings.HasPrefix(got, tt.words) {
			t.Errorf("%q, want %q", got, tt.words)
		}
	}
	w.Rig.Body.Centre.Y = 2 // over the centre of the arc
	if h := w.Heave(0.1, -0.1, 3, Losses{}); h.Outcome != sim.NoRest || len(h.Leans) != 0 || h.Survived() != 0 || h.Work() != 0 {
		t.Errorf("without a rest: %+v, comes back from %d leans", h, h.Survived())
	}
}
