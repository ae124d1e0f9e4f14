package rises

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// Agree compares the rises of two rockers, station by station, once the difference that
// a straightedge off or aslant makes is taken out. largest (m, above zero where left is
// higher) is the largest difference left, at its station; one reports that reading error
// explains them, 95 times in 100: neither their squares nor the largest alone says
// otherwise. The error is a [*Error].
func Agree(left, right Row) (largest float64, station int, one bool, err error) {
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
