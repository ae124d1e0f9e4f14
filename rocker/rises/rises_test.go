package rises

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"rockerwright/rocker"
)

// arcRises returns the exact rises of one arc: y = R − √(R² − x²).
func arcRises(radius, spacing float64, ahead, behind int) Row {
	r := Row{Spacing: spacing, Low: ahead, Rise: make([]float64, ahead+behind+1)}
	for i := range r.Rise {
		x := r.at(i)
		r.Rise[i] = radius - math.Sqrt(radius*radius-x*x)
	}
	return r
}

const (
	inch  = 0.0254
	ruler = inch / 64 // read to 1/64 in, as one standard deviation
)

// TestOneArc holds that exact rises give the radius and the low point back.
func TestOneArc(t *testing.T) {
	for _, radius := range []float64{0.6, 1.0668, 3} {
		r := arcRises(radius, 2*inch, 6, 8)
		r.Error = 1e-9
		f, err := r.Fit()
		if err != nil || len(f.Arcs) != 1 || f.Suspect != -1 || !f.Explains {
			t.Fatalf("R %g: %v, %+v", radius, err, f)
		}
		if got := f.Arcs[0].Radius; math.Abs(got/radius-1) > 1e-9 {
			t.Errorf("R %g: fitted %v", radius, got)
		}
		spans, nose := f.Spans(0.4, 0.5)
		p, err := rocker.Chain(nose, spans...)
		if err != nil || math.Abs(p.Length()-0.9) > 1e-9 || math.Abs(p.Rise(0.3)-(radius-math.Sqrt(radius*radius-0.09))) > 1e-9 {
			t.Errorf("R %g: the chain of the fit: %v, %v long, rise %v", radius, err, p.Length(), p.Rise(0.3))
		}
	}
}

// TestAslant holds that a straightedge that is off and aslant changes nothing but
// the low point: seen from it the arc has its centre elsewhere.
func TestAslant(t *testing.T) {
	const radius, off, low = 1.0668, 0.002, -0.0032
	r := Row{Spacing: 2 * inch, Low: 7, Rise: make([]float64, 15), Error: 1e-9}
	for i := range r.Rise {
		x := r.at(i) - low
		r.Rise[i] = off + radius - math.Sqrt(radius*radius-x*x)
	}
	f, err := r.Fit()
	if err != nil || len(f.Arcs) != 1 {
		t.Fatal(err, f)
	}
	if got := f.Arcs[0].Radius; math.Abs(got/radius-1) > 1e-9 {
		t.Errorf("fitted %v, want %v", got, radius)
	}
	if math.Abs(f.low-low) > 1e-9 {
		t.Errorf("low point %v m ahead of its station, want %v", f.low, low)
	}
}

// TestTwoArcs holds that two exact arcs with one tangent are found.
func TestTwoArcs(t *testing.T) {
	const nose, tail = 0.9, 1.6
	r := arcRises(nose, 2*inch, 7, 9)
	behind := arcRises(tail, 2*inch, 7, 9)
	for i := range r.Rise {
		if r.at(i) < 0 {
			r.Rise[i] = behind.Rise[i]
		}
	}
	r.Error = 1e-7
	f, err := r.Fit()
	if err != nil || len(f.Arcs) != 2 {
		t.Fatal(err, f)
	}
	if math.Abs(f.Arcs[0].Radius/nose-1) > 1e-4 || math.Abs(f.Arcs[1].Radius/tail-1) > 1e-4 || math.Abs(f.Arcs[0].To) > 1e-3 {
		t.Errorf("fitted %+v", f.Arcs)
	}
}

// noisy adds normal errors of the ruler.
func noisy(r Row, rng *rand.Rand) Row {
	c := r
	c.Error = ruler
	c.Rise = append([]float64(nil), r.Rise...)
	for i := range c.Rise {
		c.Rise[i] += ruler * rng.NormFloat64()
	}
	return c
}

// TestNoisyArc reads one arc to 1/64 in at 2 in spacing: the fit is one arc 95 times in
// 100 by its own level, and the stated uncertainty of its radius holds 95 times in 100,
// within the chance of a thousand trials.
func TestNoisyArc(t *testing.T) {
	const radius, trials = 42 * inch, 1000
	exact := arcRises(radius, 2*inch, 7, 9)
	rng := rand.New(rand.NewPCG(8, 1))
	one, covered := 0, 0
	for range trials {
		r := noisy(exact, rng)
		f, err := r.Fit()
		if err != nil {
			t.Fatal(err)
		}
		if len(f.Arcs) == 1 && f.Suspect < 0 {
			one++
		}
		single := r.fit([]bow{r.start()}, -1)
		if math.Abs(single.Arcs[0].Radius-radius) <= single.Arcs[0].Uncertain {
			covered++
		}
	}
	t.Logf("of %d: one arc %d, radius within its uncertainty %d", trials, one, covered)
	if one < 930 {
		t.Errorf("one arc was found as one %d times in %d", one, trials)
	}
	if covered < 930 || covered > 970 {
		t.Errorf("the radius lies within its uncertainty %d times in %d", covered, trials)
	}
}

// TestMisreadRise holds that a rise misread by an inch is named, with what it should be.
func TestMisreadRise(t *testing.T) {
	exact := arcRises(42*inch, 2*inch, 7, 9)
	rng := rand.New(rand.NewPCG(8, 2))
	for range 50 {
		r := noisy(exact, rng)
		wrong := rng.IntN(len(r.Rise))
		r.Rise[wrong] += inch * float64(1-2*rng.IntN(2))
		f, err := r.Fit()
		if err != nil {
			t.Fatalf("station %d: %v", wrong, err)
		}
		if f.Suspect != wrong {
			t.Errorf("station %d was misread, %d is suspected", wrong, f.Suspect)
			continue
		}
		if math.Abs(f.Without-exact.Rise[wrong]) > 4*ruler { // an end drawn out from 16 others is known to 0.7 of a reading
			t.Errorf("station %d: %v by the others, was %v", wrong, f.Without, exact.Rise[wrong])
		}
	}
}

func TestAgree(t *testing.T) {
	exact := arcRises(42*inch, 2*inch, 7, 9)
	rng := rand.New(rand.NewPCG(8, 3))
	same, apart := 0, 0
	for range 500 {
		left, right := noisy(exact, rng), noisy(exact, rng)
		if _, _, one, err := Compare(left, right); err != nil {
			t.Fatal(err)
		} else if one {
			same++
		}
		left.Rise[3] += inch / 8
		if largest, station, one, _ := Compare(left, right); !one && station == 3 && largest > inch/16 {
			apart++
		}
	}
	if same < 460 || same > 490 { // 475 expected, 3 deviations either way
		t.Errorf("like rockers agree %d times in 500", same)
	}
	// 1/8 in is 5.7 deviations of a difference, of which the line taken out leaves about
	// 5; the bound is at 3.2. So 96 of 100, and 480 of 500, less 3 deviations.
	if apart < 465 {
		t.Errorf("1/8 in at station 4 is noticed %d times in 500", apart)
	}
}

func TestRowsThatAreNone(t *testing.T) {
	good := arcRises(1, 0.05, 6, 6)
	for name, change := range map[string]func(r *Row){
		"few stations":    func(r *Row) { r.Rise = r.Rise[:4]; r.Low = 2 },
		"no spacing":      func(r *Row) { r.Spacing = 0 },
		"low at an end":   func(r *Row) { r.Low = 0 },
		"not a number":    func(r *Row) { r.Rise[3] = math.NaN() },
		"error below 0":   func(r *Row) { r.Error = -ruler },
		"error no number": func(r *Row) { r.Error = math.NaN() },
		"endless spacing": func(r *Row) { r.Spacing = math.Inf(1) },
		"far too high":    func(r *Row) { r.Rise[3] = 5 },
		"all level":       func(r *Row) { clear(r.Rise) },
		"upside down": func(r *Row) {
			for i := range r.Rise {
				r.Rise[i] = -r.Rise[i]
			}
		},
	} {
		r := good
		r.Rise = append([]float64(nil), good.Rise...)
		change(&r)
		_, err := r.Fit()
		var wrong *Error
		if !errors.As(err, &wrong) {
			t.Errorf("%s: %v, want an error about the rises", name, err)
		}
		if name == "all level" || name == "upside down" { // two rockers alike
			continue
		}
		if _, _, _, err := Compare(good, r); !errors.As(err, &wrong) {
			t.Errorf("%s: the right rocker is not checked: %v", name, err)
		}
	}
}

func FuzzFit(f *testing.F) {
	f.Add(uint64(1), 8)
	f.Fuzz(func(t *testing.T, seed uint64, n int) {
		if n < 0 || n > 24 {
			t.Skip("sizes of a rocker")
		}
		rng := rand.New(rand.NewPCG(seed, 0))
		r := Row{Spacing: 0.05, Low: n / 2, Rise: make([]float64, n)}
		for i := range r.Rise {
			r.Rise[i] = rng.ExpFloat64() * 0.02
		}
		fit, err := r.Fit()
		if err != nil {
			return
		}
		spans, nose := fit.Spans(0, 0)
		if p, err := rocker.Chain(nose, spans...); err == nil && !(p.Length() > 0) {
			t.Errorf("a chain of length %v", p.Length())
		}
	})
}

func BenchmarkFit(b *testing.B) {
	r := noisy(arcRises(42*inch, 2*inch, 7, 9), rand.New(rand.NewPCG(8, 4)))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := r.Fit(); err != nil {
			b.Fatal(err)
		}
	}
}
