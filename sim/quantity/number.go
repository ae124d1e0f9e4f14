package quantity

import (
	"cmp"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// vulgar are the fractions that have a sign of their own.
var vulgar = map[string]string{
	"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
	"⅓": "1/3", "⅔": "2/3", "⅙": "1/6", "⅚": "5/6", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5",
}

var (
	fraction = regexp.MustCompile(`^([+-]?)(?:(\d{1,9})(?: +| *- *))?(\d{1,9}) ?/ ?(\d{1,9})`)
	signed   = regexp.MustCompile(`^([+-]?)(\d{0,9}) *(?:-? *)([½¼¾⅛⅜⅝⅞⅓⅔⅙⅚⅕⅖⅗⅘])`)
	decimal  = regexp.MustCompile(`^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`)
	comma    = regexp.MustCompile(`^([+-]?\d+),(\d+)`)
)

// readNumber takes a number off the front of a text.
func readNumber(text string, system System) (x float64, rest string, err error) {
	parts := fraction.FindStringSubmatch(text)
	if m := signed.FindStringSubmatch(text); m != nil {
		above, below, _ := strings.Cut(vulgar[m[3]], "/")
		parts = append(m[:3], above, below)
	}
	if parts != nil {
		x, err = mixed(parts[1], cmp.Or(parts[2], "0"), parts[3], parts[4])
		return x, text[len(parts[0]):], err
	}
	if m := comma.FindStringSubmatch(text); m != nil {
		if system != Metric {
			return 0, "", fmt.Errorf("; in inches the decimal sign is a point (%s.%s)", m[1], m[2])
		}
		x, err = strconv.ParseFloat(m[1]+"."+m[2], 64)
		return x, text[len(m[0]):], err
	}
	m := decimal.FindString(text)
	if m == "" {
		return 0, "", fmt.Errorf("")
	}
	x, err = strconv.ParseFloat(m, 64)
	if err != nil {
		return 0, "", fmt.Errorf(" of a size that can be built")
	}
	return x, text[len(m):], nil
}

// mixed returns the number of a whole and a fraction. Its parts are digits only.
func mixed(sign, whole, above, below string) (float64, error) {
	var n [3]float64
	for i, digits := range []string{whole, above, below} {
		n[i], _ = strconv.ParseFloat(digits, 64)
	}
	switch {
	case n[2] == 0:
		return 0, fmt.Errorf(", and nothing can be parted into 0")
	case n[0] > 0 && n[1] >= n[2]:
		return 0, fmt.Errorf(", and a fraction behind a whole number is less than one (%s)", carried(n))
	}
	x := n[0] + n[1]/n[2]
	if sign == "-" {
		x = -x
	}
	return x, nil
}

// carried writes a whole number with a fraction of one or more as it is meant.
func carried(n [3]float64) string {
	whole, above := n[0]+math.Floor(n[1]/n[2]), math.Mod(n[1], n[2])
	if above == 0 {
		return strconv.FormatFloat(whole, 'f', -1, 64)
	}
	return fmt.Sprintf("%.0f-%.0f/%.0f", whole, above, n[2])
}
