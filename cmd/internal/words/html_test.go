package words

import (
	"bytes"
	"strings"
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// TestHTML writes one block of each sort, with texts that would be something else.
func TestHTML(t *testing.T) {
	blocks := []Block{
		{Title: "A & B", Lines: []Line{{Label: "WHO:", Text: `<script>"x"</script>`, Type: "check 'a' <b>", Bad: true}}},
		{Title: "Numbers", Table: &Table{Over: []string{"", "lying"}, Head: []string{"", "back", "unit"}, Rows: []Row{
			{Cells: []string{"<tilt>", "1", "deg"}}, {Cells: []string{"  lift", "2"}, Bad: true}}}},
		{Table: &Table{Caption: "Bare", Rows: []Row{{Cells: []string{"a\u202eb\x00", "c"}}}}},
		{Lines: says("end")},
	}
	var b bytes.Buffer
	if err := HTML(&b, blocks, 3); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"<h3>A &amp; B</h3>\n<p class=\"bad\"><b>WHO:</b> &lt;script&gt;&#34;x&#34;&lt;/script&gt; <code>check &#39;a&#39; &lt;b&gt;</code></p>",
		"<caption><h3>Numbers</h3></caption>",
		`<thead><tr><td></td><th scope="col">lying<br>back</th><th scope="col">unit</th></tr></thead>`,
		`<tr><th scope="row">&lt;tilt&gt;</th><td>1</td><td>deg</td></tr>`,
		`<tr class="bad"><th scope="row" class="under">lift</th><td>2</td><td></td></tr>`,
		`aria-label="Bare"`, "<caption>Bare</caption>", `<th scope="row">a b </th><td>c</td>`,
	} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %s in\n%s", want, &b)
		}
	}
	if n := strings.Count(b.String(), `<div class="tables">`); n != 1 {
		t.Errorf("%d groups of tables, want the two in one", n)
	}
	if open, closed := strings.Count(b.String(), "<div"), strings.Count(b.String(), "</div>"); open != closed {
		t.Errorf("%d divs are opened, %d closed", open, closed)
	}
}

// TestDifferences sets a design beside itself, beside one with a flatter curve, and beside
// one of another kind.
func TestDifferences(t *testing.T) {
	column := func(head string, change func(d *piece.Design)) Column {
		d := chair()
		change(&d)
		r, err := check.Check(d, check.Options{})
		if err != nil {
			t.Fatal(err)
		}
		return Column{Head: head, Report: r.Balanced}
	}
	same := column("mine", func(*piece.Design) {})
	flat := column("élan", func(d *piece.Design) { d.Rocker.Radius = 60 * inch })
	cradle := column("cot", func(d *piece.Design) { d.Kind = piece.Cradle })
	fallen := column("fallen", func(d *piece.Design) { d.Rocker.Radius = 10 * inch })
	said := func(a, b Column) string {
		var text []string
		for _, l := range Differences([2]Column{a, b}) {
			text = append(text, l.Text)
		}
		return strings.Join(text, "\n")
	}
	for _, c := range []struct {
		a, b Column
		want []string
	}{
		{same, same, []string{"alike"}},
		{same, flat, []string{"Mine takes longer for one rock: ", "Élan wants the harder push", "Mine has the higher tail tip"}},
		{flat, same, []string{"Mine takes longer for one rock: ", "Élan wants the harder push", "Mine has the higher tail tip"}},
		{same, cradle, []string{"One is a chair, the other a cradle"}},
		{same, fallen, []string{"Fallen has no rest", "not on fallen"}},
	} {
		got := said(c.a, c.b)
		for _, want := range c.want {
			if !strings.Contains(got, want) {
				t.Errorf("%s and %s: no %q in\n%s", c.a.Head, c.b.Head, want, got)
			}
		}
	}
}

// TestUpperFirst keeps letters of any script whole.
func TestUpperFirst(t *testing.T) {
	for text, want := range map[string]string{"": "", "owner": "Owner", "élise": "Élise", "סבא": "סבא", "\xff": "\xff"} {
		if got := upperFirst(text); got != want {
			t.Errorf("upperFirst(%q) = %q, want %q", text, got, want)
		}
	}
}
