package words

import (
	"fmt"
	"strings"

	"rockerwright/sim/trial"
)

// Letter returns a report as a letter to another maker: what the piece is and does, in the
// words of the report. The design file goes below it.
func Letter(a trial.Answer, rocking *trial.Rocking, m Making) Sheet {
	r := a.Report
	v := voiceOf(r.Design)
	s := Sheet{Title: v.title(r.Design), Source: m.Date.Format("2 January 2006")}
	s.Blocks = []Block{
		{Lines: []Line{{Text: "To another maker,"}}},
		{Lines: []Line{
			{Text: fmt.Sprintf("here is a %s on rockers that I have worked out with rockerwright %s%s. All of it is calculated from measures; nothing was tested.", v.piece, m.Version, v.changedIn(m.Changes))},
			{Text: "I checked " + v.checked(r)}}},
		{Lines: append([]Line{{Text: "How it came out:"}}, v.verdict(&a)...)},
		{Lines: []Line{v.tape(r)}},
		v.readings(r, everyRemark),
		{Lines: v.lessons(&a)},
	}
	if rocking != nil {
		s.Blocks = append(s.Blocks, Block{Lines: v.lookedAt(*rocking)})
	}
	s.Blocks = append(s.Blocks, Block{Lines: v.cautions(r)}, Block{Lines: []Line{
		{Text: "The design file is below. Save it as a plain text file, and you can check it yourself:", Type: "rockerwright check " + fileName(m.Source)},
		{Text: "With good wishes for the bench."}}})
	return s
}

// changedIn says in half a sentence what was changed in the file.
func (v voice) changedIn(changes []string) string {
	if len(changes) == 0 {
		return ""
	}
	return " (with " + plain(strings.Join(changes, "; ")) + ")"
}

// lessons says what limits a piece and what its maker would try.
func (v voice) lessons(a *trial.Answer) []Line {
	r := &a.Report
	var lines []Line
	if text := v.cause(r.Cause); text != "" {
		lines = append(lines, Line{Text: "What limits it: " + text + "."})
	}
	if t := r.Try; t != nil {
		lines = append(lines, Line{Text: fmt.Sprintf("I would try %s %s next%s.", t.Label, v.with(t.Value, t.Kind), v.gained(t))})
	}
	lines = append(lines, v.warnings(a)...)
	lines = append(lines, v.untimed(r)...)
	lines = append(lines, v.unfits(a)...)
	return append(lines, v.foot())
}

// lookedAt says what else was looked at: of a cradle its tilts, of a horse its slope, and
// the room it takes.
func (v voice) lookedAt(r trial.Rocking) []Line {
	var lines []Line
	for _, b := range append(v.slopes(r), v.cradle(r)...) {
		lines = append(lines, b.Lines...)
	}
	return append(lines, Line{Text: "From where its low point touches it reaches " + v.reaches(r) + " in a good rock."})
}
