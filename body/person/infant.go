package person

import (
	"cmp"
	"fmt"
	"math"

	"rockerwright/rocker/root"
)

// An Infant lies in a cradle: a capsule of even density (no published whole-body
// balance point or inertia of infants was found).
type Infant struct {
	Mass   float64 // kg
	Length float64 // of the lying child, m
	Radius float64 // of the capsule, m
	Along  float64 // inertia about the capsule's own axis, kg·m²
	Across float64 // inertia about an axis square to it through the middle, kg·m²
}

// infantDensity is that of water, kg/m³; our judgement.
const infantDensity = 1000.0

// NewInfant returns the infant of an age (years, the nearest from 0 to 2) at a percentile of
// the growth charts, above 0 and below 100, 50 where percentile is 0. It panics for any other.
func NewInfant(sex Sex, age, percentile float64) Infant {
	length, mass := child(sex, min(max(age, 0), 2), cmp.Or(percentile, 50), true)
	return Capsule(mass, length)
}

// Capsule returns the infant of a mass (kg) and length (m), a cylinder between two half balls. It panics where one of
// them is not above zero. Its radius r is that of a body of the density of water, m/ρ = π·r²·(L − 2r) + 4/3·π·r³.
func Capsule(mass, length float64) Infant {
	if !(mass > 0 && length > 0) {
		panic(fmt.Sprintf("person: no infant weighs %g kg and is %g m long", mass, length))
	}
	volume := mass / infantDensity
	parts := func(r float64) (straight, ball, tube float64) {
		straight = length - 2*r
		return straight, 4.0 / 3 * math.Pi * r * r * r, math.Pi * r * r * straight
	}
	r, _ := root.Edge(func(r float64) bool { // up to a ball, however heavy
		_, ball, tube := parts(r)
		return ball+tube < volume
	}, 0, length/2, 0, 0)
	straight, ball, tube := parts(r)
	density := mass / (ball + tube)
	mBall, mTube := density*ball, density*tube
	// A half ball's centre lies 3r/8 from its flat face, and its inertia about that
	// centre, square to the axis, is 83/320·m·r² (textbook).
	arm := straight/2 + 3*r/8
	return Infant{
		Mass: mass, Length: length, Radius: r,
		Along:  mTube*r*r/2 + mBall*r*r*2/5,
		Across: mTube*(straight*straight/12+r*r/4) + mBall*(83.0/320*r*r+arm*arm),
	}
}
