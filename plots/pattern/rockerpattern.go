package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// A LegMark is where a leg stands on a rocker's pattern.
type LegMark struct {
	Standing bench.Standing
	Side     float64 // of the leg, along the top edge, m
	Label    string
}

// EndWords are what is written at the ends of a rocker or its form, and which way is up.
type EndWords struct{ Nose, Tail, Up string }

// items names the ends inside an outline, and draws an arrow up in it.
func (w EndWords) items(outline bench.Path) []Item {
	foot := inWood(outline, 0.4, 0.3)
	return []Item{Name{inWood(outline, 0.96, 0.5), w.Nose}, Name{inWood(outline, 0.04, 0.5), w.Tail},
		Arrow{foot, r2.Add(foot, r2.Vec{Y: 0.015}), w.Up}}
}

// A RockerPattern is what the pattern of one rocker is made up from.
type RockerPattern struct {
	Part, Piece string
	Rocker      bench.Rocker
	Stations    []bench.Station
	Places      []string // what is written at each station; "" for nothing
	Legs        []LegMark
	Grain       float64 // heading of the grain, rad
	EndWords
	Notes [][]string // texts, each by its lines
}

// Drawing returns the pattern: outline, centre line, low point, stations, legs, square corner
// with the floor line it stands on, and grain. The error is an [*bench.OutlineError].
func (p RockerPattern) Drawing() (Drawing, error) {
	outline, err := p.Rocker.Outline()
	if err != nil {
		return Drawing{}, err
	}
	floor, wood, top, err := p.Rocker.Edges()
	if err != nil {
		return Drawing{}, err
	}
	sweeps, corner, err := p.Rocker.Trammel()
	if err != nil {
		return Drawing{}, err
	}
	d := Drawing{Part: p.Part, Piece: p.Piece, TipToTip: [2]r2.Vec{p.Rocker.Edge.Tail(), p.Rocker.Edge.Nose()}}
	low := p.Rocker.Edge.Contact(0)
	d.Items = append(d.Items, Curve{Path: outline}, Curve{Layer: Centre, Path: between(wood, top)})
	if p.Rocker.Sole > 0 {
		d.Items = append(d.Items, Curve{Layer: Marks, Path: floor})
	}
	d.Items = append(d.Items, Mark{At: low, Label: "low point"}, Corner{At: corner},
		Line{Layer: Centre, From: corner, To: r2.Vec{X: low.X, Y: corner.Y}, Label: "floor line"})
	d.Items = append(d.Items, p.tips(d.TipToTip)...)
	d.Items = append(d.Items, p.stations(corner.Y)...)
	for _, leg := range p.Legs {
		d.Items = append(d.Items, leg.items(p.Rocker.Depth)...)
	}
	for i, s := range sweeps {
		if i > 0 {
			d.Items = append(d.Items, Mark{At: r2.Add(corner, s.From), Label: "tangent point"})
		}
	}
	d.Items = append(d.Items, grainIn(wood, top, p.Grain))
	d.Items = append(d.Items, p.EndWords.items(outline)...)
	d.Items = append(d.Items, notes(p.Notes)...)
	return d, nil
}

// tips marks the tips of ends that are not square, where the wood does not show where to tape
// from: tail and nose.
func (p RockerPattern) tips(at [2]r2.Vec) []Item {
	var list []Item
	for i, end := range []bench.End{p.Rocker.Tail, p.Rocker.Nose} {
		if end.Finish != bench.Square {
			list = append(list, Mark{At: at[i], Label: "tip"})
		}
	}
	return list
}

// stations returns a tick on either edge at each place; floor is the height of the floor line.
func (p RockerPattern) stations(floor float64) []Item {
	const tick, same = 5e-3, 1e-9
	up := r2.Vec{Y: tick}
	var list []Item
	for i, s := range p.Stations {
		if i >= len(p.Places) || p.Places[i] == "" {
			continue
		}
		if math.Abs(s.Wood.X-s.At) < same { // else this edge ends before the station
			from := r2.Vec{X: s.Wood.X, Y: s.Wood.Y + floor}
			list = append(list, Line{From: from, To: r2.Add(from, up), Label: p.Places[i]})
		}
		if math.Abs(s.Top.X-s.At) < same {
			to := r2.Vec{X: s.Top.X, Y: s.Top.Y + floor}
			list = append(list, Line{From: to, To: r2.Sub(to, up)})
		}
	}
	return list
}

// items returns the marks of a leg: its centre line down into the wood and both its sides on
// the top edge.
func (m LegMark) items(depth float64) []Item {
	s := m.Standing
	foot := r2.Vec{X: s.Foot.X, Y: s.Foot.Y}
	down := along(s.Slope + s.Angle + math.Pi)
	side := r2.Scale(m.Side/2, along(s.Slope))
	into := r2.Scale(min(0.7*depth, 0.05), down)
	list := []Item{Line{Layer: Centre, From: foot, To: r2.Add(foot, into), Label: m.Label}}
	for _, at := range []r2.Vec{r2.Add(foot, side), r2.Sub(foot, side)} {
		list = append(list, Line{From: at, To: r2.Add(at, r2.Scale(0.35, into))})
	}
	return list
}

// between returns the middle line of the wood, by points a hundredth of its length apart: it
// is looked at, not cut along.
func between(wood, top bench.Path) bench.Path {
	const n = 100
	back := top.Reversed()
	var list []r2.Vec
	for i := range n + 1 {
		a, _ := wood.At(wood.Length() * float64(i) / n)
		b, _ := back.At(back.Length() * float64(i) / n)
		list = append(list, r2.Scale(0.5, r2.Add(a, b)))
	}
	return polyline(false, list...)
}

// grainIn returns an arrow along the grain in the middle of the wood, between low point and nose.
func grainIn(wood, top bench.Path, heading float64) Grain {
	back := top.Reversed()
	a, _ := wood.At(wood.Length() * 0.74)
	b, _ := back.At(back.Length() * 0.74)
	middle := r2.Add(a, r2.Scale(0.3, r2.Sub(b, a)))
	half := r2.Scale(0.025, along(heading))
	return Grain{From: r2.Sub(middle, half), To: r2.Add(middle, half)}
}
