package sheets

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/plots/scene"
	"rockerwright/plots/view"
	"rockerwright/sim/quantity"
)

// Person is a page to write a person's measures on, each drawn with both ends of the tape: letter paper, or A4 for mm.
func Person(units quantity.System) scene.Picture {
	step := "1/8 in"
	if units == quantity.Metric {
		step = "3 mm"
	}
	s := newSheet(units, "Measure the person",
		"Shoes on (off for 1), on a hard stool against a wall: buttocks and shoulders at the wall, thighs level, shins plumb, forearms",
		"level. Hold the tape straight between the two ends drawn, without pressing; read to "+step+". Only 1 and 2 are needed: what you leave",
		"out is estimated, and check says so.")
	s.y -= 8
	p, _ := person.New(person.Given{}) // the mean of the survey, which can always be made
	s.sitter(p, r2.Vec{X: 62, Y: s.y - 113})
	s.stander(p, r2.Vec{X: 172, Y: s.y - 60})
	s.front(r2.Vec{X: 172, Y: s.y - 104})
	y := s.y - 124
	for _, m := range blanks(1, 9) {
		s.blank(m, edgeFree, y, s.Width-2*edgeFree)
		y -= 7.1
	}
	y -= 2
	for _, q := range [][]string{
		{"Name and date"},
		{"Used for", "reading", "resting", "nursing", "porch talk", "sleep"},
		{"Stands on", "bare floor", "rug", "porch or deck", "slope"},
		{"Cushion", "none", "seat", "seat and back"},
		{"How thick, sat on"},
		{"In the house", "small children", "dogs, cats", "someone who needs a hand to rise"},
		{"Another who sits"},
	} {
		s.question(q[0], y, q[1:]...)
		y -= 6.7
	}
	s.foot(numbered)
	return scene.Picture{Name: "measure the person", Scene: s.Scene}
}

// sitter draws the person on a stool, with the sizes taken sitting; at is where the wall meets the floor.
func (s *sheet) sitter(p person.Person, at r2.Vec) {
	const scale = 78.0 // mm for a metre
	crease := p.Sizes[person.KneeCrease]
	stool := person.Seat{Meet: r2.Vec{Y: crease}, Backed: true, Depth: 0.42, Arms: p.Sizes[person.Elbow], Reach: 0.3}
	j := p.Pose(stool, person.Upright).Joints
	paper := func(q r2.Vec) r2.Vec { return r2.Add(at, r2.Scale(scale, q)) }
	at2 := func(x, y float64) r2.Vec { return paper(r2.Vec{X: x, Y: y}) }
	s.draw("room",
		inked(0.5, at2(-0.5, 0), at2(1.02, 0)),
		inked(0.5, at2(0, 0), at2(0, 1.42)),
		inked(0.9, at2(0.01, crease), at2(0.44, crease)),
		inked(0.6, at2(0.06, crease), at2(0.06, 0)), inked(0.6, at2(0.38, crease), at2(0.38, 0)))
	s.draw("person", view.Figure(stout, j, paper)...)
	hind := p.Sizes[person.ThighLength]
	elbow, lumbar, shoulder := crease+p.Sizes[person.Elbow], crease+p.Sizes[person.Lumbar], crease+p.Sizes[person.Shoulder]
	fore := j.Fingertip.X + 0.08
	s.draw("sizes", dimension(3, at2(0.78, 0), at2(0.78, crease), at2(hind, crease), at2(0.78, crease))...)
	s.draw("sizes", dimension(4, at2(0, crease-0.14), at2(hind, crease-0.14),
		at2(hind, crease), at2(hind, crease-0.16))...)
	s.draw("sizes", dimension(6, at2(fore, crease), at2(fore, elbow),
		at2(j.Elbow.X, elbow), at2(fore, elbow), at2(0.44, crease), at2(fore, crease))...)
	for i, h := range []struct {
		number int
		y, x   float64
	}{{9, lumbar, 0}, {7, shoulder, j.Shoulder.X}, {8, j.Vertex.Y, j.Vertex.X}} {
		x := -0.10 - 0.13*float64(i)
		s.draw("sizes", dimension(h.number, at2(x, crease), at2(x, h.y), at2(h.x, h.y), at2(x, h.y))...)
	}
	s.draw("sizes", lead(at2(0, crease), at2(-0.36, crease)))
}

// stout is the pen of people on the sheets.
var stout = scene.Pen{Colour: scene.Grey, Width: 1.5}

// stander draws the person standing, for the height.
func (s *sheet) stander(p person.Person, at r2.Vec) {
	const scale = 33.0
	_, j := p.Standing(r2.Vec{})
	paper := func(q r2.Vec) r2.Vec { return r2.Add(at, r2.Scale(scale, q)) }
	s.draw("standing", view.Figure(stout, j, paper)...)
	s.draw("standing", inked(0.5, paper(r2.Vec{X: -0.4}), paper(r2.Vec{X: 0.7})))
	tall := p.Sizes[person.Stature]
	top := paper(r2.Vec{X: 0.5, Y: tall})
	s.draw("standing", dimension(1, paper(r2.Vec{X: 0.5}), top, paper(r2.Vec{Y: tall}), top)...)
	s.draw("standing", scene.Words(paper(r2.Vec{X: 0.1, Y: -0.14}), small, scene.Middle, "shoes off; 2 is the weight"))
}

// front draws the person sitting from the front, for the width of the hips.
func (s *sheet) front(at r2.Vec) {
	to := func(x, y float64) r2.Vec { return r2.Add(at, r2.Vec{X: x, Y: y}) }
	body := scene.Pen{Colour: scene.Grey, Width: 1.2}
	s.draw("front", body.Line(to(-8, 10), to(-9, 26), to(9, 26), to(8, 10)),
		body.Ring(to(0, 31), 4), body.Ring(to(-5, 9), 5), body.Ring(to(5, 9), 5),
		inked(0.9, to(-14, 3.6), to(14, 3.6)))
	s.draw("front", dimension(5, to(-10, -1), to(10, -1), to(-10, 9), to(-10, -1), to(10, 9), to(10, -1))...)
	s.draw("front", scene.Words(to(0, -8), small, scene.Middle, "from the front"))
}
