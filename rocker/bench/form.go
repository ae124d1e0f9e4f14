package bench

import "cmp"

// A Form holds the radii that go with one bend, m, each by its name, for they are easily
// taken for one another.
type Form struct {
	FloorEdge   float64 // the finished floor edge, under the sole
	Middle      float64 // the middle of the wood while it lies on the form
	ConvexForm  float64 // a form inside the curve: it touches the top edge
	ConcaveForm float64 // a form outside the curve: it touches the lower edge of the wood
}

// FormFor returns the forms for an arc whose floor edge shall end up with the given radius,
// of wood of the given thickness (along the depth) over a sole, all m. lost is the part of
// its bend that the wood loses off the form, 0 to below 1: [Springback] of a glued stack; of
// steam-bent wood what the maker has seen (6 to 10 % is common practice).
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
	f := Form{floorEdge, middle, middle - thickness/2, middle + thickness/2}
	if err := above("a convex form radius", f.ConvexForm); err != nil {
		return Form{}, err
	}
	return f, nil
}
