package sim

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// Gravity is the standard acceleration of free fall, m/s² (exact, by the 3rd
// General Conference on Weights and Measures, 1901).
const Gravity = 9.80665

// The two tolerances of "at", and there are no others.
const (
	// AtJoint: a rest within this of a joint counts as on it, rad.
	AtJoint = 1e-9
	// AtHilltop: a rest with less than this to a hilltop is no rest, rad.
	AtHilltop = 1e-9
)

// rounding is the relative size below which a difference of two lengths is
// nothing but the rounding of both: a few units in the last place.
const rounding = 0x1p-50

// A Floor is what the piece stands on. The zero Floor is level and holds any force.
type Floor struct {
	Slope    float64 // rise to the front, rad, within ±π/2
	Gravity  float64 // m/s²; zero means the constant Gravity
	Friction float64 // the largest |F|/N it holds; zero means any
}

// FreeFall returns the acceleration of free fall on this floor, m/s².
func (f Floor) FreeFall() float64 {
	if f.Gravity == 0 {
		return Gravity
	}
	return f.Gravity
}

// A Rig is one body on one rocker on one floor. The body is all that moves as one:
// the piece and whoever sits in it. Its methods panic for a rig without a floor edge, and
// those that ask where it rests for one that [Rig.Validate] refuses.
type Rig struct {
	Profile rocker.Profile
	Body    body.Body
	Floor   Floor
}

// Validate returns what keeps a rig from resting anywhere whatever its shape: no floor edge,
// a mass not above zero, a floor as steep as a wall, a gravity or a friction below zero. It is
// nil for any other, also where the centre of mass or the inertia is not a number, as of a
// piece whose rocks were not timed; what hangs on that is then not a number either.
func (r *Rig) Validate() error {
	switch f := r.Floor; {
	case r.Profile.Bearings() == 0:
		return errors.New("sim: a rig needs a floor edge: build its Profile with rocker.Chain")
	case !(r.Body.Mass > 0):
		return fmt.Errorf("sim: a rig needs a mass above 0 kg; %g is none", r.Body.Mass)
	case !(math.Abs(f.Slope) < math.Pi/2):
		return fmt.Errorf("sim: a floor slopes by less than π/2 rad; %g rad is none", f.Slope)
	case !(f.Gravity >= 0 && f.Friction >= 0):
		return fmt.Errorf("sim: gravity (%g m/s²) and friction (%g) of a floor are not below 0", f.Gravity, f.Friction)
	}
	return nil
}

// A stance is the rig on one arc at one roll.
type stance struct {
	height, ahead float64 // H and H′, m
	radius        float64 // ρ, m
	rolled        float64 // s, m
}

// stand returns the rig's stance on b at the given roll, rad.
func (r *Rig) stand(b *rocker.Bearing, roll float64) stance {
	height, ahead, _ := b.Above(r.Body.Centre, roll)
	return stance{height: height, ahead: ahead, radius: b.Radius, rolled: b.RolledAt(roll)}
}

// touching returns the arc in touch at a roll, and the roll as that arc counts it, rad.
func touching(p rocker.Profile, roll float64) (*rocker.Bearing, float64) {
	i, within := p.Find(roll)
	return p.Bearing(i), within
}

// standing returns the rig's stance at a tilt, rad.
func (r *Rig) standing(tilt float64) stance { return r.stand(touching(r.Profile, tilt-r.Floor.Slope)) }

// A ground is the sine and the cosine of a floor's slope, taken once for many stances.
type ground struct{ sin, cos float64 }

func (f Floor) ground() ground {
	sin, cos := math.Sincos(f.Slope)
	return ground{sin, cos}
}

// rise returns E, the plumb height of G from a fixed level, m.
func (g ground) rise(s stance) float64 { return s.height*g.cos + (s.ahead-s.rolled)*g.sin }

// arm returns the righting arm Z, m.
func (g ground) arm(s stance) float64 { return s.ahead*g.cos - s.height*g.sin }

// slope returns Z′, m.
func (g ground) slope(s stance) float64 { return (s.radius-s.height)*g.cos - s.ahead*g.sin }

// inertia returns J, the moment of inertia at the contact, kg·m².
func (r *Rig) inertia(s stance) float64 {
	return r.Body.Inertia + r.Body.Mass*(s.height*s.height+s.ahead*s.ahead)
}

// weight returns m·g, N.
func (r *Rig) weight() float64 { return r.Body.Mass * r.Floor.FreeFall() }

// Righting returns the righting arm Z and the height H of the centre of mass over
// the floor, m, at the given tilt (rad, any, also past both tips). The moment that
// brings the piece back is m·g·Z. On a flat it is that of the flat's tail side.
func (r Rig) Righting(tilt float64) (arm, height float64) {
	s := r.standing(tilt)
	return r.Floor.ground().arm(s), s.height
}

// turned returns the offset of the body's centre from the centre of the arc b, as a length and as the tilt at which
// the arc alone would stand stable on a level floor, H = R − length·cos(tilt − that).
func (r *Rig) turned(b *rocker.Bearing) (length, tilt float64) {
	w := r2.Sub(r.Body.Centre, b.Centre())
	return math.Sqrt(r2.Norm2(w)), math.Atan2(-w.X, -w.Y)
}

// Inertia returns J, the moment of inertia about the contact at a tilt, kg·m².
func (r Rig) Inertia(tilt float64) float64 { return r.inertia(r.standing(tilt)) }

// Rise returns E, the plumb height of the centre of mass over a fixed level at a tilt, m;
// on a level floor its height over the floor.
func (r Rig) Rise(tilt float64) float64 { return r.Floor.ground().rise(r.standing(tilt)) }
