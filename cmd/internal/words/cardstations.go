package words

import (
	"fmt"
	"math"

	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// StationSheet returns the heights of the edges at every station, over the floor line and
// over the chord, side by side.
func StationSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	sole := l.Rocker.Sole > 0
	heads := []string{"floor edge", "top edge"}
	if sole {
		heads = []string{"floor edge", "wood", "top edge"}
	}
	t := &Table{Head: append([]string{"Over the floor line"}, heads...)}
	t.Head = append(append(append(t.Head, "over tip to tip"), heads...), "")
	for i := range max(len(l.Stations), len(l.Chord)) {
		left, right := v.station(l.Stations, i, sole), v.station(l.Chord, i, sole)
		t.Rows = append(t.Rows, Row{Cells: append(append(left, right...), "")})
	}
	text := "All in " + map[quantity.System]string{quantity.Inch: "inches", quantity.Metric: "millimetres"}[v.units] +
		": how far " + v.fromLow + ", and the heights there. Over the straight line from tip to tip the low point stands square to it; below zero is under it. " +
		"A corner is where the wood of an end stops, in a row of its own; a dash, where an edge has ended before."
	return Sheet{Title: v.benchTitle(l, "stations"), Source: source, Blocks: []Block{{Table: t}, {Lines: []Line{{Text: text}}}, v.routerBlock(l), v.takenBlock(l)}}
}

// routerBlock returns the arms of a trammel with a router: from the pin to either side of the
// bit, which runs outside the wood.
func (v voice) routerBlock(l layout.Layout) Block {
	cutter := l.Shop.Cutter
	t := &Table{Head: []string{"Pin to a " + v.with(cutter, quantity.Length) + " bit", "its near side", "its middle", "its far side", ""}}
	add := func(label string, arm bench.Arm) {
		if arm != (bench.Arm{}) {
			t.Rows = append(t.Rows, v.row(label, arm.Inside, arm.Middle, arm.Outside))
		}
	}
	for i, s := range l.Sweeps {
		of := ""
		if len(l.Sweeps) > 1 {
			of = fmt.Sprintf(", arc %d", i+1)
		}
		add("lower edge"+of, s.WoodArm(cutter))
		add("top edge"+of, s.TopArm(cutter))
	}
	if len(t.Rows) == 0 {
		return Block{}
	}
	return Block{Table: t}
}

// station returns the cells of one station: where, and the heights of the edges; blanks where
// there is no such station.
func (v voice) station(stations []bench.Station, i int, sole bool) []string {
	if i >= len(stations) {
		return make([]string, 3+map[bool]int{true: 1}[sole])
	}
	s := stations[i]
	label := v.shop(s.At, quantity.Length)
	if s.Ends != bench.Passing {
		names := map[bench.Ending]string{bench.Tip: " tip, ", bench.WoodCorner: " lower corner, ", bench.TopCorner: " top corner, "}
		label = pick(s.Nose, v.nose, v.tail) + names[s.Ends] + label
	}
	height := func(x, y float64) string {
		if math.Abs(x-s.At) > 1e-9 { // it ends elsewhere
			return "–"
		}
		return v.shop(y, quantity.Length)
	}
	cells := []string{label, height(s.Floor.X, s.Floor.Y)}
	if sole {
		cells = append(cells, height(s.Wood.X, s.Wood.Y))
	}
	return append(cells, height(s.Top.X, s.Top.Y))
}

// Places returns what is written at each station of a pattern: its distance from the low
// point, nothing at it and where an edge ends.
func Places(l layout.Layout) []string {
	v := voiceOf(l.Design)
	places := make([]string, len(l.Stations))
	for i, s := range l.Stations {
		if s.At != 0 && s.Ends == bench.Passing {
			places[i] = v.shop(math.Abs(s.At), quantity.Length)
		}
	}
	return places
}
