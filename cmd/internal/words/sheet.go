package words

// A Sheet is what a maker reads.
type Sheet struct {
	Title  string // "Reading chair · 42 in rocker · drawn in inches"
	Source string // the file
	Blocks []Block
}

// A Block is a few sentences, or a table, that belong together. A blank line stands
// before it.
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
}

// A Row is one line of a Table. A single cell runs across all columns.
type Row struct {
	Cells []string
	Bad   bool
}
