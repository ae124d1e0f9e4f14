package rocker

import "gonum.org/v1/gonum/spatial/r2"

// At returns the point of the drawn edge a way (m) along it from the origin, above zero
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

// Reach returns the lengths along the edge from the origin to the nose tip and to the tail
// tip, m.
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
