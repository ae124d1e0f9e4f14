package layout

import (
	"cmp"
	"errors"
	"fmt"
	"math"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// A Leg is one of a pair, the right one, as it stands on its rocker.
type Leg struct {
	piece.Leg
	Taken    bool // not drawn: plumb, and where it is taken to stand
	Line     bench.Leg
	Standing bench.Standing
	Side     float64 // of its section, m
	Finished Size
	Cut      float64                // by how much the foot's nose side is shorter than its tail side, m; zero on a block
	Across   float64                // by how much its inner side is shorter than its outer side, m; zero on a block
	Block    *bench.Block           // between it and the rocker; nil where none is drawn
	Joint    *[2]bench.RabbetChoice // in the seat, let in by half of its side; nil where that cannot be
}

// Sightline returns the angle at which a bevel gauge that shows the resultant is turned out from straight ahead, or from
// straight back where the foot is behind, rad; NaN of a plumb leg.
func (g *Leg) Sightline() float64 {
	if g.Standing.Resultant < 1e-9 {
		return math.NaN()
	}
	along := math.Abs(g.Standing.Sightline)
	return min(along, math.Pi-along)
}

// Track returns how far the foot of the leg and that of its mirror image stand apart, m.
func (g *Leg) Track() float64 { return 2 * g.Standing.Foot.Z }

func (l *Layout) legs() error {
	legs := l.Design.LegsOr()
	for i, drawn := range legs {
		leg, err := l.leg(drawn, numbered("leg", i, len(l.Design.Legs)))
		leg.Taken = i >= len(l.Design.Legs)
		switch {
		case err != nil && leg.Taken: // it was not its maker who put it there
			l.OffRocker = append(l.OffRocker, drawn.Which)
			continue
		case err != nil:
			return err
		case leg.Taken:
			l.Taken = append(l.Taken, drawn.Which)
		}
		leg.Name = cmp.Or(leg.Name, drawn.Which.String()+" leg")
		l.Legs = append(l.Legs, leg)
	}
	return nil
}

// numbered returns the key of the i-th of n entries of a name: without its number where it is the only one.
func numbered(name string, i, n int) string {
	if n > 1 {
		return fmt.Sprintf("%s.%d", name, i+1)
	}
	return name
}

// leg reads a leg as the member that it is, by which the pictures draw it too.
func (l *Layout) leg(drawn piece.Leg, key string) (Leg, error) {
	if drawn.Top == 0 && !l.Design.Seat.SlopeKnown() {
		return Leg{}, &piece.KeyError{Key: key + ".top", Reason: "without a drawn seat a leg needs its height", Give: "top"}
	}
	m, err := l.Design.StandLeg(drawn, l.Rocker.TopEdge(), l.Design.Carry(l.Report.Edge))
	if err != nil {
		return Leg{}, l.missed(err, key)
	}
	foot := m.Axis[0]
	line, err := bench.LegBetween(m.Enters, foot)
	if err != nil {
		return Leg{}, &piece.KeyError{Key: key + ".top",
			Reason: "the leg ends under the top edge of its rocker, which is " + l.with(foot.Y) + " over the floor there",
			Give:   "top"}
	}
	standing, err := l.Rocker.Stand(line)
	if err != nil {
		return Leg{}, l.missed(err, key)
	}
	leg := Leg{Leg: drawn, Line: line, Standing: standing, Side: drawn.SideOr()}
	length := standing.Length + l.Design.Seat.ThickOr() // of the centre line, from the foot to the top of the seat
	if drawn.Block > 0 {
		block, err := standing.Block(leg.Side, leg.Side, drawn.Block)
		if err != nil {
			return Leg{}, &piece.KeyError{Key: key + ".size", Reason: "no block fits under this leg: " + err.Error()}
		}
		leg.Block, length = &block, length-block.Shorter // sawn square
	} else {
		leg.Cut, leg.Across = leg.Side*math.Tan(standing.Cut), leg.Side*math.Tan(standing.Across)
	}
	// the longest edge is longer by half of what the foot is out of square, along the rocker and across it
	leg.Finished = Size{length + (math.Abs(leg.Cut)+math.Abs(leg.Across))/2, leg.Side, leg.Side}
	joint, err := bench.NotchJoint{Leg: leg.Side, Seat: l.Design.Seat.ThickOr(), Depth: leg.Side / 2}.RabbetChoices(math.Pi / 2)
	if err == nil {
		leg.Joint = &joint
	}
	return leg, nil
}

// missed explains a leg that does not come down on its rocker.
func (l *Layout) missed(err error, key string) error {
	var miss *bench.MissError
	if errors.As(err, &miss) {
		return &piece.KeyError{Key: key + ".at", Reason: fmt.Sprintf("the leg misses the rocker by %s, %s",
			l.with(miss.By), miss.Where), Give: "at"}
	}
	return l.explain(err)
}

// A Panel is coopered of like staves.
type Panel struct {
	piece.Panel
	Curve bench.Coopered
	Stave bench.Stave
}

func (l *Layout) panels() error {
	for i, drawn := range l.Design.Panels {
		p, err := l.panel(drawn, numbered("panel", i, len(l.Design.Panels)))
		if err != nil {
			return err
		}
		p.Name = cmp.Or(p.Name, "panel")
		l.Panels = append(l.Panels, p)
	}
	return nil
}

// panel lays out one. Staves that are not counted are the fewest that leave half of the stock: our judgement.
func (l *Layout) panel(drawn piece.Panel, key string) (Panel, error) {
	wrong := func(name, reason, give string) (Panel, error) {
		return Panel{}, &piece.KeyError{Key: key + "." + name, Reason: reason, Give: give}
	}
	c := bench.Coopered{Chord: drawn.Chord, Radius: drawn.Radius, Staves: int(drawn.Staves), Stock: drawn.Stock}
	switch {
	case drawn.Chord <= 0:
		return wrong("chord", "a coopered panel needs its chord", "chord")
	case drawn.Stock <= 0:
		return wrong("stock", "a coopered panel needs its stock", "stock")
	case (drawn.Radius > 0) == (drawn.Rise > 0):
		return wrong("rise", "give how deep the panel is hollow, or its radius: one of the two", "rise")
	case drawn.Rise > drawn.Chord/2:
		return wrong("rise", "a panel is at most half a circle: it is no deeper than half its width", "rise")
	case drawn.Rise > 0:
		radius, err := bench.SagittaRadius(drawn.Chord, drawn.Rise)
		if err != nil {
			return wrong("rise", err.Error(), "")
		}
		c.Radius = radius
	}
	stave, err := c.Stave()
	if c.Staves == 0 {
		const most = 40 // staves that are tried
		for n := 1; n <= most; n++ {
			c.Staves = n
			if stave, err = c.Stave(); err == nil && stave.Thick >= c.Stock/2 {
				break
			}
		}
	}
	var size *bench.SizeError
	if errors.As(err, &size) && size.What == "a stock" {
		hollow := c.Radius * (1 - math.Cos(math.Asin(c.Chord/2/c.Radius)/float64(c.Staves)))
		return wrong("stock", fmt.Sprintf("%d staves of %s are hollowed through: the hollow is %s deep in each",
			c.Staves, l.with(c.Stock), l.with(hollow)), "staves")
	}
	if err != nil {
		return wrong("chord",
			"a panel of "+l.with(c.Chord)+" over a radius of "+l.with(c.Radius)+" is more than half a circle", "radius")
	}
	return Panel{drawn, c, stave}, nil
}
