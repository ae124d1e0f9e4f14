package body

import (
	"math"
	"testing"
)

// Volumes by hand: the cone is a third of the cylinder around it, and a frustum a
// large cone less a small one.
func TestVolumes(t *testing.T) {
	for _, tt := range []struct {
		name      string
		got, want float64 // m³
	}{
		{"box", BoxVolume(2, 3, 4), 24},
		{"cylinder of radius 1", CylinderVolume(2, 5), 5 * math.Pi},
		{"full cone of radius 1", ConeVolume(2, 0, 3), math.Pi},
		{"full cone on its apex", ConeVolume(0, 2, 3), math.Pi},
		{"cone without taper", ConeVolume(2, 2, 5), 5 * math.Pi},
		{"frustum: of a cone 6 high and 2 in radius, the lower half", ConeVolume(4, 2, 3), 8*math.Pi - math.Pi},
	} {
		if math.Abs(tt.got-tt.want) > 1e-15*tt.want { // three roundings
			t.Errorf("%s: %v m³, want %v", tt.name, tt.got, tt.want)
		}
	}
}
