package quantity

import (
	"math"
	"slices"
	"strings"
)

// A Kind is what a number measures.
type Kind int

const (
	Length  Kind = iota // m
	Angle               // rad
	Mass                // kg
	Inertia             // kg·m²
	Time                // s
	Force               // N
	Moment              // N·m
	Damping             // N·m·s
	Speed               // m/s
	Gravity             // m/s²
	Density             // kg/m³
	Ratio               // 1
	Count               // 1
)

// A System decides the unit of a number that brings none, and how numbers are
// written for a maker.
type System int

const (
	Inch   System = iota // in, degrees, lb
	Metric               // mm, degrees, kg
)

// String returns the word for a system that stands in a design file.
func (s System) String() string { return [...]string{"inch", "metric"}[s] }

const (
	In = 0.0254     // an inch in m, exact (international yard and pound agreement, 1959)
	Lb = 0.45359237 // a pound in kg, exact (the same)
	// poundForce is a pound under standard gravity, N, exact.
	poundForce = 4.4482216152605
	Deg        = math.Pi / 180 // a degree in rad
)

// A unit is one way to write a kind of number.
type unit struct {
	names  []string // all lower case; the first is how we write it
	factor float64  // SI of one
}

// A scale is all that is known of one kind.
type scale struct {
	what    string    // "a length"
	example [2]string // as typed, by System
	most    float64
	units   []unit
	shop    [2]string // unit of a plain number as a maker reads it, by System
}

// scales holds what is known of each kind. The largest sizes are bounds of sense, far
// beyond any piece: 100 km, a turn, 1000 t.
var scales = [...]scale{
	Length: {what: "a length", example: [2]string{"17 1/2 in", "445 mm"}, most: 1e5, shop: [2]string{"in", "mm"}, units: []unit{
		{[]string{"m", "metre", "metres", "meter", "meters"}, 1},
		{[]string{"cm"}, 0.01},
		{[]string{"mm"}, 0.001},
		{[]string{"in", "inch", "inches", `"`, "″", "”", "“", "''", "′′", "’’"}, In},
		{[]string{"ft", "foot", "feet", "'", "′", "’", "‘"}, 12 * In},
	}},
	Angle: {what: "an angle", example: [2]string{"15 deg", "15 deg"}, most: 2 * math.Pi, shop: [2]string{"degrees", "degrees"}, units: []unit{
		{[]string{"rad"}, 1},
		{[]string{"deg", "degree", "degrees", "°"}, Deg},
	}},
	Mass: {what: "a weight", example: [2]string{"26 lb", "12 kg"}, most: 1e6, shop: [2]string{"lb", "kg"}, units: []unit{
		{[]string{"kg"}, 1},
		{[]string{"g"}, 0.001},
		{[]string{"lb", "lbs", "pound", "pounds"}, Lb},
	}},
	Inertia: {what: "an inertia", example: [2]string{"2.1 kg m2", "2.1 kg m2"}, most: 1e12, shop: [2]string{"lb in2", "kg m2"}, units: []unit{
		{[]string{"kg m2"}, 1},
		{[]string{"lb in2"}, Lb * In * In},
		{[]string{"lb ft2"}, Lb * 144 * In * In},
	}},
	Time: {what: "a time", example: [2]string{"2.0 s", "2.0 s"}, most: 1e6, shop: [2]string{"s", "s"}, units: []unit{
		{[]string{"s", "sec", "second", "seconds"}, 1},
	}},
	Force: {what: "a force", example: [2]string{"5 lbf", "20 N"}, most: 1e9, shop: [2]string{"lb", "N"}, units: []unit{
		{[]string{"n"}, 1},
		{[]string{"lbf", "lb", "lbs"}, poundForce},
	}},
	Moment: {what: "a moment", example: [2]string{"2.5 N m", "2.5 N m"}, most: 1e9, shop: [2]string{"N m", "N m"}, units: []unit{
		{[]string{"n m", "nm"}, 1},
	}},
	Damping: {what: "a damping", example: [2]string{"2.5 N m s", "2.5 N m s"}, most: 1e9, shop: [2]string{"N m s", "N m s"}, units: []unit{
		{[]string{"n m s", "nms"}, 1},
	}},
	Speed: {what: "a speed", example: [2]string{"3 ft/s", "1 m/s"}, most: 1e4, shop: [2]string{"ft/s", "m/s"}, units: []unit{
		{[]string{"m/s"}, 1},
		{[]string{"ft/s"}, 12 * In},
	}},
	Gravity: {what: "an acceleration", example: [2]string{"9.80665 m/s2", "9.80665 m/s2"}, most: 1e3,
		shop: [2]string{"m/s2", "m/s2"}, units: []unit{
			{[]string{"m/s2"}, 1},
		}},
	Density: {what: "a density", example: [2]string{"42 lb/ft3", "670 kg/m3"}, most: 1e5, shop: [2]string{"lb/ft3", "kg/m3"}, units: []unit{
		{[]string{"kg/m3"}, 1},
		{[]string{"lb/ft3"}, Lb / (1728 * In * In * In)},
	}},
	Ratio: {what: "a ratio", example: [2]string{"0.35", "0.35"}, most: 1e6, shop: [2]string{"", ""}, units: []unit{
		{[]string{""}, 1},
		{[]string{"%"}, 0.01},
	}},
	Count: {what: "a number", example: [2]string{"4", "4"}, most: 1e6, shop: [2]string{"", ""}, units: []unit{
		{[]string{""}, 1},
	}},
}

// factor returns the SI value of one of the named unit of a kind.
func (s *scale) factor(name string) (float64, bool) {
	for _, u := range s.units {
		if slices.Contains(u.names, name) {
			return u.factor, true
		}
	}
	return 0, false
}

// bare returns the unit that a plain number has, bareFactor the SI value of one.
func (s *scale) bare(system System) string { return strings.ToLower(s.shop[system]) }

func (s *scale) bareFactor(system System) float64 {
	f, _ := s.factor(s.bare(system))
	return f
}

// Unit returns the unit behind a number as a maker reads it: "in", "degrees".
func Unit(kind Kind, system System) string { return scales[kind].shop[system] }
