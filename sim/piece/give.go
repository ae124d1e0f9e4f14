package piece

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
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

// The spread of small clear specimens of one wood, as coefficients of variation; the
// Wood Handbook's, from memory.
const (
	strengthSpread = 0.16
	ModulusSpread  = 0.22 // of the modulus of elasticity, and so of the yield
)

// drawn reports whether the back has braces that bend.
func (b Braces) drawn() bool { return b.Thickness > 0 }

// check returns the first thing that drawn braces lack.
func (b Braces) check() error {
	if b == (Braces{}) {
		return nil
	}
	for _, m := range []struct {
		name, example string
		size          float64
	}{{"count", "7", b.Count}, {"width", `"1-1/8"`, b.Width}, {"thickness", `"3/8"`, b.Thickness}, {"length", "24", b.Length}} {
		if m.size <= 0 {
			return &KeyError{Key: "back.braces." + m.name, Reason: "braces that bend need their " + m.name, Example: m.name + " = " + m.example}
		}
	}
	if b.Count != math.Trunc(b.Count) {
		return &KeyError{Key: "back.braces.count", Reason: "a count is a whole number", Example: "count = 7"}
	}
	return nil
}

// beam returns the braces as one beam, and their wood's bending strength, Pa.
func (b Braces) beam() (body.Beam, float64, error) {
	wood, err := findWood(b.Wood, "back.braces")
	if err != nil {
		return body.Beam{}, 0, err
	}
	return body.Beam{Length: b.Length, Modulus: wood.ElasticModulus, Second: body.SecondMoment(b.Count, b.Width, b.Thickness), Half: b.Thickness / 2, Held: b.Held}, wood.RuptureModulus, nil
}

// steps is how often rest and give are solved in turn at most. Each step changes the
// load on the back by a part of the last change, a few hundredths for stiff backs.
const steps = 100

// lean poses people on a back that gives, and finds how far it gives and where the piece
// rests, which go together: the further it rests back, the more weight the back carries.
// rest returns the tilt at which the piece rests with a body on its seat.
func (s *seated) lean(d Design, rest func(body.Body) (tilt float64, rocks bool)) (Give, error) {
	bar, strength, err := d.Back.Braces.beam()
	if err != nil {
		return Give{}, err
	}
	var g Give
	for range steps {
		s.pose(d, g.Turn)
		tilt, rocks := rest(s.body)
		if !rocks {
			break // where it goes over, the back is the lesser care
		}
		before := g.Turn
		g = s.give(d, tilt, bar)
		if g.Turn > math.Pi/4 {
			return g, &KeyError{Key: "back.braces.thickness", Reason: fmt.Sprintf("these braces give way by more than 45 degrees under %s", s.sitter), Example: `thickness = "1/2"`}
		}
		if math.Abs(g.Turn-before) < 1e-12 {
			break
		}
	}
	g.Share = g.Stress / strength
	g.Least, g.Most = g.Share/(1+2*strengthSpread), g.Share/(1-2*strengthSpread)
	return g, nil
}

// give returns how the back gives at one tilt: trunk, head and upper arms turn about the
// hip joints, held by the back where the shoulder blades touch it,
//
//	F·lever = m·g·(hip's place less the balance point's, forward)
//
// and the forces of all who lean on it bend all braces together.
func (s *seated) give(d Design, tilt float64, bar body.Beam) Give {
	var g Give
	var lever, at float64
	for i, one := range s.people {
		on, hip := one.person.OnTheBack(s.figures[i]), s.figures[i].Hip
		level := r2.Rotate(r2.Sub(on.Centre, hip), tilt, r2.Vec{})
		lever = one.person.Blades()
		at = lever + one.person.HipUp() + d.Seat.Cushion
		g.Force += max(0, -level.X*on.Mass*d.floor().FreeFall()/lever)
	}
	g.Yield, g.Stress = bar.Bend(g.Force, at)
	g.Turn = math.Atan(g.Yield / lever)
	return g
}
