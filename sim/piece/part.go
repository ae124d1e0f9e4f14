package piece

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// A Shape is one of the simple solids a piece is made up from.
type Shape int

const (
	Box       Shape = iota // Length along the floor, Height up, Width across
	Cylinder               // Diameter, Height along its axis
	Cone                   // Diameter at the foot, TopDiameter, Height along its axis
	Crosswise              // a round bar lying across the piece: Diameter, Width across
	Point                  // a mass at a place
)

var shapes = [...]string{"box", "cylinder", "cone", "crosswise", "point"}

func (s Shape) String() string { return shapes[s] }

// A Part is Count solids alike, one behind the other across the piece. Its weight is
// Mass, each, or its volume times the density of its wood.
type Part struct {
	Name        string
	Shape       Shape
	At          r2.Vec  // its middle, as drawn; of a cone the middle of its axis
	Lean        float64 // its height or axis from plumb, + back
	Length      float64
	Height      float64
	Width       float64
	Diameter    float64
	TopDiameter float64
	Count       float64 // zero means one
	Wood        string
	Density     float64 // kg/m³, instead of Wood
	Moisture    float64 // of Wood, by weight; zero means 12 %
	Mass        float64 // each, instead of Wood
}

// A solid is what is known of one shape.
type solid struct {
	needs  func(p Part) []need // its sizes
	body   func(p Part, mass float64) body.Body
	volume func(p Part) float64  // m³
	side   func(p Part) []r2.Vec // its corners around its middle, upright, closed
}

var solids = [...]solid{
	Box: {
		func(p Part) []need { return []need{{"length", p.Length}, {"height", p.Height}, {"width", p.Width}} },
		func(p Part, mass float64) body.Body { return body.Box(mass, p.Length, p.Height) },
		func(p Part) float64 { return body.BoxVolume(p.Length, p.Height, p.Width) },
		func(p Part) []r2.Vec { return corners(p.Length/2, p.Length/2, p.Height/2) },
	},
	Cylinder: {
		func(p Part) []need { return []need{{"height", p.Height}, {"diameter", p.Diameter}} },
		func(p Part, mass float64) body.Body { return body.Cylinder(mass, p.Diameter, p.Height) },
		func(p Part) float64 { return body.CylinderVolume(p.Diameter, p.Height) },
		func(p Part) []r2.Vec { return corners(p.Diameter/2, p.Diameter/2, p.Height/2) },
	},
	Cone: {
		func(p Part) []need { return []need{{"height", p.Height}, {"diameter", p.Diameter}} },
		func(p Part, mass float64) body.Body { return body.Cone(mass, p.Diameter, p.TopDiameter, p.Height) },
		func(p Part) float64 { return body.ConeVolume(p.Diameter, p.TopDiameter, p.Height) },
		func(p Part) []r2.Vec { return corners(p.Diameter/2, p.TopDiameter/2, p.Height/2) },
	},
	Crosswise: {
		func(p Part) []need { return []need{{"width", p.Width}, {"diameter", p.Diameter}} },
		func(p Part, mass float64) body.Body { return body.CrossCylinder(mass, p.Diameter) },
		func(p Part) float64 { return body.CylinderVolume(p.Diameter, p.Width) },
		round,
	},
	Point: {
		func(p Part) []need { return []need{{"weight", p.Mass}} },
		func(_ Part, mass float64) body.Body { return body.Point(mass) },
		func(Part) float64 { return 0 },
		round,
	},
}

// body returns the mass of the part in the seat frame. key is its place in the design, for errors.
func (p Part) body(key string) (body.Body, error) {
	if err := p.check(key); err != nil {
		return body.Body{}, err
	}
	mass, err := p.Each(key)
	if err != nil {
		return body.Body{}, err
	}
	return solids[p.Shape].body(p, mass).Scaled(cmp.Or(p.Count, 1)).Turned(p.Lean, r2.Vec{}).Moved(p.At), nil
}

// Each returns the mass of one, kg: its Mass, or its volume times the density of its wood. key is
// its place in the design, for the [*KeyError] of a wood that is unknown.
func (p Part) Each(key string) (float64, error) {
	if p.Mass > 0 {
		return p.Mass, nil
	}
	density, err := density(p.Wood, p.Density, p.Moisture, key)
	return density * solids[p.Shape].volume(p), err
}

// check reports the first size that the part's shape needs and has not got. Its width matters to its weight alone.
func (p Part) check(key string) error {
	needs := solids[p.Shape].needs(p)
	if p.Mass > 0 {
		needs = slices.DeleteFunc(needs, func(n need) bool { return n.name == "width" })
	}
	if err := lacking(key, fmt.Sprintf("a %s needs its", p.Shape), needs...); err != nil {
		return err
	}
	return whole(key+".count", p.Count)
}

// density returns the density of a wood by its name, or the one given instead.
func density(wood string, given, moisture float64, key string) (float64, error) {
	if given > 0 {
		return given, nil
	}
	w, err := FindWood(wood, key)
	if err != nil {
		return 0, err
	}
	if moisture == 0 {
		return w.Density, nil
	}
	d, err := w.DensityAt(moisture)
	if err != nil {
		return 0, &KeyError{Key: key + ".moisture", Reason: err.Error(), Give: "moisture"}
	}
	return d, nil
}

// round returns a circle around its middle; a point is drawn 2 cm across.
func round(p Part) []r2.Vec {
	radius := max(p.Diameter/2, 0.01)
	circle := make([]r2.Vec, 16)
	for i := range circle {
		sin, cos := math.Sincos(float64(i) * math.Pi / 8)
		circle[i] = r2.Vec{X: radius * cos, Y: radius * sin}
	}
	return circle
}

// corners returns a body upright about its middle.
func corners(foot, top, up float64) []r2.Vec {
	return []r2.Vec{{X: -foot, Y: -up}, {X: foot, Y: -up}, {X: top, Y: up}, {X: -top, Y: up}}
}
