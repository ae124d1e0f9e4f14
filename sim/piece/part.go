package piece

import (
	"fmt"
	"math"
	"strings"

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

// body returns the mass of the part in the seat frame. key is its place in the
// design, for errors.
func (p Part) body(key string) (body.Body, error) {
	if err := p.sized(key); err != nil {
		return body.Body{}, err
	}
	mass, err := p.Each(key)
	if err != nil {
		return body.Body{}, err
	}
	var solid body.Body
	switch p.Shape {
	case Box:
		solid = body.Box(mass, p.Length, p.Height)
	case Cylinder:
		solid = body.Cylinder(mass, p.Diameter, p.Height)
	case Cone:
		solid = body.Cone(mass, p.Diameter, p.TopDiameter, p.Height)
	case Crosswise:
		solid = body.CrossCylinder(mass, p.Diameter)
	case Point:
		solid = body.Point(mass)
	}
	count := p.Count
	if count == 0 {
		count = 1
	}
	return solid.Scaled(count).Turned(p.Lean, r2.Vec{}).Moved(p.At), nil
}

// Each returns the mass of one, kg: its Mass, or its volume times the density of its wood. key is
// its place in the design, for the [*KeyError] of a wood that is unknown.
func (p Part) Each(key string) (float64, error) {
	if p.Mass > 0 {
		return p.Mass, nil
	}
	density, err := density(p.Wood, p.Density, p.Moisture, key)
	return density * p.volume(), err
}

// volume returns the volume of one, m³.
func (p Part) volume() float64 {
	switch p.Shape {
	case Box:
		return body.BoxVolume(p.Length, p.Height, p.Width)
	case Cylinder:
		return body.CylinderVolume(p.Diameter, p.Height)
	case Cone:
		return body.ConeVolume(p.Diameter, p.TopDiameter, p.Height)
	case Crosswise:
		return body.CylinderVolume(p.Diameter, p.Width)
	}
	return 0
}

// sized reports the first size that the part's shape needs and has not got.
func (p Part) sized(key string) error {
	need := map[string]float64{}
	switch p.Shape {
	case Box:
		need = map[string]float64{"length": p.Length, "height": p.Height}
		if p.Mass == 0 {
			need["width"] = p.Width
		}
	case Cylinder, Cone:
		need = map[string]float64{"diameter": p.Diameter, "height": p.Height}
	case Crosswise:
		need = map[string]float64{"diameter": p.Diameter}
		if p.Mass == 0 {
			need["width"] = p.Width
		}
	case Point:
		need = map[string]float64{"weight": p.Mass}
	}
	for _, name := range []string{"length", "height", "width", "diameter", "weight"} {
		if size, asked := need[name]; asked && size <= 0 {
			return &KeyError{Key: key + "." + name, Reason: fmt.Sprintf("a %s needs its %s", p.Shape, name), Give: name}
		}
	}
	if p.Count != math.Trunc(p.Count) {
		return &KeyError{Key: key + ".count", Reason: "a count is a whole number", Give: "count"}
	}
	return nil
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

// findWood returns the wood of a name.
func FindWood(name, key string) (body.Wood, error) {
	if name == "" {
		return body.Wood{}, &KeyError{Key: key + ".wood", Reason: "name a wood", Give: "wood"}
	}
	w, err := body.FindWood(name)
	if err != nil {
		return w, &KeyError{Key: key + ".wood", Reason: strings.TrimPrefix(err.Error(), "body: "), Give: "wood"}
	}
	return w, nil
}

// outline returns the solid from the side, closed, in the seat frame.
func (p Part) outline() []r2.Vec {
	var half []r2.Vec // the corners around its middle, upright
	switch p.Shape {
	case Box:
		half = corners(p.Length/2, p.Length/2, p.Height/2)
	case Cylinder:
		half = corners(p.Diameter/2, p.Diameter/2, p.Height/2)
	case Cone:
		half = corners(p.Diameter/2, p.TopDiameter/2, p.Height/2)
	default:
		radius := max(p.Diameter/2, 0.01)
		for i := range 16 {
			sin, cos := math.Sincos(float64(i) * math.Pi / 8)
			half = append(half, r2.Vec{X: radius * cos, Y: radius * sin})
		}
	}
	for i := range half {
		half[i] = r2.Add(p.At, r2.Rotate(half[i], p.Lean, r2.Vec{}))
	}
	return half
}

// corners returns a body upright about its middle.
func corners(foot, top, up float64) []r2.Vec {
	return []r2.Vec{{X: -foot, Y: -up}, {X: foot, Y: -up}, {X: top, Y: up}, {X: -top, Y: up}}
}
