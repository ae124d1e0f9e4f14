package bench

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"
)

// A Leg is the centre line of a leg on the right of the chair, from the seat downwards. Chair
// frame with z outwards from the middle plane of the chair.
type Leg struct {
	Seat  r3.Vec  // where it comes out of the underside of the seat, m
	Rake  float64 // by how much it leans in the side view, rad; above zero where its foot is ahead
	Splay float64 // by how much it leans in the front view, rad; above zero where its foot is further out
}

// A MissError reports a leg whose centre line does not come down on the rocker.
type MissError struct {
	By    float64 // the distance of the centre line from where it would just meet, m
	Where string  // "ahead of the nose", "behind the tail", "inside", "outside" or "below the top edge"
}

func (e *MissError) Error() string {
	return fmt.Sprintf("bench: the leg misses the rocker by %g m, %s", e.By, e.Where)
}

// LegBetween returns the leg from the seat to a foot, which is lower, m.
func LegBetween(seat, foot r3.Vec) (Leg, error) {
	drop := seat.Y - foot.Y
	if err := above("the height of a leg", drop); err != nil {
		return Leg{}, err
	}
	return Leg{seat, math.Atan((foot.X - seat.X) / drop), math.Atan((foot.Z - seat.Z) / drop)}, nil
}

// A Standing is how a leg meets the top edge of its rocker.
type Standing struct {
	Foot   r3.Vec  // where its centre line meets the top edge, m
	Length float64 // along the centre line from seat to foot, m

	Resultant, Sightline float64 // rad; see the functions of that name

	// In the side view, rad. Angle is that from the top edge, towards the nose, up to the
	// leg; Cut is by how much a foot sawn to the rocker is out of square, above zero where
	// the leg leans to the nose as it goes up. Slope is the heading of the top edge to the nose.
	Angle, Cut, Slope float64

	// Across the rocker the cut is out of square by this angle, rad, seen along the top
	// edge: above zero where the leg leans inwards as it goes up.
	Across float64

	Tilt float64 // the angle between the centre line and a line square to the top edge, in space, rad

	// Radius of the top edge under the foot, m: above zero where it is hollow, as over a
	// floor edge that bulges; infinite where it is straight.
	Radius float64
}

// Resultant returns by how much a leg leans from plumb altogether, and Sightline in which direction, from that of
// rake (rad): the foot of a leg raked and splayed by these angles (rad) lies tan(rake) along and tan(splay) aside
// for each length of height, so
//
//	tan resultant = √(tan²rake + tan²splay),  tan sightline = tan splay/tan rake
func Resultant(rake, splay float64) float64 {
	return math.Atan(math.Hypot(math.Tan(rake), math.Tan(splay)))
}

// Sightline returns the angle of [Resultant]'s plane from the direction of rake, rad.
func Sightline(rake, splay float64) float64 { return math.Atan2(math.Tan(splay), math.Tan(rake)) }

// Stand returns how a leg comes down on the rocker. The error is an [*OutlineError], a [*SizeError] for what is no
// number, or a [*MissError]: past the tips of the top edge, or sideways past half of the Width there is.
func (r Rocker) Stand(l Leg) (Standing, error) { return r.TopEdge().Stand(l) }

// A TopEdge is that of a rocker, worked out once for all that stands on it.
type TopEdge struct {
	Rocker
	top []Piece
	low float64 // its lowest place, m
	err error
}

// TopEdge returns the top edge of the rocker; where it has none, whatever stands on it is told so.
func (r Rocker) TopEdge() TopEdge {
	e, err := r.edges()
	if err != nil {
		return TopEdge{Rocker: r, err: err}
	}
	return TopEdge{r, e.top, pathOf(e.top, false).Bounds().Min.Y, nil}
}

// Stand returns how a leg comes down, as [Rocker.Stand] does.
func (r TopEdge) Stand(l Leg) (Standing, error) {
	if r.err != nil {
		return Standing{}, r.err
	}
	for _, size := range []float64{l.Seat.X, l.Seat.Y, l.Seat.Z, math.Tan(l.Rake), math.Tan(l.Splay)} {
		if !finite(size) {
			return Standing{}, &SizeError{"a place or an angle of a leg", size, "a number"}
		}
	}
	at, on, err := r.comesDown(l)
	if err != nil {
		return Standing{}, err
	}
	foot := r3.Vec{X: at.X, Y: at.Y, Z: l.Seat.Z + math.Tan(l.Splay)*(l.Seat.Y-at.Y)}
	if off := foot.Z - r.Middle; r.Width > 0 && math.Abs(off) > r.Width/2 {
		where := "outside"
		if off < 0 {
			where = "inside"
		}
		return Standing{}, &MissError{math.Abs(off) - r.Width/2, where}
	}
	part, _ := on.part(at)
	s := Standing{Foot: foot, Length: r3.Norm(r3.Sub(l.Seat, foot)),
		Resultant: Resultant(l.Rake, l.Splay), Sightline: Sightline(l.Rake, l.Splay),
		Slope: math.Remainder(on.heading(part)+math.Pi, 2*math.Pi), Radius: -on.Radius()}
	if on.straight() {
		s.Radius = math.Inf(1)
	}
	up := r3.Unit(r3.Vec{X: -math.Tan(l.Rake), Y: 1, Z: -math.Tan(l.Splay)}) // to the seat
	sin, cos := math.Sincos(s.Slope)
	along, square := up.X*cos+up.Y*sin, up.Y*cos-up.X*sin // the top edge
	s.Cut = math.Atan2(along, square)
	s.Angle = math.Pi/2 - s.Cut
	s.Across = math.Atan2(-up.Z, square)
	s.Tilt = math.Atan2(math.Hypot(along, up.Z), square)
	return s, nil
}

// comesDown returns where the leg's line in the side view, walked down from the seat, first
// meets the top edge from above, and on which piece of it.
func (r TopEdge) comesDown(l Leg) (at r2.Vec, on Piece, err error) {
	seat := r2.Vec{X: l.Seat.X, Y: l.Seat.Y}
	down := r2.Vec{X: math.Tan(l.Rake), Y: -1}
	drop := seat.Y - r.low
	if drop <= 0 { // nothing to walk down to
		return r2.Vec{}, Piece{}, l.missedBy(r.top)
	}
	line := Piece{seat, Stroke{To: r2.Add(seat, r2.Scale(drop+1, down))}}
	least := math.Inf(1)
	for _, s := range r.top {
		for _, m := range meet(s, line) {
			// the top edge is walked from the nose, the wood on its left: from above is from the right
			if m.second < least && r2.Cross(ahead(s.heading(m.first)), down) > 0 {
				least, at, on = m.second, s.At(m.first), s
			}
		}
	}
	if math.IsInf(least, 1) {
		return r2.Vec{}, Piece{}, l.missedBy(r.top)
	}
	return at, on, nil
}

// missedBy returns how far the leg's line in the side view passes a tip of the top edge, square
// to the line; between them it can only start below the edge.
func (l Leg) missedBy(top []Piece) error {
	cos := math.Cos(l.Rake)
	past := func(tip r2.Vec) float64 { // by how much the line is ahead of the tip
		return (l.Seat.X - tip.X + math.Tan(l.Rake)*(l.Seat.Y-tip.Y)) * cos
	}
	nose, tail := past(top[0].From), past(top[len(top)-1].To)
	switch {
	case nose > 0:
		return &MissError{nose, "ahead of the nose"}
	case tail < 0:
		return &MissError{-tail, "behind the tail"}
	}
	height := over(top, l.Seat.X, slices.Max).Y - l.Seat.Y
	return &MissError{math.Abs(height), "below the top edge"}
}
