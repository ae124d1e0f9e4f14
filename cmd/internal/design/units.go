package design

import (
	"math"
	"strconv"
	"strings"

	"rockerwright/sim/quantity"
)

// In returns the text of the design, with its changes in it, for plain numbers of another
// system: each plain number is written anew, to a ten-thousandth of its unit or finer;
// numbers that bring their unit stay, and so do comments, whatever they say of units. The
// error is an [*Error].
func (f *File) In(units quantity.System) (string, error) {
	text, err := f.Saved(f.Design)
	if err != nil {
		return "", err
	}
	saved, err := Parse(f.Name, text)
	if err != nil || saved.Design.Units == units {
		return text, err
	}
	values := map[string]string{}
	for _, key := range saved.Design.Keys() {
		e, found := saved.find(key)
		if !found {
			continue
		}
		measure, field, err := saved.Design.Measure(key)
		if err != nil {
			return "", err
		}
		was, err := quantity.FromNumber(1, measure.Kind, saved.Design.Units)
		if err != nil {
			return "", err
		}
		is, err := quantity.FromNumber(1, measure.Kind, units)
		if err != nil {
			return "", err
		}
		if was != is && plainNumber(e.Raw) {
			values[without1(key)] = inUnits(*field, is, measure.Kind, units)
		}
	}
	if _, found := saved.find("units"); !found {
		text = "units = \"" + units.String() + "\"\n" + saved.withValues(values)
	} else {
		values["units"] = units.String()
		text = saved.withValues(values)
	}
	_, err = Parse(f.Name, text)
	return text, err
}

// plainNumber reports whether a raw value brings no unit.
func plainNumber(raw string) bool {
	return !strings.ContainsFunc(strings.Trim(raw, "\"'"), func(r rune) bool {
		return r > 0x7f && !strings.ContainsRune("½¼¾⅛⅜⅝⅞⅓⅔⅙⅚⅕⅖⅗⅘−–⁄", r) || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r == '"' || r == '\''
	})
}

// inUnits returns a value in units of one, as a maker types it where that says it.
func inUnits(x, one float64, kind quantity.Kind, units quantity.System) string {
	if math.Abs(quantity.Round(x, kind, units)-x) < 1e-9 {
		return quantity.Shop(x, kind, units)
	}
	text := strconv.FormatFloat(x/one, 'f', 4, 64)
	return strings.TrimRight(strings.TrimRight(text, "0"), ".")
}
