package check

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/piece"
)

// A Bending is how one end of the rockers bends when the piece, with the heaviest of its
// sitters, stands on that tip alone. It is not a strength test.
type Bending struct {
	Tail   bool    // else the nose
	Load   string  // the heaviest
	Force  float64 // of the floor on one rocker, N
	Along  Section // worst where the grain follows the curve (laminated or bent)
	Across Section // worst where the rocker is sawn from a straight board
}

// At returns the worst section of a rocker that is made in a way: at its short grain where it is sawn.
func (b *Bending) At(made piece.Made) Section {
	if made == piece.Sawn {
		return b.Across
	}
	return b.Along
}

// A Section is one place of a rocker.
type Section struct {
	From        float64 // the tip, along the floor edge, m
	Grain       float64 // angle of the grain to the curve, rad
	Stress      float64 // in bending, Pa
	Least, Most float64 // share of the wood's bending strength, by its spread
}

// YieldSpread returns how much of the yield of a back that is worked out it is if the wood is stiffer by two standard
// deviations, and if it is softer by as much.
func YieldSpread() (least, most float64) {
	return 1 / (1 + 2*piece.ModulusSpread), 1 / (1 - 2*piece.ModulusSpread)
}

// hankinson is the bending strength at an angle φ to the grain as a part of that along it, by Hankinson's formula
//
//	S(φ)/S = q/(sinⁿφ + q·cosⁿφ)
//
// with n from 1.5 to 2 and q, the strength across the grain as a part of that along it,
// from 0.04 to 0.10 (Wood Handbook, chapter 5; from memory).
func hankinson(grain, n, q float64) float64 {
	sin, cos := math.Abs(math.Sin(grain)), math.Abs(math.Cos(grain))
	return q / (math.Pow(sin, n) + q*math.Pow(cos, n))
}

// bending returns how the rockers bend at nose and tail; none where depth, width and wood
// of a rocker are not given, or no seat that says where the legs stand.
func (b *Balanced) bending() ([]Bending, error) {
	d := b.Design
	r := d.Rocker
	if r.Wood == "" {
		return nil, nil
	}
	wood, err := piece.FindWood(r.Wood, "rocker") // also where no size asks for it: a name is not passed over
	if err != nil || r.Depth <= 0 || r.Width <= 0 || !d.Seat.SlopeKnown() || len(b.Loads) < 2 {
		return nil, err
	}
	heaviest := slices.MaxFunc(b.Loads[1:], func(a, b Load) int { return cmp.Compare(a.Rig.Body.Mass, b.Rig.Body.Mass) })
	end := Bending{Load: heaviest.Name, Force: heaviest.Rig.Body.Mass * heaviest.Rig.Floor.FreeFall() / 2}
	nose, tail := end, end
	tail.Tail = true
	nose.worst(b.Edge, r, b.Placed(d.Seat.FrontEdge()).X, wood.RuptureModulus)
	tail.worst(b.Edge, r, b.Placed(d.Seat.Meet()).X, wood.RuptureModulus)
	return []Bending{nose, tail}, nil
}

// worst finds the worst sections between the leg, at x, and the tip. The rocker is a cantilever from the leg: M =
// F·(distance of the section from the tip, along the floor, as the piece stands on the tip), σ = 6·M/(w·h²).
func (b *Bending) worst(edge rocker.Profile, r piece.Rocker, leg, strength float64) {
	tip, roll := edge.Nose(), edge.Bearing(0).To
	if b.Tail {
		tip, roll = edge.Tail(), edge.Bearing(edge.Bearings()-1).From
	}
	down, _ := rocker.Down(roll)
	forward := r2.Vec{X: -down.Y, Y: down.X}
	length := edge.Length()
	for i := range sections {
		from := length * float64(i) / sections // the tip
		p, along := section(edge, b.Tail, from, length/sections)
		if b.Tail && p.X > leg || !b.Tail && p.X < leg {
			break
		}
		depth := r.DepthAt(edge, b.Tail, from)
		if r.Top == piece.Straight {
			depth = max(r.Depth-p.Y, 1e-3)
		}
		arm := math.Abs(r2.Dot(forward, r2.Sub(tip, p)))
		section := Section{
			From: from, Grain: math.Abs(math.Atan2(along.Y, along.X)),
			Stress: 6 * b.Force * arm / (r.Width * depth * depth),
		}
		share := section.Stress / strength
		section.Least, section.Most = share/(1+2*piece.StrengthSpread), share/(1-2*piece.StrengthSpread)
		if section.Most > b.Along.Most {
			b.Along = section
		}
		section.Least /= hankinson(section.Grain, 2, 0.10)
		section.Most /= hankinson(section.Grain, 1.5, 0.04)
		if section.Most > b.Across.Most {
			b.Across = section
		}
	}
}

// sections is how many places of a rocker are looked at.
const sections = 400

// section returns the place so far from a tip along the edge, and the direction of the edge there, forward.
func section(edge rocker.Profile, tail bool, from, step float64) (r2.Vec, r2.Vec) {
	nose, _ := edge.Reach()
	at := func(from float64) r2.Vec {
		if tail {
			from = edge.Length() - from
		}
		p, _ := edge.At(nose - from)
		return p
	}
	along := r2.Sub(at(max(0, from-step/2)), at(from+step/2))
	if tail {
		along = r2.Scale(-1, along)
	}
	return at(from), along
}

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
// Both are found with the seat as it is carried on the rockers, on the empty piece.
func (l *Load) lean(d piece.Design, c piece.Carry, empty body.Body) (Give, error) {
	bar, strength, err := d.Back.Braces.Beam()
	if err != nil {
		return Give{}, err
	}
	var g Give
	for range steps {
		l.pose(d, g.Turn)
		on := *l
		on.Legs, on.Figures = slices.Clone(l.Legs), nil
		on.ride(c)
		if on.On(empty); on.Balance.Outcome != sim.Rocks {
			break // where it goes over, the back is the lesser care
		}
		before := g.Turn
		g = l.give(d, on.Balance.Rest.Tilt+c.Turn, bar)
		if g.Turn > math.Pi/4 {
			return g, &piece.KeyError{Key: "back.braces.thickness",
				Reason: fmt.Sprintf("these braces give way by more than 45 degrees under %s", l.Sitter), Give: "thickness"}
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
