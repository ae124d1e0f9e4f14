package piece

import "fmt"

// A KeyError says which entry of a design cannot be used, and why.
type KeyError struct {
	Key     string // "rocker.arcs.2.length", counting from 1; "seat" for a section
	Reason  string
	Example string // a line that would do, as typed in a design file
}

func (e *KeyError) Error() string {
	if e.Example == "" {
		return fmt.Sprintf("%s: %s", e.Key, e.Reason)
	}
	return fmt.Sprintf("%s: %s. For example: %s", e.Key, e.Reason, e.Example)
}
