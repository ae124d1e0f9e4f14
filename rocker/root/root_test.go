package root

import (
	"fmt"
	"math"
	"testing"
)

// step is −1 up to a place and 1 behind it.
func step(at float64) func(float64) float64 {
	return func(x float64) float64 {
		if x <= at {
			return -1
		}
		return 1
	}
}

// rounding is how far, as a part of x, a root may lie off: 2⁻⁵² to either side of the last two places, and the rounding of f.
const rounding = 1e-15

// TestBetween holds the root of functions whose zero is known by closed form: smooth ones, with
// a zero at an end, flat beside it, with a jump, a pole, a root of infinite slope, and what is
// not a number beyond; from either side, and upside down.
func TestBetween(t *testing.T) {
	cubic := func(x float64) float64 { return x*x*x - 2*x - 5 }
	cardano := math.Cbrt(2.5+math.Sqrt(643./108)) + math.Cbrt(2.5-math.Sqrt(643./108)) // (5/2)² − (2/3)³ = 643/108
	for _, tt := range []struct {
		name       string
		f          func(float64) float64
		a, b, want float64
		off        float64 // absolute
		asked      int     // at most, from either side
	}{
		{"a line", func(x float64) float64 { return 3*x - 1 }, 0, 1, 1. / 3, rounding, 6},
		{"root of two", func(x float64) float64 { return x*x - 2 }, 0, 2, math.Sqrt2, 2 * rounding, 11},
		{"ln 3", func(x float64) float64 { return math.Exp(x) - 3 }, -2, 4, math.Log(3), 4 * rounding, 13},
		{"cosine", math.Cos, 1, 2, math.Pi / 2, 2 * rounding, 10},
		{"x³ − 2x − 5", cubic, 2, 3, cardano, 4 * rounding, 10},
		{"huge numbers", func(x float64) float64 { return 1e200 * (x - 1e100) }, 0, 3e100, 1e100, 1e100 * rounding, 6},
		{"small numbers", func(x float64) float64 { return 1e-200 * (x - 1e-100) }, 0, 3e-100, 1e-100, 1e-100 * rounding, 6},
		{"zero at the first end", func(x float64) float64 { return x - 2 }, 2, 5, 2, 0, 2},
		{"zero at zero", math.Sin, -1, 2, 0, 0x1p-57, 12},
		{"a power of 9", func(x float64) float64 { return math.Pow(x, 9) }, -1, 1.5, 0, 1e-17, 200},         // 2⁻⁶⁰ of the way
		{"infinite slope", func(x float64) float64 { return math.Cbrt(x - 0.3) }, 0, 1, 0.3, 1e-15, 130},    // parts a line misleads
		{"flat before", func(x float64) float64 { return max(-1e-9, x-0.7) }, 0, 1, 0.7, rounding, 60},      // nothing to follow
		{"flat behind", func(x float64) float64 { return min(1e-9, x-0.7) }, 0, 1, 0.7, rounding, 60},       //
		{"a jump", step(0.6), 0, 1, 0.6, 2 * rounding, 60},                                                  // 2⁻⁵² of 0.6 from 1
		{"a jump at zero", step(0), -1, 3, 0, 1e-17, 70},                                                    // 2⁻⁶⁰ of 4
		{"a jump between like ends", step(0), -1, 1, 0, 1e-17, 70},                                          // 2⁻⁶⁰ of 2
		{"a pole", func(x float64) float64 { return 1 / (x - 0.6) }, 0, 1, 0.6, 2 * rounding, 120},          //
		{"both infinite", func(x float64) float64 { return math.Inf(1) * (x - 0.6) }, 0, 1, 0.6, 1e-15, 60}, //
	} {
		for _, turned := range []struct {
			name string
			a, b float64
			sign float64
		}{{"", tt.a, tt.b, 1}, {", from the other side", tt.b, tt.a, 1}, {", upside down", tt.a, tt.b, -1}} {
			asked := 0
			x := Between(func(x float64) float64 { asked++; return turned.sign * tt.f(x) }, turned.a, turned.b, 0)
			if !(math.Abs(x-tt.want) <= tt.off) {
				t.Errorf("%s%s: %v, want %v: off by %g", tt.name, turned.name, x, tt.want, x-tt.want)
			}
			if asked > tt.asked {
				t.Errorf("%s%s: asked %d times, want at most %d", tt.name, turned.name, asked, tt.asked)
			}
		}
	}
}

// TestWithin holds that a root is no further off than was allowed, and costs less.
func TestWithin(t *testing.T) {
	f := func(x float64) float64 { return math.Exp(x) - 3 }
	for _, within := range []float64{1, 1e-3, 1e-6} {
		asked := 0
		x := Between(func(x float64) float64 { asked++; return f(x) }, -2, 4, within)
		if math.Abs(x-math.Log(3)) > within || asked > 11 {
			t.Errorf("within %g: off by %g, asked %d times", within, x-math.Log(3), asked)
		}
	}
	if x := Between(step(0.6), 0, 1, 1e-3); math.Abs(x-0.6) > 1e-3 {
		t.Errorf("a jump within 1e-3: %v", x)
	}
}

// TestNotANumber holds that what is no number lies on the side of the first place, and that
// there is no root where the signs are alike or the second place has none.
func TestNotANumber(t *testing.T) {
	nan := math.NaN()
	beyond := func(x float64) float64 { // √(x − 1) − 0.5, zero at 1.25
		return math.Sqrt(x-1) - 0.5
	}
	if x := Between(beyond, 0, 3, 0); math.Abs(x-1.25) > 2*rounding {
		t.Errorf("no number below 1: %v, want 1.25", x)
	}
	gap := func(x float64) float64 { // a number from 1 on, where it is above zero already
		if x < 1 {
			return nan
		}
		return x
	}
	if x := Between(gap, 0, 3, 0); math.Abs(x-1) > 2*rounding {
		t.Errorf("no number up to 1, then above zero: %v, want 1", x)
	}
	for name, x := range map[string]float64{
		"alike":               Between(func(x float64) float64 { return 1 + x*x }, -1, 1, 0),
		"alike below":         Between(func(x float64) float64 { return -1 - x*x }, -1, 1, 0),
		"none at the second":  Between(beyond, 3, 0, 0),
		"none anywhere":       Between(func(float64) float64 { return nan }, 0, 1, 0),
		"an end of no number": Between(func(x float64) float64 { return x }, -1, nan, 0),
		"a step to no number": Between(step(0), nan, 1, 0), // whose ends are numbers
		"an endless one":      Between(step(0), math.Inf(-1), 1, 0),
		"no number near":      Between(step(0.3), -1, 1, nan),
	} {
		if !math.IsNaN(x) {
			t.Errorf("%s: %v, want NaN", name, x)
		}
	}
	if yes, no := Edge(func(float64) bool { return true }, 1, nan, 0, 0); yes != 1 || !math.IsNaN(no) {
		t.Errorf("an edge before no number: %v, %v", yes, no)
	}
}

// TestEdge holds that a yes and a no lie as near to each other as was asked, on either side of
// where one turns into the other, and that the ends are not asked.
func TestEdge(t *testing.T) {
	const at = 0.3
	for _, tt := range []struct {
		yes, no, tolerance, accuracy float64
		asked                        int
	}{
		{0, 1, 1. / 1000, 0, 10}, // 2⁻¹⁰ is the first below
		{1, 0, 1. / 1000, 0, 10},
		{0, 1, 0, 1e-3, 12}, // 2⁻¹² ≤ 0.0003 < 2⁻¹¹
		{1, 0, 0, 1e-3, 12},
		{0, 1, 2, 0, 0},
		{-1, 1, 1. / 1000, 0, 11}, // one more halving
		{1, -1, 1. / 1000, 0, 11},
		{-0.5, 1.5, 2, 0, 0},
		{0, 1, 0, 0, 54}, // from 2⁻² on 52 digits, and the two before
	} {
		asked := 0
		holds := func(x float64) bool {
			asked++
			if x == tt.yes || x == tt.no {
				t.Errorf("%+v: an end was asked", tt)
			}
			return (x < at) == (tt.yes < at)
		}
		yes, no := Edge(holds, tt.yes, tt.no, tt.tolerance, tt.accuracy)
		if (yes < at) != (tt.yes < at) || (no < at) != (tt.no < at) {
			t.Errorf("%+v: %v and %v lie on one side of %v", tt, yes, no, at)
		}
		if apart := math.Abs(yes - no); apart > max(tt.tolerance, tt.accuracy*yes, 0x1p-54) {
			t.Errorf("%+v: %v apart", tt, apart)
		}
		if asked > tt.asked {
			t.Errorf("%+v: asked %d times, want %d", tt, asked, tt.asked)
		}
	}
}

// FuzzBetween holds of any cubic that the place lies between the two, and that the sign changes
// beside it.
func FuzzBetween(f *testing.F) {
	f.Add(1.0, -2.0, -5.0, 2.0, 3.0)
	f.Add(0.0, 0.0, -1.0, 0.0, 1.0)
	f.Fuzz(func(t *testing.T, p, q, r, a, b float64) {
		for _, x := range []float64{p, q, r, a, b} {
			if !(math.Abs(x) < 1e6) {
				t.Skip("no numbers of a workshop")
			}
		}
		cubic := func(x float64) float64 { return p*x*x*x + q*x + r }
		asked := 0
		x := Between(func(x float64) float64 { asked++; return cubic(x) }, a, b, 0)
		if (cubic(a) > 0) == (cubic(b) > 0) && cubic(a) != 0 && cubic(b) != 0 {
			if !math.IsNaN(x) {
				t.Errorf("alike at both ends, and yet %v", x)
			}
			return
		}
		if x < min(a, b) || x > max(a, b) || math.IsNaN(x) {
			t.Fatalf("%v lies outside %v to %v", x, a, b)
		}
		off := 0x1p-51*math.Abs(x) + 0x1p-58*math.Abs(b-a) // twice what is promised
		low, high := max(x-off, min(a, b)), min(x+off, max(a, b))
		if cubic(x) != 0 && (cubic(low) > 0) == (cubic(high) > 0) && cubic(low) != 0 && cubic(high) != 0 {
			t.Errorf("no change of sign beside %v: %g, %g", x, cubic(low), cubic(high))
		}
		if asked > 400 {
			t.Errorf("asked %d times", asked)
		}
	})
}

func BenchmarkBetween(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if x := Between(func(x float64) float64 { return x*x - 2 }, 0, 2, 0); !(x > 1) {
			b.Fatal(x)
		}
	}
}

func ExampleBetween() {
	fmt.Printf("%.9f\n", Between(math.Cos, 1, 2, 0))
	// Output: 1.570796327
}
