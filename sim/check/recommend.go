package check

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// restFall is how far a seat falls back with its owner at ease, rad: 5 degrees, the
// upright end of what is common practice for a relaxed seat (5 to 8).
const restFall = 5 * quantity.Deg

// beyond is what is added to a size where custom only asks for at least so much, m.
const beyond = 2 * quantity.In

// Recommended returns the design with its seat, arms and back sized to its first owner:
// each in the middle of what custom asks, at the rest with the owner at ease, and the
// seat set so far behind the low point that it falls back as a relaxed seat does. The
// sizes are rounded to what a tape is read to; the rockers stay. keys are the measures
// that were set. A design without an owner by sizes, or whose seat is not drawn, comes
// back as it was.
func Recommended(d piece.Design) (sized piece.Design, keys []string, err error) {
	sized = d.Clone()
	b, err := Balance(sized)
	if err != nil || len(b.Somebody) == 0 || b.Somebody[0].Role != piece.Owner || !sized.Seat.SlopeKnown() {
		return sized, nil, err
	}
	owner := b.Somebody[0]
	for range rounds {
		for _, f := range b.fit() {
			if f.Size == person.SittingHeight {
				continue
			}
			_, field, err := sized.Measure(f.Key)
			if err != nil {
				return d, nil, err
			}
			want := (f.Low + f.High) / 2
			if math.IsInf(f.High, 1) {
				want = f.Low + beyond
			}
			*field += want - f.Have
			if f.Key == "seat.front" {
				sized.Seat.Rear += want - f.Have
			}
		}
		if b, err = Balance(sized); err != nil {
			return d, nil, err
		}
		l := b.atEase(owner)
		if l == nil || !l.Upright() {
			break
		}
		if by := l.Balance.Steadiness; !math.IsNaN(by) { // about so far the seat is moved for a radian of rest
			sized.Seat.Behind += (restFall - l.SeatFall) * by
		}
		if b, err = Balance(sized); err != nil {
			return d, nil, err
		}
	}
	keys = []string{"seat.front", "seat.rear", "seat.depth", "seat.width", "seat.behind_low_point", "arms.height", "back.height"}
	step := quantity.In / 8
	if d.Units == quantity.Metric {
		step = 0.005
	}
	for _, key := range keys {
		if _, field, err := sized.Measure(key); err == nil {
			*field = quantity.Round(math.Round(*field/step)*step, quantity.Length, d.Units)
		}
	}
	return sized, keys, nil
}

// rounds is how often sizes and rest are set in turn. Each round leaves a few hundredths
// of the last error.
const rounds = 12
