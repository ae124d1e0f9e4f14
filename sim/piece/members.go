package piece

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/rocker/bench"
)

// A Member is one straight piece of the wood over the rockers, or two alike, left and right. In
// space X is ahead of the low point, Y over the floor, Z across from the middle of the piece, m.
type Member struct {
	Name    string
	Axis    [2]r3.Vec  // from its foot or its back end; of a pair that of the right one; of the seat its top
	Wide    [2]float64 // across the piece, at either end of the axis, m
	Thick   float64    // square to that, as it is cut, m
	Shaped  float64    // the mean of that after shaping, by which a weight is spread, m; zero: of no known wood
	Count   int        // one, or two of a pair
	Leg     *Leg       // as drawn or taken; nil of what is no leg
	Enters  r3.Vec     // where the axis of a leg enters the seat: as drawn, or its underside
	Outline []r2.Vec   // of a solid of the design, from the side, closed, m; nil of a bar or a slab about its axis
}

// Usual sizes where none are drawn, m; our judgement of a sculpted chair, of stock 1 3/4 in thick for the
// seat, before and after shaping. Of a weight that is spread only their proportions matter.
const (
	seatThick   = 0.04445
	seatShaped  = 0.034
	backShaped  = 0.015 // as if its braces were one panel
	armWide     = 0.060
	armThick    = 0.030
	legThick    = 0.040 // square
	ArmReach    = 0.8   // of arms, as part of the seat's depth
	usualTimber = 700.0 // kg/m³; cancels out
)

// Members returns the wood over the rockers as it stands on them: seat, back, arms and what holds
// them, legs, and the solids of [Design.Parts], drawn or taken, carried by slide and cuts. Legs end
// on the top edge of their rocker. Where no seat is drawn with its slope there are the solids alone.
func (d Design) Members(edge rocker.Profile) []Member { return d.members(edge, d.Carry(edge)) }

// members returns the members as a carry lays them on the rockers.
func (d Design) members(edge rocker.Profile, c Carry) []Member {
	list := make([]Member, 0, 6+len(d.Legs)+len(d.Parts)) // seat, back, arms and their posts, two legs that are taken
	s := d.Seat
	line := func(name string, from, to r2.Vec, across float64, wide, rear, thick, shaped float64, count int) {
		from, to = c.Point(from), c.Point(to)
		list = append(list, Member{Name: name, Axis: [2]r3.Vec{{X: from.X, Y: from.Y, Z: across}, {X: to.X, Y: to.Y, Z: across}},
			Wide: [2]float64{rear, wide}, Thick: thick, Shaped: shaped, Count: count})
	}
	if s.SlopeKnown() {
		meet, front := s.Meet(), s.FrontEdge()
		line("seat", meet, front, 0, s.Width, s.Width, s.ThickOr(), seatShaped, 1)
		if top, known := d.TopOfBack(); known {
			line("back", meet, top, 0, s.Width, s.Width, backShaped, backShaped, 1)
		}
		if arms, _ := d.ArmsOr(); arms.Drawn() {
			rear := r2.Add(meet, r2.Vec{Y: arms.Height})
			end := r2.Add(rear, r2.Scale(arms.Length/s.Depth, r2.Sub(front, meet)))
			line("arm", rear, end, s.Width/2, arms.Width, arms.RearWidth, armThick, armThick, 2)
			line("arm post", r2.Sub(end, r2.Vec{Y: arms.Height}), end, s.Width/2, 0, 0, 0, 0, 2)
		}
		on := d.Rocker.OnBench(edge).TopEdge()
		for _, leg := range d.LegsOr() {
			m, _ := d.StandLeg(leg, on, c)
			list = append(list, m)
		}
	}
	for i := range d.Parts {
		p := &d.Parts[i]
		up := r2.Rotate(r2.Vec{Y: p.Height / 2}, p.Lean, r2.Vec{})
		line(p.Name, r2.Sub(p.At, up), r2.Add(p.At, up), 0, p.Width, p.Width, p.Length, 0, max(1, int(p.Count)))
		side := solids[p.Shape].side(*p)
		for i, q := range side {
			side[i] = c.Point(r2.Add(p.At, r2.Rotate(q, p.Lean, r2.Vec{})))
		}
		list[len(list)-1].Outline = side
	}
	return list
}

// StandLeg returns the right one of a pair of legs as a carry lays it on a rocker: on its line as it is drawn in
// the seat frame, from the top of the seat, or where none is drawn from where it enters it, down to the top edge.
// The line x = foot.x − (y − foot.y)·tan rake meets a plane so deep under the seat's top at
//
//	y = rear + (x + behind)·tan fall − deep/cos fall
//
// The error is of [bench.TopEdge.Stand]; its foot is then at the depth of the rocker over the floor edge.
func (d Design) StandLeg(leg Leg, on bench.TopEdge, c Carry) (Member, error) {
	s := d.Seat
	foot, missed := comesDown(on, r2.Vec{X: leg.At, Y: cmp.Or(s.Rear, leg.Top)}, 0)
	fall, rake := math.Tan(s.Fall()), math.Tan(leg.Rake)
	at := func(y float64) r2.Vec { return c.Point(r2.Vec{X: foot.X - (y-foot.Y)*rake, Y: y}) }
	under := func(deep float64) r2.Vec {
		return at((s.Rear + fall*(s.Behind+foot.X+foot.Y*rake) - deep/math.Cos(s.Fall())) / (1 + fall*rake))
	}
	top, enters := under(0), under(s.ThickOr())
	if leg.Top > 0 {
		enters = at(leg.Top)
	}
	if !s.SlopeKnown() {
		top = enters
	}
	if c != (Carry{}) {
		var err error
		foot, err = comesDown(on, top, leg.Rake+c.Turn)
		missed = cmp.Or(missed, err)
	}
	track, _ := d.Track()
	side, out := leg.SideOr(), track/2
	inSpace := func(p r2.Vec) r3.Vec { return r3.Vec{X: p.X, Y: p.Y, Z: out - math.Tan(leg.Splay)*(p.Y-foot.Y)} }
	return Member{Name: leg.Name, Axis: [2]r3.Vec{inSpace(foot), inSpace(top)}, Enters: inSpace(enters),
		Wide: [2]float64{side, side}, Thick: side, Shaped: side, Count: 2, Leg: &leg}, missed
}

// comesDown returns where a line from a place over a rocker, so far raked, meets its top edge; where it
// does not, or there is no top edge, the place at its depth over the floor edge.
func comesDown(on bench.TopEdge, from r2.Vec, rake float64) (r2.Vec, error) {
	stands, err := on.Stand(bench.Leg{Seat: r3.Vec{X: from.X, Y: from.Y, Z: on.Middle}, Rake: rake})
	if err != nil {
		return r2.Vec{X: from.X, Y: min(from.Y, on.Edge.Rise(from.X)+on.Depth)}, err
	}
	return r2.Vec{X: stands.Foot.X, Y: stands.Foot.Y}, nil
}

// Side returns the member from the side, chair frame, m: the outline of a solid, the axis of all else.
func (m Member) Side() []r2.Vec {
	if m.Outline != nil {
		return m.Outline
	}
	return []r2.Vec{{X: m.Axis[0].X, Y: m.Axis[0].Y}, {X: m.Axis[1].X, Y: m.Axis[1].Y}}
}

// Length returns the length of the axis, m.
func (m Member) Length() float64 { return r3.Norm(r3.Sub(m.Axis[1], m.Axis[0])) }

// wood returns the member in the side view as wood of one density (kg/m³).
func (m Member) wood(density float64) body.Body {
	a, b := m.Axis[0], m.Axis[1]
	along := r2.Vec{X: b.X - a.X, Y: b.Y - a.Y}
	mass := density * m.Length() * (m.Wide[0] + m.Wide[1]) / 2 * m.Shaped * float64(m.Count)
	return body.Box(mass, r2.Norm(along), m.Shaped).
		Turned(math.Atan2(along.Y, along.X), r2.Vec{}).
		Moved(r2.Vec{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2})
}

// RockerOutline returns a rocker from the side, closed, as its pattern has it, its arcs to within so
// much (m); where it has no outline its floor edge alone.
func (d Design) RockerOutline(edge rocker.Profile, within float64) []r2.Vec {
	outline, err := d.Rocker.OnBench(edge).Outline()
	if err != nil {
		return edge.Outline(within)
	}
	return outline.Flattened(within)
}
