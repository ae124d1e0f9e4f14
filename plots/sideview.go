package plots

import (
	"image/color"
	"io"
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
	topRoom   = 32.0
	lowRoom   = 22.0
)

// A ghost is the piece in one of the three positions.
type ghost struct {
	name   string // of its group
	who    string
	how    string // it stands
	load   *check.Load
	tilt   float64
	colour color.RGBA
	dash   []float64
	wide   float64 // of its lines, mm
	moves  bool    // where the view rocks
}

// SideView draws the piece to scale in three ghost positions: empty, with the first
// person at rest, and at the edge of going over backwards.
func SideView(r check.Report) Picture {
	ghosts := ghostsOf(r)
	alt := "Side view to scale."
	for _, g := range ghosts {
		alt += " " + g.who + ": " + g.how + "."
	}
	return Picture{Name: "side view", Alt: alt, draw: func(w io.Writer, f Format) error {
		return sideScene(r, ghosts, alt).write(w, f)
	}}
}

// ghostsOf returns the positions there are; a piece that does not stand is drawn as it
// was drawn.
func ghostsOf(r check.Report) []ghost {
	units := r.Design.Units
	var ghosts []ghost
	empty := &r.Loads[0]
	seated, edge := empty, empty
	var owner []*check.Load
	for i := range r.Loads {
		l := &r.Loads[i]
		if l.Empty || l.Role != piece.Owner || !l.Upright() {
			continue
		}
		if seated.Empty {
			seated = l
		}
		owner = append(owner, l)
	}
	if len(owner) > 0 {
		edge = check.LeastBack(owner)
	}
	at := func(l *check.Load) string {
		if !math.IsNaN(l.SeatFall) {
			return "seat falls " + sided(l.SeatFall, r.Design)
		}
		return "tilts " + sided(l.Balance.Rest.Tilt, r.Design)
	}
	if edge.Upright() && edge.Balance.Back.Exists() {
		tip := edge.Balance.Back.Tip
		ghosts = append(ghosts, ghost{"edge", "at the edge of going " + r.Design.Ways().Over,
			cut(told(edge, seated), 20) + ", " + degreesOf(tip, units), edge, tip, rgb(213, 94, 0), []float64{1.6, 1.2}, 0.35, false})
	}
	if empty.Upright() {
		ghosts = append(ghosts, ghost{"empty", "empty", at(empty), empty, empty.Balance.Rest.Tilt, rgb(140, 140, 140), nil, 0.35, false})
	}
	switch {
	case seated.Upright() && !seated.Empty:
		ghosts = append(ghosts, ghost{"seated", cut(seated.Name, 28), at(seated), seated, seated.Balance.Rest.Tilt, ink, nil, 0.6, false})
	case len(ghosts) == 0:
		ghosts = append(ghosts, ghost{"as-drawn", "as drawn", "it does not stand", empty, r.Design.Floor.Slope, ink, nil, 0.6, false})
	}
	return ghosts
}

// told names a load beside another one: of the same person what sets it apart, else the
// person.
func told(l, beside *check.Load) string {
	if rest, found := strings.CutPrefix(l.Name, l.Sitter+", "); found && l.Sitter == beside.Sitter {
		return rest
	} else if found {
		return l.Sitter
	}
	return l.Name
}

// sided returns an angle with its side.
func sided(x float64, d piece.Design) string {
	way, text := d.Ways().Behind, degreesOf(math.Abs(x), d.Units)
	if text == degreesOf(0, d.Units) {
		return text
	}
	if x < 0 {
		way = d.Ways().Ahead
	}
	return text + " " + way
}

// sideScene lays out the side view.
func sideScene(r check.Report, ghosts []ghost, alt string) scene {
	view := frameOf(r, ghosts, area{width: viewWidth, high: 170, top: topRoom, low: lowRoom})
	s := scene{width: viewWidth, height: view.height, title: cut(r.Design.Title, 60), alt: alt}
	s.groups = append(s.groups, view.ground(r))
	for _, g := range ghosts {
		s.groups = append(s.groups, view.ghost(r, g)...)
	}
	title := group{name: "title"}
	title.add(words(r2.Vec{X: margin, Y: view.height - 7}, 4.4, left, cut(r.Design.Title, 60)))
	s.groups = append(s.groups, view.marks(r, ghosts[len(ghosts)-1]), title)
	s.groups = append(append(s.groups, view.labels(r, ghosts)...), view.rule(r))
	return s
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
	include := func(p r2.Vec) {
		f.from = r2.Vec{X: min(f.from.X, p.X), Y: min(f.from.Y, p.Y)}
		f.to = r2.Vec{X: max(f.to.X, p.X), Y: max(f.to.Y, p.Y)}
	}
	for _, g := range ghosts {
		at := poseAt(r.Edge, g.tilt, r.Design.Floor.Slope)
		for _, part := range append(partsOf(r), part{points: rockerOf(r)}) {
			for _, p := range part.points {
				include(at.place(p))
			}
		}
		include(at.place(g.load.Rig.Body.Centre))
		for _, figure := range g.load.Figures {
			for _, p := range []r2.Vec{figure.Vertex, figure.Elbow, figure.Knee, figure.Toe} {
				include(at.place(p))
			}
		}
	}
	f.from.X, f.to.X = f.from.X-0.08, f.to.X+0.08
	size := r2.Sub(f.to, f.from)
	f.scale = min((f.width-2*margin)/size.X, f.high/size.Y)
	wide := (f.width - 2*margin) / f.scale // centred
	f.from.X -= (wide - size.X) / 2
	f.to.X = f.from.X + wide
	f.height = max(size.Y*f.scale, f.least) + f.top + f.low
	return f
}

// paper returns where a place of the view lies on the paper, mm.
func (f frame) paper(p r2.Vec) r2.Vec {
	return r2.Vec{X: margin + (p.X-f.from.X)*f.scale, Y: f.low + (p.Y-f.from.Y)*f.scale}
}

// ground draws the floor.
func (f frame) ground(r check.Report) group {
	floor := group{name: "floor"}
	rise := math.Tan(r.Design.Floor.Slope)
	floor.add(path(ink, 0.5, f.paper(r2.Vec{X: f.from.X, Y: f.from.X * rise}), f.paper(r2.Vec{X: f.to.X, Y: f.to.X * rise})))
	return floor
}

// ghost draws the piece and its person at one tilt, as groups of their own.
func (f frame) ghost(r check.Report, g ghost) []group {
	at := poseAt(r.Edge, g.tilt, r.Design.Floor.Slope)
	place := func(p r2.Vec) r2.Vec { return f.paper(at.place(p)) }
	of := func(name string) group {
		one := group{name: name + "-" + g.name}
		if g.moves {
			one.moves = withPiece
		}
		return one
	}
	rocker := of("rocker")
	rocker.add(path(g.colour, g.wide, placed(rockerOf(r), place)...).dashed(g.dash...).round())
	body := of("piece")
	for _, part := range partsOf(r) {
		width := g.wide
		if part.thick {
			width *= 2.2
		}
		line := path(g.colour, width, placed(part.points, place)...).dashed(g.dash...)
		line.closed = part.closed
		body.add(line)
	}
	person := of("person")
	for _, figure := range g.load.Figures {
		person.add(pen{g.colour, g.wide * 0.7, g.dash}.figure(figure, place)...)
	}
	if !g.load.Empty && len(g.load.Figures) == 0 {
		alone := place(sitterOf(g.load, &r.Loads[0]))
		person.add(shape{points: []r2.Vec{alone}, radius: girth(g.load, &r.Loads[0]) * f.scale, stroke: g.colour, width: g.wide * 0.7, dash: g.dash})
	}
	centre := of("centre")
	centre.add(balancePoint(place(g.load.Rig.Body.Centre), g.colour)...)
	return []group{rocker, body, person, centre}
}

// sitterOf returns where the person's own balance point is, from the load's and the
// empty piece's.
func sitterOf(l, empty *check.Load) r2.Vec {
	whole, alone := l.Rig.Body, empty.Rig.Body
	return r2.Scale(1/(whole.Mass-alone.Mass), r2.Sub(r2.Scale(whole.Mass, whole.Centre), r2.Scale(alone.Mass, alone.Centre)))
}

// girth returns the radius of the ring that stands for a person, m: that of a body of the
// person's mass, drawn small.
func girth(l, empty *check.Load) float64 {
	return 0.11 * math.Cbrt((l.Rig.Body.Mass-empty.Rig.Body.Mass)/80)
}

// balancePoint draws the usual sign of a centre of mass: a disc with two quarters dark.
func balancePoint(at r2.Vec, colour color.RGBA) []shape {
	const radius = 2.0
	shapes := []shape{{points: []r2.Vec{at}, radius: radius, stroke: colour, fill: rgb(255, 255, 255), width: 0.4}}
	for _, start := range []float64{0, math.Pi} {
		quarter := []r2.Vec{at}
		for i := 0; i <= 8; i++ {
			sin, cos := math.Sincos(start + float64(i)*math.Pi/16)
			quarter = append(quarter, r2.Add(at, r2.Vec{X: radius * cos, Y: radius * sin}))
		}
		shapes = append(shapes, shape{points: quarter, closed: true, fill: colour})
	}
	return shapes
}
