package report

import (
	"io"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// A Subject is a design and all that was found out about it.
type Subject struct {
	Text    string // the design file, with the changes of this report in it
	Answer  trial.Answer
	Rocking *trial.Rocking // nil where nothing rests on which it could rock
	Making  words.Making
	More    []words.Block // of other questions about the same design: what if, sizes
}

// About gathers what a report says of a design. The error is the design's, explained.
func About(f *design.File, m words.Making) (Subject, error) {
	checked, err := trial.Check(f.Design, check.Options{})
	if err != nil {
		return Subject{}, f.Explain(err)
	}
	text := f.Text
	if len(f.Typed) > 0 {
		if text, err = f.Saved(f.Design); err != nil {
			return Subject{}, err
		}
	}
	m.Changes = f.Changes
	s := Subject{Text: text, Answer: checked, Making: m, More: alsoAsked(f)}
	if l := shown(checked.Report); l != nil {
		rocking, err := trial.Rock(f.Design, trial.RockOptions{Load: l.Name, Duration: shownTime})
		if err != nil {
			return Subject{}, f.Explain(err)
		}
		s.Rocking = &rocking
	}
	return s, nil
}

// shownTime is how long the motion is that a report shows, s.
const shownTime = 12

// shown returns the load that rocks in a report: the owner's first that stands, else the
// piece alone; nil where neither does.
func shown(r check.Report) *check.Load {
	for i := range r.Loads {
		if l := &r.Loads[i]; !l.Empty && l.Role == piece.Owner && l.Upright() {
			return l
		}
	}
	if l := &r.Loads[0]; l.Upright() {
		return l
	}
	return nil
}

// Write writes the report of one design.
func Write(w io.Writer, s Subject) error {
	k := words.Keep(s.Answer, s.Rocking, s.Making, s.More)
	var p page
	p.begin(k.Tab)
	p.printf("<header>\n")
	p.heading(1, k.Title)
	p.printf("<p class=\"made\">%s</p>\n</header>\n", words.Escaped(k.Made))
	p.printf("<section class=\"first\" id=\"first\">\n")
	p.blocks(k.First, 2)
	p.picture(s.side(), k.Side)
	p.blocks(k.Under, 2)
	p.printf("</section>\n")
	for _, section := range k.Sections {
		p.section(section, plots.Pictures(s.Answer.Report))
	}
	p.printf("<section id=\"%s\">\n", k.File.ID)
	p.heading(2, k.File.Title)
	p.blocks(k.File.Blocks, 3)
	p.file("design", s.Text)
	p.printf("</section>\n<section class=\"owner\" id=\"%s\">\n", k.Owner.ID)
	p.heading(2, k.Owner.Title)
	p.blocks(k.Owner.Blocks, 3)
	p.printf("</section>\n")
	return p.end(w)
}

// section writes a section with its picture.
func (p *page) section(s words.Section, pictures []plots.Picture) {
	p.printf("<section id=\"%s\">\n", s.ID)
	p.heading(2, s.Title)
	for _, picture := range pictures {
		if picture.Name == s.Picture {
			p.picture(picture, s.Caption)
		}
	}
	p.blocks(s.Blocks, 3)
	p.printf("</section>\n")
}

// side returns the side view: rocking, where it rocks.
func (s Subject) side() plots.Picture {
	if s.Rocking != nil {
		return plots.RockingView(*s.Rocking)
	}
	return plots.SideView(s.Answer.Report)
}

// narrow returns the side view for half a page.
func (s Subject) narrow() plots.Picture {
	if s.Rocking != nil {
		return plots.NarrowRockingView(*s.Rocking)
	}
	return plots.SideView(s.Answer.Report)
}
