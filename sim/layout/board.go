package layout

import (
	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// A Board is what a sawn rocker is cut out of.
type Board struct {
	bench.Blank
	Shift, Both          float64 // by how much a second one is shifted, and the width that two take, m
	NoseGrain, TailGrain float64 // between grain and floor edge at the tips, rad
	Thinnest             bench.Section
	Pair                 bench.Pair // left and its mirror image in one board, room for a cutter between them
}

func (l *Layout) board() error {
	if l.Made != piece.Sawn {
		return nil
	}
	b := Board{Blank: bench.SmallestBlank(l.Outline)}
	var err error
	if b.Shift, b.Both, err = b.Nest(l.Outline, l.Shop.Kerf); err != nil {
		return l.explain(err)
	}
	if b.NoseGrain, b.TailGrain, err = l.Rocker.Runout(b.Blank); err != nil {
		return l.explain(err)
	}
	if b.Thinnest, err = l.Rocker.Thinnest(b.Blank); err != nil {
		return l.explain(err)
	}
	if b.Pair, err = l.paired(l.Outline, b.Grain); err != nil {
		return err
	}
	l.Board = &b
	return nil
}
