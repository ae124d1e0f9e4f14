package body

import (
	"errors"
	"slices"
	"strings"
	"testing"
)

func TestFindWood(t *testing.T) {
	for asked, want := range map[string]string{
		"white ash":          "Ash, white",
		"Ash, white":         "Ash, white",
		"ash white":          "Ash, white",
		"  ASH ":             "Ash, white",
		"walnut":             "Walnut, black",
		"Black Walnut":       "Walnut, black",
		"sugar maple":        "Maple, sugar",
		"red oak":            "Oak, northern red",
		"poplar":             "Yellow-poplar",
		"yellow poplar":      "Yellow-poplar",
		"Douglas fir":        "Douglas-fir, coast",
		"honduras mahogany":  "Mahogany, true (Honduras)",
		"jatoba":             "Courbaril (jatoba)",
		"eastern white pine": "Pine, eastern white",
		"butternut":          "Butternut",
	} {
		if got, err := FindWood(asked); err != nil || got.Name != want {
			t.Errorf("FindWood(%q) = %q, %v; want %q", asked, got.Name, err, want)
		}
	}
}

func TestFindWoodByItsOwnName(t *testing.T) {
	for _, w := range woods() {
		if got, err := FindWood(strings.ToUpper(w.Name)); err != nil || got != w {
			t.Errorf("FindWood(%q) = %+v, %v; want the wood itself", strings.ToUpper(w.Name), got, err)
		}
	}
}

func TestFindWoodAmbiguous(t *testing.T) {
	_, err := FindWood("Maple")
	var ambiguous *AmbiguousWoodError
	if !errors.As(err, &ambiguous) || ambiguous.Name != "Maple" ||
		!slices.Equal(ambiguous.Candidates, []string{"Maple, bigleaf", "Maple, red", "Maple, silver", "Maple, sugar"}) {
		t.Errorf("FindWood(Maple): %v, want the four maples", err)
	}
}

func TestFindWoodErrors(t *testing.T) {
	for asked, want := range map[string]string{
		"mahogany": `body: "mahogany" may be "Mahogany, true (Honduras)" or "Mahogany, African"`,
		"Maple":    `body: "Maple" may be "Maple, bigleaf", "Maple, red", "Maple, silver" or "Maple, sugar"`,
		"wallnut":  `body: no wood is named "wallnut"; the nearest is "Walnut, black"`,
		"hard maple": `body: no wood is named "hard maple"; the nearest is ` +
			`"Maple, bigleaf", "Maple, red", "Maple, silver" or "Maple, sugar"`,
		"xyz": `body: no wood is named "xyz"`,
		" ,":  `body: no wood is named " ,"`,
	} {
		if _, err := FindWood(asked); err == nil || err.Error() != want {
			t.Errorf("FindWood(%q): %v\nwant %s", asked, err, want)
		}
	}
}

// Whatever is asked: a wood that has every word, or an error that says why not.
func FuzzFindWood(f *testing.F) {
	for _, name := range []string{"white ash", "Ash, white", "maple", "wallnut", "", "ÄSCHE", "\xff oak", "red red red"} {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, name string) {
		w, err := FindWood(name)
		var ambiguous *AmbiguousWoodError
		var unknown *UnknownWoodError
		switch {
		case err == nil:
			for _, word := range words(name) {
				if !slices.Contains(words(w.Name), word) {
					t.Errorf("FindWood(%q) = %q, which lacks %q", name, w.Name, word)
				}
			}
		case errors.As(err, &ambiguous):
			if ambiguous.Name != name || len(ambiguous.Candidates) < 2 {
				t.Errorf("FindWood(%q): %+v, want two candidates or more", name, ambiguous)
			}
		case errors.As(err, &unknown):
			if unknown.Name != name || !strings.Contains(err.Error(), "no wood is named") {
				t.Errorf("FindWood(%q): %v", name, err)
			}
		default:
			t.Errorf("FindWood(%q): an error of no kind: %v", name, err)
		}
	})
}
