package size

import (
	"math"

	"rockerwright/sim"
	"rockerwright/sim/check"
)

// A Feel is how a piece rocks with its owner at ease: what makers want to keep.
type Feel struct {
	Load       *check.Load
	Radius     float64 // of the floor edge at the rest, m
	Height     float64 // H, of the balance point over the floor at the rest, m
	Gyration   float64 // k, m
	Steadiness float64 // arc centre above the balance point, R − H on a level floor, m
	Period     float64 // of a small rock there and back, s

	across float64 // H′, m
	floor  sim.Floor
}

// FeelOf returns the feel of the first load with a person, or of the piece alone where nobody
// sits in it; ok is false where that does not rock, or rests on a flat.
func FeelOf(r check.Balanced) (f Feel, ok bool) {
	l := r.Seated()
	b := l.Balance
	if b.Outcome != sim.Rocks || math.IsNaN(b.Period) {
		return Feel{Load: l}, false
	}
	f = Feel{
		Load: l, Height: b.Rest.Height, Gyration: math.Sqrt(l.Rig.Body.Inertia / l.Rig.Body.Mass),
		Steadiness: b.Steadiness, Period: b.Period, floor: l.Rig.Floor,
	}
	f.across = f.Height * math.Tan(f.floor.Slope) // at rest the righting arm is zero
	f.Radius = f.radiusFor(f.Steadiness)
	return f, true
}

// radiusFor returns the radius at the rest that gives a steadiness Z′ = (ρ − H)cos α −
// H′ sin α, m.
func (f Feel) radiusFor(steadiness float64) float64 {
	return f.Height + (steadiness+f.across*math.Sin(f.floor.Slope))/math.Cos(f.floor.Slope)
}

// RadiusForPeriod returns the radius at the rest on which a small rock takes the time T
// (s), with the height and gyration there; on a level floor R = H + (k² + H²)(2π/T)²/g, m.
func (f Feel) RadiusForPeriod(period float64) float64 {
	w := 2 * math.Pi / period
	square := f.Gyration*f.Gyration + f.Height*f.Height + f.across*f.across
	return f.radiusFor(square * w * w / f.floor.FreeFall())
}
