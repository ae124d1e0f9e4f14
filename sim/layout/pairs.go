package layout

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// A Paired is a part that is made as a left and a right one, mirror images of each other, and how
// the two are cut from one board.
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
	return add("arm", "top", Size{long, 2 * max(front, rear), arm.Thick}, r2.Vec{Y: -rear}, r2.Vec{X: long, Y: -front}, r2.Vec{X: long, Y: front}, r2.Vec{Y: rear})
}

func (l *Layout) member(name string) (piece.Member, bool) {
	list := l.Design.Members(l.Report.Edge)
	i := slices.IndexFunc(list, func(m piece.Member) bool { return m.Name == name && m.Outline == nil })
	if i < 0 {
		return piece.Member{}, false
	}
	return list[i], true
}
