package person

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestLeansAsItSays: a rider's neck is over the hip joints, ahead of them or behind, as the posture says.
func TestLeansAsItSays(t *testing.T) {
	rider := person(t, Given{Age: 5})
	saddle := Seat{Meet: r2.Vec{Y: 0.5}}
	ahead := func(posture Posture) float64 {
		j := rider.Pose(saddle, posture).Joints
		return j.Neck.X - j.Hip.X
	}
	if forward, back := ahead(RidingForward), ahead(RidingBack); !(forward > 0.05) || math.Abs(forward+back) > 1e-12 || ahead(Riding) != 0 {
		t.Errorf("forward %v m, back %v m, upright %v m", forward, back, ahead(Riding))
	}
}

// TestSolesOnTheFloor: on a seat that is not too high the soles of who sits stand flat on the floor, whatever its fall.
func TestSolesOnTheFloor(t *testing.T) {
	p := person(t, Given{Sizes: Measures{Stature: 1.75, Mass: 80}})
	for _, height := range []float64{0.30, 0.36, 0.40} {
		for _, fall := range []float64{0, 0.05, 0.1, 0.2} {
			j := p.Pose(Seat{Meet: r2.Vec{Y: height - 0.4*fall}, Fall: fall, Depth: 0.4, Backed: true, Recline: 0.3}, Sitting).Joints
			if math.Abs(j.Heel.Y) > 1e-9 || math.Abs(j.Toe.Y) > 1e-9 {
				t.Errorf("seat %v m high, falling %v: heel at %v, toe at %v", height, fall, j.Heel.Y, j.Toe.Y)
			}
		}
	}
}
