package view

import (
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots"
	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
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
	scene.Pen
	moves bool // where the view rocks
}

// The pens of who sits, and of what was before a change.
var (
	seatedPen = scene.Pen{Colour: scene.Ink, Width: 0.6}
	beforePen = scene.Dashed(scene.Faded, 0.4, 1.6, 1.2)
)

// SideView draws the piece to scale empty, with the first person at rest, and at the edge of going over backwards.
func SideView(r check.Report) scene.Picture {
	ghosts := ghostsOf(r)
	view := frameOf(r, ghosts, area{width: viewWidth, high: 170, top: topRoom, low: lowRoom})
	s := view.standing(r, ghosts...)
	s.Alt = "Side view to scale." + told(ghosts)
	title := scene.Words(r2.Vec{X: margin, Y: view.height - 7}, 4.4, scene.Left, s.Title)
	s.Add(view.marks(r, ghosts[len(ghosts)-1]), scene.Group{Name: "title", Shapes: []scene.Shape{title}})
	s.Add(view.labels(r, ghosts)...)
	s.Add(view.rule(r, 5))
	return scene.Picture{Name: "side view", Scene: s}
}

// Pictures returns all pictures of a report: the side view and the charts.
func Pictures(r check.Report) []scene.Picture {
	return append([]scene.Picture{SideView(r)}, plots.OfReport(r)...)
}

func told(ghosts []ghost) string {
	text := ""
	for _, g := range ghosts {
		text += " " + g.who + ": " + g.how + "."
	}
	return text
}

// ghostsOf returns the positions there are; a piece that does not stand is shown as it was drawn.
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
	add := func(name, who, how string, l *check.Load, tilt float64, p scene.Pen) {
		ghosts = append(ghosts, ghost{name, who, how, l, tilt, p, false})
	}
	if tip := edge.Back.Tip; edge.Upright() && edge.Back.Exists() {
		how := scene.Cut(shortName(edge, seated), 20) + ", " + quantity.With(tip, quantity.Angle, r.Design.Units)
		add("edge", "at the edge of going "+r.Design.Directions().Over, how, edge, tip,
			scene.Dashed(scene.Orange, 0.35, 1.6, 1.2))
	}
	if empty.Upright() {
		add("empty", "empty", at(empty), empty, empty.Balance.Rest.Tilt, scene.Pen{Colour: scene.Faded, Width: 0.35})
	}
	switch {
	case len(owner) > 0:
		add("seated", scene.Cut(seated.Name, 28), at(seated), seated, seated.Balance.Rest.Tilt, seatedPen)
	case len(ghosts) == 0:
		add("as-drawn", "as drawn", "it does not stand", empty, r.Design.Floor.Slope, seatedPen)
	}
	return ghosts
}

// shortName names a load beside another: of the same person by its posture alone, of another by the person.
func shortName(l, other *check.Load) string {
	if rest, found := strings.CutPrefix(l.Name, l.Sitter+", "); found && l.Sitter == other.Sitter {
		return rest
	} else if found {
		return l.Sitter
	}
	return l.Name
}

func sided(x float64, d piece.Design) string { return plots.ChartOf(d).Sided(x) }

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
		at := poseAt(r, g.tilt)
		f.include(scene.Placed(wood, at.place)...)
		f.include(at.place(g.load.Rig.Body.Centre))
		for _, j := range g.load.FiguresAt(g.tilt) {
			f.include(at.place(j.Vertex), at.place(j.Elbow), at.place(j.Knee), at.place(j.Toe))
		}
	}
	f.from.X, f.to.X = f.from.X-0.08, f.to.X+0.08
	f.fit()
	return f
}

// standing returns a scene of the floor and of ghosts on it.
func (f frame) standing(r check.Report, ghosts ...ghost) scene.Scene {
	rise := math.Tan(r.Design.Floor.Slope)
	from, to := r2.Vec{X: f.from.X, Y: f.from.X * rise}, r2.Vec{X: f.to.X, Y: f.to.X * rise}
	s := scene.Scene{Width: f.width, Height: f.height, White: true, Title: scene.Cut(r.Design.Title, 60)}
	s.Add(scene.Group{Name: "floor", Shapes: []scene.Shape{scene.Path(scene.Ink, 0.5, f.paper(from), f.paper(to))}})
	for _, g := range ghosts {
		s.Add(f.ghost(r, g)...)
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
func (f frame) ghost(r check.Report, g ghost) []scene.Group {
	at := poseAt(r, g.tilt)
	place := func(p r2.Vec) r2.Vec { return f.paper(at.place(p)) }
	of := func(name string, shapes ...scene.Shape) scene.Group {
		one := scene.Group{Name: name + "-" + g.name, Shapes: shapes}
		if g.moves {
			one.Moves = scene.WithPiece
		}
		return one
	}
	var wood, person []scene.Shape
	for _, m := range r.Design.Members(r.Edge) {
		bar := g.Pen
		if m.Thick > 0 && m.Outline == nil {
			bar.Width *= 2.2
		}
		line := bar.Line(scene.Placed(m.Side(), place)...)
		line.Closed = m.Outline != nil
		wood = append(wood, line)
	}
	thin := g.Pen
	thin.Width *= 0.7
	for i, figure := range g.load.Figures {
		shape := Figure
		if i < len(g.load.Legs) {
			shape = riding
		}
		person = append(person, shape(thin, figure, place)...)
	}
	if !g.load.Empty && len(g.load.Figures) == 0 {
		whole, empty := g.load.Rig.Body, r.Loads[0].Rig.Body // given by mass and centre: a ring that grows with the mass
		mass := whole.Mass - empty.Mass
		centre := r2.Scale(1/mass, r2.Sub(r2.Scale(whole.Mass, whole.Centre), r2.Scale(empty.Mass, empty.Centre)))
		person = append(person, thin.Ring(place(centre), 0.11*math.Cbrt(mass/80)*f.scale))
	}
	groups := []scene.Group{of("rocker", g.Line(scene.Placed(rockerOf(r), place)...).Round()), of("piece", wood...),
		of("person", person...)}
	for i, l := range at.legs(g.load) {
		groups = append(groups, f.leg(l, thin, g, i)...)
	}
	return append(groups, of("centre", balancePoint(g.Pen, place(g.load.Rig.Body.Centre))...))
}
