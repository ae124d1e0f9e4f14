package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A wording is how one design is spoken of: in its units, and with the phrases for its kind.
type wording struct {
	units
	*phrases
}

func wordingOf(d piece.Design) wording { return wording{units{d.Units}, phrasesOf(d)} }

// units write numbers as a shop that reads inches or millimetres reads them.
type units struct{ quantity.System }

// shop and with write a quantity without its unit and with it, what is no number as a dash.
func (u units) shop(x float64, kind quantity.Kind) string { return quantity.Shop(x, kind, u.System) }
func (u units) with(x float64, kind quantity.Kind) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	return quantity.With(x, kind, u.System)
}

// length and degrees write a length and an angle with their unit, bare and angle without.
func (u units) length(x float64) string  { return u.with(x, quantity.Length) }
func (u units) degrees(x float64) string { return u.with(x, quantity.Angle) }
func (u units) bare(x float64) string    { return u.shop(x, quantity.Length) }
func (u units) angle(x float64) string   { return u.shop(x, quantity.Angle) }

// unit is that of lengths.
func (u units) unit() string { return quantity.Unit(quantity.Length, u.System) }

func force(u units, x float64) string   { return u.with(x, quantity.Force) }
func mass(u units, x float64) string    { return u.with(x, quantity.Mass) }
func seconds(u units, x float64) string { return u.shop(x, quantity.Time) }

// towards returns an angle with its side, "2 1/2 fwd"; back goes without saying where a table says so.
func towards(w wording, x float64) string {
	text := w.angle(unsigned(x))
	if math.IsNaN(x) || text == "0" {
		return text
	}
	return text + pick(x < 0, w.angleForward, string(w.angleBack))
}

// unsigned returns a number without its sign, where the words beside it say which way.
func unsigned(x float64) float64 { return math.Abs(x) }

// inUnits returns the words for inches or for millimetres, fixed one of two numbers, with so many decimals.
func inUnits(u units, inch, metric string) string {
	return pick(u.System == quantity.Metric, metric, inch)
}
func fixed(u units, inch float64, decimals int, metric float64, fewer int) string {
	return inUnits(u, decimal(inch, decimals), decimal(metric, fewer))
}

// limitName returns what a limit is called after the load's name.
func limitName(say *phrases, name string) string {
	return cmp.Or(map[string]string{
		"back_margin": "tilt, going " + say.Back, "back_lift": "lift, going " + say.Back,
		"forward_margin": "tilt, going " + say.Forward, "forward_lift": "lift, going " + say.Forward,
		"rest_tilt": "tilt at rest", "seat_falls_least": "fall of the seat", "seat_falls_most": "fall of the seat",
		"empty_falls_least": "fall of the seat", "empty_falls_most": "fall of the seat", "slides_off": "slope forward",
		"one_rock_least": "one rock", "one_rock_most": "one rock", "push": "push for one degree",
		"legs_beyond": "a leg beyond its rocker", "leans": "whole leans to and fro",
	}[name], strings.ReplaceAll(name, "_", " "))
}

// typed returns a value as it is typed on a command line, without spaces and quotes:
// 20-1/2. It is rounded to the shop's step.
func typed(u units, x float64, kind quantity.Kind) string {
	return strings.ReplaceAll(u.shop(x, kind), " ", "-")
}

// typedLengths returns lengths as they are typed to see what each does.
func typedLengths(u units, lengths []float64) string {
	return strings.Join(sheet.Across("", lengths, func(x float64) string { return typed(u, x, quantity.Length) })[1:], ",")
}

// labelOf returns what the measure of a key is called in this kind of piece: of one of several parts, people or arcs with
// the name of that, or its number, in front.
func labelOf(d piece.Design, key, label string) string {
	label = phrasesOf(d).renamed.Replace(label)
	path := strings.Split(key, ".")
	at := slices.IndexFunc(path, func(word string) bool { return strings.Trim(word, "0123456789") == "" })
	if at < 1 {
		return label
	}
	name := ""
	switch n, _ := strconv.Atoi(path[at]); path[at-1] {
	case "part":
		name = d.Parts[n-1].Name
	case "sitter":
		name = d.Sitters[n-1].Name
	case "leg":
		name = d.Legs[n-1].Name
	case "panel":
		name = d.Panels[n-1].Name
	}
	return cmp.Or(brief(name), path[at]) + ": " + label
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

// given returns those of some texts that there are.
func given(texts ...string) []string {
	return slices.DeleteFunc(texts, func(text string) bool { return text == "" })
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

// percent writes a share, hundredths one with so many decimals and without its %.
func percent(x float64) string                  { return hundredths(x, 0) + " %" }
func hundredths(x float64, decimals int) string { return decimal(100*x, decimals) }

func decimal(x float64, decimals int) string { return strconv.FormatFloat(x, 'f', decimals, 64) }

// inDegrees writes an angle with so many decimals.
func inDegrees(x float64, decimals int) string { return decimal(x*180/math.Pi, decimals) }

func pick(first bool, one, other string) string {
	if first {
		return one
	}
	return other
}

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
