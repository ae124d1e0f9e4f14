package words

import (
	"errors"
	"reflect"
	"testing"

	"rockerwright/sim/piece"
)

// ofEveryKind returns a design of each kind that a file may name, in each direction.
func ofEveryKind() []piece.Design {
	var d piece.Design
	kinds, set, err := d.Choice("kind")
	var all []piece.Design
	for _, word := range kinds.Words {
		for _, d.Rocks = range []piece.Direction{piece.Side, piece.End} {
			if err = errors.Join(err, set(word)); err != nil {
				panic(err)
			}
			all = append(all, d)
		}
	}
	return all
}

// TestNoPhraseIsEmpty holds that every kind has all of its phrases. One that a kind may do without is of the type
// maybe, and is there in one kind and not in another; else it should be no such field.
func TestNoPhraseIsEmpty(t *testing.T) {
	there, all := map[string]int{}, ofEveryKind()
	for _, d := range all {
		of := reflect.ValueOf(*phrasesOf(d))
		for _, field := range reflect.VisibleFields(of.Type()) {
			value := of.FieldByIndex(field.Index)
			if field.Type == reflect.TypeFor[maybe]() {
				if there[field.Name] += 0; !value.IsZero() {
					there[field.Name]++
				}
				continue
			}
			switch value.Kind() {
			case reflect.Bool, reflect.Struct: // both ways say something; the fields of a struct are looked at themselves
				continue
			case reflect.Slice:
				if field.Name == "Marks" { // tilts, no words
					continue
				}
				for i := range value.Len() {
					if value.Index(i).IsZero() {
						t.Errorf("%v %v: text %d of %s is empty", d.Kind, d.Rocks, i, field.Name)
					}
				}
			}
			if value.IsZero() {
				t.Errorf("%v %v: %s is empty", d.Kind, d.Rocks, field.Name)
			}
		}
	}
	for name, n := range there {
		if n == 0 || n == len(all) {
			t.Errorf("%s may be empty, and is in %d of %d", name, len(all)-n, len(all))
		}
	}
}
