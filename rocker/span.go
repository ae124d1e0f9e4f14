package rocker

import (
	"fmt"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Span is one stretch of the floor edge as a maker draws it, read from nose to tail: an arc (Radius and Length), a
// flat (Length alone) or a turn (Turn alone). Build it with [Arc], [Flat] or [Turn].
type Span struct {
	Radius float64 // m; below zero for a hollow, zero for a flat or a turn
	Length float64 // m, along the edge; zero for a turn
	Turn   float64 // rad; the corner between the spans on either side
}

// Arc is a span of the given radius (m, below zero for a hollow) and length along
// the edge (m). It turns the contact by length/radius.
func Arc(radius, length float64) Span { return Span{Radius: radius, Length: length} }

// Flat is a straight span of the given length (m).
func Flat(length float64) Span { return Span{Length: length} }

// Turn is a corner of the given angle (rad); below zero it is a notch, which the floor never reaches.
func Turn(angle float64) Span { return Span{Turn: angle} }

// turn returns the angle by which the floor's direction changes along s, rad.
func (s Span) turn() float64 {
	if s.Radius == 0 {
		return s.Turn
	}
	return s.Length / s.Radius
}

// Curvature returns 1/R of s, 1/m: below zero in a hollow, zero on a flat and at a turn.
func (s Span) Curvature() float64 {
	if s.Radius == 0 {
		return 0
	}
	return 1 / s.Radius
}

// continues reports whether next goes on with the same curve, so that the two are one span that was split.
func (s Span) continues(next Span) bool {
	return s.Radius == next.Radius && (s.Length > 0) == (next.Length > 0)
}

// A SpanError reports the first span that cannot be part of a rocker.
type SpanError struct {
	Index  int // counts from 0; the number of spans where the whole chain is at fault
	Span   Span
	Reason string
}

func (e *SpanError) Error() string {
	s := e.Span
	switch {
	case s.Radius != 0:
		return fmt.Sprintf("rocker: span %d (radius %g m, length %g m): %s", e.Index, s.Radius, s.Length, e.Reason)
	case s.Length != 0:
		return fmt.Sprintf("rocker: span %d (flat of %g m): %s", e.Index, s.Length, e.Reason)
	case s.Turn != 0:
		return fmt.Sprintf("rocker: span %d (turn of %g rad): %s", e.Index, s.Turn, e.Reason)
	}
	return "rocker: " + e.Reason
}

// A DrawnSpan is a span of the floor edge where it lies in the chair frame.
type DrawnSpan struct {
	Span
	Start, End r2.Vec  // its nose end and its tail end, m; the same for a turn
	From, To   float64 // the tilts (rad) at which a floor is tangent at Start and at End
}

// Drawn returns the floor edge as drawn, hollows and notches included, from the nose tip
// to the tail tip. A span that the origin parts is one span. The edge runs towards the
// tail along u′ of [Down] at the tilts given, with the wood on the side of −u.
func (p Profile) Drawn() []DrawnSpan {
	var spans []DrawnSpan
	for i := range p.edge {
		e := &p.edge[i]
		if n := len(spans); n > 0 && spans[n-1].continues(e.Span) {
			last := &spans[n-1]
			last.Length += e.Length
			last.Turn += e.Turn
			last.End, last.To = e.point(e.Length), e.to
			continue
		}
		spans = append(spans, DrawnSpan{Span: e.Span, Start: e.start, End: e.point(e.Length), From: e.from, To: e.to})
	}
	return spans
}
