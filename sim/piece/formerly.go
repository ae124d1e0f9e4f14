package piece

import (
	"fmt"
	"strings"
)

// formerly are words of postures that went by another name once, with the one of today and what it means.
var formerly = [...]struct{ was, is, means string }{
	{"sitting", "at ease", "back and head against the back, feet on the floor"},
	{"lying back", "at ease", "back and head against the back, feet on the floor"},
	{"feet flat", "at ease", "back and head against the back, feet on the floor"},
	{"feet up", "feet off", "on the back, knees nearly straight, feet off the floor"},
	{"perched", "rising", "near the front edge, feet drawn back on the floor, about to rise"},
}

// Formerly returns what to write today where a text, a key of a design or the name of a load, holds the former word of
// a posture, and why; "" where it holds none. Words of a key are parted by underscores.
func Formerly(text string) string {
	for _, f := range formerly {
		for _, gap := range []string{" ", "_"} {
			was, now := strings.ReplaceAll(f.was, " ", gap), strings.ReplaceAll(f.is, " ", gap)
			before, after, found := strings.Cut("."+text+".", was)
			if found && !letter(before[len(before)-1]) && !letter(after[0]) {
				return fmt.Sprintf("%q is called %q now: %s", was, now, f.means)
			}
		}
	}
	return ""
}

// letter reports whether a byte goes on with a word.
func letter(b byte) bool { return b == '_' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' }
