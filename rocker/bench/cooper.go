package bench

import (
	"cmp"
	"math"
)

// A Coopered panel is a curve made of flat staves, hollow on one face, as a headrest or a seat.
type Coopered struct {
	Chord  float64 // across the hollow face as finished, from edge to edge, m
	Radius float64 // of the hollow face as finished, m
	Staves int
	Stock  float64 // the thickness of the staves before shaping, m
}

// A Stave is one of the like staves of a panel.
type Stave struct {
	Hollow, Round float64 // its width on the hollow face and on the round one, as sawn, m
	Bevel         float64 // of each edge from square, half of the turn of a stave, rad
	Thick         float64 // what shaping leaves, everywhere, m
}

// SagittaRadius returns the radius (m) of an arc that is rise deep over a chord, m: by the
// handbooks (c²/4 + h²)/2h. The error is a [*SizeError].
func SagittaRadius(chord, rise float64) (float64, error) {
	if err := cmp.Or(above("a chord", chord), above("a rise", rise)); err != nil {
		return 0, err
	}
	return (chord*chord/4 + rise*rise) / (2 * rise), nil
}

// Stave returns the stave. The panel turns by 2·asin(chord/2R), each of n staves by its n-th part α. The corners of
// the hollow side lie on the finished curve, so it is 2R·sin(α/2) wide; the flats are R·cos(α/2) from the centre,
// and the round side, a stock further out, is 2(R·cos(α/2) + stock)·tan(α/2) wide. Shaped round to touch the flats
// there, the panel is left
//
//	stock − R·(1 − cos(α/2))
//
// thick: in the middle of a stave the hollow's sagitta is gone from the stock; over a joint,
// where the stock stands stock/cos(α/2) high, the round face loses the rest. The error is a
// [*SizeError]: more than half a circle, or a stock that the hollow goes through.
func (c Coopered) Stave() (Stave, error) {
	if err := cmp.Or(above("a chord", c.Chord), above("a radius", c.Radius), above("a stock", c.Stock)); err != nil {
		return Stave{}, err
	}
	switch {
	case c.Staves < 1:
		return Stave{}, &SizeError{"a number of staves", float64(c.Staves), "1 or more"}
	case c.Chord > 2*c.Radius:
		return Stave{}, &SizeError{"a chord", c.Chord, "no more than two radii"}
	}
	half := math.Asin(c.Chord/2/c.Radius) / float64(c.Staves)
	flat := c.Radius * math.Cos(half)
	quarter := math.Sin(half / 2) // the hollow's sagitta is R·(1 − cos) = 2R·sin² of it
	s := Stave{
		Hollow: 2 * c.Radius * math.Sin(half), Round: 2 * (flat + c.Stock) * math.Tan(half), Bevel: half,
		Thick: c.Stock - 2*c.Radius*quarter*quarter,
	}
	if !(s.Thick > 0) {
		return Stave{}, &SizeError{"a stock", c.Stock, "more than the hollow is deep in a stave"}
	}
	return s, nil
}
