package locate

import (
	"sort"
	"unicode/utf8"
)

// A Position is a place in a text. Both count from 1; Column counts characters.
type Position struct{ Line, Column int }

// An Entry is one key of a text, or one element of an array.
type Entry struct {
	Path       string   // "sitter[1].weight", counting from 0; "seat" for a table
	Key        Position // of its name; of an array's element, the element
	Value      Position // of its value; of a table, its name
	ValueStart int      // byte offsets of the value, for replacing it in its place
	ValueEnd   int
	Raw        string // the value as typed
}

// mark is the byte order mark, which editors put in front of a text; it takes no
// column.
const mark = "\ufeff"

// A ruler turns byte offsets into positions.
type ruler struct {
	text  string
	lines []int // offset of the start of each line
}

func newRuler(text string) ruler {
	start := 0
	if len(text) >= len(mark) && text[:len(mark)] == mark {
		start = len(mark)
	}
	r := ruler{text, []int{start}}
	for i := range len(text) {
		if text[i] == '\n' {
			r.lines = append(r.lines, i+1)
		}
	}
	return r
}

func (r ruler) at(offset int) Position {
	line := sort.Search(len(r.lines), func(i int) bool { return r.lines[i] > offset })
	start := r.lines[max(line-1, 0)]
	return Position{max(line, 1), utf8.RuneCountInString(r.text[start:max(offset, start)]) + 1}
}
