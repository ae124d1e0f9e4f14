package rocker

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestDrawn: one arc parted by the origin is one span whose ends are R(±sin, 1 − cos).
func TestDrawn(t *testing.T) {
	const radius, nose, tail = 1.05, 0.4, 0.5
	spans := Single(radius, nose, tail).Drawn()
	if len(spans) != 1 {
		t.Fatalf("%d spans, want one", len(spans))
	}
	s := spans[0]
	start := r2.Vec{X: radius * math.Sin(nose/radius), Y: radius * (1 - math.Cos(nose/radius))}
	end := r2.Vec{X: -radius * math.Sin(tail/radius), Y: radius * (1 - math.Cos(tail/radius))}
	if r2.Norm(r2.Sub(s.Start, start)) > near || r2.Norm(r2.Sub(s.End, end)) > near ||
		math.Abs(s.From+nose/radius) > near || math.Abs(s.To-tail/radius) > near || math.Abs(s.Length-nose-tail) > near {
		t.Errorf("drawn %+v", s)
	}
}

// TestDrawnHangsTogether: each span begins where the last ended, and each chord is 2R sin of
// half its turn, along the mean of its two directions.
func TestDrawnHangsTogether(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for n := 0; n < 300; {
		nose, given := randomSpans(rng)
		p, err := Chain(nose, given...)
		if err != nil {
			continue
		}
		n++
		spans := p.Drawn()
		if len(spans) > len(given) {
			t.Fatalf("%v is drawn as %d spans", given, len(spans))
		}
		for i, s := range spans {
			if math.Abs(s.To-s.From-s.turn()) > 1e-12 { // sums of a few angles
				t.Fatalf("span %d turns from %v to %v", i, s.From, s.To)
			}
			chord := s.Length
			if s.Radius != 0 {
				chord = 2 * s.Radius * math.Sin(s.Length/s.Radius/2)
			}
			_, along := Down((s.From + s.To) / 2)
			if want := r2.Add(s.Start, r2.Scale(chord, along)); r2.Norm(r2.Sub(s.End, want)) > 1e-12 {
				t.Fatalf("span %d ends at %v, want %v", i, s.End, want)
			}
			if i > 0 && (r2.Norm(r2.Sub(s.Start, spans[i-1].End)) > 1e-12 || math.Abs(s.From-spans[i-1].To) > 1e-12) {
				t.Fatalf("a gap before span %d", i)
			}
		}
	}
}
