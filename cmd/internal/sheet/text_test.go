package sheet

import (
	"strings"
	"testing"
)

// TestText prints one block of each sort, laid out by hand in 80 columns.
func TestText(t *testing.T) {
	s := Sheet{Title: "Chair", Source: "c.toml", Blocks: []Block{
		{Lines: []Line{{Label: "WHO:", Text: strings.Repeat("word ", 16), Type: "check it"}, Wrong("no\x1b[31m")}},
		{Title: "More", All: true, Table: &Table{Head: []string{"", "far", ""}, Rows: []Row{
			{Cells: []string{"tilt", "1 1/2", "in"}, Bad: true}, {Cells: []string{"across all of it"}}}}},
	}}
	first := "Chair" + strings.Repeat(" ", 69) + "c.toml\n\n" +
		"WHO:" + strings.Repeat(" word", 15) + "\n  word check it\nno [31m\n"
	more := "\nMORE\n        far\ntilt  1 1/2  in\nacross all of it\n"
	for _, tt := range []struct {
		name      string
		all, bold bool
		want      string
	}{
		{"first page", false, false, first},
		{"all", true, false, first + more},
		{"bold", true, true, strings.NewReplacer("Chair", "\x1b[1mChair\x1b[0m", "WHO:", "\x1b[1mWHO:\x1b[0m", "MORE", "\x1b[1mMORE\x1b[0m",
			"        far", "\x1b[1m        far\x1b[0m", "tilt  1 1/2  in", "\x1b[1mtilt  1 1/2  in\x1b[0m").Replace(first + more)},
	} {
		var text strings.Builder
		if err := s.Text(&text, tt.all, tt.bold); err != nil || text.String() != tt.want {
			t.Errorf("%s: %v\n%q, want\n%q", tt.name, err, text.String(), tt.want)
		}
	}
}

// TestWrap: a label for which 80 columns have no room is broken before its numbers, or else cut.
func TestWrap(t *testing.T) {
	table := Table{Wrap: true}
	table.Add("floor to the top of the seat's front edge", strings.Repeat("9", 50), "in")
	s := Sheet{Title: "t", Blocks: []Block{{Table: &table}}}
	for wrap, want := range map[bool]string{true: "floor to the top of the\n  seat's front edge\n", false: "floor to the top of the…\n"} {
		table.Wrap = wrap
		var text strings.Builder
		if err := s.Text(&text, true, false); err != nil {
			t.Fatal(err)
		}
		got := ""
		for _, line := range strings.Split(text.String(), "\n")[2:] {
			label, numbers, _ := strings.Cut(line, "  999")
			if got += strings.TrimRight(label, " ") + "\n"; numbers != "" && len([]rune(line)) > 80 {
				t.Errorf("a line of %d columns: %q", len([]rune(line)), line)
			}
		}
		if got = strings.TrimSuffix(got, "\n"); got != want {
			t.Errorf("broken %v: %q, want %q", wrap, got, want)
		}
	}
}

// TestFitted leaves rows out in the order given, until 30 lines are left, and none of a page that fits.
func TestFitted(t *testing.T) {
	for rows, want := range map[int]string{28: "abc", 29: "bc", 30: "c", 31: "c"} { // with a title and a blank line
		table := &Table{}
		table.Add("a")
		table.Add("b")
		for len(table.Rows) < rows {
			table.Add("c")
		}
		s := Sheet{Title: "t", Blocks: []Block{{Table: table}}}.Fitted(0, []string{"a", "b"}, table)
		left := ""
		for _, row := range s.Blocks[0].Table.Rows {
			if !strings.HasSuffix(left, row.Cells[0]) {
				left += row.Cells[0]
			}
		}
		if left != want || (len(s.Blocks) == 1) != (want == "abc") || len(table.Rows) != rows || s.Fits() != (rows <= 30) {
			t.Errorf("of %d rows %q are left in %d blocks, of the whole %d; want %q", rows, left, len(s.Blocks), len(table.Rows), want)
		}
	}
}
