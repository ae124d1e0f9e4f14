package piece

import (
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Section is one of the parts that a design is told in, in the order in which it is told.
type Section struct {
	Name  string
	Label string // "Who sits in it"
	Made  bool   // a shop makes it, and on its measures hangs how the piece rocks
}

var sections = [...]Section{
	{"rocker", "Rocker", true},
	{"seat", "Seat", true},
	{"bed", "Bed", true},
	{"back", "Back", true},
	{"arms", "Arms", true},
	{"piece", "Weight of the piece", true},
	{"part", "Parts", true},
	{"body", "The piece in numbers", true},
	{"leg", "Legs", false},
	{"panel", "Coopered panels", false},
	{"measured", "Measured", false},
	{"sitter", "Who sits in it", false},
	{"people", "Who else is checked", false},
	{"floor", "Floor", false},
	{"limits", "Limits: what it must keep", false},
	{"target", "What is aimed for", false},
	{"shop", "What the shop holds", false},
}

// Sections returns the table of sections.
func Sections() []Section { return slices.Clone(sections[:]) }

// A List is what a design has several of: a section that stands several times, or an entry with many values.
type List struct {
	Name string // "sitter", "rocker.arcs"
	What string // "people"
	Most int    // far more than any piece has: what so many ask of the slowest command takes seconds, not minutes

	Have func(d *Design) int    // how many a design has
	Make func(d *Design, n int) // gives it n of them, none of them drawn

	clone func(d *Design)
}

var lists = [...]List{
	listOf("sitter", "people", 20, func(d *Design) *[]Sitter { return &d.Sitters }),
	listOf("part", "parts", 200, func(d *Design) *[]Part { return &d.Parts }),
	listOf("leg", "pairs of legs", 20, func(d *Design) *[]Leg { return &d.Legs }),
	listOf("panel", "panels", 20, func(d *Design) *[]Panel { return &d.Panels }),
	listOf("rocker.arcs", "arcs of a rocker", 300, func(d *Design) *[]Arc { return &d.Rocker.Arcs }),
	listOf("rocker.rises", "rises of a rocker", 60, func(d *Design) *[]float64 { return &d.Rocker.Rises }),
	listOf("rocker.points", "points of a rocker", 60, func(d *Design) *[]r2.Vec { return &d.Rocker.Points }),
	listOf("measured.left", "rises of a rocker", 60, func(d *Design) *[]float64 { return &d.Measured.Left }),
	listOf("measured.right", "rises of a rocker", 60, func(d *Design) *[]float64 { return &d.Measured.Right }),
}

func listOf[T any](name, what string, most int, of func(d *Design) *[]T) List {
	return List{name, what, most, func(d *Design) int { return len(*of(d)) }, func(d *Design, n int) { *of(d) = make([]T, n) },
		func(d *Design) { *of(d) = slices.Clone(*of(d)) }}
}

// Lists returns the table of lists.
func Lists() []List { return slices.Clone(lists[:]) }

// IsList reports whether a section stands several times.
func IsList(section string) bool {
	return slices.ContainsFunc(lists[:], func(l List) bool { return l.Name == section && !strings.Contains(section, ".") })
}
