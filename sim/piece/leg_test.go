package piece

import (
	"errors"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim/quantity"
)

func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// cutSeat is a design whose mass is all in the seat frame, so that sliding it on the
// rockers moves all of it: one body of 90 kg, 24 in over the floor, on a 42 in arc.
func cutSeat(top Top) Design {
	return Design{
		Rocker: Rocker{Radius: 42 * quantity.In, Nose: 18 * quantity.In, Tail: 22 * quantity.In, Depth: 2 * quantity.In, Top: top},
		Seat:   Seat{Rear: 16 * quantity.In, Front: 16.5 * quantity.In, Depth: 18 * quantity.In, Behind: 8 * quantity.In},
		Parts:  []Part{{Shape: Point, Mass: 90, At: r2.Vec{Y: 24 * quantity.In}}},
	}
}

// TestCutAtDrawnLegs: a cut at the rear legs turns the seat by atan(cut/run), the run being
// that of the legs as drawn, about the front foot on the rocker's top edge.
func TestCutAtDrawnLegs(t *testing.T) {
	d := cutSeat(Concentric)
	edge, err := d.Rocker.Profile()
	if err != nil {
		t.Fatal(err)
	}
	d.Seat.RearCut = 0.25 * quantity.In
	taken := d.cut(edge)
	if want := math.Atan(0.25 * quantity.In / (d.Seat.FrontEdge().X - d.Seat.Meet().X)); !near(taken.Turn, want, 1e-15) || !near(taken.About.X, d.Seat.FrontEdge().X, 1e-15) {
		t.Errorf("not drawn: turn %v about %v, want %v", taken.Turn, taken.About, want)
	}
	d.Legs = []Leg{{Which: Front, At: 7 * quantity.In}, {Which: Rear, At: -11 * quantity.In}}
	drawn := d.cut(edge)
	foot := r2.Vec{X: 7 * quantity.In, Y: (42 - math.Sqrt(40*40-49)) * quantity.In} // on the concentric top
	if want := math.Atan(0.25 / 18); !near(drawn.Turn, want, 1e-12) || r2.Norm(r2.Sub(drawn.About, foot)) > 1e-12 {
		t.Errorf("drawn: turn %v about %v, want %v about %v", drawn.Turn, drawn.About, want, foot)
	}
	d.Legs[0].At = -12 * quantity.In
	var wrong *KeyError
	if err := d.Validate(); !errors.As(err, &wrong) || wrong.Key != "leg" {
		t.Errorf("front legs behind the rear ones: %v", err)
	}
}

// TestTaperedStrip: a tapered bar's area is length·depth less a third of what the tips lack, by
// Simpson on squares; a strip without a taper is that of Strip.
func TestTaperedStrip(t *testing.T) {
	bar, err := rocker.Chain(0.4, rocker.Flat(0.4), rocker.Flat(0.5))
	if err != nil {
		t.Fatal(err)
	}
	strip, err := bar.Tapered(0.06, 0.04, 0.03)
	if want := 0.9*0.06 - (0.4*0.02+0.5*0.03)/3; err != nil || !near(strip.Area, want, 1e-15) {
		t.Errorf("area %v, %v; want %v", strip.Area, err, want)
	}
	one := rocker.Single(1, 0.4, 0.5)
	a, errA := one.Tapered(0.06, 0.06, 0.06)
	b, errB := one.Strip(0.06, rocker.Concentric)
	if errA != nil || errB != nil || a != b {
		t.Errorf("%v, %v; %v, %v", a, b, errA, errB)
	}
	if _, err := one.Tapered(0.06, 0.06, 1.1); err == nil {
		t.Error("a tail deeper than the radius has a strip")
	}
}

// TestDepthAlongATaper holds the depth at the tips, at the low point, and half-way between.
func TestDepthAlongATaper(t *testing.T) {
	r := Rocker{Radius: 1, Nose: 0.4, Tail: 0.6, Depth: 0.06, NoseDepth: 0.04, TailDepth: 0.02, Top: Taper}
	edge, err := r.Profile()
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		tail bool
		from float64
		want float64
	}{{false, 0, 0.04}, {false, 0.2, 0.055}, {false, 0.4, 0.06}, {true, 0, 0.02}, {true, 0.3, 0.05}, {true, 0.6, 0.06}, {true, 1, 0.04}, {false, 1, 0.02}} {
		if got := r.DepthAt(edge, tt.tail, tt.from); !near(got, tt.want, 1e-15) {
			t.Errorf("%v m from the tip (tail %v): %v, want %v", tt.from, tt.tail, got, tt.want)
		}
	}
}
