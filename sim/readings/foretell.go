package readings

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// A Foretold is a reading with a level, or of a tip over the floor, beside what a piece would give.
type Foretold struct {
	Name      string // "balances_on_tail"
	Read      float64
	Would     float64 // NaN where the piece does not rest
	Uncertain float64 // of the reading, ± at 95 %
}

// Foretell returns for each reading with a level that was taken on a drawn seat, and of each tip over the floor, what a
// piece of a mass, balance point and inertia would give, rad or m: at its rest, and upright over the corner of each end.
func (r Readings) Foretell(piece body.Body) []Foretold {
	rig := sim.Rig{Profile: r.Edge, Body: piece, Floor: r.Floor}
	resting := math.NaN()
	if b := rig.Balance(); b.Outcome == sim.Rocks {
		resting = b.Rest.Tilt
	}
	var list []Foretold
	add := func(name string, read, would float64, deviations ...float64) {
		squares := 0.0
		for _, d := range deviations {
			squares += d * d
		}
		list = append(list, Foretold{name, read, would, twoSided95 * math.Sqrt(squares)})
	}
	tailTip, noseTip := r.tips()
	rest, tail, nose := r.tiltings()
	if r.SeatDrawn {
		if rest != nil {
			add(rest.name, rest.read, resting+r.SeatFall, rest.deviation, usualSeat)
		}
		for _, on := range []struct {
			read *tilting
			tip  tip
		}{{tail, tailTip}, {nose, noseTip}} {
			if on.read != nil {
				over := r2.Sub(piece.Centre, on.tip.centre)
				add(on.read.name, on.read.read, math.Atan2(over.X, over.Y)+r.SeatFall, on.read.deviation, usualSeat, usualEnd/r2.Norm(over))
			}
		}
	}
	for _, height := range []struct {
		name string
		read float64
		tip  tip
	}{{"nose_tip", r.NoseTip, noseTip}, {"tail_tip", r.TailTip, tailTip}} {
		if height.read == 0 {
			continue
		}
		would, slope := math.NaN(), 0.0
		if !math.IsNaN(resting) {
			would = r.Edge.Height(height.tip.point, resting)
			slope = r.Edge.Height(r2.Add(height.tip.point, height.tip.outward), resting) - would // along the edge's end
		}
		add(height.name, height.read, would, usualTape, usualEnd*slope)
	}
	return list
}
