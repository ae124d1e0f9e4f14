package readings

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

// TestTwoScales is the textbook's two-scale formula on a straight floor edge by hand:
// marks 0.6 m apart, scales 5 and 7 kg, so the balance point is 0.6·5/12 = 0.25 m ahead
// of the rear mark; the front raised by 0.3 (30 degrees) it shows 3 kg, so its height is
// (0.25 − 0.6·3/12)/tan 30° = 0.1·√3 m.
func TestTwoScales(t *testing.T) {
	edge, err := rocker.Chain(0.5, rocker.Flat(1))
	if err != nil {
		t.Fatal(err)
	}
	result, err := Readings{Edge: edge, Front: 5, Rear: 7, Apart: 0.6, FrontMark: 0.3, Raised: 0.3, FrontRaised: 3, RearRaised: 9}.Read()
	b, doubts := result.Body, result.Doubts
	want := r2.Vec{X: -0.3 + 0.25, Y: 0.1 * math.Sqrt(3)}
	if err != nil || len(doubts) > 0 || b.Mass != 12 || r2.Norm(r2.Sub(b.Centre, want)) > 1e-12 {
		t.Errorf("%+v, %v, %v; want 12 kg at %v", b, doubts, err, want)
	}
	if !math.IsNaN(b.Inertia) {
		t.Errorf("inertia %v without a timed rock", b.Inertia)
	}
}

// known is a chair whose body is known, and rider one who sits in it.
var (
	known = body.Body{Mass: 12, Centre: r2.Vec{X: -0.02, Y: 0.42}, Inertia: 1.6}
	rider = body.Body{Mass: 80, Centre: r2.Vec{X: 0.01, Y: 0.66}, Inertia: 8}
	edge  = rocker.Single(1.067, 0.43, 0.61)
)

// readingsOf makes exact readings of a chair by statics: moments of its weight about the
// rear mark in each attitude, not by the formula that reads them.
func readingsOf(t *testing.T, b body.Body) Readings {
	t.Helper()
	r := Readings{Edge: edge, Weight: b.Mass, FrontMark: 0.30, Apart: 0.55, Raised: 0.22, LetGo: 0.09}
	front, _ := edge.At(r.FrontMark)
	// On one arc a chord c spans the angle 2·asin(c/2R).
	rear, _ := edge.At(r.FrontMark - 2*1.067*math.Asin(r.Apart/2/1.067))
	scales := func(raised float64) (f, back float64) {
		turn := math.Asin(raised/r.Apart) - math.Atan2(front.Y-rear.Y, front.X-rear.X)
		g, m := r2.Rotate(b.Centre, turn, rear), r2.Rotate(front, turn, rear)
		f = b.Mass * (g.X - rear.X) / (m.X - rear.X)
		return f, b.Mass - f
	}
	r.Front, r.Rear = scales(0)
	r.FrontRaised, r.RearRaised = scales(r.Raised)
	rig := sim.Rig{Profile: edge, Body: b}
	r.TenRocks = 10 * rig.Swing(rig.Balance(), r.LetGo).Period
	return r
}

func TestRoundTrip(t *testing.T) {
	result, err := readingsOf(t, known).Read()
	b, doubts := result.Body, result.Doubts
	if err != nil || len(doubts) > 0 {
		t.Fatal(err, doubts)
	}
	if math.Abs(b.Mass-known.Mass) > 1e-9 || r2.Norm(r2.Sub(b.Centre, known.Centre)) > 1e-9 || math.Abs(b.Inertia-known.Inertia) > 1e-9 {
		t.Errorf("read %+v, was %+v", b, known)
	}
	ridden := readingsOf(t, known)
	ridden.TenRocks, ridden.LetGo, ridden.Rider, ridden.RiddenLetGo = 0, 0, rider, 0.09
	rig := sim.Rig{Profile: edge, Body: body.Join(known, rider)}
	ridden.RiddenTenRocks = 10 * rig.Swing(rig.Balance(), 0.09).Period
	if s, err := ridden.solve(); err != nil || !(math.Abs(s.body.Inertia-known.Inertia) < 1e-8) {
		t.Errorf("ridden: inertia %v, %v, was %v", s.body.Inertia, err, known.Inertia)
	}
	dowel := Readings{Edge: edge, Weight: 12, DowelAhead: -0.02, DowelAbove: 0.42}
	if result, err = dowel.Read(); err != nil || result.Body.Centre != known.Centre {
		t.Errorf("dowel: %v, %v", result.Body.Centre, err)
	}
	mixed := readingsOf(t, known)
	mixed.Raised, mixed.FrontRaised, mixed.RearRaised, mixed.DowelAbove = 0, 0, 0, 0.42
	if result, err = mixed.Read(); err != nil || r2.Norm(r2.Sub(result.Body.Centre, known.Centre)) > 1e-9 {
		t.Errorf("scales level and a dowel: %v, %v", result.Body.Centre, err)
	}
}

// TestInertiaOfALowPiece: the nearer G lies to the floor, the less straight is the square of the time in the inertia; the
// inertia comes back all the same, small and large.
func TestInertiaOfALowPiece(t *testing.T) {
	for _, high := range []float64{0.0001, 0.001, 0.02, 0.4} {
		for _, inertia := range []float64{1e-6, 1e-3, 1, 100} {
			b := body.Body{Mass: 12, Centre: r2.Vec{Y: high}, Inertia: inertia}
			rig := sim.Rig{Profile: edge, Body: b}
			watch := timed{tenRocks: 10 * rig.Swing(rig.Balance(), 0.02).Period, letGo: 0.02}
			got, _, err := Readings{Edge: edge}.inertia(b, watch)
			// at 0.4 m the smallest is half a millionth of J, and the time is known to 1e-13
			if err != nil || !(math.Abs(got/inertia-1) < 1e-6) {
				t.Errorf("G %v m over the floor: inertia %v, %v; was %v", high, got, err, inertia)
			}
		}
	}
}

// TestUncertaintyHolds reads a known chair with normal reading errors a thousand times:
// each value lies within its stated uncertainty 93 to 97 times in 100.
func TestUncertaintyHolds(t *testing.T) {
	const trials = 1000
	for _, tt := range []struct {
		name  string
		exact Readings
	}{
		{"scales, rocked empty", readingsOf(t, known)},
		{"dowel, rocked empty", func() Readings {
			r := readingsOf(t, known)
			return Readings{Edge: edge, Weight: 12, DowelAhead: -0.02, DowelAbove: 0.42, TenRocks: r.TenRocks, LetGo: r.LetGo}
		}()},
		{"both", func() Readings {
			r := readingsOf(t, known)
			r.DowelAhead, r.DowelAbove = -0.02, 0.42
			return r
		}()},
	} {
		rng := rand.New(rand.NewPCG(11, 5))
		var covered [4]int
		truth := solution{body: known}.numbers()
		for range trials {
			r := tt.exact
			for _, one := range r.read() {
				*one.value += one.deviation * rng.NormFloat64()
			}
			result, err := r.Read()
			if err != nil {
				t.Fatalf("%s: %v", tt.name, err)
			}
			for i, v := range []Value{result.Mass, result.Ahead, result.Above, result.Inertia} {
				if math.Abs(v.Value-truth[i]) <= v.Uncertain {
					covered[i]++
				}
			}
		}
		t.Logf("%s: mass, ahead, above, inertia within their uncertainty %v times in %d", tt.name, covered, trials)
		for i, n := range covered {
			if n < 930 || n > 970 {
				t.Errorf("%s: value %d lies within its uncertainty %d times in %d", tt.name, i, n, trials)
			}
		}
	}
}

func BenchmarkRead(b *testing.B) {
	t := &testing.T{}
	r := readingsOf(t, known)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := r.Read(); err != nil {
			b.Fatal(err)
		}
	}
}

// TestOneScale holds that with the weight known one scale of the pair is enough, either one.
func TestOneScale(t *testing.T) {
	whole := readingsOf(t, known)
	for name, change := range map[string]func(r *Readings){
		"front only": func(r *Readings) { r.Rear, r.RearRaised = 0, 0 },
		"rear only":  func(r *Readings) { r.Front, r.FrontRaised = 0, 0 },
	} {
		r := whole
		change(&r)
		if result, err := r.Read(); err != nil || r2.Norm(r2.Sub(result.Body.Centre, known.Centre)) > 1e-9 {
			t.Errorf("%s: %v, %v", name, result.Body.Centre, err)
		}
	}
	whole.FrontRaised, whole.RearRaised = 0, 0
	if _, err := whole.Read(); err == nil || !strings.Contains(err.Error(), "neither scale") {
		t.Errorf("raised and not read: %v", err)
	}
	whole = readingsOf(t, known)
	whole.Apart = 0
	if _, err := whole.Read(); err == nil || !strings.Contains(err.Error(), "distance between the two marks") {
		t.Errorf("marks no way apart: %v", err)
	}
	var none Value
	if none.Limits() != "" {
		t.Error("nothing limits nothing")
	}
}
