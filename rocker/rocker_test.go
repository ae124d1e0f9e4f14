package rocker

import (
	"errors"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// near is the absolute difference that a dozen roundings of metres may make.
const near = 1e-14

func mustChain(t testing.TB, nose float64, spans ...Span) Profile {
	t.Helper()
	p, err := Chain(nose, spans...)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// TestSingle: on one arc h = R(1 − cos θ) about the origin, and beyond its ends the tips'
// own p·u.
func TestSingle(t *testing.T) {
	const radius, nose, tail = 1.05, 0.4, 0.5
	p := Single(radius, nose, tail)
	tailTip := r2.Vec{X: -radius * math.Sin(tail/radius), Y: radius * (1 - math.Cos(tail/radius))}
	noseTip := r2.Vec{X: radius * math.Sin(nose/radius), Y: radius * (1 - math.Cos(nose/radius))}
	if r2.Norm(r2.Sub(p.Tail(), tailTip)) > near || r2.Norm(r2.Sub(p.Nose(), noseTip)) > near {
		t.Errorf("tips %v, %v; want %v, %v", p.Nose(), p.Tail(), noseTip, tailTip)
	}
	for tilt := -2.0; tilt <= 2; tilt += 0.1 {
		u, du := Down(tilt)
		want, wantD, rho := radius*(1-math.Cos(tilt)), radius*math.Sin(tilt), radius
		if tilt > tail/radius {
			want, wantD, rho = r2.Dot(tailTip, u), r2.Dot(tailTip, du), 0
		} else if tilt < -nose/radius {
			want, wantD, rho = r2.Dot(noseTip, u), r2.Dot(noseTip, du), 0
		}
		h, dh, ddh := p.Support(tilt)
		if math.Abs(h-want) > near || math.Abs(dh-wantD) > near || math.Abs(h+ddh-rho) > near {
			t.Errorf("at %v: h %v, h′ %v, ρ %v; want %v, %v, %v", tilt, h, dh, h+ddh, want, wantD, rho)
		}
		if contact := p.Contact(tilt); r2.Norm(r2.Sub(contact, r2.Add(r2.Scale(h, u), r2.Scale(dh, du)))) > near {
			t.Errorf("at %v the contact is %v, not h·u + h′·u′", tilt, contact)
		}
	}
	if got := p.Length(); math.Abs(got-0.9) > near {
		t.Errorf("length %v", got)
	}
}

// TestHugeRadius: 100 km lose no digits, against 2R sin²(θ/2).
func TestHugeRadius(t *testing.T) {
	p := Single(1e5, 0.4, 0.5)
	for _, tilt := range []float64{1e-6, 4e-6, -3e-6} {
		want := 2e5 * math.Sin(tilt/2) * math.Sin(tilt/2)
		if h, _, _ := p.Support(tilt); math.Abs(h-want) > 1e-14*want {
			t.Errorf("at %v rad h = %v, want %v", tilt, h, want)
		}
	}
}

// TestCornerAtOrigin: half of its turn lies before tilt 0.
func TestCornerAtOrigin(t *testing.T) {
	p := mustChain(t, 0.3, Arc(1, 0.3), Turn(0.2), Arc(1, 0.3))
	if p.Bearings() != 5 {
		t.Fatalf("%d bearings, want two tips, two arcs and a corner", p.Bearings())
	}
	if c := p.Bearing(2); c.Radius != 0 || math.Abs(c.From+0.1) > near || math.Abs(c.To-0.1) > near || c.At != (r2.Vec{}) {
		t.Errorf("the corner: %+v", *c)
	}
}

// TestFlat: the contact jumps by its length at one tilt.
func TestFlat(t *testing.T) {
	p := mustChain(t, 0.4, Arc(1, 0.3), Flat(0.2), Arc(2, 0.3))
	_, after, _ := p.Support(0)
	_, before, _ := p.Support(-1e-12)
	if math.Abs(after-before-0.2) > 1e-11 {
		t.Errorf("h′ jumps from %v to %v over a flat of 0.2 m", before, after)
	}
	if math.Abs(after-0.1) > near || r2.Norm(r2.Sub(p.Contact(0), r2.Vec{X: -0.1})) > near {
		t.Errorf("tail end of the flat %v, h′ %v", p.Contact(0), after)
	}
}

// TestSplit: splitting a span changes nothing beyond the rounding of its lengths.
func TestSplit(t *testing.T) {
	whole := mustChain(t, 0.5, Arc(1, 0.4), Flat(0.1), Turn(0.3), Arc(1.5, 0.4))
	split := mustChain(t, 0.5, Arc(1, 0.1), Arc(1, 0.3), Flat(0.04), Flat(0.06), Turn(0.1), Turn(0.2), Arc(1.5, 0.2), Arc(1.5, 0.2))
	if whole.Bearings() != split.Bearings() {
		t.Fatalf("%d and %d bearings", whole.Bearings(), split.Bearings())
	}
	for tilt := -3.0; tilt < 3; tilt += 0.07 {
		a, da, _ := whole.Support(tilt)
		b, db, _ := split.Support(tilt)
		if math.Abs(a-b) > near || math.Abs(da-db) > near {
			t.Errorf("at %v: %v, %v whole; %v, %v split", tilt, a, da, b, db)
		}
	}
}

// TestPoint: no spans are one point, on which a pendulum swings.
func TestPoint(t *testing.T) {
	p := mustChain(t, 0)
	for tilt := -7.0; tilt < 7; tilt++ {
		if h, dh, ddh := p.Support(tilt); h != 0 || dh != 0 || ddh != 0 {
			t.Errorf("at %v: %v, %v, %v", tilt, h, dh, ddh)
		}
	}
}

// TestSpanErrors holds which span is named, and why.
func TestSpanErrors(t *testing.T) {
	for _, tt := range []struct {
		nose  float64
		spans []Span
		index int
		says  string
	}{
		{0.1, []Span{Arc(1, 0.5), Arc(1, 0)}, 1, "a length is more than 0"},
		{0.1, []Span{Arc(1, -0.5)}, 0, "a length is more than 0"},
		{0.1, []Span{Arc(math.NaN(), 1)}, 0, "not a number"},
		{0.1, []Span{Arc(1, math.Inf(1))}, 0, "not a number"},
		{0.1, []Span{Arc(1, 1), {Turn: 1, Length: 1}}, 1, "a turn has no length"},
		{0.1, []Span{Turn(3.2)}, 0, "less than 180 degrees"},
		{0.1, []Span{Arc(1, 3), Arc(1, 3), Arc(0.5, 1)}, 2, "360 degrees"},
		{0.1, []Span{Arc(1, 1), Arc(-0.1, 1)}, 1, "the hollows come to 360"},
		{2, []Span{Arc(1, 1)}, 1, "outside the edge"},
		{-1, []Span{Arc(1, 1)}, 1, "outside the edge"},
		{math.NaN(), []Span{Arc(1, 1)}, 1, "outside the edge"},
		{0.1, []Span{Arc(2, 4), Arc(0.1, 0.4)}, 2, "curls in"},
	} {
		_, err := Chain(tt.nose, tt.spans...)
		var span *SpanError
		if !errors.As(err, &span) || span.Index != tt.index || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("Chain(%v, %v): %v; want span %d and %q", tt.nose, tt.spans, err, tt.index, tt.says)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("Single(-1, …) did not panic")
		}
	}()
	Single(-1, 0.1, 0.1)
}

func TestReadingAllocatesNothing(t *testing.T) {
	p := mustChain(t, 0.4, Arc(0.9, 0.5), Arc(1.4, 0.4))
	if n := testing.AllocsPerRun(100, func() { p.Support(0.2); p.Contact(-1); p.Height(r2.Vec{}, 2) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

func BenchmarkSupport(b *testing.B) {
	p := mustChain(b, 0.4, Arc(0.9, 0.3), Arc(1.2, 0.3), Arc(1.4, 0.3))
	b.ReportAllocs()
	var sum float64
	for b.Loop() {
		h, _, _ := p.Support(0.2)
		sum += h
	}
	if math.IsNaN(sum) {
		b.Fatal("not a number")
	}
}
