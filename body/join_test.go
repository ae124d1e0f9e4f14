package body

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// scatter returns n bodies within a chair's reach of the origin, the same each time.
func scatter(n int) []Body {
	random := rand.New(rand.NewPCG(1, 2))
	bodies := make([]Body, n)
	for i := range bodies {
		bodies[i] = Body{
			Mass:    10 * random.Float64(),
			Centre:  r2.Vec{X: 2*random.Float64() - 1, Y: 2 * random.Float64()},
			Inertia: random.Float64(),
		}
	}
	return bodies
}

func TestJoin(t *testing.T) {
	for _, tt := range []struct {
		name   string
		bodies []Body
		want   Body // by hand
	}{
		{"nothing", nil, Body{}},
		{"two points, 1 and 3 kg, 4 m apart: the reduced mass 3/4 kg at 4 m",
			[]Body{Point(1), Point(3).Moved(r2.Vec{X: 4})},
			Body{Mass: 4, Centre: r2.Vec{X: 3}, Inertia: 12}},
		{"four points of 1 kg on a square of 2 m: each at √2 m",
			[]Body{
				Point(1).Moved(r2.Vec{X: 1, Y: 1}), Point(1).Moved(r2.Vec{X: -1, Y: 1}),
				Point(1).Moved(r2.Vec{X: 1, Y: -1}), Point(1).Moved(r2.Vec{X: -1, Y: -1}),
			},
			Body{Mass: 4, Inertia: 8}},
		{"an inertia without mass is added wherever it is",
			[]Body{{Centre: r2.Vec{X: 1e9}, Inertia: 3}, {Mass: 2, Centre: r2.Vec{Y: 1}, Inertia: 0.5}},
			Body{Mass: 2, Centre: r2.Vec{Y: 1}, Inertia: 3.5}},
		{"only inertias", []Body{{Centre: r2.Vec{X: 1}, Inertia: 3}, {Inertia: 1}}, Body{Inertia: 4}},
		{"a body and the hole it leaves", []Body{Point(2), Point(2).Scaled(-1)}, Body{}},
	} {
		if got := Join(tt.bodies...); got != tt.want { // whole numbers and halves, so exact
			t.Errorf("%s: Join = %+v, want %+v", tt.name, got, tt.want)
		}
	}
}

func TestJoinIdentity(t *testing.T) {
	for _, b := range append(scatter(20), Body{Mass: 1e-300, Centre: r2.Vec{X: 1e20, Y: -0.1}, Inertia: 7}) {
		for _, got := range []Body{Join(b), Join(b, Body{}), Join(Body{}, b)} {
			if got != b {
				t.Errorf("Join with nothing = %+v, want %+v to the last bit", got, b)
			}
		}
	}
}

func TestJoinOfPartsIsWhole(t *testing.T) {
	halfCone := func(from, to, foot, top float64) Body { // a stretch of a taper, density 1
		return Cone(ConeVolume(foot, top, to-from), foot, top, to-from).Moved(r2.Vec{Y: (from + to) / 2})
	}
	const outer, inner = 0.5, 0.3 // m, diameters of a tube
	for _, tt := range []struct {
		name  string
		parts []Body
		want  Body
	}{
		{"a board sawn across",
			[]Body{Box(3, 0.6, 0.2).Moved(r2.Vec{X: -0.2}), Box(2, 0.4, 0.2).Moved(r2.Vec{X: 0.3})},
			Box(5, 1, 0.2)},
		{"a rod sawn in two",
			[]Body{Cylinder(1, 0.04, 0.25).Moved(r2.Vec{Y: -0.375}), Cylinder(3, 0.04, 0.75).Moved(r2.Vec{Y: 0.125})},
			Cylinder(4, 0.04, 1)},
		{"a cone sawn in two: 0.4 m wide at the foot, 0.3 m at a quarter of its height",
			[]Body{halfCone(-0.5, -0.25, 0.4, 0.3), halfCone(-0.25, 0.5, 0.3, 0)},
			Cone(ConeVolume(0.4, 0, 1), 0.4, 0, 1)},
		{"a tube is a bar less its bore: m(D² + d²)/8, the ring's closed form, from the difference of D⁴ and d⁴",
			[]Body{CrossCylinder(outer*outer, outer), CrossCylinder(inner*inner, inner).Scaled(-1)},
			Body{Mass: outer*outer - inner*inner, Inertia: (outer*outer - inner*inner) * (outer*outer + inner*inner) / 8}},
	} {
		if got := Join(tt.parts...); !near(got, tt.want, 1) {
			t.Errorf("%s: Join = %+v, want %+v", tt.name, got, tt.want)
		}
	}
}

// Two points 0.5 m apart keep their inertia to the last bit a thousand million
// metres off: every length here is a sum of powers of two that a float64 holds.
func TestJoinFarFromOrigin(t *testing.T) {
	far := r2.Vec{X: 0x1p30, Y: -0x1p30}
	a, b := Point(1).Moved(r2.Vec{X: -0.25}), Point(1).Moved(r2.Vec{X: 0.25})
	got := Join(a.Moved(far), b.Moved(far))
	want := Body{Mass: 2, Centre: far, Inertia: 0.125} // 2 · 1 kg · (0.25 m)²
	if got != want {
		t.Errorf("Join = %+v, want %+v", got, want)
	}
}

func TestJoinOrderAndGrouping(t *testing.T) {
	bodies := scatter(30)
	want := Join(bodies...)
	const size = 1000 // the sums come to some 150 kg and 300 kg·m²
	if got := Join(Join(bodies[:7]...), Join(bodies[7:]...)); !near(got, want, size) {
		t.Errorf("Join of two groups = %+v, of all = %+v", got, want)
	}
	random := rand.New(rand.NewPCG(3, 4))
	for range 50 {
		random.Shuffle(len(bodies), func(i, j int) { bodies[i], bodies[j] = bodies[j], bodies[i] })
		if got := Join(bodies...); !near(got, want, size) {
			t.Errorf("Join in another order = %+v, want %+v", got, want)
		}
	}
}

func TestJoinMovesAndTurnsWithItsParts(t *testing.T) {
	bodies, placed := scatter(10), scatter(10)
	by, about := r2.Vec{X: 3, Y: -1}, r2.Vec{X: 0.2, Y: 0.4}
	for i, b := range placed {
		placed[i] = b.Turned(0.7, about).Moved(by).Scaled(2)
	}
	got, want := Join(placed...), Join(bodies...).Turned(0.7, about).Moved(by).Scaled(2)
	if !near(got, want, 1000) { // the sums come to some 100 kg and 200 kg·m²
		t.Errorf("Join of placed bodies = %+v, the joined body placed = %+v", got, want)
	}
}

func TestJoinDoesNotAllocate(t *testing.T) {
	seat, back := Box(3, 0.45, 0.04), Box(2, 0.03, 0.6)
	var whole Body
	if n := testing.AllocsPerRun(100, func() { whole = Join(seat, back, whole) }); n != 0 {
		t.Errorf("Join allocates %v times, want 0", n)
	}
}

func BenchmarkJoin(b *testing.B) {
	bodies := scatter(10)
	var whole Body
	b.ReportAllocs()
	for b.Loop() {
		whole = Join(bodies...)
	}
	if math.IsNaN(whole.Inertia) {
		b.Fatal("the joined body has no inertia")
	}
}

// Whatever is joined, its moments are the sums of the moments of its parts: of
// mass, of mass times distance, and of inertia about any point.
func FuzzJoin(f *testing.F) {
	f.Add(3.0, 0.1, 0.4, 0.05, 2.0, -0.2, 0.75, 0.06, 0.3, 0.0)
	f.Add(0.0, 5.0, 0.0, 1.0, 1.0, 1e6, 1e6, 0.0, 1e6, 1e6)
	f.Add(1e-9, -1.0, 0.0, 0.0, 1e9, 1.0, 0.0, 0.0, 0.0, 0.0)
	f.Fuzz(func(t *testing.T, m1, x1, y1, i1, m2, x2, y2, i2, px, py float64) {
		for _, v := range []float64{m1, i1, m2, i2} {
			if !(v == 0 || v > 1e-30 && v < 1e30) {
				t.Skip("no mass or inertia of ours")
			}
		}
		for _, v := range []float64{x1, y1, x2, y2, px, py} {
			if !(v == 0 || math.Abs(v) > 1e-30 && math.Abs(v) < 1e9) {
				t.Skip("no place of ours")
			}
		}
		parts := []Body{{m1, r2.Vec{X: x1, Y: y1}, i1}, {m2, r2.Vec{X: x2, Y: y2}, i2}}
		whole, p := Join(parts...), r2.Vec{X: px, Y: py}

		var mass, inertia, reach float64 // reach: the inertia if every distance were its largest
		var moment r2.Vec                // about the joined centre
		for _, b := range parts {
			mass += b.Mass
			inertia += b.About(p)
			moment = r2.Add(moment, r2.Scale(b.Mass, r2.Sub(b.Centre, whole.Centre)))
			furthest := r2.Norm(b.Centre) + r2.Norm(whole.Centre) + r2.Norm(p)
			reach += b.Inertia + b.Mass*furthest*furthest
		}
		length := math.Hypot(x1, y1) + math.Hypot(x2, y2)
		if whole.Mass != mass {
			t.Errorf("mass %v, want %v", whole.Mass, mass)
		}
		// every place is rounded to 1e-16 of its distance from the origin; a few dozen of those
		if r2.Norm(moment) > 1e-14*mass*length {
			t.Errorf("moment %v about the centre %v, want 0", moment, whole.Centre)
		}
		if got := whole.About(p); math.Abs(got-inertia) > 1e-14*reach {
			t.Errorf("inertia %v about %v, want %v", got, p, inertia)
		}
		if apart := whole.Inertia - i1 - i2; apart < -1e-15*(i1+i2) { // the rounding of one sum
			t.Errorf("joining took %v of inertia away", apart)
		}
	})
}
