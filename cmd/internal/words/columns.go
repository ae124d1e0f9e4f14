package words

import (
	"fmt"
	"strings"

	"rockerwright/sim/check"
)

// narrow is how wide the head of a column may be, so that five stand side by side.
const narrow = 9

// A Column is one of several designs side by side.
type Column struct {
	Head   string   // what sets it apart in a sentence: "radius 40 in", or its file
	Values []string // the same over its column, where By says of what: "40 in"; nil: Head
	By     []string // the labels of the measures that differ, in the order of their values
	Report check.Balanced
}

// Columns returns the sheet of several designs side by side, in the units of the first.
func Columns(title, source string, columns []Column) Sheet {
	v := voiceOf(columns[0].Report.Design)
	g := newGrid(v, columns, narrow)
	g.table.Caption = "Side by side"
	g.tips()
	g.feel()
	s := Sheet{Title: title, Source: source}
	if by := columns[0].By; len(by) > 0 {
		s.Blocks = []Block{{Lines: []Line{{Text: upperFirst(strings.Join(by, "; ")) + ":"}}}}
	}
	s.Blocks = append(s.Blocks, Block{Table: g.table}, Block{Lines: v.columnNotes(columns[0].Report)})
	return s
}

// headsOf returns the heads of columns in two lines of at most so many letters. Those that would be
// cut alike are cut in front, where names of files differ least, and else numbered.
func headsOf(columns []Column, room int) (first, second []string) {
	cut := func(write func(i int, name string) string) bool {
		first, second = nil, nil
		seen := map[[2]string]bool{}
		for i, c := range columns {
			name := strings.Join(c.Values, ", ")
			if name == "" {
				name = c.Head
			}
			a, b := parted(write(i, plain(name)), room)
			if len(c.Values) == 2 {
				a, b = cutTo(write(i, plain(c.Values[0])), room), cutTo(plain(c.Values[1]), room)
			}
			first, second = append(first, a), append(second, b)
			seen[[2]string{a, b}] = true
		}
		return len(seen) == len(columns)
	}
	whole := func(_ int, name string) string { return name }
	end := func(_ int, name string) string {
		if letters := []rune(name); len(letters) > room {
			return "…" + string(letters[len(letters)-room+1:])
		}
		return name
	}
	if !cut(whole) && !cut(end) {
		cut(func(i int, name string) string { return fmt.Sprintf("%d %s", i+1, end(i, name)) })
	}
	return first, second
}

// columnNotes says for whom the columns were read.
func (v voice) columnNotes(r check.Balanced) []Line {
	text := "Read for the piece alone."
	if seated, leaning := r.Seated(), r.Leaning(); seated != nil && !seated.Empty {
		text = fmt.Sprintf("%s is %s; going %s is read for %s. For the rest of each, check it alone.", upperFirst(v.seated), plain(short(seated.Name)), v.Back, plain(short(leaning.Name)))
	}
	return []Line{{Text: text}, v.foot()}
}

func some(texts []string) bool {
	for _, t := range texts {
		if t != "" {
			return true
		}
	}
	return false
}
