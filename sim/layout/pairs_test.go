package layout

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// TestPairs holds legs and arms against hand sums: the foot of a leg is out of square by its cut, and it is as long as its longest edge, by
// half of what the foot is out of square along and across the rocker beyond the axis; on a block it is square and
// ends on it; an arm is a trapezium; left and right have the same area, lie in their board and are a cutter and a web apart.
func TestPairs(t *testing.T) {
	d := reading()
	d.Arms.Height, d.Arms.Length, d.Arms.Width, d.Arms.RearWidth = 0.2, 0.4, 0.08, 0.05
	d.Rocker.Track = 21 * inch
	for _, legs := range [][]piece.Leg{
		nil,
		{
			{Which: piece.Front, At: 8 * inch, Rake: 5 * degree, Splay: 6 * degree},
			{Which: piece.Rear, At: -10 * inch, Rake: -8 * degree, Splay: -3 * degree},
		},
		{{Which: piece.Front, At: 8 * inch, Rake: 5 * degree, Block: 0.02}, {Which: piece.Rear, At: -10 * inch, Splay: 3 * degree, Block: 0.02}},
	} {
		d.Legs = legs
		l := mustLay(t, d)
		if len(l.Pairs) != len(l.Legs)+1 || l.ArmsTaken {
			t.Fatalf("%d pairs, arms taken %v", len(l.Pairs), l.ArmsTaken)
		}
		for i, p := range l.Pairs {
			length, area := 0.4, 0.4*(0.08+0.05)/2
			if p.Name != "arm" {
				leg := l.Legs[i]
				cut, across := leg.Side*math.Tan(leg.Standing.Cut), leg.Side*math.Tan(leg.Standing.Across)
				axis := leg.Standing.Length + d.Seat.ThickOr()
				if leg.Leg.Block > 0 {
					cut, across, axis = 0, 0, axis-leg.Block.Shorter
				}
				length = axis + (math.Abs(cut)+math.Abs(across))/2
				area = leg.Side * (length - math.Abs(cut)/2)
				foot := 0.0 // the way along of the stroke that is not along
				for _, s := range strokes(p.Pair.Left.Outline) {
					if s.Y != 0 && s.X != 0 {
						foot = s.X * leg.Side / s.Y
					}
				}
				if math.Abs(math.Abs(foot)-math.Abs(cut)) > 1e-12 {
					t.Errorf("%s: foot out of square by %v m, want %v", p.Name, foot, cut)
				}
				listed := slices.IndexFunc(l.Cuts, func(c Cut) bool { return c.Part == p.Name })
				if got := l.Cuts[listed].Finished; got != p.Size || p.Size.Width != leg.Side {
					t.Errorf("%s: %+v in the cut list, %+v drawn", p.Name, got, p.Size)
				}
			}
			for _, one := range []bench.Half{p.Pair.Left, p.Pair.Right} {
				box := one.Outline.Bounds()
				in := min(box.Min.X, box.Min.Y, p.Pair.Length-box.Max.X, p.Pair.Width-box.Max.Y)
				if got := math.Abs(one.Outline.Area()); math.Abs(got-area) > 1e-12 || in < -1e-12 {
					t.Errorf("%s, %s: area %v of %v, %+v in %v by %v", p.Name, one.Mark, got, area, box, p.Pair.Length, p.Pair.Width)
				}
				if got := box.Max.X - box.Min.X; math.Abs(got-length) > 1e-12 || math.Abs(p.Size.Length-length) > 1e-12 {
					t.Errorf("%s, %s: %v long and said to be %v, want %v", p.Name, one.Mark, got, p.Size.Length, length)
				}
			}
			if low := p.Pair.Right.Outline.Bounds().Min.Y; low < l.Shop.Cutter+l.Shop.Web {
				t.Errorf("%s: the right one begins at %v, no cut over the left one", p.Name, low)
			}
		}
	}
	d.Arms.Length = 0
	if l := mustLay(t, d); !l.ArmsTaken || math.Abs(l.Pairs[len(l.Pairs)-1].Size.Length-0.8*d.Seat.Depth) > 1e-12 {
		t.Errorf("arms not drawn: %+v", l.Pairs[len(l.Pairs)-1].Size)
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
