package piece

import (
	"fmt"
	"math"
)

// A KeyError says which entry of a design cannot be used, and why; what it would look like is for who reads files.
type KeyError struct {
	Key    string // "rocker.arcs.2.length", counting from 1; "seat" for a section
	Reason string

	Give  string  // the entry that would mend it, beside Key or in it: "wood", or a section: "seat"; "" where none would
	Value float64 // of Give that would do, SI; 0 where none was worked out
	Word  string  // of Give that would do, of a choice; "" where none was worked out
}

func (e *KeyError) Error() string { return fmt.Sprintf("%s: %s", e.Key, e.Reason) }

// A need is an entry of a section that has to be more than zero.
type need struct {
	name string
	size float64
}

// lacking returns an error of the first entry of a section that is needed and not there, nil of none. who begins the
// reason: "a seat needs its".
func lacking(section, who string, needs ...need) error {
	for _, n := range needs {
		if n.size <= 0 {
			return &KeyError{Key: section + "." + n.name, Reason: who + " " + n.name, Give: n.name}
		}
	}
	return nil
}

// whole returns an error of a count that is no whole number.
func whole(key string, count float64) error {
	if count != math.Trunc(count) {
		return &KeyError{Key: key, Reason: "a count is a whole number", Give: lastOf(key)}
	}
	return nil
}

// An alternative is one of several in which a thing may be given.
type alternative struct {
	name string
	is   bool
}

// given returns the names of the ways in which a thing is given.
func given(ways ...alternative) []string {
	var names []string
	for _, w := range ways {
		if w.is {
			names = append(names, w.name)
		}
	}
	return names
}
