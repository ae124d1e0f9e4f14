package sheets

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
)

// Level is a page to write down what a level shows on a finished piece at rest and as it balances on its ends: letter
// paper, or A4 for mm.
func Level(units quantity.System) scene.Picture {
	s := newSheet(units, "Measure the tilts",
		"With the weight (20) and three tilts of the empty piece its balance point is known, without two scales. A hard, level floor.",
		"Tape the level on the seat, fore and aft, and leave it on its mark for all readings. Degrees from level; back is +, forward is -.",
		"A level may lie: read it, turn it end for end, read again. Half of what the two differ by is its error: write the middle.")
	s.draw("caution", scene.Lines(r2.Vec{X: edgeFree, Y: s.y - 15}, 1.2*small, smallRow+0.8, scene.Left,
		"CAUTION: on its ends the piece can fall on whoever holds it. Two people, one at each side; a padded",
		"stop where it would come down, back and front; no child near; fingers and feet from under it.")...)
	floor := s.y - 76
	s.balanced("at rest", 0.03, r2.Vec{X: 42, Y: floor}, 37)
	s.balanced("on the tail ends", 1.08, r2.Vec{X: 114, Y: floor}, 38)
	s.balanced("on the nose ends", -0.98, r2.Vec{X: 170, Y: floor}, 40)
	y := floor - 20
	for _, m := range blanks(37, 43) {
		s.blank(m, edgeFree, y, s.Width-2*edgeFree)
		y -= 8
	}
	s.question("The level lies on", y-2, "the seat, drawn by 12 to 14", "another mark: level_on = \"mark\"")
	s.draw("how to", scene.Lines(r2.Vec{X: edgeFree, Y: y - 12}, small, smallRow+0.6, scene.Left,
		"38 and 40: lean it slowly with one finger, high up, until it just goes over by itself; read as it goes, and catch it.",
		"39 and 41: from there let it back as slowly, until it just comes back by itself. The finger holds it off one way and then the",
		"other, so the middle of the two is free of it. Read them twice; where they differ by more than a degree, press less.",
		"42 and 43: from the floor to the end of the floor edge, at the rest of 37. They say where the level's zero is; where the seat",
		"is drawn, they are a check on it. Both sides alike? If not, the rockers are unequal: write the mean.",
		"The ends are what it balances on: measure 10 and 11 to the very end, and say how they are rounded (nose_end, tail_end, ease).")...)
	var keys []string
	for _, m := range blanks(37, 43) {
		keys = append(keys, fmt.Sprintf("%d %s", m.Blank, m.Name()))
	}
	s.foot("In the file, under [measured]: "+strings.Join(keys[:4], ", ")+",", strings.Join(keys[4:], ", ")+".")
	return scene.Picture{Name: "measure the tilts", Scene: s.Scene}
}

// balanced draws the chair on the floor at a tilt, rad, with the level on its seat and the stop where it would fall; at
// is where it stands.
func (s *sheet) balanced(name string, tilt float64, at r2.Vec, number int) {
	const scale = 40.0
	along := min(toNose, max(-toTail, -arcRadius*tilt)) // of the contact, forward along the edge
	contact := edgePoint(along)
	paper := func(q r2.Vec) r2.Vec {
		return r2.Add(at, r2.Scale(scale, r2.Rotate(r2.Sub(q, contact), tilt, r2.Vec{})))
	}
	s.laid(name, 0.9, paper)
	s.draw(name, inked(0.5, r2.Add(at, r2.Vec{X: -28}), r2.Add(at, r2.Vec{X: 28})))
	ends := [...]r2.Vec{paper(r2.Vec{X: -0.12, Y: 0.415}), paper(r2.Vec{X: 0.16, Y: 0.427})}
	s.draw(name, inked(1.4, ends[:]...))
	middle := r2.Scale(0.5, r2.Add(ends[0], ends[1]))
	up := r2.Scale(5.5, r2.Vec{X: -math.Sin(tilt), Y: math.Cos(tilt)})
	s.draw(name, lead(r2.Vec{X: middle.X - 13, Y: middle.Y}, r2.Vec{X: middle.X + 13, Y: middle.Y}))
	s.draw(name, ring(number, r2.Add(middle, up))...)
	s.draw(name, scene.Words(r2.Vec{X: at.X, Y: at.Y - 6}, small, scene.Middle, name))
	if along > -toTail && along < toNose { // at rest: the heights of the tips
		for i, end := range []float64{toNose, -toTail} {
			q := paper(edgePoint(end))
			x := q.X + []float64{5, -5}[i]
			s.draw(name, dimension(42+i, r2.Vec{X: x, Y: at.Y}, r2.Vec{X: x, Y: q.Y}, q, r2.Vec{X: x, Y: q.Y})...)
		}
		return
	}
	s.draw(name, ring(number+1, r2.Add(middle, r2.Add(up, r2.Vec{X: 6})))...)
	side := -1.0
	if tilt < 0 {
		side = 1
	}
	stop := r2.Vec{X: at.X + side*23 - 5, Y: at.Y}
	s.draw(name, scene.Rectangle(scene.Ink, line2, stop, r2.Vec{X: 10, Y: 6}))
	s.draw(name, scene.Words(r2.Vec{X: stop.X + 5, Y: stop.Y + 2}, small, scene.Middle, "stop"))
}
