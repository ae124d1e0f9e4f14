package words

import (
	"cmp"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A voice speaks of one design: in its units, and with the phrases for its kind.
type voice struct {
	units quantity.System
	*phrases
}

func voiceOf(d piece.Design) voice { return voice{d.Units, phrasesOf(d)} }

// shop and with write a quantity without its unit and with it, what is no number as a dash.
func (v voice) shop(x float64, kind quantity.Kind) string { return quantity.Shop(x, kind, v.units) }
func (v voice) with(x float64, kind quantity.Kind) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	return quantity.With(x, kind, v.units)
}

// towards returns an angle with its side, "2 1/2 fwd"; back goes without saying where
// a table says so.
func (v voice) towards(x float64) string {
	text := v.angle(math.Abs(x))
	if math.IsNaN(x) || text == "0" {
		return text
	}
	return text + pick(x < 0, v.angleForward, string(v.angleBack))
}

// length, degrees, force and mass return a quantity with its unit; bare, a length, angle and seconds without.
func (v voice) length(x float64) string  { return v.with(x, quantity.Length) }
func (v voice) degrees(x float64) string { return v.with(x, quantity.Angle) }
func (v voice) force(x float64) string   { return v.with(x, quantity.Force) }
func (v voice) mass(x float64) string    { return v.with(x, quantity.Mass) }
func (v voice) bare(x float64) string    { return v.shop(x, quantity.Length) }
func (v voice) angle(x float64) string   { return v.shop(x, quantity.Angle) }
func (v voice) seconds(x float64) string { return v.shop(x, quantity.Time) }

// inUnits returns the words for inches or for millimetres, fixed one of two numbers, with so many decimals.
func (v voice) inUnits(inch, metric string) string {
	return pick(v.units == quantity.Metric, metric, inch)
}
func (v voice) fixed(inch float64, decimals int, metric float64, fewer int) string {
	return v.inUnits(strconv.FormatFloat(inch, 'f', decimals, 64), strconv.FormatFloat(metric, 'f', fewer, 64))
}

// unit is that of lengths.
func (v voice) unit() string { return quantity.Unit(quantity.Length, v.units) }

// limitName returns what a limit is called after the load's name.
func (v voice) limitName(name string) string {
	return cmp.Or(map[string]string{
		"back_margin": "tilt, going " + v.Back, "back_lift": "lift, going " + v.Back,
		"forward_margin": "tilt, going " + v.Forward, "forward_lift": "lift, going " + v.Forward,
		"rest_tilt": "tilt at rest",
	}[name], strings.ReplaceAll(name, "_", " "))
}

// typed returns a value as it is typed on a command line, without spaces and quotes:
// 20-1/2. It is rounded to the shop's step.
func (v voice) typed(x float64, kind quantity.Kind) string {
	return strings.ReplaceAll(v.shop(x, kind), " ", "-")
}

// radii returns three radii around one, to compare: two inches or 50 mm apart.
func (v voice) radii(radius float64) string {
	step := 2 * quantity.In
	if v.units == quantity.Metric {
		step = 0.05
	}
	var list []string
	for _, x := range []float64{radius - step, radius, radius + step} {
		if x > 0 {
			list = append(list, v.typed(x, quantity.Length))
		}
	}
	return strings.Join(list, ",")
}

// brief returns a name as a sentence or a table has it: cut short, and plain.
func brief(name string) string { return sheet.Cut(sheet.Plain(name), 40) }

// upperFirst returns a text with its first letter as a capital, whatever the script.
func upperFirst(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if first == utf8.RuneError {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}

// list joins words: "a, b and c".
func list(words []string) string {
	if last := len(words) - 1; last > 0 {
		return strings.Join(words[:last], ", ") + " and " + words[last]
	}
	return strings.Join(words, "")
}

// counted writes how many there are of a thing, whose name takes an s where there is not one.
func counted(n int, name string) string { return strconv.Itoa(n) + " " + name + pick(n == 1, "", "s") }

// thousands writes a whole number with commas.
func thousands(n int) string {
	text := fmt.Sprint(n)
	for at := len(text) - 3; at > 0; at -= 3 {
		text = text[:at] + "," + text[at:]
	}
	return text
}

// percent writes a share.
func percent(x float64) string { return fmt.Sprintf("%.0f %%", x*100) }

// pick returns one of two texts.
func pick(first bool, one, other string) string {
	if first {
		return one
	}
	return other
}

// when returns a text where something is so, else "".
func when(so bool, format string, args ...any) string {
	if !so {
		return ""
	}
	return fmt.Sprintf(format, args...)
}

// titled returns lines as a block, none where there are none.
func titled(title string, lines []sheet.Line) []sheet.Block {
	if len(lines) == 0 {
		return nil
	}
	return []sheet.Block{{Title: title, Lines: lines}}
}

// timed writes the time of a rock to a hundredth of a second.
func timed(x float64) string { return pick(x > 0, fmt.Sprintf("%.2f s", x), "no rest") }
