package rocker

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

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
