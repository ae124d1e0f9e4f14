package words

import (
	"math"
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
	step := 2 * 0.0254
	if v.units == quantity.Metric {
		step = 0.050
	}
	var list []string
	for _, n := range []float64{-1, 0, 1} {
		if x := radius + n*step; x > 0 {
			list = append(list, v.typed(math.Round(x*1e6)/1e6, quantity.Length))
		}
	}
	return strings.Join(list, ",")
}
