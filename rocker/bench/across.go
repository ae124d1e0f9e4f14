package bench

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// turns returns the places x at which the height between an upper and a lower chain can be
// largest or least: the ends of the pieces, and where both run side by side. Of two circles
// that is where one upright line meets both with the same direction n to their centres,
//
//	(ca − cb)ₓ + (±Ra ∓ Rb)·nₓ = 0,
//
// of a line and a circle where the circle's n is square to the line.
func turns(upper, lower []Piece) []float64 {
	var places []float64
	for _, list := range [][]Piece{upper, lower} {
		for _, s := range list {
			places = append(places, s.From.X, s.To.X)
			if s.straight() {
				continue
			}
			box := pathOf([]Piece{s}, false).Bounds() // an arc that turns back
			places = append(places, box.Min.X, box.Max.X)
		}
	}
	for _, a := range upper {
		for _, b := range lower {
			places = append(places, alike(a, b)...)
		}
	}
	return places
}

// alike returns the x of every upright line on which a and b have one direction.
func alike(a, b Piece) []float64 {
	switch {
	case a.straight() && b.straight():
		return nil
	case a.straight():
		return alike(b, a)
	case b.straight():
		out := left(b.heading(0)).X * a.Radius()
		return []float64{a.centre().X - out, a.centre().X + out}
	}
	ca, cb := a.centre(), b.centre()
	ra, rb := math.Abs(a.Radius()), math.Abs(b.Radius())
	var places []float64
	for _, apart := range []float64{ra - rb, ra + rb} {
		n := (cb.X - ca.X) / apart
		if math.Abs(n) <= 1 { // not so where apart is zero
			places = append(places, ca.X+ra*n, ca.X-ra*n)
		}
	}
	return places
}

// Nest returns by how much (m, along Width) a second part is shifted against the first for both to lie spooned in
// one board, the same way round, with a saw cut (m, measured along the shift) between them: the largest height of
// the outline over itself across the grain, and the cut. Both take up Width + shift of the board.
func (b Blank) Nest(outline Path, kerf float64) (shift, width float64, err error) {
	if err := notBelow("a saw cut", kerf); err != nil {
		return 0, 0, err
	}
	list := outline.Turned(-b.Grain, r2.Vec{}).Pieces()
	shift = deepest(list, list) + kerf
	return shift, shift + b.Width, nil
}

// Runout returns the angles (rad, 0 to π/2) between the grain and the drawn floor edge at the
// nose tip and at the tail tip: what is left of the long grain where it runs out of the edge.
func (r Rocker) Runout(b Blank) (nose, tail float64, err error) {
	e, err := r.edges()
	if err != nil {
		return 0, 0, err
	}
	off := func(heading float64) float64 { return math.Abs(math.Remainder(heading-b.Grain, math.Pi)) }
	return off(e.floor[len(e.floor)-1].heading(1)), off(e.floor[0].heading(0)), nil
}

// Thinnest returns the length (m) of the shortest line across the grain from the lower edge of
// the wood to the top edge; the ends, where every line runs out to nothing, are not looked at.
// The error is an [*OutlineError], also where no line across the grain meets both edges.
func (r Rocker) Thinnest(b Blank) (float64, error) {
	e, err := r.edges()
	if err != nil {
		return 0, err
	}
	lay := func(list []Piece) []Piece { return pathOf(list, false).Turned(-b.Grain, r2.Vec{}).Pieces() }
	wood, top := lay(e.wood), lay(e.top)
	thinnest := math.Inf(1)
	for _, x := range turns(top, wood) {
		highs := heights(top, x)
		for _, low := range heights(wood, x) {
			for _, high := range highs {
				thinnest = min(thinnest, math.Abs(high-low))
			}
		}
	}
	if math.IsInf(thinnest, 1) {
		return 0, &OutlineError{-1, "no line across the grain meets both edges"}
	}
	return thinnest, nil
}

// A Half is one of a pair: its outline laid on the board, and the way the grain runs there.
type Half struct {
	Mark    string // "left" or "right", as the sitter has it
	Outline Path
	Grain   r2.Vec // a unit vector
}

// A Pair is a part and its mirror image, cut from one board so that their grain matches as in
// an open book: it runs upright, along the board, in both.
type Pair struct {
	Left, Right   Half
	Length, Width float64 // of the board that holds both, m
}

// Nested turns a closed outline, whose grain has the given heading (rad), so that the grain lies level, and lays
// its mirror image above it, as close as a saw cut (m, across the grain) allows. Of two hundred places along the
// grain it takes the one that needs the least board. The board's lower left corner is the origin. Both outlines run
// the way the given one does. The error is a [*SizeError].
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
	return Pair{Half{"left", left.Moved(off), r2.Vec{X: 1}}, Half{"right", right.Moved(r2.Add(off, r2.Vec{Y: up})), r2.Vec{X: -1}},
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
		tops[i], undersides[i] = highest(low, x), lowest(high, x)
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

// deepest returns how far the upper of two outlines must be raised to lie clear above the lower one everywhere, m.
func deepest(lower, upper []Piece) float64 {
	raise := 0.0
	for _, x := range turns(upper, lower) {
		raise = max(raise, highest(lower, x)-lowest(upper, x))
	}
	return raise
}

// highest and lowest return the last and the first height at which an upright line at x meets the pieces, m; where it
// meets none, minus and plus infinity.
func highest(list []Piece, x float64) float64 {
	return slices.Max(append(heights(list, x), math.Inf(-1)))
}

func lowest(list []Piece, x float64) float64 {
	return slices.Min(append(heights(list, x), math.Inf(1)))
}
