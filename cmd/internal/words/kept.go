package words

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// A Kept is the text of a report, in the order in which it is read. Its pictures stand
// between: the side view after First, each section's own before its blocks.
type Kept struct {
	Title    string
	Tab      string        // the title in short
	Made     string        // from what, when, and by which version
	First    []sheet.Block // what was checked, and the verdict
	Side     string        // what to look at in the side view
	Under    []sheet.Block // the readings, what limits it, what to try next, cautions
	Sections []Section
	File     Section // over the design file
	Owner    Section // the last page
}

// A Section is a part of a report under one heading.
type Section struct {
	ID, Title string
	Picture   string // the name of the picture that stands before the blocks; "" for none
	Caption   string // of that picture
	Blocks    []sheet.Block
}

// A Making is what a report says of itself.
type Making struct {
	Source  string   // the design file
	Changes []string // to it, for this report
	Command Command
	Date    time.Time
	Version string
}

// Keep returns the text of a report. rocking is nil where nothing rests on which it could
// rock; more are the blocks of other questions about the same design.
func Keep(a trial.Answer, rocking *trial.Rocking, m Making, more []sheet.Block) Kept {
	r := a.Report
	v := voiceOf(r.Design)
	k := Kept{
		Title: v.title(r.Design),
		Tab:   "Report: " + v.name(r.Design),
		Made:  fmt.Sprintf("%s · %s · rockerwright %s", sheet.Cut(sheet.Plain(m.Source), 60), m.Date.Format("2 January 2006"), m.Version),
		First: []sheet.Block{{Lines: append([]sheet.Line{{Label: "CHECKED:", Text: v.checked(r)}}, v.answer(&a, m.Changes, everyRemark)...)}},
		Side:  "To scale. The quartered disc is the balance point of all that is drawn in its colour.",
		Under: v.under(&a, m.Command, everyRemark),
		Owner: v.owner(&a, rocking),
		File: Section{ID: "file", Title: "The design file", Blocks: []sheet.Block{{Lines: []sheet.Line{{
			Text: "From these lines the " + v.piece + " can be checked, drawn and built again. Copy them into a plain text file and type:",
			Type: "rockerwright check " + fileName(m.Source)}}}}},
		Sections: v.sections(a, rocking, more),
	}
	if rocking != nil { // what matters most: of a cradle its tilts, of a horse its riders on a slope, of a settee one at the end
		k.Side = "To scale. The quartered disc is the balance point; blue are its path and the stretch of floor on which " +
			brief(rocking.Load.Name) + " rolls."
		k.Under = slices.Concat(k.Under, v.cradle(*rocking), v.slopes(*rocking), v.atTheEnd(*rocking))
	}
	k.Under = append(k.Under, sheet.Block{Title: "Cautions", Lines: v.cautions(r)})
	return k
}

// fileName returns a name under which a design can be saved.
func fileName(source string) string {
	if source = sheet.Plain(source); strings.HasSuffix(source, ".toml") && len(source) < 60 && !strings.ContainsAny(source, ` /\"'$`) {
		return source
	}
	return "design.toml"
}

// atTheEnd says how a settee stands with one alone at its end.
func (v voice) atTheEnd(r trial.Rocking) []sheet.Block {
	if v.alone == "" {
		return nil
	}
	var lines []sheet.Line
	for i := range r.Report.Loads {
		l := &r.Report.Loads[i]
		if l.Sitter != piece.OneAtTheEnd.String() {
			continue
		}
		name := upperFirst(brief(l.Name))
		if !l.Upright() {
			lines = append(lines, sheet.Wrong(name+": "+v.whyNot(l)+"."))
			continue
		}
		text := fmt.Sprintf("%s: %s, keeps %s before going %s", name, v.stands(l), v.degrees(l.Balance.Back.Angle), v.Back)
		for _, s := range r.Sideways {
			if s.Load == l.Name {
				text += fmt.Sprintf("; sideways over one rocker %s, its weight must lift %s", v.degrees(s.Angle), v.length(s.Lift))
			}
		}
		lines = append(lines, sheet.Line{Text: text + "."})
	}
	if len(lines) == 0 {
		return nil
	}
	return []sheet.Block{{Title: "One at the end", Lines: lines}}
}

// sections returns what follows the first page.
func (v voice) sections(a trial.Answer, rocking *trial.Rocking, more []sheet.Block) []Section {
	r, survives, fit := a.Report, v.survives(a), v.fits(&a)
	if rocking != nil {
		survives = slices.Concat([]sheet.Block{{Lines: v.rocked(*rocking)}}, v.hardest(*rocking), v.besides(*rocking))
	}
	if len(fit) == 0 {
		fit = []sheet.Block{{Lines: sheet.Says("Nobody is given by sizes in this design, so there is nobody to fit it to.")}}
	}
	list := []Section{
		{ID: "loads", Title: "All loads", Blocks: append(v.everyLoad(r), sheet.Block{Title: "Every limit", Table: v.limitTable(ranked(r.Limits))})},
		{ID: "arms", Title: "What brings it back", Picture: "righting arm", Blocks: []sheet.Block{v.pulls(r)},
			Caption: "The righting arm is how far the weight stands to one side of where the rocker touches the floor: the longer, " +
				"the harder it is brought back. A dot is a rest; past a ring it goes over." + string(v.dotted)},
		{ID: "times", Title: "Time of a rock", Picture: "time of a rock", Blocks: v.everySwing(r),
			Caption: "How long one rock takes, there and back, by how far it is let go. A line ends where the piece no longer comes back."},
		{ID: "survives", Title: "What it survives", Blocks: survives},
		{ID: "fit", Title: "Fit and people", Blocks: fit},
		{ID: "more", Title: "What if, and sizes", Blocks: more},
		{ID: "basis", Title: "Assumptions and sources", Blocks: []sheet.Block{
			{Title: "What this rests on", Lines: v.assumptions(r)}, {Title: "Sources", Lines: v.sources(r)}}},
	}
	return slices.DeleteFunc(list, func(s Section) bool { return s.ID == "more" && len(more) == 0 })
}

// checked says who was checked, and how.
func (v voice) checked(r check.Report) string {
	said := []string{"the " + v.piece + " empty"}
	for _, c := range r.Checked() {
		one := fmt.Sprintf("%s (%s)", sheet.Cut(sheet.Plain(c.Name), 30), v.mass(c.Mass))
		if c.Postures > 1 {
			one += fmt.Sprintf(" in %d postures", c.Postures)
		}
		said = append(said, one)
	}
	return list(said) + "."
}

// sources names where numbers come from that are not the maker's.
func (v voice) sources(r check.Report) []sheet.Line {
	people := ""
	if len(r.Somebody) > 0 {
		people = "People: segments by de Leva (1996), children's by Jensen (1986, 1989); " +
			"sizes by the ANSUR II survey of soldiers (2012) and the CDC growth charts (2000)."
	}
	return sheet.Says(people, string(v.infants), "Woods: USDA Wood Handbook, FPL-GTR-190 (2010).",
		"The motion: derived from rigid-body mechanics; rockerwright proof computes every case whose answer is known from elsewhere, "+
			"and names its source.",
		"What is marked 'our judgement' has no other source; what is marked 'from memory' or 'second-hand' was not read "+
			"where it was first published.")
}

// Unanswered says of a further question that it has no answer, and why.
func Unanswered(question string, why error) sheet.Block {
	return sheet.Block{Title: question, Lines: sheet.Says("No answer: " + sheet.Plain(why.Error()) + ".")}
}
