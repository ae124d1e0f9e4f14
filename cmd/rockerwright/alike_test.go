package main

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// numeral is a number as JSON and CSV write it.
var numeral = regexp.MustCompile(`-?\d+(\.\d+)?([eE][-+]?\d+)?`)

const (
	// lastDigits is how far two long numbers may differ: processors that fuse x·y + z round the last digits
	// otherwise, and what is computed from differences loses some more of the 15.
	lastDigits = 1e-9
	// residue is what is left of a zero by rounding, in the units of the answers (m, kg, s, degrees).
	residue = 1e-12
	// long is from how many digits on a number is a computed one and not a rounded one, which is a word.
	long = 9
)

// unlike returns where two outputs part, or "" where they agree: words by bytes, numbers of
// many digits to [lastDigits] of their size.
func unlike(got, want string) string {
	gotNumbers, wantNumbers := numeral.FindAllString(got, -1), numeral.FindAllString(want, -1)
	gotWords, wantWords := numeral.Split(got, -1), numeral.Split(want, -1)
	for i := range min(len(gotWords), len(wantWords)) {
		if gotWords[i] != wantWords[i] {
			return "after number " + strconv.Itoa(i) + ": " + strconv.Quote(gotWords[i]) + ", want " + strconv.Quote(wantWords[i])
		}
		if i < min(len(gotNumbers), len(wantNumbers)) && !sameNumber(gotNumbers[i], wantNumbers[i]) {
			return gotWords[i] + gotNumbers[i] + ", want " + wantNumbers[i]
		}
	}
	if len(gotWords) != len(wantWords) {
		return strconv.Itoa(len(gotNumbers)) + " numbers, want " + strconv.Itoa(len(wantNumbers))
	}
	return ""
}

func sameNumber(got, want string) bool {
	if got == want {
		return true
	}
	if max(digits(got), digits(want)) < long {
		return false
	}
	a, _ := strconv.ParseFloat(got, 64) // the pattern lets nothing else in
	b, _ := strconv.ParseFloat(want, 64)
	apart := math.Abs(a - b)
	return apart <= residue || apart <= lastDigits*math.Max(math.Abs(a), math.Abs(b))
}

// digits counts the significant digits of a number.
func digits(text string) int {
	mantissa, _, _ := strings.Cut(strings.ToLower(text), "e")
	return len(strings.TrimLeft(strings.NewReplacer("-", "", ".", "").Replace(mantissa), "0"))
}

// TestUnlike: a difference in the last digits is none, and every other is one.
func TestUnlike(t *testing.T) {
	for _, tt := range []struct {
		got, want string
		alike     bool
	}{
		{`"m":0.2771807648699198`, `"m":0.2771807648699399`, true},
		{`"m":0.2771807648699198`, `"m":0.2771807658699399`, false}, // 4e-9 of its size
		{`"x":1.2345678901e-17`, `"x":0`, true},
		{`"x":1.2345678901e-9`, `"x":0`, false},
		{`17 1/2`, `17 3/4`, false},
		{`12.5 lb`, `12.6 lb`, false}, // a rounded number is a word
		{`"a":1.234567890123`, `"b":1.234567890123`, false},
		{`"a":1.234567890123,"b":2`, `"a":1.234567890123`, false},
		{`-1.234567890123`, `1.234567890123`, false},
		{`null`, `1.234567890123`, false},
		{"", "", true},
	} {
		if where := unlike(tt.got, tt.want); (where == "") != tt.alike {
			t.Errorf("unlike(%q, %q) = %q, want alike %v", tt.got, tt.want, where, tt.alike)
		}
	}
}
