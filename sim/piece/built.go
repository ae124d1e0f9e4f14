package piece

import (
	"slices"

	"rockerwright/rocker/rises"
)

// balanced reports whether the piece as built has readings that say something of its weight, balance point or inertia.
func (m Measured) balanced() bool {
	return m.Built && (m.Weighed() || m.DowelAhead != 0 || m.DowelAbove != 0 || slices.Contains(m.Zero, "dowel_ahead") ||
		m.FrontRaised > 0 || m.RearRaised > 0 || m.TenRocks > 0)
}

// Curved reports whether rises of the rockers were read, and whether their curve is drawn too.
func (d Design) Curved() (read, drawn bool) { return d.Measured.curved(), len(d.Rocker.ways()) > 0 }

// DrawnAndRead reports whether a curve or a weight is drawn beside readings of the same, which a check leaves aside.
func (d Design) DrawnAndRead() bool {
	read, drawn := d.Curved()
	source, err := d.Source()
	return !d.Measured.Built && (read && drawn || d.Measured.Weighed() && err == nil && source != ByReadings)
}

// EdgeAsRead returns the design with its floor edge left to the rises that were read, as long as it is drawn; any other
// design as it is. The error is a [*KeyError].
func (d Design) EdgeAsRead() (Design, error) {
	read, drawn := d.Curved()
	if !read || !drawn {
		return d, nil
	}
	edge, _, err := d.Profile()
	if err != nil {
		return d, err
	}
	k := &d.Rocker
	k.Radius, k.Arcs, k.Rises, k.Points, k.Spacing, k.Origin = 0, nil, nil, nil, 0, 0
	k.Nose, k.Tail = edge.Reach()
	return d, nil
}

// Bent returns the design with every radius of its drawn rockers so many times as large, all lengths kept. The error is
// a [*KeyError].
func (d Design) Bent(factor float64) (Design, error) {
	d, err := d.Fitted()
	d = d.Clone()
	d.Rocker.Radius *= factor
	for i := range d.Rocker.Arcs {
		d.Rocker.Arcs[i].Radius *= factor
	}
	return d, err
}

// Taken reports whether anything was read of the piece that can be set beside its drawing.
func (m Measured) Taken() bool {
	m.Built = true
	return m.curved() || m.balanced() || m.RiddenTenRocks > 0
}

// Rows returns the rises of both rockers, no Rise of one that was not read. The error is a [*KeyError].
func (m Measured) Rows() (left, right rises.Row, err error) {
	both, err := rowOf("measured", "low_point", m.LowPoint, m.Spacing, mean(m.Left, m.Right))
	left, right = both, both
	left.Rise, right.Rise = slices.Clone(m.Left), slices.Clone(m.Right)
	return left, right, err
}
