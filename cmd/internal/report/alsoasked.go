package report

import (
	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/size"
)

// sitterHeights are for whom else a report says which radius, m: 5 ft to 6 ft 4 in.
var sitterHeights = []float64{1.524, 1.6256, 1.7272, 1.8288, 1.9304}

// alsoAsked returns what a report tells besides what check does: what each measure does, what
// radius other sitters would want, and what rocker meets the design's target, each where there
// is an answer.
func alsoAsked(f *design.File) []words.Block {
	var blocks []words.Block
	if table, err := size.WhatIf(f.Design); err == nil {
		blocks = append(blocks, words.WhatIfBlocks(table)...)
	}
	if list, err := size.ForSitters(f.Design, sitterHeights); err == nil {
		blocks = append(blocks, words.ForSitters(f.Design, list)...)
	}
	if found, err := size.Solve(f.Design, size.Options{}); err == nil {
		blocks = append(blocks, words.SizedBlocks(f.Design, found)...)
	}
	return blocks
}
