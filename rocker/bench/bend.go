package bench

import (
	"cmp"
	"math"
)

// inch is the trade's own step of thickness in the tables of this package, m.
const inch = 0.0254

// StripThickness returns the thickest strip (m) that bends to a radius (m) where the wood stands the given strain:
// its faces, t/2 from the middle, are longer and shorter by t/2R.
func StripThickness(radius, strain float64) float64 { return 2 * radius * strain }

// CommonStrip returns the strip that makers use for a radius, m, and whether there is one: common practice, 3/32 in
// for 2 to 4 in, 1/8 to 8 in, 3/16 to 12 in, 1/4 above; where two ranges meet, the thinner.
func CommonStrip(radius float64) (thickness float64, ok bool) {
	if !(radius >= 2*inch) {
		return 0, false
	}
	for _, row := range []struct{ to, thickness float64 }{{4, 3.0 / 32}, {8, 1.0 / 8}, {12, 3.0 / 16}} {
		if radius <= row.to*inch {
			return row.thickness * inch, true
		}
	}
	return inch / 4, true
}

// A Lamination is what a stack of strips shall be, all in m.
type Lamination struct {
	Depth    float64 // of the glued stack
	Thickest float64 // the thickest strip that bends
	Kerf     float64 // the saw cut between strips
	Planing  float64 // taken off each strip, both faces together
	Longest  float64 // the longest strip as finished; see Rocker.Bend
	Waste    float64 // added to each end of it
}

// A Stack is what a Lamination takes.
type Stack struct {
	Strips int
	Strip  float64 // the thickness of each as glued, m
	Stock  float64 // the thickness of the board they are all sawn from, m
	Length float64 // of the strips as sawn, m
}

// Stack returns the fewest like strips that make up the depth, and the wood for them: n strips
// with their planing and the n − 1 cuts between them. The error is a [*SizeError].
func (l Lamination) Stack() (Stack, error) {
	if err := cmp.Or(above("a depth", l.Depth), above("the thickest strip", l.Thickest), above("the longest strip", l.Longest),
		notBelow("a saw cut", l.Kerf), notBelow("planing", l.Planing), notBelow("waste", l.Waste)); err != nil {
		return Stack{}, err
	}
	n := math.Ceil(l.Depth / l.Thickest * (1 - 1e-12)) // a depth of five strips is five strips, rounded or not
	if n > 1000 {
		return Stack{}, &SizeError{"the thickest strip", l.Thickest, "a thousandth of the depth or more"}
	}
	strip := l.Depth / n
	return Stack{int(n), strip, n*(strip+l.Planing) + (n-1)*l.Kerf, l.Longest + 2*l.Waste}, nil
}

// Bend returns what a stack for this rocker must do: the length of the longer edge of the wood and the smallest
// radius of either, m, infinite of a line. The error is an [*OutlineError]; no stack bends over a corner.
func (r Rocker) Bend() (longest, tightest float64, err error) {
	e, err := r.edges()
	if err != nil {
		return 0, 0, err
	}
	tightest = math.Inf(1)
	for _, s := range r.spans() {
		if s.Turn != 0 {
			return 0, 0, &OutlineError{s.index, "strips do not bend over a corner"}
		}
	}
	for _, list := range [][]Piece{e.wood, e.top} {
		longest = max(longest, pathOf(list, false).Length())
		for _, s := range list {
			if !s.straight() {
				tightest = min(tightest, math.Abs(s.Radius()))
			}
		}
	}
	return longest, tightest, nil
}

// Springback returns the part of its bend that a stack of n like strips loses when it comes
// off the form, glued without creep: 1/n².
//
// Derived here. A strip b wide and t thick has the second moment I = b·t³/12. On the form n strips are bent freely to
// the curvature κ, each under E·I·κ, together n·E·I·κ. Glued, they are one bar of b·(n·t)³/12 = n³·I. Off the form
// nothing holds their moment, so the bar bends back by n·E·I·κ/(E·n³·I) = κ/n². All strips are taken at one
// curvature, that of the middle of the stack. Common practice says the same. Zero strips lose all of it.
func Springback(strips int) float64 {
	if strips < 1 {
		return 1
	}
	return 1 / float64(strips*strips)
}

// A Form holds the radii that go with one bend, m, by name, for they are easily taken for one another.
type Form struct {
	FloorEdge   float64 // the finished floor edge, under the sole
	ConvexForm  float64 // a form inside the curve: it touches the top edge
	ConcaveForm float64 // a form outside the curve: it touches the lower edge of the wood
}

// FormFor returns the forms for an arc whose floor edge shall end up with the given radius, of wood of a thickness
// (along the depth) over a sole, all m. lost is the part of its bend that the wood loses off the form, 0 to below
// 1: [Springback] of a glued stack; of steam-bent wood what the maker has seen (commonly 6 to 10 %).
//
//	middle on the form = (floor edge − sole − thickness/2)·(1 − lost)
//
// and the faces lie half the thickness either way. The error is a [*SizeError], also where
// the convex form would have no radius.
func FormFor(floorEdge, thickness, sole, lost float64) (Form, error) {
	if err := cmp.Or(above("a floor edge radius", floorEdge), above("a thickness", thickness), notBelow("a sole", sole)); err != nil {
		return Form{}, err
	}
	if !(lost >= 0 && lost < 1) {
		return Form{}, &SizeError{"the bend lost", lost, "0 or more and less than 1"}
	}
	middle := (floorEdge - sole - thickness/2) * (1 - lost)
	f := Form{floorEdge, middle - thickness/2, middle + thickness/2}
	return f, above("a convex form radius", f.ConvexForm)
}
