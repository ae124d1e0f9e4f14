package piece

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/floats"

	"rockerwright/rocker"
	"rockerwright/rocker/rises"
)

// A Traced is what the rises of a straightedge, or points of the edge, say of the rockers.
type Traced struct {
	Left, Right *rises.Fit // nil where it was not read
	Drawn       *rises.Fit // of rises or points that stand for the drawing of both; else nil
	Fit         rises.Fit  // of both, their mean
	Apart       float64    // the largest difference of left and right, m; above zero where left is higher
	Station     int        // where that is, counted from 1 at the nose
	One         bool       // left and right are one curve, as far as was read
}

// Profile returns the floor edge as drawn, where it is not drawn as measured, and of one that was read off what was found.
func (d Design) Profile() (rocker.Profile, *Traced, error) {
	key, read, measured := "measured", d.Measured.curve, d.byRises()
	switch {
	case !measured && !d.Rocker.traced():
		edge, err := d.Rocker.Profile()
		return edge, nil, err
	case !measured:
		key, read = "rocker."+d.Rocker.ways()[0], d.Rocker.curve
	}
	curve, err := read()
	if err != nil {
		return rocker.Profile{}, nil, err
	}
	spans, nose := curve.Fit.Spans(d.Rocker.Nose, d.Rocker.Tail)
	edge, err := chained(key, "what was read makes no rocker: ", nose, spans...)
	return edge, curve, err
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
	k.Rises, k.Spacing, k.Origin, k.Points, k.Nose, k.Tail = nil, 0, 0, nil, nose, 0
	for _, s := range spans {
		k.Arcs = append(k.Arcs, ArcOf(s))
	}
	if one := k.Arcs[0]; len(k.Arcs) == 1 && one.Radius > 0 {
		k.Radius, k.Tail, k.Arcs = one.Radius, one.Length-nose, nil
	}
	return d, nil
}

// ways returns the keys by which the floor edge is given, of which there should be one.
func (r Rocker) ways() []string {
	return given(alternative{"rises", len(r.Rises) > 0}, alternative{"points", len(r.Points) > 0},
		alternative{"arcs", len(r.Arcs) > 0}, alternative{"radius", r.Radius != 0})
}

// Read reports whether the floor edge is what was read off one, measured or instead of a drawing.
func (d Design) Read() bool { return d.byRises() || d.Rocker.traced() }

// byRises reports whether the floor edge is that of measured rises: they were read, and none is drawn.
func (d Design) byRises() bool { return d.Measured.curved() && len(d.Rocker.ways()) == 0 }

// traced reports whether the floor edge is given by what was read off one.
func (r Rocker) traced() bool { return len(r.Rises) > 0 || len(r.Points) > 0 }

// curve fits the rises or the points that are given.
func (r Rocker) curve() (*Traced, error) {
	ways := r.ways()
	key := "rocker." + ways[0]
	if len(ways) > 1 {
		return nil, &KeyError{Key: "rocker." + ways[1],
			Reason: fmt.Sprintf("the floor edge is given twice, by %s and by %s: keep one (nose and tail stay)", ways[0], ways[1])}
	}
	read, err := r.rises()
	if err != nil {
		return nil, err
	}
	fit, err := read.Fit()
	if err != nil {
		return nil, risesError(key, err)
	}
	return &Traced{Drawn: &fit, Fit: fit, One: true}, nil
}

// rises returns what was read off the edge, from the nose.
func (r Rocker) rises() (rises.Row, error) {
	if len(r.Rises) > 0 {
		return rowOf("rocker", "origin", r.Origin, r.Spacing, r.Rises)
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
			return read, &KeyError{Key: fmt.Sprintf("rocker.points.%d", i+1),
				Reason: "the points go along the edge from the nose to the tail, each behind the one before: x falls"}
		}
		read.Ahead, read.Rise = append(read.Ahead, p.X), append(read.Rise, p.Y)
	}
	read.Low = floats.MinIdx(read.Rise)
	return read, nil
}

// curve fits the rises that were read.
func (m Measured) curve() (*Traced, error) {
	if len(m.Left) > 0 && len(m.Right) > 0 && len(m.Left) != len(m.Right) {
		return nil, &KeyError{Key: "measured.right",
			Reason: fmt.Sprintf("left has %d rises and right %d: read both at the same stations", len(m.Left), len(m.Right))}
	}
	both, err := rowOf("measured", "low_point", m.LowPoint, m.Spacing, mean(m.Left, m.Right))
	if err != nil {
		return nil, err
	}
	of := func(rise []float64) rises.Row { return rises.Row{Spacing: both.Spacing, Low: both.Low, Rise: rise} }
	fit := func(side string, rise []float64) *rises.Fit {
		if len(rise) == 0 || err != nil {
			return nil
		}
		fit, wrong := of(rise).Fit()
		if fit.Suspect >= 0 && wrong == nil {
			rise[fit.Suspect] = fit.Without // misread
		}
		err = risesError("measured."+side, wrong)
		return &fit
	}
	left, right := slices.Clone(m.Left), slices.Clone(m.Right)
	c := &Traced{Left: fit("left", left), Right: fit("right", right), One: true}
	switch {
	case err != nil:
		return nil, err
	case c.Left == nil || c.Right == nil:
		c.Fit = *cmp.Or(c.Left, c.Right)
		return c, nil
	}
	both.Rise, both.Error = mean(left, right), rises.UsualError/math.Sqrt2
	if c.Fit, err = both.Fit(); err != nil {
		return nil, risesError("measured.left", err)
	}
	var station int
	c.Apart, station, c.One, err = rises.Compare(of(left), of(right))
	c.Station = station + 1
	return c, err
}

// mean returns the mean of two rows of rises, or the one that was read.
func mean(left, right []float64) []float64 {
	switch {
	case len(left) == 0:
		return right
	case len(right) == 0:
		return left
	}
	both := floats.AddTo(make([]float64, len(left)), left, right)
	floats.Scale(0.5, both)
	return both
}

// rowOf returns rises from a straightedge with their low point, which is given by its number from 1, or the lowest
// where that is 0. low and section are where number and spacing are given.
func rowOf(section, low string, number, spacing float64, rise []float64) (rises.Row, error) {
	at := int(number) - 1
	if number == 0 {
		at = floats.MinIdx(rise)
	}
	switch {
	case number != math.Trunc(number) || at < 1 || at > len(rise)-2:
		return rises.Row{}, &KeyError{Key: section + "." + low, Give: low,
			Reason: "say which station is the low point, counted from 1 at the nose, with stations on either side of it"}
	case spacing <= 0:
		return rises.Row{}, &KeyError{Key: section + ".spacing", Give: "spacing",
			Reason: "rises need the spacing of their stations"}
	}
	return rises.Row{Spacing: spacing, Low: at, Rise: rise}, nil
}

// risesError returns an error of package rises with its place in the design, the list of rises.
func risesError(key string, err error) error {
	var wrong *rises.Error
	if !errors.As(err, &wrong) {
		return err
	}
	if wrong.Station >= 0 {
		key = fmt.Sprintf("%s.%d", key, wrong.Station+1)
	}
	return &KeyError{Key: key, Reason: wrong.Reason}
}

// ArcOf returns a span of a floor edge as a design has it.
func ArcOf(s rocker.Span) Arc {
	if s.Radius == 0 {
		return Arc{Flat: s.Length, Turn: s.Turn}
	}
	return Arc{Radius: s.Radius, Length: s.Length}
}

// Arcs returns the spans of a floor edge as a design has them, from the nose.
func Arcs(edge []rocker.DrawnSpan) []Arc {
	var list []Arc
	for _, s := range edge {
		list = append(list, ArcOf(s.Span))
	}
	return list
}
