package view

import (
	"cmp"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// marks draws for one ghost the contact, the plumb line through it, and the arc's centre where it is on the paper.
func (f frame) marks(r check.Report, g ghost) scene.Group {
	marks := scene.Group{Name: "marks"}
	at := poseAt(r, g.tilt)
	contact := f.paper(at.place(at.contact))
	centre := f.paper(at.place(at.centre))
	high := f.height - f.top + 4
	marks.Add(scene.Dashed(scene.Soft, 0.25, 3, 1, 0.6, 1).Line(contact, r2.Vec{X: contact.X, Y: min(centre.Y, high)}),
		scene.Path(scene.Ink, 0.4, r2.Add(contact, r2.Vec{X: -1.6, Y: -3}), contact, r2.Add(contact, r2.Vec{X: 1.6, Y: -3})),
		scene.Words(r2.Sub(contact, r2.Vec{Y: 6.6}), letter, scene.Middle, "touches here"))
	if centre.Y <= high {
		for _, arm := range []r2.Vec{{X: 2}, {Y: 2}} {
			marks.Add(scene.Path(scene.Ink, 0.4, r2.Sub(centre, arm), r2.Add(centre, arm)))
		}
		marks.Add(scene.Words(r2.Add(centre, r2.Vec{X: 3, Y: -1}), letter, scene.Left, "arc centre"))
	}
	return marks
}

// labels writes a label over each ghost, in the order in which they stand, and leads it to its highest point; in a
// narrow view they go down like stairs, so that no leader crosses a label.
func (f frame) labels(r check.Report, ghosts []ghost) []scene.Group {
	ordered := slices.Clone(ghosts)
	slices.SortStableFunc(ordered, func(a, b ghost) int { return cmp.Compare(f.head(r, a).X, f.head(r, b).X) })
	column := min((viewWidth-2*margin)/float64(len(ordered)), 1.05*f.width/float64(len(ordered)))
	var groups []scene.Group
	for i, g := range ordered {
		place, align, from := r2.Vec{X: margin + (float64(i)+0.5)*column, Y: f.height - f.top + 17}, scene.Middle, 0.0
		if f.narrow {
			place, align, from = r2.Vec{X: 2 + 21*float64(i), Y: f.height - 4 - 9.4*float64(i)}, scene.Left, 1.5
		}
		leader := scene.Path(g.Colour, 0.25, r2.Add(place, r2.Vec{X: from, Y: -6}), r2.Add(f.head(r, g), r2.Vec{Y: 1}))
		groups = append(groups, scene.Group{Name: "label-" + g.name, Still: g.moves,
			Shapes: append(scene.Lines(place, letter, letterRow, align, g.who, degreeSign(g.how)), leader)})
	}
	return groups
}

// degreeSign returns a text as it stands beside a drawing, where room is dear.
func degreeSign(text string) string {
	return strings.NewReplacer(" degrees", "°", " degree", "°").Replace(text)
}

// head returns where the label of a ghost leads: the top of the back, else the balance point, else the highest point.
func (f frame) head(r check.Report, g ghost) r2.Vec {
	at := poseAt(r, g.tilt)
	if top, known := r.Design.TopOfBack(); known {
		return f.paper(at.place(r.Placed(top)))
	}
	if !g.load.Empty {
		return f.paper(at.place(g.load.Rig.Body.Centre))
	}
	wood := scene.Placed(woodOf(r), at.place)
	return f.paper(slices.MaxFunc(wood, func(a, b r2.Vec) int { return cmp.Compare(a.Y, b.Y) }))
}

// rule draws a scale in the maker's units, so far up the paper.
func (f frame) rule(r check.Report, up float64) scene.Group {
	rule := scene.Group{Name: "scale"}
	from := r2.Vec{X: margin, Y: up}
	length, text := 12*quantity.In, "12 in"
	if r.Design.Units == quantity.Metric {
		length, text = 0.300, "300 mm"
	}
	to, tick := r2.Add(from, r2.Vec{X: length * f.scale}), r2.Vec{Y: 1.2}
	rule.Add(
		scene.Path(scene.Ink, 0.4, r2.Add(from, tick), r2.Sub(from, tick), from, to, r2.Add(to, tick), r2.Sub(to, tick)),
		scene.Words(r2.Add(to, r2.Vec{X: 2, Y: -1.1}), letter, scene.Left, text))
	if l := r.Loads[0]; l.Balance.Outcome != sim.Rocks {
		rule.Add(scene.Words(r2.Vec{X: f.width - margin, Y: 4}, letter, scene.Right, "empty: "+l.Balance.Outcome.String()))
	}
	return rule
}
