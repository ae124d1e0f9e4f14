package layout

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// TestPairs holds legs and arms against hand sums: the axis of a leg is as long as its finished
// size, its foot is out of square by its cut; an arm is a trapezium; left and right have the same
// area, lie in their board and do not overlap by more than nothing.
func TestPairs(t *testing.T) {
	d := reading()
	d.Arms.Height, d.Arms.Length, d.Arms.Width, d.Arms.RearWidth = 0.2, 0.4, 0.08, 0.05
	l, err := Of(d, Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(l.Pairs) != len(l.Legs)+1 || l.ArmsTaken {
		t.Fatalf("%d pairs, arms taken %v", len(l.Pairs), l.ArmsTaken)
	}
	for i, p := range l.Pairs {
		area := p.Size.Length * p.Size.Width
		if p.Name == "arm" {
			area = 0.4 * (0.08 + 0.05) / 2
		} else {
			side, cut := l.Legs[i].Side, l.Legs[i].Standing.Cut
			foot := 0.0 // the stroke that is neither along nor across
			for _, s := range strokes(p.Pair.Left.Outline) {
				if s.X != 0 && s.Y != 0 {
					foot = math.Atan(s.X / s.Y)
				}
			}
			if math.Abs(math.Abs(foot)-math.Abs(cut)) > 1e-12 {
				t.Errorf("%s: foot out of square by %v, want %v", p.Name, foot, cut)
			}
			if want := l.Legs[i].Standing.Length + d.Seat.ThickOr(); math.Abs(p.Size.Length-want) > 1e-12 || p.Size.Width != side {
				t.Errorf("%s: %+v, want %v long", p.Name, p.Size, want)
			}
		}
		for _, one := range []bench.Part{p.Pair.Left, p.Pair.Right} {
			box := one.Outline.Bounds()
			if got := math.Abs(one.Outline.Area()); math.Abs(got-area) > 1e-12 || box.Min.X < -1e-12 || box.Min.Y < -1e-12 || box.Max.X > p.Pair.Length+1e-12 || box.Max.Y > p.Pair.Width+1e-12 {
				t.Errorf("%s, %s: area %v of %v, %+v in %v by %v", p.Name, one.Mark, got, area, box, p.Pair.Length, p.Pair.Width)
			}
		}
		if low := p.Pair.Right.Outline.Bounds().Min.Y; low < l.Shop.Kerf {
			t.Errorf("%s: the right one begins at %v, no saw cut over the left one", p.Name, low)
		}
	}
	d.Arms.Length = 0
	if l, err = Of(d, Options{}); err != nil || !l.ArmsTaken || math.Abs(l.Pairs[len(l.Pairs)-1].Size.Length-0.8*d.Seat.Depth) > 1e-12 {
		t.Errorf("arms not drawn: %v, %+v", err, l.Pairs[len(l.Pairs)-1].Size)
	}
}

// strokes returns the ways of a path's strokes.
func strokes(p bench.Path) []r2.Vec {
	var list []r2.Vec
	from := p.Start
	for _, s := range p.Strokes {
		list = append(list, r2.Sub(s.To, from))
		from = s.To
	}
	return list
}
