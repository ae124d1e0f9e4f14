package papers

import (
	"bytes"
	"encoding/csv"
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/pattern"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// cards adds a numbered PDF of cards.
func (s *set) cards(name string, cards ...pattern.Card) {
	printed, err := pattern.PrintCards(s.title+", "+name, cards, s.sheet)
	if !s.failed(err) {
		s.numbered(name, printed)
	}
}

func (s *set) card() {
	l, source := s.l, s.source
	s.cards("bench card",
		cardOf(words.BenchCard(l, source)), cardOf(words.CheckSheet(l, source)),
		cardOf(words.StationSheet(l, source)), cardOf(words.CutSheet(l, source)))
}

// fileWord returns a name as part of a file's name: letters, digits and spaces of it, at most
// forty bytes, "panel" where nothing is left.
func fileWord(name string) string {
	var b strings.Builder
	for _, r := range name {
		if b.Len()+utf8.RuneLen(r) > 40 {
			break
		}
		if r == ' ' || r == '-' || r != unicode.ReplacementChar && unicode.In(r, unicode.L, unicode.M, unicode.Nd) {
			b.WriteRune(r)
		}
	}
	if word := strings.TrimSpace(b.String()); word != "" {
		return word
	}
	return "panel"
}

// mixedNumber is a whole number and a fraction, which no line may part, nor from their unit.
var mixedNumber = regexp.MustCompile(`(\d) (\d+/\d+|in\b|mm\b)`)

func cardOf(s sheet.Sheet) pattern.Card {
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

// cutList returns the cut list as comma-separated values: sizes as a maker reads them, what is added up as plain
// numbers. Letters beyond ASCII are announced by a byte order mark, without which spreadsheets take them for others.
func cutList(l layout.Layout) []byte {
	units := l.Design.Units
	sizes, wood, weight := "", "rough, all (board feet)", "finished, all (lb)"
	if units == quantity.Metric {
		sizes, wood, weight = " (mm)", "rough, all (cm3)", "finished, all (g)"
	}
	heads := []string{"part", "count", "wood"}
	for _, which := range []string{"finished", "rough"} {
		for _, side := range []string{"length", "width", "thickness"} {
			heads = append(heads, which+" "+side+sizes)
		}
	}
	rows := [][]string{append(heads, wood, weight, "remark")}
	for _, c := range l.Cuts {
		row := []string{spreadsheetWord(c.Part), strconv.Itoa(c.Count), spreadsheetWord(c.Wood)}
		for _, size := range []layout.Size{c.Finished, c.Rough} {
			for _, x := range []float64{size.Length, size.Width, size.Thick} {
				row = append(row, words.CutSize(x, units))
			}
		}
		cubic, feet := c.Volume()
		volume, mass := decimal(feet, 3), quantity.Fine(c.Mass(), quantity.Mass, units)
		if units == quantity.Metric { // no decimals, whose sign depends on the country
			volume, mass = decimal(cubic*1e6, 0), decimal(c.Mass()*1e3, 0)
		}
		if math.IsNaN(c.Mass()) {
			mass = ""
		}
		rows = append(rows, append(row, volume, mass, words.CutRemark(l, c)))
	}
	var out bytes.Buffer
	if err := csv.NewWriter(&out).WriteAll(rows); err != nil {
		panic(err) // a buffer takes everything
	}
	if bytes.ContainsFunc(out.Bytes(), func(r rune) bool { return r > unicode.MaxASCII }) {
		return append([]byte("\ufeff"), out.Bytes()...)
	}
	return out.Bytes()
}

func decimal(x float64, digits int) string { return strconv.FormatFloat(x, 'f', digits, 64) }

// spreadsheetWord returns a name that a spreadsheet does not take for a formula, a number or a date.
func spreadsheetWord(text string) string {
	if strings.IndexAny(text, "=+-@\t\r") == 0 || text != "" && strings.Trim(text, "0123456789 .,:/-") == "" {
		return "'" + text
	}
	return text
}
