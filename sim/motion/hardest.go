package motion

import "rockerwright/rocker/root"

// cells is how fine the grid is on which the hardest push is sought.
const cells = 32

// Hardest returns the least x, from above zero to most, at which goes is true: found in
// the first cell of a grid of 32 whose end goes, and halved there to a thousandth, for
// what survives x need not survive less, and no further than to a millionth of most, which is nothing. none
// reports that nothing on the grid goes.
func Hardest(goes func(x float64) bool, most float64) (least float64, none bool) {
	low := 0.0
	for i := 1; i <= cells; i++ {
		high := most * float64(i) / cells
		if !goes(high) {
			low = high
			continue
		}
		least, _ = root.Edge(goes, high, low, 1e-6*most, 1e-3)
		return least, false
	}
	return most, true
}
