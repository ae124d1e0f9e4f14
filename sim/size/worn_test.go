package size

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
)

// TestWornOnlyWhereItRolls: however the piece rests, on whatever floor, the edge is worn 6 in to either side of where it
// touches at rest, and both tips stay where they were, seen from the balance point.
func TestWornOnlyWhereItRolls(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 3))
	worn := 0
	for i := range 200 {
		d := piece.Design{Rocker: piece.Rocker{Radius: 1.1, Nose: 0.6, Tail: 0.65}}
		if i%2 == 0 {
			d.Rocker = piece.Rocker{Nose: 0.6, Arcs: []piece.Arc{{Flat: 0.1},
				{Radius: 1.05, Length: 0.5 + 0.1*rng.Float64()}, {Radius: 1.2, Length: 0.6}}}
		}
		d.Body = body.Body{Mass: 20, Inertia: 2, Centre: r2.Vec{X: 0.3 * (rng.Float64() - 0.5), Y: 0.5}}
		d.Floor.Slope = 0.06 * (rng.Float64() - 0.5)
		r := balanced(t, d)
		after, ok := wornDown(r)
		if !ok {
			continue
		}
		worn++
		edge, err := after.Rocker.Profile()
		if err != nil {
			t.Fatal(err)
		}
		for _, tips := range [][2]r2.Vec{{r.Edge.Nose(), edge.Nose()}, {r.Edge.Tail(), edge.Tail()}} {
			was, now := r2.Sub(tips[0], d.Body.Centre), r2.Sub(tips[1], after.Body.Centre)
			if r2.Norm(r2.Sub(was, now)) > 1e-9 {
				t.Errorf("%v on %v: a tip at %v, then %v", d.Rocker.Arcs, d.Floor.Slope, was, now)
			}
		}
		to := 0.0 // the nose end of the worn stretch, from the tip
		for _, arc := range after.Rocker.Arcs {
			if arc.Turn != 0 {
				break
			}
			to += arc.Length + arc.Flat
		}
		p, _ := r.Edge.At(d.Rocker.Nose - to - 6*inch)
		if at := r.Edge.Contact(r.Loads[0].Balance.Rest.Tilt - d.Floor.Slope); r2.Norm(r2.Sub(p, at)) > 1e-9 {
			t.Errorf("%v on %v: worn about %v, touches at %v", d.Rocker.Arcs, d.Floor.Slope, p, at)
		}
	}
	if worn < 100 {
		t.Errorf("%d of 200 were worn", worn)
	}
}

// TestTouchesWhereTheFloorDoes: the length from the nose tip to where the floor touches is that to the contact point.
func TestTouchesWhereTheFloorDoes(t *testing.T) {
	arcs := piece.Rocker{Nose: 0.5, Arcs: []piece.Arc{{Radius: 1, Length: 0.3}, {Flat: 0.1}, {Radius: 1.3, Length: 0.5}}}
	edge, err := arcs.Profile()
	if err != nil {
		t.Fatal(err)
	}
	for tilt := -0.39; tilt < 0.3; tilt += 0.0301 {
		at, ok := edge.At(0.5 - touches(edge.Drawn(), tilt))
		if want := edge.Contact(tilt); !ok || r2.Norm(r2.Sub(at, want)) > 1e-9 {
			t.Errorf("at %v rad: %v, want %v", tilt, at, want)
		}
	}
	whole := edge.Drawn()
	for at := 0.05; at < 0.9; at += 0.11 {
		front, rear, ok := parted(whole, at)
		length := func(list []rocker.DrawnSpan) (sum float64) {
			for _, s := range list {
				sum += s.Length
			}
			return sum
		}
		if last := front[len(front)-1]; !ok || math.Abs(length(front)-at) > 1e-12 || math.Abs(length(rear)-0.9+at) > 1e-12 ||
			last.To != rear[0].From || math.Abs(touches(whole, last.To)-at) > 1e-9 && last.To > last.From {
			t.Errorf("parted at %v: %+v and %+v", at, front, rear)
		}
	}
}
