package pattern

import (
	"fmt"
	"io"
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
)

// A Paper is what a PDF is printed on. A roll has no height: it is as long as it must be.
type Paper struct {
	Name          string
	Width, Height float64 // m
}

// papers are those with names: ISO 216 A; ANSI/ASME Y14.1 A and B for letter and tabloid; rolls as sold (practice).
var papers = []Paper{
	{"letter", 8.5 * quantity.In, 11 * quantity.In}, {"A4", 0.210, 0.297},
	{"tabloid", 11 * quantity.In, 17 * quantity.In}, {"A3", 0.297, 0.420},
	{"roll 24 in", 24 * quantity.In, 0}, {"roll 36 in", 36 * quantity.In, 0}, {"roll 610 mm", 0.610, 0}, {"roll 914 mm", 0.914, 0},
}

// Papers returns the papers with names.
func Papers() []Paper { return append([]Paper(nil), papers...) }

// PaperNamed returns the paper of a name, capital letters or not. The error lists the names.
func PaperNamed(name string) (Paper, error) {
	var names []string
	for _, p := range papers {
		if strings.EqualFold(strings.Join(strings.Fields(name), " "), p.Name) {
			return p, nil
		}
		names = append(names, p.Name)
	}
	if len(name) > 40 {
		name = name[:40] + "…"
	}
	return Paper{}, &Error{fmt.Sprintf("no paper is called %q; there are %s", strings.ToValidUTF8(name, "?"), strings.Join(names, ", "))}
}

// isRoll reports whether the paper is as long as it must be.
func (p Paper) isRoll() bool { return p.Height == 0 }

// check returns an error for paper too small to print a pattern on.
func (p Paper) check() error {
	const least = 0.14 // m: the test squares and their margins
	if !(p.Width >= least && p.Width <= largest) || !p.isRoll() && !(p.Height >= 0.2 && p.Height <= largest) {
		return &Error{fmt.Sprintf("paper %q is %g by %g m; a sheet is at least 0.14 by 0.2 m, a roll at least 0.14 m wide",
			p.Name, p.Width, p.Height)}
	}
	return nil
}

// A Print is a PDF and what it takes to print it.
type Print struct {
	PDF    []byte
	Pages  int
	Sheets int // of these, the sheets that make up the pattern; 1 of a roll
}

// Print returns the drawing at true size: on as few sheets of the paper as it can be, with a page before them that
// shows how they go together, or on one page of a roll. The units are those of the maker: they come first in the check
// and set the strip that is glued, 1/2 in or 15 mm. The error is a [*ReachError], or an [*Error] for what cannot be
// drawn, for paper that is too small, and for a drawing wider than the roll.
func (d Drawing) Print(paper Paper, units quantity.System) (Print, error) {
	if err := paper.check(); err != nil {
		return Print{}, err
	}
	shapes, err := d.laid(units, paper.isRoll())
	if err != nil {
		return Print{}, err
	}
	printed := Print{Sheets: 1, Pages: 1}
	p := &pages{face: newFace()}
	name := d.name(p.face)
	if paper.isRoll() {
		err = p.roll(shapes, paper)
	} else {
		t := tile(shapes, paper, units)
		sheets := sheets{pages: p, tiling: t, shapes: turnedBy(shapes, t.angle), name: name, units: units}
		sheets.first()
		t.each(sheets.sheet)
		printed.Sheets, printed.Pages = t.count, t.count+1
	}
	if err != nil {
		return Print{}, err
	}
	printed.PDF, err = p.file(name)
	return printed, err
}

// name returns what the drawing is called, on one line.
func (d Drawing) name(f face) string {
	part, piece := f.fit(d.Part, lettering, widest/2), f.fit(d.Piece, lettering, widest/2)
	if part != "" && piece != "" {
		part += ", "
	}
	return part + piece
}

// roll draws all on one page: as drawn, turned by a right angle where that is shorter, by another where it must be.
func (p *pages) roll(shapes []shape, paper Paper) error {
	const sides = 2 * margin
	length, angle, narrowest := math.Inf(1), 0.0, math.Inf(1)
	for i, a := range turns(36) {
		size := bounds(turnedBy(shapes, a)).Size()
		narrowest = min(narrowest, size.X+sides)
		if square := i < 2; size.X+sides <= paper.Width && size.Y < length && (square || math.IsInf(length, 1)) {
			length, angle = size.Y, a
		}
	}
	if math.IsInf(length, 1) {
		return &Error{fmt.Sprintf("the drawing is %.0f mm wide with its margins whichever way it is turned, "+
			"and %s is %.0f mm", math.Ceil(narrowest*1e3), paper.Name, paper.Width*1e3)}
	}
	shapes = turnedBy(shapes, angle)
	box := bounds(shapes)
	height := max(length+sides+foot, 0.1)
	p.page(paper.Width, height)
	place := func(q r2.Vec) r2.Vec {
		return r2.Vec{X: q.X - box.Min.X + (paper.Width-box.Size().X)/2, Y: q.Y - box.Min.Y + margin + foot}
	}
	for _, s := range shapes {
		p.draw(s.placed(place), styles[s.layer])
	}
	told := "for " + paper.Name + "   print at 100 %, measure the squares first"
	p.write(p.fit(told, 3e-3, paper.Width-sides), 3e-3, r2.Vec{X: margin, Y: margin})
	return nil
}

// WriteSVG writes the drawing at true size, one unit of it a millimetre, one group a layer.
// Arcs are kept as arcs. The error is an [*Error] or a [*ReachError] for what cannot be drawn.
func (d Drawing) WriteSVG(w io.Writer, units quantity.System) error {
	shapes, err := d.laid(units, true)
	if err != nil {
		return err
	}
	box := bounds(shapes)
	corner := r2.Sub(box.Min, r2.Vec{X: margin, Y: margin})
	s := scene.Scene{Width: 1e3 * (box.Size().X + 2*margin), Height: 1e3 * (box.Size().Y + 2*margin),
		Title: d.name(newFace()), Decimals: 4}
	for _, layer := range layers {
		group := scene.Group{Name: string(layer), Pen: styles[layer]}
		for _, each := range shapes {
			if each.layer == layer {
				group.Add(each.placed(func(p r2.Vec) r2.Vec { return r2.Sub(p, corner) }).onPaper()...)
			}
		}
		s.Add(group)
	}
	return s.WriteSVG(w)
}
