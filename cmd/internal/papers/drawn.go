package papers

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"rockerwright/cmd/internal/words"
	"rockerwright/plots/pattern"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A set makes the files of one layout; behind the first error no more of them.
type set struct {
	l      layout.Layout
	source string
	title  string
	paper  pattern.Paper // of the patterns
	sheet  pattern.Paper // of the cards
	asked  bool          // the paper was asked for in the call
	made   []File
	count  int // of the numbered files
	err    error
}

func (s *set) all() {
	s.card()
	s.rocker()
	if len(s.l.Legs) > 0 {
		s.legs()
	}
	if s.l.Form != nil {
		s.form()
	}
	if s.l.Board != nil {
		s.board()
	}
	for _, p := range s.l.Pairs {
		s.pair(p)
	}
	for _, p := range s.l.Panels {
		s.panel(p)
	}
	s.made = append(s.made, File{Name: "cut list.csv", Data: cutList(s.l)})
}

// failed keeps the first error, and reports whether there is one.
func (s *set) failed(err error) bool {
	if s.err == nil {
		s.err = err
	}
	return s.err != nil
}

// numbered adds a printed file.
func (s *set) numbered(name string, printed pattern.Print) {
	s.count++
	s.made = append(s.made, File{fmt.Sprintf("%d %s.pdf", s.count, name), printed.PDF, printed.Pages})
}

// headed returns a drawing with what it is called, and its notes.
func (s *set) headed(part string, d pattern.Drawing, notes [][]string) pattern.Drawing {
	d.Part, d.Piece, d.Notes = part, s.title, notes
	return d
}

// drawing adds a numbered PDF at full size, and the same for cutting.
func (s *set) drawing(name string, d pattern.Drawing) {
	d, err := d.Placed(s.l.Design.Units)
	if s.failed(s.toobig(name, err)) {
		return
	}
	printed, err := d.Print(s.paper, s.l.Design.Units)
	if s.failed(s.toobig(name, err)) {
		return
	}
	sheets := fmt.Sprintf("%d sheets %s", printed.Sheets, s.paper.Name)
	switch {
	case s.paper.Height == 0:
		sheets = s.paper.Name
	case printed.Sheets == 1:
		sheets = "1 sheet " + s.paper.Name
	}
	s.numbered(name+" ("+sheets+")", printed)
	s.cutting(name, d)
}

// cutting adds a drawing as DXF and SVG, the unit in the name.
func (s *set) cutting(name string, d pattern.Drawing) {
	units, unit := s.l.Design.Units, "inches"
	if units == quantity.Metric {
		unit = "millimetres"
	}
	d, err := d.Placed(units)
	if s.failed(s.toobig(name, err)) {
		return
	}
	s.outline(name, " ("+unit+").dxf", d.WriteDXF)
	s.outline(name, " (millimetres).svg", d.WriteSVG)
}

// outline adds a file for cutting. No file has its name yet, upper case or lower: where it is taken
// there is a number in it.
func (s *set) outline(name, end string, write func(io.Writer, quantity.System) error) {
	var out bytes.Buffer
	if s.failed(s.toobig(name, write(&out, s.l.Design.Units))) {
		return
	}
	free := "for cutting/" + name + end
	for n := 2; slices.ContainsFunc(s.made, func(f File) bool { return strings.EqualFold(f.Name, free) }); n++ {
		free = fmt.Sprintf("for cutting/%s %d%s", name, n, end)
	}
	s.made = append(s.made, File{Name: free, Data: out.Bytes()})
}

// toobig says which drawing none is made of for its size, on its paper or on any.
func (s *set) toobig(name string, err error) error {
	var far *pattern.ReachError
	if errors.As(err, &far) {
		said := func(x float64) string { return quantity.With(x, quantity.Length, s.l.Design.Units) }
		return fmt.Errorf("%s: the pattern %q would reach %s from where it begins, and %s is the most: "+
			"is a measure of it out of proportion?", s.source, name, said(far.Reach), said(pattern.Furthest))
	}
	return s.unfit(err, s.sheet.Name)
}

// unfit gives an error of a paper the place where that was asked for, and the name of one that may do.
func (s *set) unfit(err error, other string) error {
	var wrong *pattern.Error
	switch is := errors.As(err, &wrong); {
	case is && s.asked:
		return fmt.Errorf("--paper: %s", wrong.Reason)
	case is:
		return &piece.KeyError{Key: "shop.paper", Reason: wrong.Reason, Give: "paper", Word: other}
	}
	return err
}

func (s *set) rocker() {
	l := s.l
	p := pattern.RockerPattern{Rocker: l.Rocker, Stations: l.Stations, Places: words.Places(l), EndWords: pattern.EndWords(words.EndsOf(l))}
	if l.Board != nil {
		p.Grain = l.Board.Grain
	}
	for _, leg := range l.Legs {
		p.Legs = append(p.Legs, pattern.LegMark{Standing: leg.Standing, Side: leg.Side, Label: leg.Name})
	}
	d, err := p.Drawing()
	if !s.failed(err) {
		s.drawing("rocker", s.headed("Rocker", d, words.RockerNotes(l)))
	}
}

// legs adds the two views with the numbers of the legs.
func (s *set) legs() {
	l := s.l
	var views []pattern.LegView
	for i, label := range words.LegLabels(l) {
		leg := l.Legs[i]
		view := pattern.LegView{Line: leg.Line, Standing: leg.Standing, Side: leg.Side, LegWords: pattern.LegWords(label)}
		if leg.Block != nil {
			view.Short = leg.Block.Shorter
		}
		views = append(views, view)
	}
	width := s.sheet.Width - 0.03
	side, err := pattern.SideView(l.Rocker, views, width, 0.105)
	if s.failed(err) {
		return
	}
	front := pattern.FrontView(l.Rocker, views, width, 0.085)
	card := cardOf(words.LegSheet(l, s.source))
	pictures := card
	pictures.Blocks = []pattern.CardBlock{
		{Head: "From the side, not at true size", View: &side},
		{Head: "From the front, not at true size", View: &front},
		card.Blocks[len(card.Blocks)-1],
	}
	card.Title += ", numbers"
	s.cards("legs", pictures, card)
}

// form adds the pattern of the form inside the curve, and the one outside it for cutting.
func (s *set) form() {
	form := s.l.Form
	p := pattern.FormPattern{Outline: form.Inside, Face: form.Face, Low: form.Low, Side: 1, EndWords: pattern.EndWords(words.EndsOf(s.l))}
	notes := words.FormNotes(s.l)
	s.drawing("form inside the curve", s.headed("Form, inside the curve", p.Drawing(), notes))
	out := form.Out
	p.Outline, p.Side = pattern.Behind(out), -1
	p.Face[0], p.Face[1] = out.End(), out.Start
	p.Low.Y = 0 // of the wood's lower edge
	s.cutting("form outside the curve", s.headed("Form, outside the curve", p.Drawing(), notes))
}

func (s *set) board() {
	pair := pattern.PairPattern{Pair: s.l.Board.Pair, PairWords: pattern.PairWords(words.RockerPairWords(s.l))}
	view := pair.View(s.sheet.Width - 0.04)
	card := cardOf(words.BoardSheet(s.l, s.source))
	card.Blocks = slices.Insert(card.Blocks, 0,
		pattern.CardBlock{Head: "A pair in one board, not at true size. The arrows are the grain, mirrored.", View: &view})
	s.cards("board", card)
	s.cutting("rockers left and right", s.headed("Rockers, a pair", pair.Drawing(), nil))
}

// pair adds a left and a right one in one board.
func (s *set) pair(p layout.Paired) {
	name := p.Name + "s, left and right"
	pair := pattern.PairPattern{Pair: p.Pair, PairWords: pattern.PairWords(words.PairWordsOf(s.l, p))}
	s.drawing(fileWord(name), s.headed(strings.ToUpper(name[:1])+name[1:], pair.Drawing(), words.PairNotes(s.l, p)))
}

func (s *set) panel(p layout.Panel) {
	s.drawing(fileWord(p.Name), s.headed(p.Name, pattern.PanelPattern(p.Curve, p.Stave), words.PanelNotes(s.l, p)))
}
