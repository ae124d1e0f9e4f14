package trial

import (
	"math"
	"testing"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// TestSeating holds the lever arms of the tests by statics: held just under its slow force
// the piece has a rest, pushed a little more for five seconds it goes over.
func TestSeating(t *testing.T) {
	d := sized()
	r, err := check.Check(d)
	tests := seating(r)
	if err != nil || len(tests) != 4 {
		t.Fatal(err, tests)
	}
	for _, s := range tests {
		if s.Confidence == "" || s.Source == "" || !(s.Tips > 0) {
			t.Errorf("%+v", s)
		}
		if !math.IsNaN(s.Force) && math.Abs(s.Force) < 0.5*s.Tips && s.Outcome != sim.Rocks {
			t.Errorf("%s: %v under half of the force that tips it", s.Name, s.Outcome)
		}
	}
}

// TestNoChildIsTried: no child's chair is put under a grown-up's weight.
func TestNoChildIsTried(t *testing.T) {
	d := sized()
	d.Sitters = []piece.Sitter{{Name: "our child", Person: person.Given{Age: 5}}}
	child, err := check.Check(d)
	if tried := seating(child); err != nil || len(tried) != 0 || !child.ForAChild() {
		t.Errorf("a child's chair is tried with a grown-up's 600 N: %v, %+v", err, tried)
	}
}
