package words

import (
	"strings"

	"rockerwright/sim/quantity"
)

// typed returns a value as it is typed on a command line, without spaces and quotes:
// 20-1/2. It is rounded to the shop's step.
func (v voice) typed(x float64, kind quantity.Kind) string {
	return strings.ReplaceAll(v.shop(x, kind), " ", "-")
}

// radii returns three radii around one, to compare: two inches or 50 mm apart.
func (v voice) radii(radius float64) string {
	apart := "2"
	if v.units == quantity.Metric {
		apart = "50"
	}
	step, err := quantity.Parse(apart, quantity.Length, v.units)
	if err != nil {
		return v.typed(radius, quantity.Length)
	}
	var list []string
	for _, x := range []float64{radius - step, radius, radius + step} {
		if x > 0 {
			list = append(list, v.typed(x, quantity.Length))
		}
	}
	return strings.Join(list, ",")
}
