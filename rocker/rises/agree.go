package rises

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Agree compares the rises of two rockers, station by station, once the difference that
// a straightedge off or aslant makes is taken out. largest (m, above zero where left is
// higher) is the largest difference left, at its station; one reports that reading error
// explains them, 95 times in 100: neither their squares nor the largest alone says
// otherwise. The error is a [*Error].
func Agree(left, right Row) (largest float64, station int, one bool, err error) {
	if err := left.check(); err != nil {
		return 0, 0, false, err
	}
	if err := right.check(); err != nil {
		return 0, 0, false, err
	}
	if len(left.Rise) != len(right.Rise) || left.Spacing != right.Spacing || left.Low != right.Low {
		return 0, 0, false, &Error{-1, "left and right have the same stations"}
	}
	apart := left
	apart.Rise = make([]float64, len(left.Rise))
	for i := range apart.Rise {
		apart.Rise[i] = left.Rise[i] - right.Rise[i]
	}
	n := float64(len(apart.Rise))
	var sumX, sumY, sumXX, sumXY float64
	for i, y := range apart.Rise {
		x := apart.at(i)
		sumX, sumY, sumXX, sumXY = sumX+x, sumY+y, sumXX+x*x, sumXY+x*y
	}
	slope := (n*sumXY - sumX*sumY) / (n*sumXX - sumX*sumX)
	offset := (sumY - slope*sumX) / n
	squares := 0.0
	for i, y := range apart.Rise {
		d := y - offset - slope*apart.at(i)
		squares += d * d
		if math.Abs(d) > math.Abs(largest) {
			largest, station = d, i
		}
	}
	variance := left.deviation()*left.deviation() + right.deviation()*right.deviation()
	each := 1 - 0.025/(2*n) // all stations, both signs
	one = squares/variance <= chiSquared(len(apart.Rise)-2, 0.975) &&
		math.Abs(largest) <= math.Sqrt(variance)*distuv.UnitNormal.Quantile(each)
	return largest, station, one, nil
}
