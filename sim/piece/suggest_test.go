package piece

import (
	"errors"
	"strings"
	"testing"
)

// TestSuggest: which word was meant; letters changed, left out, put in or swapped, counted by hand.
func TestSuggest(t *testing.T) {
	known := []string{"rocker.radius", "rocker.tail", "seat.behind_low_point", "seat"}
	for wrong, want := range map[string]string{
		"rocker.raduis": "rocker.radius", "rocker.Radius": "rocker.radius", "seat.behindlowpoint": "seat.behind_low_point",
		"seet": "seat", "saet": "seat", "zzz": "", "": "",
	} {
		if got, found := Suggest(wrong, known); got != want || found != (want != "") {
			t.Errorf("Suggest(%q) = %q, %v; want %q", wrong, got, found, want)
		}
	}
}

// TestDistance: counted by hand. It takes as many changes back.
func TestDistance(t *testing.T) {
	for _, tt := range []struct {
		from, to string
		want     int
	}{
		{"", "", 0}, {"oak", "oak", 0}, {"", "oak", 3},
		{"wallnut", "walnut", 1}, // an l left out
		{"elm", "helm", 1},       // an h put in
		{"pine", "pina", 1},      // an a for the e
		{"mapel", "maple", 1},    // two neighbours swapped
		{"hard", "red", 3},
		{"fräsch", "frasch", 1}, // letters, not bytes
	} {
		there, back := distance([]rune(tt.from), []rune(tt.to)), distance([]rune(tt.to), []rune(tt.from))
		if there != tt.want || back != tt.want {
			t.Errorf("from %q to %q: %d, back %d; want %d", tt.from, tt.to, there, back, tt.want)
		}
	}
}

// TestMeantWood: what is said of a wood that is misspelled.
func TestMeantWood(t *testing.T) {
	for name, want := range map[string]string{
		"wallnut": `the nearest is "Walnut, black"`, "teek": `the nearest is "Teak"`, "sugar mapel": `the nearest is "Maple, sugar"`,
		"mahagony":   `the nearest are "Mahogany, true (Honduras)", "Mahogany, African"`,
		"hard maple": `the nearest are "Maple, bigleaf", "Maple, red", "Maple, silver", "Maple, sugar"`,
		"xyz":        `no wood is named "xyz"`, "42": `no wood is named "42"`,
	} {
		_, err := FindWood(name, "rocker")
		var wrong *KeyError
		if !errors.As(err, &wrong) || wrong.Key != "rocker.wood" || !strings.HasSuffix(wrong.Reason, want) {
			t.Errorf("%s: %v; want it to end with %s", name, err, want)
		}
	}
}
