package piece

import (
	"fmt"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/rises"
)

// ways returns the keys by which the floor edge is given, of which there should be one.
func (r Rocker) ways() []string {
	var given []string
	for _, way := range []struct {
		key string
		is  bool
	}{{"rises", len(r.Rises) > 0}, {"points", len(r.Points) > 0}, {"arcs", len(r.Arcs) > 0}, {"radius", r.Radius != 0}} {
		if way.is {
			given = append(given, way.key)
		}
	}
	return given
}

// traced reports whether the floor edge is given by what was read off one.
func (r Rocker) traced() bool { return len(r.Rises) > 0 || len(r.Points) > 0 }

// curve fits the rises or the points that are given.
func (r Rocker) curve() (*Curve, error) {
	ways := r.ways()
	key := "rocker." + ways[0]
	if len(ways) > 1 {
		return nil, &KeyError{Key: "rocker." + ways[1], Reason: fmt.Sprintf("the floor edge is given twice, by %s and by %s: keep one (nose and tail stay)", ways[0], ways[1])}
	}
	read, err := r.rises()
	if err != nil {
		return nil, err
	}
	fit, err := read.Fit()
	if err != nil {
		return nil, risesError(key, err)
	}
	return &Curve{Drawn: &fit, Fit: fit, One: true}, nil
}

// rises returns what was read off the edge, from the nose.
func (r Rocker) rises() (rises.Row, error) {
	if len(r.Rises) > 0 {
		low, err := lowStation("rocker.origin", r.Origin, r.Rises)
		if err == nil && r.Spacing <= 0 {
			err = noSpacing("rocker.spacing")
		}
		return rises.Row{Spacing: r.Spacing, Low: low, Rise: r.Rises}, err
	}
	points := slices.Clone(r.Points)
	turned := len(points) > 1 && points[0].X < points[len(points)-1].X
	if turned { // from the tail
		slices.Reverse(points)
	}
	var read rises.Row
	for i, p := range points {
		if i > 0 && p.X >= points[i-1].X {
			if turned {
				i = len(points) - 1 - i
			}
			return read, &KeyError{Key: fmt.Sprintf("rocker.points.%d", i+1), Reason: "the points go along the edge from the nose to the tail, each behind the one before: x falls"}
		}
		read.Ahead, read.Rise = append(read.Ahead, p.X), append(read.Rise, p.Y)
	}
	read.Low = rises.Lowest(read.Rise)
	return read, nil
}

// Fitted returns the design with a rocker that is given by rises or points drawn by the arcs
// that fit them; any other design as it is. The error is a [*KeyError].
func (d Design) Fitted() (Design, error) {
	if !d.Rocker.traced() {
		return d, nil
	}
	_, curve, err := d.Profile()
	if err != nil {
		return d, err
	}
	d = d.Clone()
	k := &d.Rocker
	spans, nose := curve.Fit.Spans(k.Nose, k.Tail)
	k.Rises, k.Spacing, k.Origin, k.Points, k.Nose, k.Tail = nil, 0, 0, []r2.Vec(nil), nose, 0
	for _, s := range spans {
		if s.Radius == 0 {
			k.Arcs = append(k.Arcs, Arc{Flat: s.Length})
			continue
		}
		k.Arcs = append(k.Arcs, Arc{Radius: s.Radius, Length: s.Length})
	}
	if one := k.Arcs[0]; len(k.Arcs) == 1 && one.Radius > 0 {
		k.Radius, k.Tail, k.Arcs = one.Radius, one.Length-nose, nil
	}
	return d, nil
}
