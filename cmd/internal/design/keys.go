package design

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
)

// A key is what a maker types on the command line and reads in messages, "sitter.2.centre.x". A
// short key lacks the number of the first of a section that stands several times.

// element returns the key of a value of a list, counting from 0: of a place they are x and y.
func element(list string, n int) string {
	place := last(list) == "centre" || last(list) == "at" || strings.HasPrefix(list, "rocker.points.")
	if place && n < 2 {
		return list + "." + "xy"[n:n+1]
	}
	return list + "." + strconv.Itoa(n+1)
}

// short returns a key without the number of a first sitter or part.
func short(key string) string {
	list, rest, _ := strings.Cut(key, ".1")
	if piece.IsList(list) && (rest == "" || rest[0] == '.') {
		return list + rest
	}
	return key
}

// generalKey returns a key with N for its numbers, as piece.Keys has them, also where
// the number of an only sitter or part was left out.
func generalKey(key string) string {
	words := strings.Split(key, ".")
	for i, word := range words {
		if isNumber(word) {
			words[i] = "N"
		}
	}
	if list := words[0]; piece.IsList(list) && (len(words) == 1 || words[1] != "N") {
		words = slices.Insert(words, 1, "N")
	}
	return strings.Join(words, ".")
}

func isNumber(word string) bool {
	_, err := strconv.Atoi(word)
	return err == nil
}

// last returns the part of a key behind its last point, and sectionOf all before it.
func last(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

func sectionOf(key string) string { return key[:max(0, strings.LastIndexByte(key, '.'))] }

// find returns the entry of the file with the given key; the number of an only sitter or part may be there or not.
func (f *File) find(key string) (locate.Entry, bool) {
	i, found := f.places[short(key)]
	if !found {
		return locate.Entry{}, false
	}
	return f.entries[i], true
}

func isSection(word string) bool {
	return slices.ContainsFunc(piece.Sections(), func(s piece.Section) bool { return s.Name == word })
}

// unknown returns the error for a key that no design has; err is what the design said.
func unknown(key string, err error) error {
	general := generalKey(key)
	section, _, sectioned := strings.Cut(general, ".")
	switch {
	case slices.Contains(piece.Keys(), general):
		return err // known, but there are not so many
	case general == "measured.left" || general == "measured.right" || general == "rocker.rises":
		return fmt.Errorf("rises are a list, from the nose to the tail. For example: %s = [\"1-3/8\", \"3/8\", 0, "+
			"\"3/8\", \"1-3/8\"]", last(key))
	case general == section+".N" && isSection(section):
		return fmt.Errorf("there is one section [%s]: write it in single brackets", section)
	case general == "rocker.points" || general == "rocker.points.N":
		return errors.New("points are a list of places, ahead of the low point and over the floor, from the nose to " +
			"the tail. For example: points = [[16, \"3-1/8\"], [8, \"3/4\"], [0, 0], [-8, \"3/4\"], " +
			"[-16, \"3-1/8\"]]")
	case strings.HasSuffix(general, ".centre.N") || strings.HasSuffix(general, ".at.N") || general == "rocker.points.N.N":
		return errors.New("a place has two numbers, ahead of the low point and over the floor. For example: [1/2, 17]")
	}
	if now := piece.Formerly(general); now != "" {
		return errors.New(now)
	}
	if meant, found := piece.Suggest(general, piece.Keys()); found {
		return fmt.Errorf("there is no such entry; did you mean %s?", strings.ReplaceAll(meant, ".N.", "."))
	}
	var homes, known []string // the sections that have an entry of that name, and the entries of its section
	for _, k := range piece.Keys() {
		home, rest, _ := strings.Cut(strings.Replace(k, ".N.", ".", 1), ".")
		if home == section && rest != "" {
			known = append(known, rest)
		}
		if rest == general && !sectioned {
			homes = append(homes, sectionHeader(home))
		}
	}
	words := []string{"title", "kind", "units", "rocks"}
	for _, s := range piece.Sections() {
		words = append(words, s.Name)
	}
	meant, found := piece.Suggest(section, words)
	switch {
	case len(homes) > 0:
		return fmt.Errorf("this entry stands under the name of a section in square brackets: %s", strings.Join(homes, " or "))
	case len(known) > 0:
		return fmt.Errorf("there is no such entry; [%s] has %s", section, strings.Join(known, ", "))
	case found:
		return fmt.Errorf("there is no such section; did you mean %s?", meant)
	}
	return errors.New("there is no such section; a design has rocker, seat, bed, back, arms, piece, part, body, leg, " +
		"panel, measured, sitter, people, floor, limits, target and shop")
}

func sectionHeader(section string) string {
	if piece.IsList(section) {
		section = "[" + section + "]"
	}
	return "[" + section + "]"
}

// Label returns what the entry of a key is called, the key itself where there is none.
func (f *File) Label(key string) string {
	s, err := f.slot(key)
	if err != nil {
		return key
	}
	return s.choice.Label + s.measure.Label // one of them
}

// Held returns what stands for an entry, as a maker reads it: what was changed, else what
// is in the file, a text without its quotes; held is false where neither says anything.
func (f *File) Held(key string) (text string, held bool) {
	if value, changed := f.changed[short(key)]; changed {
		return value, true
	}
	i, found := f.places[short(key)]
	if !found {
		return "", false
	}
	if text, is := f.values[i].(string); is {
		return text, true
	}
	return f.entries[i].Raw, true
}
