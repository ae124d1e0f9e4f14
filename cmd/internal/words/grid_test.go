package words

import (
	"slices"
	"testing"
)

// TestHeadsOf: columns are headed by their values, and no two alike.
func TestHeadsOf(t *testing.T) {
	by := func(values ...string) Column {
		return Column{Head: "behind low point " + values[len(values)-1], Values: values,
			By: []string{"low point back to where the back meets the seat"}}
	}
	for _, tt := range []struct {
		columns       []Column
		first, second []string
	}{
		{[]Column{by("8 in"), by("9 in")}, []string{"8 in", "9 in"}, []string{"", ""}},
		{[]Column{by("40 in", "8 in"), by("42 in", "8 in")}, []string{"40 in", "42 in"}, []string{"8 in", "8 in"}},
		{[]Column{{Head: "one.toml"}, {Head: "two.toml"}}, []string{"one.toml", "two.toml"}, []string{"", ""}},
		{[]Column{{Head: "my-long-chair-1.toml"}, {Head: "my-long-chair-2.toml"}}, []string{"…1.toml", "…2.toml"}, []string{"", ""}},
		{[]Column{{Head: "mine.toml"}, {Head: "mine.toml"}}, []string{"1", "2"}, []string{"mine.toml", "mine.toml"}},
	} {
		room := 9
		if len(tt.columns[0].Head) > 15 && tt.columns[0].Values == nil {
			room = 7
		}
		first, second := headsOf(tt.columns, room)
		if !slices.Equal(first, tt.first) || !slices.Equal(second, tt.second) {
			t.Errorf("%+v: %q over %q, want %q over %q", tt.columns, first, second, tt.first, tt.second)
		}
	}
}
