package piece

import (
	"errors"

	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/rocker"
	"rockerwright/rocker/bench"
)

// A Beyond is a pair of legs that stand beyond an end of the rockers, where nothing carries them.
type Beyond struct {
	Which Which
	Taken bool    // not drawn: it stands where it is taken to
	Tail  bool    // the end beyond which it stands; else the nose
	By    float64 // how far its centre line passes the end of the top edge, m
}

// beyond returns the pairs that stand beyond the rockers, drawn or taken. A rocker that has no
// outline has no end to pass either: a layout says so.
func (d Design) Beyond(edge rocker.Profile) []Beyond {
	legs, taken := d.LegsOr()
	if len(legs) == 0 {
		return nil
	}
	r := d.Rocker.OnBench(edge)
	outline, err := r.Outline()
	if err != nil {
		return nil
	}
	above := outline.Bounds().Max.Y + 1 // m, over all of the rocker
	var list []Beyond
	for i, l := range legs {
		var miss *bench.MissError
		if _, err := r.Stand(bench.Leg{Seat: r3.Vec{X: l.At, Y: above}}); errors.As(err, &miss) {
			list = append(list, Beyond{l.Which, i >= len(legs)-len(taken), l.At < 0, miss.By})
		}
	}
	return list
}
