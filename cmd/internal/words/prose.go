package words

import (
	"fmt"
	"rockerwright/cmd/internal/sheet"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// brief returns a name as a sentence or a table has it: cut short, and plain.
func brief(name string) string { return sheet.Cut(sheet.Plain(name), 40) }

// upperFirst returns a text with its first letter as a capital, whatever the script.
func upperFirst(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 || first == utf8.RuneError {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}

// list joins words: "a, b and c".
func list(words []string) string {
	switch n := len(words); n {
	case 0:
		return ""
	case 1:
		return words[0]
	default:
		return fmt.Sprintf("%s and %s", strings.Join(words[:n-1], ", "), words[n-1])
	}
}

// counted writes how many there are of a thing, whose name takes an s where there is not one.
func counted(n int, name string) string {
	if n == 1 {
		return "1 " + name
	}
	return strconv.Itoa(n) + " " + name + "s"
}

// thousands writes a whole number with commas.
func thousands(n int) string {
	text := fmt.Sprint(n)
	for at := len(text) - 3; at > 0; at -= 3 {
		text = text[:at] + "," + text[at:]
	}
	return text
}

// percent writes a share.
func percent(x float64) string { return fmt.Sprintf("%.0f %%", x*100) }

// pick returns one of two texts.
func pick(first bool, one, other string) string {
	if first {
		return one
	}
	return other
}

// itself returns a text.
func itself(text string) string { return text }

// timed writes the time of a rock to a hundredth of a second.
func timed(x float64) string {
	if !(x > 0) {
		return "no rest"
	}
	return fmt.Sprintf("%.2f s", x)
}
