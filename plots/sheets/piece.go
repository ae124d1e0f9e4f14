package sheets

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
)

// Piece is a page to write the measures and readings of a finished chair on: letter paper, or A4 for mm.
func Piece(units quantity.System) scene.Picture {
	s := newSheet(units, "Measure the piece",
		"Stand it on a hard, level floor. The low point is where the floor edge touches with the chair held as drawn; mark it on both rockers.",
		"10 to 20 are for any chair. 21 to 29 find its balance point, 30 to 33 its inertia, 34 to 36 the curve: read what you can.")
	s.y -= 6
	s.chair(r2.Vec{X: 60, Y: s.y - 83})
	s.onScales(r2.Vec{X: 148, Y: s.y - 30}, 0)
	s.onScales(r2.Vec{X: 148, Y: s.y - 64}, 0.22)
	s.straightedge(r2.Vec{X: 160, Y: s.y - 83})
	y := s.y - 102
	column := (s.Width - 2*edgeFree - 6) / 2
	for _, m := range blanks(10, 34) {
		row, x := m.Blank-10, edgeFree
		if m.Blank > 22 {
			row, x = m.Blank-23, edgeFree+column+6
		}
		s.blank(m, x, y-7.5*float64(row), column)
	}
	y -= 7.5*13 + 2
	s.rises(35, "left", y)
	s.rises(36, "right", y-10.5)
	s.foot("Rises from the nose to the tail; put a ring round the box at the low point.",
		numbered+". Two people lift; keep fingers from under the rockers.")
	return scene.Picture{Name: "measure the piece", Scene: s.Scene}
}

// rises draws a row of boxes for the rises of one rocker.
func (s *sheet) rises(number int, name string, y float64) {
	s.draw("rises", ring(number, r2.Vec{X: edgeFree + ringSize, Y: y + 1})...)
	s.draw("rises", scene.Words(r2.Vec{X: edgeFree + 7, Y: y}, small, scene.Left, name))
	const boxes = 17
	x := edgeFree + 17
	wide := (s.Width - edgeFree - x) / boxes
	for i := range boxes {
		corner := r2.Vec{X: x + wide*float64(i), Y: y - 2.6}
		s.draw("rises", scene.Rectangle(scene.Ink, fineLine, corner, r2.Vec{X: wide, Y: 8}))
	}
}

// The chair of the drawings, m: nobody's.
const (
	arcRadius = 1.07
	toNose    = 0.43
	toTail    = 0.58
)

// rockerPoints returns points of the floor edge of the drawn chair, offset outwards.
func rockerPoints(from, to, off float64) []r2.Vec {
	var points []r2.Vec
	for i := range 25 {
		sin, cos := math.Sincos((from + (to-from)*float64(i)/24) / arcRadius)
		r := arcRadius + off
		points = append(points, r2.Vec{X: r * sin, Y: arcRadius - r*cos})
	}
	return points
}

// edgePoint returns the place of the floor edge so far along it, ahead of the low point.
func edgePoint(along float64) r2.Vec { return rockerPoints(along, along, 0)[0] }

// laid draws the chair somewhere on the paper: rocker, seat, back, legs, arm.
func (s *sheet) laid(name string, width float64, place func(r2.Vec) r2.Vec) {
	rocker := append(rockerPoints(toNose, -toTail, 0), rockerPoints(-toTail, toNose, -0.055)...)
	meet, front := r2.Vec{X: -0.2, Y: 0.40}, r2.Vec{X: 0.25, Y: 0.42}
	for _, line := range [][]r2.Vec{
		append(rocker, rocker[0]), {meet, front}, {meet, {X: -0.39, Y: 1.08}},
		{meet, {X: -0.2, Y: 0.075}}, {front, {X: 0.25, Y: 0.085}},
		{{X: -0.26, Y: 0.60}, {X: 0.19, Y: 0.62}, {X: 0.19, Y: 0.42}},
	} {
		s.draw(name, scene.Path(scene.Grey, width, scene.Placed(line, place)...))
	}
}

// chair draws the chair with the measures off a tape; at is its low point.
func (s *sheet) chair(at r2.Vec) {
	const scale = 66.0
	paper := func(q r2.Vec) r2.Vec { return r2.Add(at, r2.Scale(scale, q)) }
	to := func(x, y float64) r2.Vec { return paper(r2.Vec{X: x, Y: y}) }
	s.laid("chair", 1.2, paper)
	s.draw("chair", inked(0.5, to(-0.76, 0), to(0.66, 0)))
	for i, end := range []float64{toNose, -toTail} { // along the curve, just under it
		curve := scene.Placed(rockerPoints(0, end, 0.05), paper)
		s.draw("sizes", inked(line2, curve...), inked(0.5, curve[0], r2.Add(curve[0], r2.Vec{Y: 3.2})),
			inked(0.5, curve[24], paper(edgePoint(end))))
		s.draw("sizes", ring(10+i, curve[13])...)
	}
	s.draw("sizes", dimension(12, to(0.50, 0), to(0.50, 0.42), to(0.25, 0.42), to(0.52, 0.42))...)
	s.draw("sizes", dimension(13, to(-0.66, 0), to(-0.66, 0.40), to(-0.2, 0.40), to(-0.68, 0.40))...)
	s.draw("sizes", dimension(14, to(-0.2, 0.46), to(0.25, 0.48))...)
	s.draw("sizes", scene.Words(to(0.29, 0.465), small, scene.Left, "15 is the width"))
	s.draw("sizes", dimension(16, to(-0.2, 0.24), to(0, 0.24), to(-0.2, 0.40), to(-0.2, 0.22), to(0, 0), to(0, 0.28))...)
	s.draw("sizes", lead(to(-0.2, 0.40), to(-0.2, 1.0)))
	var sweep []r2.Vec
	for i := range 9 {
		sin, cos := math.Sincos(0.272 * float64(i) / 8)
		sweep = append(sweep, to(-0.2-0.5*sin, 0.40+0.5*cos))
	}
	s.draw("sizes", inked(line2, sweep...))
	s.draw("sizes", ring(17, r2.Add(sweep[3], r2.Vec{Y: 4.5}))...)
	s.draw("sizes", dimension(18, to(-0.30, 0.37), to(-0.49, 1.05))...)
	s.draw("sizes", dimension(19, to(0.12, 0.415), to(0.12, 0.616))...)
	s.draw("sizes", scene.Words(to(0.0, -0.14), small, scene.Middle, "20 is the weight"))
}

// onScales draws the chair on two scales, the front mark raised by so much of a metre.
func (s *sheet) onScales(at r2.Vec, raised float64) {
	const scale = 24.0
	front, rear := edgePoint(0.32), edgePoint(-0.32)
	lean := math.Asin(raised / (front.X - rear.X))
	paper := func(q r2.Vec) r2.Vec { return r2.Add(at, r2.Scale(scale, r2.Rotate(q, lean, rear))) }
	name, number := "level", 21
	if raised > 0 {
		name, number = "raised", 26
	}
	s.laid(name, 0.7, paper)
	a, b := paper(front), paper(rear)
	floor := b.Y - 4.5
	for i, p := range []r2.Vec{a, b} {
		s.draw(name, inked(0.6, p, r2.Vec{X: p.X, Y: floor + 2}),
			scene.Rectangle(scene.Ink, line2, r2.Vec{X: p.X - 4, Y: floor}, r2.Vec{X: 8, Y: 2}))
		s.draw(name, ring(number+i, r2.Vec{X: p.X + []float64{8.5, -8.5}[i], Y: floor + 1.5})...)
	}
	if raised == 0 {
		s.draw(name, dimension(23, r2.Vec{X: b.X, Y: floor - 4}, r2.Vec{X: a.X, Y: floor - 4})...)
		s.draw(name, scene.Lines(r2.Add(at, r2.Vec{X: 17, Y: 12}), small, smallRow, scene.Left,
			"on two scales, marks", "level (24: low point", "to the front mark)")...)
		return
	}
	s.draw(name, dimension(25, r2.Vec{X: a.X + 6, Y: b.Y}, r2.Vec{X: a.X + 6, Y: a.Y},
		a, r2.Vec{X: a.X + 7, Y: a.Y}, b, r2.Vec{X: a.X + 7, Y: b.Y})...)
	s.draw(name, scene.Lines(r2.Add(at, r2.Vec{X: 19, Y: 12}), small, smallRow, scene.Left,
		"again with the", "front mark raised")...)
}

// straightedge draws a rocker over a straightedge with its stations.
func (s *sheet) straightedge(at r2.Vec) {
	const scale = 60.0
	paper := func(q r2.Vec) r2.Vec { return r2.Add(at, r2.Scale(scale, q)) }
	points := scene.Placed(rockerPoints(toNose, -toTail, 0), paper)
	s.draw("straightedge", scene.Path(scene.Grey, 1.0, points...),
		inked(0.6, paper(r2.Vec{X: -0.6}), paper(r2.Vec{X: 0.45})))
	for i := -10; i <= 8; i++ {
		x := 0.05 * float64(i)
		rise := arcRadius - math.Sqrt(arcRadius*arcRadius-x*x)
		s.draw("straightedge", inked(fineLine, paper(r2.Vec{X: x}), paper(r2.Vec{X: x, Y: rise})))
	}
	down := r2.Vec{Y: -4}
	s.draw("straightedge", dimension(34, r2.Add(paper(r2.Vec{X: 0.15}), down), r2.Add(paper(r2.Vec{X: 0.20}), down))...)
	s.draw("straightedge", scene.Words(r2.Add(at, r2.Vec{X: -36, Y: -5}), small, scene.Left, "rises from a straightedge"))
}
