package layout

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/rocker/bench"
)

// TestSum by hand: two pieces of a board foot each and one of half a foot by a foot by an inch; a mass that is not
// known adds nothing.
func TestSum(t *testing.T) {
	foot, unknown := 12*inch, math.NaN()
	l := Layout{Cuts: []Cut{
		{Count: 2, Rough: Size{foot, foot, inch}, Each: 1.5},
		{Count: 1, Rough: Size{foot / 2, foot, inch}, Each: unknown},
	}}
	cubic, feet, mass := l.Sum()
	if !near(feet, 2.5) || !near(cubic, 2.5*foot*foot*inch) || mass != 3 {
		t.Errorf("%v m³, %v board feet, %v kg; want 2.5 board feet, 3 kg", cubic, feet, mass)
	}
}

// TestLowPoint: the square corner stands plumb under the hindmost point of the wood.
func TestLowPoint(t *testing.T) {
	d := reading()
	l := mustLay(t, d)
	furthest := -l.Outline.Bounds().Min.X
	if got := l.LowPoint(); !near(got, furthest) {
		t.Errorf("%v m ahead of the corner; the outline reaches %v m behind the low point", got, furthest)
	}
}

// TestSightlineOfALeg: a leg raked as much as splayed stands out at 45 degrees, from straight ahead or straight back; a
// plumb one has no sightline.
func TestSightlineOfALeg(t *testing.T) {
	for _, tt := range []struct{ rake, splay, want float64 }{
		{8, 8, 45}, {-8, 8, 45}, {8, -8, 45}, {8, 0, 0}, {-8, 0, 0}, {0, 8, 90}, {0, 0, math.NaN()},
	} {
		leg := Leg{Standing: bench.Standing{
			Resultant: bench.Resultant(tt.rake*degree, tt.splay*degree),
			Sightline: bench.Sightline(tt.rake*degree, tt.splay*degree)}}
		got := leg.Sightline()
		if math.IsNaN(got) != math.IsNaN(tt.want) || math.Abs(got-tt.want*degree) > 1e-12 {
			t.Errorf("rake %v, splay %v: %v rad, want %v degrees", tt.rake, tt.splay, got, tt.want)
		}
	}
}

// TestTrackOfALeg: its mirror image stands as far to the other side.
func TestTrackOfALeg(t *testing.T) {
	leg := Leg{Standing: bench.Standing{Foot: r3.Vec{X: 1, Y: 2, Z: 0.25}}}
	if leg.Track() != 0.5 {
		t.Errorf("%v m, want 0.5", leg.Track())
	}
}

// TestSpringsBack: the stack loses one part of so many of its bend as bench says.
func TestSpringsBack(t *testing.T) {
	for n := 1; n < 12; n++ {
		s := Strips{Stack: bench.Stack{Strips: n}}
		if got := 1 / float64(s.SpringsBack()); got != bench.Springback(n) {
			t.Errorf("%d strips: 1/%d of the bend, want %v", n, s.SpringsBack(), bench.Springback(n))
		}
	}
}
