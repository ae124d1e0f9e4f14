package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/readings"
	"rockerwright/sim/trial"
)

// Measure returns the sheet of what the readings of a finished piece say.
func Measure(d piece.Design, f check.Findings, source string) Sheet {
	v := voiceOf(d)
	name := d.Title
	if name == "" {
		name = "Untitled " + v.piece
	}
	s := Sheet{Title: short(name) + " · as measured", Source: source}
	if f.Result != nil {
		s.Blocks = append(s.Blocks, Block{Table: v.values(f)}, Block{Lines: append(untold(f.Result), v.better(f)...)})
	}
	if f.Curve != nil {
		s.Blocks = append(s.Blocks, Block{Table: v.arcs(f.Curve)}, Block{Lines: v.curve(f.Curve)})
	}
	lines := append(v.doubts(f.Result), Line{Text: "Uncertain by so much 95 times in 100, if the readings err as usual: a scale by its step, a tape by 1/16 in (1.5 mm), a watch by 0.3 s, a tilt by 2 degrees, a rise by 1/32 in (0.8 mm)."})
	lines = append(lines, Line{Text: "check uses these readings as they stand in the file:", Type: "rockerwright check " + plain(source)})
	s.Blocks = append(s.Blocks, Block{Lines: lines})
	return s
}

// values returns each value with its uncertainty and the reading that limits it.
func (v voice) values(f check.Findings) *Table {
	t := &Table{Head: []string{"What the readings say", "value", "uncertain by", "limited by"}}
	for _, row := range []struct {
		label string
		kind  quantity.Kind
		value readings.Value
	}{
		{"weight", quantity.Mass, f.Result.Mass},
		{placeLabel, quantity.Length, f.Result.Ahead},
		{"balance point, over the floor", quantity.Length, f.Result.Above},
		{"inertia about it", quantity.Inertia, f.Result.Inertia},
	} {
		if math.IsNaN(row.value.Value) {
			t.Rows = append(t.Rows, Row{Cells: []string{row.label, quantity.With(f.Result.Body.Inertia, row.kind, quantity.Metric), "–", inertiaFrom(f.Result)}})
			continue
		}
		units := v.units
		if row.kind == quantity.Inertia {
			units = quantity.Metric
		}
		value := quantity.With(row.value.Value, row.kind, units)
		if row.label == placeLabel {
			value = v.reach(row.value.Value)
		}
		t.Rows = append(t.Rows, Row{Cells: []string{row.label, value, fineWith(row.value.Uncertain, row.kind, units), plainKey(row.value.Limits())}})
	}
	return t
}

// inertiaFrom says why the inertia is estimated.
func inertiaFrom(r *readings.Result) string {
	if r.Untold == "" {
		return "no rocks timed: estimated"
	}
	return "estimated"
}

// untold says of rocks that were timed that they do not tell the inertia.
func untold(r *readings.Result) []Line {
	which := "The rocks"
	switch r.Untold {
	case "":
		return nil
	case "ten_rocks_ridden":
		which = "The rocks with a rider"
	}
	why := "by their reading errors it could be " + quantity.With(r.Inertia.Uncertain, quantity.Inertia, quantity.Metric) + " more or less"
	for _, d := range r.Doubts {
		if d.Reading == r.Untold {
			why = "they are quicker than a piece of this weight and balance point without any"
		}
	}
	return []Line{{Text: fmt.Sprintf("%s do not tell the inertia of the piece: %s. That of the drawn sizes is taken.", which, why)}}
}

const placeLabel = "balance point, from the low point"

// fineWith writes an uncertainty, finer where the shop's step would make it nothing.
func fineWith(x float64, kind quantity.Kind, units quantity.System) string {
	text := quantity.Shop(x, kind, units)
	if text == "0" {
		text = quantity.Fine(x, kind, units)
	}
	return text + " " + quantity.Unit(kind, units)
}

// plainKey returns a reading's name in words.
func plainKey(key string) string { return strings.ReplaceAll(key, "_", " ") }

// betters says for each reading how to read it better.
var betters = map[string]string{
	"weight":           "use scales of finer steps",
	"front":            "use scales of finer steps, or set the marks further apart",
	"rear":             "use scales of finer steps, or set the marks further apart",
	"front_raised":     "use scales of finer steps, or raise the front mark higher",
	"rear_raised":      "use scales of finer steps, or raise the front mark higher",
	"apart":            "measure between the marks again, with the sticks as thin as you can",
	"front_mark":       "mark the low point again: where the edge touches a flat board",
	"raised":           "measure the block again, mark to mark, or raise the front mark higher",
	"dowel_ahead":      "use a thinner dowel, and mark both ends of the range in which it balances",
	"dowel_above":      "use a thinner dowel, and mark both ends of the range in which it balances",
	"ten_rocks":        "time ten rocks three times and write the mean",
	"ten_rocks_ridden": "time ten rocks three times and write the mean, or time the empty piece",
	"let_go":           "let go from less: a few degrees, read with a level",
	"let_go_ridden":    "let go from less: a few degrees, read with a level",
	"rider":            "time the empty piece instead: nobody's body is known as well",
}

// better says how to better what limits each value, each advice once.
func (v voice) better(f check.Findings) []Line {
	var said []string
	for _, value := range []readings.Value{f.Result.Above, f.Result.Ahead, f.Result.Inertia, f.Result.Mass} {
		advice := betters[value.Limits()]
		if math.IsNaN(value.Value) && f.Result.Untold != "ten_rocks" {
			advice = "time ten rocks of the empty piece (ten_rocks, let_go)"
		}
		if advice != "" && !contains(said, advice) {
			said = append(said, advice)
		}
	}
	if len(said) == 0 {
		return nil
	}
	return []Line{{Text: "To know it better: " + strings.Join(said, "; ") + "."}}
}

// contains reports whether a text, or one that begins with it, is in a list.
func contains(list []string, text string) bool {
	return slices.ContainsFunc(list, func(one string) bool { return strings.HasPrefix(one, text) })
}

// doubts says which readings disagree with others.
func (v voice) doubts(result *readings.Result) []Line {
	if result == nil {
		return nil
	}
	var lines []Line
	for _, d := range result.Doubts {
		lines = append(lines, v.doubtful(d, trial.KindOf(d.Reading)))
	}
	return lines
}

// doubtful says what one reading gives, of a kind, and what the others.
func (v voice) doubtful(d readings.Doubt, kind quantity.Kind) Line {
	advice := "Read again."
	if d.Swapped != "" {
		advice = "Probably swapped: " + plainKey(d.Swapped) + "; the other way round all the readings agree."
	}
	return Line{Label: "DOUBTFUL:", Text: fmt.Sprintf("%s gives %s where the other readings give %s. %s",
		plainKey(d.Reading), v.with(d.Read, kind), v.with(d.Expected, kind), advice), Bad: true}
}

// reach writes a place along the rocker.
func (v voice) reach(x float64) string {
	if x < 0 {
		return v.with(-x, quantity.Length) + " behind"
	}
	return v.with(x, quantity.Length) + " ahead"
}

// untimed says whether the inertia of a measured piece is only estimated.
func (v voice) untimed(r *check.Report) []Line {
	var lines []Line
	switch m := r.Design.Measured; {
	case !r.UsualInertia:
	case m.TenRocks > 0:
		lines = append(lines, Line{Text: "Estimated, for the rocks do not tell it: the inertia of the piece (that of the drawn sizes). See rockerwright measure."})
	case m.RiddenTenRocks > 0:
		lines = append(lines, Line{Text: "Estimated, for rocks with a rider do not tell it: the inertia of the piece (that of the drawn sizes). Time ten rocks of the empty piece."})
	default:
		lines = append(lines, Line{Text: "Estimated, not timed: the inertia of the piece (that of the drawn sizes). Time ten rocks."})
	}
	return lines
}
