package wire

import (
	"math"

	"rockerwright/validation"
)

// Case returns a case with a known answer, what was computed for it, and whether it holds.
func Case(c validation.Case, got float64, holds bool) Object {
	allowed := c.Tolerance
	if c.Accuracy > 0 {
		allowed = c.Accuracy * math.Abs(c.Want)
	}
	return Object{
		{"group", c.Group}, {"name", c.Name}, {"checks", c.Checks}, {"source", c.Source},
		{"unit", c.Unit}, {"want", c.Want}, {"got", got}, {"allowed", allowed},
		{"why", c.Why}, {"from_memory", c.Memory}, {"holds", holds},
	}
}
