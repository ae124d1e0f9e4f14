package body

import "unicode/utf8"

// nearestWoods returns the names of the woods whose words are spelt most like those
// asked for, all that tie, in the order of the table; none if no word is like any.
// So "hard maple" has every maple near it, and none before the others.
func nearestWoods(asked []string) []string {
	least := 0 // letters to change, at first every letter there is
	for _, word := range asked {
		least += utf8.RuneCountInString(word)
	}
	var nearest []string
	for _, w := range woods() {
		own, changes := words(w.Name), 0
		for _, word := range asked {
			changes += changesToAny(word, own)
		}
		switch {
		case changes < least:
			least, nearest = changes, []string{w.Name}
		case changes == least && nearest != nil:
			nearest = append(nearest, w.Name)
		}
	}
	return nearest
}

// changesToAny returns the fewest changes that turn word into one of the others. If
// that takes more than half its letters the two have nothing in common, and it
// returns their whole number.
func changesToAny(word string, others []string) int {
	letters := utf8.RuneCountInString(word)
	fewest := letters
	for _, other := range others {
		if n := changes(word, other); 2*n <= letters {
			fewest = min(fewest, n)
		}
	}
	return fewest
}

// changes returns how many letters must be put in, left out or replaced to turn one
// word into the other: the edit distance, row by row over the prefixes of both.
func changes(from, to string) int {
	target := []rune(to)
	row := make([]int, len(target)+1) // from nothing to each prefix of to
	for j := range row {
		row[j] = j
	}
	for _, letter := range from {
		diagonal := row[0]
		row[0]++
		for j, wanted := range target {
			replaced := diagonal
			if letter != wanted {
				replaced++
			}
			diagonal = row[j+1]
			row[j+1] = min(replaced, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(target)]
}
