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

// thin writes a thickness to a hundredth of an inch or a tenth of a millimetre, with its unit.
func (v voice) thin(x float64) string {
	text := strconv.FormatFloat(x/0.0254, 'f', 3, 64)
	if v.units == quantity.Metric {
		text = strconv.FormatFloat(x*1e3, 'f', 1, 64)
	}
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".") + " " + v.unit()
}

// formBlock says what is bent over the form.
func (v voice) formBlock(l layout.Layout) Block {
	if l.Form.Steam {
		return Block{Title: "STEAM-BENT", Lines: []Line{{Text: fmt.Sprintf(
			"Off the form it loses %.0f %% of its bend, as you say or as makers report (6 to 10 %%, common practice).", l.Form.Lost*100)}}}
	}
	s := l.Strips
	return Block{Title: "STRIPS", Lines: []Line{{Text: fmt.Sprintf(
		"%d strips of %s for each rocker, %s long, %s waste at each end with it; ripped from %s of board, cuts and planing counted. The stack springs back by 1/%d of its bend.",
		s.Stack.Strips, v.thin(s.Strip), v.with(s.Stack.Length, quantity.Length), v.with(l.Shop.EndWaste, quantity.Length), v.with(s.Stack.Stock, quantity.Length),
		s.Stack.Strips*s.Stack.Strips)}}}
}

// none makes a radius that there is not one that is not shown.
func none(radius float64) float64 {
	if radius == 0 {
		return math.NaN()
	}
	return radius
}

// bears says how thick a strip may be.
func (v voice) bears(s layout.Strips) string {
	wood := "A usual hardwood"
	if s.Wood != "" {
		wood = s.Wood
	}
	text := fmt.Sprintf("%s bears strips up to %s at %s, the smallest radius (strain of %.2f %%, half of what breaks it)", wood, v.thin(s.Thickest), v.with(s.Tightest, quantity.Length), s.Strain*100)
	if s.Common > 0 {
		text += fmt.Sprintf("; makers use up to %s (common practice)", v.with(s.Common, quantity.Length))
	}
	return text + "."
}

// boardBlock returns the board of a sawn rocker.
func (v voice) boardBlock(l layout.Layout) Block {
	b := l.Board
	lines := []Line{
		{Text: fmt.Sprintf("Blank %s by %s by %s thick, the grain along it. Two spooned the same way round: a board %s wide, the second shifted by %s across. "+
			"Left and its mirror image in one board, room for a cutter of %s and %s of wood between them: %s by %s.",
			v.with(b.Length, quantity.Length), v.with(b.Width, quantity.Length), v.with(l.Rocker.Width, quantity.Length), v.with(b.Both, quantity.Length), v.with(b.Shift, quantity.Length),
			v.with(l.Shop.Cutter, quantity.Length), v.with(l.Shop.Web, quantity.Length),
			v.with(b.Pair.Length, quantity.Length), v.with(b.Pair.Width, quantity.Length))},
		{Text: fmt.Sprintf("The grain runs out at %s (%s) and %s (%s); thinnest across the grain %s.",
			v.with(b.NoseGrain, quantity.Angle), v.nose, v.with(b.TailGrain, quantity.Angle), v.tail, v.with(b.Thinnest.Thick, quantity.Length))},
	}
	if stock := l.Shop.StockWidth; stock > 0 && stock < b.Width {
		lines = append(lines, Line{Text: fmt.Sprintf("Your boards are %s wide: glue one on, or laminate it.", v.with(stock, quantity.Length)), Bad: true})
	}
	return Block{Title: "BOARD", Lines: lines}
}

// remedyBlock returns what to do where the level on the empty piece shows something else.
func (v voice) remedyBlock(l layout.Layout) Block {
	slides := l.Design.Rocker.Top != piece.Concentric
	t := &Table{Head: []string{"EMPTY, the level shows", "rear legs", "front legs"}}
	if slides {
		t.Head = append(t.Head, "the chair on them")
	}
	t.Head = append(t.Head, "")
	for _, r := range l.Remedies {
		cells := []string{"seat falls " + v.fallen(r.Shows), v.cut(r.Rear), "or " + v.cut(r.Front)}
		if slides {
			cells = append(cells, v.slid(r.Slide))
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, v.unit())})
	}
	text := fmt.Sprintf("Dry-fitted, with all that belongs to it and NOBODY in it, the seat should fall %s.", v.fallen(l.Rests[0].SeatFalls))
	if rest := l.Rests[len(l.Rests)-1]; !rest.Empty {
		text += fmt.Sprintf(" With somebody in it it falls otherwise (%s: %s): cut nothing by that.",
			plain(short(rest.Load)), v.fallen(rest.SeatFalls))
	}
	if !slides {
		text += " On a concentric top sliding changes the overhangs alone."
	}
	return Block{Title: "EMPTY, THE LEVEL SHOWS: DO THIS", Table: t, Lines: []Line{{Text: text}}}
}

// fallen writes the fall of a seat, "4 1/2 degrees" or "1 degree forward".
func (v voice) fallen(x float64) string {
	text := v.with(math.Abs(x), quantity.Angle)
	if x < 0 && v.shop(-x, quantity.Angle) != "0" {
		return text + " " + v.Forward
	}
	return text
}

// cut writes what is cut off a pair of legs, or put under it.
func (v voice) cut(x float64) string {
	return v.either(x, "–", "shim ", "cut ")
}

// slid writes which way and how far.
func (v voice) slid(x float64) string {
	return v.either(x, "", "or back ", "or forward ")
}

// either writes a length behind one word below zero and another above, none where there is none.
func (v voice) either(x float64, none, below, above string) string {
	switch {
	case math.IsNaN(x):
		return none
	case x < 0:
		return below + v.shop(-x, quantity.Length)
	}
	return above + v.shop(x, quantity.Length)
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
	for _, w := range l.Taken {
		texts = append(texts, fmt.Sprintf("%s legs plumb %s", w, takenUnder(w)))
	}
	size := func(x, drawn float64, word string) (said []string) {
		if drawn == 0 {
			said = append(said, v.with(x, quantity.Length)+word)
		}
		return said
	}
	rocker, drawn := l.Rocker, l.Design.Rocker
	if sizes := append(size(rocker.Depth, drawn.Depth, " deep"), size(rocker.Width, drawn.Width, " wide")...); len(sizes) > 0 {
		texts = append(texts, "rockers "+list(sizes))
	}
	if arms, _ := l.Design.ArmsOr(); l.ArmsTaken {
		sizes := append(size(arms.Length, l.Design.Arms.Length, " long"), size(arms.Width, l.Design.Arms.Width, " wide")...)
		texts = append(texts, "arms "+list(sizes))
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
		said += fmt.Sprintf(" NOT DRAWN, SO LEFT OUT: the %s legs, which miss this rocker %s.", w, takenUnder(w))
	}
	return strings.TrimSpace(said)
}

// takenUnder says where legs that are not drawn are taken to stand.
func takenUnder(w piece.Which) string {
	if w == piece.Front {
		return "under the seat's front edge"
	}
	return "under where back and seat meet"
}
