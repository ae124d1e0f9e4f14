package pattern

import (
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
)

func cardFile(t testing.TB, card Card, paper string) (string, int) {
	t.Helper()
	p, err := PaperNamed(paper)
	if err != nil {
		t.Fatal(err)
	}
	printed, err := PrintCards("card", []Card{card}, p)
	if err != nil {
		t.Fatal(err)
	}
	return written(t, "card.pdf", func(w io.Writer) error { _, err := w.Write(printed.PDF); return err }), printed.Pages
}

// TestCard: a short card is one page in the largest type, a long one goes on to a second, and
// everything on it is read by poppler.
func TestCard(t *testing.T) {
	short := Card{Title: "Chair: bench card", Source: "chair.toml", Blocks: []CardBlock{
		{Big: true, Lines: []string{"FLOOR EDGE RADIUS 42 in"}},
		{Head: "LEGS", Rows: [][]string{{"", "front", "rear", ""}, {"length", "11 1/2", "10 13/16", "in"}}, Bold: true},
	}}
	file, pages := cardFile(t, short, "letter")
	text := tool(t, "pdftotext", "-layout", file, "-")
	if pages != 1 || !contains(text, "FLOOR EDGE RADIUS 42 in") || !contains(text, "length 11 1/2 10 13/16 in") ||
		!contains(text, "chair.toml") {
		t.Errorf("%d pages:\n%s", pages, text)
	}
	var long CardBlock
	for i := range 150 {
		long.Lines = append(long.Lines, fmt.Sprintf("line %d", i))
	}
	file, pages = cardFile(t, Card{Title: "Long", Blocks: []CardBlock{long}}, "A4")
	text = tool(t, "pdftotext", "-layout", file, "-")
	if pages < 2 || strings.Count(text, "\f") != pages || !contains(text, "line 0") || !contains(text, "line 149") ||
		!contains(text, "Long (2)") {
		t.Errorf("%d pages:\n%s", pages, text)
	}
	if _, err := PrintCards("", []Card{short}, rollOf(0.6)); err == nil {
		t.Error("a card is printed on a roll")
	}
}

// TestCardStaysOnPaper: hostile texts neither break the file nor leave the paper.
func TestCardStaysOnPaper(t *testing.T) {
	long := strings.Repeat("lengthy ", 400) + strings.Repeat("x", 200)
	file, _ := cardFile(t, Card{Title: long, Source: "a.toml", Blocks: []CardBlock{
		{Head: long, Lines: []string{long, "(a) \\ ) % <b>", "\u202eabc"}, Rows: [][]string{{strings.Repeat("wide ", 60), "1", "in"}}},
		{Big: true, Lines: []string{long}},
	}}, "letter")
	boxes := tool(t, "pdftotext", "-bbox", file, "-")
	words := 0
	for line := range strings.Lines(boxes) {
		var x0, y0, x1, y1 float64
		const word = `<word xMin="%f" yMin="%f" xMax="%f" yMax="%f">`
		if n, _ := fmt.Sscanf(strings.TrimSpace(line), word, &x0, &y0, &x1, &y1); n < 4 {
			continue
		}
		words++
		if math.Min(x0, y0) < 0 || x1 > 612 || y1 > 792 {
			t.Fatalf("a word leaves the paper: %s", line)
		}
	}
	if words < 100 {
		t.Errorf("%d words", words)
	}
}
