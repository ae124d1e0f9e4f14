package piece

import (
	"fmt"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim/readings"
)

// A heap is the mass of the empty piece: what rides in the seat frame and what is
// part of the rockers.
type heap struct {
	seat, rockers []body.Body
	estimated     bool             // spread from one weight
	usualInertia  bool             // weighed, but no rocks told it
	result        *readings.Result // of a piece that was measured, else nil
}

// joined returns the whole, in the chair frame.
func (h heap) joined(c carry) body.Body {
	return body.Join(c.body(body.Join(h.seat...)), body.Join(h.rockers...))
}

// heap returns the mass of the piece from the one source the design gives.
func (d Design) heap(edge rocker.Profile, people []somebody) (heap, error) {
	var given []string
	if d.Body.Mass > 0 {
		given = append(given, "body")
	}
	if len(d.Parts) > 0 {
		given = append(given, "part")
	}
	if d.Measured.weighed() {
		given = append(given, "measured")
	}
	if d.Piece.Mass > 0 {
		given = append(given, "piece")
	}
	switch {
	case len(given) == 0:
		return heap{}, &KeyError{Key: "piece", Reason: "the weight of the piece is missing: a guess is enough", Example: "[piece] weight = 26"}
	case len(given) > 1:
		return heap{}, &KeyError{Key: given[1], Reason: fmt.Sprintf("the weight of the piece is given twice, in [%s] and in [%s]: keep one", given[0], given[1])}
	case given[0] == "body":
		if d.Seat.Slide != 0 {
			return heap{}, &KeyError{Key: "seat.slide", Reason: "[body] does not say what belongs to the rockers, so the seat cannot be slid on them: give [piece] weight or parts"}
		}
		b := d.Body
		return heap{rockers: []body.Body{{Mass: b.Mass, Centre: b.Centre, Inertia: b.Inertia}}}, nil
	case given[0] == "measured":
		return d.measured(edge, people)
	case given[0] == "piece":
		return d.estimate(edge)
	}
	return d.parts(edge)
}

// parts returns the mass by [[part]], and by the rockers' wood where its sizes are
// drawn.
func (d Design) parts(edge rocker.Profile) (heap, error) {
	var h heap
	for i, p := range d.Parts {
		b, err := p.body(fmt.Sprintf("part.%d", i+1))
		if err != nil {
			return heap{}, err
		}
		h.seat = append(h.seat, b)
	}
	if d.Rocker.Depth > 0 && d.Rocker.Width > 0 {
		density, err := density(d.Rocker.Wood, d.Rocker.Density, 0, "rocker")
		if err != nil {
			return heap{}, err
		}
		b, err := d.Rocker.wood(edge, density)
		if err != nil {
			return heap{}, err
		}
		h.rockers = append(h.rockers, b)
	}
	return h, nil
}
