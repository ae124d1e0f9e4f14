package design

import (
	"fmt"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/quantity"
)

// An Error is a mistake in a design file or in a change to it, with its place. Line
// and Column count from 1; they are zero where the mistake has no place in a file.
type Error struct {
	File         string
	Line, Column int
	Message      string
}

// How much of what a maker typed is shown in a message, letters.
const (
	shownName    = 60
	shownPath    = 200
	shownMessage = 4000 // a sentence, and at most all entries of a section
)

func (e *Error) Error() string {
	file, message := quantity.Shown(e.File, shownPath), quantity.Shown(e.Message, shownMessage)
	if e.Line == 0 {
		return fmt.Sprintf("%s: %s", file, message)
	}
	return fmt.Sprintf("%s:%d:%d: %s", file, e.Line, e.Column, message)
}

// wrong returns the error of a place in the file.
func (f *File) wrong(at locate.Position, message string) *Error {
	return &Error{File: f.Name, Line: at.Line, Column: at.Column, Message: exampleIn(message, f.Design.Units)}
}
