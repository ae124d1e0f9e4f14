package bench

import "testing"

// TestMessages holds what a maker reads.
func TestMessages(t *testing.T) {
	for _, tt := range []struct {
		err  error
		want string
	}{
		{above("a saw cut", -1), "bench: a saw cut of -1: it is a number more than 0"},
		{notBelow("a saw cut", -1), "bench: a saw cut of -1: it is 0 or a number more than 0"},
		{&MissError{0.02, "ahead of the nose"}, "bench: the leg misses the rocker by 0.02 m, ahead of the nose"},
		{&OutlineError{-1, "the outline crosses itself"}, "bench: rocker: the outline crosses itself"},
	} {
		if tt.err.Error() != tt.want {
			t.Errorf("%q, want %q", tt.err, tt.want)
		}
	}
}
