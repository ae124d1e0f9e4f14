package words

import (
	"fmt"
	"math"
	"strings"

	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

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
	if l.Usual {
		texts = append(texts, fmt.Sprintf("rockers %s deep and %s wide", v.with(l.Rocker.Depth, quantity.Length), v.with(l.Rocker.Width, quantity.Length)))
	}
	if arms, _ := l.Design.ArmsOr(); l.ArmsTaken {
		texts = append(texts, fmt.Sprintf("arms %s long and %s wide", v.with(arms.Length, quantity.Length), v.with(arms.Width, quantity.Length)))
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
