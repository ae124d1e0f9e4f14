package report

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html"
	"html/template"
	"io"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/plots/scene"
	"rockerwright/plots/view"
)

//go:embed report.css
var style string

//go:embed page.html
var pageText string

// A figure is a picture with its caption. Where the page is narrower than the picture
// can be read, it can be moved sideways, by the keyboard too.
type figure struct {
	scene.Picture
	Caption string
}

// pages are the templates of a page. It may load nothing and runs no script but its own, which its policy knows by
// their digests; styles and scripts inside a text would be neither.
var pages = template.Must(template.New("").Funcs(template.FuncMap{
	"policy": func() template.HTMLAttr {
		return template.HTMLAttr(fmt.Sprintf(`content="default-src 'none'; style-src %s; script-src %s; `+
			`base-uri 'none'; form-action 'none'"`, digest(style), digest(view.Script)))
	},
	"style":  func() template.CSS { return template.CSS(style) },
	"script": func() template.JS { return template.JS(view.Script) },
	"tab":    func(title string) template.HTML { return "<title>" + sheet.Escaped(title) + "</title>" },
	"text":   sheet.Escaped, "heading": sheet.Heading, "blocks": sheet.HTML,
	"figure": func(p scene.Picture, caption string) figure { return figure{p, caption} },
	"side":   func(s Subject) scene.Picture { return s.side(view.RockingView) },
	"narrow": func(s Subject) scene.Picture { return s.side(view.NarrowRockingView) }, // for half a page
	"svg":    svg, "file": file,
	"titled": func(name string) string { return strings.ToUpper(name[:1]) + name[1:] },
}).Parse(pageText))

// digest returns what a policy calls an inline part by.
func digest(part string) string {
	sum := sha256.Sum256([]byte(part))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// svg returns a picture as part of a page.
func svg(picture scene.Picture) (template.HTML, error) {
	var text strings.Builder
	err := picture.InPage(&text)
	return template.HTML(text.String()), err
}

// file returns a design file as it stands, every character of it.
func file(text string) template.HTML {
	text = strings.TrimPrefix(text, "\ufeff")
	return template.HTML(strings.ReplaceAll(html.EscapeString(text), "\r", "&#13;")) // the first line end is not read
}

// write writes a page, whole or not at all.
func write(w io.Writer, name string, data any) error {
	var page bytes.Buffer
	if err := pages.ExecuteTemplate(&page, name, data); err != nil {
		return err
	}
	_, err := page.WriteTo(w)
	return err
}
