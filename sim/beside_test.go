package sim

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// TestLargestRelease holds that a swing from just under comes back and from just over does
// not, on both sides of a lopsided rocker, on a level floor and a slope.
func TestLargestRelease(t *testing.T) {
	for _, slope := range []float64{0, 0.03} {
		r := Rig{Profile: rocker.Single(1.067, 0.30, 0.75),
			Body: body.Body{Mass: 93, Centre: r2.Vec{X: -0.02, Y: 0.61}, Inertia: 9}, Floor: Floor{Slope: slope}}
		b := r.Balance()
		back, forward := r.LargestRelease(b)
		for _, release := range []float64{back, -forward} {
			if s := r.Swing(b, release*(1-1e-6)); s.Outcome != Rocks {
				t.Errorf("slope %v: from just under %v: %v", slope, release, s.Outcome)
			}
			if s := r.Swing(b, release*(1+1e-6)); s.Outcome == Rocks {
				t.Errorf("slope %v: from just over %v it rocks", slope, release)
			}
		}
		if back >= b.Back.Angle*(1-1e-9) {
			t.Errorf("slope %v: a short nose does not limit the release back: %v of %v", slope, back, b.Back.Angle)
		}
	}
}

// TestLargestRate holds ½·J·ω² = m·g·lift on one arc by hand.
func TestLargestRate(t *testing.T) {
	r := Rig{Profile: rocker.Single(1, 0.4, 0.5), Body: body.Body{Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 80 * 0.35 * 0.35}}
	b := r.Balance()
	back, _ := r.LargestRate(b)
	tipX, tipY := -math.Sin(0.5), 1-math.Cos(0.5)
	lift := math.Hypot(tipX, 0.6-tipY) - 0.6
	if want := math.Sqrt(2 * Gravity * lift / (0.35*0.35 + 0.36)); math.Abs(back/want-1) > 1e-12 {
		t.Errorf("rate %v, want %v", back, want)
	}
}

// TestSweep holds the path of a point on one arc: x = R·φ-free rolling of a wheel, by hand:
// a point at distance d over the centre of a wheel of radius R, rolled back by θ, lies
// −R·θ − d·sin θ along and R + d·cos θ over.
func TestSweep(t *testing.T) {
	const radius, d = 1.0, 0.2
	r := Rig{Profile: rocker.Single(radius, 0.6, 0.6), Body: body.Body{Mass: 1, Centre: r2.Vec{Y: 0.5}}}
	q := r2.Vec{Y: radius + d}
	for _, tilt := range []float64{-0.3, 0.1, 0.5} {
		along, over := r.Place(q, tilt)
		if math.Abs(along+radius*tilt+d*math.Sin(tilt)) > 1e-15 || math.Abs(over-radius-d*math.Cos(tilt)) > 1e-15 {
			t.Errorf("at %v: %v, %v", tilt, along, over)
		}
	}
	room := r.Sweep(-0.3, 0.5, q)
	if want := radius*0.5 + d*math.Sin(0.5); math.Abs(room.Back-want) > 1e-12 || math.Abs(room.Lowest-radius-d*math.Cos(0.5)) > 1e-12 {
		t.Errorf("room %+v, want %v behind", room, want)
	}
}

func TestSideways(t *testing.T) {
	angle, lift := Sideways(0.6, 0.1, 0.5) // a triangle of 0.15 and 0.6
	if math.Abs(math.Tan(angle)-0.25) > 1e-15 || math.Abs(lift-(math.Sqrt(0.0225+0.36)-0.6)) > 1e-15 {
		t.Errorf("angle %v, lift %v", angle, lift)
	}
	if angle, lift := Sideways(0.6, 0.3, 0.5); angle != 0 || lift != 0 {
		t.Errorf("beyond the edge: %v, %v", angle, lift)
	}
}

// TestWalk holds wobble, lean and scrub by hand: arcs of 1.0 and 1.1 m, 0.5 m apart, roll
// 0.1·2A further on one side; alike and parallel ones do nothing.
func TestWalk(t *testing.T) {
	const a = 0.2
	left, right := rocker.Single(1.0, 0.5, 0.5), rocker.Single(1.1, 0.5, 0.5)
	w := WalkOf(left, right, 0.5, 0, -a, a)
	if want := 0.1 * 2 * a / 0.5; math.Abs(w.Heading-want) > 1e-15 {
		t.Errorf("heading %v, want %v", w.Heading, want)
	}
	if want := 0.1 * (1 - math.Cos(a)) / 0.5; math.Abs(w.Lean-want) > 1e-12 { // h = R(1 − cos φ) from the origin
		t.Errorf("lean %v, want %v", w.Lean, want)
	}
	// twice as large in all it turns and leans as much, and is dragged twice as far
	wide := WalkOf(rocker.Single(2, 1, 1), rocker.Single(2.2, 1, 1), 1, 0.01, -a, a)
	near := WalkOf(left, right, 0.5, 0.01, -a, a)
	if !sameTo(wide.Heading, near.Heading, 1e-12) || !sameTo(wide.Lean, near.Lean, 1e-12) || !sameTo(wide.Scrub, 2*near.Scrub, 1e-12) {
		t.Errorf("%+v, twice as large %+v", near, wide)
	}
	if none := WalkOf(left, left, 0.5, 0, -a, a); none != (Walk{}) {
		t.Errorf("alike rockers walk: %+v", none)
	}
	toed := WalkOf(left, left, 0.5, 0.01, -a, a)
	if want := 2 * 2 * a * math.Sin(0.01); math.Abs(toed.Scrub-want) > 1e-15 {
		t.Errorf("scrub %v, want %v", toed.Scrub, want)
	}
}
