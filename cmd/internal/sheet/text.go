package sheet

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

const width = 80 // columns of a page

// Text prints the sheet's first page, or with all the whole of it. Bold is for a
// terminal and never the only carrier of a meaning.
func (s Sheet) Text(w io.Writer, all, bold bool) error {
	_, err := io.WriteString(w, s.printed(all, bold))
	return err
}

// Fits reports whether the first page is no longer than a page.
func (s Sheet) Fits() bool { return strings.Count(s.printed(false, false), "\n") <= Page }

func (s Sheet) printed(all, bold bool) string {
	p := printer{bold: bold}
	p.heading(Plain(s.Title), Plain(s.Source))
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

// heading prints the title and, at the right or below, the source.
func (p *printer) heading(title, source string) {
	room := width - utf8.RuneCountInString(title)
	if utf8.RuneCountInString(source)+2 <= room {
		p.line(fmt.Sprintf("%s%*s", p.strong(title), room, source))
		return
	}
	for _, line := range Wrap(title, width) {
		p.line(p.strong(line))
	}
	p.line(source)
}

// paragraph prints a line, wrapped under its label.
func (p *printer) paragraph(l Line) {
	lines := Wrap(l.Label+" "+Plain(l.Text), width)
	switch last := &lines[len(lines)-1]; {
	case l.Type == "":
	case utf8.RuneCountInString(*last)+1+utf8.RuneCountInString(l.Type) <= width:
		*last += " " + Plain(l.Type)
	default:
		lines = append(lines, "  "+Plain(l.Type))
	}
	if rest, found := strings.CutPrefix(lines[0], l.Label); found {
		lines[0] = p.strong(l.Label) + rest
	}
	for _, line := range lines {
		p.line(line)
	}
}

// table prints a table: the first and the last column to the left, numbers to the
// right in columns as wide as their longest.
func (p *printer) table(t *Table) {
	var rows []Row
	for _, head := range [][]string{t.Over, t.Head} {
		if len(head) > 0 {
			rows = append(rows, Row{Cells: head, Bad: true}) // strong, as what is bad
		}
	}
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
			wide[i] = max(wide[i], utf8.RuneCountInString(Plain(c)))
		}
	}
	over := 2*(len(wide)-1) - width
	for _, w := range wide {
		over += w
	}
	if over > 0 { // labels are cut or broken, numbers never
		wide[0] = max(wide[0]-over, 8)
	}
	for _, r := range rows {
		if len(r.Cells) == 1 {
			p.line(Plain(r.Cells[0]))
			continue
		}
		label := []string{Cut(Plain(r.Cells[0]), wide[0])}
		if t.Wrap {
			label = Wrap(Plain(r.Cells[0]), wide[0])
		}
		text := fmt.Sprintf("%-*s", wide[0], label[0])
		for i, c := range r.Cells[1:] {
			if i+2 < len(wide) {
				c = fmt.Sprintf("%*s", wide[i+1], Plain(c))
			}
			text += "  " + Plain(c)
		}
		label[0] = strings.TrimRight(text, " ")
		for _, line := range label {
			if r.Bad {
				line = p.strong(line)
			}
			p.line(line)
		}
	}
}

// Wrap breaks a text into lines of at most so many columns, at spaces. Further lines are indented by two.
func Wrap(text string, columns int) []string {
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
