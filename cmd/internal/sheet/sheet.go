// Package sheet prints an answer: blocks of sentences and tables, as text or as html. It knows no sentence.
package sheet

import (
	"slices"
	"strings"
)

// Page is how many lines a first page may have.
const Page = 30

// A Sheet is what a maker reads.
type Sheet struct {
	Title  string // "Reading chair · 42 in rocker · drawn in inches"
	Source string // the file
	Blocks []Block
}

// A Block is a few sentences, or a table, that belong together. A blank line stands before it.
type Block struct {
	Title string // above a block of --all, there in capitals; empty for none
	Lines []Line
	Table *Table
	All   bool // only under --all
	Big   bool // read from afar, where type has sizes
}

// A Line is a paragraph. Its Label is set off in front: "YOUR OWNER:".
type Line struct {
	Label string
	Text  string
	Type  string // a command to type, behind the text, never broken
	Bad   bool   // something does not hold
}

// A Table has its labels in the first column and a unit or remark in the last.
type Table struct {
	Caption string   // what it shows, where its block has no title; not printed as text
	Over    []string // the first line of heads that take two; Head has the second
	Head    []string
	Rows    []Row
	Wrap    bool // labels for which there is no room are broken into lines, not cut
}

// A Row is one line of a Table. A single cell runs across all columns.
type Row struct {
	Cells []string
	Bad   bool
}

// Says returns a line for each text that there is.
func Says[T ~string](texts ...T) []Line {
	var lines []Line
	for _, text := range texts {
		if text != "" {
			lines = append(lines, Line{Text: string(text)})
		}
	}
	return lines
}

// Wrong returns a line on what does not hold.
func Wrong(text string) Line { return Line{Text: text, Bad: true} }

// Add adds a row to a table, Mark one that may say of something that it does not hold.
func (t *Table) Add(cells ...string)            { t.Mark(false, cells...) }
func (t *Table) Mark(bad bool, cells ...string) { t.Rows = append(t.Rows, Row{Cells: cells, Bad: bad}) }

// Across returns the cells of a row: its label, one for each of a list, and what stands behind them.
func Across[T any](label string, list []T, cell func(T) string, last ...string) []string {
	cells := []string{label}
	for _, one := range list {
		cells = append(cells, cell(one))
	}
	return append(cells, last...)
}

// Fitted returns the sheet with rows of the table of one of its blocks left out, in the order of
// spare, until its first page is no longer than a page; where any was, whole follows under --all.
func (s Sheet) Fitted(block int, spare []string, whole *Table) Sheet {
	s.Blocks = slices.Clone(s.Blocks)
	shown := *s.Blocks[block].Table
	for _, label := range spare {
		if s.Fits() {
			break
		}
		shown.Rows = slices.DeleteFunc(slices.Clone(shown.Rows), func(r Row) bool { return r.Cells[0] == label })
		s.Blocks[block].Table = &shown
	}
	if len(shown.Rows) < len(whole.Rows) || len(shown.Head) < len(whole.Head) {
		s.Blocks = append(s.Blocks, Block{Title: "The whole table", Table: whole, All: true})
	}
	return s
}

// Cut returns a text cut to so many characters.
func Cut(text string, room int) string {
	if runes := []rune(text); len(runes) > room {
		return string(runes[:room-1]) + "…"
	}
	return text
}

// Plain returns a text without control characters, which a terminal would obey, and without those that turn the rest
// of a line about.
func Plain(text string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f || r >= 0x80 && r < 0xa0 || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069 {
			return ' '
		}
		return r
	}, text)
}
