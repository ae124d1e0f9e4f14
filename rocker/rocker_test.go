package rocker

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
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

// randomSpans returns a chain of every sort of span, hollows and notches among them.
func randomSpans(rng *rand.Rand) (nose float64, spans []Span) {
	for range 1 + rng.IntN(6) {
		length := 0.05 + 0.4*rng.Float64()
		switch rng.IntN(7) {
		case 0:
			spans = append(spans, Turn(0.6*(rng.Float64()-0.4)))
			continue
		case 1:
			spans = append(spans, Flat(length))
		case 2:
			spans = append(spans, Arc(-0.3-rng.Float64(), length))
		default:
			spans = append(spans, Arc(0.3+rng.Float64(), length))
		}
		nose += length * rng.Float64()
	}
	return nose, spans
}

// TestHullAgainstOutline: the support function is the largest p·u of the drawn edge, which
// is followed here by its own small steps: turning by step/R, and moving along.
func TestHullAgainstOutline(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for n := 0; n < 300; {
		nose, spans := randomSpans(rng)
		p, err := Chain(nose, spans...)
		if err != nil {
			continue
		}
		n++
		const step = 1e-4 // m
		outline := []r2.Vec{p.Nose()}
		// where the nose tip is, and the tilt there, come from the product; all else is walked
		heading, at := p.edge[0].from, p.Nose()
		for _, s := range spans {
			heading += s.Turn
			if s.Length == 0 {
				continue
			}
			steps := math.Ceil(s.Length / step)
			part := s.Length / steps
			for range int(steps) {
				bend := 0.0
				if s.Radius != 0 {
					bend = part / s.Radius
				}
				sin, cos := math.Sincos(heading + bend/2)
				at = r2.Add(at, r2.Scale(part, r2.Vec{X: -cos, Y: sin}))
				heading += bend
				outline = append(outline, at)
			}
		}
		for tilt := -1.3; tilt < 1.3; tilt += 0.05 { // upside down it is taken to lie on its tips
			u, _ := Down(tilt)
			want := math.Inf(-1)
			for _, q := range outline {
				want = max(want, r2.Dot(q, u))
			}
			// a chord of 0.1 mm on the smallest radius, 0.3 m, rises 4 nm
			if h, _, _ := p.Support(tilt); math.Abs(h-want) > 1e-8 {
				t.Fatalf("%v, %v: at %v rad h = %v, the outline says %v", nose, spans, tilt, h, want)
			}
		}
	}
}

// TestHullHolds: ranges in order over one whole turn, h and its slope as they must be,
// lengths rolled over without a gap, the perimeter that of the hull.
func TestHullHolds(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for n := 0; n < 500; {
		nose, spans := randomSpans(rng)
		p, err := Chain(nose, spans...)
		if err != nil {
			continue
		}
		n++
		total := 0.0
		for i := range p.Bearings() {
			b := p.Bearing(i)
			total += b.To - b.From
			if b.To < b.From || b.Radius < 0 || b.Flat < 0 {
				t.Fatalf("bearing %d: %+v", i, *b)
			}
			next, shift := p.Bearing((i+1)%p.Bearings()), 0.0
			if i == p.Bearings()-1 {
				shift = 2 * math.Pi
			}
			h1, d1, _ := b.Support(b.To)
			h2, d2, _ := next.Support(b.To - shift)
			if math.Abs(h1-h2) > 1e-12 || math.Abs(d1+b.Flat-d2) > 1e-12 {
				t.Fatalf("at joint %d of %v: h %v and %v, h′ %v + %v and %v", i, spans, h1, h2, d1, b.Flat, d2)
			}
			if shift == 0 && math.Abs(b.RolledAt(b.To)+b.Flat-next.RolledAt(next.From)) > 1e-12 {
				t.Fatalf("length rolled jumps at joint %d", i)
			}
			for _, end := range []struct {
				tilt  float64
				joint Joint
			}{{b.From, b.First}, {b.To, b.Last}} {
				u, du := Down(end.tilt)
				if end.joint.Down != u || end.joint.Along != du || r2.Norm(r2.Sub(end.joint.Point, b.Contact(end.tilt))) > 0 {
					t.Fatalf("joint %+v at %v", end.joint, end.tilt)
				}
			}
		}
		if math.Abs(total-2*math.Pi) > 1e-12 {
			t.Fatalf("the bearings cover %v rad", total)
		}
		around := 0.0 // by Cauchy: the perimeter is the integral of h over all tilts
		const steps = 20000
		for k := range steps {
			h, _, _ := p.Support(2 * math.Pi * (float64(k) + 0.5) / steps)
			around += h * 2 * math.Pi / steps
		}
		if math.Abs(around-p.Perimeter()) > 1e-6 { // midpoints of a function with kinks
			t.Fatalf("perimeter %v, by Cauchy's formula %v", p.Perimeter(), around)
		}
	}
}

// TestFind: any tilt, brought within one turn.
func TestFind(t *testing.T) {
	p := Single(1, 0.4, 0.5)
	for _, tilt := range []float64{0.1, -0.4, 0.5, 3, -3} {
		h, dh, _ := p.Support(tilt)
		for _, turns := range []float64{-3, -1, 1, 10} {
			other, d, _ := p.Support(tilt + turns*2*math.Pi)
			if math.Abs(h-other) > 1e-13 || math.Abs(dh-d) > 1e-13 {
				t.Errorf("at %v: h %v, %v turns on %v", tilt, h, turns, other)
			}
		}
	}
}

// TestAbove: a point's height over the floor and how far it is ahead of the contact.
func TestAbove(t *testing.T) {
	p := mustChain(t, 0.4, Arc(0.9, 0.5), Arc(1.4, 0.4))
	g := r2.Vec{X: -0.1, Y: 0.7}
	for tilt := -1.0; tilt < 1; tilt += 0.1 {
		i, within := p.Find(tilt)
		height, ahead, curve := p.Bearing(i).Above(g, within)
		u, du := Down(tilt)
		from := r2.Sub(g, p.Contact(tilt))
		if math.Abs(height+r2.Dot(from, u)) > near || math.Abs(ahead+r2.Dot(from, du)) > near ||
			curve != p.Bearing(i).Radius-height || p.Height(g, tilt) != height {
			t.Errorf("at %v: %v, %v, %v", tilt, height, ahead, curve)
		}
	}
}

// TestOutline: no chord leaves the curve by more than asked, hollows included.
func TestOutline(t *testing.T) {
	p := mustChain(t, 0.4, Arc(1, 0.5), Arc(-0.5, 0.2), Flat(0.1))
	const within = 1e-5
	points := p.Outline(within)
	if points[0] != p.Nose() || r2.Norm(r2.Sub(points[len(points)-1], p.Tail())) > near {
		t.Error("the outline does not go from tip to tip")
	}
	length := 0.0
	for i := 1; i < len(points); i++ {
		chord := r2.Norm(r2.Sub(points[i], points[i-1]))
		length += chord
		radius := 1.0
		if i > len(points)-2-int(0.2/math.Sqrt(8*0.5*within)) {
			radius = 0.5 // the hollow, which the flat's one chord follows
		}
		if rise := chord * chord / 8 / radius; rise > within*1.0001 && i < len(points)-1 {
			t.Errorf("chord %d is %v m long and leaves the curve by %v m", i, chord, rise)
		}
	}
	if math.Abs(length-p.Length()) > 1e-4 {
		t.Errorf("along the outline %v m, along the edge %v m", length, p.Length())
	}
}

// TestRise: the height of the edge over the level of the low point.
func TestRise(t *testing.T) {
	p := Single(1, 0.5, 0.6)
	for _, x := range []float64{-0.5, -0.1, 0, 0.3, 0.47} {
		if got, want := p.Rise(x), 1-math.Sqrt(1-x*x); math.Abs(got-want) > 1e-14 {
			t.Errorf("rise at %v is %v, want %v", x, got, want)
		}
	}
	if p.Rise(2) != p.Nose().Y || p.Rise(-2) != p.Tail().Y {
		t.Error("beyond the tips the rise is not theirs")
	}
	// arcs whose centres do not stand over the origin, a flat and a hollow: at every point of the
	// outline the rise is that point's
	p = mustChain(t, 0.5, Arc(1.4, 0.3), Arc(0.9, 0.3), Flat(0.1), Arc(-2, 0.1), Arc(1.1, 0.25))
	for _, q := range p.Outline(1e-4) {
		if got := p.Rise(q.X); math.Abs(got-q.Y) > 1e-12 {
			t.Errorf("rise at %v is %v, the outline has %v", q.X, got, q.Y)
		}
	}
}

// TestStrip: an annular sector and a bar by hand. Of a sector of outer radius R, inner r
// and half angle a: area a(R² − r²), centroid 2 sin a (R³ − r³)/(3a(R² − r²)) from the
// centre, second moment about the centre a(R⁴ − r⁴)/2.
func TestStrip(t *testing.T) {
	const R, depth, half = 1.1, 0.06, 0.45
	r := R - depth
	s, err := Single(R, half*R, half*R).Strip(depth, Concentric)
	if err != nil {
		t.Fatal(err)
	}
	area := half * (R*R - r*r)
	out := 2 * math.Sin(half) * (R*R*R - r*r*r) / (3 * area)
	second := half*(R*R*R*R-r*r*r*r)/2 - area*out*out
	if math.Abs(s.Area-area) > 1e-13 || math.Abs(s.Centroid.Y-(R-out)) > 1e-12 || math.Abs(s.Centroid.X) > 1e-13 ||
		math.Abs(s.Second-second) > 1e-13 {
		t.Errorf("sector %+v; want area %v, centroid %v, second %v", s, area, R-out, second)
	}
	bar, err := mustChain(t, 0.4, Flat(0.9)).Strip(0.05, Straight)
	if err != nil || math.Abs(bar.Area-0.045) > 1e-15 || math.Abs(bar.Centroid.X+0.05) > 1e-15 ||
		math.Abs(bar.Second-0.045*(0.81+0.0025)/12) > 1e-15 {
		t.Errorf("bar %+v, %v", bar, err)
	}
	// a straight top over one arc: the sector over the edge less the triangle from the centre to the top
	const nose, tail, q = 0.2, 0.25, 1 - depth // angles, for the radius is 1; the top under the centre
	straight, err := Single(1, nose, tail).Strip(depth, Straight)
	area = (nose + tail - q*q*(math.Tan(nose)+math.Tan(tail))) / 2
	ahead := (math.Cos(tail) - math.Cos(nose) - q*q*q*(math.Pow(math.Tan(nose), 2)-math.Pow(math.Tan(tail), 2))/2) / 3 / area
	out = (math.Sin(nose) + math.Sin(tail) - q*q*q*(math.Tan(nose)+math.Tan(tail))) / 3 / area
	if err != nil || math.Abs(straight.Area-area) > 1e-13 || math.Abs(straight.Centroid.X-ahead) > 1e-12 ||
		math.Abs(straight.Centroid.Y-(1-out)) > 1e-12 {
		t.Errorf("straight top %+v, %v; want area %v, centroid %v, %v", straight, err, area, ahead, 1-out)
	}
	if _, err := Single(0.05, 0.02, 0.02).Strip(0.06, Concentric); err == nil {
		t.Error("a rocker deeper than its radius has a strip")
	}
}

// TestTapered: over a flat, lengths n and l of it to the tips, the depth is d + (e − d)(s/n)², so that each
// side has the area n·d + n(e − d)/3 and the moment n²d/2 + n²(e − d)/4 about the origin.
func TestTapered(t *testing.T) {
	const n, l, d, nose, tail = 0.4, 0.5, 0.06, 0.03, 0.08
	s, err := mustChain(t, n, Flat(n), Flat(l)).Tapered(d, nose, tail)
	area := n*d + n*(nose-d)/3 + l*d + l*(tail-d)/3
	ahead := (n*n*d/2 + n*n*(nose-d)/4 - l*l*d/2 - l*l*(tail-d)/4) / area
	if err != nil || math.Abs(s.Area-area) > 1e-4*area || math.Abs(s.Centroid.X-ahead) > 1e-4*(n+l) { // the accuracy it states
		t.Errorf("%+v, %v; want area %v, centroid at %v", s, err, area, ahead)
	}
}

func TestReadingAllocatesNothing(t *testing.T) {
	p := mustChain(t, 0.4, Arc(0.9, 0.5), Arc(1.4, 0.4))
	if n := testing.AllocsPerRun(100, func() { p.Support(0.2); p.Contact(-1); p.Height(r2.Vec{}, 2) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

// FuzzChain holds of any chain: h is convex and its slope what it says.
func FuzzChain(f *testing.F) {
	f.Add(1.2, 0.9, 0.45, 0.05, 0.1)
	f.Add(1.2, -0.4, 0.3, 0.5, -0.3)
	f.Fuzz(func(t *testing.T, nose, tail, length, tilt, turn float64) {
		p, err := Chain(length, Arc(nose, length), Turn(turn), Arc(tail, length), Flat(length/2))
		if err != nil || math.Abs(tilt) > 10 || length > 100 {
			t.Skip("not a rocker")
		}
		size := 1 + length + math.Abs(nose) + math.Abs(tail)
		h, dh, ddh := p.Support(tilt)
		if rho := h + ddh; !(rho >= -1e-12*size) {
			t.Errorf("radius of curvature %v at %v rad, want ≥ 0", rho, tilt)
		}
		const step = 1e-5
		before, _ := p.Find(tilt - step)
		after, _ := p.Find(tilt + step)
		h1, _, _ := p.Support(tilt - step)
		h2, _, _ := p.Support(tilt + step)
		if slope := (h2 - h1) / (2 * step); before == after && math.Abs(slope-dh) > 1e-8*size {
			t.Errorf("h′ = %v at %v rad, the difference says %v", dh, tilt, slope)
		}
		if h2+h1-2*math.Cos(step)*h < -1e-11*size { // a support function is sub-sinusoidal from below
			t.Errorf("not convex at %v rad", tilt)
		}
	})
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

func ExampleChain() {
	// a chair whose last foot of tail is flatter: a brake
	p, err := Chain(0.40, Arc(1.05, 0.60), Arc(2.10, 0.30))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("tail tip %.0f mm off the floor\n", 1000*p.Height(p.Tail(), 0))
	fmt.Printf("on one arc it would be %.0f mm\n", 1000*Single(1.05, 0.40, 0.50).Tail().Y)
	// Output:
	// tail tip 97 mm off the floor
	// on one arc it would be 117 mm
}
