package words

import (
	"strings"
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// TestDifferences sets a design beside itself, beside one with a flatter curve, and beside
// one of another kind.
func TestDifferences(t *testing.T) {
	column := func(head string, change func(d *piece.Design)) Column {
		d := chair()
		change(&d)
		r, err := check.Check(d)
		if err != nil {
			t.Fatal(err)
		}
		return Column{Head: head, Report: r.Balanced}
	}
	same := column("mine", func(*piece.Design) {})
	flat := column("élan", func(d *piece.Design) { d.Rocker.Radius = 60 * inch })
	cradle := column("cot", become(piece.Cradle))
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
