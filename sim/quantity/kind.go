package quantity

import (
	"cmp"
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

// A System decides the unit of a number that brings none, and how numbers are written for a maker.
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

// A pair is a text for each System.
type pair [2]string

// A scale is all that is known of one kind.
type scale struct {
	what    string // "a length"
	example pair   // as typed
	shop    pair   // unit of a plain number as a maker reads it
	most    float64
	units   []unit
}

// scales holds what is known of each kind. The largest sizes are bounds of sense: 100 km, a turn, 1000 t.
var scales = [...]scale{
	Length: {"a length", pair{"17 1/2 in", "445 mm"}, pair{"in", "mm"}, 1e5, []unit{
		{[]string{"m", "metre", "metres", "meter", "meters"}, 1},
		{[]string{"cm"}, 0.01},
		{[]string{"mm"}, 0.001},
		{[]string{"in", "inch", "inches", `"`, "″", "”", "“", "''", "′′", "’’"}, In},
		{[]string{"ft", "foot", "feet", "'", "′", "’", "‘"}, 12 * In}}},
	Angle: {"an angle", pair{"15 deg", "15 deg"}, pair{"degrees", "degrees"}, 2 * math.Pi, []unit{
		{[]string{"rad"}, 1}, {[]string{"deg", "degree", "degrees", "°"}, Deg}}},
	Mass: {"a weight", pair{"26 lb", "12 kg"}, pair{"lb", "kg"}, 1e6, []unit{
		{[]string{"kg"}, 1}, {[]string{"g"}, 0.001}, {[]string{"lb", "lbs", "pound", "pounds"}, Lb}}},
	Inertia: {"an inertia", pair{"2.1 kg m2", "2.1 kg m2"}, pair{"lb in2", "kg m2"}, 1e12, []unit{
		{[]string{"kg m2"}, 1}, {[]string{"lb in2"}, Lb * In * In}, {[]string{"lb ft2"}, Lb * 144 * In * In}}},
	Time: {"a time", pair{"2.0 s", "2.0 s"}, pair{"s", "s"}, 1e6, []unit{{[]string{"s", "sec", "second", "seconds"}, 1}}},
	Force: {"a force", pair{"5 lbf", "20 N"}, pair{"lb", "N"}, 1e9, []unit{
		{[]string{"n"}, 1}, {[]string{"lbf", "lb", "lbs"}, poundForce}}},
	Moment:  {"a moment", pair{"2.5 N m", "2.5 N m"}, pair{"N m", "N m"}, 1e9, []unit{{[]string{"n m", "nm"}, 1}}},
	Damping: {"a damping", pair{"2.5 N m s", "2.5 N m s"}, pair{"N m s", "N m s"}, 1e9, []unit{{[]string{"n m s", "nms"}, 1}}},
	Speed: {"a speed", pair{"3 ft/s", "1 m/s"}, pair{"ft/s", "m/s"}, 1e4, []unit{
		{[]string{"m/s"}, 1}, {[]string{"ft/s"}, 12 * In}}},
	Gravity: {"an acceleration", pair{"9.80665 m/s2", "9.80665 m/s2"}, pair{"m/s2", "m/s2"}, 1e3, []unit{{[]string{"m/s2"}, 1}}},
	Density: {"a density", pair{"42 lb/ft3", "670 kg/m3"}, pair{"lb/ft3", "kg/m3"}, 1e5, []unit{
		{[]string{"kg/m3"}, 1}, {[]string{"lb/ft3"}, Lb / (1728 * In * In * In)}}},
	Ratio: {"a ratio", pair{"0.35", "0.35"}, pair{}, 1e6, []unit{{[]string{""}, 1}, {[]string{"%"}, 0.01}}},
	Count: {"a number", pair{"4", "4"}, pair{}, 1e6, []unit{{[]string{""}, 1}}},
}

// factor returns the SI value of one of the named unit, by default that of a plain number.
func (s *scale) factor(name string, system System) (float64, bool) {
	name = cmp.Or(name, strings.ToLower(s.shop[system]))
	for _, u := range s.units {
		if slices.Contains(u.names, name) {
			return u.factor, true
		}
	}
	return 0, false
}

// One returns the SI value of a plain 1 in a file of a system: 0.0254 of a length in inches.
func One(kind Kind, system System) float64 {
	one, _ := scales[kind].factor("", system)
	return one
}

// Unit returns the unit behind a number as a maker reads it: "in", "degrees".
func Unit(kind Kind, system System) string { return scales[kind].shop[system] }
