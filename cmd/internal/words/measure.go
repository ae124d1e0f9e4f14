package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/rises"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/readings"
	"rockerwright/sim/trial"
)

// Measure returns the sheet of what the readings of a finished piece say.
func Measure(f check.Balanced, source string) sheet.Sheet {
	w := wordingOf(f.Design)
	var blocks []sheet.Block
	var last []sheet.Line
	if f.Read != nil {
		blocks = append(blocks, sheet.Block{Table: values(w.units, f)},
			sheet.Block{Lines: sheet.Says(untold(f.Read), better(f), slips(f.Read))})
		for _, d := range f.Read.Doubts {
			last = append(last, doubtful(w.units, d, trial.KindOf(d.Reading)))
		}
	}
	if f.Curve != nil {
		blocks = append(blocks, sheet.Block{Table: arcs(w.units, f.Curve)}, sheet.Block{Lines: curve(w, f.Curve)})
	}
	last = append(last, sheet.Says(when(f.Read != nil && !math.IsNaN(f.Read.Zero.Value), "%s", levelErrs))...)
	last = append(last,
		sheet.Line{Text: "Uncertain by so much 95 times in 100, if the readings err as usual: a scale by its step, " +
			"a tape by 1/16 in (1.5 mm), a watch by 0.3 s, a tilt by 2 degrees, a rise by 1/32 in (0.8 mm)."},
		used(f.Design, source))
	return sheet.Sheet{Title: name(f.Design) + " · as measured", Source: source,
		Blocks: append(blocks, sheet.Block{Lines: last})}
}

// used says what uses the readings.
func used(d piece.Design, source string) sheet.Line {
	if d.DrawnAndRead() {
		return sheet.Line{Text: "The file draws it too, and check goes by the drawing; to set both side by side:",
			Type: "rockerwright as-built " + sheet.Plain(source)}
	}
	return sheet.Line{Text: "check uses these readings as they stand in the file:", Type: "rockerwright check " + sheet.Plain(source)}
}

// values returns each value with its uncertainty and the reading that limits it; an inertia that no rocks tell is
// estimated.
func values(u units, f check.Balanced) *sheet.Table {
	t := &sheet.Table{Head: []string{"What the readings say", "value", "uncertain by", "limited by"}}
	r := f.Read
	add := func(label, text string, v readings.Value, uncertain string) {
		t.Add(label, text, uncertain, plainKey(v.Limits()))
	}
	add("weight", mass(u, r.Mass.Value), r.Mass, fineWith(r.Mass.Uncertain, quantity.Mass, u.System))
	add("balance point, from the low point", u.length(unsigned(r.Ahead.Value))+pick(r.Ahead.Value < 0, " behind", " ahead"),
		r.Ahead, fine(u, r.Ahead.Uncertain))
	add("balance point, over the floor", u.length(r.Above.Value), r.Above, fine(u, r.Above.Uncertain))
	if about := "inertia about it"; math.IsNaN(r.Inertia.Value) {
		t.Add(about, metricInertia(r.Body.Inertia), "–", pick(r.Untold == "", "no rocks timed: ", "")+"estimated")
	} else {
		add(about, metricInertia(r.Inertia.Value), r.Inertia, fineWith(r.Inertia.Uncertain, quantity.Inertia, quantity.Metric))
	}
	if zero := r.Zero; !math.IsNaN(zero.Value) {
		add("level, the piece as drawn", inDegrees(unsigned(zero.Value), 1)+pick(zero.Value < 0, " fwd", " back"), zero,
			inDegrees(zero.Uncertain, 1)+" degrees")
	}
	return t
}

// metricInertia writes an inertia, in kg·m² whatever the units.
func metricInertia(x float64) string { return quantity.With(x, quantity.Inertia, quantity.Metric) }

// untold says of rocks that were timed that they do not tell the inertia.
func untold(r *readings.Result) string {
	why := "by their reading errors it could be " + metricInertia(r.Inertia.Uncertain) + " more or less"
	if slices.ContainsFunc(r.Doubts, func(d readings.Doubt) bool { return d.Reading == r.Untold }) {
		why = "they are quicker than a piece of this weight and balance point without any"
	}
	return when(r.Untold != "", "The rocks%s do not tell the inertia of the piece: %s. That of the drawn sizes is taken.",
		pick(r.Untold == "ten_rocks_ridden", " with a rider", ""), why)
}

// fineWith writes an uncertainty, finer where the shop's step would make it nothing; fine that of a length.
func fineWith(x float64, kind quantity.Kind, units quantity.System) string {
	text := quantity.Shop(x, kind, units)
	if text == "0" {
		text = quantity.Fine(x, kind, units)
	}
	return text + " " + quantity.Unit(kind, units)
}
func fine(u units, x float64) string { return fineWith(x, quantity.Length, u.System) }

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
	"seat_falls_empty": "read the level both ways round, on the same mark",
	"balances_on_tail": "read where it just goes over and where it just comes back, with a lighter finger",
	"balances_on_nose": "read where it just goes over and where it just comes back, with a lighter finger",
	"nose_tip":         "measure the heights of the tips again, at the same rest",
	"tail_tip":         "measure the heights of the tips again, at the same rest",
	"seat":             "measure the seat again, front and rear, or the heights of the tips at rest",
	"nose_end":         "measure the nose again to the very end, and say how that is rounded",
	"tail_end":         "measure the tail again to the very end, and say how that is rounded",
	"low_point":        "mark the low point again: where the edge touches a flat board",
	"rider":            "time the empty piece instead: nobody's body is known as well",
}

// better says how to better what limits each value, each advice once.
func better(f check.Balanced) string {
	var said []string
	for _, value := range []readings.Value{f.Read.Above, f.Read.Ahead, f.Read.Inertia, f.Read.Mass} {
		advice := betters[value.Limits()]
		if math.IsNaN(value.Value) && f.Read.Untold != "ten_rocks" {
			advice = "time ten rocks of the empty piece, and read from what tilt it is let go"
		}
		if advice != "" && !slices.ContainsFunc(said, func(one string) bool { return strings.HasPrefix(one, advice) }) {
			said = append(said, advice)
		}
	}
	return when(len(said) > 0, "To know it better: %s.", strings.Join(said, "; "))
}

// doubtful says what one reading gives, of a kind, and what the others.
func doubtful(u units, d readings.Doubt, kind quantity.Kind) sheet.Line {
	advice := cmp.Or(when(d.Swapped != "", "Probably swapped: %s; the other way round all the readings agree.",
		plainKey(d.Swapped)), "Read again.")
	return sheet.Line{Label: "DOUBTFUL:", Bad: true, Text: fmt.Sprintf("%s gives %s where the other readings give %s. %s",
		plainKey(d.Reading), u.with(d.Read, kind), u.with(d.Expected, kind), advice)}
}

// untimed says whether the inertia of a measured piece is only estimated.
func untimed(r *check.Report) string {
	why, mend := "not timed", "Time ten rocks."
	switch m := r.Design.Measured; {
	case m.TenRocks > 0:
		why, mend = "for the rocks do not tell it", "See rockerwright measure."
	case m.RiddenTenRocks > 0:
		why, mend = "for rocks with a rider do not tell it", "Time ten rocks of the empty piece."
	}
	return when(r.UsualInertia, "Estimated, %s: the inertia of the piece (that of the drawn sizes). %s", why, mend)
}

// arcs returns the arcs of each rocker that was read.
func arcs(u units, c *piece.Traced) *sheet.Table {
	t := &sheet.Table{Head: []string{"Rocker, from the nose", "radius", "uncertain by", "from the low point, + ahead"}}
	both := &c.Fit
	if c.Left == nil || c.Right == nil {
		both = nil
	}
	for _, side := range []struct {
		name string
		fit  *rises.Fit
	}{{"as drawn", c.Drawn}, {"left", c.Left}, {"right", c.Right}, {"both", both}} {
		if side.fit == nil {
			continue
		}
		for i, arc := range side.fit.Arcs {
			label := side.name + when(len(side.fit.Arcs) > 1, ", arc %d", i+1)
			uncertain := pick(arc.Uncertain < unsigned(arc.Radius), u.length(arc.Uncertain), "much")
			t.Add(label, u.length(arc.Radius), uncertain, signed(u.bare(arc.From))+" to "+signed(u.length(arc.To)))
		}
	}
	return t
}

// signed puts a + before a number that has no sign.
func signed(text string) string { return pick(strings.HasPrefix(text, "-"), "", "+") + text }

// curve says whether the rises were read well, and whether the rockers are one curve.
func curve(w wording, c *piece.Traced) []sheet.Line {
	var lines []sheet.Line
	for _, f := range trial.Uneven(c) {
		lines = append(lines, warning(w, &trial.Answer{}, &f))
	}
	if c.Left == nil || c.Right == nil || !c.One {
		return lines
	}
	differ := ": they are the same."
	if c.Apart != 0 {
		differ = fmt.Sprintf(" (largest difference %s, at station %d).", fine(w.units, unsigned(c.Apart)), c.Station)
	}
	return append(lines, sheet.Line{Text: "The two rockers are one curve, as far as these readings tell" + differ})
}

// suspect says which rise was probably misread, or that no curve explains them.
func suspect(u units, side string, fit *rises.Fit) sheet.Line {
	where := fmt.Sprintf("%s, station %d from the nose: by all the others the rise there is %s.",
		side, fit.Suspect+1, u.length(fit.Without))
	switch {
	case fit.Suspect >= 0 && fit.AtEnd:
		where += " Either it is misread, or the edge curves differently there (a rounded tip?): " +
			"read it again, and one more station beyond it or half-way to it. It was left out."
	case fit.Suspect >= 0:
		where += " It was left out; read it again."
	default:
		where = fmt.Sprintf("%s: three arcs leave a spread of %s, more than reading error explains. "+
			"Is the edge worn or lumpy, or did the straightedge move? Read again.", side, fine(u, fit.Spread))
	}
	return sheet.Line{Label: "DOUBTFUL:", Text: where, Bad: true}
}

// fitted says which arcs stand for the rises or points that the floor edge is given by, how
// surely, and how far the readings lie off them.
func fitted(u units, d piece.Design, fit *rises.Fit) string {
	read := fmt.Sprintf("%d rises", len(d.Rocker.Rises))
	if n := len(d.Rocker.Points); n > 0 {
		read = fmt.Sprintf("%d points", n)
	}
	var arcs []string
	for _, arc := range fit.Arcs {
		surely := pick(arc.Uncertain < unsigned(arc.Radius), "uncertain by "+fine(u, arc.Uncertain), "hardly known")
		arcs = append(arcs, fmt.Sprintf("%s (%s)", u.length(arc.Radius), surely))
	}
	return fmt.Sprintf("The floor edge is the fewest arcs that go through %s as well as they were read; "+
		"their radius, from the nose: %s, 95 times in 100. The readings scatter about it by %s (root mean square).",
		read, strings.Join(arcs, ", "), fine(u, fit.Spread))
}
