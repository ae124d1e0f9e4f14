package words

import (
	"fmt"
	"math"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/rises"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// arcs returns the arcs of each rocker that was read.
func (v voice) arcs(c *piece.Curve) *sheet.Table {
	t := &sheet.Table{Head: []string{"Rocker, from the nose", "radius", "uncertain by", "from the low point, + ahead"}}
	for _, side := range []struct {
		name string
		fit  *rises.Fit
	}{{"as drawn", c.Drawn}, {"left", c.Left}, {"right", c.Right}, {"both", &c.Fit}} {
		if side.fit == nil || side.name == "both" && (c.Left == nil || c.Right == nil) {
			continue
		}
		for i, arc := range side.fit.Arcs {
			label := side.name
			if len(side.fit.Arcs) > 1 {
				label = fmt.Sprintf("%s, arc %d", side.name, i+1)
			}
			uncertain := "much"
			if arc.Uncertain < math.Abs(arc.Radius) {
				uncertain = v.length(arc.Uncertain)
			}
			t.Add(label, v.length(arc.Radius), uncertain, signed(v.bare(arc.From))+" to "+signed(v.length(arc.To)))
		}
	}
	return t
}

// signed puts a + before a number that has no sign.
func signed(text string) string {
	if strings.HasPrefix(text, "-") {
		return text
	}
	return "+" + text
}

// curve says whether the rises were read well, and whether the rockers are one curve.
func (v voice) curve(c *piece.Curve) []sheet.Line {
	var lines []sheet.Line
	for _, f := range trial.Uneven(c) {
		lines = append(lines, v.warning(&trial.Answer{}, &f))
	}
	if c.Left == nil || c.Right == nil || !c.One {
		return lines
	}
	differ := ": they are the same."
	if c.Apart != 0 {
		differ = fmt.Sprintf(" (largest difference %s, at station %d).", v.fine(math.Abs(c.Apart)), c.Station)
	}
	return append(lines, sheet.Line{Text: "The two rockers are one curve, as far as these readings tell" + differ})
}

// unlike says by how much two rockers are not one curve.
func (v voice) unlike(c *piece.Curve) sheet.Line {
	return sheet.Wrong(fmt.Sprintf("The two rockers are not one curve: at station %d from the nose the %s one is %s higher, "+
		"more than reading error explains. Unequal rockers walk; clamp the two together and fair them as one.",
		c.Station, pick(c.Apart < 0, "right", "left"), v.fine(math.Abs(c.Apart))))
}

// suspect says which rise was probably misread, or that no curve explains them.
func (v voice) suspect(side string, fit *rises.Fit) sheet.Line {
	where := fmt.Sprintf("%s, station %d from the nose: by all the others the rise there is %s.", side, fit.Suspect+1, v.length(fit.Without))
	switch {
	case fit.Suspect >= 0 && fit.AtEnd:
		where += " Either it is misread, or the edge curves differently there (a rounded tip?): " +
			"read it again, and one more station beyond it or half-way to it. It was left out."
	case fit.Suspect >= 0:
		where += " It was left out; read it again."
	default:
		where = fmt.Sprintf("%s: three arcs leave a spread of %s, more than reading error explains. "+
			"Is the edge worn or lumpy, or did the straightedge move? Read again.", side, v.fine(fit.Spread))
	}
	return sheet.Line{Label: "DOUBTFUL:", Text: where, Bad: true}
}

// fitted says which arcs stand for the rises or points that the floor edge is given by, how
// surely, and how far the readings lie off them.
func (v voice) fitted(d piece.Design, fit *rises.Fit) string {
	read := fmt.Sprintf("%d rises", len(d.Rocker.Rises))
	if n := len(d.Rocker.Points); n > 0 {
		read = fmt.Sprintf("%d points", n)
	}
	var arcs []string
	for _, arc := range fit.Arcs {
		surely := "hardly known"
		if arc.Uncertain < math.Abs(arc.Radius) {
			surely = "uncertain by " + v.fine(arc.Uncertain)
		}
		arcs = append(arcs, fmt.Sprintf("%s (%s)", v.length(arc.Radius), surely))
	}
	return fmt.Sprintf("The floor edge is the fewest arcs that go through %s as well as they were read; their radius, from the nose: %s, "+
		"95 times in 100. The readings scatter about it by %s (root mean square).", read, strings.Join(arcs, ", "), v.fine(fit.Spread))
}
