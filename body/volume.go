package body

import "math"

// BoxVolume returns the volume (m³) of a block of the given sizes (m).
func BoxVolume(length, height, width float64) float64 { return length * height * width }

// CylinderVolume returns the volume (m³) of a round bar of the given sizes (m).
func CylinderVolume(diameter, length float64) float64 {
	return math.Pi / 4 * diameter * diameter * length
}

// ConeVolume returns the volume (m³) of the round, tapered bar that [Cone]
// describes, sizes in m: (π/12)·length·(foot² + foot·top + top²).
func ConeVolume(foot, top, length float64) float64 {
	return math.Pi / 12 * length * (foot*foot + foot*top + top*top)
}
