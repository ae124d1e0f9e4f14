package size

import (
	"math"
	"testing"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// atEase is a chair for somebody by sizes, who sits at ease with the feet on the floor.
func atEase(stature, mass float64) piece.Design {
	d := piece.Design{
		Rocker: piece.Rocker{Radius: 42 * quantity.In, Nose: 17 * quantity.In, Tail: 24 * quantity.In},
		Seat: piece.Seat{Front: 16.5 * quantity.In, Rear: 15.875 * quantity.In, Depth: 18 * quantity.In, Width: 20 * quantity.In,
			Behind: 9 * quantity.In},
		Back:   piece.Back{Recline: 15 * quantity.Deg, Height: 28 * quantity.In},
		Arms:   piece.Arms{Height: 8 * quantity.In},
		Piece:  piece.Piece{Mass: 26 * quantity.Lb},
		Limits: piece.Design{}.UsualLimits(),
	}
	given := person.Given{}
	given.Sizes[person.Stature] = stature
	d.Sitters = []piece.Sitter{{Name: "owner", Mass: mass, Person: given}}
	return d
}

// TestLeanFromAStep holds that a lean is found whether the piece as it is drawn rests on a step of the feet or off it,
// and whether the lean that is wished lies on one: of a grid of leans and of several people each that some place of the
// low point has, by looking at places an eighth of an inch apart for the two between which the rest passes it.
func TestLeanFromAStep(t *testing.T) {
	onStep, found := 0, 0
	for _, who := range [][2]float64{{1.55, 55}, {1.78, 82}, {1.78, 130}, {1.95, 90}} {
		rests := map[float64]float64{} // the fall at each place
		for behind := 2.0; behind <= 14; behind += 1. / 8 {
			d := atEase(who[0], who[1])
			d.Seat.Behind = behind * quantity.In
			b, err := check.Balance(d)
			if err != nil {
				t.Fatal(err)
			}
			rests[behind] = b.Seated().SeatFall
		}
		for _, drawn := range []float64{3, 6.5, 9} {
			for fall := 1.0; fall <= 16; fall++ {
				between := false
				for behind := 2.0; behind < 14; behind += 1. / 8 {
					between = between || rests[behind] <= fall*quantity.Deg && rests[behind+1./8] >= fall*quantity.Deg
				}
				d := atEase(who[0], who[1])
				d.Seat.Behind = drawn * quantity.In
				d.Target = piece.Target{SeatFalls: piece.Wish{Asked: true, Value: fall * quantity.Deg}}
				q, err := ask(d)
				if err != nil {
					t.Fatal(err)
				}
				if q.drawn.Seated().Feet[0].Stage == body.HeelLifting {
					onStep++
				}
				r, ok := q.answer(q.leaned(q.start))
				if !between {
					continue
				}
				found++
				if got := r.Seated().SeatFall; !ok || math.Abs(got-fall*quantity.Deg) > 1e-6 {
					t.Errorf("%v, drawn with %v in behind the low point: the seat falls %.4f, want %v",
						who, drawn, got/quantity.Deg, fall)
				}
			}
		}
	}
	if onStep < 10 || found < 100 {
		t.Errorf("%d leans, %d of pieces that rest on a step", found, onStep)
	}
}
