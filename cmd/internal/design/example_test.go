package design

import (
	"strings"
	"testing"

	"rockerwright/sim/quantity"
)

// TestExampleIn: the values by hand, 25.4 mm and 0.45359237 kg, to the millimetre and 0.1 kg.
func TestExampleIn(t *testing.T) {
	for example, want := range map[string]string{
		`depth = "2-1/4"`:                 `depth = 57`,
		`at = -8`:                         `at = -203`,
		`height = "5 ft 4 in"`:            `height = 1626`,
		`[piece] weight = 26`:             `[piece] weight = 11.8`,
		`{radius = 42, length = 16}`:      `{radius = 1067, length = 406}`,
		`centre = [2, 24]`:                `centre = [51, 610]`,
		`rises = ["1-3/8", "3/8", 0]`:     `rises = [35, 10, 0]`,
		`strip = "2.9 mm"`:                `strip = "2.9 mm"`, // worked out for the file
		`wood = "black walnut"`:           `wood = "black walnut"`,
		`rake = 8`:                        `rake = 8`,
		`staves = 9`:                      `staves = 9`,
		`moisture = "8 %"`:                `moisture = "8 %"`,
		`[seat] with front, rear, depth`:  `[seat] with front, rear, depth`,
		`{ name = "a", at = [0, "1/2"] }`: `{ name = "a", at = [0, 13] }`,
	} {
		message := "x: a reason. For example: "
		if got := exampleIn(message+example, quantity.Metric); got != message+want {
			t.Errorf("in a metric file %s becomes %s, want %s", example, strings.TrimPrefix(got, message), want)
		}
		if got := exampleIn(message+example, quantity.Inch); got != message+example {
			t.Errorf("in an inch file %s becomes %s", example, got)
		}
	}
}

// TestMetricCures: what a file in millimetres is told is in millimetres, and what is told can be typed.
func TestMetricCures(t *testing.T) {
	for _, text := range []string{
		"[rocker]\nradius = -1\n", "[rocker]\nradius = 1000\nnose = 400\ntail = \"10 kg\"\n",
		"[seat]\ndepth = \"x\"\n",
	} {
		_, err := Parse("x.toml", "units = \"metric\"\n"+text)
		if err == nil {
			t.Errorf("%q is read", text)
			continue
		}
		if _, example, found := strings.Cut(err.Error(), "For example: "); found &&
			(strings.Contains(example, "in\"") || strings.Contains(example, "/") || strings.Contains(example, " 42") ||
				strings.Contains(example, "= 18")) {
			t.Errorf("%q: %v", text, err)
		}
	}
}
