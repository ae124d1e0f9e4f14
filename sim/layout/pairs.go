package layout

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// A Board is what a sawn rocker is cut out of.
type Board struct {
	bench.Blank
	Shift, Both          float64    // by how much a second one is shifted, and the width that two take, m
	NoseGrain, TailGrain float64    // between grain and floor edge at the tips, rad
	Thinnest             float64    // across the grain, m
	Pair                 bench.Pair // left and its mirror image in one board, room for a cutter between them
}

func (l *Layout) board() error {
	if l.Made != piece.Sawn {
		return nil
	}
	b := Board{Blank: bench.SmallestBlank(l.Outline)}
	var nest, runout, thinnest, pair error
	b.Shift, b.Both, nest = b.Nest(l.Outline, l.Shop.Kerf)
	b.NoseGrain, b.TailGrain, runout = l.Rocker.Runout(b.Blank)
	b.Thinnest, thinnest = l.Rocker.Thinnest(b.Blank)
	b.Pair, pair = l.paired(l.Outline, b.Grain)
	l.Board = &b
	return cmp.Or(nest, runout, thinnest, pair)
}

// paired lays an outline and its mirror image in one board, no two points of them nearer to each other than a cutter
// needs that runs round one of them and leaves the web to the other, or a saw cut where that is less. Outlines that
// slope are nearer than they are across the grain, so that is widened until they are as far apart as asked, to 0.1 mm.
func (l *Layout) paired(outline bench.Path, grain float64) (bench.Pair, error) {
	const chordsWithin = 5e-6 // m: how far the chords that are measured may leave the outlines
	least := max(l.Shop.Kerf, l.Shop.Cutter+l.Shop.Web) + 2*chordsWithin
	for across := least; ; {
		pair, err := bench.Nested(outline, grain, across)
		if err != nil {
			return pair, err
		}
		short := least - apart(pair.Left.Outline.Flattened(chordsWithin), pair.Right.Outline.Flattened(chordsWithin))
		if !(short > 0) {
			return pair, nil
		}
		across += short + 1e-5
	}
}

// apart returns the least distance of two chains of straight lines that do not cross, m: it is at a corner of one.
func apart(a, b []r2.Vec) float64 {
	least := math.Inf(1)
	for _, chains := range [2][2][]r2.Vec{{a, b}, {b, a}} {
		for _, p := range chains[0] {
			for i := 1; i < len(chains[1]); i++ {
				from, to := chains[1][i-1], chains[1][i]
				if min(from.X, to.X)-p.X > least || p.X-max(from.X, to.X) > least {
					continue
				}
				way, part := r2.Sub(to, from), 0.0
				if n := r2.Norm2(way); n > 0 {
					part = min(max(r2.Dot(r2.Sub(p, from), way)/n, 0), 1)
				}
				least = min(least, r2.Norm(r2.Sub(p, r2.Add(from, r2.Scale(part, way)))))
			}
		}
	}
	return least
}

// A Paired is a part that is made left and right, mirror images of each other, and how both are cut from one board.
type Paired struct {
	Name string // "front leg", "arm"
	Face string // which face of both is drawn: "outer", "inner" or "top"
	Size Size   // of one, as finished; its length is that of the outline
	Pair bench.Pair
}

// pairs lays out the legs, the foot first, by the outline of their longer face with the foot cut to the rocker,
// and the arms, the back first and the inside below, which run straight from their width at the back to that in
// front. Of a left one the outer face has the nose above when the foot lies to the left, the inner face below.
func (l *Layout) pairs() error {
	add := func(name, face string, size Size, corners ...r2.Vec) error {
		pair, err := l.paired(bench.Polyline(true, append(corners, corners[0])...), 0)
		if err != nil {
			return err
		}
		l.Pairs = append(l.Pairs, Paired{name, face, size, pair})
		return nil
	}
	for _, leg := range l.Legs {
		half, top := leg.Side/2, leg.Finished.Length
		face, below, above := "inner", max(0, leg.Cut), max(0, -leg.Cut)
		if leg.Across >= 0 {
			face, below, above = "outer", above, below
		}
		if err := add(leg.Name, face, leg.Finished,
			r2.Vec{X: below, Y: -half}, r2.Vec{X: top, Y: -half}, r2.Vec{X: top, Y: half}, r2.Vec{X: above, Y: half}); err != nil {
			return err
		}
	}
	arm, there := l.member("arm")
	if !there || !(arm.Length() > 0) {
		return nil
	}
	_, l.ArmsTaken = l.Design.ArmsOr()
	long, rear, front := arm.Length(), arm.Wide[0]/2, arm.Wide[1]/2
	return add("arm", "top", Size{long, 2 * max(front, rear), arm.Thick}, r2.Vec{Y: -rear}, r2.Vec{X: long, Y: -front},
		r2.Vec{X: long, Y: front}, r2.Vec{Y: rear})
}

func (l *Layout) member(name string) (piece.Member, bool) {
	for _, m := range l.Design.Members(l.Report.Edge) {
		if m.Name == name && m.Outline == nil {
			return m, true
		}
	}
	return piece.Member{}, false
}
