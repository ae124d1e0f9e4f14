// Package rises finds the fewest arcs through measured or photographed points of a floor edge, and how surely.
package rises

import (
	"cmp"
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// A Row of readings of a straightedge under a rocker that stands with its low point on it
// says how far the floor edge rises from it at stations, even or anywhere.
type Row struct {
	Spacing float64   // between even stations along the straightedge, m
	Ahead   []float64 // where stations that are not even lie, falling from the nose to the tail, m; nil for even ones
	Low     int       // index of the station nearest the low point
	Rise    []float64 // at each station from the nose to the tail, m
	Error   float64   // standard deviation of one reading, m; zero means UsualError
}

// UsualError is how surely a rise is read where a maker does not say, one standard
// deviation, m; our judgement, about half of 1/32 in.
const UsualError = 0.0004

// fewest is how many stations tell a curve from a misreading.
const fewest = 5

// An Error reports rises that make no rocker.
type Error struct {
	Station int // counts from 0; −1 where it is not one station
	Reason  string
}

func (e *Error) Error() string {
	if e.Station < 0 {
		return "rises: " + e.Reason
	}
	return fmt.Sprintf("rises: station %d: %s", e.Station+1, e.Reason)
}

// deviation returns the standard deviation of one reading, m.
func (r Row) deviation() float64 { return cmp.Or(r.Error, UsualError) }

// at returns how far ahead of the low point's station the i-th lies, m.
func (r Row) at(i int) float64 {
	if r.Ahead != nil {
		return r.Ahead[i] - r.Ahead[r.Low]
	}
	return float64(r.Low-i) * r.Spacing
}

// apart returns the spacing of the stations, m; of uneven ones the mean.
func (r Row) apart() float64 {
	if n := len(r.Ahead); n > 1 {
		return (r.Ahead[0] - r.Ahead[n-1]) / float64(n-1)
	}
	return r.Spacing
}

// except returns the stations without one, all of them for −1.
func (r Row) except(without int) []int {
	var stations []int
	for i := range r.Rise {
		if i != without {
			stations = append(stations, i)
		}
	}
	return stations
}

// check returns what no rises can be.
func (r Row) check() error {
	switch {
	case len(r.Rise) < fewest:
		return &Error{-1, fmt.Sprintf("%d stations are too few; read five or more", len(r.Rise))}
	case r.Ahead != nil && len(r.Ahead) != len(r.Rise):
		return &Error{-1, "there are as many stations as rises"}
	case !(r.apart() > 0) || math.IsInf(r.apart(), 1):
		return &Error{-1, "the spacing of the stations is more than 0"}
	case !(r.Error >= 0) || math.IsInf(r.Error, 1):
		return &Error{-1, "the error of one reading is 0 (the usual one) or more"}
	case r.Low < 1 || r.Low > len(r.Rise)-2:
		return &Error{-1, "the low point lies between the ends, with a station on either side"}
	}
	for i, y := range r.Rise {
		if math.IsNaN(y) || math.Abs(y) > r.apart()*float64(len(r.Rise)) {
			return &Error{i, fmt.Sprintf("%g m is no rise of this rocker", y)}
		}
		if i > 0 && !(r.at(i) < r.at(i-1)) {
			return &Error{i, "the stations go from the nose to the tail, each behind the one before"}
		}
	}
	return nil
}

// Compare compares the rises of two rockers, station by station, without the difference of a straightedge off or
// aslant. largest (m, + where left is higher) is the largest difference left, at its station; one reports that
// reading error explains them, 95 times in 100, their squares and the largest. The error is a [*Error].
func Compare(left, right Row) (largest float64, station int, one bool, err error) {
	if err := cmp.Or(left.check(), right.check()); err != nil {
		return 0, 0, false, err
	}
	if len(left.Rise) != len(right.Rise) || left.Spacing != right.Spacing || left.Low != right.Low {
		return 0, 0, false, &Error{-1, "left and right have the same stations"}
	}
	n := len(left.Rise)
	x, apart := make([]float64, n), make([]float64, n)
	for i := range x {
		x[i], apart[i] = left.at(i), left.Rise[i]-right.Rise[i]
	}
	offset, slope := stat.LinearRegression(x, apart, nil, false)
	squares := 0.0
	for i, y := range apart {
		d := y - offset - slope*x[i]
		squares += d * d
		if math.Abs(d) > math.Abs(largest) {
			largest, station = d, i
		}
	}
	variance := left.deviation()*left.deviation() + right.deviation()*right.deviation()
	each := 1 - 0.025/float64(2*n) // all stations, both signs
	one = squares/variance <= chiSquared(n-2, 0.975) &&
		math.Abs(largest) <= math.Sqrt(variance)*distuv.UnitNormal.Quantile(each)
	return largest, station, one, nil
}
