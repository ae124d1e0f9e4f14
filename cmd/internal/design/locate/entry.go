package locate

import (
	"strings"
	"unicode/utf8"
)

// A Position is a place in a text. Both count from 1; Column counts characters.
type Position struct{ Line, Column int }

// An Entry is one key of a text, or one element of an array.
type Entry struct {
	Path       string   // "sitter[1].weight", counting from 0; "seat" for a table
	Key        Position // of its name; of an array's element, the element
	Value      Position // of its value; of a table, its name
	KeyStart   int      // byte offsets of the key and of the value, for replacing it in its place
	ValueStart int
	ValueEnd   int
	In         int    // index of the header, inline table or array it stands in; −1 where in none
	Raw        string // the value as typed; of a header ""
}

// mark is the byte order mark, which editors put in front of a text; it takes no
// column.
const mark = "\ufeff"

// A ruler turns byte offsets, rising from one call to the next, into positions.
type ruler struct {
	text   string
	offset int // so far it was measured
	place  Position
}

func newRuler(text string) ruler {
	r := ruler{text, 0, Position{1, 1}}
	if strings.HasPrefix(text, mark) {
		r.offset = len(mark)
	}
	return r
}

func (r *ruler) at(offset int) Position {
	way := r.text[r.offset:max(offset, r.offset)]
	if lines := strings.Count(way, "\n"); lines > 0 {
		r.place = Position{r.place.Line + lines, 1}
		way = way[strings.LastIndexByte(way, '\n')+1:]
	}
	r.place.Column += utf8.RuneCountInString(way)
	r.offset = max(offset, r.offset)
	return r.place
}
