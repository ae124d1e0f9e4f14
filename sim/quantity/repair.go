package quantity

import (
	"strconv"
	"strings"
)

// Repair returns what to type in a design file for raw, a value that TOML refused: the same quantity in straight quotes,
// "17-1/2". ok is false where raw does not read as a quantity of any kind.
func Repair(raw string, system System) (typed string, ok bool) {
	text := strings.TrimSpace(raw)
	if i := strings.IndexByte(text, '#'); i >= 0 {
		text = strings.TrimSpace(text[:i])
	}
	for _, try := range candidates(text) {
		for kind := range scales {
			if x, err := Parse(try, Kind(kind), system); err == nil {
				return quotedFor(try, x, Kind(kind), system), true
			}
		}
		if dotted := strings.Replace(try, ",", ".", 1); dotted != try {
			if x, err := Parse(dotted, Length, system); err == nil {
				return quotedFor(dotted, x, Length, system), true
			}
		}
	}
	return "", false
}

// candidates returns readings of a refused text: as it stands, and without its quotes, the last maybe an inch mark.
func candidates(text string) []string {
	const quotes = "\"'“”„‘’«»"
	inner := strings.TrimLeft(text, quotes)
	if inner == text {
		return []string{text}
	}
	list := []string{}
	if r := []rune(inner); len(r) > 0 && strings.ContainsRune(quotes, r[len(r)-1]) {
		list = append(list, strings.TrimSpace(string(r[:len(r)-1]))) // one quote at the end closes the one in front
	}
	return append(list, strings.TrimSpace(inner), strings.TrimSpace(strings.TrimRight(inner, quotes)))
}

// quotedFor returns a quantity that reads as x in straight quotes, foot and inch marks as letters, fractions as digits.
func quotedFor(text string, x float64, kind Kind, system System) string {
	text = typeset.Replace(text)
	for sign, digits := range vulgar {
		before, after, found := strings.Cut(text, sign)
		if found {
			text = strings.TrimSpace(strings.TrimRight(before, " -")+" "+digits) + after
		}
	}
	if kind == Length {
		text = lettered(text)
	}
	if again, err := Parse(text, kind, system); err == nil && again == x {
		return strconv.Quote(text)
	}
	return strconv.Quote(Exact(x, kind))
}

// lettered writes foot and inch marks as letters: 3' 6 becomes 3 ft 6 in.
func lettered(text string) string {
	parts, err := split(text, Metric)
	if err != nil || !strings.ContainsAny(text, `"'″′”“’‘`) {
		return text
	}
	words := strings.NewReplacer("''", " in ", "′′", " in ", "’’", " in ", `"`, " in ", "″", " in ", "”", " in ", "“", " in ",
		"'", " ft ", "′", " ft ", "’", " ft ", "‘", " ft ").Replace(text)
	words = strings.Join(strings.Fields(words), " ")
	if len(parts) == 2 && parts[1].unit == "" {
		words += " in"
	}
	return words
}
