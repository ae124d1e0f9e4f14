package scene

import (
	"image/color"
	"strconv"
	"strings"
)

// A Colour is one as SVG writes it, "#rrggbb". The zero Colour draws nothing.
type Colour string

const (
	Ink    Colour = "#000000"
	Soft   Colour = "#6e6e6e"
	Grey   Colour = "#787878"
	Faded  Colour = "#8c8c8c"
	Pale   Colour = "#c8c8c8"
	Faint  Colour = "#e1e1e1"
	White  Colour = "#ffffff"
	Blue   Colour = "#005aa0"
	Orange Colour = "#d55e00"
)

var _ color.Color = Ink

// RGBA returns the colour as [color.Color] has it: all zero of one that draws nothing.
func (c Colour) RGBA() (r, g, b, a uint32) {
	x, err := strconv.ParseUint(strings.TrimPrefix(string(c), "#"), 16, 24)
	if err != nil {
		return 0, 0, 0, 0
	}
	return color.RGBA{uint8(x >> 16), uint8(x >> 8), uint8(x), 255}.RGBA()
}
