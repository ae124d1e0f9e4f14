package pattern

import (
	"fmt"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
)

// A Card is a page to read at the bench, in type as large as one page takes.
type Card struct {
	Title  string
	Source string // small, at the right of the title
	Blocks []CardBlock
}

// A CardBlock is a few lines, a table, or a view.
type CardBlock struct {
	Head  string
	Lines []string
	Rows  [][]string // the first and the last column to the left, the others to the right
	Bold  bool       // the first row is a head
	Big   bool       // its lines are twice as large, to be read from afar
	View  *View
}

// A View is a drawing on a card, not at true size: its items are in metres of the paper.
type View struct {
	Items  []Item
	Height float64 // m
}

// The measures of a card: the largest and smallest type by the height of its capitals, 18 and 8 1/2 points, and
// the edge that is free on all sides, for any printer and a thumb, m; then in heights of capitals from base line
// to base line, and between two columns of a table; and how much wider bold type is.
const (
	largestType  = 4.6e-3
	smallestType = 2.15e-3
	cardEdge     = 13e-3
	spacing      = 1.66
	columnGap    = 1.6
	boldWider    = 1.08
)

// PrintCards returns cards as PDF, each on one page of the paper where it fits in a type that is read at a bench, else on
// more. The error is an [*Error] for paper that is too small or a roll, and of a view as of [Drawing.Print].
func PrintCards(title string, cards []Card, paper Paper) (Print, error) {
	if err := paper.check(); err != nil {
		return Print{}, err
	}
	if paper.isRoll() {
		return Print{}, &Error{"a bench card is printed on sheets of paper; " + paper.Name + " is a roll"}
	}
	p := &pages{face: newFace()}
	count := 0
	for _, card := range cards {
		c := setter{pages: p, paper: paper, card: card, wide: paper.Width - 2*cardEdge, size: largestType}
		for _, b := range card.Blocks {
			if len(b.Rows) > 0 { // its table fits across the page
				_, total := c.columns(b)
				c.size = max(min(c.size, c.wide/total), smallestType)
			}
		}
		for c.size > smallestType && c.set(false) > 1 {
			c.size *= 0.97
		}
		count += c.set(true)
		if c.err != nil {
			return Print{}, c.err
		}
	}
	pdf, err := p.file(title)
	return Print{pdf, count, count}, err
}

type setter struct {
	*pages
	paper Paper
	card  Card
	wide  float64 // between the edges, m
	size  float64 // of the capitals, m
	y     float64 // the base line, from the lower edge
	page  int
	draws bool
	err   error // of a view
}

// set sets the card, and draws it if asked, and returns how many pages it takes.
func (c *setter) set(draw bool) int {
	c.page, c.draws = 0, draw
	c.turn()
	for _, b := range c.card.Blocks {
		if need := c.tall(b); c.y-need < cardEdge && need < c.paper.Height/2 { // one that fits on a page is not broken
			c.turn()
		}
		c.block(b)
	}
	return c.page
}

// turn begins a page.
func (c *setter) turn() {
	c.page++
	if c.draws {
		c.pages.page(c.paper.Width, c.paper.Height)
	}
	c.y = c.paper.Height - cardEdge - heading
	title, source := c.card.Title, c.card.Source
	if c.page > 1 {
		title += fmt.Sprintf(" (%d)", c.page)
	}
	used := c.width(source, 2.4e-3)
	c.text(source, 2.4e-3, cardEdge+c.wide-used, false).Fill = "#4d4d4d"
	c.text(c.fit(title, heading, (c.wide-used-5e-3)/boldWider), heading, cardEdge, true)
	c.y -= 2.6e-3
	if c.draws {
		c.line(scene.Pen{Colour: scene.Ink, Width: 0.4}, r2.Vec{X: cardEdge, Y: c.y}, r2.Vec{X: cardEdge + c.wide, Y: c.y})
	}
}

// text writes at the base line, and returns what it wrote.
func (c *setter) text(text string, height, x float64, bold bool) *scene.Shape {
	if !c.draws || text == "" {
		return &scene.Shape{}
	}
	s := c.write(text, height, r2.Vec{X: x, Y: c.y})
	s.Bold = bold
	return s
}

// step goes down by some lines, and to the next page where there is no room for them.
func (c *setter) step(lines float64) {
	c.y -= lines * c.size
	if c.y < cardEdge {
		c.turn()
		c.y -= 2 * c.size
	}
}

// tall returns how high a block is, m.
func (c *setter) tall(b CardBlock) float64 {
	const roof = 1e3 // m: no page ends below it
	dry := *c
	dry.draws, dry.y = false, roof
	dry.block(b)
	return roof - dry.y
}

func (c *setter) block(b CardBlock) {
	c.step(0.9)
	if b.Head != "" {
		for _, line := range c.wrapped(b.Head, c.size*boldWider, c.wide) {
			c.step(spacing)
			c.text(c.fit(line, c.size*boldWider, c.wide), c.size, cardEdge, true)
		}
	}
	for _, paragraph := range b.Lines {
		if b.Big {
			size := min(2*c.size, c.wide/c.width(paragraph, boldWider))
			c.step(spacing * size / c.size)
			c.text(paragraph, size, cardEdge, true)
			continue
		}
		indent := 0.0
		for _, line := range c.wrapped(paragraph, c.size, c.wide-2*c.size) {
			c.step(spacing)
			c.text(c.fit(line, c.size, c.wide-indent), c.size, cardEdge+indent, false)
			indent = 1.5 * c.size
		}
	}
	c.table(b)
	if b.View != nil {
		c.view(*b.View)
	}
}

// columns returns the widths of a table's columns and of all of it, of type 1 m high.
func (c *setter) columns(b CardBlock) (wide []float64, total float64) {
	for n, row := range b.Rows {
		_, wider := b.rowFace(n)
		for i, cell := range row {
			if i == len(wide) {
				wide = append(wide, 0)
			}
			wide[i] = max(wide[i], c.width(cell, wider))
		}
	}
	total = columnGap * float64(max(0, len(wide)-1))
	for _, w := range wide {
		total += w
	}
	return wide, max(total, 1)
}

// rowFace returns the face of a row, and how much wider it is.
func (b CardBlock) rowFace(row int) (bold bool, wider float64) {
	if row == 0 && b.Bold {
		return true, boldWider
	}
	return false, 1
}

// table sets rows in columns as wide as their longest, in smaller type where they are too wide for the page.
func (c *setter) table(b CardBlock) {
	wide, total := c.columns(b)
	size := min(c.size, c.wide/total)
	for n, row := range b.Rows {
		c.step(spacing * size / c.size)
		x := cardEdge
		bold, wider := b.rowFace(n)
		for i, cell := range row {
			at := x
			if i > 0 && i < len(wide)-1 {
				at += wide[i]*size - c.width(cell, size*wider)
			}
			c.text(cell, size, at, bold)
			x += (wide[i] + columnGap) * size
		}
	}
}

// view draws items with their labels under what is written.
func (c *setter) view(v View) {
	c.y -= v.Height + c.size
	if !c.draws {
		return
	}
	l := &layout{face: c.face}
	if err := l.lay(v.Items); err != nil {
		c.err = err
		return
	}
	middle := bounds(l.list).Center()
	at := r2.Vec{X: c.paper.Width / 2, Y: c.y + v.Height/2}
	for _, s := range l.list {
		c.draw(s.placed(func(p r2.Vec) r2.Vec { return r2.Add(at, r2.Sub(p, middle)) }), styles[s.layer])
	}
}
