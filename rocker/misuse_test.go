package rocker

import (
	"fmt"
	"math"
	"strings"
	"testing"
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

// TestMisuse holds that what a program cannot mean is told in words of this package, and what
// the zero Profile answers.
func TestMisuse(t *testing.T) {
	var zero Profile
	if zero.Bearings() != 0 || zero.Length() != 0 || zero.Drawn() != nil {
		t.Error("the zero Profile has an edge")
	}
	for _, call := range []func(){
		func() { zero.Find(0) }, func() { zero.Support(0) }, func() { zero.Contact(0) }, func() { zero.Perimeter() },
		func() { zero.Nose() }, func() { zero.Tail() }, func() { zero.Rise(0) }, func() { zero.At(0) }, func() { zero.Outline(0.01) },
	} {
		if got := panics(call); !strings.HasPrefix(got, "rocker: the zero Profile has no edge") {
			t.Errorf("%q", got)
		}
	}
	edge := Single(1, 0.4, 0.5)
	for words, call := range map[string]func(){
		"rocker: an outline leaves the curve by more than 0 m; 0 is not": func() { edge.Outline(0) },
		"rocker: span 0 (radius -1 m, length 1 m)":                       func() { Single(-1, 0.5, 0.5) },
		"rocker: span 0 (radius NaN m, length 1 m)":                      func() { Single(math.NaN(), 0.5, 0.5) },
	} {
		if got := panics(call); !strings.HasPrefix(got, words) {
			t.Errorf("%q, want %q", got, words)
		}
	}
	if _, err := edge.Strip(math.NaN(), Concentric); err == nil {
		t.Error("a strip as deep as no number has a shape")
	}
}
