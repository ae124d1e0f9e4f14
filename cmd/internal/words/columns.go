package words

import (
	"fmt"

	"rockerwright/sim/piece"
)

// narrow is how wide the head of a column may be, so that five stand side by side.
const narrow = 9

// A Column is one of several designs side by side.
type Column struct {
	Head   string // what sets it apart: "radius 40 in", or its file
	Report piece.Report
}

// Columns returns the sheet of several designs side by side, in the units of the first.
func Columns(title, source string, columns []Column) Sheet {
	v := voiceOf(columns[0].Report.Design)
	g := newGrid(v, columns, narrow)
	g.table.Caption = "Side by side"
	g.tips()
	g.feel()
	return Sheet{Title: title, Source: source, Blocks: []Block{{Table: g.table}, {Lines: v.columnNotes(columns[0].Report)}}}
}

// columnNotes says for whom the columns were read.
func (v voice) columnNotes(r piece.Report) []Line {
	text := "Read for the piece alone."
	if seated, leaning := v.seated(r), v.leaning(r); seated != nil && !seated.Empty {
		text = fmt.Sprintf("Seated is %s; going %s is read for %s. For the rest of each, check it alone.", plain(short(seated.Name)), v.backwards(), plain(short(leaning.Name)))
	}
	return []Line{{Text: text}, v.disclaimer()}
}

// seated returns the load that stands for the owner at ease: the first with a person,
// or the piece alone.
func (v voice) seated(r piece.Report) *piece.Load {
	return &r.Loads[min(1, len(r.Loads)-1)]
}

// leaning returns the owner's load with the least lift at the back.
func (v voice) leaning(r piece.Report) *piece.Load {
	owner, _, _ := v.byRole(r.Loads)
	if l := piece.LeastBack(owner); l != nil {
		return l
	}
	return v.seated(r)
}

func some(texts []string) bool {
	for _, t := range texts {
		if t != "" {
			return true
		}
	}
	return false
}
