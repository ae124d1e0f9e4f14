package layout

import (
	"cmp"
	"errors"
	"fmt"
	"math"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// A Panel is coopered of like staves.
type Panel struct {
	piece.Panel
	Curve bench.Coopered
	Stave bench.Stave
}

// mostStaves is how many staves are tried.
const mostStaves = 40

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

// panel lays out one. Where the staves are not counted it takes the fewest that leave half of
// the stock, which is our judgement.
func (l *Layout) panel(drawn piece.Panel, key string) (Panel, error) {
	for _, m := range []struct {
		name string
		size float64
	}{{"chord", drawn.Chord}, {"stock", drawn.Stock}} {
		if m.size <= 0 {
			return Panel{}, &piece.KeyError{Key: key + "." + m.name, Reason: "a coopered panel needs its " + m.name, Give: m.name}
		}
	}
	c := bench.Coopered{Chord: drawn.Chord, Radius: drawn.Radius, Staves: int(drawn.Staves), Stock: drawn.Stock}
	switch {
	case (drawn.Radius > 0) == (drawn.Rise > 0):
		return Panel{}, &piece.KeyError{Key: key + ".rise", Reason: "give how deep the panel is hollow, or its radius: one of the two", Give: "rise"}
	case drawn.Rise > drawn.Chord/2:
		return Panel{}, &piece.KeyError{Key: key + ".rise", Reason: "a panel is at most half a circle: it is no deeper than half its width", Give: "rise"}
	case drawn.Rise > 0:
		radius, err := bench.SagittaRadius(drawn.Chord, drawn.Rise)
		if err != nil {
			return Panel{}, &piece.KeyError{Key: key + ".rise", Reason: err.Error()}
		}
		c.Radius = radius
	}
	stave, err := c.Stave()
	if c.Staves == 0 {
		for n := 1; n <= mostStaves; n++ {
			c.Staves = n
			if stave, err = c.Stave(); err == nil && stave.Thick >= c.Stock/2 {
				break
			}
		}
	}
	var size *bench.SizeError
	if errors.As(err, &size) && size.What == "a stock" {
		half := math.Asin(c.Chord/2/c.Radius) / float64(c.Staves)
		return Panel{}, &piece.KeyError{Key: key + ".stock", Reason: fmt.Sprintf("%d staves of %s are hollowed through: the hollow is %s deep in each", c.Staves, l.with(c.Stock), l.with(c.Radius*(1-math.Cos(half)))), Give: "staves"}
	}
	if err != nil {
		return Panel{}, &piece.KeyError{Key: key + ".chord", Reason: "a panel of " + l.with(c.Chord) + " over a radius of " + l.with(c.Radius) + " is more than half a circle", Give: "radius"}
	}
	return Panel{drawn, c, stave}, nil
}
