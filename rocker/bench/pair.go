package bench

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Part is one of a pair: its outline laid on the board, and the way the grain runs there.
type Part struct {
	Mark    string // "left" or "right", as the sitter has it
	Outline Path
	Grain   r2.Vec // a unit vector
}

// A Pair is a part and its mirror image, cut from one board so that their grain matches as in
// an open book: it runs upright, along the board, in both.
type Pair struct {
	Left, Right   Part
	Length, Width float64 // of the board that holds both, m
}

// Nested turns a closed outline, of which the grain has the given heading (rad), so that the
// grain lies level, and lays its mirror image above it, spooned as closely as a saw cut (m)
// between them, measured across the grain, allows. Of the places along the grain it takes the one that
// needs the least board, of those tried: two hundred. The board's lower left corner is the
// origin. Both outlines run the way the given one does. The error is a [*SizeError].
func Nested(outline Path, grain, kerf float64) (Pair, error) {
	if err := notBelow("a saw cut", kerf); err != nil {
		return Pair{}, err
	}
	left := outline.Turned(-grain, r2.Vec{})
	left = left.Moved(r2.Scale(-1, left.Bounds().Min))
	size := left.Bounds().Max
	mirror := left.Mirrored(size.X / 2).Reversed()
	along := bestAlong(left, mirror, size, kerf)
	right := mirror.Moved(r2.Vec{X: along})
	up := kerf + deepest(left.Pieces(), right.Pieces())
	off := r2.Vec{X: max(0, -along)}
	return Pair{Part{"left", left.Moved(off), r2.Vec{X: 1}}, Part{"right", right.Moved(r2.Add(off, r2.Vec{Y: up})), r2.Vec{X: -1}},
		size.X + math.Abs(along), size.Y + up}, nil
}

// bestAlong returns by how much the upper of two outlines of one size is shifted along for the
// least board, by their heights at so many places.
func bestAlong(lower, upper Path, size r2.Vec, kerf float64) float64 {
	const places = 200
	var tops, undersides [places + 1]float64
	low, high := lower.Pieces(), upper.Pieces()
	for i := range tops {
		x := size.X * float64(i) / places
		tops[i], undersides[i] = math.Inf(-1), math.Inf(1)
		if list := upright(low, x); len(list) > 0 {
			tops[i] = slices.Max(list)
		}
		if list := upright(high, x); len(list) > 0 {
			undersides[i] = slices.Min(list)
		}
	}
	best, least := 0.0, math.Inf(1)
	for k := range places + 1 {
		shift := (k + 1) / 2 * (1 - k%2*2) // 0, −1, 1, −2, …: of like ones the nearest to none
		up := 0.0
		for i := max(0, -shift); i <= min(places, places-shift); i++ {
			up = max(up, tops[i+shift]-undersides[i])
		}
		along := size.X * float64(shift) / places
		if area := (size.X + math.Abs(along)) * (size.Y + up + kerf); area < least*(1-1e-6) {
			best, least = along, area
		}
	}
	return best
}

// deepest returns how far the upper of two outlines must be raised, over where it is, to lie
// clear above the lower one everywhere, m.
func deepest(lower, upper []Piece) float64 {
	raise := math.Inf(-1)
	for _, x := range turns(upper, lower) {
		over, under := upright(upper, x), upright(lower, x)
		if len(over) == 0 || len(under) == 0 {
			continue
		}
		raise = max(raise, slices.Max(under)-slices.Min(over))
	}
	return max(raise, 0)
}
