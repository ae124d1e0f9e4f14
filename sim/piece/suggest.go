package piece

import "strings"

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
