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
	w := wordingOf(r.Design)
	k := Kept{
		Title: title(&r.Balanced),
		Tab:   "Report: " + name(r.Design),
		Made: fmt.Sprintf("%s · %s · rockerwright %s",
			sheet.Cut(sheet.Plain(m.Source), 60), m.Date.Format("2 January 2006"), m.Version),
		First: []sheet.Block{{Lines: append([]sheet.Line{{Label: "CHECKED:", Text: checked(w, r)}},
			answer(w, &a, m.Changes, everyRemark)...)}},
		Side:  "To scale. The quartered disc is the balance point of all that is drawn in its colour.",
		Under: under(w, &a, m.Command, everyRemark),
		Owner: owner(w, &a, rocking),
		File: Section{ID: "file", Title: "The design file", Blocks: []sheet.Block{{Lines: []sheet.Line{{
			Text: "From these lines the " + w.piece + " can be checked, drawn and built again. " +
				"Copy them into a plain text file and type:",
			Type: "rockerwright check " + fileName(m.Source)}}}}},
		Sections: sections(w, a, rocking, more),
	}
	if rocking != nil { // what matters most: of a cradle its tilts, of a horse its riders on a slope, of a settee one at the end
		k.Side = "To scale. The quartered disc is the balance point; blue are its path and the stretch of floor on which " +
			brief(rocking.Load.Name) + " rolls."
		k.Under = slices.Concat(k.Under, titled(string(w.marked), cradle(w, *rocking)),
			titled("On a slope", slopes(w.units, *rocking)), titled("One at the end", atTheEnd(w, *rocking)))
	}
	k.Under = append(k.Under, sheet.Block{Title: "Cautions", Lines: cautions(w.phrases, r)})
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
func atTheEnd(w wording, r trial.Rocking) []sheet.Line {
	var lines []sheet.Line
	for i := range r.Report.Loads {
		l := &r.Report.Loads[i]
		name := upperFirst(brief(l.Name))
		switch {
		case w.alone == "" || l.Sitter != piece.OneAtTheEnd.String():
		case !l.Upright():
			lines = append(lines, sheet.Wrong(name+": "+whyNot(w.phrases, l)+"."))
		default:
			text := fmt.Sprintf("%s: %s, keeps %s before going %s", name, stands(w, l), w.degrees(l.Back.Angle), w.Back)
			for _, s := range r.Sideways {
				text += when(s.Load == l.Name, "; sideways over one rocker %s, its weight must lift %s",
					w.degrees(s.Angle), w.length(s.Lift))
			}
			lines = append(lines, sheet.Line{Text: text + "."})
		}
	}
	return lines
}

// sections returns what follows the first page.
func sections(w wording, a trial.Answer, rocking *trial.Rocking, more []sheet.Block) []Section {
	r, survives, fit := a.Report, survives(w, a), fits(w, &a)
	if rocking != nil {
		survives = slices.Concat([]sheet.Block{{Lines: rocked(w, *rocking)}}, hardest(w, *rocking), besides(w, *rocking))
	}
	if len(fit) == 0 {
		fit = []sheet.Block{{Lines: sheet.Says("Nobody is given by sizes in this design, so there is nobody to fit it to.")}}
	}
	list := []Section{
		{ID: "loads", Title: "All loads", Blocks: append(everyLoad(w, r),
			sheet.Block{Title: "Every limit", Table: limitTable(w, &r.Balanced, ranked(r.Limits))})},
		{ID: "arms", Title: "What brings it back", Picture: "righting arm", Blocks: []sheet.Block{pulls(w, r)},
			Caption: "The righting arm is how far the weight stands to one side of where the rocker touches the floor: the longer, " +
				"the harder it is brought back. A dot is a rest; past a ring it goes over." + string(w.dotted)},
		{ID: "times", Title: "Time of a rock", Picture: "time of a rock", Blocks: everySwing(w, r),
			Caption: "How long one rock takes, there and back, by how far it is let go. " +
				"A line ends where the piece no longer comes back."},
		{ID: "survives", Title: "What it survives", Blocks: survives},
		{ID: "fit", Title: "Fit and people", Blocks: fit},
		{ID: "more", Title: "What if, and sizes", Blocks: more},
		{ID: "basis", Title: "Assumptions and sources", Blocks: []sheet.Block{
			{Title: "What this rests on", Lines: assumptions(w, r)},
			{Title: "Sources", Lines: sheet.Says(when(len(r.Somebody) > 0, "People: segments by de Leva (1996), "+
				"children's by Jensen (1986, 1989); "+
				"sizes by the ANSUR II survey of soldiers (2012) and the CDC growth charts (2000)."),
				string(w.infants), "Woods: USDA Wood Handbook, FPL-GTR-190 (2010).",
				"The motion: derived from rigid-body mechanics; rockerwright proof computes every case whose answer "+
					"is known from elsewhere, and names its source.",
				"What is marked 'our judgement' has no other source; what is marked 'from memory' or 'second-hand' was not read "+
					"where it was first published.")}}},
	}
	return slices.DeleteFunc(list, func(s Section) bool { return s.ID == "more" && len(more) == 0 })
}

// checked says who was checked, and how.
func checked(w wording, r check.Report) string {
	said := []string{"the " + w.piece + " empty"}
	for _, c := range r.Checked() {
		said = append(said, fmt.Sprintf("%s (%s)", sheet.Cut(sheet.Plain(c.Name), 30), mass(w.units, c.Mass))+
			when(c.Postures > 1, " in %d postures", c.Postures))
	}
	return list(said) + "."
}

// Unanswered says of a further question that it has no answer, and why.
func Unanswered(question string, why error) sheet.Block {
	return sheet.Block{Title: question, Lines: sheet.Says("No answer: " + sheet.Plain(why.Error()) + ".")}
}

// Letter returns a report as a letter to another maker: what the piece is and does, in the
// words of the report; what limits it and what its maker would try. The design file goes below it.
func Letter(a trial.Answer, rocking *trial.Rocking, m Making) sheet.Sheet {
	r := a.Report
	w := wordingOf(r.Design)
	try := ""
	if t := a.Try; t != nil {
		try = fmt.Sprintf("I would try %s %s next%s.", t.Label, w.with(t.Value, t.Kind), gained(w, t))
	}
	s := sheet.Sheet{Title: title(&r.Balanced), Source: m.Date.Format("2 January 2006"), Blocks: []sheet.Block{
		{Lines: sheet.Says("To another maker,")},
		{Lines: sheet.Says(fmt.Sprintf("here is a %s on rockers that I have worked out with rockerwright %s%s. "+
			"All of it is calculated from measures; nothing was tested.", w.piece, m.Version,
			when(len(m.Changes) > 0, " (with %s)", sheet.Plain(strings.Join(m.Changes, "; ")))), "I checked "+checked(w, r))},
		{Lines: append(sheet.Says("How it came out:"), verdict(w, &a, everyRemark)...)},
		{Lines: []sheet.Line{tape(w, &a, everyRemark)}},
		readingsBlock(w, r, everyRemark),
		{Lines: sheet.Says(cause(w.phrases, a.Cause), try, w.disclaimer)},
	}}
	if rocking != nil {
		s.Blocks = append(s.Blocks, sheet.Block{Lines: slices.Concat(slopes(w.units, *rocking), cradle(w, *rocking),
			sheet.Says("From where its low point touches it reaches "+reaches(w, rocking.Room.Reach)+" in a good rock."))})
	}
	s.Blocks = append(s.Blocks, sheet.Block{Lines: cautions(w.phrases, r)}, sheet.Block{Lines: []sheet.Line{
		{Text: "The design file is below. Save it as a plain text file, and you can check it yourself:",
			Type: "rockerwright check " + fileName(m.Source)},
		{Text: "With good wishes for the bench."}}})
	return s
}
