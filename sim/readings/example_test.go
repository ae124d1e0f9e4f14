package readings_test

import (
	"fmt"
	"math"

	"rockerwright/rocker"
	"rockerwright/sim/readings"
)

// Which reading is worth taking again? Of 16 kg on two marks 0.6 m apart, as far ahead of the low
// point as behind it, 10 kg are in front: the balance point lies 0.6·10/16 − 0.3 = 0.075 m ahead.
// An error of 0.1 kg moves it by 0.6 m·0.1·10/16² = 2.3 mm on the scale behind, by 1.4 mm on the
// one in front, and one of 0.8 mm in the mark's place by less than that: together, at 95 %, by some
// 5 mm. So the scale behind is to be read finer. A dowel is placed to 3 mm, 5.9 mm at 95 %.
func ExampleReadings_Read() {
	const radius, mark = 1.067, 0.3039 // m; twice R·sin(mark/R) is 0.6 m
	result, err := readings.Readings{
		Edge:  rocker.Single(radius, 0.43, 0.61),
		Front: 10, Rear: 6, // kg
		Apart: 2 * radius * math.Sin(mark/radius), FrontMark: mark, // m
		DowelAbove: 0.41, // m
	}.Read()
	if err != nil {
		fmt.Println(err)
		return
	}
	mm := func(v readings.Value) string {
		return fmt.Sprintf("%.0f ± %.0f mm", 1e3*v.Value, 1e3*v.Uncertain)
	}
	fmt.Printf("%.0f kg\n", result.Mass.Value)
	fmt.Println("ahead of the low point:", mm(result.Ahead), "by", result.Ahead.Limits())
	fmt.Println("over the floor:", mm(result.Above), "by", result.Above.Limits())
	// Output:
	// 16 kg
	// ahead of the low point: 75 ± 5 mm by rear
	// over the floor: 410 ± 6 mm by dowel_above
}
