package report

import (
	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/size"
)

// sitterHeights are for whom else a report says which radius, m: 5 ft to 6 ft 4 in.
var sitterHeights = []float64{1.524, 1.6256, 1.7272, 1.8288, 1.9304}

// alsoAsked returns what a report tells besides what check does: what each measure does, what
// radius other sitters would want, and what rocker meets the design's target; of a question that
// has no answer, why not.
func alsoAsked(f *design.File) []sheet.Block {
	var blocks []sheet.Block
	answer := func(question string, answered func() []sheet.Block, err error) {
		if err != nil {
			blocks = append(blocks, words.Unanswered(question, err))
			return
		}
		blocks = append(blocks, answered()...)
	}
	table, err := size.WhatIf(f.Design)
	answer("What each measure does", func() []sheet.Block { return words.WhatIfBlocks(table) }, err)
	list, err := size.ForSitters(f.Design, sitterHeights)
	answer("What radius for another sitter", func() []sheet.Block { return words.ForSitters(f.Design, list) }, err)
	if f.Design.Target.Asks() {
		found, err := size.Solve(f.Design, size.Options{})
		answer("The rocker for what it aims for", func() []sheet.Block { return words.SizedBlocks(f.Design, found) }, err)
	}
	return blocks
}
