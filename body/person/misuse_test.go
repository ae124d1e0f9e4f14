package person

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// panics returns what a call panics with, "" where it does not.
func panics(call func()) (words string) {
	defer func() {
		if said := recover(); said != nil {
			words = fmt.Sprint(said)
		}
	}()
	call()
	return ""
}

// TestMisuse holds that what a program cannot mean is told in words of this package.
func TestMisuse(t *testing.T) {
	var zero Person
	for words, calls := range map[string][]func(){
		"person: nobody has the age": {
			func() { New(Given{Age: -1}) }, func() { New(Given{Age: math.NaN()}) }, func() { New(Given{Percentile: 100}) },
			func() { New(Given{Percentile: math.NaN()}) }, func() { New(Given{Sex: 3}) },
		},
		"person: the zero Person has no limbs": {func() { zero.Pose(Seat{}, AtEase) }, func() { zero.Standing(r2.Vec{}) }},
		"person: no infant weighs 0 kg":        {func() { Capsule(0, 0.5) }},
		"person: no infant weighs 4 kg and is": {func() { Capsule(4, -0.5) }, func() { Capsule(4, math.NaN()) }},
		"person: no infant weighs NaN kg":      {func() { NewInfant(Either, 0, 101) }},
	} {
		for _, call := range calls {
			if got := panics(call); !strings.HasPrefix(got, words) {
				t.Errorf("%q, want %q", got, words)
			}
		}
	}
}
