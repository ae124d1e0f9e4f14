package words

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// TestPeopleAreSaidAsTheyVary: other people of the same sizes are told where people by sizes vary and only there; those
// of whom a table is are these very people, called by the name that is given.
func TestPeopleAreSaidAsTheyVary(t *testing.T) {
	text := func(s sheet.Sheet) string {
		var b bytes.Buffer
		if err := s.Text(&b, true, false); err != nil {
			t.Fatal(err)
		}
		return strings.Join(strings.Fields(b.String()), " ")
	}
	sized := func(name string) piece.Design {
		d := chair()
		d.Sitters = []piece.Sitter{{Name: name, Mass: 180 * pound,
			Person: person.Given{Sizes: person.Measures{person.Stature: 70 * inch}}}}
		return d
	}
	settee := sized("owner")
	settee.Kind = piece.Settee
	for _, tt := range []struct {
		name         string
		d            piece.Design
		varies, both bool
		sit          string
	}{
		{"plain numbers", chair(), false, false, ""},
		{"by sizes", sized("owner"), true, false, "Sit your owner in a mock-up."},
		{"by name", sized("the reader"), true, false, "Sit the reader in a mock-up."},
		{"two", settee, true, true, "Sit your owner in a mock-up."},
	} {
		s, err := size.Chairs(context.Background(), tt.d, 50, size.StudyOptions{})
		if err != nil {
			t.Fatal(err)
		}
		table, err := size.WhatIf(tt.d)
		if err != nil {
			t.Fatal(err)
		}
		study, whatIf := text(Study(tt.d, s, "")), text(WhatIf(table, "", nil))
		for _, said := range []struct {
			in, words string
			want      bool
		}{
			{study, "with another person of the same sizes.", tt.varies},
			{study, "With each is another person of the same sizes", tt.varies},
			{study, "balance point of who sits", tt.varies},
			{study, "two side by side", tt.both},
			{study, "Who is in it and the floor are as given.", !tt.varies},
			{whatIf, "with these very people.", tt.varies},
			{whatIf, "weight sits so much further back", tt.varies},
			{whatIf, "in a mock-up.", tt.sit != ""},
			{whatIf, tt.sit, true},
		} {
			if strings.Contains(said.in, said.words) != said.want {
				t.Errorf("%s: %q is said %v, want %v in:\n%s", tt.name, said.words, !said.want, said.want, said.in)
			}
		}
	}
}
