package plots

import (
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// The side view on paper, mm.
const (
	viewWidth = 178.0
	margin    = 8.0
	letter    = 3.3 // size of type, over 9 points
	letterRow = 4.4 // from base line to base line
	topRoom   = 32.0
	lowRoom   = 22.0
)

// A ghost is the piece in one of the three positions.
type ghost struct {
	name string // of its group
	who  string
	how  string // it stands
	load *check.Load
	tilt float64
	pen
	moves bool // where the view rocks
}

// SideView draws the piece to scale in three ghost positions: empty, with the first
// person at rest, and at the edge of going over backwards.
func SideView(r check.Report) Picture {
	ghosts := ghostsOf(r)
	view := frameOf(r, ghosts, area{width: viewWidth, high: 170, top: topRoom, low: lowRoom})
	s := view.scene(r, ghosts...)
	s.alt = "Side view to scale." + told(ghosts)
	title := words(r2.Vec{X: margin, Y: view.height - 7}, 4.4, left, s.title)
	s.add(view.marks(r, ghosts[len(ghosts)-1]), group{name: "title", shapes: []shape{title}})
	s.add(view.labels(r, ghosts)...)
	s.add(view.rule(r, 5))
	return s.picture("side view")
}

// told says how ghosts stand.
func told(ghosts []ghost) string {
	text := ""
	for _, g := range ghosts {
		text += " " + g.who + ": " + g.how + "."
	}
	return text
}

// ghostsOf returns the positions there are; a piece that does not stand is drawn as it
// was drawn.
func ghostsOf(r check.Report) []ghost {
	empty := &r.Loads[0]
	seated, edge := empty, empty
	var owner []*check.Load
	for i := range r.Loads {
		if l := &r.Loads[i]; !l.Empty && l.Role == piece.Owner && l.Upright() {
			owner = append(owner, l)
		}
	}
	if len(owner) > 0 {
		seated, edge = owner[0], check.LeastBack(owner)
	}
	at := func(l *check.Load) string {
		if !math.IsNaN(l.SeatFall) {
			return "seat falls " + sided(l.SeatFall, r.Design)
		}
		return "tilts " + sided(l.Balance.Rest.Tilt, r.Design)
	}
	var ghosts []ghost
	add := func(name, who, how string, l *check.Load, tilt float64, p pen) {
		ghosts = append(ghosts, ghost{name, who, how, l, tilt, p, false})
	}
	if tip := edge.Balance.Back.Tip; edge.Upright() && edge.Balance.Back.Exists() {
		add("edge", "at the edge of going "+r.Design.Directions().Over, cut(besides(edge, seated), 20)+", "+degreesOf(tip, r.Design.Units),
			edge, tip, pen{orange, 0.35, []float64{1.6, 1.2}})
	}
	if empty.Upright() {
		add("empty", "empty", at(empty), empty, empty.Balance.Rest.Tilt, pen{faded, 0.35, nil})
	}
	switch {
	case len(owner) > 0:
		add("seated", cut(seated.Name, 28), at(seated), seated, seated.Balance.Rest.Tilt, pen{ink, 0.6, nil})
	case len(ghosts) == 0:
		add("as-drawn", "as drawn", "it does not stand", empty, r.Design.Floor.Slope, pen{ink, 0.6, nil})
	}
	return ghosts
}

// besides names a load beside another one: of the same person what sets it apart, else the
// person.
func besides(l, other *check.Load) string {
	if rest, found := strings.CutPrefix(l.Name, l.Sitter+", "); found && l.Sitter == other.Sitter {
		return rest
	} else if found {
		return l.Sitter
	}
	return l.Name
}

// sided returns an angle with its side.
func sided(x float64, d piece.Design) string {
	way, text := d.Directions().Behind, degreesOf(math.Abs(x), d.Units)
	if text == degreesOf(0, d.Units) {
		return text
	}
	if x < 0 {
		way = d.Directions().Ahead
	}
	return text + " " + way
}

// An area is the paper that a side view may have, mm.
type area struct {
	width, high float64 // of all, and of the drawing without the rooms over and under it
	least       float64 // height of the drawing, however low the piece
	top, low    float64
	narrow      bool // half a page wide
}

// A frame is where the metres of the view lie on the paper.
type frame struct {
	area
	scale    float64 // mm of paper for a metre
	from, to r2.Vec  // corners of what is shown, m
	height   float64 // of the paper, mm
}

// frameOf returns the frame in which all ghosts, their marks and the floor fit.
func frameOf(r check.Report, ghosts []ghost, paper area) frame {
	f := frame{area: paper, from: r2.Vec{X: math.Inf(1), Y: 0}, to: r2.Vec{X: math.Inf(-1), Y: 0.3}}
	wood := woodOf(r)
	for _, g := range ghosts {
		at := poseAt(r.Edge, g.tilt, r.Design.Floor.Slope)
		f.include(placed(wood, at.place)...)
		f.include(at.place(g.load.Rig.Body.Centre))
		for _, j := range g.load.Figures {
			f.include(at.place(j.Vertex), at.place(j.Elbow), at.place(j.Knee), at.place(j.Toe))
		}
	}
	f.from.X, f.to.X = f.from.X-0.08, f.to.X+0.08
	f.fit()
	return f
}

// scene returns a scene of the floor and of ghosts on it.
func (f frame) scene(r check.Report, ghosts ...ghost) scene {
	rise := math.Tan(r.Design.Floor.Slope)
	from, to := r2.Vec{X: f.from.X, Y: f.from.X * rise}, r2.Vec{X: f.to.X, Y: f.to.X * rise}
	s := scene{width: f.width, height: f.height, title: cut(r.Design.Title, 60)}
	s.add(group{name: "floor", shapes: []shape{path(ink, 0.5, f.paper(from), f.paper(to))}})
	for _, g := range ghosts {
		s.add(f.ghost(r, g)...)
	}
	return s
}

// include widens what is shown to places of the view.
func (f *frame) include(places ...r2.Vec) {
	for _, p := range places {
		f.from = r2.Vec{X: min(f.from.X, p.X), Y: min(f.from.Y, p.Y)}
		f.to = r2.Vec{X: max(f.to.X, p.X), Y: max(f.to.Y, p.Y)}
	}
}

// fit gives what is shown as large a scale as the paper lets it have, in the middle of it.
func (f *frame) fit() {
	size := r2.Sub(f.to, f.from)
	f.scale = min((f.width-2*margin)/size.X, f.high/size.Y)
	if wide := (f.width - 2*margin) / f.scale; wide > size.X {
		f.from.X -= (wide - size.X) / 2
		f.to.X = f.from.X + wide
	}
	f.height = max(size.Y*f.scale, f.least) + f.top + f.low
}

// paper returns where a place of the view lies on the paper, mm.
func (f frame) paper(p r2.Vec) r2.Vec {
	return r2.Vec{X: margin + (p.X-f.from.X)*f.scale, Y: f.low + (p.Y-f.from.Y)*f.scale}
}

// ghost draws the piece and its person at one tilt, as groups of their own.
func (f frame) ghost(r check.Report, g ghost) []group {
	at := poseAt(r.Edge, g.tilt, r.Design.Floor.Slope)
	place := func(p r2.Vec) r2.Vec { return f.paper(at.place(p)) }
	of := func(name string, shapes ...shape) group {
		one := group{name: name + "-" + g.name, shapes: shapes}
		if g.moves {
			one.moves = withPiece
		}
		return one
	}
	var wood, person []shape
	for _, m := range r.Design.Members(r.Edge) {
		bar := g.pen
		if m.Thick > 0 && m.Outline == nil {
			bar.width *= 2.2
		}
		line := bar.line(placed(m.Side(), place)...)
		line.closed = m.Outline != nil
		wood = append(wood, line)
	}
	thin := g.pen
	thin.width *= 0.7
	for _, figure := range g.load.Figures {
		person = append(person, thin.figure(figure, place)...)
	}
	if !g.load.Empty && len(g.load.Figures) == 0 {
		alone, radius := sitterOf(g.load, &r.Loads[0])
		person = append(person, thin.ring(place(alone), radius*f.scale))
	}
	return []group{of("rocker", g.line(placed(rockerOf(r), place)...).round()), of("piece", wood...), of("person", person...),
		of("centre", g.balancePoint(place(g.load.Rig.Body.Centre))...)}
}
