package papers

import (
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/pattern"
)

// cards adds a numbered PDF of cards.
func (s *set) cards(name string, cards ...pattern.Card) {
	printed, err := pattern.PrintCards(s.title+", "+name, cards, s.sheet)
	if !s.failed(err) {
		s.numbered(name, printed)
	}
}

// card adds bench card, check sheet, stations and cut list.
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

// cardOf returns a sheet of words as a card.
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
