package size

import "rockerwright/rocker/root"

// zero returns where a function passes from above zero to below between low and high, both
// more than zero, nearest to start: it looks outwards from there by steps of 4 %. Not a number
// counts as above zero. found is false where it never passes.
func zero(f func(x float64) float64, start, low, high float64) (x float64, found bool) {
	const step = 1.04
	above := func(x float64) bool { return !(f(x) <= 0) }
	a, b := start, start
	if above(start) {
		for outside := false; !outside; outside = !above(b) {
			if a, b = b, b*step; a >= high {
				return 0, false
			}
		}
	} else {
		for outside := false; !outside; outside = above(a) {
			if a, b = a/step, a; b <= low {
				return 0, false
			}
		}
	}
	return root.Between(f, a, b, 0), true
}
