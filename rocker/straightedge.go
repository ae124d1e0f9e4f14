package rocker

import (
	"fmt"
	"math"
)

// Rises are readings of a straightedge under a rocker that stands with its low point on
// it: how far the floor edge rises from it at stations, even or anywhere.
type Rises struct {
	Spacing float64   // between even stations along the straightedge, m
	Ahead   []float64 // where stations that are not even lie, falling from the nose to the tail, m; nil for even ones
	Low     int       // index of the station nearest the low point
	Rise    []float64 // at each station from the nose to the tail, m
	Error   float64   // standard deviation of one reading, m; zero means ReadingError
}

// ReadingError is how surely a rise is read where a maker does not say, one standard
// deviation, m; our judgement, about half of 1/32 in.
const ReadingError = 0.0004

// fewest is how many stations tell a curve from a misreading.
const fewest = 5

// A RisesError reports rises that make no rocker.
type RisesError struct {
	Station int // counts from 0; −1 where it is not one station
	Reason  string
}

func (e *RisesError) Error() string {
	if e.Station < 0 {
		return "rocker: rises: " + e.Reason
	}
	return fmt.Sprintf("rocker: rise at station %d: %s", e.Station+1, e.Reason)
}

// error returns the standard deviation of one reading, m.
func (r Rises) deviation() float64 {
	if r.Error == 0 {
		return ReadingError
	}
	return r.Error
}

// at returns how far ahead of the low point's station the i-th lies, m.
func (r Rises) at(i int) float64 {
	if r.Ahead != nil {
		return r.Ahead[i] - r.Ahead[r.Low]
	}
	return float64(r.Low-i) * r.Spacing
}

// apart returns the spacing of the stations, m; of uneven ones the mean.
func (r Rises) apart() float64 {
	if n := len(r.Ahead); n > 1 {
		return (r.Ahead[0] - r.Ahead[n-1]) / float64(n-1)
	}
	return r.Spacing
}

// check returns what no rises can be.
func (r Rises) check() error {
	switch {
	case len(r.Rise) < fewest:
		return &RisesError{-1, fmt.Sprintf("%d stations are too few; read five or more", len(r.Rise))}
	case r.Ahead != nil && len(r.Ahead) != len(r.Rise):
		return &RisesError{-1, "there are as many stations as rises"}
	case !(r.apart() > 0) || math.IsInf(r.apart(), 1):
		return &RisesError{-1, "the spacing of the stations is more than 0"}
	case !(r.Error >= 0) || math.IsInf(r.Error, 1):
		return &RisesError{-1, "the error of one reading is 0 (the usual one) or more"}
	case r.Low < 1 || r.Low > len(r.Rise)-2:
		return &RisesError{-1, "the low point lies between the ends, with a station on either side"}
	}
	for i, y := range r.Rise {
		if math.IsNaN(y) || math.Abs(y) > r.apart()*float64(len(r.Rise)) {
			return &RisesError{i, fmt.Sprintf("%g m is no rise of this rocker", y)}
		}
		if i > 0 && !(r.at(i) < r.at(i-1)) {
			return &RisesError{i, "the stations go from the nose to the tail, each behind the one before"}
		}
	}
	return nil
}

// LowStation returns the index of the least rise, where a maker does not say which
// station is the low point.
func LowStation(rise []float64) int {
	low := 0
	for i, y := range rise {
		if y < rise[low] {
			low = i
		}
	}
	return low
}
