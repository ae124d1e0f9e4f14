package design

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
)

// A key is what a maker types on the command line and reads in messages,
// "sitter.2.centre.x"; a path is where that stands in the file, "sitter[1].centre[0]".

var index = regexp.MustCompile(`\[(\d+)\]`)

// keyOf returns the key of a path.
func keyOf(path string) string {
	for _, pair := range []string{"centre", "at"} {
		for i, axis := range []string{"x", "y"} {
			path = strings.Replace(path, fmt.Sprintf("%s[%d]", pair, i), pair+"."+axis, 1)
		}
	}
	return index.ReplaceAllStringFunc(path, func(found string) string {
		n, err := strconv.Atoi(found[1 : len(found)-1])
		if err != nil {
			return found // too large to count; no design has it
		}
		return "." + strconv.Itoa(n+1)
	})
}

var number = regexp.MustCompile(`\.\d+(\.|$)`)

// generalKey returns a key with N for its numbers, as piece.Keys has them.
func generalKey(key string) string {
	key = number.ReplaceAllString(key, ".N$1")
	for _, list := range []string{"sitter", "part"} {
		if rest, found := strings.CutPrefix(key, list+"."); found && !strings.HasPrefix(rest, "N") {
			key = list + ".N." + rest
		}
		if key == list {
			key = list + ".N"
		}
	}
	return key
}

// last returns the part of a key behind its last point.
func last(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// find returns the entry of the file with the given key; the number of an only sitter
// or part may be there or not.
func (f *File) find(key string) (locate.Entry, bool) {
	for _, e := range f.entries {
		if k := keyOf(e.Path); k == key || generalKey(k) == generalKey(key) && (strings.Contains(k, ".1.") || strings.Contains(key, ".1.")) && !sameNumbered(k, key) {
			return e, true
		}
	}
	return locate.Entry{}, false
}

// sameNumbered reports whether both keys carry a number, so that they must agree in it.
func sameNumbered(a, b string) bool { return number.MatchString(a) && number.MatchString(b) }

// near returns the place of a key, or of the nearest table around it.
func (f *File) near(key string) (locate.Position, bool) {
	for ; key != ""; key = key[:max(0, strings.LastIndexByte(key, '.'))] {
		if e, found := f.find(key); found {
			return e.Key, true
		}
	}
	return locate.Position{}, false
}

// unknown returns the error for a key that no design has; err is what the design said.
func (f *File) unknown(key string, err error) error {
	general := generalKey(key)
	for _, known := range piece.Keys() {
		if known == general {
			return err // known, but there are not so many
		}
	}
	if strings.HasSuffix(general, ".centre.N") || strings.HasSuffix(general, ".at.N") {
		return fmt.Errorf("a place has two numbers, ahead of the low point and over the floor. For example: [1/2, 17]")
	}
	if meant, found := locate.Suggest(general, piece.Keys()); found {
		return fmt.Errorf("there is no such entry; did you mean %s?", strings.ReplaceAll(meant, ".N.", "."))
	}
	section, _, _ := strings.Cut(general, ".")
	var known []string
	for _, k := range piece.Keys() {
		if rest, found := strings.CutPrefix(strings.Replace(k, ".N.", ".", 1), section+"."); found {
			known = append(known, rest)
		}
	}
	if len(known) > 0 {
		return fmt.Errorf("there is no such entry; [%s] has %s", section, strings.Join(known, ", "))
	}
	return fmt.Errorf("there is no such section; a design has rocker, seat, back, arms, piece, part, body, sitter, floor and limits")
}
