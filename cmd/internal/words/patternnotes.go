package words

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// RockerNotes returns what stands on the pattern of a rocker beside the drawing.
func RockerNotes(l layout.Layout) [][]string {
	v := voiceOf(l.Design)
	trammel := []string{"TRAMMEL, from the square corner:"}
	for i, s := range l.Sweeps {
		name := ""
		if len(l.Sweeps) > 1 {
			name = fmt.Sprintf("arc %d: ", i+1)
		}
		if s.Radius == 0 {
			trammel = append(trammel, name+"straight")
			continue
		}
		trammel = append(trammel, fmt.Sprintf("%spivot %s forward, %s up", name, v.with(s.Pivot.X, quantity.Length), v.with(s.Pivot.Y, quantity.Length)))
		pin := fmt.Sprintf("%spin to floor edge %s", name, v.with(s.Floor, quantity.Length))
		if s.Top > 0 {
			pin += ", to top edge " + v.with(s.Top, quantity.Length)
		}
		trammel = append(trammel, pin)
	}
	trammel = append(trammel, "low point "+v.with(-l.Corner.X, quantity.Length)+" forward")
	notes := [][]string{trammel}
	if !v.sideways() {
		notes = append(notes, []string{"This face out: right rocker.", "Turned over: left rocker."})
	}
	notes = append(notes, v.takenNotes(l)...)
	if l.Form != nil {
		notes = append(notes, v.formNote(l))
	}
	return notes
}

// formNote tells the two radii apart, on rocker and form alike.
func (v voice) formNote(l layout.Layout) []string {
	lines := []string{"FLOOR EDGE RADIUS is not FORM RADIUS:"}
	for i, f := range l.Form.Radii {
		name := ""
		if len(l.Form.Radii) > 1 {
			name = fmt.Sprintf("arc %d: ", i+1)
		}
		if f.FloorEdge > 0 {
			lines = append(lines, fmt.Sprintf("%sfloor edge %s, form inside the curve %s, outside %s", name, v.with(f.FloorEdge, quantity.Length), v.with(f.ConvexForm, quantity.Length), v.with(f.ConcaveForm, quantity.Length)))
		}
	}
	if l.Strips != nil {
		lines = append(lines, fmt.Sprintf("%s of %s, %s long", counted(l.Strips.Stack.Strips, "strip"), v.thin(l.Strips.Strip), v.with(l.Strips.Stack.Length, quantity.Length)))
	}
	return lines
}

// FormNotes returns what stands on the pattern of the form.
func FormNotes(l layout.Layout) [][]string {
	v := voiceOf(l.Design)
	return append([][]string{append(v.formNote(l), "This is the form, not the rocker.")}, v.takenNotes(l)...)
}

// PairNotes returns what stands on the pattern of a left and a right one.
func PairNotes(l layout.Layout, p layout.Paired) [][]string {
	v := voiceOf(l.Design)
	lines := []string{fmt.Sprintf("one is %s thick", v.with(p.Size.Thick, quantity.Length))}
	for _, leg := range l.Legs {
		if leg.Name != p.Name {
			continue
		}
		if side := map[bool]string{true: "nose", false: "tail"}[leg.Standing.Cut > 0]; v.shop(leg.Standing.Cut, quantity.Angle) != "0" {
			lines = append(lines, fmt.Sprintf("the slanting end is the foot; its shorter side faces the %s", side))
		}
		if across := math.Abs(leg.Standing.Across); v.shop(across, quantity.Angle) != "0" {
			lines = append(lines, fmt.Sprintf("across, the foot is out of square by %s too", v.degrees(across)))
		}
	}
	return append([][]string{lines}, v.takenNotes(l)...)
}

// takenNotes says on a pattern what was taken where nothing was drawn.
func (v voice) takenNotes(l layout.Layout) [][]string {
	if taken := v.taken(l); taken != "" {
		return [][]string{broken(taken, 56)}
	}
	return nil
}

// PanelNotes returns what stands on the section of a panel.
func PanelNotes(l layout.Layout, p layout.Panel) [][]string {
	v := voiceOf(l.Design)
	s := p.Stave
	return [][]string{{
		fmt.Sprintf("%d staves of %s, each edge bevelled %s", p.Curve.Staves, v.with(p.Stock, quantity.Length), v.bevel(s.Bevel)),
		fmt.Sprintf("%s wide on the hollow face, %s on the round one", v.with(s.Hollow, quantity.Length), v.with(s.Round, quantity.Length)),
		fmt.Sprintf("hollow radius %s; %s left after shaping", v.with(p.Curve.Radius, quantity.Length), v.thin(s.Thick)),
	}}
}

// bevel writes a bevel to a tenth of a degree: it is taken twice for every stave.
func (v voice) bevel(x float64) string {
	return strconv.FormatFloat(x*180/math.Pi, 'f', 1, 64) + " degrees"
}

var wholeAndFraction = regexp.MustCompile(`(\d) (\d+/\d+)`)

// broken breaks a text into lines of so many letters.
func broken(text string, columns int) []string {
	var lines []string
	const held = "\x01" // between a whole number and its fraction, which no line may part
	for _, line := range wrap(wholeAndFraction.ReplaceAllString(text, "$1"+held+"$2"), columns) {
		lines = append(lines, strings.ReplaceAll(strings.TrimSpace(line), held, " "))
	}
	return lines
}
