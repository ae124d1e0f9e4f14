package piece

// A Target is what sizing aims for. What is zero is not asked; of the tilts, which may well
// be zero, only what is wished.
type Target struct {
	OneRock   float64 // time of a small rock there and back, the owner sitting, s
	SeatFalls Wish    // of the seat from level, the owner sitting, + back
	BackLeans Wish    // of the back from plumb, the owner sitting, instead of SeatFalls
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

// Want returns the wish for a value.
func Want(value float64) Wish { return Wish{Asked: true, Value: value} }

// Asks reports whether anything is aimed for.
func (t Target) Asks() bool { return t != (Target{}) }

// A Shop says what can be held in it, 95 times in 100, ±. Zero is the usual tolerance of
// each measure.
type Shop struct {
	Length, Radius float64
	Angle          float64
	Weight         float64 // of a weighed or guessed piece
}

// Tolerance returns what a measure of the design is held to, 95 times in 100, ± SI; zero
// where it is not made in a shop.
func (d Design) Tolerance(m Measure) float64 {
	for _, s := range []struct{ own, usual float64 }{
		{d.Shop.Length, lengthTolerance}, {d.Shop.Radius, radiusTolerance}, {d.Shop.Angle, angleTolerance}, {d.Shop.Weight, weightTolerance},
	} {
		if s.own > 0 && m.Tolerance == s.usual {
			return s.own
		}
	}
	return m.Tolerance
}
