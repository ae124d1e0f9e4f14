package check

import (
	"math"
	"strconv"

	"rockerwright/rocker"
	"rockerwright/rocker/rises"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A sideRead is one rocker of which rises were read.
type sideRead struct {
	name string
	edge rocker.Profile // as drawn
	row  rises.Row      // a rise that is misread stands as the others have it
}

// at returns the rises of the drawn edge with its radii times a factor, which may go on beyond its tips, at the stations.
func (s *sideRead) at(factor float64) ([]float64, bool) {
	edge, err := bent(s.edge, factor, s.edge.Length()/4)
	if err != nil {
		return nil, false
	}
	curve := make([]float64, len(s.row.Rise))
	for i := range curve {
		curve[i] = edge.Rise(s.row.Spacing * float64(s.row.Low-i))
	}
	return curve, true
}

// besideRises sets the rises of both rockers beside the drawn edge, and returns the design with its rockers as built:
// the drawn curve with its radii as the rises have them where that explains them, else the curve that they tell. The
// error is a [*piece.KeyError], of rises that cannot be.
func (r *Report) besideRises() (piece.Design, []Beside, error) {
	d := r.Design
	read, drawn := d.Curved()
	if !read {
		return d, nil, nil
	}
	as, err := d.EdgeAsRead()
	if err != nil {
		return d, nil, err
	}
	if _, _, err := as.Profile(); err != nil {
		return d, nil, err
	}
	sides, err := r.sidesRead()
	if err != nil {
		return d, nil, err
	}
	var rows []Beside
	if drawn {
		for i := range sides {
			row, err := r.besideSide(&sides[i], sides)
			if err != nil {
				return d, nil, err
			}
			rows = append(rows, row)
		}
	}
	twins, err := besideTwins(sides)
	if err != nil || !drawn {
		return d, twins, err
	}
	rows = append(rows, twins...)
	factor, uncertain, _ := bendOf(sides)
	if uncertain > 0.5 { // the stations do not tell it
		return d, rows, nil
	}
	radius := r.besideRadius(sides, factor, uncertain)
	if len(twins) > 0 && !twins[0].Agrees() {
		radius.Mend = MakeAlike
	}
	for i := range sides {
		own, _, _ := bendOf(sides[i : i+1])
		if curve, ok := sides[i].at(own); !ok || !agrees(sides[i].row, curve) {
			radius.Mend = NoCurve
			return as, append(rows, radius), nil
		}
	}
	rows = append(rows, radius)
	built, err := d.Bent(factor)
	if len(twins) > 0 && !twins[0].Agrees() {
		built.Rocker.Unequal += tailRise(sides[:1]) - tailRise(sides[1:])
	}
	return built, rows, err
}

// tailRise returns by how much the tail tip of a rocker came out higher than it is drawn, m.
func tailRise(side []sideRead) float64 {
	factor, _, _ := bendOf(side)
	edge, err := bent(side[0].edge, factor, 0)
	if err != nil {
		return 0
	}
	return edge.Tail().Y - side[0].edge.Tail().Y
}

func agrees(row rises.Row, curve []float64) bool {
	b, err := row.Against(curve)
	return err == nil && b.Agrees()
}

// sidesRead returns the rockers that were read, the left one first.
func (r *Report) sidesRead() ([]sideRead, error) {
	left, right, err := r.Design.Measured.Rows()
	if err != nil {
		return nil, err
	}
	step := quantity.In / 32
	if r.Design.Units == quantity.Metric {
		step = 1e-4
	}
	deviation := math.Hypot(rises.UsualError, step/math.Sqrt(12)) // as read, and as written
	higher := r.Edge
	if by := r.Design.Rocker.Unequal; by != 0 {
		if edge, ok := risen(r.Edge, by); ok {
			higher = edge
		}
	}
	var sides []sideRead
	for _, s := range []sideRead{{BesideLeft, higher, left}, {BesideRight, r.Edge, right}} {
		if len(s.row.Rise) > 0 {
			s.row.Error = deviation
			sides = append(sides, s)
		}
	}
	return sides, nil
}

// besideSide sets the worst station of a rocker beside the drawn edge. A rise that alone is off, where a bend of the whole
// curve explains the rises less well, is misread: it is left out of all else.
func (r *Report) besideSide(s *sideRead, sides []sideRead) (Beside, error) {
	curve, _ := s.at(1)
	b, err := s.row.Against(curve)
	row := Beside{What: s.name, Station: b.Station + 1, Key: "measured." + s.name + "." + strconv.Itoa(b.Station+1),
		Readings: []string{s.name}, Kind: quantity.Length, Drawn: curve[b.Station], Read: curve[b.Station] + b.Off, Uncertain: b.Uncertain}
	if err != nil || row.Agrees() {
		return row, risesError(s.name, err)
	}
	own, _, squares := bendOf([]sideRead{*s})
	_, _, all := bendOf(sides)
	alone := b.Alone
	for i := range sides {
		if o := &sides[i]; o.name != s.name {
			straight, _ := o.at(1)
			if other, err := o.row.Against(straight); err == nil {
				alone += min(other.Squares, other.Alone)
			}
		}
	}
	bentCurve, ok := s.at(own)
	switch {
	case b.Others && alone < all && b.Alone < squares:
		row.Mend = Reread
		s.row.Rise[b.Station] -= b.Off
	case ok && agrees(s.row, bentCurve):
		row.Mend = TakeRead
	default:
		row.Mend = NoCurve
	}
	return row, nil
}

func risesError(side string, err error) error {
	if err == nil {
		return nil
	}
	return &piece.KeyError{Key: "measured." + side, Reason: err.Error()}
}

// besideTwins sets the left rocker beside the right one, where both were read.
func besideTwins(sides []sideRead) ([]Beside, error) {
	if len(sides) < 2 {
		return nil, nil
	}
	left, _ := sides[0].at(1)
	right, _ := sides[1].at(1)
	row := sides[0].row
	row.Error *= math.Sqrt2
	row.Rise = make([]float64, len(left))
	apart := make([]float64, len(left))
	for i := range left {
		row.Rise[i], apart[i] = sides[0].row.Rise[i]-sides[1].row.Rise[i], left[i]-right[i]
	}
	b, err := row.Against(apart)
	if err != nil {
		return nil, risesError(BesideRight, err)
	}
	return []Beside{{What: BesideTwins, Station: b.Station + 1, Key: "measured.right." + strconv.Itoa(b.Station+1),
		Readings: []string{BesideLeft, BesideRight}, Kind: quantity.Length, Drawn: apart[b.Station],
		Read: apart[b.Station] + b.Off, Uncertain: b.Uncertain, Mend: MakeAlike}}, nil
}

// besideRadius sets the radius of the one drawn arc, or all radii together, beside what the rises say.
func (r *Report) besideRadius(sides []sideRead, factor, uncertain float64) Beside {
	row := Beside{What: BesideBending, Key: "rocker.arcs", Kind: quantity.Ratio, Drawn: 1, Read: factor, Uncertain: uncertain, Mend: TakeRead}
	if radius := r.Design.Rocker.Radius; radius > 0 {
		row.What, row.Key, row.Kind = BesideRadius, "rocker.radius", quantity.Length
		row.Drawn, row.Read, row.Uncertain = radius, radius*factor, radius*uncertain
	}
	for _, s := range sides {
		row.Readings = append(row.Readings, s.name)
	}
	return row
}

// bendOf returns the factor of all radii with which the drawn edge lies nearest to the rises of some sides, its ± at 95 %,
// infinite where they do not tell it, and the squares that are left.
func bendOf(sides []sideRead) (factor, uncertain, squares float64) {
	rows := make([]rises.Row, len(sides))
	curves, ways := make([][]float64, len(sides)), make([][]float64, len(sides))
	factor = 1
	const part = 1e-3 // of a change by which the slope is taken
	var bend rises.Bend
	for range 6 { // Newton's: each step doubles the digits
		for k := range sides {
			s := &sides[k]
			now, ok := s.at(factor)
			more, okMore := s.at(factor * (1 + part))
			less, okLess := s.at(factor * (1 - part))
			if !ok || !okMore || !okLess {
				return 1, math.Inf(1), math.Inf(1)
			}
			way := make([]float64, len(now))
			for i := range way {
				way[i] = (more[i] - less[i]) / (2 * part * factor)
			}
			rows[k], curves[k], ways[k] = s.row, now, way
		}
		bend = rises.Bent(rows, curves, ways)
		if math.IsInf(bend.Uncertain, 1) {
			return 1, bend.Uncertain, bend.Squares
		}
		factor = min(3, max(1.0/3, factor+bend.By))
	}
	return factor, bend.Uncertain, bend.Squares
}
