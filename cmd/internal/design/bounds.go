package design

import (
	"fmt"
	"strings"

	"rockerwright/sim/piece"
)

// tooMany returns the error of the first entry of a list that is longer than is read.
func (f *File) tooMany() error {
	for _, list := range piece.Lists() {
		if i, found := f.places[keyOf(fmt.Sprintf("%s[%d]", list.Name, list.Most))]; found {
			what := list.What
			if !strings.Contains(list.Name, ".") {
				what += " under [[" + list.Name + "]]"
			}
			return f.wrong(f.entries[i].Key, fmt.Sprintf("%s: more than %d %s are not read", list.Name, list.Most, what))
		}
	}
	return nil
}
