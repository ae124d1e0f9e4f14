package piece

import (
	"cmp"
	"reflect"
	"slices"
	"strings"

	"rockerwright/body/person"
)

// otherwise are the keys whose field goes by other words, and these words.
var otherwise = map[string]string{
	"seat.behind_low_point": "seat.behind", "seat.thickness": "seat.thick", "piece.weight": "piece.mass", "part.N.weight": "part.N.mass",
	"leg.N.kind": "leg.N.which", "leg.N.size": "leg.N.side", "sitter.N.weight": "sitter.N.mass", "sitter.N.sex": "sitter.N.person.sex",
	"sitter.N.height": "sitter.N.person.sizes.height", "sitter.N.knee_crease": "sitter.N.person.sizes.knee_crease",
	"sitter.N.thigh": "sitter.N.person.sizes.thigh", "sitter.N.hips": "sitter.N.person.sizes.hips",
	"sitter.N.elbow": "sitter.N.person.sizes.elbow", "sitter.N.shoulder": "sitter.N.person.sizes.shoulder",
	"sitter.N.sitting_height": "sitter.N.person.sizes.sitting_height", "sitter.N.lumbar": "sitter.N.person.sizes.lumbar",
	"sitter.N.age": "sitter.N.person.age", "sitter.N.percentile": "sitter.N.person.percentile",
	"sitter.N.ahead": "sitter.N.placed.ahead", "sitter.N.above": "sitter.N.placed.above",
	"measured.ten_rocks_ridden": "measured.ridden_ten_rocks", "measured.let_go_ridden": "measured.ridden_let_go",
	"target.seat_falls": "target.seat_falls.value", "target.back_leans": "target.back_leans.value",
	"target.seat_falls_empty": "target.empty.value", "limits.seat_falls_least": "limits.seat_falls_least.value",
	"limits.empty_falls_least": "limits.empty_falls_least.value", "limits.legs_beyond": "limits.legs_beyond.value",
	"shop.stock_thickness": "shop.stock_thick",
}

// A field finds where a design holds an entry; n counts the entries of a list from 0.
type field func(d *Design, n int) reflect.Value

// fieldOf returns the field of a key, by its words or those it has otherwise: "rocker.nose_depth" is Rocker.NoseDepth,
// "part.N.at.x" is Parts[n].At.X. It panics where there is none, for the keys are part of the program.
func fieldOf(key string) field {
	var places []int // of each field in the one around it; of an entry of a list nothing
	in := reflect.TypeFor[Design]()
	for word := range strings.SplitSeq(cmp.Or(otherwise[key], key), ".") {
		place := 0
		switch in.Kind() {
		case reflect.Struct:
			plain := strings.ReplaceAll(word, "_", "")
			inner, found := in.FieldByNameFunc(func(name string) bool {
				return strings.EqualFold(name, plain) || strings.EqualFold(name, plain+"s") // Parts
			})
			if !found {
				panic("piece: a design has no field for " + key)
			}
			in, place = inner.Type, inner.Index[0]
		case reflect.Array:
			place = slices.IndexFunc(person.Sizes(), func(s person.Size) bool { return SizeKey(s) == word })
			fallthrough
		default:
			in = in.Elem()
		}
		places = append(places, place)
	}
	return func(d *Design, n int) reflect.Value {
		v := reflect.ValueOf(d).Elem()
		for _, place := range places {
			switch v.Kind() {
			case reflect.Struct:
				v = v.Field(place)
			case reflect.Array:
				v = v.Index(place)
			default:
				v = v.Index(n)
			}
		}
		return v
	}
}
