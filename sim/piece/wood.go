package piece

import (
	"errors"
	"strings"
	"unicode"

	"rockerwright/body"
)

// FindWood returns the wood of a name. The error is a [*KeyError] of the wood of key, with what may be meant.
func FindWood(name, key string) (body.Wood, error) {
	if name == "" {
		return body.Wood{}, &KeyError{Key: key + ".wood", Reason: "name a wood", Give: "wood"}
	}
	w, err := body.FindWood(name)
	if err == nil {
		return w, nil
	}
	reason := strings.TrimPrefix(err.Error(), "body: ")
	var unknown *body.UnknownWoodError
	if errors.As(err, &unknown) {
		reason += meantWood(name)
	}
	return w, &KeyError{Key: key + ".wood", Reason: reason, Give: "wood"}
}

// meantWood says which woods have the words nearest to those of a name; "" where none is near.
func meantWood(name string) string {
	var known, meant []string
	for _, w := range body.Woods() {
		known = append(known, wordsIn(w.Name)...)
	}
	for _, word := range wordsIn(name) {
		if nearest, found := Suggest(word, known); found {
			meant = append(meant, nearest)
		}
	}
	w, err := body.FindWood(strings.Join(meant, " "))
	var several *body.AmbiguousWoodError
	switch {
	case err == nil:
		return `; the nearest is "` + w.Name + `"`
	case errors.As(err, &several):
		return `; the nearest are "` + strings.Join(several.Candidates, `", "`) + `"`
	}
	return ""
}

func wordsIn(name string) []string {
	return strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !unicode.IsLetter(r) })
}

// Suggest returns the word of those known that was most likely meant by a wrong one:
// the nearest by insertions, deletions, changes and swaps of neighbours, case and
// underscores not counted. found is false where none is nearer than a third of the word.
func Suggest(wrong string, known []string) (nearest string, found bool) {
	folded := func(word string) []rune { return []rune(strings.ReplaceAll(strings.ToLower(word), "_", "")) }
	least := len([]rune(wrong))/3 + 1
	for _, word := range known {
		a, b := folded(wrong), folded(word)
		if max(len(a)-len(b), len(b)-len(a)) >= least {
			continue
		}
		if d := distance(a, b); d < least {
			nearest, least = word, d
		}
	}
	return nearest, nearest != ""
}

// distance returns the Damerau-Levenshtein distance of two words, no letter being
// swapped and changed both (optimal string alignment).
func distance(a, b []rune) int {
	d := make([][]int, len(a)+1) // of the first i letters of a and the first j of b
	for i := range d {
		d[i] = make([]int, len(b)+1)
		for j := range d[i] {
			switch {
			case i == 0 || j == 0:
				d[i][j] = i + j
				continue
			case a[i-1] == b[j-1]:
				d[i][j] = d[i-1][j-1]
			default:
				d[i][j] = 1 + min(d[i-1][j], d[i][j-1], d[i-1][j-1])
			}
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d[i][j] = min(d[i][j], d[i-2][j-2]+1)
			}
		}
	}
	return d[len(a)][len(b)]
}
