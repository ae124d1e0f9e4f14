package piece

import (
	"cmp"
	"errors"
	"fmt"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/rocker/bench"
)

// Usual sizes of a rocker where none are drawn, m; our judgement: 2 1/4 in deep, 1 1/4 in wide.
const usualDepth, usualWidth = 0.05715, 0.03175

// A Top is how the top edge of a rocker runs.
type Top int

const (
	Concentric Top = iota // as deep everywhere
	Straight
	Taper // from Depth at the low point to NoseDepth and TailDepth, by the square of the way
)

var tops = [...]string{"concentric", "straight", "taper"}

// ends are how an end of a rocker is finished, in the order of bench.Finish.
var ends = [...]string{"square", "round", "eased"}

// A Made is how the rockers are made.
type Made int

const (
	NotSaid   Made = iota
	Sawn           // out of a board
	Laminated      // glued up from strips over a form
	Steamed        // bent over a form in one thickness
)

var mades = [...]string{"", "sawn", "laminated", "steamed"}

// Profile returns the floor edge as drawn, by radius, nose and tail or by arcs. The error is a [*KeyError].
func (r Rocker) Profile() (rocker.Profile, error) {
	if len(r.Arcs) == 0 {
		needs := []need{{"radius", r.Radius}, {"nose", r.Nose}, {"tail", r.Tail}}
		if err := lacking("rocker", "a rocker needs its", needs...); err != nil {
			return rocker.Profile{}, err
		}
		arc := rocker.Arc(r.Radius, r.Nose+r.Tail)
		return chained("rocker.radius", "this radius, nose and tail make no rocker: ", r.Nose, arc)
	}
	if r.Radius != 0 || r.Tail != 0 {
		return rocker.Profile{}, &KeyError{Key: "rocker.arcs",
			Reason: "draw the rocker by radius, nose and tail, or by arcs and nose, not both"}
	}
	if r.Nose <= 0 {
		return rocker.Profile{}, &KeyError{Key: "rocker.nose",
			Reason: "arcs need nose: how far the low point lies along the curve from the nose tip", Give: "nose"}
	}
	spans := make([]rocker.Span, len(r.Arcs))
	for i, a := range r.Arcs {
		switch {
		case a.Flat > 0 && a.Radius == 0 && a.Length == 0 && a.Turn == 0:
			spans[i] = rocker.Flat(a.Flat)
		case a.Turn != 0 && a.Radius == 0 && a.Length == 0 && a.Flat == 0:
			spans[i] = rocker.Turn(a.Turn)
		case a.Radius != 0 && a.Length > 0 && a.Flat == 0 && a.Turn == 0:
			spans[i] = rocker.Arc(a.Radius, a.Length)
		default:
			return rocker.Profile{}, &KeyError{Key: fmt.Sprintf("rocker.arcs.%d", i+1), Give: "arcs",
				Reason: "each of the arcs is a radius with a length, a flat, or a turn"}
		}
	}
	return chained("rocker.arcs", "these arcs make no rocker: ", r.Nose, spans...)
}

// chained returns the floor edge of some spans. key is where they are given, reason begins what is said of spans that
// make none; of arcs it is said of the one that does not fit.
func chained(key, reason string, nose float64, spans ...rocker.Span) (rocker.Profile, error) {
	p, err := rocker.Chain(nose, spans...)
	if wrong := (*rocker.SpanError)(nil); errors.As(err, &wrong) {
		if key == "rocker.arcs" && wrong.Index < len(spans) {
			key = fmt.Sprintf("rocker.arcs.%d", wrong.Index+1)
		}
		return p, &KeyError{Key: key, Reason: reason + wrong.Reason}
	}
	return p, err
}

// DepthOr returns the depth of a rocker, the usual one where none is drawn, m.
func (r Rocker) DepthOr() float64 { return cmp.Or(r.Depth, usualDepth) }

// OnBench returns one rocker as it stands on the bench, of the usual sizes where none are drawn, with square
// ends. A taper of no other depth at its tips is none.
func (r Rocker) OnBench(edge rocker.Profile) bench.Rocker {
	b := bench.Rocker{Edge: edge, Depth: r.DepthOr(), Width: cmp.Or(r.Width, usualWidth), Sole: r.Sole}
	switch r.Top {
	case Straight:
		b.Top = rocker.Straight
	case Taper:
		b.NoseDepth, b.TailDepth = r.NoseDepth, r.TailDepth
	}
	return b
}

// DepthAt returns the depth so far along the floor edge from a tip, m.
func (r Rocker) DepthAt(edge rocker.Profile, isTail bool, from float64) float64 {
	nose, tail := edge.Reach()
	along := nose - from
	if isTail {
		along = from - tail
	}
	depth, _ := r.OnBench(edge).Thickness(along)
	return depth
}

// wood returns the pair of rockers cut from wood of the given density (kg/m³), in the rocker frame.
func (r Rocker) wood(edge rocker.Profile, density float64) (body.Body, error) {
	on := r.OnBench(edge)
	strip, err := edge.Strip(on.Depth, on.Top)
	if r.Top == Taper {
		strip, err = edge.Tapered(on.Depth, cmp.Or(r.NoseDepth, on.Depth), cmp.Or(r.TailDepth, on.Depth))
	}
	if err != nil {
		return body.Body{}, &KeyError{Key: "rocker.depth", Reason: "a rocker this deep has no top edge on this curve", Give: "depth"}
	}
	across := 2 * on.Width * density
	return body.Body{Mass: across * strip.Area, Centre: strip.Centroid, Inertia: across * strip.Second}, nil
}
