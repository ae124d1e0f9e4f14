package words

import "slices"

// fitted returns the sheet with rows of the table of one of its blocks left out, in the order of
// spare, until its first page is no longer than a page; where any was, whole follows under --all.
func (s Sheet) fitted(block int, spare []string, whole *Table) Sheet {
	s.Blocks = slices.Clone(s.Blocks)
	shown := *s.Blocks[block].Table
	for _, label := range spare {
		if s.lines() <= page {
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
