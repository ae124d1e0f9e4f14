package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Exact writes a quantity in its SI unit with the fewest digits that [Parse] reads bit for bit: "0.4445 m".
func Exact(x float64, kind Kind) string {
	return strings.TrimSpace(strconv.FormatFloat(x, 'g', -1, 64) + " " + siName(kind))
}

// siName returns the name of a kind's SI unit.
func siName(kind Kind) string {
	if kind == Force || kind == Moment || kind == Damping {
		return scales[kind].shop[Metric] // its capital letter stands there
	}
	return scales[kind].units[0].names[0]
}

// Shop writes a quantity as a maker reads it, without its unit: inches in sixteenths, whole millimetres, angles in half
// degrees, pounds of force in quarters, under 2 lb in tenths, seconds in tenths. Not a number is "–".
func Shop(x float64, kind Kind, system System) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	value := x / One(kind, system)
	parts := shopParts(value, kind, system)
	switch {
	case kind == Time:
		return strconv.FormatFloat(math.Abs(math.Round(value*parts)/parts), 'f', 1, 64)
	case system == Inch && (kind == Length || kind == Angle || kind == Mass || kind == Force) && parts != 10 && parts != 1:
		return mixedNumber(value, int64(parts))
	case parts == 2:
		return Decimal(math.Round(value*2)/2, 1)
	}
	return Decimal(value, int(math.Round(math.Log10(parts))))
}

// shopParts returns into how many parts of its unit a value is read in the shop.
func shopParts(value float64, kind Kind, system System) float64 {
	large := math.Abs(value) >= 10
	switch {
	case kind == Length && system == Inch:
		return 16
	case kind == Angle:
		return 2
	case kind == Length, kind == Density, large && (kind == Mass && system == Inch || kind == Force && system == Metric):
		return 1
	case kind == Force && system == Inch && math.Abs(value) < 1.95: // which reads as 2
		return 10
	case (kind == Mass || kind == Force) && system == Inch:
		return 4
	case kind == Ratio, kind == Gravity, kind == Inertia, kind == Count:
		return 100
	}
	return 10
}

// Reads returns between which two numbers all read as x does, as [Shop] shows it.
func Reads(x float64, kind Kind, system System) (least, most float64) {
	one := One(kind, system)
	parts := shopParts(x/one, kind, system)
	read := math.Round(x / one * parts)
	return (read - 0.5) / parts * one, (read + 0.5) / parts * one
}

// Fine writes a quantity without its unit to a thousandth, where the shop's step would hide a difference.
func Fine(x float64, kind Kind, system System) string { return Decimal(x/One(kind, system), 3) }

// Tenths writes a quantity to a tenth of its unit, without it.
func Tenths(x float64, kind Kind, system System) string { return Decimal(x/One(kind, system), 1) }

// Down writes the largest reading that is not above a quantity, finer than the shop's: thirty-seconds of an inch, half
// millimetres, quarters of a degree; without its unit.
func Down(x float64, kind Kind, system System) string {
	value := x / One(kind, system) * (1 + 1e-12)
	switch {
	case kind == Length && system == Inch:
		return mixedNumber(math.Floor(value*32)/32, 32)
	case kind == Length:
		return Decimal(math.Floor(value*2)/2, 1)
	case kind == Angle:
		return mixedNumber(math.Floor(value*4)/4, 4)
	}
	return Decimal(math.Floor(value*10)/10, 1)
}

// Compared writes a length as two rockers are compared: 1/32 in or a tenth of a millimetre, without its unit.
func Compared(x float64, system System) string {
	if system == Inch {
		return mixedNumber(x/In, 32)
	}
	return Decimal(x*1e3, 1)
}

// NextLength returns the least length above x on the shop's scale, 1/16 in or whole mm, as it is read when typed, m.
func NextLength(x float64, system System) float64 {
	part := 1e-3
	if system == Inch {
		part = In / 16
	}
	next := Round((math.Floor(x/part)+1)*part, Length, system)
	for next <= x { // the rounding of a division
		next = Round(next+part, Length, system)
	}
	return next
}

// With writes a quantity as [Shop] does, with its unit.
func With(x float64, kind Kind, system System) string {
	text := Shop(x, kind, system)
	unit := Unit(kind, system)
	if unit == "degrees" && (text == "1" || text == "1/2" || text == "0.5") {
		unit = "degree"
	}
	return strings.TrimSpace(text + " " + unit)
}

// Round returns x as it reads when it is typed as [Shop] shows it.
func Round(x float64, kind Kind, system System) float64 {
	if rounded, err := Parse(Shop(x, kind, system), kind, system); err == nil {
		return rounded
	}
	return x
}

// mixedNumber writes a value as a whole number and a fraction of parts, in lowest terms.
func mixedNumber(value float64, parts int64) string {
	if math.Abs(value) > 1e12 {
		return strconv.FormatFloat(value, 'g', 6, 64)
	}
	total := int64(math.Round(math.Abs(value) * float64(parts)))
	whole, above, below := total/parts, total%parts, parts
	for above > 0 && above%2 == 0 {
		above, below = above/2, below/2
	}
	text := strconv.FormatInt(whole, 10)
	if above > 0 {
		text = strings.TrimPrefix(fmt.Sprintf("%d %d/%d", whole, above, below), "0 ")
	}
	if value < 0 && total > 0 {
		return "-" + text
	}
	return text
}

// Decimal writes a value with at most so many decimals, and never "-0".
func Decimal(value float64, decimals int) string {
	text := strconv.FormatFloat(value, 'f', decimals, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}

// Tall writes a person's height as it is said: "5 ft 10 in", whole inches; in metric units "178 cm".
func Tall(x float64, system System) string {
	if system == Metric {
		return strconv.Itoa(int(math.Round(x*100))) + " cm"
	}
	inches := int(math.Round(x / In))
	return strings.TrimSuffix(fmt.Sprintf("%d ft %d in", inches/12, inches%12), " 0 in")
}
