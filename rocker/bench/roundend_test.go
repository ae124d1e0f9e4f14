package bench

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// TestRoundEndsTouchBothEdges: on a concentric, a straight and a tapered top, thinner and thicker at the tips and over a sole, the
// outline has no corner at a round end, the arc begins at the tip, and none of it stands over the top edge or under the floor edge.
func TestRoundEndsTouchBothEdges(t *testing.T) {
	const R = 1.05
	edge := rocker.Single(R, 0.4, 0.5)
	round := End{Finish: Round}
	for _, r := range []Rocker{
		{Edge: edge, Depth: 0.06},
		{Edge: edge, Depth: 0.15, Top: rocker.Straight},
		{Edge: edge, Depth: 0.15, Top: rocker.Straight, Sole: 0.01},
		{Edge: edge, Depth: 0.06, NoseDepth: 0.03, TailDepth: 0.02},
		{Edge: edge, Depth: 0.03, NoseDepth: 0.05, TailDepth: 0.07},
		{Edge: edge, Depth: 0.06, NoseDepth: 0.03, Sole: 0.006},
	} {
		r.Nose, r.Tail = round, round
		list := mustOutline(t, r).Pieces()
		ends := 0
		for i, s := range list {
			if math.Abs(s.Turn) < math.Pi/2 {
				continue
			}
			ends++
			before, behind := list[(i+len(list)-1)%len(list)], list[(i+1)%len(list)]
			// joints of arcs a few roundings of 1e-16 over some centimetres
			if a, b := corner(before, s), corner(s, behind); math.Abs(a) > 1e-12 || math.Abs(b) > 1e-12 {
				t.Errorf("%+v: corners of %v and %v at a round end", r, a, b)
			}
			tips := []r2.Vec{inside(r.Edge.Nose(), -0.4/R, r.Sole), inside(r.Edge.Tail(), 0.5/R, r.Sole)}
			if min(r2.Norm(r2.Sub(s.From, tips[0])), r2.Norm(r2.Sub(s.To, tips[1]))) > near {
				t.Errorf("%+v: a round end from %v to %v, not at a tip of %v", r, s.From, s.To, tips)
			}
			for k := range 101 {
				p := s.At(float64(k) / 100)
				out := r2.Sub(p, r2.Vec{Y: R})
				deep, way := R-r2.Norm(out), R*math.Atan2(out.X, -out.Y)
				most := math.Inf(1) // past the tips a top goes on
				switch {
				case r.Top == rocker.Straight:
					most = R - r2.Norm(r2.Vec{X: p.X, Y: R - r.Depth})
				case way < 0.4 && way > 0:
					nose, _ := r.depths()
					most = r.Depth + (nose-r.Depth)*way*way/0.4/0.4
				case way > -0.5 && way < 0:
					_, tail := r.depths()
					most = r.Depth + (tail-r.Depth)*way*way/0.5/0.5
				}
				if deep < r.Sole-near || deep > most+0.05e-3 { // the arcs of a taper follow it to 0.05 mm
					t.Errorf("%+v: a round end %v deep at %v, of wood %v deep", r, deep, way, most)
					break
				}
			}
		}
		if ends != 2 {
			t.Errorf("%+v: %d round ends", r, ends)
		}
	}
}

// TestRoundEndByHand: under a level top at d a circle that touches an arc R at its tip, a angle off, has its centre
// R(1 − cos a) + ρ·cos a high and lies ρ under the top, so ρ = (d − R(1 − cos a))/(1 + cos a). It touches the top over its centre.
func TestRoundEndByHand(t *testing.T) {
	const R, d, a = 1.05, 0.15, 0.4 / 1.05
	list := mustOutline(t, Rocker{Edge: rocker.Single(R, 0.4, 0.5), Depth: d, Top: rocker.Straight, Nose: End{Finish: Round}}).Pieces()
	radius := (d - R*(1-math.Cos(a))) / (1 + math.Cos(a))
	nose := list[1]
	want := r2.Vec{X: (R - radius) * math.Sin(a), Y: d}
	if math.Abs(nose.Radius()-radius) > near || r2.Norm(r2.Sub(nose.To, want)) > near || math.Abs(nose.Turn-(math.Pi-a)) > 1e-12 {
		t.Errorf("a round nose %+v of %v; want %v to %v", nose, nose.Radius(), radius, want)
	}
}
