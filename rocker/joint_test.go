package rocker

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestJointMissedByRounding: where the length to the origin misses a joint or a tip by rounding it is meant, in
// every size: a corner there has half of its turn before, and no sliver stands between.
func TestJointMissedByRounding(t *testing.T) {
	for _, size := range []float64{1e-4, 1, 1e5} {
		for _, part := range []float64{1 - 2e-14, 1, 1 + 2e-14} {
			p := mustChain(t, 0.3*size*part, Arc(size, 0.3*size), Turn(0.2), Arc(2*size, 0.5*size))
			if c := p.Bearing(2); p.Bearings() != 5 || math.Abs(c.From+0.1) > near || math.Abs(c.To-0.1) > near || c.At != (r2.Vec{}) {
				t.Errorf("size %v, %v of the length: %d bearings, the corner %+v", size, part, p.Bearings(), c)
			}
			p = mustChain(t, 0.8*size*part, Arc(size, 0.3*size), Arc(2*size, 0.5*size))
			if tail := p.Tail(); r2.Norm(tail) > 1e-12*size || p.Bearings() != 4 {
				t.Errorf("size %v, %v of the length: the tail at %v, %d bearings", size, part, tail, p.Bearings())
			}
		}
		for _, nose := range []float64{-1e-3, 0.801} {
			if _, err := Chain(nose*size, Arc(size, 0.3*size), Arc(2*size, 0.5*size)); err == nil {
				t.Errorf("size %v: an origin at %v of 0.8 is on the edge", size, nose)
			}
		}
	}
}

// TestDeepHollow: of a hollow that turns by half a circle, and back, only the two bulges beside it stand on
// the floor, on a bridge.
func TestDeepHollow(t *testing.T) {
	const half = 3.0 // rad
	p := mustChain(t, 0.3, Arc(1, 0.5), Arc(0.05, 0.05*half/2), Arc(-0.05, 0.05*half), Arc(0.05, 0.05*half/2), Arc(1, 0.5))
	bridge := 0.0
	for i := range p.Bearings() - 1 {
		bridge += p.Bearing(i).Flat
	}
	// from crest to crest of a wave that is level in its middle
	if want := 4 * 0.05 * math.Sin(half/2); math.Abs(bridge-want) > 1e-12 {
		t.Errorf("a bridge of %v m, want %v", bridge, want)
	}
}

// TestMoreThanHalfACircle: an arc of any turn below a whole one lies on both its tips where the middle of what is
// left of the circle is below.
func TestMoreThanHalfACircle(t *testing.T) {
	for _, turn := range []float64{0.5, 3, 4, 6} {
		for _, part := range []float64{0.01, 0.5, 0.99} {
			p := mustChain(t, part*turn, Arc(1, turn))
			tail := p.Bearing(p.Bearings() - 1)
			if want := (1-2*part)*turn/2 + math.Pi; math.Abs(tail.To-want) > 1e-12 || math.Abs(tail.Flat-2*math.Sin(turn/2)) > 1e-12 {
				t.Errorf("%v rad, %v of it to the nose: on both tips at %v, %v m apart; want %v, %v",
					turn, part, tail.To, tail.Flat, want, 2*math.Sin(turn/2))
			}
		}
	}
}

// TestHook: an edge whose origin lies beyond a hollow of more than half a circle, where no floor comes, is
// the same seen from either side.
func TestHook(t *testing.T) {
	spans := []Span{Flat(0.1), Arc(-0.1, 0.37), Flat(1)}
	c := other(t, mustChain(t, 0.02, spans...), 0.02, spans, -1, 1)
	for tilt := -7.0; tilt < 7; tilt += 0.31 {
		c.support(t, []float64{tilt, tilt / 3}, r2.Vec{X: 0.2, Y: 0.1})
	}
}

// TestFindAtTheChord: a rounding before and behind the tilt at which it lies on both tips an edge stands as high
// as on it.
func TestFindAtTheChord(t *testing.T) {
	rng := rand.New(rand.NewPCG(47, 48))
	for range 300 {
		nose, spans := randomSpans(rng)
		p, err := Chain(nose, spans...)
		if err != nil {
			continue
		}
		first, last := p.Bearing(0), p.Bearing(p.Bearings()-1)
		want, _, _ := last.Support(last.To)
		for _, tilt := range []float64{first.From, last.To, first.From + 2*math.Pi, last.To + 2*math.Pi} {
			for _, tilt := range []float64{math.Nextafter(tilt, -9), tilt, math.Nextafter(tilt, 9)} {
				if h, _, _ := p.Support(tilt); math.Abs(h-want) > 1e-13 {
					t.Fatalf("%v: at %v rad h = %v, on its chord %v", spans, tilt, h, want)
				}
			}
		}
	}
}
