package report

import (
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html"
	"io"
	"strings"

	"rockerwright/cmd/internal/words"
	"rockerwright/plots"
)

//go:embed report.css
var style string

// A page is an HTML file being written. The first error stays.
type page struct {
	text strings.Builder
	err  error
}

func (p *page) printf(format string, args ...any) { fmt.Fprintf(&p.text, format, args...) }

// begin writes what stands before the text. The page may load nothing and runs no script
// but its own, which its policy knows by their digests; styles and scripts inside a text
// would be neither.
func (p *page) begin(title string) {
	p.printf("<!DOCTYPE html>\n<html lang=\"en\" dir=\"ltr\">\n<head>\n<meta charset=\"utf-8\">\n")
	p.printf("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src %s; script-src %s; base-uri 'none'; form-action 'none'\">\n", digest(style), digest(plots.Script))
	p.printf("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"referrer\" content=\"no-referrer\">\n")
	p.printf("<title>%s</title>\n<style>%s</style>\n</head>\n<body>\n<main>\n", words.Escaped(title), style)
}

// digest returns what a policy calls an inline part by.
func digest(part string) string {
	sum := sha256.Sum256([]byte(part))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// end writes the script and closes the page.
func (p *page) end(w io.Writer) error {
	p.printf("</main>\n<script>%s</script>\n</body>\n</html>\n", plots.Script)
	if p.err != nil {
		return p.err
	}
	_, err := io.WriteString(w, p.text.String())
	return err
}

// blocks writes blocks, their titles as headings of a level.
func (p *page) blocks(blocks []words.Block, level int) { p.keep(words.HTML(&p.text, blocks, level)) }

// heading writes a heading.
func (p *page) heading(level int, text string) {
	p.printf("<h%d>%s</h%d>\n", level, words.Escaped(text), level)
}

// picture writes a picture with its caption. Where the page is narrower than the picture
// can be read, it can be moved sideways, by the keyboard too.
func (p *page) picture(picture plots.Picture, caption string) {
	p.printf("<figure>\n<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"%s\">\n", words.Escaped(upperFirst(picture.Name)))
	p.keep(picture.InPage(&p.text))
	p.printf("</div>\n<figcaption>%s</figcaption>\n</figure>\n", words.Escaped(caption))
}

// file writes a design file as it stands, every character of it.
func (p *page) file(id, text string) {
	text = strings.TrimPrefix(text, "\ufeff")
	p.printf("<pre id=\"%s\" dir=\"ltr\">\n%s</pre>\n", id, strings.ReplaceAll(html.EscapeString(text), "\r", "&#13;")) // the first line end is not read
}

func (p *page) keep(err error) {
	if p.err == nil {
		p.err = err
	}
}

// upperFirst returns a name of ours as a title.
func upperFirst(text string) string { return strings.ToUpper(text[:1]) + text[1:] }
