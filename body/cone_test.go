package body

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"
)

// Full cones by hand. With z the distance from the apex and R the radius at the foot,
// r = R·z/L, so V = πR²L/3; the mean of z is 3L/4, that of z² is 3L²/5, and that of
// r²/4 is 3R²/20. About the centre: I = m(3L²/5 − 9L²/16 + 3R²/20) = 3m(L² + 4R²)/80.
func TestConeFull(t *testing.T) {
	for _, tt := range []struct {
		name string
		got  Body
		want Body
	}{
		{"apex up", Cone(80, 2, 0, 4), Body{Mass: 80, Centre: r2.Vec{Y: -1}, Inertia: 60}}, // L² + 4R² = 16 + 4
		{"apex down", Cone(80, 0, 2, 4), Body{Mass: 80, Centre: r2.Vec{Y: 1}, Inertia: 60}},
		{"apex up, flat", Cone(80, 2, 0, 0), Body{Mass: 80, Inertia: 12}},
	} {
		if !near(tt.got, tt.want, 60) {
			t.Errorf("%s: Cone = %+v, want %+v", tt.name, tt.got, tt.want)
		}
	}
}

func TestConeWithoutTaperIsCylinder(t *testing.T) {
	for _, diameter := range []float64{0, 1e-9, 0.04, 3} {
		got, want := Cone(7, diameter, diameter, 0.5), Cylinder(7, diameter, 0.5)
		if !near(got, want, 1) {
			t.Errorf("Cone of diameter %v = %+v, want %+v", diameter, got, want)
		}
		if got.Centre != (r2.Vec{}) {
			t.Errorf("Cone of diameter %v has its centre at %v, want the origin", diameter, got.Centre)
		}
	}
}

// The cone against a stack of discs: each of thickness dy has the volume πr² dy and
// about its own diameter the mean square r²/4. Gauss's rule of five points is exact
// for the polynomials of fourth degree that these are.
func TestConeIsStackOfDiscs(t *testing.T) {
	for _, tt := range []struct{ foot, top, length float64 }{
		{0.03, 0.02, 0.4}, {0.02, 0.03, 0.4}, {0.05, 0, 0.1}, {0, 0.05, 0.1},
		{1, 0.1, 0.05}, {0.05, 0.0499, 0.7}, {0.001, 0.04, 2},
	} {
		sum := func(of func(y, r float64) float64) float64 { // over the discs, by volume
			return quad.Fixed(func(y float64) float64 {
				r := (tt.foot + (tt.top-tt.foot)*(y/tt.length+0.5)) / 2
				return of(y, r) * math.Pi * r * r
			}, -tt.length/2, tt.length/2, 5, quad.Legendre{}, 0)
		}
		volume := sum(func(y, r float64) float64 { return 1 })
		centre := sum(func(y, r float64) float64 { return y }) / volume
		square := sum(func(y, r float64) float64 { return (y-centre)*(y-centre) + r*r/4 }) / volume

		if got := ConeVolume(tt.foot, tt.top, tt.length); math.Abs(got-volume) > 1e-13*volume { // the nodes are good to 1e-14
			t.Errorf("ConeVolume%v = %v, want %v", tt, got, volume)
		}
		got, want := Cone(2, tt.foot, tt.top, tt.length), Body{Mass: 2, Centre: r2.Vec{Y: centre}, Inertia: 2 * square}
		if math.Abs(got.Inertia-want.Inertia) > 1e-13*want.Inertia || math.Abs(got.Centre.Y-centre) > 1e-13*tt.length || got.Centre.X != 0 {
			t.Errorf("Cone%v = %+v, want %+v", tt, got, want)
		}
	}
}

// Of one density, a solid within another has less inertia about the same axis; so a
// cone lies between the cylinders of its thin and its thick end, about its middle.
func TestConeBracketed(t *testing.T) {
	const length = 0.5 // m
	cylinder := func(diameter float64) Body {
		return Cylinder(CylinderVolume(diameter, length), diameter, length)
	}
	for _, tt := range []struct{ foot, top float64 }{{0.04, 0.02}, {0.02, 0.04}, {0.6, 0.59}, {0.6, 0}} {
		cone := Cone(ConeVolume(tt.foot, tt.top, length), tt.foot, tt.top, length)
		thin, thick := cylinder(min(tt.foot, tt.top)), cylinder(max(tt.foot, tt.top))
		if !(thin.Mass < cone.Mass && cone.Mass < thick.Mass) {
			t.Errorf("%v: volume %v is not between %v and %v", tt, cone.Mass, thin.Mass, thick.Mass)
		}
		if got := cone.About(r2.Vec{}); !(thin.Inertia < got && got < thick.Inertia) {
			t.Errorf("%v: inertia %v is not between %v and %v", tt, got, thin.Inertia, thick.Inertia)
		}
		if towards := cone.Centre.Y * (tt.top - tt.foot); towards <= 0 {
			t.Errorf("%v: centre at %v m, want it towards the thicker end", tt, cone.Centre.Y)
		}
	}
}

func TestConeUpsideDown(t *testing.T) {
	got := Cone(3, 0.05, 0.02, 0.4).Turned(math.Pi, r2.Vec{})
	if want := Cone(3, 0.02, 0.05, 0.4); !near(got, want, 1) {
		t.Errorf("Cone on its head = %+v, want %+v", got, want)
	}
}
