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
		trammel = append(trammel, fmt.Sprintf("%spivot %s %s, %s up", name, v.with(s.Pivot.X, quantity.Length), v.Forward, v.with(s.Pivot.Y, quantity.Length)))
		pin := fmt.Sprintf("%spin to floor edge %s", name, v.with(s.Floor, quantity.Length))
		if s.Top > 0 {
			pin += ", to top edge " + v.with(s.Top, quantity.Length)
		}
		trammel = append(trammel, pin)
	}
	trammel = append(trammel, "low point "+v.with(-l.Corner.X, quantity.Length)+" "+v.Forward)
	notes := append([][]string{trammel, v.faces}, v.takenNotes(l)...)
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
		if leg.Name == p.Name {
			lines[0] += ", " + v.with(leg.Finished.Length, quantity.Length) + " long, foot to top of the seat"
			lines = append(lines, v.footNote(leg)...)
		}
	}
	return append([][]string{lines}, v.takenNotes(l)...)
}

// footNote says which sides of a leg's foot are the shorter, or what it stands on.
func (v voice) footNote(leg layout.Leg) []string {
	length := func(x float64) string { return v.shop(x, quantity.Length) }
	if b := leg.Block; b != nil {
		return []string{"the foot is sawn square, and stands on its block, which is high",
			fmt.Sprintf("at the %s %s inner corner, %s outer; at the %s %s inner, %s outer",
				v.nose, length(b.NoseInner), length(b.NoseOuter), v.tail, length(b.TailInner), length(b.TailOuter))}
	}
	var lines []string
	too := ""
	if v.shop(leg.Standing.Cut, quantity.Angle) != "0" {
		too = " too"
		lines = append(lines, fmt.Sprintf("the slanting end is the foot; its shorter side faces the %s", pick(leg.Cut > 0, v.nose, v.tail)))
	}
	if across := math.Abs(leg.Standing.Across); v.shop(across, quantity.Angle) != "0" {
		side := pick(leg.Across > 0, "inner", "outer")
		lines = append(lines, fmt.Sprintf("across, the foot is out of square by %s%s:", v.degrees(across), too),
			fmt.Sprintf("the %s side is shorter, by %s", side, v.with(math.Abs(leg.Across), quantity.Length)))
	}
	return lines
}

func pick(first bool, one, other string) string {
	if first {
		return one
	}
	return other
}

// EndWords are what is written at the ends of a rocker or its form, and which way is up.
type EndWords struct{ Nose, Tail, Up string }

// EndsOf returns the words for the ends of a rocker.
func EndsOf(l layout.Layout) EndWords {
	return EndWords{voiceOf(l.Design).nose, voiceOf(l.Design).tail, "up"}
}

// PairWords are what is written in the outlines of a left and a right one: at the end that is ahead in the
// left one and behind, at the upper edge and the lower, and what each is.
type PairWords struct{ Ahead, Behind, Upper, Lower, Left, Right string }

// RockerPairWords returns the words for a pair of rockers, whose inner faces are drawn. Of a cradle that
// rocks sideways, seen from its foot, they stand at its two ends.
func RockerPairWords(l layout.Layout) PairWords { return voiceOf(l.Design).paired("inner") }

// PairWordsOf returns the words for a pair of legs or arms.
func PairWordsOf(l layout.Layout, p layout.Paired) PairWords {
	w := voiceOf(l.Design).paired(p.Face)
	switch {
	case p.Face == "top":
		w.Ahead, w.Behind, w.Upper, w.Lower = "front", "back", "", "inside"
	default:
		w.Ahead, w.Behind, w.Upper, w.Lower = "seat, up", "foot", w.Ahead, w.Behind
		if p.Face == "inner" {
			w.Upper, w.Lower = w.Lower, w.Upper
		}
	}
	return w
}

// paired returns the words for a pair that lies as it stands, of which this face is drawn.
func (v voice) paired(face string) PairWords {
	return PairWords{v.nose, v.tail, "up", "", v.leftPattern + ", " + face + " face", v.rightPattern + ", " + face + " face"}
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

// A Laid is one file of a layout.
type Laid struct {
	Name  string
	Pages int // zero of what is not printed
}

// LaidOut says what was written, and what to print first.
func LaidOut(l layout.Layout, folder string, files []Laid) Sheet {
	v := voiceOf(l.Design)
	t := &Table{Head: []string{folder + "/", "pages"}}
	first := ""
	for _, f := range files {
		pages := ""
		if f.Pages > 0 {
			pages = strconv.Itoa(f.Pages)
			if first == "" {
				first = f.Name
			}
		}
		t.Rows = append(t.Rows, Row{Cells: []string{f.Name, pages}})
	}
	lines := []Line{
		{Text: fmt.Sprintf("Print first: %s. Then of each pattern its first page alone, at 100 %%, not \"fit to page\": measure the two squares on it before you print the rest, and tape from tip to tip when it is glued.", first)},
	}
	if taken := v.taken(l); taken != "" {
		lines = append(lines, Line{Text: taken})
	}
	if !l.Report.Holds() {
		lines = append(lines, Line{Label: "NO:", Text: "a limit does not hold for this design: look at it with rockerwright check before you cut wood.", Bad: true})
	}
	return Sheet{Title: v.benchTitle(l, "layout"), Blocks: []Block{{Table: t}, {Lines: lines}}}
}

// A LegLabel is what is written at a leg in its two views.
type LegLabel struct{ Length, Rake, Foot, Front, Track string }

// LegLabels returns what is written at each leg.
func LegLabels(l layout.Layout) []LegLabel {
	v := voiceOf(l.Design)
	var list []LegLabel
	for _, leg := range l.Legs {
		list = append(list, LegLabel{
			Length: plain(short(leg.Name)) + ", " + v.with(leg.Finished.Length, quantity.Length) + " long",
			Foot:   v.with(leg.Standing.Angle, quantity.Angle),
			Rake:   "rake " + v.with(leg.Line.Rake, quantity.Angle),
			Front:  plain(short(leg.Name)) + ", splay " + v.with(leg.Line.Splay, quantity.Angle),
			Track:  v.with(2*leg.Standing.Foot.Z, quantity.Length),
		})
	}
	return list
}
