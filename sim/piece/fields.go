package piece

import (
	"reflect"
	"strings"

	"rockerwright/body/person"
)

// fieldOf returns the field of a design that holds the measure of a key, nil where none does; n counts the entries of
// a list from 0. It is the one of the key's own words, "rocker.nose_depth" being Rocker.NoseDepth and "part.N.at.x"
// Parts[n].At.X, or a row of others.
func fieldOf(key string) func(d *Design, n int) *float64 {
	if field := others[key]; field != nil {
		return field
	}
	var places []int // of each field in the one before; of an entry of a list nothing
	in := reflect.TypeFor[Design]()
	for part := range strings.SplitSeq(key, ".") {
		if in.Kind() == reflect.Slice {
			in, places = in.Elem(), append(places, 0)
			continue
		}
		name := ""
		for word := range strings.SplitSeq(part, "_") {
			name += strings.ToUpper(word[:1]) + word[1:]
		}
		field, found := in.FieldByName(name)
		if !found {
			field, found = in.FieldByName(name + "s") // a section that stands several times
		}
		if !found {
			return nil
		}
		in, places = field.Type, append(places, field.Index[0])
	}
	if in.Kind() != reflect.Float64 {
		return nil
	}
	return func(d *Design, n int) *float64 {
		v := reflect.ValueOf(d).Elem()
		for _, i := range places {
			if v.Kind() == reflect.Slice {
				v = v.Index(n)
			} else {
				v = v.Field(i)
			}
		}
		return v.Addr().Interface().(*float64)
	}
}

// others are the fields that go by other words than their keys.
var others = map[string]func(d *Design, n int) *float64{
	"seat.behind_low_point":     func(d *Design, _ int) *float64 { return &d.Seat.Behind },
	"seat.thickness":            func(d *Design, _ int) *float64 { return &d.Seat.Thick },
	"piece.weight":              func(d *Design, _ int) *float64 { return &d.Piece.Mass },
	"part.N.weight":             func(d *Design, n int) *float64 { return &d.Parts[n].Mass },
	"leg.N.size":                func(d *Design, n int) *float64 { return &d.Legs[n].Side },
	"sitter.N.weight":           func(d *Design, n int) *float64 { return &d.Sitters[n].Mass },
	"sitter.N.height":           size(person.Stature),
	"sitter.N.knee_crease":      size(person.KneeCrease),
	"sitter.N.thigh":            size(person.ThighLength),
	"sitter.N.hips":             size(person.Hips),
	"sitter.N.elbow":            size(person.Elbow),
	"sitter.N.shoulder":         size(person.Shoulder),
	"sitter.N.sitting_height":   size(person.SittingHeight),
	"sitter.N.lumbar":           size(person.Lumbar),
	"sitter.N.age":              func(d *Design, n int) *float64 { return &d.Sitters[n].Person.Age },
	"sitter.N.percentile":       func(d *Design, n int) *float64 { return &d.Sitters[n].Person.Percentile },
	"sitter.N.ahead":            func(d *Design, n int) *float64 { return &d.Sitters[n].Sitting.Ahead },
	"sitter.N.above":            func(d *Design, n int) *float64 { return &d.Sitters[n].Sitting.Above },
	"measured.ten_rocks_ridden": func(d *Design, _ int) *float64 { return &d.Measured.RiddenTenRocks },
	"measured.let_go_ridden":    func(d *Design, _ int) *float64 { return &d.Measured.RiddenLetGo },
	"target.seat_falls":         func(d *Design, _ int) *float64 { return &d.Target.SeatFalls.Value },
	"target.back_leans":         func(d *Design, _ int) *float64 { return &d.Target.BackLeans.Value },
	"target.seat_falls_empty":   func(d *Design, _ int) *float64 { return &d.Target.Empty.Value },
	"shop.stock_thickness":      func(d *Design, _ int) *float64 { return &d.Shop.StockThick },
}

// size is the field of a size of a person.
func size(s person.Size) func(d *Design, n int) *float64 {
	return func(d *Design, n int) *float64 { return &d.Sitters[n].Person.Sizes[s] }
}

// asked says what marks a measure as given, of those that may be zero.
var asked = map[string]func(d *Design) *bool{
	"target.seat_falls":       func(d *Design) *bool { return &d.Target.SeatFalls.Asked },
	"target.back_leans":       func(d *Design) *bool { return &d.Target.BackLeans.Asked },
	"target.seat_falls_empty": func(d *Design) *bool { return &d.Target.Empty.Asked },
}
