package words

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// CutSheet returns the cut list: parts as finished, and the rough wood for them.
func CutSheet(l layout.Layout, source string) sheet.Sheet {
	v := voiceOf(l.Design)
	finished := &sheet.Table{Head: []string{"Finished", "", "", quantity.Unit(quantity.Mass, v.units)}}
	rough := &sheet.Table{Head: []string{"Rough", "", "", v.inUnits("board feet", "litres")}}
	var lines []sheet.Line
	var feet, cubic, mass float64
	for _, c := range l.Cuts {
		m3, bf := c.Volume()
		cubic, feet = cubic+m3, feet+bf
		part, of, weight := brief(c.Part), strconv.Itoa(c.Count)+" of", c.Mass()
		if !math.IsNaN(weight) {
			mass += weight
		}
		finished.Add(part, of, v.size(c.Finished), v.shop(weight, quantity.Mass))
		rough.Add(part, of, v.size(c.Rough), v.fixed(bf, 2, m3*1e3, 2))
		if remark := CutRemark(l, c); remark != "" {
			lines = append(lines, sheet.Line{Text: upperFirst(part) + ": " + remark + ".", Bad: c.Wider || c.Thicker})
		}
	}
	text := fmt.Sprintf("Rough wood in all: %.2f board feet, %.4f m³.", feet, cubic)
	if mass > 0 {
		text += fmt.Sprintf(" The parts of a named wood weigh %s as shaped.", v.mass(mass))
	} else {
		text += " Name a wood for the mass of a part."
	}
	strips := ""
	if l.Strips != nil {
		strips = v.bears(*l.Strips)
	}
	notes := sheet.Says(strips, text, "Length, width and thickness in "+v.inUnits("inches", "millimetres")+
		", the grain along the length, which is that of the longest edge; "+
		"round, shaped and tapered parts as the square they come out of"+string(v.legs)+". Only what is drawn is listed.")
	return v.bench(l, "cut list", source, sheet.Block{Table: finished}, sheet.Block{Table: rough}, sheet.Block{Lines: append(notes, lines...)})
}

// CutRemark says how the grain of a seat runs, and what does not come out of the boards there are;
// "" where there is nothing to say.
func CutRemark(l layout.Layout, c layout.Cut) string {
	v := voiceOf(l.Design)
	var remarks, over []string
	if c.Seat {
		remarks = append(remarks, "the grain runs front to back")
	}
	if c.Wider {
		over = append(over, "wider than your boards ("+v.length(l.Shop.StockWidth)+")")
	}
	if c.Thicker {
		over = append(over, "thicker than your boards ("+v.length(l.Shop.StockThick)+")")
	}
	if len(over) > 0 {
		remarks = append(remarks, "rough, it is "+strings.Join(over, " and ")+": glue it up")
	}
	return strings.Join(remarks, "; ")
}

// CutSize writes a size for a spreadsheet: with its unit, "3/4 in", for a bare fraction is taken for a
// day of a month, and so is "6.4" where a comma is the decimal point; whole millimetres plain.
func CutSize(x float64, units quantity.System) string {
	text := voice{units: units}.sized(x)
	if whole := strings.TrimSuffix(text, " mm"); !strings.Contains(whole, ".") {
		return whole
	}
	return text
}

// sized writes a size with its unit, one that no rule reads, as of a strip, finer.
func (v voice) sized(x float64) string {
	if rounded := quantity.Round(x, quantity.Length, v.units); math.Abs(rounded-x) > 1e-4 && x < 0.0127 {
		return v.thin(x)
	}
	return v.length(x)
}

// size writes three sizes: "41 × 1 1/4 × 1/4".
func (v voice) size(s layout.Size) string {
	return v.bare(s.Length) + " × " + v.bare(s.Width) + " × " + strings.TrimSuffix(v.sized(s.Thick), " "+v.unit())
}

// BoardSheet returns the words to the picture of a pair of rockers in one board.
func BoardSheet(l layout.Layout, source string) sheet.Sheet {
	v := voiceOf(l.Design)
	return v.bench(l, "board", source, v.boardBlock(l))
}

// StationSheet returns the heights of the edges at every station, over the floor line and
// over the chord, side by side.
func StationSheet(l layout.Layout, source string) sheet.Sheet {
	v := voiceOf(l.Design)
	sole := l.Rocker.Sole > 0
	heads := []string{"floor edge", "top edge"}
	if sole {
		heads = []string{"floor edge", "wood", "top edge"}
	}
	t := &sheet.Table{Head: append([]string{"Over the floor line"}, heads...)}
	t.Head = append(append(append(t.Head, "over tip to tip"), heads...), "")
	for i := range max(len(l.Stations), len(l.Chord)) {
		t.Add(append(append(v.station(l.Stations, i, sole), v.station(l.Chord, i, sole)...), "")...)
	}
	text := "All in " + v.inUnits("inches", "millimetres") + ": how far " + v.fromLow + ", and the heights there. " +
		"Over the straight line from tip to tip the low point stands square to it; below zero is under it. " +
		"A corner is where the wood of an end stops, in a row of its own; a dash, where an edge has ended before."
	return v.bench(l, "stations", source, sheet.Block{Table: t}, sheet.Block{Lines: sheet.Says(text)}, v.routerBlock(l))
}

// routerBlock returns the arms of a trammel with a router: from the pin to either side of the
// bit, which runs outside the wood.
func (v voice) routerBlock(l layout.Layout) sheet.Block {
	cutter := l.Shop.Cutter
	t := &sheet.Table{Head: []string{"Pin to a " + v.length(cutter) + " bit", "its near side", "its middle", "its far side", ""}}
	add := func(label string, arm bench.Arm) {
		if arm != (bench.Arm{}) {
			t.Add(v.row(label, arm.Inside, arm.Middle, arm.Outside)...)
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
		return sheet.Block{}
	}
	return sheet.Block{Table: t}
}

// station returns the cells of one station: where, and the heights of the edges; blanks where
// there is no such station.
func (v voice) station(stations []bench.Station, i int, sole bool) []string {
	if i >= len(stations) {
		return make([]string, 3+map[bool]int{true: 1}[sole])
	}
	s := stations[i]
	label := v.bare(s.At)
	if s.Ends != bench.Passing {
		names := map[bench.Ending]string{bench.Tip: " tip, ", bench.WoodCorner: " lower corner, ", bench.TopCorner: " top corner, "}
		label = pick(s.Nose, v.nose, v.tail) + names[s.Ends] + label
	}
	edges := [][2]float64{{s.Floor.X, s.Floor.Y}, {s.Wood.X, s.Wood.Y}, {s.Top.X, s.Top.Y}}
	if !sole {
		edges = append(edges[:1], edges[2])
	}
	return sheet.Across(label, edges, func(p [2]float64) string {
		if math.Abs(p[0]-s.At) > 1e-9 { // it ends elsewhere
			return "–"
		}
		return v.bare(p[1])
	})
}

// Places returns what is written at each station of a pattern: its distance from the low
// point, nothing at it and where an edge ends.
func Places(l layout.Layout) []string {
	v := voiceOf(l.Design)
	places := make([]string, len(l.Stations))
	for i, s := range l.Stations {
		if s.At != 0 && s.Ends == bench.Passing {
			places[i] = v.bare(math.Abs(s.At))
		}
	}
	return places
}
