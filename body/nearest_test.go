package body

import (
	"slices"
	"testing"
)

// Counted by hand.
func TestChanges(t *testing.T) {
	for _, tt := range []struct {
		from, to string
		want     int
	}{
		{"", "", 0},
		{"oak", "oak", 0},
		{"", "oak", 3},
		{"oak", "", 3},
		{"wallnut", "walnut", 1}, // an l left out
		{"elm", "helm", 1},       // an h put in
		{"pine", "pina", 1},      // an a for the e
		{"mapel", "maple", 2},    // two letters replaced
		{"hard", "red", 3},
		{"fräsch", "frasch", 1}, // letters, not bytes
	} {
		if got := changes(tt.from, tt.to); got != tt.want {
			t.Errorf("changes(%q, %q) = %d, want %d", tt.from, tt.to, got, tt.want)
		}
		if got := changes(tt.to, tt.from); got != tt.want {
			t.Errorf("changes(%q, %q) = %d, want %d: it takes as many back", tt.to, tt.from, got, tt.want)
		}
	}
}

func TestNearestWoods(t *testing.T) {
	for _, tt := range []struct {
		asked, want []string
	}{
		{[]string{"teek"}, []string{"Teak"}},
		{[]string{"sugar", "mapel"}, []string{"Maple, sugar"}},
		{[]string{"mahagony"}, []string{"Mahogany, true (Honduras)", "Mahogany, African"}},
		{[]string{"xyz"}, nil},
		{nil, nil},
	} {
		if got := nearestWoods(tt.asked); !slices.Equal(got, tt.want) {
			t.Errorf("nearestWoods(%q) = %q, want %q", tt.asked, got, tt.want)
		}
	}
}
