package words

import (
	"fmt"

	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// LikeLetter returns the answer of [Like] as a letter to another maker.
func LikeLetter(l size.Likeness, changes []string) Sheet {
	v := voiceOf(l.Wanted.Design)
	old, now := v.called(l.OldPiece.Design), v.called(l.Wanted.Design)
	asked := fmt.Sprintf("You like how %s rocks and are making %s. What radius does it want?", old, now)
	if old == now {
		asked = fmt.Sprintf("You like how %s rocks and are making it again with %s. What radius does it want?", old, changedTo(changes))
	}
	why := "It hangs on what you want to keep, for no one radius keeps everything. The radius of the floor edge is the height of the balance point of chair and sitter, and on top of that a piece that makes the time: raise the balance point and keep the radius, and that piece gets smaller, so the rock gets slower and the chair less sure of its rest."
	s := Sheet{Title: "To a fellow maker", Blocks: []Block{{Lines: []Line{{Text: asked}}}, {Lines: []Line{{Text: why}}}}}
	s.Blocks = append(s.Blocks, Block{Lines: v.oldAndNew(l, nil)}, Block{Lines: v.when(l)}, Block{Table: v.likeTable(l)})
	s.Blocks = append(s.Blocks, Block{Lines: append(v.rulesInBrief(l), Line{Text: "Radii are of the floor edge: pin to the outside of the pencil, and not the form's. Seat heights and the place of the low point are as drawn."}, v.foot())})
	return s
}

// changedTo names changes in a sentence.
func changedTo(changes []string) string {
	if len(changes) == 0 {
		return "nothing changed"
	}
	return list(changes)
}

// SizedLetter returns the answer of [Sized] as a letter to another maker.
func SizedLetter(d piece.Design, found size.Solution, others []size.Proposal) Sheet {
	v := voiceOf(d)
	best := found.Take()
	s := Sheet{Title: "To a fellow maker", Blocks: []Block{{Lines: []Line{{Text: fmt.Sprintf("You asked what rocker %s wants for what you aim for. This is what came out.", v.called(d))}}}}}
	s.Blocks = append(s.Blocks, Block{Lines: append([]Line{v.found(best)}, v.binds(best)...)}, Block{Table: v.sizedTable(d.Target, found.Proposals, others)})
	s.Blocks = append(s.Blocks, Block{Lines: append(v.curves(found.Proposals[0], others), Line{Text: "Radii are of the floor edge: pin to the outside of the pencil, and not the form's."}, v.foot())})
	return s
}

// Shown reports whether a rocker stands on the first page of [Sized].
func Shown(p size.Proposal) bool {
	return p.Curve != size.EvenTime || p.Fitted == shownArcs
}
