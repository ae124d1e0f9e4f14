package design

import "fmt"

// An Error is a mistake in a design file or in a change to it, with its place. Line
// and Column count from 1; they are zero where the mistake has no place in a file.
type Error struct {
	File         string
	Line, Column int
	Message      string
}

func (e *Error) Error() string {
	if e.Line == 0 {
		return fmt.Sprintf("%s: %s", e.File, e.Message)
	}
	return fmt.Sprintf("%s:%d:%d: %s", e.File, e.Line, e.Column, e.Message)
}
