package words

import (
	"cmp"
	"fmt"
	"math"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
)

// thin writes a thickness to a hundredth of an inch or a tenth of a millimetre, with its unit.
func (v voice) thin(x float64) string {
	return strings.TrimSuffix(strings.TrimRight(v.fixed(x/0.0254, 3, x*1e3, 1), "0"), ".") + " " + v.unit()
}

// formBlock says what is bent over the form.
func (v voice) formBlock(l layout.Layout) sheet.Block {
	if l.Form.Steam {
		return sheet.Block{Title: "STEAM-BENT", Lines: sheet.Says(fmt.Sprintf(
			"Off the form it loses %.0f %% of its bend, as you say or as makers report (6 to 10 %%, common practice).", l.Form.Lost*100))}
	}
	s := l.Strips
	return sheet.Block{Title: "STRIPS", Lines: sheet.Says(fmt.Sprintf("%d strips of %s for each rocker, %s long, %s waste at each end with it; "+
		"ripped from %s of board, cuts and planing counted. The stack springs back by 1/%d of its bend.",
		s.Stack.Strips, v.thin(s.Strip), v.length(s.Stack.Length), v.length(l.Shop.EndWaste), v.length(s.Stack.Stock),
		s.Stack.Strips*s.Stack.Strips))}
}

// bears says how thick a strip may be.
func (v voice) bears(s layout.Strips) string {
	text := fmt.Sprintf("%s bears strips up to %s at %s, the smallest radius (strain of %.2f %%, half of what breaks it)",
		cmp.Or(s.Wood, "A usual hardwood"), v.thin(s.Thickest), v.length(s.Tightest), s.Strain*100)
	if s.Common > 0 {
		text += fmt.Sprintf("; makers use up to %s (common practice)", v.length(s.Common))
	}
	return text + "."
}

// boardBlock returns the board of a sawn rocker.
func (v voice) boardBlock(l layout.Layout) sheet.Block {
	b := l.Board
	lines := sheet.Says(fmt.Sprintf("Blank %s by %s by %s thick, the grain along it. "+
		"Two spooned the same way round: a board %s wide, the second shifted by %s across. "+
		"Left and its mirror image in one board, room for a cutter of %s and %s of wood between them: %s by %s.",
		v.length(b.Length), v.length(b.Width), v.length(l.Rocker.Width), v.length(b.Both), v.length(b.Shift),
		v.length(l.Shop.Cutter), v.length(l.Shop.Web), v.length(b.Pair.Length), v.length(b.Pair.Width)),
		fmt.Sprintf("The grain runs out at %s (%s) and %s (%s); thinnest across the grain %s.",
			v.degrees(b.NoseGrain), v.nose, v.degrees(b.TailGrain), v.tail, v.length(b.Thinnest.Thick)))
	if stock := l.Shop.StockWidth; stock > 0 && stock < b.Width {
		lines = append(lines, sheet.Wrong(fmt.Sprintf("Your boards are %s wide: glue one on, or laminate it.", v.length(stock))))
	}
	return sheet.Block{Title: "BOARD", Lines: lines}
}

// remedyBlock returns what to do where the level on the empty piece shows something else.
func (v voice) remedyBlock(l layout.Layout) sheet.Block {
	text := fmt.Sprintf("Dry-fitted, with all that belongs to it and NOBODY in it, the seat should fall %s.", v.fallen(l.Rests[0].SeatFalls))
	if rest := l.Rests[len(l.Rests)-1]; !rest.Empty {
		text += fmt.Sprintf(" With somebody in it it falls otherwise (%s: %s): cut nothing by that.", brief(rest.Load), v.fallen(rest.SeatFalls))
	}
	t := &sheet.Table{Head: []string{"EMPTY, the level shows", "rear legs", "front legs"}}
	slides := l.Design.Rocker.Top != piece.Concentric
	if slides {
		t.Head = append(t.Head, "the chair on them")
	} else {
		text += " On a concentric top sliding changes the overhangs alone."
	}
	t.Head = append(t.Head, "")
	for _, r := range l.Remedies {
		rear, front := v.either(r.Rear, "–", "shim ", "cut "), v.either(r.Front, "–", "shim ", "cut ")
		cells := []string{"seat falls " + v.fallen(r.Shows), rear, "or " + front}
		if slides {
			cells = append(cells, v.either(r.Slide, "", "or back ", "or forward "))
		}
		t.Add(append(cells, v.unit())...)
	}
	return sheet.Block{Title: "EMPTY, THE LEVEL SHOWS: DO THIS", Table: t, Lines: sheet.Says(text)}
}

// fallen writes the fall of a seat, "4 1/2 degrees" or "1 degree forward".
func (v voice) fallen(x float64) string {
	text := v.degrees(math.Abs(x))
	if x < 0 && v.angle(-x) != "0" {
		return text + " " + v.Forward
	}
	return text
}

// either writes a length behind one word below zero and another above, none where there is none.
func (v voice) either(x float64, none, below, above string) string {
	if math.IsNaN(x) {
		return none
	}
	return pick(x < 0, below, above) + v.bare(math.Abs(x))
}

// takenBlock says on every page what was not drawn and what was taken for it.
func (v voice) takenBlock(l layout.Layout) sheet.Block {
	return sheet.Block{Lines: sheet.Says(v.taken(l), chairs.disclaimer)}
}

// taken says what was taken where nothing was drawn; "" where all was.
func (v voice) taken(l layout.Layout) string {
	var texts []string
	for _, w := range l.Taken {
		texts = append(texts, fmt.Sprintf("%s legs plumb %s", w, takenUnder(w)))
	}
	size := func(x, drawn float64, word string) (said []string) {
		if drawn == 0 {
			said = append(said, v.length(x)+word)
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
	if l.MadeTaken {
		texts = append(texts, "rockers "+pick(l.Made == piece.Laminated, "glued up from strips", "sawn from a board"))
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
	return pick(w == piece.Front, "under the seat's front edge", "under where back and seat meet")
}
