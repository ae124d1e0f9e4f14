package design

import "fmt"

// most are how many entries of a list are read, far more than any piece has: what a list of that
// length asks of the slowest command takes seconds, not minutes.
var most = []struct {
	path, what string
	most       int
}{
	{"sitter", "people under [[sitter]]", 20},
	{"part", "parts under [[part]]", 200},
	{"leg", "pairs of legs under [[leg]]", 20},
	{"panel", "panels under [[panel]]", 20},
	{"rocker.arcs", "arcs of a rocker", 300},
	{"rocker.rises", "rises of a rocker", 60},
	{"rocker.points", "points of a rocker", 60},
	{"measured.left", "rises of a rocker", 60},
	{"measured.right", "rises of a rocker", 60},
}

// tooMany returns the error of the first entry of a list that is longer than is read.
func (f *File) tooMany() error {
	for _, list := range most {
		if i, found := f.places[keyOf(fmt.Sprintf("%s[%d]", list.path, list.most))]; found {
			return f.wrong(f.entries[i].Key, fmt.Sprintf("%s: more than %d %s are not read", list.path, list.most, list.what))
		}
	}
	return nil
}
