package main

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
)

// TestCradleCards: on the cards and patterns of a cradle the ways along a rocker are left and right, or the head and
// the foot; nothing lies ahead, behind or forward, and nothing is said of a seat.
func TestCradleCards(t *testing.T) {
	for rocks, tt := range map[piece.Direction]struct {
		not  string
		want []string
	}{
		piece.Side: {`forward|ahead|behind|front|rear|seat|nose|tail`, []string{
			"pivot from the square corner, to the right", "Low point 12 11/16 in from the square corner, to the right",
			"right end square, left end square", "from the right end; the low point is station", "1: 12 in to the right", "5: 12 in to the left",
			"(21) scale under the right mark", "(22) scale under the left mark", "(25) right mark raised against the left one",
			"(27) scale under the left mark, right raised", "(28) balances on a dowel, from the low point, to the right",
			"should be at head at foot", "(35) at head (36) at foot",
			"how far from the low point, to the right (to the left, below zero)", "low point 12 11/16 in to the right"}},
		piece.End: {`forward|ahead|behind|front|rear|seat`, []string{
			"pivot from the square corner, to the foot", "1: 12 in to the foot", "5: 12 in to the head", "nose square, tail square",
			"to the foot (to the head, below zero)", "low point 12 11/16 in to the foot"}},
	} {
		text, _ := design.Start("cradle")
		f, err := design.Parse("cradle.toml", text)
		if err != nil {
			t.Fatal(err)
		}
		f.Design.Rocks = rocks
		l, err := layout.Of(f.Design, layout.Options{})
		if err != nil {
			t.Fatal(err)
		}
		var out bytes.Buffer
		for _, s := range []sheet.Sheet{words.BenchCard(l, ""), words.CheckSheet(l, ""), words.StationSheet(l, ""), words.CutSheet(l, "")} {
			if err := s.Text(&out, true, false); err != nil {
				t.Fatal(err)
			}
		}
		for _, note := range words.RockerNotes(l) {
			out.WriteString(strings.Join(note, "\n") + "\n")
		}
		if found := regexp.MustCompile(`(?i).*\b(`+tt.not+`)\b.*`).FindAllString(out.String(), -1); found != nil {
			t.Errorf("rocks %v: said of a cradle:\n%s", rocks, strings.Join(found, "\n"))
		}
		said := strings.Join(strings.Fields(out.String()), " ")
		for _, want := range tt.want {
			if !strings.Contains(said, want) {
				t.Errorf("rocks %v: %q is not said", rocks, want)
			}
		}
	}
}
