package bench

import (
	"cmp"
	"fmt"
	"math"

	"rockerwright/rocker"
)

// A Rocker is one rocker as it is drawn: its floor edge, and what stands on it.
type Rocker struct {
	Edge  rocker.Profile // the floor edge, which touches the floor
	Depth float64        // at the origin, square to the floor edge, from it to the top edge, m
	Top   rocker.Top

	// The depth at the tips, m, which tapers a concentric top; zero means Depth. Between it changes by the square
	// of the way from the origin along the floor edge, so that the top is fair there.
	NoseDepth, TailDepth float64

	Nose, Tail End

	// Sole is the thickness of a wear strip under the rocker, m. It is part of Depth: the
	// wood begins at the floor edge set inwards by so much.
	Sole float64

	// Middle is the distance of the rocker's middle plane from that of the chair and Width
	// the rocker's size across, m. With no width no leg misses it sideways.
	Middle, Width float64
}

// A Finish says how an end of a rocker is finished.
type Finish int

const (
	Square Finish = iota // sawn square to the floor edge at its tip
	Round                // an arc from the tip that touches both edges: a half circle where they run side by side
	Eased                // square, the two corners rounded off to a radius
)

// An End is the nose or the tail. The zero End is square. The floor edge reaches to its tip
// in all of them, but for the radius of an eased corner.
type End struct {
	Finish Finish
	Radius float64 // of an eased corner, m
}

// An OutlineError reports a rocker that cannot be drawn, and where.
type OutlineError struct {
	Span   int // of the floor edge, counted from the nose, from 0; −1 where it is not one span
	Reason string
}

func (e *OutlineError) Error() string {
	if e.Span < 0 {
		return "bench: rocker: " + e.Reason
	}
	return fmt.Sprintf("bench: rocker: at span %d of the floor edge: %s", e.Span, e.Reason)
}

// A SizeError reports a measure that nothing can be made of.
type SizeError struct {
	What string
	Got  float64 // SI, rad
	Want string
}

func (e *SizeError) Error() string {
	return fmt.Sprintf("bench: %s of %g: it is %s", e.What, e.Got, e.Want)
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// above returns an error unless the measure is a number more than zero.
func above(what string, size float64) error {
	if size > 0 && finite(size) {
		return nil
	}
	return &SizeError{what, size, "a number more than 0"}
}

// notBelow returns an error unless the measure is a number of zero or more.
func notBelow(what string, size float64) error {
	if size >= 0 && finite(size) {
		return nil
	}
	return &SizeError{what, size, "0 or a number more than 0"}
}

// check returns the first measure that no rocker has.
func (r Rocker) check() error {
	bad := func(format string, a ...any) error { return &OutlineError{-1, fmt.Sprintf(format, a...)} }
	nose, tail := r.depths()
	switch {
	case r.Edge.Bearings() == 0 || r.Edge.Length() == 0:
		return bad("there is no floor edge")
	case !(r.Depth > 0) || !finite(r.Depth):
		return bad("a depth of %g m is not more than 0", r.Depth)
	case !(r.Sole >= 0 && r.Sole < min(r.Depth, nose, tail)):
		return bad("a sole of %g m leaves no wood of a depth of %g m", r.Sole, min(r.Depth, nose, tail))
	case !finite(nose) || !finite(tail):
		return bad("the depth at a tip is not a number")
	case r.Top != rocker.Concentric && r.Top != rocker.Straight:
		return bad("there is no top number %d", int(r.Top))
	case r.Top == rocker.Straight && (nose != r.Depth || tail != r.Depth):
		return bad("a straight top has the depth at the tips that comes of it")
	}
	for _, end := range []End{r.Nose, r.Tail} {
		if end.Finish < Square || end.Finish > Eased || end.Finish == Eased && !(end.Radius > 0) {
			return bad("an eased end has a radius more than 0; %g m is not", end.Radius)
		}
	}
	return nil
}

// depths returns the depths at the nose and at the tail of a top that is not straight, m.
func (r Rocker) depths() (nose, tail float64) {
	return cmp.Or(r.NoseDepth, r.Depth), cmp.Or(r.TailDepth, r.Depth)
}

// concentric reports whether the top is everywhere as deep as at the origin.
func (r Rocker) concentric() bool {
	nose, tail := r.depths()
	return r.Top == rocker.Concentric && nose == r.Depth && tail == r.Depth
}
