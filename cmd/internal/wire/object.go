// Package wire is what every answer says to a program: JSON with SI units, angles in degrees, the unit in the name,
// every digit, in a stable order. What there is not is null. A later version only adds names.
package wire

import (
	"bytes"
	"encoding/json"
	"io"
	"math"
	"strconv"

	"rockerwright/sim/quantity"
)

// Print writes what is made of an answer, an [Object] or a list of them, on one line.
func Print(out io.Writer, made any) error {
	encoder := json.NewEncoder(out)
	encoder.SetEscapeHTML(false) // names and sentences as they are
	return encoder.Encode(made)
}

// An Object is a JSON object whose names stand in the order of its pairs; nil is null.
type Object []pair

// A pair is a name with its value: a text, a number, a list or another object. A float64 that is NaN or
// infinite is null, in a []float64 too; what is absent is left out, name and all.
type pair struct {
	name  string
	value any
}

// MarshalJSON writes the pairs in their order.
func (o Object) MarshalJSON() ([]byte, error) {
	if o == nil {
		return []byte("null"), nil
	}
	text := bytes.NewBufferString("{")
	for _, p := range o {
		switch v := p.value.(type) {
		case absent:
			continue
		case float64:
			p.value = number(v)
		case []float64:
			p.value = each(v, func(x float64) number { return number(x) })
		}
		if text.Len() > 1 {
			text.WriteByte(',')
		}
		if err := Print(text, p.name); err != nil {
			return nil, err
		}
		text.WriteByte(':')
		if err := Print(text, p.value); err != nil {
			return nil, err
		}
	}
	text.WriteByte('}')
	return text.Bytes(), nil
}

// absent is the value of a pair that is left out.
type absent struct{}

// given returns a value, absent where it is "" or zero.
func given[T comparable](value T) any {
	var nothing T
	if value == nothing {
		return absent{}
	}
	return value
}

// where returns a value, null where there is none.
func where(there bool, value any) any {
	if !there {
		return nil
	}
	return value
}

// filled returns a list or an object, absent where nothing is in it.
func filled[S ~[]E, E any](list S) any {
	if len(list) == 0 {
		return absent{}
	}
	return list
}

// each returns what is made of each of a list. Of an empty list that is [], never null.
func each[T, U any](list []T, of func(T) U) []U {
	made := make([]U, len(list))
	for i, one := range list {
		made[i] = of(one)
	}
	return made
}

// A number is a float64 that is null in JSON where there is none.
type number float64

// MarshalJSON writes as many digits as tell the number from every other.
func (n number) MarshalJSON() ([]byte, error) {
	x := float64(n)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return []byte("null"), nil
	}
	return strconv.AppendFloat(nil, x+0, 'g', -1, 64), nil // never -0
}

// degrees returns an angle in degrees.
func degrees(x float64) float64 { return x * 180 / math.Pi }

// units are those of each kind of quantity: what it is called, and at the end of a name.
var units = map[quantity.Kind]struct{ name, suffix string }{
	quantity.Length:  {"m", "_m"},
	quantity.Angle:   {"deg", "_deg"},
	quantity.Mass:    {"kg", "_kg"},
	quantity.Inertia: {"kg m2", "_kgm2"},
	quantity.Time:    {"s", "_s"},
	quantity.Force:   {"N", "_n"},
	quantity.Density: {"kg/m3", "_kgm3"},
}

// unit returns the unit in which [amount] gives a quantity; "1" of a count.
func unit(kind quantity.Kind) string {
	if u, known := units[kind]; known {
		return u.name
	}
	return "1"
}

// amount returns an SI value in the unit of its kind.
func amount(x float64, kind quantity.Kind) float64 {
	if kind == quantity.Angle {
		return degrees(x)
	}
	return x
}

// named is a quantity, and what it is called.
type named struct {
	name string
	kind quantity.Kind
}

// String returns the name with the unit at its end.
func (n named) String() string { return n.name + units[n.kind].suffix }
