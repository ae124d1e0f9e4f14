package plots

import (
	"image/color"
	"slices"

	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// A line is how one load is drawn: hues that the colour-blind tell apart (the palette
// of Okabe and Ito, 2008), of different lightness, each with a dash of its own.
type line struct {
	colour color.RGBA
	dash   []vg.Length
	width  vg.Length
}

func rgb(r, g, b uint8) color.RGBA { return color.RGBA{r, g, b, 255} }

var (
	ink  = rgb(0, 0, 0)
	soft = rgb(110, 110, 110)
	blue = rgb(0, 90, 160)
	pale = rgb(200, 200, 200)
)

// lineOf returns the line of the i-th load; after eight they begin again.
func lineOf(i int) line {
	lines := [...]line{
		{soft, nil, 1.0},
		{rgb(0, 0, 0), nil, 1.6},
		{blue, []vg.Length{7, 3}, 1.6},
		{rgb(213, 94, 0), []vg.Length{2, 2}, 1.6},
		{rgb(0, 130, 100), nil, 1.1},
		{rgb(170, 90, 140), []vg.Length{7, 2, 2, 2}, 1.3},
		{rgb(150, 100, 0), []vg.Length{1, 2}, 1.3},
		{rgb(60, 160, 220), []vg.Length{4, 2}, 1.3},
	}
	return lines[i%len(lines)]
}

// typeface is the one face of all pictures; size in points.
func typeface(size vg.Length) font.Font {
	return font.Font{Typeface: "Liberation", Variant: "Sans", Size: size}
}

// cut returns a text of at most n characters, without what a page cannot show.
func cut(text string, n int) string {
	kept := slices.DeleteFunc([]rune(text), func(r rune) bool {
		return r < ' ' || r == 0x7f || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069
	})
	if len(kept) > n {
		kept = append(kept[:n-1], '…')
	}
	return string(kept)
}
