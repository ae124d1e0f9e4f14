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
	if seated, leaning := r.Seated(), r.Leaning(); seated != nil && !seated.Empty {
		text = fmt.Sprintf("Seated is %s; going %s is read for %s. For the rest of each, check it alone.", plain(short(seated.Name)), v.backwards(), plain(short(leaning.Name)))
	}
	return []Line{{Text: text}, v.disclaimer()}
}

func some(texts []string) bool {
	for _, t := range texts {
		if t != "" {
			return true
		}
	}
	return false
}
