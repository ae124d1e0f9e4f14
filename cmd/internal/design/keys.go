package design

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
)

// A key is what a maker types on the command line and reads in messages,
// "sitter.2.centre.x"; a path is where that stands in the file, "sitter[1].centre[0]".

// keyOf returns the key of a path: indexes count from 1, and of a place they are x, y.
func keyOf(path string) string {
	var key strings.Builder
	for {
		name, rest, indexed := strings.Cut(path, "[")
		key.WriteString(name)
		number, behind, closed := strings.Cut(rest, "]")
		n, err := strconv.Atoi(number)
		if !indexed || !closed || err != nil {
			return key.String()
		}
		point := strings.HasPrefix(key.String(), "rocker.points.") // its own index stands there already
		switch place := point || last(name) == "centre" || last(name) == "at"; {
		case place && n == 0:
			key.WriteString(".x")
		case place && n == 1:
			key.WriteString(".y")
		default:
			key.WriteString("." + strconv.Itoa(n+1))
		}
		path = behind
	}
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

// last returns the part of a key behind its last point.
func last(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// find returns the entry of the file with the given key; the number of an only sitter
// or part may be there or not.
func (f *File) find(key string) (locate.Entry, bool) {
	for _, name := range []string{key, without1(key), with1(key)} {
		if i, found := f.places[name]; found {
			return f.entries[i], true
		}
	}
	return locate.Entry{}, false
}

// without1 leaves out the number of a first sitter or part, with1 puts it in.
func without1(key string) string {
	list, rest, _ := strings.Cut(key, ".1")
	if piece.IsList(list) && (rest == "" || rest[0] == '.') {
		return list + rest
	}
	return key
}

func with1(key string) string {
	list, rest, more := strings.Cut(key, ".")
	if !piece.IsList(list) || more && isNumber(strings.Split(rest, ".")[0]) {
		return key
	}
	if !more {
		return list + ".1"
	}
	return list + ".1." + rest
}

// homesOf returns the sections, in brackets, in which a name stands alone.
func homesOf(name string, keys []string) []string {
	var homes []string
	for _, key := range keys {
		section, rest, _ := strings.Cut(strings.Replace(key, ".N.", ".", 1), ".")
		if rest != name {
			continue
		}
		if piece.IsList(section) {
			section = "[" + section + "]"
		}
		homes = append(homes, "["+section+"]")
	}
	return homes
}

// near returns the place of a key, or of the nearest table around it.
func (f *File) near(key string) (locate.Position, bool) {
	for ; key != ""; key = key[:max(0, strings.LastIndexByte(key, '.'))] {
		if e, found := f.find(key); found {
			return e.Key, true
		}
	}
	return locate.Position{}, false
}

// sections are the words that a line or a section of a design begins with; firstSection is the
// index of the first that is a section.
const firstSection = 4

var sections = func() []string {
	words := []string{"title", "kind", "units", "rocks"}
	for _, s := range piece.Sections() {
		words = append(words, s.Name)
	}
	return words
}()

func isSection(word string) bool { return slices.Contains(sections, word) }

// unknown returns the error for a key that no design has; err is what the design said.
func (f *File) unknown(key string, err error) error {
	general := generalKey(key)
	for _, known := range piece.Keys() {
		if known == general {
			return err // known, but there are not so many
		}
	}
	if general == "measured.left" || general == "measured.right" || general == "rocker.rises" {
		return fmt.Errorf("rises are a list, from the nose to the tail. For example: %s = [\"1-3/8\", \"3/8\", 0, \"3/8\", \"1-3/8\"]", last(key))
	}
	if section, doubled := strings.CutSuffix(general, ".N"); doubled && !strings.Contains(section, ".") && isSection(section) {
		return fmt.Errorf("there is one section [%s]: write it in single brackets", section)
	}
	if general == "rocker.points" || general == "rocker.points.N" {
		return fmt.Errorf("points are a list of places, ahead of the low point and over the floor, from the nose to the tail. For example: points = [[16, \"3-1/8\"], [8, \"3/4\"], [0, 0], [-8, \"3/4\"], [-16, \"3-1/8\"]]")
	}
	if strings.HasSuffix(general, ".centre.N") || strings.HasSuffix(general, ".at.N") || general == "rocker.points.N.N" {
		return fmt.Errorf("a place has two numbers, ahead of the low point and over the floor. For example: [1/2, 17]")
	}
	if meant, found := locate.Suggest(general, piece.Keys()); found {
		return fmt.Errorf("there is no such entry; did you mean %s?", strings.ReplaceAll(meant, ".N.", "."))
	}
	section, _, sectioned := strings.Cut(general, ".")
	if homes := homesOf(general, piece.Keys()); !sectioned && len(homes) > 0 {
		return fmt.Errorf("this entry stands under the name of a section in square brackets: %s", strings.Join(homes, " or "))
	}
	var known []string
	for _, k := range piece.Keys() {
		if rest, found := strings.CutPrefix(strings.Replace(k, ".N.", ".", 1), section+"."); found {
			known = append(known, rest)
		}
	}
	if len(known) > 0 {
		return fmt.Errorf("there is no such entry; [%s] has %s", section, strings.Join(known, ", "))
	}
	if meant, found := locate.Suggest(section, sections); found {
		return fmt.Errorf("there is no such section; did you mean %s?", meant)
	}
	return fmt.Errorf("there is no such section; a design has rocker, seat, bed, back, arms, piece, part, body, leg, panel, measured, sitter, people, floor, limits, target and shop")
}

// Label returns what the entry of a key is called, the key itself where there is none.
func (f *File) Label(key string) string {
	if m, _, err := f.Design.Measure(key); err == nil {
		return m.Label
	}
	if c, _, err := f.Design.Choice(key); err == nil {
		return c.Label
	}
	return key
}
