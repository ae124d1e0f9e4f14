package body

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// near reports whether a and b are as good as equal when the lengths and inertias
// that went into them were of the given size: a few dozen roundings of that.
func near(a, b Body, size float64) bool {
	within := 1e-14 * size
	return math.Abs(a.Mass-b.Mass) <= within &&
		r2.Norm(r2.Sub(a.Centre, b.Centre)) <= within &&
		math.Abs(a.Inertia-b.Inertia) <= within
}

func TestAbout(t *testing.T) {
	b := Body{Mass: 2, Centre: r2.Vec{X: 1, Y: 2}, Inertia: 3}
	for _, tt := range []struct {
		name  string
		about r2.Vec
		want  float64 // kg·m², by hand
	}{
		{"its own centre", r2.Vec{X: 1, Y: 2}, 3},
		{"5 m away, by 3 and 4", r2.Vec{X: 4, Y: 6}, 3 + 2*25},
		{"as far the other way", r2.Vec{X: -2, Y: -2}, 3 + 2*25},
		{"the origin", r2.Vec{}, 3 + 2*5},
	} {
		if got := b.About(tt.about); got != tt.want { // whole numbers, so exact
			t.Errorf("%s: About = %v, want %v", tt.name, got, tt.want)
		}
	}
}

// Steiner: of all axes of one direction, that through the centre has the least
// inertia, and all at one distance from it have the same.
func TestAboutIsLeastAtCentre(t *testing.T) {
	b := Body{Mass: 4.2, Centre: r2.Vec{X: -0.13, Y: 0.61}, Inertia: 0.7}
	const distance = 0.3 // m
	for degrees := range 360 {
		sin, cos := math.Sincos(float64(degrees) * math.Pi / 180)
		got := b.About(r2.Add(b.Centre, r2.Vec{X: distance * cos, Y: distance * sin}))
		want := 0.7 + 4.2*distance*distance
		if got <= b.Inertia || math.Abs(got-want) > 1e-14 { // of about 1 kg·m²
			t.Errorf("at %d degrees: About = %v, want %v", degrees, got, want)
		}
	}
}

func TestTurnedLeansBack(t *testing.T) {
	top := Body{Mass: 1, Centre: r2.Vec{Y: 1}, Inertia: 0.2}
	got := top.Turned(math.Pi/6, r2.Vec{})
	want := Body{Mass: 1, Centre: r2.Vec{X: -0.5, Y: math.Sqrt(3) / 2}, Inertia: 0.2} // sin and cos of 30°
	if !near(got, want, 1) {
		t.Errorf("Turned by 30° = %+v, want %+v: leaning back takes the top to the rear", got, want)
	}
}

func TestMovedAndTurned(t *testing.T) {
	b := Body{Mass: 3, Centre: r2.Vec{X: 0.2, Y: 0.5}, Inertia: 0.4}
	by, about := r2.Vec{X: -0.7, Y: 0.11}, r2.Vec{X: 0.05, Y: -0.3}
	for _, angle := range []float64{-2, -0.1, 0, 1e-9, 0.35, math.Pi} {
		turnedFirst := b.Turned(angle, about).Moved(by)
		movedFirst := b.Moved(by).Turned(angle, r2.Add(about, by)) // its pivot moves along
		if !near(turnedFirst, movedFirst, 1) {
			t.Errorf("turned by %v and moved = %+v, moved and turned = %+v", angle, turnedFirst, movedFirst)
		}
		if back := b.Turned(angle, about).Turned(-angle, about); !near(back, b, 1) {
			t.Errorf("turned by %v and back = %+v, want %+v", angle, back, b)
		}
		if got, want := b.Turned(angle, about).About(about), b.About(about); math.Abs(got-want) > 1e-14 { // of about 3 kg·m²
			t.Errorf("turned by %v: About the point it turned on = %v, want %v", angle, got, want)
		}
	}
	if back := b.Moved(by).Moved(r2.Scale(-1, by)); !near(back, b, 1) {
		t.Errorf("moved and back = %+v, want %+v", back, b)
	}
}

func TestScaled(t *testing.T) {
	b := Body{Mass: 3, Centre: r2.Vec{X: 0.2, Y: 0.5}, Inertia: 0.5}
	if got, want := b.Scaled(2), (Body{Mass: 6, Centre: b.Centre, Inertia: 1}); got != want {
		t.Errorf("Scaled(2) = %+v, want %+v", got, want)
	}
	// another density changes no distance: inertia over mass stays about any point
	p := r2.Vec{X: 1, Y: 1}
	if got, want := b.Scaled(8).About(p), 8*b.About(p); got != want { // a power of two, so exact
		t.Errorf("Scaled(8).About = %v, want %v", got, want)
	}
}
