package layout

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Size is that of a straight piece of wood, m, the grain along Length.
type Size struct{ Length, Width, Thick float64 }

// Volume returns the volume, m³.
func (s Size) Volume() float64 { return s.Length * s.Width * s.Thick }

// A Cut is one row of the cut list.
type Cut struct {
	Part     string
	Count    int
	Wood     string
	Finished Size // its length is that of the longest edge
	Rough    Size
	Each     float64 // mass of one as shaped, kg; NaN where neither its wood nor its weight is named
	Seat     bool    // whose grain runs front to back
	Wider    bool    // rough, than the boards there are
	Thicker  bool
}

// Volume returns the rough wood of all of them, m³, and in board feet.
func (c Cut) Volume() (cubic, boardFeet float64) {
	const boardFoot = 144 * quantity.In * quantity.In * quantity.In // m³: a foot by a foot by an inch
	cubic = float64(c.Count) * c.Rough.Volume()
	return cubic, cubic / boardFoot
}

// Mass returns the mass of all of them as shaped, kg; NaN where it is not known.
func (c Cut) Mass() float64 { return float64(c.Count) * c.Each }

// Sum returns what the cut list takes: rough wood, m³ and board feet, and the mass of all parts whose mass is known, kg.
func (l *Layout) Sum() (cubic, boardFeet, mass float64) {
	for _, c := range l.Cuts {
		m3, feet := c.Volume()
		cubic, boardFeet = cubic+m3, boardFeet+feet
		if one := c.Mass(); !math.IsNaN(one) {
			mass += one
		}
	}
	return cubic, boardFeet, mass
}

func (l *Layout) cuts() error {
	rockers := l.rockerCuts()
	l.legCuts()
	for _, p := range l.Pairs {
		if p.Name == "arm" && len(l.Design.Parts) == 0 {
			l.list(p.Name, 2, p.Size, "", math.NaN())
		}
	}
	err := cmp.Or(rockers, l.seatCuts())
	for i, p := range l.Design.Parts {
		err = cmp.Or(err, l.partCut(p, fmt.Sprintf("part.%d", i+1)))
	}
	return err
}

// rockerCuts lists strips or rockers, of which the wood inside the outline is what they weigh, and soles.
func (l *Layout) rockerCuts() error {
	k := l.Design.Rocker
	density, err := l.density(k.Wood, k.Density, "rocker")
	if err != nil {
		return err
	}
	weighs := math.Abs(l.Outline.Area()) * l.Rocker.Width * density
	switch {
	case l.Strips != nil:
		s := l.Strips
		size := Size{s.Stack.Length - 2*l.Shop.EndWaste, l.Rocker.Width, s.Strip}
		l.list("strip of the rockers", 2*s.Stack.Strips, size, k.Wood, weighs/float64(s.Stack.Strips))
	case l.Board != nil:
		l.list("rocker", 2, Size{l.Board.Length, l.Board.Width, l.Rocker.Width}, k.Wood, weighs)
	default:
		longest, _, err := l.Rocker.Bend()
		if err != nil {
			return err
		}
		l.list("rocker, to be steamed", 2, Size{longest, l.woodDepth(), l.Rocker.Width}, k.Wood, weighs)
	}
	if l.Rocker.Sole > 0 {
		l.list("sole", 2, Size{l.Rocker.Edge.Length(), l.Rocker.Width, l.Rocker.Sole}, "", math.NaN())
	}
	return nil
}

// legCuts lists legs to the top of the seat, and the blocks that are drawn.
func (l *Layout) legCuts() {
	for _, leg := range l.Legs {
		if leg.Taken && len(l.Design.Parts) > 0 {
			continue // it is one of the parts
		}
		if b := leg.Block; b != nil {
			high := max(b.NoseInner, b.NoseOuter, b.TailInner, b.TailOuter) + b.Bow
			l.list("block under the "+leg.Name, 2, sorted(leg.Side, leg.Side, high), "", math.NaN())
		}
		l.list(leg.Name, 2, leg.Finished, "", math.NaN())
	}
}

// seatCuts lists seat, braces and staves. The seat's length is its depth, along the grain.
func (l *Layout) seatCuts() error {
	d := l.Design
	if seat, there := l.member("seat"); there && d.Seat.Width > 0 && len(d.Parts) == 0 && !l.coopered("seat") {
		l.list("seat", 1, Size{seat.Length(), seat.Wide[0], seat.Thick}, "", math.NaN())
	}
	if b := d.Back.Braces; b.Count > 0 && b.Width > 0 && b.Thickness > 0 && b.Length > 0 {
		wood, err := l.density(b.Wood, 0, "back.braces")
		if err != nil {
			return err
		}
		l.list("back brace", int(math.Round(b.Count)), Size{b.Length, b.Width, b.Thickness}, b.Wood, wood*b.Length*b.Width*b.Thickness)
	}
	for _, p := range l.Panels {
		if p.Length > 0 {
			l.list("stave of the "+p.Name, p.Curve.Staves, Size{p.Length, max(p.Stave.Hollow, p.Stave.Round), p.Stock}, "", math.NaN())
			l.Cuts[len(l.Cuts)-1].Seat = l.fills(p, "seat")
		}
	}
	return nil
}

// coopered reports whether staves are listed for a part.
func (l *Layout) coopered(name string) bool {
	return slices.ContainsFunc(l.Panels, func(p Panel) bool { return l.fills(p, name) })
}

// fills reports whether the staves of a panel are listed and make up a part: by its name, or the seat by its size.
func (l *Layout) fills(p Panel, name string) bool {
	const same = 1.6e-3 // m: a sixteenth of an inch, as a tape reads it
	seat := l.Design.Seat
	sized := name == "seat" && math.Abs(p.Chord-seat.Width) < same && math.Abs(p.Length-seat.Depth) < same
	named := strings.EqualFold(p.Name, name) || slices.Contains(strings.Fields(strings.ToLower(p.Name)), strings.ToLower(name))
	return p.Length > 0 && (sized || named)
}

// partCut lists a part of the design that has sizes: a round one as the square it is turned from.
func (l *Layout) partCut(p piece.Part, key string) error {
	size := sorted(p.Length, p.Height, p.Width)
	switch p.Shape {
	case piece.Box:
		if strings.EqualFold(p.Name, "seat") {
			size = Size{p.Length, p.Width, p.Height}
		}
	case piece.Cylinder, piece.Cone:
		across := max(p.Diameter, p.TopDiameter)
		size = Size{p.Height, across, across}
	case piece.Crosswise:
		size = Size{p.Width, p.Diameter, p.Diameter}
	case piece.Point:
		return nil
	}
	if size.Volume() == 0 || l.coopered(p.Name) {
		return nil
	}
	each, err := p.Each(key)
	if err != nil {
		return err
	}
	l.list(cmp.Or(p.Name, key), max(1, int(p.Count)), size, p.Wood, each)
	return nil
}

// list adds a row with its rough size: end waste at both ends, planing, and the thickness of the board it comes out of.
func (l *Layout) list(part string, count int, finished Size, wood string, each float64) {
	s := l.Shop
	rough := Size{finished.Length + 2*s.EndWaste, finished.Width + s.Planing, finished.Thick + s.Planing}
	const same = 1e-9 // m
	wider := s.StockWidth > 0 && rough.Width > s.StockWidth+same
	thicker := s.StockThick > 0 && rough.Thick > s.StockThick+same
	if rough.Thick < s.StockThick && part != "strip of the rockers" {
		rough.Thick = s.StockThick
	}
	l.Cuts = append(l.Cuts, Cut{part, count, wood, finished, rough, each, strings.EqualFold(part, "seat"), wider, thicker})
}

// density returns the density of a wood, NaN where none is named.
func (l *Layout) density(name string, given float64, key string) (float64, error) {
	if given > 0 || name == "" {
		return cmp.Or(given, math.NaN()), nil
	}
	wood, err := piece.FindWood(name, key)
	return wood.Density, err
}

// sorted returns a size with the longest side as its length and the shortest as its thickness.
func sorted(a, b, c float64) Size {
	list := []float64{a, b, c}
	slices.Sort(list)
	return Size{list[2], list[1], list[0]}
}
