package pattern

import (
	"fmt"
	"math"
	"time"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// epoch is the date in every file: none.
var epoch = time.Unix(0, 0).UTC()

// A Print is a PDF and what it takes to print it.
type Print struct {
	PDF    []byte
	Pages  int
	Sheets int // of these, the sheets that make up the pattern; 1 of a roll
}

// Print returns the drawing at true size: on as few sheets of the paper as it can be,
// with a page before them that shows how they go together, or on one page of a roll. The
// units are those of the maker: they come first in the check and set the strip that is
// glued, 1/2 in or 15 mm. The error is a [*ReachError], or an [*Error] for what cannot be drawn, for paper that
// is too small, and for a drawing wider than the roll.
func (d Drawing) Print(paper Paper, units quantity.System) (Print, error) {
	if err := paper.check(); err != nil {
		return Print{}, err
	}
	shapes, err := d.laid(units, paper.isRoll())
	if err != nil {
		return Print{}, err
	}
	printed := Print{Sheets: 1, Pages: 1}
	r := newRuler()
	p := newPen(r, d.name(r))
	if paper.isRoll() {
		err = p.roll(shapes, paper)
	} else {
		t := tile(shapes, paper, units)
		sheets := sheets{pen: p, tiling: t, shapes: turnedBy(shapes, t.angle), name: d.name(r), units: units}
		sheets.first()
		t.each(sheets.sheet)
		printed.Sheets, printed.Pages = t.count, t.count+1
	}
	if err != nil {
		return Print{}, err
	}
	printed.PDF, err = p.file()
	return printed, err
}

// name returns what the drawing is called, on one line.
func (d Drawing) name(r *ruler) string {
	part, piece := r.fit(d.Part, lettering, widest/2), r.fit(d.Piece, lettering, widest/2)
	if part != "" && piece != "" {
		part += ", "
	}
	return part + piece
}

// roll draws all on one page of a roll's width: as drawn, turned by a right angle where that
// is shorter, or by another where it fits no other way.
func (p *pen) roll(shapes []shape, paper Paper) error {
	const sides = 2 * margin
	length, angle, narrowest := math.Inf(1), 0.0, math.Inf(1)
	for i, a := range ways(36) {
		box := bounds(turnedBy(shapes, a))
		size := r2.Sub(box.Max, box.Min)
		narrowest = min(narrowest, size.X+sides)
		if square := i < 2; size.X+sides <= paper.Width && size.Y < length && (square || math.IsInf(length, 1)) {
			length, angle = size.Y, a
		}
	}
	if math.IsInf(length, 1) {
		return &Error{fmt.Sprintf("the drawing is %.0f mm wide with its margins whichever way it is turned, and %s is %.0f mm", math.Ceil(narrowest*1e3), paper.Name, paper.Width*1e3)}
	}
	shapes = turnedBy(shapes, angle)
	box := bounds(shapes)
	height := max(length+sides+foot, 0.1)
	p.page(paper.Width, height)
	place := func(q r2.Vec) r2.Vec {
		return r2.Vec{X: q.X - box.Min.X + (paper.Width-(box.Max.X-box.Min.X))/2, Y: q.Y - box.Min.Y + margin + foot}
	}
	for _, s := range shapes {
		p.draw(s, styles[s.layer], place)
	}
	p.write(p.fit("for "+paper.Name+"   print at 100 %, measure the squares first", 3e-3, paper.Width-sides), 3e-3, r2.Vec{X: margin, Y: margin}, 0, 0, "")
	return nil
}
