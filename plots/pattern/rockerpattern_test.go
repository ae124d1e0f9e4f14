package pattern

import (
	"math"
	"slices"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// twoArcs is a rocker of 42 in in front and 60 in behind, 57 mm deep, with a leg and a note.
func twoArcs(t testing.TB) RockerPattern {
	t.Helper()
	edge, err := rocker.Chain(0.43, rocker.Arc(1.0668, 0.6), rocker.Arc(1.524, 0.44))
	if err != nil {
		t.Fatal(err)
	}
	r := bench.Rocker{Edge: edge, Depth: 0.057}
	stations, err := r.Stations(0.0508)
	if err != nil {
		t.Fatal(err)
	}
	leg, err := r.Stand(bench.Leg{Seat: r3.Vec{X: -0.2, Y: 0.35}, Rake: -0.1})
	if err != nil {
		t.Fatal(err)
	}
	p := RockerPattern{Rocker: r, Stations: stations, Legs: []LegMark{{leg, 0.04, "rear leg"}}}
	for i := range stations {
		place := ""
		if stations[i].Ends == bench.Passing && stations[i].At != 0 {
			place = "2"
		}
		p.Places = append(p.Places, place)
	}
	return p
}

// twoArcsTruth returns the station points of floor and top edge by the circles' own formulas:
// the second centre lies on the line from the place where the arcs touch, through the first.
func twoArcsTruth() []r2.Vec {
	const first, second, depth = 1.0668, 1.524, 0.057
	touch := (0.6 - 0.43) / first // behind the low point, as an angle
	centres := []r2.Vec{{Y: first}, {X: (second - first) * math.Sin(touch), Y: first + (second-first)*math.Cos(touch)}}
	change := -first * math.Sin(touch)
	var list []r2.Vec
	for k := -10; k <= 7; k++ {
		x := 0.0508 * float64(k)
		for _, d := range []float64{0, depth} {
			c, r := centres[0], first-d
			if x < change*(first-d)/first {
				c, r = centres[1], second-d
			}
			list = append(list, r2.Vec{X: x, Y: c.Y - math.Sqrt(r*r-(x-c.X)*(x-c.X))})
		}
	}
	return list
}

func drawingOf(t testing.TB, p RockerPattern) Drawing {
	t.Helper()
	d, err := p.Drawing()
	if err != nil {
		t.Fatal(err)
	}
	d.Part, d.Piece = "Rocker", "Two arcs"
	d.Notes = [][]string{{"TRAMMEL, from the square corner:", "pivot 22 11/16 in forward, 42 in up"}}
	return d
}

// TestStationsOnPaper: every station of the composed pattern is within 0.05 mm of the circles on
// every sheet, by poppler, in SVG and in DXF.
func TestStationsOnPaper(t *testing.T) {
	p := twoArcs(t)
	d := drawingOf(t, p)
	tail, nose := p.Rocker.Edge.Tail(), p.Rocker.Edge.Nose()
	check := func(what string, chain []r2.Vec, place func(r2.Vec) r2.Vec) {
		for _, q := range twoArcsTruth() {
			if miss := off(place(q), chain); miss > near {
				t.Fatalf("%s: the outline passes the station %v at %v mm", what, q, miss*1e3)
			}
		}
	}
	r := readSVG(t, d, quantity.Inch)
	for _, g := range r.Groups {
		if g.ID == "OUTLINE" {
			chain, closed := commands(t, g.Paths[0].D)
			if !closed || len(g.Paths) != 1 {
				t.Fatalf("%d outlines, closed %v", len(g.Paths), closed)
			}
			first := chain[0]
			check("SVG", chain, func(q r2.Vec) r2.Vec {
				q = r2.Scale(1e3, r2.Sub(q, tail))
				return r2.Vec{X: first.X + q.X, Y: first.Y - q.Y}
			})
			if length := far(chain); math.Abs(length/1e3-far(pathPoints(t, p.Rocker))) > near {
				t.Errorf("SVG: %v mm from end to end", length)
			}
		}
	}
	pages := readPDF(t, pdfOf(t, d, "letter", quantity.Inch))
	if len(pages) < 5 || !slices.ContainsFunc(pages, func(s sheetRead) bool { return s.n == len(pages)-1 && s.of == s.n }) {
		t.Fatalf("%d pages", len(pages))
	}
	for i, s := range pages[1:] {
		if !s.closed {
			t.Fatalf("page %d: the outline is open", i+2)
		}
		var ends [2]r2.Vec // of the floor edge: the start of the outline, and the nose, 1000 mm from it
		ends[0] = s.outline[0]
		want := r2.Norm(r2.Sub(nose, tail))
		ends[1] = slices.MinFunc(s.outline, func(a, b r2.Vec) int {
			da, db := math.Abs(r2.Norm(r2.Sub(a, ends[0]))-want), math.Abs(r2.Norm(r2.Sub(b, ends[0]))-want)
			return int(math.Copysign(1, da-db))
		})
		is, was := r2.Sub(ends[1], ends[0]), r2.Sub(nose, tail)
		turn := math.Atan2(is.Y, is.X) - math.Atan2(was.Y, was.X)
		check("a sheet", s.outline, func(q r2.Vec) r2.Vec {
			return r2.Add(ends[0], r2.Rotate(r2.Sub(q, tail), turn, r2.Vec{}))
		})
	}
	dxf := readDXF(t, d, quantity.Inch)
	var chains [][]r2.Vec
	for _, part := range dxf.Outline {
		var chain []r2.Vec
		for _, q := range part {
			chain = append(chain, r2.Vec{X: q[0] * 0.0254, Y: q[1] * 0.0254})
		}
		chains = append(chains, chain)
	}
	if len(chains) != 6 || !slices.Equal(dxf.Closed, []bool{true}) { // two arcs on each edge, two ends
		t.Errorf("the DXF has %d strokes, closed %v; want 6, once", len(chains), dxf.Closed)
	}
	for _, q := range twoArcsTruth() {
		least := math.Inf(1)
		for _, chain := range chains {
			least = min(least, off(q, chain))
		}
		if least > near {
			t.Fatalf("DXF: the outline passes the station %v at %v mm", q, least*1e3)
		}
	}
}

// far returns the longest way between two points.
func far(points []r2.Vec) float64 {
	longest := 0.0
	for i := 0; i < len(points); i += 3 {
		for _, q := range points[i:] {
			longest = max(longest, r2.Norm(r2.Sub(q, points[i])))
		}
	}
	return longest
}

func pathPoints(t testing.TB, r bench.Rocker) []r2.Vec {
	t.Helper()
	p, err := r.Outline()
	if err != nil {
		t.Fatal(err)
	}
	return p.Flattened(1e-5)
}

// TestPatternCarries holds what must stand on every pattern of a rocker, as poppler reads it.
func TestPatternCarries(t *testing.T) {
	text := tool(t, "pdftotext", "-raw", pdfOf(t, drawingOf(t, twoArcs(t)), "roll 36 in", quantity.Inch), "-")
	for _, want := range []string{"Two arcs", "low point", "rear leg", "square corner", "floor line", "tangent point",
		"grain", "owner", "date", "tape says", "print at 100 %",
		"4 in square", "100 mm square", "TRAMMEL", "pivot 22 11/16 in forward"} {
		if !contains(text, want) {
			t.Errorf("no %q on the pattern:\n%s", want, text)
		}
	}
}

// contains compares without regard to how a reader spaces words.
func contains(text, want string) bool {
	plain := func(s string) string { return strings.Join(strings.Fields(s), "") } // rotated words are read letter by letter
	return strings.Contains(plain(text), plain(want))
}

// TestPlacedIsTheSame: files of a drawing that was placed before are those of one that was not.
func TestPlacedIsTheSame(t *testing.T) {
	d := drawingOf(t, twoArcs(t))
	placed, err := d.Placed(quantity.Inch)
	if err != nil {
		t.Fatal(err)
	}
	paper, _ := PaperNamed("letter")
	a, errA := d.Print(paper, quantity.Inch)
	b, errB := placed.Print(paper, quantity.Inch)
	if errA != nil || errB != nil || string(a.PDF) != string(b.PDF) || a.Sheets != b.Sheets || a.Pages != a.Sheets+1 {
		t.Errorf("%d and %d sheets of %d pages, %v, %v: the files differ", a.Sheets, b.Sheets, a.Pages, errA, errB)
	}
}

// TestPanelSection: the hollow corners of the staves lie on the finished circle, the flats of the
// round side touch the other, by distances from the centre.
func TestPanelSection(t *testing.T) {
	c := bench.Coopered{Chord: 0.508, Radius: 0.865, Staves: 7, Stock: 0.044}
	s, err := c.Stave()
	if err != nil {
		t.Fatal(err)
	}
	d := PanelPattern(c, s)
	outlines, joints := 0, 0
	const fine = 1e-12
	for _, item := range d.Items {
		if joint, ok := item.(Line); ok { // from the hollow side out along a radius
			joints++
			in, out := r2.Norm(joint.From), r2.Norm(joint.To)
			if math.Abs(in-c.Radius) > fine || math.Abs(out-in-c.Stock/math.Cos(s.Bevel)) > fine || math.Abs(r2.Cross(joint.From, joint.To)) > fine {
				t.Errorf("a joint from %v to %v", joint.From, joint.To)
			}
			continue
		}
		curve := item.(Contour)
		if curve.Layer == Centre {
			continue
		}
		outlines++
		points := curve.Path.Flattened(1e-6)
		for i := range 8 {
			if r := r2.Norm(points[8+i]); math.Abs(r-c.Radius) > fine {
				t.Errorf("a hollow corner is %v from the centre", r)
			}
		}
		for i := range 7 {
			flat := r2.Norm(r2.Scale(0.5, r2.Add(points[i], points[i+1])))
			if math.Abs(flat-(c.Radius+s.Thick)) > fine {
				t.Errorf("the round flat is %v from the centre, want %v", flat, c.Radius+s.Thick)
			}
		}
	}
	if outlines != 1 || joints != 6 || math.Abs(r2.Norm(r2.Sub(d.TipToTip[1], d.TipToTip[0]))-c.Chord) > 1e-12 {
		t.Errorf("%d outlines, %d joints over %v", outlines, joints, d.TipToTip)
	}
}
