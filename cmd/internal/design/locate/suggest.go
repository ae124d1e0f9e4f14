package locate

import "strings"

// Suggest returns the word of those known that was most likely meant by a wrong one:
// the nearest by insertions, deletions, changes and swaps of neighbours, case and
// underscores not counted. found is false where none is nearer than a third of the word.
func Suggest(wrong string, known []string) (nearest string, found bool) {
	least := len([]rune(wrong))/3 + 1
	for _, word := range known {
		if d := distance(folded(wrong), folded(word)); d < least {
			nearest, least = word, d
		}
	}
	return nearest, nearest != ""
}

// folded returns a word without what does not count.
func folded(word string) []rune {
	return []rune(strings.ReplaceAll(strings.ToLower(word), "_", ""))
}

// distance returns the Damerau-Levenshtein distance of two words, no letter being
// swapped and changed both (optimal string alignment).
func distance(a, b []rune) int {
	before, last := make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row := make([]int, len(b)+1)
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := 1
			if a[i-1] == b[j-1] {
				change = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+change)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last = last, row
	}
	return last[len(b)]
}
