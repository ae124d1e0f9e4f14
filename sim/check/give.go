package check

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim/piece"
)

// A Give is how a back yields under who leans on it.
type Give struct {
	Force  float64 // on the back, square to it, where the shoulder blades touch, N
	Yield  float64 // of the braces there, m
	Turn   float64 // of the person's trunk, back, rad
	Stress float64 // largest in bending, Pa
	Share  float64 // of the wood's bending strength (modulus of rupture), mean of its kind
	Least  float64 // the share if the wood is stronger by two standard deviations
	Most   float64 // the share if it is weaker by as much
}

// steps is how often rest and give are solved in turn at most. Each step changes the
// load on the back by a part of the last change, a few hundredths for stiff backs.
const steps = 100

// lean poses people on a back that gives, and finds how far it gives and where the piece
// rests, which go together: the further it rests back, the more weight the back carries.
// rest returns the tilt at which the piece rests with a body on its seat.
func (l *Load) lean(d piece.Design, rest func(body.Body) (tilt float64, rocks bool)) (Give, error) {
	bar, strength, err := d.Back.Braces.Beam()
	if err != nil {
		return Give{}, err
	}
	var g Give
	for range steps {
		l.pose(d, g.Turn)
		tilt, rocks := rest(l.Person)
		if !rocks {
			break // where it goes over, the back is the lesser care
		}
		before := g.Turn
		g = l.give(d, tilt, bar)
		if g.Turn > math.Pi/4 {
			return g, &piece.KeyError{Key: "back.braces.thickness", Reason: fmt.Sprintf("these braces give way by more than 45 degrees under %s", l.Sitter), Give: "thickness"}
		}
		if math.Abs(g.Turn-before) < 1e-12 {
			break
		}
	}
	g.Share = g.Stress / strength
	g.Least, g.Most = g.Share/(1+2*piece.StrengthSpread), g.Share/(1-2*piece.StrengthSpread)
	return g, nil
}

// give returns how the back gives at one tilt: trunk, head and upper arms turn about the
// hip joints, held by the back where the shoulder blades touch it,
//
//	F·lever = m·g·(hip's place less the balance point's, forward)
//
// and the forces of all who lean on it bend all braces together.
func (l *Load) give(d piece.Design, tilt float64, bar body.Beam) Give {
	var g Give
	var lever, at float64
	for i, one := range l.people {
		on, hip := one.Person.OnTheBack(l.Figures[i]), l.Figures[i].Hip
		level := r2.Rotate(r2.Sub(on.Centre, hip), tilt, r2.Vec{})
		lever = one.Person.Blades()
		at = lever + one.Person.HipUp() + d.Seat.Cushion
		g.Force += max(0, -level.X*on.Mass*d.StaticFloor().FreeFall()/lever)
	}
	g.Yield, g.Stress = bar.Bend(g.Force, at)
	g.Turn = math.Atan(g.Yield / lever)
	return g
}
