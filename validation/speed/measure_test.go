package speed

import (
	"slices"
	"time"
)

// A work is what is timed: by hand for the one case, and as this project does it.
type work struct {
	name        string
	floor, ours func() error
}

// rounds is of how many the median is taken.
const rounds = 21

// measure returns the medians of both in s, taken in turn, so that a machine that slows down
// slows both.
func (w work) measure() (floor, ours float64, err error) {
	floors, all := make([]float64, rounds), make([]float64, rounds)
	many := [2]int{}
	for i, do := range []func() error{w.floor, w.ours} {
		if many[i], err = repeats(do); err != nil {
			return 0, 0, err
		}
	}
	for i := range rounds {
		if floors[i], err = clock(w.floor, many[0]); err != nil {
			return 0, 0, err
		}
		if all[i], err = clock(w.ours, many[1]); err != nil {
			return 0, 0, err
		}
	}
	return median(floors), median(all), nil
}

// repeats returns how often something is to be done so that it takes a millisecond, which
// a clock tells well.
func repeats(do func() error) (int, error) {
	for n := 1; ; n *= 2 {
		each, err := clock(do, n)
		if err != nil || each*float64(n) > 1e-3 {
			return n, err
		}
	}
}

// clock does something n times and returns the time of one, s.
func clock(do func() error, n int) (float64, error) {
	start := time.Now()
	for range n {
		if err := do(); err != nil {
			return 0, err
		}
	}
	return time.Since(start).Seconds() / float64(n), nil
}

func median(x []float64) float64 {
	slices.Sort(x)
	return x[len(x)/2]
}
