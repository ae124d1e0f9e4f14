package rocker

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
)

// TestOriginRunsAsItIsHigh: turned about the contact by a little angle, the origin, h over the floor, runs back by h times it. So
// it lies −∫h dθ from where it stood as drawn; it lies h′ ahead of the contact, which lies the length rolled over behind. On every
// sort of chain, wherever on a flat, a corner or over a hollow the origin is.
func TestOriginRunsAsItIsHigh(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	flats, hollows := 0, 0
	for n := 0; n < 300; {
		nose, spans := randomSpans(rng)
		p, err := Chain(nose, spans...)
		if err != nil {
			continue
		}
		n++
		if h, _, _ := p.Support(0); h > 1e-9 {
			hollows++ // the floor lies under the origin
		}
		for i := range p.Bearings() - 1 {
			if b := p.Bearing(i); math.Abs(b.To) < 1e-12 && b.Flat > 0 {
				flats++
			}
		}
		for _, up := range []bool{true, false} { // from tilt 0, arc by arc, on which h is smooth
			gone := 0.0
			for k := range p.Bearings() {
				b := p.Bearing(k)
				from, to := max(0, b.From), b.To
				if !up {
					b = p.Bearing(p.Bearings() - 1 - k)
					from, to = min(0, b.To), b.From
				}
				if up == (to <= from) {
					continue
				}
				for _, part := range []float64{0, 0.5, 1} {
					tilt := from + part*(to-from)
					run := gone + quad.Fixed(func(tilt float64) float64 {
						h, _, _ := b.Support(tilt)
						return h
					}, min(from, tilt), max(from, tilt), 30, quad.Legendre{}, 0)*math.Copysign(1, to-from)
					_, ahead, _ := b.Support(tilt)
					if got := ahead - b.RolledAt(tilt); math.Abs(got+run) > 1e-13*float64(p.Bearings()) { // some metres, added up arc by arc
						t.Fatalf("%v, %v: at %v rad the origin lies at %v, by its heights at %v", nose, spans, tilt, got, -run)
					}
					if part == 1 {
						gone = run
					}
				}
			}
		}
	}
	if flats < 20 || hollows < 20 {
		t.Errorf("only %d flats and %d hollows were under the origin", flats, hollows)
	}
}
