package readings

import "fmt"

// A ReadingError reports a reading that cannot be, or one that is missing.
type ReadingError struct {
	Reading string // its key in a design file: "front_raised"
	Reason  string
}

func (e *ReadingError) Error() string { return fmt.Sprintf("readings: %s: %s", e.Reading, e.Reason) }

func wrong(reading, reason string) error { return &ReadingError{reading, reason} }
