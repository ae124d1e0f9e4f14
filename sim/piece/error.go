package piece

import "fmt"

// A KeyError says which entry of a design cannot be used, and why. What the entry would look like in a
// file is for who reads files.
type KeyError struct {
	Key    string // "rocker.arcs.2.length", counting from 1; "seat" for a section
	Reason string

	Give  string  // the entry that would mend it, beside Key or in it: "wood", or a section: "seat"; "" where none would
	Value float64 // of Give that would do, SI; 0 where none was worked out
	Word  string  // of Give that would do, of a choice; "" where none was worked out
}

func (e *KeyError) Error() string { return fmt.Sprintf("%s: %s", e.Key, e.Reason) }
