package bench_test

import (
	"fmt"

	"rockerwright/rocker"
	"rockerwright/rocker/bench"
)

// One form is not another: the same rocker bent over a form and into one.
func ExampleFormFor() {
	const floorEdge, depth, strips = 1.067, 0.045, 7
	f, err := bench.FormFor(floorEdge, depth, 0, bench.Springback(strips))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("floor edge %.0f mm: a convex form of %.0f mm, or a concave one of %.0f mm\n", 1000*f.FloorEdge,
		1000*f.ConvexForm, 1000*f.ConcaveForm)
	// Output: floor edge 1067 mm: a convex form of 1001 mm, or a concave one of 1046 mm
}

func ExampleRocker_Outline() {
	r := bench.Rocker{Edge: rocker.Single(1.067, 0.40, 0.50), Depth: 0.045}
	outline, err := r.Outline() // of one arc: a chord 2R·sin a long, R − (R − d)·cos a wide
	if err != nil {
		fmt.Println(err)
		return
	}
	b := bench.SmallestBlank(outline)
	_, both, _ := b.Nest(outline, 0.003)
	fmt.Printf("a board of %.0f by %.0f mm, %.0f mm wide for two\n", 1000*b.Length, 1000*b.Width, 1000*both)

	r.Depth = 1.1
	_, err = r.Outline()
	fmt.Println(err)
	// Output:
	// a board of 874 by 135 mm, 187 mm wide for two
	// bench: rocker: at span 0 of the floor edge: a depth of 1.1 m is not less than the radius, 1.067 m
}
