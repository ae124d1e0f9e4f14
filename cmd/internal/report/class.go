package report

import (
	"io"

	"rockerwright/cmd/internal/words"
)

// Class writes two designs side by side on one page, and in words how they differ; their
// design files follow. columns say what sets them apart.
func Class(w io.Writer, columns [2]words.Column, subjects [2]Subject) error {
	for i, s := range subjects {
		columns[i].Report = s.Answer.Balanced
	}
	c := words.Class(columns, subjects[0].Making)
	var p page
	p.begin(c.Title)
	p.printf("<header>\n")
	p.heading(1, c.Title)
	p.printf("<p class=\"made\">%s</p>\n</header>\n<div class=\"pair\">\n", words.Escaped(c.Made))
	for i, s := range subjects {
		p.printf("<section id=\"piece-%d\">\n", i+1)
		p.heading(2, c.Heads[i])
		p.picture(s.narrow(), c.Titles[i])
		p.printf("</section>\n")
	}
	p.printf("</div>\n<section id=\"differences\">\n")
	p.blocks(c.Blocks, 2)
	p.printf("</section>\n")
	for i, s := range subjects {
		p.printf("<section class=\"file\" id=\"file-%d\">\n", i+1)
		p.heading(2, c.Files[i])
		p.file([...]string{"design", "design-2"}[i], s.Text)
		p.printf("</section>\n")
	}
	return p.end(w)
}
