package sheet

import (
	"strings"
	"testing"
)

// TestHTML writes one block of each sort, with texts that would be something else.
func TestHTML(t *testing.T) {
	blocks := []Block{
		{Title: "A & B", Lines: []Line{{Label: "WHO:", Text: `<script>"x"</script>`, Type: "check 'a' <b>", Bad: true}}},
		{Title: "Numbers", Table: &Table{Over: []string{"", "lying"}, Head: []string{"", "back", "unit"}, Rows: []Row{
			{Cells: []string{"<tilt>", "1", "deg"}}, {Cells: []string{"  lift", "2"}, Bad: true}}}},
		{Table: &Table{Caption: "Bare", Rows: []Row{{Cells: []string{"a\u202eb\x00", "+ c"}}}}},
		{Lines: Says("end")},
	}
	page := string(HTML(blocks, 3))
	for _, want := range []string{
		"<h3>A &amp; B</h3>\n<p class=\"bad\"><b>WHO:</b> &lt;script&gt;&#34;x&#34;&lt;/script&gt; <code>check " +
			"&#39;a&#39; &lt;b&gt;</code></p>",
		"<caption><h3>Numbers</h3></caption>",
		`<thead><tr><td></td><th scope="col">lying<br>back</th><th scope="col">unit</th></tr></thead>`,
		`<tr><th scope="row">&lt;tilt&gt;</th><td>1</td><td>deg</td></tr>`,
		`<tr class="bad"><th scope="row" class="under">lift</th><td>2</td><td></td></tr>`,
		`aria-label="Bare"`, "<caption>Bare</caption>", `<th scope="row">a b </th><td>+ c</td>`,
	} {
		if !strings.Contains(page, want) {
			t.Errorf("no %s in\n%s", want, page)
		}
	}
	if n := strings.Count(page, `<div class="tables">`); n != 1 {
		t.Errorf("%d groups of tables, want the two in one", n)
	}
	if open, closed := strings.Count(page, "<div"), strings.Count(page, "</div>"); open != closed {
		t.Errorf("%d divs are opened, %d closed", open, closed)
	}
}
