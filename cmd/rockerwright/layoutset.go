package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/pattern"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A laidFile is one file of a layout, made but not yet written.
type laidFile struct {
	name  string // within the folder, with slashes
	data  []byte
	pages int // zero of what is not printed
}

// A layoutSet makes the files of one layout.
type layoutSet struct {
	l      layout.Layout
	source string
	title  string
	paper  pattern.Paper // of the patterns
	sheet  pattern.Paper // of the cards
	asked  bool          // the paper was asked for in the call
	made   []laidFile
	count  int // of the numbered files
}

func setOf(l layout.Layout, f *design.File, paper pattern.Paper) *layoutSet {
	source := f.Name
	if len(f.Changes) > 0 {
		source += ", changed"
	}
	title := l.Design.Title
	if title == "" {
		title = "Untitled " + l.Design.Kind.String()
	}
	s := &layoutSet{l: l, source: filepath.Base(source), title: title, paper: paper, sheet: sheetFor(l.Design.Units)}
	if paper.Name == "letter" || paper.Name == "A4" {
		s.sheet = paper
	}
	return s
}

// files returns all files, those to be printed first.
func (s *layoutSet) files() ([]laidFile, error) {
	steps := []func() error{s.card, s.rocker}
	if len(s.l.Legs) > 0 {
		steps = append(steps, s.legs)
	}
	if s.l.Form != nil {
		steps = append(steps, s.form)
	}
	if s.l.Board != nil {
		steps = append(steps, s.board)
	}
	for _, p := range s.l.Pairs {
		steps = append(steps, func() error { return s.pair(p) })
	}
	for _, p := range s.l.Panels {
		steps = append(steps, func() error { return s.panel(p) })
	}
	for _, step := range steps {
		if err := step(); err != nil {
			return nil, err
		}
	}
	s.made = append(s.made, laidFile{name: "cut list.csv", data: cutList(s.l)})
	slices.SortStableFunc(s.made, func(a, b laidFile) int { // what is printed, the list, what is cut
		return cmp.Compare(strings.Count(a.name, "/"), strings.Count(b.name, "/"))
	})
	return s.made, nil
}

// cards adds a numbered PDF of cards.
func (s *layoutSet) cards(name string, cards ...pattern.Card) error {
	printed, err := pattern.PrintCards(s.title+", "+name, cards, s.sheet)
	if err != nil {
		return err
	}
	s.count++
	s.made = append(s.made, laidFile{fmt.Sprintf("%d %s.pdf", s.count, name), printed.PDF, printed.Pages})
	return nil
}

// headed returns a drawing with what it is called, and its notes.
func (s *layoutSet) headed(part string, d pattern.Drawing, notes [][]string) pattern.Drawing {
	d.Part, d.Piece, d.Notes = part, s.title, notes
	return d
}

// drawing adds a numbered PDF at full size, and the same for cutting.
func (s *layoutSet) drawing(name string, d pattern.Drawing) error {
	d, err := d.Placed(s.l.Design.Units)
	if err != nil {
		return s.toobig(name, err)
	}
	printed, err := d.Print(s.paper, s.l.Design.Units)
	if err != nil {
		return s.toobig(name, err)
	}
	s.count++
	sheets := fmt.Sprintf("%d sheets %s", printed.Sheets, s.paper.Name)
	switch {
	case s.paper.Height == 0:
		sheets = s.paper.Name
	case printed.Sheets == 1:
		sheets = "1 sheet " + s.paper.Name
	}
	s.made = append(s.made, laidFile{fmt.Sprintf("%d %s (%s).pdf", s.count, name, sheets), printed.PDF, printed.Pages})
	return s.cutting(name, d)
}

// toobig gives an error of a drawing that does not go on its paper the place of the paper, and says
// which drawing none is made of for its size.
func (s *layoutSet) toobig(name string, err error) error {
	var wrong *pattern.Error
	var far *pattern.ReachError
	units := s.l.Design.Units
	switch {
	case errors.As(err, &far):
		return fmt.Errorf("%s: the pattern %q would reach %s from where it begins, and %s is the most: is a measure of it out of proportion?",
			s.source, name, quantity.With(far.Reach, quantity.Length, units), quantity.With(pattern.Furthest, quantity.Length, units))
	case errors.As(err, &wrong) && s.asked:
		return fmt.Errorf("--paper: %s", wrong.Reason)
	case wrong != nil:
		return &piece.KeyError{Key: "shop.paper", Reason: wrong.Reason, Give: "paper", Word: s.sheet.Name}
	}
	return err
}

// cutting adds a drawing as DXF and SVG, the unit in the name.
func (s *layoutSet) cutting(name string, d pattern.Drawing) error {
	d, err := d.Placed(s.l.Design.Units)
	if err != nil {
		return s.toobig(name, err)
	}
	unit := "inches"
	if s.l.Design.Units == quantity.Metric {
		unit = "millimetres"
	}
	for _, each := range []struct {
		end   string
		write func(w io.Writer) error
	}{
		{" (" + unit + ").dxf", func(w io.Writer) error { return d.WriteDXF(w, s.l.Design.Units) }},
		{" (millimetres).svg", func(w io.Writer) error { return d.WriteSVG(w, s.l.Design.Units) }},
	} {
		var out bytes.Buffer
		if err := each.write(&out); err != nil {
			return s.toobig(name, err)
		}
		s.made = append(s.made, laidFile{name: s.free("for cutting/"+name, each.end), data: out.Bytes()})
	}
	return nil
}

// free returns a name that no file has yet, upper case or lower, with a number where it is taken.
func (s *layoutSet) free(name, end string) string {
	free := name + end
	for n := 2; slices.ContainsFunc(s.made, func(f laidFile) bool { return strings.EqualFold(f.name, free) }); n++ {
		free = fmt.Sprintf("%s %d%s", name, n, end)
	}
	return free
}

// card adds bench card, check sheet, stations and cut list.
func (s *layoutSet) card() error {
	l, source := s.l, s.source
	return s.cards("bench card",
		cardOf(words.BenchCard(l, source)), cardOf(words.CheckSheet(l, source)), cardOf(words.StationSheet(l, source)), cardOf(words.CutSheet(l, source)))
}

// rocker adds the rocker's pattern.
func (s *layoutSet) rocker() error {
	l := s.l
	p := pattern.RockerPattern{Rocker: l.Rocker, Stations: l.Stations, Places: words.Places(l), EndWords: pattern.EndWords(words.EndsOf(l))}
	if l.Board != nil {
		p.Grain = l.Board.Grain
	}
	for _, leg := range l.Legs {
		p.Legs = append(p.Legs, pattern.LegMark{Standing: leg.Standing, Side: leg.Side, Label: leg.Name})
	}
	d, err := p.Drawing()
	if err != nil {
		return err
	}
	return s.drawing("rocker", s.headed("Rocker", d, words.RockerNotes(l)))
}

// legs adds the two views with the numbers of the legs.
func (s *layoutSet) legs() error {
	l := s.l
	var views []pattern.LegView
	for i, leg := range words.LegLabels(l) {
		view := pattern.LegView{Line: l.Legs[i].Line, Standing: l.Legs[i].Standing, Side: l.Legs[i].Side, LegWords: pattern.LegWords(leg)}
		if block := l.Legs[i].Block; block != nil {
			view.Short = block.Shorter
		}
		views = append(views, view)
	}
	width := s.sheet.Width - 0.03
	side, err := pattern.SideView(l.Rocker, views, width, 0.105)
	if err != nil {
		return err
	}
	front := pattern.FrontView(l.Rocker, views, width, 0.085)
	card := cardOf(words.LegSheet(l, s.source))
	pictures := pattern.Card{Title: card.Title, Source: card.Source, Blocks: []pattern.CardBlock{
		{Head: "From the side, not at true size", View: &side}, {Head: "From the front, not at true size", View: &front},
	}}
	pictures.Blocks = append(pictures.Blocks, card.Blocks[len(card.Blocks)-1])
	card.Title += ", numbers"
	return s.cards("legs", pictures, card)
}

// form adds the pattern of the form inside the curve, and the one outside it for cutting.
func (s *layoutSet) form() error {
	p := pattern.FormPattern{Outline: s.l.Form.Inside, Face: s.l.Form.Face, Low: s.l.Form.Low, Side: 1, EndWords: pattern.EndWords(words.EndsOf(s.l))}
	notes := words.FormNotes(s.l)
	if err := s.drawing("form inside the curve", s.headed("Form, inside the curve", p.Drawing(), notes)); err != nil {
		return err
	}
	out := s.l.Form.Out
	p.Outline, p.Side = pattern.Behind(out), -1
	p.Face[0], p.Face[1] = out.End(), out.Start
	p.Low.Y = 0 // of the wood's lower edge
	return s.cutting("form outside the curve", s.headed("Form, outside the curve", p.Drawing(), notes))
}

// board adds a pair of rockers in one board.
func (s *layoutSet) board() error {
	pair := pattern.PairPattern{Pair: s.l.Board.Pair, PairWords: pattern.PairWords(words.RockerPairWords(s.l))}
	view := pair.View(s.sheet.Width - 0.04)
	card := cardOf(words.BoardSheet(s.l, s.source))
	card.Blocks = append([]pattern.CardBlock{{Head: "A pair in one board, not at true size. The arrows are the grain, mirrored.", View: &view}}, card.Blocks...)
	if err := s.cards("board", card); err != nil {
		return err
	}
	return s.cutting("rockers left and right", s.headed("Rockers, a pair", pair.Drawing(), nil))
}

// pair adds a left and a right one in one board.
func (s *layoutSet) pair(p layout.Paired) error {
	name := p.Name + "s, left and right"
	pair := pattern.PairPattern{Pair: p.Pair, PairWords: pattern.PairWords(words.PairWordsOf(s.l, p))}
	return s.drawing(fileWord(name), s.headed(strings.ToUpper(name[:1])+name[1:], pair.Drawing(), words.PairNotes(s.l, p)))
}

// panel adds the section of a coopered panel.
func (s *layoutSet) panel(p layout.Panel) error {
	return s.drawing(fileWord(p.Name), s.headed(p.Name, pattern.PanelPattern(p.Curve, p.Stave), words.PanelNotes(s.l, p)))
}

// mixedNumber is a whole number and a fraction, which no line may part, nor from their unit.
var mixedNumber = regexp.MustCompile(`(\d) (\d+/\d+|in\b|mm\b)`)

// cardOf returns a sheet of words as a card.
func cardOf(s words.Sheet) pattern.Card {
	card := pattern.Card{Title: s.Title, Source: s.Source}
	for _, b := range s.Blocks {
		block := pattern.CardBlock{Head: b.Title, Big: b.Big}
		for _, line := range b.Lines {
			text := line.Text
			if line.Label != "" {
				text = line.Label + " " + text
			}
			block.Lines = append(block.Lines, mixedNumber.ReplaceAllString(text, "$1\u00a0$2"))
		}
		if t := b.Table; t != nil {
			if len(t.Head) > 0 {
				block.Rows, block.Bold = append(block.Rows, t.Head), true
			}
			for _, row := range t.Rows {
				block.Rows = append(block.Rows, row.Cells)
			}
		}
		card.Blocks = append(card.Blocks, block)
	}
	return card
}
