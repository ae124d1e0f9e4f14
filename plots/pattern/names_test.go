package pattern

import (
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// namesOf returns where each name of a drawing stands, and the foot of its arrow.
func namesOf(d Drawing) map[string][]r2.Vec {
	names := map[string][]r2.Vec{}
	for _, item := range d.Items {
		switch it := item.(type) {
		case Name:
			names[it.Text] = append(names[it.Text], it.At)
		case Arrow:
			names[it.Label] = append(names[it.Label], it.From, it.To)
		}
	}
	return names
}

// TestEndsAreNamed: on a rocker and on its form, nose and tail stand nearer to that tip than to the other, in the
// wood, and the arrow goes up.
func TestEndsAreNamed(t *testing.T) {
	p := twoArcs(t)
	p.EndWords = EndWords{"nose", "tail", "up"}
	outline, err := p.Rocker.Outline()
	if err != nil {
		t.Fatal(err)
	}
	_, _, top, err := p.Rocker.Edges()
	if err != nil {
		t.Fatal(err)
	}
	form := FormPattern{Outline: Behind(top), Face: [2]r2.Vec{top.End(), top.Start}, Side: -1, EndWords: p.EndWords}
	for _, tt := range []struct {
		d       Drawing
		outline bench.Path
	}{{drawingOf(t, p), outline}, {form.Drawing(), form.Outline}} {
		l := &layout{face: newFace()}
		l.add(shape{layer: Outline, path: tt.outline})
		names := namesOf(tt.d)
		tail, nose := p.Rocker.Edge.Tail(), p.Rocker.Edge.Nose()
		for name, ends := range map[string][2]r2.Vec{"nose": {nose, tail}, "tail": {tail, nose}} {
			at := names[name]
			if len(at) != 1 || r2.Norm(r2.Sub(at[0], ends[0])) > 0.2*r2.Norm(r2.Sub(at[0], ends[1])) || !l.inside(at[0]) {
				t.Errorf("%s stands at %v", name, at)
			}
		}
		up := names["up"]
		if len(up) != 2 || up[0].X != up[1].X || up[1].Y <= up[0].Y || !l.inside(up[0]) || !l.inside(up[1]) {
			t.Errorf("up is %v", up)
		}
	}
}

// TestSidesOfAPairAreNamed: of a wedge and its mirror image what is ahead stands at the thin end of both, and above is above.
func TestSidesOfAPairAreNamed(t *testing.T) {
	wedge := bench.Path{Closed: true, Strokes: []bench.Stroke{{To: r2.Vec{X: 0.4}}, {To: r2.Vec{X: 0.4, Y: 0.03}}, {To: r2.Vec{Y: 0.08}}}}
	pair, err := bench.Nested(wedge, 0, 0.01)
	if err != nil {
		t.Fatal(err)
	}
	names := namesOf(PairPattern{Pair: pair, PairWords: PairWords{"ahead", "behind", "above", "below", "left", "right"}}.Drawing())
	for i, part := range []bench.Half{pair.Left, pair.Right} {
		box := part.Outline.Bounds()
		thin := box.Max.X
		if i == 1 {
			thin = box.Min.X
		}
		if at := names["ahead"][i]; (at.X-thin)*(at.X-thin) > 0.05*0.05 || at.Y < box.Min.Y || at.Y > box.Max.Y {
			t.Errorf("%s: ahead stands at %v in %v", part.Mark, at, box)
		}
		if at := names["behind"][i]; (at.X-thin)*(at.X-thin) < 0.35*0.35 {
			t.Errorf("%s: behind stands at %v in %v", part.Mark, at, box)
		}
		if names["above"][i].Y <= names["below"][i].Y+0.02 {
			t.Errorf("%s: above at %v, below at %v", part.Mark, names["above"][i], names["below"][i])
		}
	}
}
