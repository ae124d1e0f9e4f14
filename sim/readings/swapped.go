package readings

import (
	"errors"
	"strings"
)

// swaps returns the pairs of scales that may have been written down the wrong way round,
// those with which, changed about, all the readings agree, in words, and the key of the
// first; "" where there is none.
func (r Readings) swaps() (names, first string) {
	level, raised := r, r
	level.Front, level.Rear = r.Rear, r.Front
	raised.FrontRaised, raised.RearRaised = r.RearRaised, r.FrontRaised
	both := level
	both.FrontRaised, both.RearRaised = r.RearRaised, r.FrontRaised
	var list []string
	for _, try := range []struct {
		name, of string
		change   Readings
	}{
		{"front", "front and rear", level},
		{"front_raised", "front_raised and rear_raised", raised},
		{"front", "front and rear, and front_raised and rear_raised", both},
	} {
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

// swapped returns the error of readings that contradict each other, and names what may
// have been swapped.
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
