package view

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// A leg is where shank and foot of somebody stand whose thighs ride, as [pose] places them, m: see [check.Load.FiguresAt].
type leg struct{ knee, ankle, heel, toe r2.Vec }

// legs returns where the legs of a load stand at the tilt: of people alike, who hide each other from the side, once.
func (p pose) legs(l *check.Load) (list []leg) {
	for i, j := range l.FiguresAt(p.tilt)[:len(l.Legs)] {
		if i == 0 || l.Legs[i] != l.Legs[i-1] {
			list = append(list, leg{p.place(j.Knee), p.place(j.Ankle), p.place(j.Heel), p.place(j.Toe)})
		}
	}
	return list
}

// foot draws a foot as a triangle.
func foot(p scene.Pen, ankle, heel, toe r2.Vec) scene.Shape { return p.Line(heel, ankle, toe, heel) }

// leg draws shank and foot of the n-th who sits, of a ghost, as groups that turn about the ankle where the view rocks.
func (f frame) leg(l leg, p scene.Pen, g ghost, n int) []scene.Group {
	whose := g.name
	if n > 0 {
		whose += fmt.Sprintf("-%d", n+1)
	}
	ankle := f.paper(l.ankle)
	shank := scene.Group{Name: "shank-" + whose, Shapes: []scene.Shape{p.Line(f.paper(l.knee), ankle)}}
	foot := scene.Group{Name: "foot-" + whose, Shapes: []scene.Shape{foot(p, ankle, f.paper(l.heel), f.paper(l.toe))}}
	if g.moves {
		shank.Moves, shank.About = scene.WithShank, ankle
		foot.Moves, foot.About = scene.WithFoot, ankle
	}
	return []scene.Group{shank, foot}
}

// bent writes how a leg that is drawn in one place stands in another, see [RockingView].
func (f frame) bent(drawn, now leg) string {
	moved := r2.Sub(f.svg(now.ankle), f.svg(drawn.ankle))
	turn := func(from, to, drawnFrom, drawnTo r2.Vec) string { // y runs down: clockwise is +
		by := heading(drawnFrom, drawnTo) - heading(from, to)
		return " " + quantity.Decimal(inDegrees(math.Remainder(by, 2*math.Pi)), 2)
	}
	return " " + quantity.Decimal(moved.X, 2) + " " + quantity.Decimal(moved.Y, 2) +
		turn(now.ankle, now.knee, drawn.ankle, drawn.knee) + turn(now.heel, now.toe, drawn.heel, drawn.toe)
}

// heading returns the direction from one place to another, from level, rad.
func heading(from, to r2.Vec) float64 {
	run := r2.Sub(to, from)
	return math.Atan2(run.Y, run.X)
}
