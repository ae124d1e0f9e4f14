package bench

import (
	"fmt"
	"math"
)

// A SizeError reports a measure that nothing can be made of.
type SizeError struct {
	What string
	Got  float64 // SI, rad
	Want string
}

func (e *SizeError) Error() string {
	return fmt.Sprintf("bench: %s of %g: it is %s", e.What, e.Got, e.Want)
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// above returns an error unless the measure is a number more than zero.
func above(what string, size float64) error {
	if size > 0 && finite(size) {
		return nil
	}
	return &SizeError{what, size, "a number more than 0"}
}

// notBelow returns an error unless the measure is a number of zero or more.
func notBelow(what string, size float64) error {
	if size >= 0 && finite(size) {
		return nil
	}
	return &SizeError{what, size, "0 or a number more than 0"}
}
