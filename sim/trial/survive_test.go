package trial

import "testing"

// TestShoveSaysWhatEndsIt: pushed once more with the least shove, it ends as is said, in each way there is.
func TestShoveSaysWhatEndsIt(t *testing.T) {
	seen := map[string]bool{}
	for _, friction := range []float64{0, 0.05, 0.2} {
		d := sized()
		d.Floor.Friction = friction
		r := rocked(t, d, RockOptions{})
		for _, s := range r.Survivals {
			if s.ShoveNone != (s.EndedBy == "") {
				t.Errorf("%s: none %v, ended by %q", s.Load, s.ShoveNone, s.EndedBy)
				continue
			}
			again := rocked(t, d, RockOptions{Load: s.Load, Force: s.Shove, Duration: 10})
			if got := again.Trace.EndedBy(); got != s.EndedBy {
				t.Errorf("friction %v, %s: ended by %q, pushed again with %v N by %q", friction, s.Load, s.EndedBy, s.Shove, got)
			}
			seen[s.EndedBy] = true
		}
	}
	if len(seen) < 3 {
		t.Errorf("only %v were seen", seen)
	}
}
