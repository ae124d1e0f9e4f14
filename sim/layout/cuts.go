package layout

import (
	"fmt"
	"math"
	"slices"

	"rockerwright/body"
	"rockerwright/sim/piece"
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
	Finished Size
	Rough    Size
	Density  float64 // of the wood, kg/m³; NaN where none is named
}

// boardFoot is a board of a foot by a foot by an inch, m³.
const boardFoot = 144 * 0.0254 * 0.0254 * 0.0254

// Volume returns the rough wood of all of them, m³, and in board feet.
func (c Cut) Volume() (cubic, boardFeet float64) {
	cubic = float64(c.Count) * c.Rough.Volume()
	return cubic, cubic / boardFoot
}

// Mass returns the mass of all of them as finished squares, kg; NaN where no wood is named.
func (c Cut) Mass() float64 { return float64(c.Count) * c.Finished.Volume() * c.Density }

// cuts lists the parts that are drawn.
func (l *Layout) cuts() error {
	k := l.Design.Rocker
	wood, err := l.density(k.Wood, k.Density, "rocker")
	if err != nil {
		return err
	}
	switch {
	case l.Strips != nil:
		s := l.Strips
		c := l.rough("strip of the rockers", 2*s.Stack.Strips, Size{s.Stack.Length - 2*l.Shop.EndWaste, l.Rocker.Width, s.Strip}, k.Wood, wood)
		l.Cuts = append(l.Cuts, c)
	case l.Board != nil:
		l.Cuts = append(l.Cuts, l.rough("rocker", 2, Size{l.Board.Length, l.Board.Width, l.Rocker.Width}, k.Wood, wood))
	default:
		longest, _, err := l.Rocker.Bend()
		if err != nil {
			return l.explain(err)
		}
		depth := max(l.Rocker.Depth, l.Rocker.NoseDepth, l.Rocker.TailDepth) - l.Rocker.Sole
		l.Cuts = append(l.Cuts, l.rough("rocker, to be steamed", 2, Size{longest, depth, l.Rocker.Width}, k.Wood, wood))
	}
	if l.Rocker.Sole > 0 {
		l.Cuts = append(l.Cuts, l.rough("sole", 2, Size{l.Rocker.Edge.Length(), l.Rocker.Width, l.Rocker.Sole}, "", math.NaN()))
	}
	l.legCuts()
	for _, p := range l.Pairs {
		if p.Name == "arm" && len(l.Design.Parts) == 0 {
			l.Cuts = append(l.Cuts, l.rough(p.Name, 2, p.Size, "", math.NaN()))
		}
	}
	if err := l.seatCuts(); err != nil {
		return err
	}
	for i, p := range l.Design.Parts {
		if err := l.partCut(p, fmt.Sprintf("part.%d", i+1)); err != nil {
			return err
		}
	}
	return nil
}

// legCuts lists legs to the top of the seat, and the blocks that are drawn.
func (l *Layout) legCuts() {
	for _, leg := range l.Legs {
		if leg.Taken && len(l.Design.Parts) > 0 {
			continue // it is one of the parts
		}
		if leg.Leg.Block > 0 {
			high := leg.Block.Middle + math.Abs(leg.Block.Nose-leg.Block.Middle) + math.Abs(leg.Block.Inner-leg.Block.Middle) + leg.Block.Bow
			l.Cuts = append(l.Cuts, l.rough("block under the "+leg.Name, 2, sorted(leg.Side, leg.Side, high), "", math.NaN()))
		}
		l.Cuts = append(l.Cuts, l.rough(leg.Name, 2, leg.finished(l.Design), "", math.NaN()))
	}
}

// seatCuts lists seat, braces and staves.
func (l *Layout) seatCuts() error {
	d := l.Design
	if d.Seat.Width > 0 && d.Seat.Depth > 0 && len(d.Parts) == 0 {
		l.Cuts = append(l.Cuts, l.rough("seat", 1, sorted(d.Seat.Depth, d.Seat.Width, d.Seat.ThickOr()), "", math.NaN()))
	}
	if b := d.Back.Braces; b.Count > 0 && b.Width > 0 && b.Thickness > 0 && b.Length > 0 {
		wood, err := l.density(b.Wood, 0, "back.braces")
		if err != nil {
			return err
		}
		l.Cuts = append(l.Cuts, l.rough("back brace", int(math.Round(b.Count)), Size{b.Length, b.Width, b.Thickness}, b.Wood, wood))
	}
	for _, p := range l.Panels {
		if p.Length > 0 {
			l.Cuts = append(l.Cuts, l.rough("stave of the "+p.Name, p.Curve.Staves, Size{p.Length, max(p.Stave.Hollow, p.Stave.Round), p.Stock}, "", math.NaN()))
		}
	}
	return nil
}

// partCut lists a part of the design that has sizes: a round one as the square it is turned from.
func (l *Layout) partCut(p piece.Part, key string) error {
	size := sorted(p.Length, p.Height, p.Width)
	switch p.Shape {
	case piece.Cylinder, piece.Cone:
		across := max(p.Diameter, p.TopDiameter)
		size = Size{p.Height, across, across}
	case piece.Crosswise:
		size = Size{p.Width, p.Diameter, p.Diameter}
	case piece.Point:
		return nil
	}
	if size.Volume() == 0 {
		return nil
	}
	wood, err := l.density(p.Wood, p.Density, key)
	if err != nil {
		return err
	}
	name := p.Name
	if name == "" {
		name = key
	}
	l.Cuts = append(l.Cuts, l.rough(name, max(1, int(p.Count)), size, p.Wood, wood))
	return nil
}

// rough returns a row with its rough size: the end waste at both ends, the planing in width and
// thickness, and of the boards there are the thickness that it comes out of.
func (l *Layout) rough(part string, count int, finished Size, wood string, density float64) Cut {
	s := l.Shop
	rough := Size{finished.Length + 2*s.EndWaste, finished.Width + s.Planing, finished.Thick + s.Planing}
	if rough.Thick < s.StockThick && part != "strip of the rockers" {
		rough.Thick = s.StockThick
	}
	return Cut{part, count, wood, finished, rough, density}
}

// density returns the density of a wood, NaN where none is named.
func (l *Layout) density(name string, given float64, key string) (float64, error) {
	if given > 0 {
		return given, nil
	}
	if name == "" {
		return math.NaN(), nil
	}
	wood, err := body.FindWood(name)
	if err != nil {
		return 0, &piece.KeyError{Key: key + ".wood", Reason: fmt.Sprint(err), Example: `wood = "black walnut"`}
	}
	return wood.Density, nil
}

// sorted returns a size with the longest side as its length and the shortest as its thickness.
func sorted(a, b, c float64) Size {
	list := []float64{a, b, c}
	slices.Sort(list)
	return Size{list[2], list[1], list[0]}
}
