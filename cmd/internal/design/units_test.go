package design

import (
	"math"
	"strings"
	"testing"

	"rockerwright/sim/quantity"
)

// TestIn holds that a design written for other units is the same design, and that there
// and back is the same to what is written.
func TestIn(t *testing.T) {
	for _, kind := range Starts() {
		text, _ := Start(kind)
		f, err := Parse(kind, text)
		if err != nil {
			t.Fatal(err)
		}
		metric, err := f.In(quantity.Metric)
		if err != nil {
			t.Fatalf("%s: %v", kind, err)
		}
		if strings.Count(metric, "#") != strings.Count(text, "#") {
			t.Errorf("%s: comments were lost:\n%s", kind, metric)
		}
		m, err := Parse(kind, metric)
		if err != nil {
			t.Fatalf("%s: %v\n%s", kind, err, metric)
		}
		if m.Design.Units != quantity.Metric {
			t.Errorf("%s is still drawn in inches", kind)
		}
		back, err := m.In(quantity.Inch)
		if err != nil {
			t.Fatal(err)
		}
		b, err := Parse(kind, back)
		if err != nil {
			t.Fatal(err)
		}
		for _, key := range f.Design.Keys() {
			measure, want, err := f.Design.Measure(key)
			if err != nil {
				t.Fatal(err)
			}
			for _, d := range []*File{m, b} {
				_, got, err := d.Design.Measure(key)
				if err != nil || math.Abs(*got-*want) > 1e-4*unit(t, measure.Kind) { // written to a ten-thousandth of the larger unit
					t.Errorf("%s in %v: %s = %v, want %v", kind, d.Design.Units, key, *got, *want)
				}
			}
		}
	}
}

// unit is the larger of the two units of a kind, SI.
func unit(t *testing.T, kind quantity.Kind) float64 {
	t.Helper()
	inch, errInch := quantity.FromNumber(1, kind, quantity.Inch)
	metric, errMetric := quantity.FromNumber(1, kind, quantity.Metric)
	if errInch != nil || errMetric != nil {
		t.Fatal(errInch, errMetric)
	}
	return max(inch, metric)
}

// TestInKeepsUnits holds that a number that brings its unit stays as it was written, and
// that units are written where there were none.
func TestInKeepsUnits(t *testing.T) {
	f, err := Parse("x", "[rocker]\nradius = \"107 cm\" # round\nnose = \"17 1/2\"\ntail = 24\n")
	if err != nil {
		t.Fatal(err)
	}
	if err := f.Set("rocker.tail", "25"); err != nil {
		t.Fatal(err)
	}
	got, err := f.In(quantity.Metric)
	want := "units = \"metric\"\n[rocker]\nradius = \"107 cm\" # round\nnose = 444.5\ntail = 635\n"
	if err != nil || got != want {
		t.Errorf("In = %q, %v; want %q", got, err, want)
	}
}
