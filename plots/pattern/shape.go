package pattern

import (
	"math"
	"strings"
	"unicode"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/rocker/bench"
)

// A shape is what every writer can write: a path, a line of text, or a point.
type shape struct {
	layer Layer
	path  bench.Path // without strokes there is none

	text          string
	at            r2.Vec // middle of a text's base line, or the point
	height, width float64
	angle         float64

	flips bool // a label by itself, which may be read from the other side

	point bool
}

// stroke returns a line through points on a layer.
func stroke(layer Layer, points ...r2.Vec) shape {
	return shape{layer: layer, path: bench.Polyline(false, points...)}
}

// left returns the left end of a text's base line.
func (s shape) left() r2.Vec { return r2.Sub(s.at, r2.Scale(s.width/2, along(s.angle))) }

// corners returns the box of a text, from below the base line to above the capitals.
func (s shape) corners() [4]r2.Vec {
	x, y := r2.Scale(s.width/2, along(s.angle)), r2.Rotate(r2.Scale(s.height, along(s.angle)), math.Pi/2, r2.Vec{})
	below, above := r2.Add(s.at, r2.Scale(-0.3, y)), r2.Add(s.at, r2.Scale(1.05, y)) // letters with tails; accents are let be
	return [4]r2.Vec{r2.Sub(below, x), r2.Add(below, x), r2.Add(above, x), r2.Sub(above, x)}
}

// spots returns points on all that a shape covers, no further apart than step.
func (s shape) spots(step float64) []r2.Vec {
	switch {
	case s.text != "":
		c := s.corners()
		left, right := r2.Scale(0.5, r2.Add(c[0], c[3])), r2.Scale(0.5, r2.Add(c[1], c[2]))
		return append(sampled(bench.Polyline(true, c[:]...), step), sampled(bench.Polyline(false, left, right), step)...)
	case s.point:
		return []r2.Vec{s.at}
	}
	return sampled(s.path, step)
}

// placed returns the shape with every point put elsewhere by moving and scaling alike.
func (s shape) placed(place func(r2.Vec) r2.Vec) shape {
	s.at, s.path = place(s.at), s.path.Placed(place)
	return s
}

// turnedBy returns shapes turned about the origin.
func turnedBy(shapes []shape, angle float64) []shape {
	if angle == 0 {
		return shapes
	}
	turn := r2.NewRotation(angle, r2.Vec{})
	list := make([]shape, len(shapes))
	for i, s := range shapes {
		s = s.placed(turn.Rotate)
		s.angle += angle
		if s.flips && math.Cos(s.angle) < -0.1 { // beyond upright, and a little leaning over is let be
			s.at = r2.Add(s.at, r2.Scale(0.8*s.height, along(s.angle+math.Pi/2)))
			s.angle += math.Pi
		}
		list[i] = s
	}
	return list
}

func bounds(shapes []shape) r2.Box {
	var points []r2.Vec
	for _, s := range shapes {
		points = append(points, s.spots(2e-3)...)
	}
	return boxOf(points)
}

// boxOf returns the box around points, of none the origin.
func boxOf(points []r2.Vec) r2.Box {
	if len(points) == 0 {
		return r2.Box{}
	}
	return bench.Polyline(false, points...).Bounds()
}

// arcs returns the strokes of a path; of a closed one the straight stroke home too, unless it has no length.
func arcs(p bench.Path) []bench.Piece {
	const same = 1e-9 // m: far below any reading, far above the rounding of metres
	list := p.Pieces()
	if n := len(list); p.Closed && n > 0 && list[n-1].Turn == 0 && list[n-1].Length() <= same {
		return list[:n-1]
	}
	return list
}

// sampled returns points along a path, ends included, step or a fifteenth of a radian of turn apart at the most.
func sampled(p bench.Path, step float64) []r2.Vec {
	list := []r2.Vec{p.Start}
	for _, a := range arcs(p) {
		n := max(1, int(math.Ceil(max(a.Length()/step, math.Abs(a.Turn)*15))))
		for i := 1; i < n; i++ {
			list = append(list, a.At(float64(i)/float64(n)))
		}
		list = append(list, a.To)
	}
	return list
}

// rectangle returns the outline of one from its lower left corner.
func rectangle(at, size r2.Vec) bench.Path {
	return bench.Polyline(true, r2.Box{Min: at, Max: r2.Add(at, size)}.Vertices()...)
}

// along returns the unit vector at an angle.
func along(angle float64) r2.Vec {
	s, c := math.Sincos(angle)
	return r2.Vec{X: c, Y: s}
}

// The heights of capitals, m.
const (
	lettering = 3.5e-3 // the smallest that is read at a bench
	heading   = 5e-3
)

// widest is where a text is cut, m.
const widest = 0.14

// A face measures and fits texts by the height of their capitals, m.
type face struct{ *scene.Face }

func newFace() face { return face{scene.NewFace()} }

// width returns the width of a text whose capitals are so high, m.
func (f face) width(text string, height float64) float64 {
	return f.Width(text) * height / scene.Capital
}

// fit returns a text on one line, without signs that do not print, cut with "..." to a width.
func (f face) fit(text string, height, width float64) string {
	const most = 400 // letters that could ever fit
	var letters []rune
	for _, letter := range text {
		if len(letters) > most {
			break
		}
		if unicode.IsSpace(letter) {
			letter = ' '
		}
		if unicode.IsGraphic(letter) {
			letters = append(letters, letter)
		}
	}
	text = strings.TrimSpace(string(letters))
	if f.width(text, height) <= width {
		return text
	}
	used := f.width("...", height)
	for i, letter := range letters { // these fonts have no kerning as they are set here
		if used += f.width(string(letter), height); used > width {
			return strings.TrimSpace(string(letters[:i])) + "..."
		}
	}
	return text
}

// wrapped returns a text in lines of at most a width; a no-break space holds two words together.
func (f face) wrapped(text string, height, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Split(text, " ") {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && f.width(longer, height) > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	return append(lines, line)
}

// lettered returns a text on a layer, its base line's middle at a point. No text is no shape.
func (f face) lettered(layer Layer, text string, at r2.Vec, angle float64) []shape {
	text = f.fit(text, lettering, widest)
	if text == "" {
		return nil
	}
	width := f.width(text, lettering)
	return []shape{{layer: layer, text: text, at: at, height: lettering, width: width, angle: angle}}
}
