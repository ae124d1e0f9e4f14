package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// BenchCard returns the card that hangs over the bench: what to draw, bend and cut, and what to
// do when the level shows something else.
func BenchCard(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	blocks := []sheet.Block{bigBlock(w.units, l), curveBlock(w, l), tipsBlock(w, l)}
	if l.Form != nil {
		blocks = append(blocks, formBlock(w.units, l))
	} else if l.Board != nil {
		blocks = append(blocks, boardBlock(w, l))
	}
	if len(l.Legs) > 0 {
		blocks = append(blocks, sheet.Block{Title: "LEGS", Table: legTable(w, l, false)})
	}
	if len(l.Remedies) > 0 {
		blocks = append(append(blocks, remedyBlock(w, l)), seatedBlock(w, l.Rests[len(l.Rests)-1])...)
	}
	return benchPage(w, l, "bench card", source, blocks...)
}

// benchPage returns one of the bench's pages, at its foot what was not drawn and what was taken for it.
func benchPage(w wording, l layout.Layout, page, source string, blocks ...sheet.Block) sheet.Sheet {
	taken := sheet.Block{Lines: sheet.Says(taken(w.units, l), chairs.disclaimer)}
	return sheet.Sheet{Title: name(l.Design) + ": " + page, Source: source, Blocks: append(blocks, taken)}
}

// row returns a row whose cells are lengths, with the unit behind them.
func row(u units, label string, lengths ...float64) []string {
	return sheet.Across(label, lengths, u.bare, u.unit())
}

// bigBlock returns what is read from across the shop.
func bigBlock(u units, l layout.Layout) sheet.Block {
	var radii, inside []string
	for i, s := range l.Sweeps {
		if s.Radius == 0 {
			continue
		}
		radii = append(radii, u.bare(s.Radius))
		if l.Form != nil && l.Form.Radii[i].ConvexForm > 0 {
			inside = append(inside, u.bare(l.Form.Radii[i].ConvexForm))
		}
	}
	return sheet.Block{Big: true, Lines: sheet.Says("FLOOR EDGE RADIUS "+strings.Join(radii, ", ")+" "+u.unit(),
		when(len(inside) > 0, "FORM RADIUS %s %s, form inside the curve", strings.Join(inside, ", "), u.unit()))}
}

// curveBlock returns radius, trammel and pivot of each arc, from nose to tail, and where two of them meet.
func curveBlock(w wording, l layout.Layout) sheet.Block {
	t := &sheet.Table{}
	add := func(label string, get func(i int) float64) {
		lengths := make([]float64, len(l.Sweeps))
		for i, s := range l.Sweeps {
			if lengths[i] = get(i); s.Radius == 0 {
				lengths[i] = math.NaN() // a flat is drawn with a straightedge
			}
		}
		t.Add(row(w.units, label, lengths...)...)
	}
	var meet []string
	if n := len(l.Sweeps); n > 1 { // a single one stands large above
		t.Head = make([]string, n+2)
		for i, s := range l.Sweeps {
			t.Head[i+1] = strconv.Itoa(i + 1)
			if i > 0 {
				meet = append(meet, fmt.Sprintf("%s %s and %s up", w.bare(s.From.X), w.Forward, w.length(s.From.Y)))
			}
		}
		t.Head[1] += " (" + w.nose + ")"
		t.Head[n] += " (" + w.tail + ")"
		add("FLOOR EDGE RADIUS", func(i int) float64 { return l.Sweeps[i].Radius })
	}
	add("pivot "+w.fromCorner, func(i int) float64 { return l.Sweeps[i].Pivot.X })
	add("pivot over the floor line", func(i int) float64 { return l.Sweeps[i].Pivot.Y })
	if l.Rocker.Sole > 0 {
		add("pin to pencil, lower edge of the wood", func(i int) float64 { return l.Sweeps[i].Wood })
	}
	top := l.Sweeps[0].Top > 0
	if top {
		add("pin to pencil, top edge", func(i int) float64 { return l.Sweeps[i].Top })
	}
	cutter := l.Shop.Cutter
	bit := "pin to the middle of a " + w.length(cutter) + " bit, "
	add(bit+"lower edge", func(i int) float64 { return l.Sweeps[i].WoodArm(cutter).Middle })
	if top {
		add(bit+"top edge", func(i int) float64 { return l.Sweeps[i].TopArm(cutter).Middle })
	}
	form := func(label string, get func(bench.Form) float64) {
		add("FORM RADIUS, form "+label+" the curve", func(i int) float64 { return cmp.Or(get(l.Form.Radii[i]), math.NaN()) })
	}
	if l.Form != nil {
		form("inside", func(f bench.Form) float64 { return f.ConvexForm })
		form("outside", func(f bench.Form) float64 { return f.ConcaveForm })
	}
	return sheet.Block{Title: "CURVE AND TRAMMEL", Table: t,
		Lines: sheet.Says(when(len(meet) > 0, "The arcs touch, from the square corner, %s.", list(meet)))}
}

// tipsBlock returns what the tape tests, how deep and wide the rocker is, and how its top and ends run.
func tipsBlock(w wording, l layout.Layout) sheet.Block {
	tape, k := l.Report.Tape, l.Design.Rocker
	top := [...]string{piece.Concentric: "concentric", piece.Straight: "straight", piece.Taper: "tapered"}[k.Top]
	ends := [...]string{"square", "round", "eased to " + w.length(k.EaseOr())}
	return sheet.Block{Lines: sheet.Says(
		fmt.Sprintf("Low point %s %s. %s tip %s and %s tip %s off the floor; %s tip to tip, %s along the floor edge.",
			w.length(l.LowPoint()), w.fromCorner, upperFirst(w.nose), w.length(tape.NoseTip), w.tail, w.length(tape.TailTip),
			w.length(tape.TipToTip), w.length(tape.Edge)),
		fmt.Sprintf("%s deep at the low point, %s wide; top edge %s", w.length(l.Rocker.Depth),
			w.length(l.Rocker.Width), top)+
			when(k.Top == piece.Taper, " to %s at the %s and %s at the %s",
				w.length(cmp.Or(k.NoseDepth, l.Rocker.Depth)), w.noseEnd, w.length(cmp.Or(k.TailDepth, l.Rocker.Depth)), w.tailEnd)+
			fmt.Sprintf("; %s %s, %s %s", w.noseEnd, ends[k.NoseEnd], w.tailEnd, ends[k.TailEnd])+
			when(k.Sole > 0, "; a sole of %s, of which the depth is a part", w.length(k.Sole))+".")}
}

// thin writes a thickness to a hundredth of an inch or a tenth of a millimetre, with its unit.
func thin(u units, x float64) string {
	return strings.TrimSuffix(strings.TrimRight(fixed(u, x/quantity.In, 3, x*1e3, 1), "0"), ".") + " " + u.unit()
}

// formBlock says what is bent over the form.
func formBlock(u units, l layout.Layout) sheet.Block {
	if l.Form.Steam {
		return sheet.Block{Title: "STEAM-BENT", Lines: sheet.Says(fmt.Sprintf(
			"Off the form it loses %s of its bend, as you say or as makers report (6 to 10 %%, common practice).",
			percent(l.Form.Lost)))}
	}
	s := l.Strips
	return sheet.Block{Title: "STRIPS", Lines: sheet.Says(fmt.Sprintf("%d strips of %s for each rocker, %s long, "+
		"%s waste at each end with it; ripped from %s of board, cuts and planing counted. The stack springs back by 1/%d of its bend.",
		s.Stack.Strips, thin(u, s.Strip), u.length(s.Stack.Length), u.length(l.Shop.EndWaste), u.length(s.Stack.Stock),
		s.SpringsBack()))}
}

// boardBlock returns the board of a sawn rocker.
func boardBlock(w wording, l layout.Layout) sheet.Block {
	b := l.Board
	lines := sheet.Says(fmt.Sprintf("Blank %s by %s by %s thick, the grain along it. "+
		"Two spooned the same way round: a board %s wide, the second shifted by %s across. "+
		"Left and its mirror image in one board, room for a cutter of %s and %s of wood between them: %s by %s.",
		w.length(b.Length), w.length(b.Width), w.length(l.Rocker.Width), w.length(b.Both), w.length(b.Shift),
		w.length(l.Shop.Cutter), w.length(l.Shop.Web), w.length(b.Pair.Length), w.length(b.Pair.Width)),
		fmt.Sprintf("The grain runs out at %s (%s) and %s (%s); thinnest across the grain %s.",
			w.degrees(b.NoseGrain), w.nose, w.degrees(b.TailGrain), w.tail, w.length(b.Thinnest)))
	if stock := l.Shop.StockWidth; stock > 0 && stock < b.Width {
		lines = append(lines, sheet.Wrong("Your boards are "+w.length(stock)+" wide: glue one on, or laminate it."))
	}
	return sheet.Block{Title: "BOARD", Lines: lines}
}

// remedyBlock returns what to do where the level on the empty piece shows something else.
func remedyBlock(w wording, l layout.Layout) sheet.Block {
	rest, slides := l.Rests[len(l.Rests)-1], l.Design.Rocker.Top != piece.Concentric
	t := &sheet.Table{Head: []string{"EMPTY, the level shows", "rear legs", "front legs", "the chair on them", ""}}
	if !slides {
		t.Head = slices.Delete(t.Head, 3, 4)
	}
	for _, r := range l.Remedies {
		rear, front := either(w.units, r.Rear, "–", "shim ", "cut "), either(w.units, r.Front, "–", "shim ", "cut ")
		cells := []string{"seat falls " + fallen(w, r.Shows), rear, "or " + front}
		if slides {
			cells = append(cells, either(w.units, r.Slide, "", "or back ", "or forward "))
		}
		t.Add(append(cells, w.unit())...)
	}
	return sheet.Block{Title: "EMPTY, THE LEVEL SHOWS: DO THIS", Table: t, Lines: sheet.Says(
		fmt.Sprintf("Dry-fitted, with all that belongs to it and NOBODY in it, the seat should fall %s.",
			fallen(w, l.Rests[0].SeatFalls)) +
			when(!rest.Empty, " With somebody in it it falls otherwise (%s: %s): cut nothing by that.",
				brief(rest.Load), fallen(w, rest.SeatFalls)+
					when(!math.IsNaN(rest.Pressed), ", to %s by the feet", fallen(w, rest.Pressed))) +
			when(!slides, " On a concentric top sliding changes the overhangs alone."))}
}

// seatedBlock returns what it says where the level shows something else with the first person in it.
func seatedBlock(w wording, rest layout.Rest) []sheet.Block {
	if math.IsNaN(rest.Least) {
		return nil
	}
	as := fallen(w, rest.SeatFalls) + when(!math.IsNaN(rest.Pressed), " to %s, as the feet press", fallen(w, rest.Pressed))
	t := &sheet.Table{Head: []string{strings.ToUpper(brief(rest.Load)) + ", the level shows", "then"}}
	t.Add("seat falls "+as, "as worked out")
	t.Add("seat falls "+fallen(w, rest.Least)+" to "+fallen(w, rest.Most), "so people of one size differ: cut nothing")
	t.Add("less, or more", "check it empty first, then move the low point")
	return []sheet.Block{{Title: "", Table: t}}
}

// fallen writes the fall of a seat, "4 1/2 degrees" or "1 degree forward".
func fallen(w wording, x float64) string {
	return w.degrees(unsigned(x)) + when(x < 0 && w.angle(unsigned(x)) != "0", " %s", w.Forward)
}

// either writes a length behind one word below zero and another above, none where there is none.
func either(u units, x float64, none, below, above string) string {
	if math.IsNaN(x) {
		return none
	}
	return pick(x < 0, below, above) + u.bare(unsigned(x))
}

// taken says what was taken where nothing was drawn; "" where all was.
func taken(u units, l layout.Layout) string {
	var texts []string
	for _, w := range l.Taken {
		texts = append(texts, fmt.Sprintf("%s legs plumb %s", w, takenUnder(w)))
	}
	size := func(taken, drawn float64, way string) string { return when(drawn == 0, "%s %s", u.length(taken), way) }
	sizes := func(what string, sizes ...string) string {
		said := list(given(sizes...))
		return when(said != "", "%s %s", what, said)
	}
	rocker, arms := l.Design.Rocker, l.Design.Arms
	drawn, _ := l.Design.ArmsOr()
	texts = given(append(texts, sizes("rockers", size(l.Rocker.Depth, rocker.Depth, "deep"),
		size(l.Rocker.Width, rocker.Width, "wide")),
		pick(l.ArmsTaken, sizes("arms", size(drawn.Length, arms.Length, "long"), size(drawn.Width, arms.Width, "wide")), ""),
		when(l.MadeTaken, "rockers %s", pick(l.Made == piece.Laminated, "glued up from strips", "sawn from a board")))...)
	said := when(len(texts) > 0, "NOT DRAWN, SO TAKEN: %s.", strings.Join(texts, "; "))
	for _, w := range l.OffRocker {
		said += fmt.Sprintf(" NOT DRAWN, SO LEFT OUT: the %s legs, which miss this rocker %s.", w, takenUnder(w))
	}
	return strings.TrimSpace(said)
}

// takenUnder says where legs that are not drawn are taken to stand.
func takenUnder(w piece.Which) string {
	return pick(w == piece.Front, "under the seat's front edge", "under where back and seat meet")
}
