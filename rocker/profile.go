package rocker

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Profile is the floor edge of a rocker. Build it with [Chain] or [Single]. It is a value: copies share nothing
// that can change. The zero Profile has no Bearings and no Length; a method that asks for a place on it panics.
type Profile struct {
	edge     []edgeSpan // as drawn, nose to tail
	bearings []Bearing  // the convex hull, in order of tilt, covering one whole turn
}

// Bearings returns how many arcs the edge can stand on, the two tips among them.
func (p Profile) Bearings() int { return len(p.bearings) }

// Bearing returns the i-th of them, in order of tilt: 0 is the nose tip, the last
// the tail tip. The caller must not change it.
func (p Profile) Bearing(i int) *Bearing { return &p.bearings[i] }

// Find returns the index of the Bearing on which the edge stands at the given tilt (rad, any), and the tilt brought
// within one turn of it. Where a flat lies on the floor it is the Bearing on its tail side.
func (p Profile) Find(tilt float64) (index int, within float64) {
	first := p.edged()[0].From
	if tilt < first || tilt >= first+2*math.Pi {
		tilt -= 2 * math.Pi * math.Floor((tilt-first)/(2*math.Pi))
	}
	for index < len(p.bearings)-1 && tilt >= p.bearings[index].To {
		index++
	}
	return index, tilt
}

// edged returns the bearings, of which the zero Profile has none.
func (p Profile) edged() []Bearing {
	if len(p.bearings) == 0 {
		panic("rocker: the zero Profile has no edge: build one with Chain or Single")
	}
	return p.bearings
}

// Support returns the support function h (m) and its first two derivatives by the
// tilt (rad, any, also past both tips). On a flat h′ is that of its tail side.
func (p Profile) Support(tilt float64) (h, dh, ddh float64) {
	i, within := p.Find(tilt)
	return p.bearings[i].Support(within)
}

// Contact returns the point of the edge that touches the floor at the given tilt
// (rad, any), chair frame, m. On a flat it is the tail end.
func (p Profile) Contact(tilt float64) r2.Vec {
	i, within := p.Find(tilt)
	return p.bearings[i].Contact(within)
}

// Height returns the height of a point g (chair frame, m) over the floor at the
// given tilt (rad), measured square to the floor; below zero is under it.
func (p Profile) Height(g r2.Vec, tilt float64) float64 {
	i, within := p.Find(tilt)
	height, _, _ := p.bearings[i].Above(g, within)
	return height
}

// Nose returns the nose tip, chair frame, m.
func (p Profile) Nose() r2.Vec { return p.edged()[0].At }

// Tail returns the tail tip, chair frame, m.
func (p Profile) Tail() r2.Vec { return p.edged()[len(p.bearings)-1].At }

// Length returns the length along the drawn edge from tip to tip, m.
func (p Profile) Length() float64 {
	var length float64
	for i := range p.edge {
		length += p.edge[i].Length
	}
	return length
}

// Outline returns points along the drawn edge from nose tip to tail tip, chair
// frame, m, hollows included, so close that the chord between two of them leaves
// the curve by no more than within, m. It panics where that is not above zero.
func (p Profile) Outline(within float64) []r2.Vec {
	if !(within > 0) {
		panic(fmt.Sprintf("rocker: an outline leaves the curve by more than 0 m; %g is not", within))
	}
	points := []r2.Vec{p.Nose()}
	for i := range p.edge {
		e := &p.edge[i]
		if e.Length == 0 {
			continue
		}
		steps := 1
		if e.Radius != 0 { // the rise of a chord is L²/8R
			steps = 1 + int(e.Length/math.Sqrt(8*math.Abs(e.Radius)*within))
		}
		for k := 1; k <= steps; k++ {
			points = append(points, e.point(e.Length*float64(k)/float64(steps)))
		}
	}
	return points
}

// Perimeter returns the length once round the hull: every arc, flat and bridge the
// piece can roll over, and the chord from tip to tip, m.
func (p Profile) Perimeter() float64 {
	first, last := &p.edged()[0], &p.bearings[len(p.bearings)-1]
	return last.RolledAt(last.To) + last.Flat - first.RolledAt(first.From)
}

// Rise returns the height over the x axis of the drawn edge at a place along it (m),
// level with the nearer tip beyond the two, m.
func (p Profile) Rise(x float64) float64 {
	for i := range p.edge {
		e := &p.edge[i]
		from, to := e.start, e.point(e.Length)
		if e.Length == 0 || x > from.X || x < to.X {
			continue
		}
		if e.Radius == 0 {
			return from.Y + (to.Y-from.Y)*(x-from.X)/(to.X-from.X)
		}
		down, _ := Down(e.from)
		centre := r2.Sub(from, r2.Scale(e.Radius, down))
		sine := (centre.X - x) / e.Radius
		return centre.Y - e.Radius*math.Sqrt(max(0, 1-sine*sine))
	}
	if x > 0 {
		return p.Nose().Y
	}
	return p.Tail().Y
}

// At returns the point of the drawn edge at a length (m) along it from the origin, above zero
// towards the nose, and whether the edge reaches so far; else the tip.
func (p Profile) At(along float64) (r2.Vec, bool) {
	walked := p.noseLength() - along // from the nose tip
	if walked < 0 {
		return p.Nose(), false
	}
	for i := range p.edge {
		e := &p.edge[i]
		if walked <= e.Length {
			return e.point(walked), true
		}
		walked -= e.Length
	}
	return p.Tail(), walked <= rounding*p.Length()
}

// Reach returns the lengths along the edge from the origin to the nose tip and to the tail tip, m.
func (p Profile) Reach() (nose, tail float64) {
	nose = p.noseLength()
	return nose, p.Length() - nose
}

// noseLength returns the length along the edge from the origin to the nose tip, m.
func (p Profile) noseLength() float64 {
	length := 0.0
	for i := range p.edge {
		if e := &p.edge[i]; e.start == (r2.Vec{}) && e.at == e.start {
			break
		}
		length += p.edge[i].Length
	}
	return length
}
