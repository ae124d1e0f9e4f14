package readings

import (
	"errors"
	"strings"
)

// A swap is readings as they may have been meant: the key that is told, in words what was swapped, and the readings so.
type swap struct {
	name, of string
	change   Readings
}

// swaps returns the readings that may have been written down the wrong way round, those with which, changed about, all
// the readings agree, in words, and the key of the first; "" where there is none.
func (r Readings) swaps() (names, first string) {
	level, raised := r, r
	level.Front, level.Rear = r.Rear, r.Front
	raised.FrontRaised, raised.RearRaised = r.RearRaised, r.FrontRaised
	both := level
	both.FrontRaised, both.RearRaised = r.RearRaised, r.FrontRaised
	var list []string
	for _, try := range append([]swap{
		{"front", "front and rear", level},
		{"front_raised", "front_raised and rear_raised", raised},
		{"front", "front and rear, and front_raised and rear_raised", both},
	}, r.turned()...) {
		if result, err := try.change.result(); err != nil || len(result.Doubts) > 0 {
			continue
		}
		if first == "" {
			first = try.name
		}
		list = append(list, try.of)
	}
	return strings.Join(list, ", or else "), first
}

// swapped returns the error of readings that contradict each other, with what may have been swapped.
func (r Readings) swapped(err error) error {
	var contradicts *ReadingError
	if !errors.As(err, &contradicts) {
		return err
	}
	names, first := r.swaps()
	if names == "" {
		return err
	}
	return wrong(first, "probably swapped: "+names+"; the other way round all the readings agree. As they stand: "+contradicts.Reason)
}

// turned returns the readings of a level as they may have been meant: tail and nose the other way round, or a sign.
func (r Readings) turned() []swap {
	rest, tail, nose := r.tiltings()
	var list []swap
	try := func(name, of string, change func(r *Readings)) {
		meant := r
		change(&meant)
		list = append(list, swap{name, of, meant})
	}
	flipTail := func(r *Readings) {
		r.BalancesOnTail, r.ReturnsFromTail = -r.BalancesOnTail, -r.ReturnsFromTail
	}
	flipNose := func(r *Readings) {
		r.BalancesOnNose, r.ReturnsFromNose = -r.BalancesOnNose, -r.ReturnsFromNose
	}
	flipRest := func(r *Readings) { r.SeatFallsEmpty = -r.SeatFallsEmpty }
	if tail != nil && nose != nil {
		try("balances_on_tail", "balances_on_tail and balances_on_nose", func(r *Readings) {
			r.BalancesOnTail, r.BalancesOnNose = r.BalancesOnNose, r.BalancesOnTail
			r.ReturnsFromTail, r.ReturnsFromNose = r.ReturnsFromNose, r.ReturnsFromTail
		})
	}
	if tail != nil {
		try("balances_on_tail", "the sign of balances_on_tail", flipTail)
	}
	if nose != nil {
		try("balances_on_nose", "the sign of balances_on_nose", flipNose)
	}
	if rest != nil {
		try("seat_falls_empty", "the sign of seat_falls_empty", flipRest)
	}
	if tail != nil && nose != nil && rest != nil {
		try("balances_on_tail", "the signs of all tilts", func(r *Readings) { flipTail(r); flipNose(r); flipRest(r) })
	}
	return list
}
