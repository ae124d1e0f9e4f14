package words

import (
	"math"
	"strconv"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A voice speaks of one design: in its units, and with the phrases for its kind.
type voice struct {
	units quantity.System
	*phrases
}

func voiceOf(d piece.Design) voice { return voice{d.Units, phrasesOf(d)} }

// foot is the last line of every first page.
func (v voice) foot() Line { return Line{Text: v.disclaimer} }

// paragraphs returns a line for each text that there is.
func paragraphs[T ~string](texts ...T) []Line {
	var lines []Line
	for _, text := range texts {
		if text != "" {
			lines = append(lines, Line{Text: string(text)})
		}
	}
	return lines
}

func (v voice) shop(x float64, kind quantity.Kind) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	return quantity.Shop(x, kind, v.units)
}

func (v voice) with(x float64, kind quantity.Kind) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	return quantity.With(x, kind, v.units)
}

// towards returns an angle with its side, "2 1/2 fwd"; back goes without saying where
// a table says so.
func (v voice) towards(x float64) string {
	text := v.shop(math.Abs(x), quantity.Angle)
	switch {
	case math.IsNaN(x) || text == "0":
		return text
	case x < 0:
		return text + v.angleForward
	}
	return text + string(v.angleBack)
}

// seconds returns a time to a tenth of a second.
func (v voice) seconds(x float64) string { return v.shop(x, quantity.Time) }

// limitName returns what a limit is called after the load's name.
func (v voice) limitName(name string) string {
	switch name {
	case "back_margin":
		return "tilt, going " + v.Back
	case "back_lift":
		return "lift, going " + v.Back
	case "forward_margin":
		return "tilt, going " + v.Forward
	case "forward_lift":
		return "lift, going " + v.Forward
	case "rest_tilt":
		return "tilt at rest"
	}
	return name
}

// upper returns a text in capitals, as labels are.
func upper(text string) string { return strings.ToUpper(text) }

// counted writes how many there are of a thing, whose name takes an s where there is not one.
func counted(n int, name string) string {
	if n == 1 {
		return "1 " + name
	}
	return strconv.Itoa(n) + " " + name + "s"
}

// typed returns a value as it is typed on a command line, without spaces and quotes:
// 20-1/2. It is rounded to the shop's step.
func (v voice) typed(x float64, kind quantity.Kind) string {
	return strings.ReplaceAll(v.shop(x, kind), " ", "-")
}

// radii returns three radii around one, to compare: two inches or 50 mm apart.
func (v voice) radii(radius float64) string {
	apart := "2"
	if v.units == quantity.Metric {
		apart = "50"
	}
	step, err := quantity.Parse(apart, quantity.Length, v.units)
	if err != nil {
		return v.typed(radius, quantity.Length)
	}
	var list []string
	for _, x := range []float64{radius - step, radius, radius + step} {
		if x > 0 {
			list = append(list, v.typed(x, quantity.Length))
		}
	}
	return strings.Join(list, ",")
}
