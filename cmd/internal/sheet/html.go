package sheet

import (
	"cmp"
	_ "embed"
	"fmt"
	"html"
	"html/template"
	"slices"
	"strings"
)

//go:embed blocks.html
var blocksText string

var blocksPage = template.Must(template.New("blocks").Funcs(template.FuncMap{
	"text": Escaped, "heading": Heading, "alone": Block.tableAlone, "shows": (*Table).shows, "columns": (*Table).columns,
	"heads": (*Table).heads, "padded": padded, "trim": strings.TrimSpace,
	"under": func(cell string) bool { return strings.HasPrefix(cell, " ") }, // set in: it belongs to the row above
	"label": func(t *Table) template.HTMLAttr {
		return `aria-label="` + template.HTMLAttr(cmp.Or(Escaped(t.shows()), "table")) + `"`
	},
}).Parse(blocksText))

// HTML returns blocks as part of a page: tables with captions and with heads for their
// rows and columns, titles as headings of the given level, 2 to 6. All texts are escaped;
// bold is never the only carrier of a meaning. It takes no notice of All.
func HTML(blocks []Block, level int) template.HTML {
	page := struct {
		Level  int
		Groups [][]Block // tables side by side, where there is room; all else by itself
	}{Level: level}
	for i, b := range blocks {
		if n := len(page.Groups) - 1; i > 0 && b.tableAlone() && blocks[i-1].tableAlone() {
			page.Groups[n] = append(page.Groups[n], b)
		} else {
			page.Groups = append(page.Groups, []Block{b})
		}
	}
	var text strings.Builder
	if err := blocksPage.Execute(&text, page); err != nil {
		panic(err) // the template is ours, and a builder takes all
	}
	return template.HTML(text.String())
}

// Escaped returns a text as it stands inside HTML, and within quotes there, without the
// characters that would turn the rest of its line about. A + stays one, which html/template would escape too.
func Escaped(text string) template.HTML { return template.HTML(html.EscapeString(Plain(text))) }

// Heading returns a title as a heading of a level.
func Heading(level int, title string) template.HTML {
	return template.HTML(fmt.Sprintf("<h%d>%s</h%[1]d>", level, Escaped(title)))
}

// tableAlone reports whether a block is a table and nothing else.
func (b Block) tableAlone() bool { return b.Table != nil && len(b.Lines) == 0 }

func (t *Table) shows() string {
	if t.Caption == "" && len(t.Head) > 0 {
		return t.Head[0]
	}
	return t.Caption
}

func (t *Table) columns() int {
	columns := len(t.Head)
	for _, r := range t.Rows {
		columns = max(columns, len(r.Cells))
	}
	return columns
}

// heads returns the one or two lines over each column, none over one that has no head; of a table without heads nothing.
func (t *Table) heads(columns int) [][]template.HTML {
	heads := make([][]template.HTML, columns)
	for _, line := range [][]string{t.Over, t.Head} {
		for i, head := range line {
			if head != "" {
				heads[i] = append(heads[i], Escaped(head))
			}
		}
	}
	if len(t.Head) == 0 {
		return nil
	}
	return heads
}

// padded returns cells with empty ones behind, so many in all.
func padded(cells []string, columns int) []string {
	return append(slices.Clone(cells), make([]string, columns-len(cells))...)
}
