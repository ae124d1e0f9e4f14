package words

import (
	"io"
	"strings"
	"unicode/utf8"
)

// width is the number of columns of a page.
const width = 80

// Text prints the sheet's first page, or with all the whole of it. Bold is for a
// terminal and never the only carrier of a meaning.
func (s Sheet) Text(w io.Writer, all, bold bool) error {
	_, err := io.WriteString(w, s.printed(all, bold))
	return err
}

// lines returns how many lines the first page has.
func (s Sheet) lines() int { return strings.Count(s.printed(false, false), "\n") }

// printed returns the sheet as text.
func (s Sheet) printed(all, bold bool) string {
	p := printer{bold: bold}
	p.heading(s.Title, s.Source)
	for _, b := range s.Blocks {
		if b.All && !all {
			continue
		}
		p.line("")
		if b.Title != "" {
			p.line(p.strong(strings.ToUpper(b.Title)))
		}
		for _, l := range b.Lines {
			p.paragraph(l)
		}
		if b.Table != nil {
			p.table(b.Table)
		}
	}
	return p.text.String()
}

// A printer lays out lines of a page.
type printer struct {
	text strings.Builder
	bold bool
}

func (p *printer) line(text string) {
	p.text.WriteString(strings.TrimRight(text, " "))
	p.text.WriteByte('\n')
}

// strong returns the text set off, where that can be shown.
func (p *printer) strong(text string) string {
	if !p.bold || text == "" {
		return text
	}
	return "\x1b[1m" + text + "\x1b[0m"
}

// heading prints the title and, at the right, the source.
func (p *printer) heading(title, source string) {
	title, source = plain(title), plain(source)
	room := width - utf8.RuneCountInString(source) - 2
	if utf8.RuneCountInString(title) > room {
		for _, line := range wrap(title, width) {
			p.line(p.strong(line))
		}
		p.line(source)
		return
	}
	p.line(p.strong(title) + strings.Repeat(" ", room+2-utf8.RuneCountInString(title)) + source)
}

// paragraph prints a line, wrapped under its label.
func (p *printer) paragraph(l Line) {
	label := ""
	if l.Label != "" {
		label = l.Label + " "
	}
	lines := wrap(label+plain(l.Text), width)
	for i, line := range lines {
		if rest, found := strings.CutPrefix(line, strings.TrimRight(label, " ")); i == 0 && found && label != "" {
			line = p.strong(strings.TrimRight(label, " ")) + rest
		}
		if room := width - utf8.RuneCountInString(line) - 1; i == len(lines)-1 && l.Type != "" && room >= utf8.RuneCountInString(l.Type) {
			p.line(line + " " + plain(l.Type))
			return
		}
		p.line(line)
	}
	if l.Type != "" {
		p.line("  " + plain(l.Type))
	}
}

// table prints a table: the first and the last column to the left, numbers to the
// right in columns as wide as their longest.
func (p *printer) table(t *Table) {
	var rows []Row
	for _, head := range [][]string{t.Over, t.Head} {
		if len(head) > 0 {
			rows = append(rows, Row{Cells: head})
		}
	}
	heads := len(rows)
	rows = append(rows, t.Rows...)
	var wide []int
	for _, r := range rows {
		if len(r.Cells) == 1 {
			continue // a line across
		}
		for i, c := range r.Cells {
			if i == len(wide) {
				wide = append(wide, 0)
			}
			wide[i] = max(wide[i], utf8.RuneCountInString(plain(c)))
		}
	}
	if over := total(wide) - width; over > 0 { // labels are cut, numbers never
		wide[0] = max(wide[0]-over, 8)
	}
	for n, r := range rows {
		if len(r.Cells) == 1 {
			p.line(plain(r.Cells[0]))
			continue
		}
		var line strings.Builder
		for i, c := range r.Cells {
			c = plain(c)
			if i == 0 {
				c = cutTo(c, wide[0])
			}
			gap := wide[i] - utf8.RuneCountInString(c)
			switch {
			case i == 0:
				line.WriteString(c + strings.Repeat(" ", gap))
			case i == len(wide)-1:
				line.WriteString("  " + c)
			default:
				line.WriteString("  " + strings.Repeat(" ", gap) + c)
			}
		}
		text := strings.TrimRight(line.String(), " ")
		if n < heads || r.Bad {
			text = p.strong(text)
		}
		p.line(text)
	}
}

// total returns the width of a table's line: its columns, two spaces apart.
func total(wide []int) int {
	sum := 2 * (len(wide) - 1)
	for _, w := range wide {
		sum += w
	}
	return sum
}

// wrap breaks a text into lines of at most so many columns, at spaces. Further lines
// are indented by two.
func wrap(text string, columns int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		for utf8.RuneCountInString(word) > columns-2 { // a word longer than a line
			runes := []rune(word)
			lines = append(lines, strings.TrimRight(line, " "))
			line, word = "  "+string(runes[:columns-2]), string(runes[columns-2:])
		}
		switch {
		case line == "":
			line = word
		case utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > columns:
			lines = append(lines, line)
			line = "  " + word
		default:
			line += " " + word
		}
	}
	return append(lines, line)
}
