package pattern

import (
	"fmt"

	"gonum.org/v1/gonum/spatial/r2"
)

// largest returns the largest type for a card: that in which its tables fit across the page.
func (c *setter) largest(card Card) float64 {
	size := largestType
	for _, b := range card.Blocks {
		if len(b.Rows) > 0 {
			size = min(size, (c.paper.Width-2*cardEdge)/c.columns(b).total)
		}
	}
	return max(size, smallestType)
}

// A setter sets one card.
type setter struct {
	*pen
	paper Paper
	size  float64 // of the capitals, m
	y     float64 // the base line, from the lower edge
	page  int
	draws bool
	card  Card
}

// pages sets a card, and draws it if asked, and returns how many pages it takes.
func (c *setter) pages(card Card, draw bool) int {
	c.page, c.draws, c.card = 0, draw, card
	c.turn()
	for _, b := range card.Blocks {
		c.block(b)
	}
	return c.page
}

const cardEdge = 13e-3 // free on all sides, for any printer and a thumb

// turn begins a page.
func (c *setter) turn() {
	c.page++
	if c.draws {
		c.pen.page(c.paper.Width, c.paper.Height)
	}
	width := c.paper.Width - 2*cardEdge
	c.y = c.paper.Height - cardEdge - heading
	title, source := c.card.Title, c.card.Source
	if c.page > 1 {
		title += fmt.Sprintf(" (%d)", c.page)
	}
	used := c.width(source, 2.4e-3)
	if source != "" {
		c.text(source, 2.4e-3, cardEdge+width-used, 0.3, "")
	}
	c.text(c.fit(title, heading, (width-used-5e-3)/1.08), heading, cardEdge, 0, "B") // bold is the wider
	c.y -= 2.6e-3
	if c.draws {
		c.line(style{width: 0.4e-3}, r2.Vec{X: cardEdge, Y: c.y}, r2.Vec{X: cardEdge + width, Y: c.y})
	}
}

// text writes at the base line.
func (c *setter) text(text string, height, x, grey float64, bold string) {
	if c.draws && text != "" {
		c.write(text, height, r2.Vec{X: x, Y: c.y}, 0, grey, bold)
	}
}

// step goes down by some lines, and to the next page where there is no room for them.
func (c *setter) step(lines float64) {
	c.y -= lines * c.size
	if c.y < cardEdge {
		c.turn()
		c.y -= 2 * c.size
	}
}

// spacing is from base line to base line, in heights of capitals.
const spacing = 1.66

// block sets one block; one that fits on a page is not broken.
func (c *setter) block(b CardBlock) {
	if need := c.tall(b); c.y-need < cardEdge && need < c.paper.Height/2 {
		c.turn()
	}
	c.step(0.9)
	for _, line := range c.headLines(b) {
		c.step(spacing)
		c.text(c.fit(line, c.size*1.08, c.paper.Width-2*cardEdge), c.size, cardEdge, 0, "B")
	}
	width := c.paper.Width - 2*cardEdge
	if b.Big {
		for _, line := range b.Lines {
			size := min(2*c.size, width/c.width(line, 1.08))
			c.step(spacing * size / c.size)
			c.text(line, size, cardEdge, 0, "B")
		}
		b.Lines = nil
	}
	for _, paragraph := range b.Lines {
		for i, line := range c.wrapped(paragraph, c.size, width-2*c.size) {
			c.step(spacing)
			indent := 0.0
			if i > 0 {
				indent = 1.5 * c.size
			}
			c.text(c.fit(line, c.size, width-indent), c.size, cardEdge+indent, 0, "")
		}
	}
	c.table(b)
	if b.View != nil {
		c.view(*b.View)
	}
}

// headLines returns the head of a block in lines; bold is the wider.
func (c *setter) headLines(b CardBlock) []string {
	if b.Head == "" {
		return nil
	}
	return c.wrapped(b.Head, c.size*1.08, c.paper.Width-2*cardEdge)
}

// tall returns how high a block is, m.
func (c *setter) tall(b CardBlock) float64 {
	lines := 0.9
	lines += spacing * float64(len(c.headLines(b)))
	for _, paragraph := range b.Lines {
		if b.Big {
			lines += spacing
		}
		lines += spacing * float64(len(c.wrapped(paragraph, c.size, c.paper.Width-2*cardEdge-2*c.size)))
	}
	lines += spacing * float64(len(b.Rows))
	height := lines * c.size
	if b.View != nil {
		height += b.View.Height + c.size
	}
	return height
}

// columns are the widths of a table's columns, of type 1 m high.
type columns struct {
	wide  []float64
	total float64
}

// columnGap is between two columns, in heights of capitals.
const columnGap = 1.6

// columns measures a table.
func (c *setter) columns(b CardBlock) columns {
	var t columns
	for n, row := range b.Rows {
		for i, cell := range row {
			if i == len(t.wide) {
				t.wide = append(t.wide, 0)
			}
			width := c.width(cell, 1)
			if n == 0 && b.Bold {
				width *= 1.08
			}
			t.wide[i] = max(t.wide[i], width)
		}
	}
	t.total = columnGap * float64(max(0, len(t.wide)-1))
	for _, w := range t.wide {
		t.total += w
	}
	t.total = max(t.total, 1)
	return t
}

// table sets rows in columns as wide as their longest; where they are too wide for the page
// the type of the table is smaller.
func (c *setter) table(b CardBlock) {
	t := c.columns(b)
	size := min(c.size, (c.paper.Width-2*cardEdge)/t.total)
	for n, row := range b.Rows {
		c.step(spacing * size / c.size)
		x := cardEdge
		for i, cell := range row {
			bold, at := "", x
			width := c.width(cell, size)
			if n == 0 && b.Bold {
				bold, width = "B", width*1.08
			}
			if i > 0 && i < len(t.wide)-1 {
				at += t.wide[i]*size - width
			}
			c.text(cell, size, at, 0, bold)
			x += (t.wide[i] + columnGap) * size
		}
	}
}

// view draws items with their labels under what is written.
func (c *setter) view(v View) {
	c.y -= v.Height + c.size
	if !c.draws {
		return
	}
	y := &yard{ruler: c.ruler}
	y.lay(v.Items)
	box := bounds(y.list)
	middle := r2.Scale(0.5, r2.Add(box.Min, box.Max))
	at := r2.Vec{X: c.paper.Width / 2, Y: c.y + v.Height/2}
	for _, s := range y.list {
		c.draw(s, styles[s.layer], func(p r2.Vec) r2.Vec { return r2.Add(at, r2.Sub(p, middle)) })
	}
}
