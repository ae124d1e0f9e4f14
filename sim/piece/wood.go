package piece

import (
	"errors"
	"strings"
	"unicode"

	"rockerwright/body"
)

// FindWood returns the wood of a name. The error is a [*KeyError] of the wood of key, which says
// what may have been meant.
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
