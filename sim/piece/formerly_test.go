package piece

import (
	"slices"
	"testing"
)

// TestFormerly: an old word is told as a word of its own in a text or a key, and nothing else is.
func TestFormerly(t *testing.T) {
	for text, want := range map[string]string{
		"sitting":                   `"sitting" is called "at ease" now: back and head against the back, feet on the floor`,
		"owner, lying back":         `"lying back" is called "at ease" now: back and head against the back, feet on the floor`,
		"sitter.N.lying_back.ahead": `"lying_back" is called "at_ease" now: back and head against the back, feet on the floor`,
		"sitter.2.perched.above":    `"perched" is called "rising" now: near the front edge, feet drawn back on the floor, about to rise`,
		"owner, feet up":            `"feet up" is called "feet off" now: on the back, knees nearly straight, feet off the floor`,
		"sitter.sitting_height":     "", "owner, at ease": "", "feet upper": "", "": "",
	} {
		if got := Formerly(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// TestFormerWordsAreNoneNow: no posture and no key goes by a former word, and each leads to a posture there is.
func TestFormerWordsAreNoneNow(t *testing.T) {
	for _, key := range Keys() {
		if now := Formerly(key); now != "" {
			t.Errorf("%s: %s", key, now)
		}
	}
	posture := Choices()[slices.IndexFunc(Choices(), func(c Choice) bool { return c.Key == "sitter.N.posture" })]
	for _, f := range formerly {
		if posture.Has(f.was) || !posture.Has(f.is) {
			t.Errorf("of %q and %q the posture of a sitter has %v", f.was, f.is, posture.Words)
		}
	}
}
