package rocker

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

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
