package layout

import (
	"errors"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// depthsTried is how many depths on the shop's scale are tried over the first that could do: 12 1/2 in, or 200 mm.
const depthsTried = 200

// tooShallow explains a straight top that cannot be drawn, with the least depth on the shop's scale that can. It is
// above both tips, and each is drawn to see, for an eased corner wants room and a hollow may be in the way.
func (l *Layout) tooShallow(err error) error {
	var outline *bench.OutlineError
	if !errors.As(err, &outline) {
		return l.explain(err)
	}
	wrong := &piece.KeyError{Key: "rocker.depth", Reason: "this rocker cannot be drawn: " + outline.Reason}
	deeper, units := l.Rocker, l.Design.Units
	deeper.Depth = max(deeper.Depth, deeper.Edge.Nose().Y, deeper.Edge.Tail().Y)
	for range depthsTried {
		deeper.Depth = quantity.NextLength(deeper.Depth, units)
		if _, err := deeper.Outline(); err == nil {
			wrong.Reason += "; with a straight top it is at least " + l.with(deeper.Depth) + " deep"
			wrong.Give, wrong.Value = "depth", deeper.Depth
			return wrong
		}
	}
	wrong.Reason += "; no depth lets this edge have a straight top"
	wrong.Give, wrong.Word = "top", "concentric"
	return wrong
}
