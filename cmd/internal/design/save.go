package design

import (
	"math"
	"slices"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Saved returns the file's text with the measures of a design, and the changes that were typed,
// written in their places; comments stay where they are. The design has the same people, parts
// and kinds of entries as the file's, but its rocker may have other arcs: lines of a rocker
// that is drawn in another way now are kept as comments. The error is an [*Error].
func (f *File) Saved(d piece.Design) (string, error) {
	values := map[string]string{}
	for key, typed := range f.changed {
		values[without1(key)] = typed
	}
	was, now := f.Design.Clone(), d.Clone()
	anew := wayOf(was.Rocker) != wayOf(now.Rocker) || len(was.Rocker.Arcs) != len(now.Rocker.Arcs)
	for _, key := range was.Keys() {
		if anew && curveKey(key) {
			continue
		}
		measure, before, err := was.Measure(key)
		if err != nil {
			return "", err
		}
		_, after, err := now.Measure(key)
		if err != nil {
			return "", err
		}
		if *before != *after {
			values[without1(key)] = typed(*after, measure.Kind, d.Units)
		}
	}
	text := f.withValues(values)
	if anew {
		var err error
		if text, err = redrawn(f.Name, text, d); err != nil {
			return "", err
		}
	}
	_, err := Parse(f.Name, text)
	return text, err
}

// typed returns a value as a maker types it, where that says it to a thousandth of a
// millimetre; else in its SI unit.
func typed(x float64, kind quantity.Kind, units quantity.System) string {
	if shop := quantity.Shop(x, kind, units); math.Abs(quantity.Round(x, kind, units)-x) < 1e-6 {
		return shop
	}
	return quantity.Exact(x, kind)
}

// Rewritable returns why a rocker of other arcs could not be written into the file; nil where it
// can.
func (f *File) Rewritable() error {
	d := f.Design.Clone()
	k := &d.Rocker
	k.Radius, k.Tail, k.Rises, k.Points, k.Spacing, k.Origin = 0, 0, nil, nil, 0, 0
	k.Arcs = make([]piece.Arc, len(k.Arcs)+2)
	for i := range k.Arcs {
		k.Arcs[i] = piece.Arc{Radius: 1, Length: 0.1}
	}
	_, err := f.Saved(d)
	return err
}

// ways are the entries that draw the curve of a rocker, without its ends.
var ways = []string{"rocker.radius", "rocker.tail", "rocker.arcs", "rocker.rises", "rocker.spacing", "rocker.origin", "rocker.points"}

// curveKey reports whether a key is of the curve of the rocker.
func curveKey(key string) bool {
	return slices.ContainsFunc(ways, func(way string) bool { return key == way || strings.HasPrefix(key, way+".") })
}

// wayOf returns by which entry a rocker is drawn.
func wayOf(r piece.Rocker) string {
	switch {
	case len(r.Arcs) > 0:
		return "arcs"
	case len(r.Rises) > 0:
		return "rises"
	case len(r.Points) > 0:
		return "points"
	}
	return "radius"
}
