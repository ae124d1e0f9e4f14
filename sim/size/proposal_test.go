package size

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// cradle is one that rocks sideways, in plain parts.
func cradle() piece.Design {
	return piece.Design{
		Kind:   piece.Cradle,
		Rocker: piece.Rocker{Radius: 34 * inch, Nose: 13 * inch, Tail: 13 * inch, Depth: 2.5 * inch, Width: inch, Wood: "black cherry"},
		Parts:  []piece.Part{{Name: "box", Shape: piece.Box, At: r2.Vec{Y: 8 * inch}, Length: 17 * inch, Height: 6 * inch, Mass: 10}},
		Bed:    piece.Bed{Height: 4.5 * inch, Length: 33 * inch, Width: 16 * inch},
		Limits: piece.Design{Kind: piece.Cradle}.UsualLimits(),
	}
}

// TestSolve asks for each thing that can be aimed for, and checks the answer afresh.
func TestSolve(t *testing.T) {
	for _, tt := range []struct {
		name   string
		design func() piece.Design
		target piece.Target
		off    func(r check.Balanced) float64 // how far the answer misses, as a part of what a maker can tell
	}{
		{"back leans", readingChair, piece.Target{BackLeans: piece.Wish{Asked: true, Value: 20 * degree}},
			func(r check.Balanced) float64 { return (r.Loads[1].BackRecline - 20*degree) / tiltStep }},
		{"empty alone", readingChair, piece.Target{Empty: piece.Wish{Asked: true, Value: 9 * degree}},
			func(r check.Balanced) float64 { return (r.Loads[0].SeatFall - 9*degree) / tiltStep }},
		{"time alone", readingChair, piece.Target{OneRock: 2.3},
			func(r check.Balanced) float64 { return (r.Loads[1].Balance.Period - 2.3) / timeStep }},
		{"a narrow board", readingChair, piece.Target{OneRock: 2.2, StockWidth: 6 * inch, StockLength: 36 * inch},
			func(r check.Balanced) float64 {
				length, width := blank(r)
				return max((r.Loads[1].Balance.Period-2.2)/timeStep, (width-6*inch)/tapeStep, (length-36*inch)/tapeStep)
			}},
		{"stiff strips", readingChair, piece.Target{SeatFalls: piece.Wish{Asked: true, Value: 5 * degree},
			SmallestRadius: 43 * inch}, func(r check.Balanced) float64 {
			return max(math.Abs(r.Loads[1].SeatFall-5*degree)/tiltStep, (43*inch-(r.Design.Rocker.Radius-2.25*inch))/tapeStep)
		}},
		{"a cradle's tilt", cradle, piece.Target{LargestTilt: 12 * degree}, func(r check.Balanced) float64 {
			k := r.Design.Rocker
			return (math.Abs(k.Nose/k.Radius-12*degree) + math.Abs(k.Nose-k.Tail)) / tiltStep // the curve ends at nose/R
		}},
		{"metric", func() piece.Design { d := readingChair(); d.Units = quantity.Metric; return d },
			piece.Target{OneRock: 2.1}, func(r check.Balanced) float64 {
				fives := r.Design.Rocker.Radius / 0.005
				return (r.Loads[1].Balance.Period-2.1)/timeStep + 1e6*math.Abs(fives-math.Round(fives))
			}},
	} {
		d := tt.design()
		d.Target = tt.target
		s, err := Solve(d, 0)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		p := s.Take()
		if !p.Met() || p.Shape != OneArc || p.Shape.String() != "one arc" {
			t.Errorf("%s: %v, met %v: %+v", tt.name, p.Shape, p.Met(), p.Misses)
		}
		fresh, err := check.Balance(p.Design)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		if off := tt.off(fresh); !(math.Abs(off) <= 0.5) || !fresh.Holds() {
			t.Errorf("%s: off by %v steps, holds %v: %+v", tt.name, off, fresh.Holds(), p.Design.Rocker)
		}
	}
}

// TestNearest holds what is said of a target that cannot be had: several are proposed, none
// better than the one to take by more than a maker can tell, and what binds is named.
func TestNearest(t *testing.T) {
	d := readingChair()
	d.Target = piece.Target{OneRock: 2, SeatFalls: piece.Wish{Asked: true, Value: 6 * degree},
		Empty: piece.Wish{Asked: true, Value: 2 * degree}, Arcs: 2}
	s, err := Solve(d, 3)
	if err != nil {
		t.Fatal(err)
	}
	take := s.Take()
	if len(s.Proposals) != 2 || take.Met() || len(take.Binds()) == 0 {
		t.Errorf("%d proposals, met %v, binds %+v", len(s.Proposals), take.Met(), take.Binds())
	}
	for _, p := range s.Proposals {
		if score(p.Misses) < score(take.Misses)-1 {
			t.Errorf("%v scores %v, the one to take %v", p.Shape, score(p.Misses), score(take.Misses))
		}
		for _, m := range p.Misses {
			if m.must() && m.Steps > 0.5 {
				t.Errorf("%v breaks what must hold: %+v", p.Shape, m)
			}
			if m.Aim == OffJoints && !(m.Got > 1.5*degree && m.Got < 15*degree) { // a small rock is on one arc
				t.Errorf("%v rests %v degrees from a joint", p.Shape, m.Got/degree)
			}
		}
	}
	others := s.Others()
	if len(others) != 4 || others[0].Shape != FlatterTail || others[3].Fitted != 5 {
		t.Errorf("others %+v", others)
	}
}

// TestLowPointMoves holds that the low point moves under parts, plain bodies and people given by
// their centres as it does under a seat: seen from what stands on it the piece is the same.
func TestLowPointMoves(t *testing.T) {
	parts := cradle()
	parts.Kind, parts.Bed = piece.Chair, piece.Bed{}
	parts.Limits = piece.Limits{}
	parts.Sitters = []piece.Sitter{{Name: "one", Mass: 60, Centre: r2.Vec{X: 0.03, Y: 0.5}}}
	body := plainBody()
	for name, d := range map[string]piece.Design{"parts": parts, "body": body} {
		moved := shifted(d, -inch, 0)
		a, err := check.Balance(d)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		b, err := check.Balance(moved)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for i := range a.Loads {
			was, now := a.Loads[i].Person.Centre, b.Loads[i].Person.Centre
			if a.Loads[i].Empty {
				continue
			}
			if math.Abs(was.X-inch-now.X) > 1e-12 || was.Y != now.Y {
				t.Errorf("%s: %v, then %v", name, was, now)
			}
		}
	}
	if moved := shifted(body, -inch, 0); math.Abs(moved.Body.Centre.X-(body.Body.Centre.X-inch)) > 1e-15 {
		t.Errorf("body at %v", moved.Body.Centre)
	}
}

// FuzzSolve holds that any target of any chair gives an answer that holds what must hold, or
// says that it does not, without a number that is none.
func FuzzSolve(f *testing.F) {
	f.Add(2.0, 0.1, 0.03, 0.3, 1.0, 42.0, 17.0, 24.0)
	f.Add(1.2, -0.2, 0.0, 0.8, 0.4, 25.0, 6.0, 8.0)
	f.Fuzz(func(t *testing.T, time, falls, empty, margin, longest, radius, nose, tail float64) {
		for _, x := range []float64{time, falls, empty, margin, longest, radius, nose, tail} {
			if math.IsNaN(x) || math.Abs(x) > 1e3 {
				t.Skip("no measure")
			}
		}
		d := plainBody()
		d.Seat = piece.Seat{Front: 0.42, Rear: 0.4, Depth: 0.45, Behind: 0.2}
		d.Rocker = piece.Rocker{Radius: radius * inch, Nose: nose * inch, Tail: tail * inch}
		d.Limits = piece.Design{Kind: piece.Chair}.UsualLimits()
		d.Target = piece.Target{OneRock: max(0, time), SeatFalls: piece.Wish{Asked: true, Value: falls},
			Empty: piece.Wish{Asked: true, Value: empty}, BackMargin: max(0, margin), Longest: max(0, longest), Arcs: 1}
		s, err := Solve(d, 0)
		if err != nil {
			t.Skip("not a chair")
		}
		p := s.Take()
		k := p.Design.Rocker
		if !(k.Radius > 0 && k.Nose > 0 && k.Tail > 0) || math.IsInf(k.Radius, 0) || math.IsNaN(p.Design.Seat.Behind) {
			t.Errorf("%+v behind %v", k, p.Design.Seat.Behind)
		}
		if r, err := check.Balance(p.Design); p.Met() && (err != nil || !r.Holds()) {
			t.Errorf("said to be met: %v, %+v", err, k)
		}
	})
}
