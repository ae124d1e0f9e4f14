package main

import (
	"encoding/xml"
	"fmt"
	"math"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// measured writes what a rule laid on a drawing says of a rocker that stands level, y up: its floor edge is the longest
// run of the outline between two corners.
func (p *madePiece) measured(points []r2.Vec) string {
	edge := longestRun(points)
	if edge[0].X < edge[len(edge)-1].X {
		slices.Reverse(edge)
	}
	along := []float64{0} // from the nose
	for i := 1; i < len(edge); i++ {
		along = append(along, along[i-1]+r2.Norm(r2.Sub(edge[i], edge[i-1])))
	}
	length, low := along[len(along)-1], 0
	for i, point := range edge {
		if point.Y < edge[low].Y {
			low = i
		}
	}
	nose := along[low]
	if low > 0 && low < len(edge)-1 { // level between the middles of the chords at the lowest point
		before, after := rise(edge[low-1], edge[low]), rise(edge[low], edge[low+1])
		from, to := (along[low-1]+along[low])/2, (along[low]+along[low+1])/2
		nose = from + (to-from)*before/(before-after)
	}
	at := func(part float64) r2.Vec {
		return edge[slices.IndexFunc(along, func(a float64) bool { return a >= part*length })]
	}
	a, b, c := at(0.01), at(0.08), at(0.15)
	radius := r2.Norm(r2.Sub(a, b)) * r2.Norm(r2.Sub(b, c)) * r2.Norm(r2.Sub(a, c)) / (2 * math.Abs(r2.Cross(r2.Sub(b, a), r2.Sub(c, a))))
	head, end := edge[0], edge[len(edge)-1]
	u := p.unit()
	return fmt.Sprintf("radius %.4f, nose %.4f, tail %.4f; nose tip %.4f, tail tip %.4f, tip to tip %.4f.",
		radius/u, nose/u, (length-nose)/u,
		(head.Y-edge[low].Y)/u, (end.Y-edge[low].Y)/u, r2.Norm(r2.Sub(head, end))/u)
}

// rise returns the heading of a chord towards the tail, + down.
func rise(from, to r2.Vec) float64 { return math.Atan2(from.Y-to.Y, from.X-to.X) }

// longestRun returns the longest stretch of a closed outline on which no two chords turn by 20 degrees; a curve of 400
// chords turns by far less.
func longestRun(points []r2.Vec) (best []r2.Vec) {
	points = slices.CompactFunc(slices.Clone(points), func(a, b r2.Vec) bool { return r2.Norm(r2.Sub(a, b)) < 1e-7 })
	corner := func(i int) bool {
		n := len(points)
		a, b := r2.Sub(points[i%n], points[(i+n-1)%n]), r2.Sub(points[(i+1)%n], points[i%n])
		return math.Abs(math.Atan2(r2.Cross(a, b), r2.Dot(a, b))) > 20*math.Pi/180
	}
	if n := len(points); r2.Norm(r2.Sub(points[0], points[n-1])) < 1e-7 {
		points = points[:n-1]
	}
	length := func(run []r2.Vec) (sum float64) {
		for i := 1; i < len(run); i++ {
			sum += r2.Norm(r2.Sub(run[i], run[i-1]))
		}
		return sum
	}
	first := 0
	for !corner(first) {
		first++
	}
	run := []r2.Vec{points[first]}
	for i := first + 1; i <= first+len(points); i++ {
		run = append(run, points[i%len(points)])
		if corner(i) {
			if length(run) > length(best) {
				best = run
			}
			run = []r2.Vec{points[i%len(points)]}
		}
	}
	return best
}

// measuredSVG measures the outlines for cutting of the rocker and of the legs.
func measuredSVG(t *testing.T, p *madePiece) string {
	t.Helper()
	return p.cut(func(name string) cutFile { return cutSVG(t, p.forCutting(name, "millimetres", "svg")) }) + p.titled(t)
}

// measuredDXF measures the same by ezdxf; the title stands on one line with the part, or on the next.
func measuredDXF(t *testing.T, p *madePiece) string {
	t.Helper()
	open := func(name string) cutFile {
		return cutDXF(t, p.forCutting(name, map[bool]string{false: "inches", true: "millimetres"}[p.metric()], "dxf"))
	}
	texts := open("rocker").texts
	first := slices.IndexFunc(texts, func(text string) bool { return strings.HasPrefix(text, "Rocker") })
	return p.cut(open) + strings.Join(texts[first:first+2], " ")
}

// parts are the files for cutting that are measured.
func (p *madePiece) parts() []string {
	if !p.hand.hasSeat {
		return []string{"rocker"}
	}
	return []string{"rocker", "front legs left and right", "rear legs left and right"}
}

func (p *madePiece) forCutting(name, unit, end string) string {
	return filepath.Join(p.folder, "for cutting", fmt.Sprintf("%s (%s).%s", name, unit, end))
}

// cut writes what is measured on files for cutting: a leg lies along the drawing.
func (p *madePiece) cut(open func(name string) cutFile) string {
	text := ""
	for i, name := range p.parts() {
		f := open(name)
		if i == 0 {
			text += p.measured(f.parts[0].points()) + " "
			continue
		}
		for _, leg := range f.parts {
			_, size := extent(leg.points())
			text += fmt.Sprintf("%s leg %.4f. ", strings.Fields(name)[0], size.X/p.unit())
		}
	}
	return text
}

// titled returns what the drawing for cutting is called in SVG.
func (p *madePiece) titled(t *testing.T) string {
	t.Helper()
	var r struct {
		Title string `xml:"title"`
	}
	if err := xml.Unmarshal([]byte(read(t, p.forCutting("rocker", "millimetres", "svg"))), &r); err != nil {
		t.Fatal(err)
	}
	return r.Title
}

var (
	strokes  = regexp.MustCompile(`<path style="[^"]*stroke-width:([0-9.]+);[^"]*" d="([^"]*)" transform="matrix\(1,0,0,-1,0,[0-9.]+\)"`)
	aCommand = regexp.MustCompile(`([MLCZ])([^MLCZ]*)`)
)

// measuredPDF measures the printed pattern by poppler, turned as it is on its paper: its outline is drawn 0.35 mm wide;
// the floor line, 0.18 mm, is the longest straight one that ends on it, from the square corner to the low point.
func measuredPDF(t *testing.T, p *madePiece) string {
	t.Helper()
	file := p.only(t, "* rocker (*.pdf")
	svg := reader(t, "pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", "1", "-l", "1", file, "-")
	var outline, floor []r2.Vec
	all := strokes.FindAllStringSubmatch(svg, -1)
	for _, m := range all {
		if math.Abs(amount(m[1])*25.4/72-0.35) < 0.01 {
			outline = traced(m[2])
		}
	}
	for _, m := range all {
		points := traced(m[2])
		if math.Abs(amount(m[1])*25.4/72-0.18) > 0.01 || len(points) != 2 {
			continue
		}
		if !slices.ContainsFunc(outline, func(q r2.Vec) bool { return r2.Norm(r2.Sub(q, points[1])) < 1e-3 }) {
			continue
		}
		if floor == nil || r2.Norm(r2.Sub(points[1], points[0])) > r2.Norm(r2.Sub(floor[1], floor[0])) {
			floor = points
		}
	}
	if outline == nil || floor == nil {
		t.Fatalf("%s: %d points of the outline, floor line %v", p.name, len(outline), floor)
	}
	way := r2.Sub(floor[1], floor[0])
	for i := range outline {
		outline[i] = r2.Rotate(outline[i], -math.Atan2(way.Y, way.X), r2.Vec{})
	}
	title := regexp.MustCompile(`Rocker,? .*? date`).FindString(inWords("* rocker (*.pdf")(t, p))
	return fmt.Sprintf("%s low point %.4f. %s", p.measured(outline), r2.Norm(way)/p.unit(), strings.TrimSuffix(title, " date"))
}

// traced returns the points of a path, m, 400 on each curve.
func traced(d string) (points []r2.Vec) {
	const point = 0.0254 / 72
	for _, m := range aCommand.FindAllStringSubmatch(d, -1) {
		var at []r2.Vec
		numbers := strings.Fields(m[2])
		for i := 0; i+1 < len(numbers); i += 2 {
			at = append(at, r2.Scale(point, r2.Vec{X: amount(numbers[i]), Y: amount(numbers[i+1])}))
		}
		switch {
		case m[1] != "C":
			points = append(points, at...)
			continue
		}
		from := points[len(points)-1]
		for k := 1; k <= 400; k++ {
			u := float64(k) / 400
			v := 1 - u
			b := r2.Add(r2.Scale(v*v*v, from), r2.Scale(3*v*v*u, at[0]))
			points = append(points, r2.Add(b, r2.Add(r2.Scale(3*v*u*u, at[1]), r2.Scale(u*u*u, at[2]))))
		}
	}
	return points
}
