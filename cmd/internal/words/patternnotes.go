package words

import (
	"cmp"
	"fmt"
	"regexp"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/layout"
)

// RockerNotes returns what stands on the pattern of a rocker beside the drawing.
func RockerNotes(l layout.Layout) [][]string {
	w := wordingOf(l.Design)
	trammel := []string{"TRAMMEL, from the square corner:"}
	for i, s := range l.Sweeps {
		name := ofArc(i, len(l.Sweeps))
		if s.Radius == 0 {
			trammel = append(trammel, name+"straight")
			continue
		}
		trammel = append(trammel, fmt.Sprintf("%spivot %s %s, %s up", name, w.length(s.Pivot.X), w.Forward,
			w.length(s.Pivot.Y)),
			fmt.Sprintf("%spin to floor edge %s", name, w.length(s.Floor))+when(s.Top > 0, ", to top edge %s", w.length(s.Top)))
	}
	trammel = append(trammel, "low point "+w.length(l.LowPoint())+" "+w.Forward)
	notes := notes(w.units, l, trammel, w.faces)
	if l.Form != nil {
		notes = append(notes, formNote(w.units, l))
	}
	return notes
}

// ofArc names one of several arcs; a single one has no name.
func ofArc(i, n int) string { return when(n > 1, "arc %d: ", i+1) }

// formNote tells the two radii apart, on rocker and form alike.
func formNote(u units, l layout.Layout) []string {
	lines := []string{"FLOOR EDGE RADIUS is not FORM RADIUS:"}
	for i, f := range l.Form.Radii {
		if f.FloorEdge > 0 {
			lines = append(lines, fmt.Sprintf("%sfloor edge %s, form inside the curve %s, outside %s",
				ofArc(i, len(l.Form.Radii)), u.length(f.FloorEdge), u.length(f.ConvexForm), u.length(f.ConcaveForm)))
		}
	}
	if s := l.Strips; s != nil {
		lines = append(lines, fmt.Sprintf("%s of %s, %s long", counted(s.Stack.Strips, "strip"), thin(u, s.Strip),
			u.length(s.Stack.Length)))
	}
	return lines
}

// FormNotes returns what stands on the pattern of the form.
func FormNotes(l layout.Layout) [][]string {
	w := wordingOf(l.Design)
	return notes(w.units, l, append(formNote(w.units, l), "This is the form, not the rocker."))
}

// PairNotes returns what stands on the pattern of a left and a right one.
func PairNotes(l layout.Layout, p layout.Paired) [][]string {
	w := wordingOf(l.Design)
	lines := []string{fmt.Sprintf("one is %s thick", w.length(p.Size.Thick))}
	for _, leg := range l.Legs {
		if leg.Name == p.Name {
			lines[0] += ", " + w.length(leg.Finished.Length) + " long, foot to top of the seat"
			lines = append(lines, footNote(w, leg)...)
		}
	}
	return notes(w.units, l, lines)
}

// footNote says which sides of a leg's foot are the shorter, or what it stands on.
func footNote(w wording, leg layout.Leg) []string {
	if b := leg.Block; b != nil {
		return []string{"the foot is sawn square, and stands on its block, which is high",
			fmt.Sprintf("at the %s %s inner corner, %s outer; at the %s %s inner, %s outer",
				w.nose, w.bare(b.NoseInner), w.bare(b.NoseOuter), w.tail, w.bare(b.TailInner), w.bare(b.TailOuter))}
	}
	var lines []string
	if w.angle(leg.Standing.Cut) != "0" {
		lines = append(lines, "the slanting end is the foot; its shorter side faces the "+pick(leg.Cut > 0, w.nose, w.tail))
	}
	if across := unsigned(leg.Standing.Across); w.angle(across) != "0" {
		lines = append(lines, fmt.Sprintf("across, the foot is out of square by %s%s:",
			w.degrees(across), pick(len(lines) > 0, " too", "")),
			fmt.Sprintf("the %s side is shorter, by %s", pick(leg.Across > 0, "inner", "outer"), w.length(unsigned(leg.Across))))
	}
	return lines
}

// EndWords are what is written at the ends of a rocker or its form, and which way is up.
type EndWords struct{ Nose, Tail, Up string }

// EndsOf returns the words for the ends of a rocker.
func EndsOf(l layout.Layout) EndWords {
	return EndWords{wordingOf(l.Design).nose, wordingOf(l.Design).tail, "up"}
}

// PairWords are what is written in the outlines of a left and a right one: at the end that is ahead in the
// left one and behind, at the upper edge and the lower, and what each is.
type PairWords struct{ Ahead, Behind, Upper, Lower, Left, Right string }

// RockerPairWords returns the words for a pair of rockers, whose inner faces are drawn. Of a cradle that
// rocks sideways, seen from its foot, they stand at its two ends.
func RockerPairWords(l layout.Layout) PairWords { return paired(wordingOf(l.Design).phrases, "inner") }

// PairWordsOf returns the words for a pair of legs or arms.
func PairWordsOf(l layout.Layout, p layout.Paired) PairWords {
	w := paired(wordingOf(l.Design).phrases, p.Face)
	switch p.Face {
	case "top":
		w.Ahead, w.Behind, w.Upper, w.Lower = "front", "back", "", "inside"
	case "inner":
		w.Ahead, w.Behind, w.Upper, w.Lower = "seat, up", "foot", w.Behind, w.Ahead
	default:
		w.Ahead, w.Behind, w.Upper, w.Lower = "seat, up", "foot", w.Ahead, w.Behind
	}
	return w
}

// paired returns the words for a pair that lies as it stands, of which this face is drawn.
func paired(say *phrases, face string) PairWords {
	face = ", " + face + " face"
	return PairWords{say.nose, say.tail, "up", "", say.leftPattern + face, say.rightPattern + face}
}

// PanelNotes returns what stands on the section of a panel. A bevel is taken twice for every stave.
func PanelNotes(l layout.Layout, p layout.Panel) [][]string {
	w, s := wordingOf(l.Design), p.Stave
	return [][]string{{
		fmt.Sprintf("%d staves of %s, each edge bevelled %s degrees", p.Curve.Staves, w.length(p.Stock),
			inDegrees(s.Bevel, 1)),
		fmt.Sprintf("%s wide on the hollow face, %s on the round one", w.length(s.Hollow), w.length(s.Round)),
		fmt.Sprintf("hollow radius %s; %s left after shaping", w.length(p.Curve.Radius), thin(w.units, s.Thick)),
	}}
}

var wholeAndFraction = regexp.MustCompile(`(\d) (\d+/\d+)`)

// notes returns what is noted on a pattern, and in lines of 56 letters what was taken where nothing was drawn.
func notes(u units, l layout.Layout, notes ...[]string) [][]string {
	taken := taken(u, l)
	if taken == "" {
		return notes
	}
	const held = "\x01" // between a whole number and its fraction, which no line may part
	lines := sheet.Wrap(wholeAndFraction.ReplaceAllString(taken, "$1"+held+"$2"), 56)
	for i, line := range lines {
		lines[i] = strings.ReplaceAll(strings.TrimSpace(line), held, " ")
	}
	return append(notes, lines)
}

// A Laid is one file of a layout.
type Laid struct {
	Name  string
	Pages int // zero of what is not printed
}

// LaidOut says what was written, and what to print first.
func LaidOut(l layout.Layout, folder string, files []Laid) sheet.Sheet {
	w := wordingOf(l.Design)
	t := &sheet.Table{Head: []string{folder + "/", "pages"}}
	first := ""
	for _, f := range files {
		t.Add(f.Name, when(f.Pages > 0, "%d", f.Pages))
		first = cmp.Or(first, pick(f.Pages > 0, f.Name, ""))
	}
	lines := sheet.Says("Print first: "+first+". Then of each pattern its first page alone, at 100 %, not \"fit to page\": "+
		"measure the two squares on it before you print the rest, and tape from tip to tip when it is glued.",
		taken(w.units, l))
	if !l.Report.Holds() {
		lines = append(lines, sheet.Line{Label: "NO:", Bad: true,
			Text: "a limit does not hold for this design: look at it with rockerwright check before you cut wood."})
	}
	return sheet.Sheet{Title: name(l.Design) + ": layout", Blocks: []sheet.Block{{Table: t}, {Lines: lines}}}
}

// A LegLabel is what is written at a leg in its two views.
type LegLabel struct{ Length, Rake, Foot, Front, Track string }

// LegLabels returns what is written at each leg.
func LegLabels(l layout.Layout) []LegLabel {
	w := wordingOf(l.Design)
	labels := make([]LegLabel, len(l.Legs))
	for i, leg := range l.Legs {
		labels[i] = LegLabel{
			Length: brief(leg.Name) + ", " + w.length(leg.Finished.Length) + " long",
			Foot:   w.degrees(leg.Standing.Angle),
			Rake:   "rake " + w.degrees(leg.Line.Rake),
			Front:  brief(leg.Name) + ", splay " + w.degrees(leg.Line.Splay),
			Track:  w.length(leg.Track()),
		}
	}
	return labels
}
