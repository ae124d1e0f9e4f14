package body

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// Closed forms by hand, from ∫x² over a length, l²/12, and over a disc, d²/16.
func TestSolids(t *testing.T) {
	for _, tt := range []struct {
		name string
		got  Body
		want float64 // kg·m²
	}{
		{"point", Point(12), 0},
		{"box: 12·(3² + 4²)/12", Box(12, 3, 4), 25},
		{"box without height, a rod along x: 12·3²/12", Box(12, 3, 0), 9},
		{"box without length, a rod along y: 12·4²/12", Box(12, 0, 4), 16},
		{"cylinder: 12·(4²/16 + 6²/12)", Cylinder(12, 4, 6), 48},
		{"cylinder without thickness, a rod", Cylinder(12, 0, 6), 36},
		{"cylinder without length, a disc about a diameter", Cylinder(12, 4, 0), 12},
		{"cylinder across: 4·3²/8, a disc about its axis", CrossCylinder(4, 3), 4.5},
	} {
		if want := (Body{Mass: tt.got.Mass, Inertia: tt.want}); tt.got != want { // whole numbers and halves, so exact
			t.Errorf("%s: %+v, want %+v", tt.name, tt.got, want)
		}
	}
}

// The disc about its axis is the sum of its two diameters: a flat body's inertia
// square to its plane is that of two square lines in it.
func TestSolidsDiscBothWays(t *testing.T) {
	if got, want := CrossCylinder(3, 0.7).Inertia, 2*Cylinder(3, 0.7, 0).Inertia; math.Abs(got-want) > 1e-15 {
		t.Errorf("disc about its axis %v, twice about a diameter %v", got, want)
	}
}

// Of one density, a solid within another has less inertia about the same axis. A
// round bar lies between the square ones within it and around it.
func TestSolidsBracketed(t *testing.T) {
	const diameter, length, density = 0.05, 0.6, 700 // m, m, kg/m³
	within := diameter / math.Sqrt2
	mass := density * CylinderVolume(diameter, length)
	for _, tt := range []struct {
		name                  string
		inside, round, around Body
	}{
		{"upright",
			Box(density*BoxVolume(within, length, within), within, length),
			Cylinder(mass, diameter, length),
			Box(density*BoxVolume(diameter, length, diameter), diameter, length)},
		{"across",
			Box(density*BoxVolume(within, within, length), within, within),
			CrossCylinder(mass, diameter),
			Box(density*BoxVolume(diameter, diameter, length), diameter, diameter)},
	} {
		if !(tt.inside.Inertia < tt.round.Inertia && tt.round.Inertia < tt.around.Inertia) {
			t.Errorf("%s: %v within, %v round, %v around: want them in order", tt.name, tt.inside.Inertia,
				tt.round.Inertia, tt.around.Inertia)
		}
	}
}

// A box made of many points on a grid comes to the box, from below: n points in the
// middles of n equal lengths lack 1/n² of the square of each.
func TestSolidsBoxOfPoints(t *testing.T) {
	const n, length, height, mass = 20, 0.4, 0.9, 5.0
	var points []Body
	for i := range n {
		for j := range n {
			x, y := (float64(i)+0.5)/n-0.5, (float64(j)+0.5)/n-0.5
			points = append(points, Point(mass/n/n).Moved(r2.Vec{X: x * length, Y: y * height}))
		}
	}
	want := Box(mass, length, height).Scaled(1 - 1.0/n/n)
	want.Mass = mass
	if got := Join(points...); !near(got, want, 10) { // 400 roundings
		t.Errorf("box of points = %+v, want %+v", got, want)
	}
}
