package piece

import (
	"cmp"

	"rockerwright/sim/quantity"
)

// A Target is what sizing aims for. What is zero is not asked; of the tilts, which may well
// be zero, only what is wished.
type Target struct {
	OneRock   float64 // time of a small rock there and back, the owner at ease, s
	SeatFalls Wish    // of the seat from level, the owner at ease, + back
	BackLeans Wish    // of the back from plumb, the owner at ease, instead of SeatFalls
	Empty     Wish    // fall of the seat with nobody in it

	BackMargin float64 // to keep before going back, of every load that is asked it
	BackLift   float64 // the same, of the weight

	Longest        float64 // of the rocker, tip to tip
	StockWidth     float64 // of the board a rocker is sawn from
	StockLength    float64
	SmallestRadius float64 // to which the strips bend
	LargestTilt    float64 // of a cradle: that at which it stands on its tips
	Arcs           float64 // how many arcs the maker swings; zero: as few as will do
}

// A Wish is a number that may be zero and still be asked for.
type Wish struct {
	Asked bool
	Value float64
}

// Asks reports whether anything is aimed for.
func (t Target) Asks() bool { return t != (Target{}) }

// A Shop says what can be held in it, 95 times in 100, ±. Zero is the usual tolerance of a measure.
type Shop struct {
	Length, Radius float64
	Angle          float64
	Weight         float64 // of a weighed or guessed piece

	// What a layout takes. Zero is the usual value of [Shop.Usual].
	Paper      string  // on which patterns are printed
	Spacing    float64 // of stations
	Cutter     float64 // diameter of the router bit on trammel or machine
	Web        float64 // of wood between a cutter's path and the next outline
	Strip      float64 // thickness of the strips; zero: as thick as bends
	Kerf       float64 // of a saw cut
	Planing    float64 // taken off a strip or a board, both faces together
	EndWaste   float64 // added to each end of a rough part
	StockThick float64 // of the board
	StockWidth float64
	Springback float64 // part of its bend that steam-bent wood loses
}

// Usual returns the shop with what is not said about a layout filled in, in round sizes of the units; common
// practice, springback in the middle of the 6 to 10 % that makers report; the web our judgement.
func (s Shop) Usual(units quantity.System) Shop {
	usual := Shop{Spacing: 2 * quantity.In, Cutter: quantity.In / 2, Web: quantity.In / 8, Kerf: quantity.In / 8,
		Planing: quantity.In / 16, EndWaste: 2 * quantity.In}
	if units == quantity.Metric {
		usual = Shop{Spacing: 0.050, Cutter: 0.012, Web: 0.003, Kerf: 0.003, Planing: 0.0015, EndWaste: 0.050}
	}
	s.Spacing, s.Cutter = cmp.Or(s.Spacing, usual.Spacing), cmp.Or(s.Cutter, usual.Cutter)
	s.Web, s.Kerf = cmp.Or(s.Web, usual.Web), cmp.Or(s.Kerf, usual.Kerf)
	s.Planing, s.EndWaste = cmp.Or(s.Planing, usual.Planing), cmp.Or(s.EndWaste, usual.EndWaste)
	s.Springback = cmp.Or(s.Springback, 0.08)
	return s
}

// What a shop usually holds, as the table of measures has it, ± SI; a shop's own word takes their place.
const (
	lengthTolerance = quantity.In / 16
	radiusTolerance = quantity.In / 4
	angleTolerance  = quantity.Deg / 2
	weightTolerance = 2 * quantity.Lb
)

// Tolerance returns what a measure is held to, 95 times in 100, ± SI; zero where no shop makes it.
func (d Design) Tolerance(m Measure) float64 {
	for _, s := range []struct{ own, usual float64 }{
		{d.Shop.Length, lengthTolerance}, {d.Shop.Radius, radiusTolerance},
		{d.Shop.Angle, angleTolerance}, {d.Shop.Weight, weightTolerance},
	} {
		if s.own > 0 && m.Tolerance == s.usual {
			return s.own
		}
	}
	return m.Tolerance
}
