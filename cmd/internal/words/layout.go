package words

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// BenchCard returns the card that hangs over the bench: what to draw, bend and cut, and what to
// do when the level shows something else.
func BenchCard(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	s := Sheet{Title: v.benchTitle(l, "bench card"), Source: source}
	s.Blocks = append(s.Blocks, v.bigBlock(l), v.curveBlock(l), v.tipsBlock(l))
	switch {
	case l.Form != nil:
		s.Blocks = append(s.Blocks, v.formBlock(l))
	case l.Board != nil:
		s.Blocks = append(s.Blocks, v.boardBlock(l))
	}
	if len(l.Legs) > 0 {
		s.Blocks = append(s.Blocks, Block{Title: "LEGS", Table: v.legTable(l, false)})
	}
	if len(l.Remedies) > 0 {
		s.Blocks = append(s.Blocks, v.remedyBlock(l))
	}
	s.Blocks = append(s.Blocks, v.takenBlock(l))
	return s
}

// benchTitle names one of the bench's pages.
func (v voice) benchTitle(l layout.Layout, page string) string {
	name := l.Design.Title
	if name == "" {
		name = "Untitled " + v.piece()
	}
	return short(name) + ": " + page
}

// unit is that of lengths.
func (v voice) unit() string { return quantity.Unit(quantity.Length, v.units) }

// row returns a row whose cells are lengths, with the unit behind them.
func (v voice) row(label string, lengths ...float64) Row {
	cells := []string{label}
	for _, x := range lengths {
		cells = append(cells, v.shop(x, quantity.Length))
	}
	return Row{Cells: append(cells, v.unit())}
}

// arcHeads name the arcs of a rocker: nothing for a single one.
func (v voice) arcHeads(l layout.Layout) []string {
	if len(l.Sweeps) < 2 {
		return nil
	}
	nose, tail := v.tips()
	heads := []string{""}
	for i := range l.Sweeps {
		name := strconv.Itoa(i + 1)
		switch i {
		case 0:
			name += " (" + nose + ")"
		case len(l.Sweeps) - 1:
			name += " (" + tail + ")"
		}
		heads = append(heads, name)
	}
	return append(heads, "")
}

// bigBlock returns what is read from across the shop.
func (v voice) bigBlock(l layout.Layout) Block {
	var radii, inside []string
	for i, s := range l.Sweeps {
		if s.Radius == 0 {
			continue
		}
		radii = append(radii, v.shop(s.Radius, quantity.Length))
		if l.Form != nil && l.Form.Radii[i].ConvexForm > 0 {
			inside = append(inside, v.shop(l.Form.Radii[i].ConvexForm, quantity.Length))
		}
	}
	lines := []Line{{Text: "FLOOR EDGE RADIUS " + strings.Join(radii, ", ") + " " + v.unit()}}
	if len(inside) > 0 {
		lines = append(lines, Line{Text: "FORM RADIUS " + strings.Join(inside, ", ") + " " + v.unit() + ", form inside the curve"})
	}
	return Block{Big: true, Lines: lines}
}

// curveBlock returns radius, trammel and pivot of each arc.
func (v voice) curveBlock(l layout.Layout) Block {
	column := func(get func(i int) float64) []float64 {
		var list []float64
		for i := range l.Sweeps {
			x := get(i)
			if l.Sweeps[i].Radius == 0 {
				x = math.NaN() // a flat is drawn with a straightedge
			}
			list = append(list, x)
		}
		return list
	}
	cutter := l.Shop.Cutter
	t := &Table{Head: v.arcHeads(l)}
	add := func(label string, get func(i int) float64) { t.Rows = append(t.Rows, v.row(label, column(get)...)) }
	if len(l.Sweeps) > 1 {
		add("floor edge radius", func(i int) float64 { return l.Sweeps[i].Radius })
	}
	add("pivot forward of the square corner", func(i int) float64 { return l.Sweeps[i].Pivot.X })
	add("pivot over the floor line", func(i int) float64 { return l.Sweeps[i].Pivot.Y })
	if l.Rocker.Sole > 0 {
		add("pin to pencil, lower edge of the wood", func(i int) float64 { return l.Sweeps[i].Wood })
	}
	if l.Sweeps[0].Top > 0 {
		add("pin to pencil, top edge", func(i int) float64 { return l.Sweeps[i].Top })
	}
	bit := v.with(cutter, quantity.Length)
	add("pin to the middle of a "+bit+" bit, lower edge", func(i int) float64 { return l.Sweeps[i].WoodArm(cutter).Middle })
	if l.Sweeps[0].Top > 0 {
		add("pin to the middle of a "+bit+" bit, top edge", func(i int) float64 { return l.Sweeps[i].TopArm(cutter).Middle })
	}
	return Block{Title: "CURVE AND TRAMMEL", Table: t, Lines: v.tangents(l)}
}

// tangents says where two arcs meet.
func (v voice) tangents(l layout.Layout) []Line {
	var places []string
	for _, s := range l.Sweeps[1:] {
		places = append(places, fmt.Sprintf("%s forward and %s up", v.shop(s.From.X, quantity.Length), v.with(s.From.Y, quantity.Length)))
	}
	if len(places) == 0 {
		return nil
	}
	return []Line{{Text: "The arcs touch, from the square corner, " + list(places) + "."}}
}

// tipsBlock returns what the tape tests.
func (v voice) tipsBlock(l layout.Layout) Block {
	nose, tail := v.tips()
	tape := l.Report.Tape
	lines := []Line{
		{Text: fmt.Sprintf("Low point %s forward of the square corner. %s tip %s and %s tip %s off the floor; %s tip to tip, %s along the floor edge.",
			v.with(-l.Corner.X, quantity.Length), upperFirst(nose), v.with(tape.NoseTip, quantity.Length), tail, v.with(tape.TailTip, quantity.Length),
			v.with(tape.TipToTip, quantity.Length), v.with(tape.Edge, quantity.Length))},
		{Text: v.section(l)},
	}
	return Block{Lines: lines}
}

// section says how deep and wide the rocker is, and how its top and ends run.
func (v voice) section(l layout.Layout) string {
	k := l.Design.Rocker
	text := fmt.Sprintf("%s deep at the low point, %s wide; top edge ", v.with(l.Rocker.Depth, quantity.Length), v.with(l.Rocker.Width, quantity.Length))
	switch k.Top {
	case piece.Straight:
		text += "straight"
	case piece.Taper:
		text += fmt.Sprintf("tapered to %s at the nose and %s at the tail", v.with(or(k.NoseDepth, l.Rocker.Depth), quantity.Length), v.with(or(k.TailDepth, l.Rocker.Depth), quantity.Length))
	default:
		text += "concentric"
	}
	ends := [...]string{"square", "round", "eased to " + v.with(k.EaseOr(), quantity.Length)}
	text += fmt.Sprintf("; nose %s, tail %s", ends[k.NoseEnd], ends[k.TailEnd])
	if k.Sole > 0 {
		text += fmt.Sprintf("; a sole of %s, of which the depth is a part", v.with(k.Sole, quantity.Length))
	}
	return text + "."
}

func or(x, other float64) float64 {
	if x == 0 {
		return other
	}
	return x
}

// thin writes a thickness to a hundredth of an inch or a tenth of a millimetre, with its unit.
func (v voice) thin(x float64) string {
	text := strconv.FormatFloat(x/0.0254, 'f', 3, 64)
	if v.units == quantity.Metric {
		text = strconv.FormatFloat(x*1e3, 'f', 1, 64)
	}
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".") + " " + v.unit()
}

// formBlock returns strips and form, floor-edge radius and form radius told apart.
func (v voice) formBlock(l layout.Layout) Block {
	t := &Table{Head: v.arcHeads(l)}
	var floor, inside, outside []float64
	for _, f := range l.Form.Radii {
		floor, inside, outside = append(floor, none(f.FloorEdge)), append(inside, none(f.ConvexForm)), append(outside, none(f.ConcaveForm))
	}
	if len(floor) > 1 {
		t.Rows = append(t.Rows, v.row("floor edge radius, finished", floor...))
	}
	t.Rows = append(t.Rows,
		v.row("FORM RADIUS, form inside the curve (touches the top edge)", inside...),
		v.row("FORM RADIUS, form outside the curve (touches the floor side)", outside...))
	if l.Form.Steam {
		return Block{Title: "STEAM-BENT, OVER A FORM", Table: t, Lines: []Line{{Text: fmt.Sprintf(
			"Off the form it loses %.0f %% of its bend, as you say or as makers report (6 to 10 %%, common practice).", l.Form.Lost*100)}}}
	}
	return Block{Title: "STRIPS AND FORM", Table: t, Lines: v.strips(l)}
}

// none makes a radius that there is not one that is not shown.
func none(radius float64) float64 {
	if radius == 0 {
		return math.NaN()
	}
	return radius
}

// strips says what the stack is made of.
func (v voice) strips(l layout.Layout) []Line {
	s := l.Strips
	wood := "A usual hardwood"
	if s.Wood != "" {
		wood = s.Wood
	}
	bears := fmt.Sprintf("%s bears %s at that bend (strain %.2f %%, half of what breaks it)", wood, v.thin(s.Thickest), s.Strain*100)
	if s.Common > 0 {
		bears += fmt.Sprintf("; makers use up to %s (common practice)", v.with(s.Common, quantity.Length))
	}
	return []Line{
		{Text: fmt.Sprintf("%d strips of %s for each rocker, %s long, %s waste at each end with it; ripped from %s of board, cuts and planing counted. The stack springs back by 1/%d of its bend.",
			s.Stack.Strips, v.thin(s.Strip), v.with(s.Stack.Length, quantity.Length), v.with(l.Shop.EndWaste, quantity.Length), v.with(s.Stack.Stock, quantity.Length),
			s.Stack.Strips*s.Stack.Strips)},
		{Text: bears + "."},
	}
}

// boardBlock returns the board of a sawn rocker.
func (v voice) boardBlock(l layout.Layout) Block {
	b := l.Board
	nose, tail := v.tips()
	lines := []Line{
		{Text: fmt.Sprintf("Blank %s by %s by %s thick, the grain along it. Two spooned the same way round: a board %s wide, the second shifted by %s across. Left and its mirror image in one board: %s by %s.",
			v.with(b.Length, quantity.Length), v.with(b.Width, quantity.Length), v.with(l.Rocker.Width, quantity.Length), v.with(b.Both, quantity.Length), v.with(b.Shift, quantity.Length),
			v.with(b.Pair.Length, quantity.Length), v.with(b.Pair.Width, quantity.Length))},
		{Text: fmt.Sprintf("The grain runs out at %s (%s) and %s (%s); thinnest across the grain %s.",
			v.with(b.NoseGrain, quantity.Angle), nose, v.with(b.TailGrain, quantity.Angle), tail, v.with(b.Thinnest.Thick, quantity.Length))},
	}
	if stock := l.Shop.StockWidth; stock > 0 && stock < b.Width {
		lines = append(lines, Line{Text: fmt.Sprintf("Your boards are %s wide: glue one on, or laminate it.", v.with(stock, quantity.Length)), Bad: true})
	}
	return Block{Title: "BOARD", Lines: lines}
}

// legTable returns the numbers of the legs; with all, those of block and joint too.
func (v voice) legTable(l layout.Layout, all bool) *Table {
	t := &Table{Head: []string{""}}
	for _, leg := range l.Legs {
		t.Head = append(t.Head, plain(short(leg.Name)))
	}
	t.Head = append(t.Head, "")
	add := func(label string, kind quantity.Kind, get func(leg layout.Leg) float64) {
		cells := []string{label}
		for _, leg := range l.Legs {
			cells = append(cells, v.shop(get(leg), kind))
		}
		unit := quantity.Unit(kind, v.units)
		t.Rows = append(t.Rows, Row{Cells: append(cells, unit)})
	}
	length := func(label string, get func(leg layout.Leg) float64) { add(label, quantity.Length, get) }
	angle := func(label string, get func(leg layout.Leg) float64) { add(label, quantity.Angle, get) }
	length("length on the centre line, seat to rocker", func(g layout.Leg) float64 { return g.Standing.Length })
	length("meets the rocker, ahead of the low point", func(g layout.Leg) float64 { return g.Standing.Foot.X })
	angle("bevel, rocker to leg, towards the nose", func(g layout.Leg) float64 { return g.Standing.Angle })
	angle("foot cut off square, side view", func(g layout.Leg) float64 { return g.Standing.Cut })
	angle("rake, foot ahead", func(g layout.Leg) float64 { return g.Line.Rake })
	angle("splay, foot out", func(g layout.Leg) float64 { return g.Line.Splay })
	angle("resultant (lean from plumb)", func(g layout.Leg) float64 { return g.Standing.Resultant })
	angle("sightline, from the fore-and-aft line", func(g layout.Leg) float64 { return v.sightline(g) })
	if !all {
		return v.told(t)
	}
	angle("foot cut off square, across the rocker", func(g layout.Leg) float64 { return g.Standing.Across })
	length("with a block: length of the leg, sawn square", func(g layout.Leg) float64 { return g.Standing.Length - g.Block.Shorter })
	length("  block, height at its nose side", func(g layout.Leg) float64 { return g.Block.Nose })
	length("  block, height at its tail side", func(g layout.Leg) float64 { return g.Block.Tail })
	length("  block, height at its inner side", func(g layout.Leg) float64 { return g.Block.Inner })
	length("  block, height at its outer side", func(g layout.Leg) float64 { return g.Block.Outer })
	angle("  block, its upper face, side view", func(g layout.Leg) float64 { return g.Block.Side })
	angle("  block, its upper face, across", func(g layout.Leg) float64 { return g.Block.Across })
	length("side of the square section", func(g layout.Leg) float64 { return g.Side })
	return t
}

// told returns a table without the rows that say nothing: rake and splay of plumb legs.
func (v voice) told(t *Table) *Table {
	var rows []Row
	for _, row := range t.Rows {
		empty := true
		for _, cell := range row.Cells[1 : len(row.Cells)-1] {
			empty = empty && (cell == "0" || cell == "–")
		}
		if !empty {
			rows = append(rows, row)
		}
	}
	if len(rows) == len(t.Rows)-4 {
		cells := make([]string, len(t.Head))
		cells[0] = "plumb: no rake, no splay"
		rows = append(rows, Row{Cells: cells})
	}
	return &Table{Head: t.Head, Rows: rows}
}

// sightline returns a leg's sightline; of a plumb leg there is none.
func (v voice) sightline(g layout.Leg) float64 {
	if g.Standing.Resultant < 1e-9 {
		return math.NaN()
	}
	along := math.Abs(g.Standing.Sightline)
	return min(along, math.Pi-along)
}

// remedyBlock returns what to do where the level shows something else.
func (v voice) remedyBlock(l layout.Layout) Block {
	rest := l.Rests[len(l.Rests)-1]
	slides := l.Design.Rocker.Top != piece.Concentric
	shows := "sitting, the level shows"
	if rest.Empty {
		shows = "the level shows"
	}
	t := &Table{Head: []string{shows, "empty", "rear legs", "front legs"}}
	if slides {
		t.Head = append(t.Head, "the chair on them")
	}
	t.Head = append(t.Head, "")
	for _, r := range l.Remedies {
		cells := []string{"seat falls " + v.fallen(r.Shows), v.towards(r.Empty), v.cut(r.Rear), "or " + v.cut(r.Front)}
		if slides {
			cells = append(cells, v.slid(r.Slide))
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, v.unit())})
	}
	lines := []Line{{Text: fmt.Sprintf("The seat should fall %s (%s) and %s empty.", v.fallen(rest.SeatFalls), plain(short(rest.Load)), v.fallen(l.Rests[0].SeatFalls))}}
	if !slides {
		lines[0].Text += " On a concentric top sliding changes the overhangs alone."
	}
	return Block{Title: "THE LEVEL SHOWS: DO THIS", Table: t, Lines: lines}
}

// fallen writes the fall of a seat, "4 1/2 degrees" or "1 degree forward".
func (v voice) fallen(x float64) string {
	text := v.with(math.Abs(x), quantity.Angle)
	if x < 0 && v.shop(-x, quantity.Angle) != "0" {
		return text + " " + v.forwards()
	}
	return text
}

// cut writes what is cut off a pair of legs, or put under it.
func (v voice) cut(x float64) string {
	switch {
	case math.IsNaN(x):
		return "–"
	case x < 0:
		return "shim " + v.shop(-x, quantity.Length)
	}
	return "cut " + v.shop(x, quantity.Length)
}

// slid writes which way and how far.
func (v voice) slid(x float64) string {
	switch {
	case math.IsNaN(x):
		return ""
	case x < 0:
		return "or back " + v.shop(-x, quantity.Length)
	}
	return "or forward " + v.shop(x, quantity.Length)
}

// takenBlock says on every page what was not drawn and what was taken for it.
func (v voice) takenBlock(l layout.Layout) Block {
	var lines []Line
	if taken := v.taken(l); taken != "" {
		lines = append(lines, Line{Text: taken})
	}
	return Block{Lines: append(lines, Line{Text: "A calculation for your judgement, no certificate. Clamp and sit before glue."})}
}

// taken says what was taken where nothing was drawn; "" where all was.
func (v voice) taken(l layout.Layout) string {
	var texts []string
	places := map[piece.Which]string{piece.Front: "front legs plumb under the seat's front edge", piece.Rear: "rear legs plumb under where back and seat meet"}
	for _, w := range l.Taken {
		texts = append(texts, places[w])
	}
	if l.Usual {
		texts = append(texts, fmt.Sprintf("rockers %s deep and %s wide", v.with(l.Rocker.Depth, quantity.Length), v.with(l.Rocker.Width, quantity.Length)))
	}
	switch {
	case !l.MadeTaken:
	case l.Made == piece.Laminated:
		texts = append(texts, "rockers glued up from strips")
	default:
		texts = append(texts, "rockers sawn from a board")
	}
	said := ""
	if len(texts) > 0 {
		said = "NOT DRAWN, SO TAKEN: " + strings.Join(texts, "; ") + "."
	}
	for _, w := range l.Astray {
		said += fmt.Sprintf(" NOT DRAWN, SO LEFT OUT: the %s legs, which miss this rocker %s.", w, strings.Split(places[w], " plumb ")[1])
	}
	return strings.TrimSpace(said)
}

// RockerNotes returns what stands on the pattern of a rocker beside the drawing.
func RockerNotes(l layout.Layout) [][]string {
	v := voiceOf(l.Design)
	trammel := []string{"TRAMMEL, from the square corner:"}
	for i, s := range l.Sweeps {
		name := ""
		if len(l.Sweeps) > 1 {
			name = fmt.Sprintf("arc %d: ", i+1)
		}
		if s.Radius == 0 {
			trammel = append(trammel, name+"straight")
			continue
		}
		trammel = append(trammel, fmt.Sprintf("%spivot %s forward, %s up", name, v.with(s.Pivot.X, quantity.Length), v.with(s.Pivot.Y, quantity.Length)))
		pin := fmt.Sprintf("%spin to floor edge %s", name, v.with(s.Floor, quantity.Length))
		if s.Top > 0 {
			pin += ", to top edge " + v.with(s.Top, quantity.Length)
		}
		trammel = append(trammel, pin)
	}
	trammel = append(trammel, "low point "+v.with(-l.Corner.X, quantity.Length)+" forward")
	notes := [][]string{trammel}
	if !v.sideways() {
		notes = append(notes, []string{"This face out: right rocker.", "Turned over: left rocker."})
	}
	if taken := v.taken(l); taken != "" {
		notes = append(notes, broken(taken, 56))
	}
	if l.Form != nil {
		notes = append(notes, v.formNote(l))
	}
	return notes
}

// formNote tells the two radii apart, on rocker and form alike.
func (v voice) formNote(l layout.Layout) []string {
	lines := []string{"FLOOR EDGE RADIUS is not FORM RADIUS:"}
	for i, f := range l.Form.Radii {
		name := ""
		if len(l.Form.Radii) > 1 {
			name = fmt.Sprintf("arc %d: ", i+1)
		}
		if f.FloorEdge > 0 {
			lines = append(lines, fmt.Sprintf("%sfloor edge %s, form inside the curve %s, outside %s", name, v.with(f.FloorEdge, quantity.Length), v.with(f.ConvexForm, quantity.Length), v.with(f.ConcaveForm, quantity.Length)))
		}
	}
	if l.Strips != nil {
		lines = append(lines, fmt.Sprintf("%d strips of %s, %s long", l.Strips.Stack.Strips, v.thin(l.Strips.Strip), v.with(l.Strips.Stack.Length, quantity.Length)))
	}
	return lines
}

// FormNotes returns what stands on the pattern of the form.
func FormNotes(l layout.Layout) [][]string {
	v := voiceOf(l.Design)
	return [][]string{append(v.formNote(l), "This is the form, not the rocker.")}
}

// PanelNotes returns what stands on the section of a panel.
func PanelNotes(l layout.Layout, p layout.Panel) [][]string {
	v := voiceOf(l.Design)
	s := p.Stave
	return [][]string{{
		fmt.Sprintf("%d staves of %s, each edge bevelled %s", p.Curve.Staves, v.with(p.Stock, quantity.Length), v.bevel(s.Bevel)),
		fmt.Sprintf("%s wide on the hollow face, %s on the round one", v.with(s.Hollow, quantity.Length), v.with(s.Round, quantity.Length)),
		fmt.Sprintf("hollow radius %s; %s left after shaping", v.with(p.Curve.Radius, quantity.Length), v.thin(s.Thick)),
	}}
}

// bevel writes a bevel to a tenth of a degree: it is taken twice for every stave.
func (v voice) bevel(x float64) string {
	return strconv.FormatFloat(x*180/math.Pi, 'f', 1, 64) + " degrees"
}

// broken breaks a text into lines of so many letters.
func broken(text string, columns int) []string {
	var lines []string
	for _, line := range wrap(text, columns) {
		lines = append(lines, strings.TrimSpace(line))
	}
	return lines
}
