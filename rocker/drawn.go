package rocker

import "gonum.org/v1/gonum/spatial/r2"

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
