package wire

import (
	"errors"
	"math"
	"strings"
	"testing"

	"rockerwright/sim/quantity"
)

// TestObject: pairs keep their order, what is absent leaves no trace, what there is not is null, and
// texts stand as they are.
func TestObject(t *testing.T) {
	for _, tt := range []struct {
		made any
		want string
	}{
		{Object{}, `{}`},
		{Object(nil), `null`},
		{Object{{"z", 1}, {"a", "<&>"}}, `{"z":1,"a":"<&>"}`},
		{Object{{"a", absent{}}, {"b", 2.5}}, `{"b":2.5}`},
		{Object{{"a", given("")}, {"b", given(0.0)}, {"c", filled([]Object{})}, {"d", filled(Object(nil))}, {"e", given(0)}}, `{}`},
		{Object{{"a", given("x")}, {"b", given(math.NaN())}}, `{"a":"x","b":null}`},
		{Object{{"nan", math.NaN()}, {"inf", math.Inf(-1)}, {"zero", math.Copysign(0, -1)}}, `{"nan":null,"inf":null,"zero":0}`},
		{Object{{"all", []float64{1.0 / 3, math.NaN()}}}, `{"all":[0.3333333333333333,null]}`},
		{Object{{"in", Object{{"of", Object{{"x", nil}}}}}}, `{"in":{"of":{"x":null}}}`},
		{each([]float64{}, func(float64) Object { return nil }), `[]`},
		{each([]float64{1e-7}, func(x float64) Object { return Object{{"x", x}} }), `[{"x":1e-07}]`},
	} {
		var out strings.Builder
		if err := Print(&out, tt.made); err != nil || out.String() != tt.want+"\n" {
			t.Errorf("%#v is printed as %q, %v; want %q", tt.made, out.String(), err, tt.want)
		}
	}
}

// TestObjectTellsErrors: what JSON cannot say, and a reader that takes nothing, are errors.
func TestObjectTellsErrors(t *testing.T) {
	if err := Print(&strings.Builder{}, Object{{"a", func() {}}}); err == nil {
		t.Error("a function is written as JSON")
	}
	if err := Print(full{}, Object{}); !errors.Is(err, errFull) {
		t.Errorf("%v, want %v", err, errFull)
	}
}

var errFull = errors.New("full")

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errFull }

// TestUnits: a name ends in the unit in which its number is.
func TestUnits(t *testing.T) {
	for kind, want := range map[quantity.Kind][2]string{
		quantity.Angle: {"x_deg", "deg"}, quantity.Length: {"x_m", "m"}, quantity.Force: {"x_n", "N"}, quantity.Time: {"x_s", "s"},
		quantity.Inertia: {"x_kgm2", "kg m2"}, quantity.Count: {"x", "1"},
	} {
		if got := (named{"x", kind}).String(); got != want[0] || unit(kind) != want[1] {
			t.Errorf("%q in %q, want %q in %q", got, unit(kind), want[0], want[1])
		}
	}
	if got := amount(math.Pi, quantity.Angle); got != 180 {
		t.Errorf("half a turn is %v degrees", got)
	}
	if got := amount(math.Pi, quantity.Length); got != math.Pi {
		t.Errorf("a length of π m is %v m", got)
	}
}
