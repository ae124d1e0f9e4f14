package words

import (
	"fmt"
	"html"
	"io"
	"strings"
)

// HTML writes blocks as part of a page: tables with captions and with heads for their
// rows and columns, titles as headings of the given level, 2 to 6. All texts are escaped;
// bold is never the only carrier of a meaning. It takes no notice of All.
func HTML(w io.Writer, blocks []Block, level int) error {
	m := markup{level: level}
	for i, b := range blocks {
		alone, before := b.tableAlone(), i > 0 && blocks[i-1].tableAlone()
		if alone && !before {
			m.printf("<div class=\"tables\">\n") // side by side, where there is room
		}
		m.block(b)
		if alone && (i == len(blocks)-1 || !blocks[i+1].tableAlone()) {
			m.printf("</div>\n")
		}
	}
	_, err := io.WriteString(w, m.text.String())
	return err
}

// tableAlone reports whether a block is a table and nothing else.
func (b Block) tableAlone() bool { return b.Table != nil && len(b.Lines) == 0 }

// A markup is a page being written.
type markup struct {
	text  strings.Builder
	level int // of headings
}

func (m *markup) printf(format string, args ...any) { fmt.Fprintf(&m.text, format, args...) }

// Escaped returns a text as it stands inside HTML, and within quotes there, without the
// characters that would turn the rest of its line about.
func Escaped(text string) string { return html.EscapeString(plain(text)) }

// heading returns a title as a heading.
func (m *markup) heading(title string) string {
	return fmt.Sprintf("<h%d>%s</h%d>", m.level, Escaped(title), m.level)
}

// block writes one block. A title of a table alone stands in its caption.
func (m *markup) block(b Block) {
	m.printf("<div class=\"block\">\n")
	caption := ""
	switch {
	case b.Title != "" && b.tableAlone():
		caption = m.heading(b.Title)
	case b.Title != "":
		m.printf("%s\n", m.heading(b.Title))
	}
	for _, l := range b.Lines {
		m.paragraph(l)
	}
	if b.Table != nil {
		if caption == "" {
			caption = Escaped(b.Table.caption())
		}
		m.table(b.Table, caption)
	}
	m.printf("</div>\n")
}

// caption returns what a table shows.
func (t *Table) caption() string {
	if t.Caption == "" && len(t.Head) > 0 {
		return t.Head[0]
	}
	return t.Caption
}

// paragraph writes a line.
func (m *markup) paragraph(l Line) {
	m.printf("<p%s>", bad(l.Bad))
	if l.Label != "" {
		m.printf("<b>%s</b> ", Escaped(l.Label))
	}
	m.printf("%s", Escaped(l.Text))
	if l.Type != "" {
		m.printf(" <code>%s</code>", Escaped(l.Type))
	}
	m.printf("</p>\n")
}

func bad(is bool) string {
	if is {
		return ` class="bad"`
	}
	return ""
}

// table writes a table that can be moved sideways where it is wider than the page, by
// the keyboard too.
func (m *markup) table(t *Table, caption string) {
	name := t.caption()
	if name == "" {
		name = "table"
	}
	m.printf("<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"%s\">\n<table>\n<caption>%s</caption>\n", Escaped(name), caption)
	columns := len(t.Head)
	for _, r := range t.Rows {
		columns = max(columns, len(r.Cells))
	}
	if len(t.Head) > 0 {
		m.printf("<thead><tr>")
		for i := range columns {
			m.head(cell(t.Over, i), cell(t.Head, i))
		}
		m.printf("</tr></thead>\n")
	}
	m.printf("<tbody>\n")
	for _, r := range t.Rows {
		m.row(r, columns)
	}
	m.printf("</tbody>\n</table>\n</div>\n")
}

// cell returns the i-th of a row's cells, "" beyond its end.
func cell(cells []string, i int) string {
	if i < len(cells) {
		return cells[i]
	}
	return ""
}

// head writes the head of a column, in two lines where it has them, an empty cell where it
// has none.
func (m *markup) head(over, text string) {
	switch {
	case over == "" && text == "":
		m.printf("<td></td>")
	case over == "" || text == "":
		m.printf(`<th scope="col">%s</th>`, Escaped(over+text))
	default:
		m.printf(`<th scope="col">%s<br>%s</th>`, Escaped(over), Escaped(text))
	}
}

// row writes a row. A label that is set in belongs to the row above.
func (m *markup) row(r Row, columns int) {
	m.printf("<tr%s>", bad(r.Bad))
	if len(r.Cells) == 1 && columns > 1 {
		m.printf("<th scope=\"row\" colspan=\"%d\">%s</th></tr>\n", columns, Escaped(r.Cells[0]))
		return
	}
	for i := range columns {
		text := cell(r.Cells, i)
		switch {
		case i > 0 || text == "":
			m.printf("<td>%s</td>", Escaped(text))
		case strings.HasPrefix(text, " "):
			m.printf(`<th scope="row" class="under">%s</th>`, Escaped(strings.TrimSpace(text)))
		default:
			m.printf(`<th scope="row">%s</th>`, Escaped(text))
		}
	}
	m.printf("</tr>\n")
}
