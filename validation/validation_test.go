package validation

import (
	"math"
	"testing"
)

// TestCases asserts every case.
func TestCases(t *testing.T) {
	for _, c := range Cases() {
		t.Run(c.Group+"/"+c.Name, func(t *testing.T) {
			if c.Checks == "" || c.Source == "" || c.Why == "" || c.Accuracy <= 0 && c.Tolerance <= 0 || math.IsNaN(c.Want) {
				t.Errorf("the case does not say all that it must: %+v", c)
			}
			if got, err := c.Check(); err != nil {
				t.Errorf("%v (%s)", err, c.Source)
			} else {
				t.Logf("got %v %s, want %v", got, c.Unit, c.Want)
			}
		})
	}
}

// TestACaseCanFail holds that a wrong answer is not let through.
func TestACaseCanFail(t *testing.T) {
	for _, got := range []float64{1 + 2e-12, math.NaN(), -1} {
		c := Case{Want: 1, Accuracy: 1e-12, Compute: func() (float64, error) { return got, nil }}
		if _, err := c.Check(); err == nil {
			t.Errorf("%v passes for 1", got)
		}
	}
}
