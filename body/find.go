package body

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// FindWood returns the one wood of the table whose name has every word of the given
// one, in any order and case: "white ash", "Ash, white" and, as there is but one,
// "ash". Hyphens and brackets part words. If more than one wood has them the error
// is an [*AmbiguousWoodError], if none has, or no word is given, an
// [*UnknownWoodError].
func FindWood(name string) (Wood, error) {
	asked := words(name)
	if len(asked) == 0 {
		return Wood{}, &UnknownWoodError{Name: name}
	}
	var found []Wood
	for _, w := range woods() {
		own := words(w.Name)
		if !slices.ContainsFunc(asked, func(word string) bool { return !slices.Contains(own, word) }) {
			found = append(found, w)
		}
	}
	switch len(found) {
	case 0:
		return Wood{}, &UnknownWoodError{Name: name, Nearest: nearestWoods(asked)}
	case 1:
		return found[0], nil
	}
	candidates := make([]string, len(found))
	for i, w := range found {
		candidates[i] = w.Name
	}
	return Wood{}, &AmbiguousWoodError{Name: name, Candidates: candidates}
}

// words returns the words of a wood's name in lower case, in their order.
func words(name string) []string {
	return strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !unicode.IsLetter(r) })
}

// An AmbiguousWoodError reports a name that fits more than one wood:
//
//	body: "mahogany" may be "Mahogany, true (Honduras)" or "Mahogany, African"
type AmbiguousWoodError struct {
	Name       string   // as asked for
	Candidates []string // two or more names of woods, in the order of the table
}

func (e *AmbiguousWoodError) Error() string {
	return fmt.Sprintf("body: %q may be %s", e.Name, oneOf(e.Candidates))
}

// An UnknownWoodError reports a name that fits no wood:
//
//	body: no wood is named "wallnut"; the nearest is "Walnut, black"
type UnknownWoodError struct {
	Name    string   // as asked for
	Nearest []string // the woods spelt most like it, in the order of the table; empty if none is like it
}

func (e *UnknownWoodError) Error() string {
	if len(e.Nearest) == 0 {
		return fmt.Sprintf("body: no wood is named %q", e.Name)
	}
	return fmt.Sprintf("body: no wood is named %q; the nearest is %s", e.Name, oneOf(e.Nearest))
}

// oneOf lists one or more names, each in quotes: "a", "b" or "c".
func oneOf(names []string) string {
	quoted := make([]string, len(names))
	for i, name := range names {
		quoted[i] = fmt.Sprintf("%q", name)
	}
	last := len(quoted) - 1
	if last == 0 {
		return quoted[0]
	}
	return strings.Join(quoted[:last], ", ") + " or " + quoted[last]
}

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
