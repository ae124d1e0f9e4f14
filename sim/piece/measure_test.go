package piece

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"rockerwright/body/person"
)

// full is a design with one of each thing there can be.
func full() Design {
	var d Design
	for _, l := range lists {
		l.Make(&d, 1)
	}
	return d
}

// TestEveryListHasARow: whatever a Design has several of stands in the table of lists; and every section has a
// measure or a choice, and every one of these a section.
func TestEveryListHasARow(t *testing.T) {
	d := full()
	d.Measured.Zero = make([]string, 1) // names of readings, not a list of a file
	eachSlice(reflect.ValueOf(d), "Design", func(path string, length int) {
		if length != 1 {
			t.Errorf("%s is no row of the lists", path)
		}
	})
	for _, l := range lists {
		if l.What == "" || l.Most < 10 || l.Have(&d) != 1 {
			t.Errorf("%s: %q, %d at most, %d made of 1", l.Name, l.What, l.Most, l.Have(&d))
		}
	}
	told := map[string]bool{"title": true, "kind": true, "units": true, "rocks": true}
	for _, s := range sections {
		told[s.Name] = false
	}
	for _, key := range Keys() {
		section, _, _ := strings.Cut(key, ".")
		if _, known := told[section]; !known {
			t.Errorf("%s stands in no section", key)
		}
		told[section] = true
	}
	for section, is := range told {
		if !is {
			t.Errorf("[%s] has no entry", section)
		}
	}
}

// eachSlice calls visit for every list inside a value.
func eachSlice(v reflect.Value, path string, visit func(path string, length int)) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			eachSlice(v.Field(i), path+"."+v.Type().Field(i).Name, visit)
		}
	case reflect.Slice:
		visit(path, v.Len())
	}
}

// TestEveryFieldHasAMeasure sets every number of a Design through the table, and fails
// for one that stays zero.
func TestEveryFieldHasAMeasure(t *testing.T) {
	d := full()
	for i, m := range Measures() {
		*m.in(&d, 0) = float64(i + 1)
	}
	d.Sitters[0].Person.Sizes[person.Mass] = d.Sitters[0].Mass // where it stands
	eachNumber(reflect.ValueOf(d), "Design", func(path string, x float64) {
		if x == 0 {
			t.Errorf("%s has no measure", path)
		}
	})
}

// eachNumber calls visit for every float64 inside a value.
func eachNumber(v reflect.Value, path string, visit func(path string, x float64)) {
	switch v.Kind() {
	case reflect.Float64:
		visit(path, v.Float())
	case reflect.Struct:
		for i := range v.NumField() {
			eachNumber(v.Field(i), path+"."+v.Type().Field(i).Name, visit)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			eachNumber(v.Index(i), path, visit)
		}
	}
}

// TestMeasuresAreWhole checks that each row of the table says all it must, once.
func TestMeasuresAreWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, m := range Measures() {
		if seen[m.Key] {
			t.Errorf("%s stands twice in the table", m.Key)
		}
		seen[m.Key] = true
		if m.Label == "" || m.Example == "" || m.Step <= 0 || !(m.Low < m.High) {
			t.Errorf("%s lacks a label, an example, a step or a range: %+v", m.Key, m)
		}
	}
	for _, c := range Choices() {
		if seen[c.Key] || c.Label == "" {
			t.Errorf("%s stands twice or has no label", c.Key)
		}
	}
}

func TestMeasureByKey(t *testing.T) {
	d := full()
	d.Sitters = make([]Sitter, 2)
	d.Sitters[1].Mass = 7
	for _, tt := range []struct {
		key  string
		want float64
		fail string
	}{
		{"sitter.2.weight", 7, ""},
		{"sitter.weight", 0, "say which"},
		{"sitter.3.weight", 0, "has 2 entries"},
		{"sitter.0.weight", 0, "has 2 entries"},
		{"part.weight", 0, ""},
		{"rocker.arcs.1.radius", 0, ""},
		{"measured.left.1", 0, ""},
		{"measured.right.2", 0, "has 1 entries"},
		{"rocker.taal", 0, "no such entry"},
	} {
		_, field, err := d.Measure(tt.key)
		var wrong *KeyError
		switch {
		case tt.fail == "" && (err != nil || *field != tt.want):
			t.Errorf("Measure(%q) = %v, %v; want %v", tt.key, field, err, tt.want)
		case tt.fail != "" && (!errors.As(err, &wrong) || !strings.Contains(err.Error(), tt.fail)):
			t.Errorf("Measure(%q): error %v, want one that says %q", tt.key, err, tt.fail)
		}
	}
}

func TestCloneSharesNothing(t *testing.T) {
	d := full()
	c := d.Clone()
	c.Sitters[0].Mass, c.Parts[0].Mass, c.Rocker.Arcs[0].Length = 1, 1, 1
	if d.Sitters[0].Mass != 0 || d.Parts[0].Mass != 0 || d.Rocker.Arcs[0].Length != 0 {
		t.Error("a change to the clone changed the design")
	}
}

// TestUsualPeopleByKey holds by which entries of a file each usual person is left out.
func TestUsualPeopleByKey(t *testing.T) {
	keys := map[string]Usual{
		"small_woman": SmallWoman, "large_man": LargeMan, "younger_child": YoungerChild, "older_child": OlderChild,
		"one_at_the_end": OneAtTheEnd, "arms_behind_head": ArmsBehindHead, "child_on_the_tail": ChildOnTheTail,
		"riders": Riders, "newborn": Newborn, "five_months": FiveMonths,
	}
	if len(keys) != Usuals {
		t.Errorf("%d keys for %d people", len(keys), Usuals)
	}
	for key, u := range keys {
		var d, without Design
		without.People.Without[u] = true
		_, set, err := d.Choice("people." + key)
		if err != nil {
			t.Error(err)
			continue
		}
		if err := set("no"); err != nil || d.People != without.People {
			t.Errorf("people.%s = no leaves out %v: %v", key, d.People.Without, err)
		}
	}
}
