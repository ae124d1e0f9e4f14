// Package locate finds where each key and each value stands in a TOML text. It does not
// judge the text: that is done by a TOML library, whose own positions are kept by the
// name of a key, so that of several tables of one name it knows only the last.
package locate

import (
	"strings"
	"unicode/utf8"
)

// A Kind says what an entry of a text is.
type Kind int

const (
	Pair    Kind = iota // a key with its value, on a line or in an inline table
	Header              // of a table
	Element             // of an array
	Stray               // a line that is none of these
)

// An Entry is a stretch of a text that has a key, or a stray line. Offsets count bytes.
type Entry struct {
	Kind       Kind
	Key        string // "sitter.2.weight", however it is spelled; of a stray line the name that it begins with
	Start      int    // of its name; of an element, of the element
	ValueStart int    // of its value; of a header, its name; of a stray line, what stands behind its name
	ValueEnd   int
	In         int    // index of the header, inline table or array it stands in; −1 where in none
	Raw        string // the value as typed; of a header ""

	depth int // parts of its key
}

// Leaf reports whether the entry holds a value with no entries in it.
func (e Entry) Leaf() bool {
	return (e.Kind == Pair || e.Kind == Element) && !e.Braced() && !strings.HasPrefix(e.Raw, "[")
}

// Braced reports whether the value is an inline table.
func (e Entry) Braced() bool { return e.Kind != Stray && strings.HasPrefix(e.Raw, "{") }

// Mark is the byte order mark, which editors put in front of a text; it takes no column.
const Mark = "\ufeff"

// At returns the line and the column of a byte offset in a text. Both count from 1; the column counts characters.
func At(text string, offset int) (line, column int) {
	before := strings.TrimPrefix(text[:offset], Mark)
	start := strings.LastIndexByte(before, '\n') + 1
	return strings.Count(before, "\n") + 1, utf8.RuneCountInString(before[start:]) + 1
}
