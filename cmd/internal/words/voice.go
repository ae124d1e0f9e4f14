package words

import (
	"cmp"
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

// shop and with write a quantity without its unit and with it, what is no number as a dash.
func (v voice) shop(x float64, kind quantity.Kind) string { return v.written(x, kind, quantity.Shop) }
func (v voice) with(x float64, kind quantity.Kind) string { return v.written(x, kind, quantity.With) }

func (v voice) written(x float64, kind quantity.Kind, write func(float64, quantity.Kind, quantity.System) string) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	return write(x, kind, v.units)
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

// foot is the last line of every first page.
func (v voice) foot() Line { return Line{Text: v.disclaimer} }

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
