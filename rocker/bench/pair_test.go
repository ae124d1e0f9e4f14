package bench

import (
	"math"
	"testing"

	"rockerwright/rocker"
)

// TestNested: of two bars, each of them its own mirror image, the board is twice as wide and a
// saw cut; of two bands of concentric arcs the upper is moved by what the lower is high over
// itself straight up, at the low point its depth, and grain and mirror are as said.
func TestNested(t *testing.T) {
	const kerf = 0.003
	bar := mustOutline(t, Rocker{Edge: chain(t, 0.4, rocker.Flat(0.9)), Depth: 0.06})
	p, err := Nested(bar, 0, kerf)
	if err != nil || math.Abs(p.Length-0.9) > near || math.Abs(p.Width-0.123) > near {
		t.Errorf("bars in %v by %v, %v; want 0.9 by 0.123", p.Length, p.Width, err)
	}
	arc := mustOutline(t, Rocker{Edge: rocker.Single(1.05, 0.45, 0.45), Depth: 0.06})
	p, err = Nested(arc, 0, kerf)
	if err != nil || p.Left.Grain.X != 1 || p.Right.Grain.X != -1 {
		t.Fatalf("%+v, %v", p, err)
	}
	// straight up the band is highest where an end begins: the top edge there over the floor edge
	x := (1.05 - 0.06) * math.Sin(0.45/1.05)
	high := math.Sqrt(1.05*1.05-x*x) - math.Sqrt(0.99*0.99-x*x)
	box := arc.Bounds()
	if want := box.Max.Y - box.Min.Y + high + kerf; math.Abs(p.Width-want) > near {
		t.Errorf("bands in a board of %v, want %v", p.Width, want)
	}
	if _, err := Nested(arc, 0, -1); err == nil {
		t.Error("a saw cut below zero is taken")
	}
}
