package piece

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"rockerwright/rocker"
)

// A Curve is what the rises of a straightedge say of the rockers.
type Curve struct {
	Left, Right *rocker.RisesFit // nil where it was not read
	Fit         rocker.RisesFit  // of both, their mean
	Apart       float64          // the largest difference of left and right, m; above zero where left is higher
	Station     int              // where that is, counted from 1 at the nose
	One         bool             // left and right are one curve, as far as was read
}

// profile returns the floor edge, as drawn or as measured, and of a measured one what was
// found.
func (d Design) profile() (rocker.Profile, *Curve, error) {
	if !d.Measured.curved() {
		edge, err := d.Rocker.Profile()
		return edge, nil, err
	}
	if d.Rocker.Radius != 0 || len(d.Rocker.Arcs) > 0 {
		return rocker.Profile{}, nil, &KeyError{Key: "rocker", Reason: "the rockers' curve is given twice, drawn here and measured by rises in [measured]: keep one (nose and tail stay)"}
	}
	curve, err := d.Measured.curve()
	if err != nil {
		return rocker.Profile{}, nil, err
	}
	spans, nose := curve.Fit.Spans(d.Rocker.Nose, d.Rocker.Tail)
	edge, err := rocker.Chain(nose, spans...)
	if err != nil {
		return edge, nil, &KeyError{Key: "measured", Reason: "these rises make no rocker: " + err.Error()}
	}
	return edge, curve, nil
}

// curve fits the rises that were read.
func (m Measured) curve() (*Curve, error) {
	if len(m.Left) > 0 && len(m.Right) > 0 && len(m.Left) != len(m.Right) {
		return nil, &KeyError{Key: "measured.right", Reason: fmt.Sprintf("left has %d rises and right %d: read both at the same stations", len(m.Left), len(m.Right))}
	}
	low := int(m.LowPoint) - 1
	if m.LowPoint == 0 {
		low = rocker.LowStation(mean(m.Left, m.Right))
	}
	if m.LowPoint != math.Trunc(m.LowPoint) || low < 1 || low > max(len(m.Left), len(m.Right))-2 {
		return nil, &KeyError{Key: "measured.low_point", Reason: "say which station is the low point, counted from 1 at the nose, with stations on either side of it", Example: "low_point = 8"}
	}
	if m.Spacing <= 0 {
		return nil, &KeyError{Key: "measured.spacing", Reason: "rises need the spacing of their stations", Example: "spacing = 2"}
	}
	of := func(rise []float64) rocker.Rises { return rocker.Rises{Spacing: m.Spacing, Low: low, Rise: rise} }
	c := &Curve{One: true}
	left, right := slices.Clone(m.Left), slices.Clone(m.Right) // misread ones put right
	for _, side := range []struct {
		name string
		rise []float64
		fit  **rocker.RisesFit
	}{{"left", left, &c.Left}, {"right", right, &c.Right}} {
		if len(side.rise) == 0 {
			continue
		}
		fit, err := of(side.rise).Fit()
		if err != nil {
			return nil, risesError(side.name, err)
		}
		*side.fit = &fit
		if fit.Suspect >= 0 {
			side.rise[fit.Suspect] = fit.Without
		}
		c.Fit = fit
	}
	if c.Left == nil || c.Right == nil {
		return c, nil
	}
	both := of(mean(left, right))
	both.Error = rocker.ReadingError / math.Sqrt2
	var err error
	if c.Fit, err = both.Fit(); err != nil {
		return nil, risesError("left", err)
	}
	var station int
	c.Apart, station, c.One, err = rocker.Agree(of(left), of(right))
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
	both := slices.Clone(left)
	for i := range both {
		both[i] = (left[i] + right[i]) / 2
	}
	return both
}

// risesError returns an error of package rocker with its place in the design.
func risesError(side string, err error) error {
	var wrong *rocker.RisesError
	if !errors.As(err, &wrong) {
		return err
	}
	key := "measured." + side
	if wrong.Station >= 0 {
		key = fmt.Sprintf("%s.%d", key, wrong.Station+1)
	}
	return &KeyError{Key: key, Reason: wrong.Reason}
}
