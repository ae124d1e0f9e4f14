package main

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// wordOrNumber is a word with the digits in it, or a quantity as answers print it: 84, -0.64, 1/4, 12 1/2, 1e-05.
var wordOrNumber = regexp.MustCompile(`[\pL_][\pL\d_]*|[-+]?\d[\d.]*(?:[eE][-+]?\d+)?(?:/\d+)?(?: \d+/\d+)?`)

// notAQuantity is a year, the number of a standard, or a clause of one: a word.
var notAQuantity = regexp.MustCompile(`^\d{4,}$|\..*\.\d`)

var (
	feetAndInches = regexp.MustCompile(`# ft # in|# ft`)
	oneOrMore     = regexp.MustCompile(`# degrees?`)
	gap           = regexp.MustCompile(`   *`)
)

// masked returns an answer with one sign for each quantity, paragraphs on one line each, and two spaces between the
// cells of a table. Numbers are held where they are computed, and on the page by [TestTables]; that columns stand under
// one another by [TestColumns].
func masked(text string) string {
	var lines []string
	for line := range strings.Lines(text) {
		line = strings.TrimSuffix(line, "\n")
		inner := strings.TrimPrefix(line, "  ")
		prose := func(text string) bool { return text != "" && !strings.Contains(text, "  ") }
		if n := len(lines); n > 0 && inner != line && prose(inner) && prose(lines[n-1]) {
			lines[n-1] += " " + inner // a wrapped paragraph
			continue
		}
		lines = append(lines, gap.ReplaceAllString(line, "  "))
	}
	text = wordOrNumber.ReplaceAllStringFunc(strings.Join(lines, "\n"), func(found string) string {
		number := strings.TrimRight(found, ".") // a full stop may follow
		if !strings.ContainsAny(found[:1], "+-0123456789") || notAQuantity.MatchString(number) {
			return found
		}
		return "#" + found[len(number):]
	})
	return oneOrMore.ReplaceAllString(feetAndInches.ReplaceAllString(text, "# ft"), "# degrees")
}

// unlikeMasked returns the first line in which two answers differ but for their quantities, or "".
func unlikeMasked(got, want string) string {
	a, b := strings.Split(masked(got), "\n"), strings.Split(masked(want), "\n")
	for i := range min(len(a), len(b)) {
		if !sameLine(a[i], b[i]) {
			return fmt.Sprintf("%q, want %q", a[i], b[i])
		}
	}
	if len(a) != len(b) {
		return fmt.Sprintf("%d lines, want %d", len(a), len(b))
	}
	return ""
}

// sameLine compares two masked lines. A cell that is too long for its place is cut short where the column beside it
// begins, so it may be cut elsewhere.
func sameLine(got, want string) bool {
	if got == want {
		return true
	}
	a, b := strings.Split(got, "  "), strings.Split(want, "  ")
	return slices.EqualFunc(a, b, func(x, y string) bool {
		x, cutX := strings.CutSuffix(x, "…")
		y, cutY := strings.CutSuffix(y, "…")
		switch {
		case !cutX && !cutY:
			return x == y
		case min(len(x), len(y)) < 3:
			return false
		case len(x) < len(y):
			return cutX && strings.HasPrefix(y, x)
		}
		return cutY && strings.HasPrefix(x, y)
	})
}

// How far a stroke may lie from where it was, as part of the picture's width: an estimate may change, a leg may not
// stand elsewhere; the curves of charts are numbers, and steep at their ends.
const (
	nearInView  = 0.02
	nearInChart = 0.1
)

var (
	pictureWidth = regexp.MustCompile(`viewBox="0 0 ([\d.]+) `)
	writing      = regexp.MustCompile(`>[^<]*<`)
	polyline     = regexp.MustCompile(`\bd="([MLZ\d., -]+)"`)
	colour       = regexp.MustCompile(`"#[0-9A-Fa-f]{6}"`)
	element      = regexp.MustCompile(`<(?:path|text|line|rect|circle|polyline|polygon)\b[^>]*>(?:[^<]*</text>)?`)
	motion       = regexp.MustCompile(`data-samples="[^"]*"`)
)

// unlikeDrawn returns where two SVG pictures differ, or "": shapes, their order and words are the same, quantities in
// the words are not compared, and nothing is further away than a part of the width. Motion over time is held by its
// own tests.
func unlikeDrawn(t *testing.T, got, want string, near float64) string {
	t.Helper()
	width := pictureWidth.FindStringSubmatch(want)
	if width == nil {
		t.Fatal("the picture has no view box")
	}
	most := near * amount(width[1])
	a, b := polyline.FindAllStringSubmatch(got, -1), polyline.FindAllStringSubmatch(want, -1)
	for i := range min(len(a), len(b)) {
		if off := max(offLine(a[i][1], b[i][1]), offLine(b[i][1], a[i][1])); off > most {
			return fmt.Sprintf("line %d is %.1f off: %.200s", i, off, a[i][1])
		}
	}
	return unlikeWithin(plainSVG(got), plainSVG(want), most)
}

// unlikeChart is [unlikeDrawn] of a chart, whose curves are drawn in the order in which they end: whichever is first.
func unlikeChart(t *testing.T, got, want string) string {
	t.Helper()
	return unlikeDrawn(t, inOrder(got), inOrder(want), nearInChart)
}

// inOrder returns a picture with its elements by their kind, colour and words, behind what holds them.
func inOrder(svg string) string {
	elements := element.FindAllString(svg, -1)
	key := func(one string) string { return numeral.ReplaceAllString(plainSVG(one), "") }
	slices.SortStableFunc(elements, func(a, b string) int { return strings.Compare(key(a), key(b)) })
	return element.ReplaceAllString(svg, "") + strings.Join(elements, "\n")
}

// plainSVG returns a picture without what is compared otherwise: lines through points, motion, and quantities in words.
func plainSVG(svg string) string {
	svg = polyline.ReplaceAllStringFunc(svg, func(line string) string {
		return strings.Map(func(c rune) rune {
			if strings.ContainsRune("dMZ", c) {
				return c
			}
			return -1
		}, line)
	})
	svg = colour.ReplaceAllStringFunc(svg, func(c string) string { // not a number
		return strings.Map(func(r rune) rune {
			if r >= '0' && r <= '9' {
				return 'g' + r - '0'
			}
			return r
		}, c)
	})
	return motion.ReplaceAllString(writing.ReplaceAllStringFunc(svg, masked), "")
}

// unlikeWithin returns where two texts part, whose numbers may lie so far apart.
func unlikeWithin(got, want string, most float64) string {
	a, b := numeral.FindAllString(got, -1), numeral.FindAllString(want, -1)
	x, y := numeral.Split(got, -1), numeral.Split(want, -1)
	for i := range min(len(x), len(y)) {
		if x[i] != y[i] {
			return fmt.Sprintf("after number %d: %q, want %q", i, x[i], y[i])
		}
		if i < min(len(a), len(b)) && a[i] != b[i] {
			p, _ := strconv.ParseFloat(a[i], 64) // the pattern lets nothing else in
			q, _ := strconv.ParseFloat(b[i], 64)
			if math.Abs(p-q) > most {
				return fmt.Sprintf("%s%s, want %s", x[i], a[i], b[i])
			}
		}
	}
	if len(x) != len(y) {
		return fmt.Sprintf("%d numbers, want %d", len(a), len(b))
	}
	return ""
}

// offLine returns how far the points of a path lie from the strokes of another at most.
func offLine(path, other string) float64 {
	far, lines := 0.0, pathLines(other)
	for _, line := range pathLines(path) {
		for _, p := range line.points {
			far = max(far, nearest(cutOutline{{points: []r2.Vec{p}}}, lines))
		}
	}
	return far
}

// pathLines returns the lines of a path of straight strokes.
func pathLines(d string) (lines cutOutline) {
	for _, part := range strings.Split(d, "M")[1:] {
		var points []r2.Vec
		numbers := numeral.FindAllString(part, -1)
		for i := 0; i+1 < len(numbers); i += 2 {
			points = append(points, r2.Vec{X: amount(numbers[i]), Y: amount(numbers[i+1])})
		}
		if strings.Contains(part, "Z") || len(points) == 1 {
			points = append(points, points[0])
		}
		lines = append(lines, cutStroke{points: points})
	}
	return lines
}

// TestMasked: another quantity is no difference, and another word, sign of a unit, cell or line is one.
func TestMasked(t *testing.T) {
	for _, tt := range []struct {
		got, want string
		alike     bool
	}{
		{"keeps 41 degrees", "keeps 1 degree", true},
		{"keeps 41 degrees.", "keeps 39 1/2 degrees.", true},
		{"keeps 41 degrees", "keeps 41 mm", false},
		{"falls   12 1/2    3 fwd  degrees", "falls   9  10 1/2 fwd  degrees", true},
		{"falls   12 1/2    3 fwd  degrees", "falls   9  10 1/2  degrees", false},
		{"falls   12 1/2    3  degrees", "falls   12 1/2  degrees", false},
		{"it is 5 ft 10 in high and rests\n  at 3 degrees", "it is 6 ft high and\n  rests at 12 degrees", true},
		{"it reaches 28\n  5/8 in", "it reaches 28 1/2\n  in", true},
		{"one\ntwo", "one two", false},
		{"one\n\n  two", "one\n  two", false},
		{"(ISO 7174-1:1988, 7.1.1)", "(ISO 7174-1:1988, 7.1.2)", false},
		{"(2012)", "(2013)", false},
		{`{"inertia_kgm2":3}`, `{"inertia_kgm3":3}`, false},
		{`{"x":3.25e-5}`, `{"x":-4}`, true},
		{`{"x":null}`, `{"x":-4}`, false},
		{"large man, lying ba…  15 degrees  42", "large man, lying back  14 1/2 degrees  42", true},
		{"large man, lying ba…  15 degrees  42", "large man, upright  14 1/2 degrees  42", false},
		{"least: 41 degrees, sitting", "least: sitting, 41 degrees", false},
	} {
		if where := unlikeMasked(tt.got, tt.want); (where == "") != tt.alike {
			t.Errorf("unlikeMasked(%q, %q) = %s, want alike %v", tt.got, tt.want, where, tt.alike)
		}
	}
}
