package piece

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"rockerwright/rocker"
	"rockerwright/rocker/rises"
)

// A Curve is what the rises of a straightedge, or points of the edge, say of the rockers.
type Curve struct {
	Left, Right *rises.Fit // nil where it was not read
	Drawn       *rises.Fit // of rises or points that stand for the drawing of both; else nil
	Fit         rises.Fit  // of both, their mean
	Apart       float64    // the largest difference of left and right, m; above zero where left is higher
	Station     int        // where that is, counted from 1 at the nose
	One         bool       // left and right are one curve, as far as was read
}

// Profile returns the floor edge, as drawn or as measured, and of one that was read off an edge
// what was found.
func (d Design) Profile() (rocker.Profile, *Curve, error) {
	ways := d.Rocker.ways()
	var curve *Curve
	var err error
	key := "measured"
	switch {
	case d.Measured.curved() && len(ways) > 0:
		err = &KeyError{Key: "rocker", Reason: "the rockers' curve is given twice, drawn here and measured by rises: keep one (nose and tail stay)"}
	case d.Measured.curved():
		curve, err = d.Measured.curve()
	case d.Rocker.traced():
		key = "rocker." + ways[0]
		curve, err = d.Rocker.curve()
	default:
		edge, err := d.Rocker.Profile()
		return edge, nil, err
	}
	if err != nil {
		return rocker.Profile{}, nil, err
	}
	spans, nose := curve.Fit.Spans(d.Rocker.Nose, d.Rocker.Tail)
	edge, err := rocker.Chain(nose, spans...)
	var span *rocker.SpanError
	if errors.As(err, &span) {
		err = &KeyError{Key: key, Reason: "what was read makes no rocker: " + span.Reason}
	}
	return edge, curve, err
}

// curve fits the rises that were read.
func (m Measured) curve() (*Curve, error) {
	if len(m.Left) > 0 && len(m.Right) > 0 && len(m.Left) != len(m.Right) {
		return nil, &KeyError{Key: "measured.right", Reason: fmt.Sprintf("left has %d rises and right %d: read both at the same stations", len(m.Left), len(m.Right))}
	}
	low, err := lowStation("measured.low_point", m.LowPoint, mean(m.Left, m.Right))
	if err != nil {
		return nil, err
	}
	if m.Spacing <= 0 {
		return nil, noSpacing("measured.spacing")
	}
	of := func(rise []float64) rises.Row { return rises.Row{Spacing: m.Spacing, Low: low, Rise: rise} }
	c := &Curve{One: true}
	left, right := slices.Clone(m.Left), slices.Clone(m.Right) // misread ones put right
	for _, side := range []struct {
		name string
		rise []float64
		fit  **rises.Fit
	}{{"left", left, &c.Left}, {"right", right, &c.Right}} {
		if len(side.rise) == 0 {
			continue
		}
		fit, err := of(side.rise).Fit()
		if err != nil {
			return nil, risesError("measured."+side.name, err)
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
	both.Error = rises.UsualError / math.Sqrt2
	if c.Fit, err = both.Fit(); err != nil {
		return nil, risesError("measured.left", err)
	}
	var station int
	c.Apart, station, c.One, err = rises.Agree(of(left), of(right))
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

// lowStation returns the index of the station at the low point, given by its number from 1, or
// the lowest where that is 0. key is where it is given.
func lowStation(key string, number float64, rise []float64) (int, error) {
	low := int(number) - 1
	if number == 0 {
		low = rises.Lowest(rise)
	}
	if number != math.Trunc(number) || low < 1 || low > len(rise)-2 {
		return 0, &KeyError{Key: key, Reason: "say which station is the low point, counted from 1 at the nose, with stations on either side of it", Give: lastOf(key)}
	}
	return low, nil
}

func noSpacing(key string) error {
	return &KeyError{Key: key, Reason: "rises need the spacing of their stations", Give: "spacing"}
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
