package body

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
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
		return Wood{}, &UnknownWoodError{Name: name}
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
//	body: no wood is named "wallnut"
type UnknownWoodError struct {
	Name string // as asked for
}

func (e *UnknownWoodError) Error() string { return fmt.Sprintf("body: no wood is named %q", e.Name) }

// oneOf lists two or more names, each in quotes: "a", "b" or "c".
func oneOf(names []string) string {
	quoted := make([]string, len(names))
	for i, name := range names {
		quoted[i] = fmt.Sprintf("%q", name)
	}
	last := len(quoted) - 1
	return strings.Join(quoted[:last], ", ") + " or " + quoted[last]
}
