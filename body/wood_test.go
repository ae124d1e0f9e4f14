package body

import (
	"math"
	"strings"
	"testing"
)

// Typed by hand from the Wood Handbook's tables as wood_fpl.csv quotes them; the
// density is 1000·SG·(1 + 0.12), worked out by hand.
func TestWoodsRetyped(t *testing.T) {
	for _, tt := range []struct {
		name                      string
		gravity, density, elastic float64 // –, kg/m³, Pa
		rupture                   float64 // Pa
	}{
		{"Ash, white", 0.60, 672.0, 12.0e9, 103.0e6},
		{"Cherry, black", 0.50, 560.0, 10.3e9, 85.0e6},
		{"Hickory, shagbark", 0.72, 806.4, 14.9e9, 139.0e6},
		{"Maple, sugar", 0.63, 705.6, 12.6e9, 109.0e6},
		{"Oak, white", 0.68, 761.6, 12.3e9, 105.0e6},
		{"Pine, eastern white", 0.35, 392.0, 8.5e9, 59.0e6},
		{"Walnut, black", 0.55, 616.0, 11.6e9, 101.0e6},
		{"Yellow-poplar", 0.42, 470.4, 10.9e9, 70.0e6},
		{"Rosewood, Brazilian", 0.92, 1030.4, 13.0e9, 131.0e6},
	} {
		w, err := FindWood(tt.name)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		if w.SpecificGravity != tt.gravity || w.ElasticModulus != tt.elastic || w.RuptureModulus != tt.rupture {
			t.Errorf("%s: %+v, want %+v", tt.name, w, tt)
		}
		if math.Abs(w.Density-tt.density) > 0.5 { // the table gives whole kg/m³
			t.Errorf("%s: density %v, want %v to 0.5", tt.name, w.Density, tt.density)
		}
	}
}

func TestWoods(t *testing.T) {
	list := woods()
	const rows = 33 + 12 // of the United States and imported, counted by hand
	if len(list) != rows || list[0].Name != "Alder, red" || list[rows-1].Name != "Meranti, dark red (lauan)" {
		t.Fatalf("%d woods, want %d from alder to meranti", len(list), rows)
	}
	for _, w := range list {
		if got := 1120 * w.SpecificGravity; math.Abs(got-w.Density) > 0.5 { // whole kg/m³
			t.Errorf("%s: 1000·%v·1.12 = %v kg/m³, the table has %v", w.Name, w.SpecificGravity, got, w.Density)
		}
		// no wood floats like cork or sinks like stone, and stiffness and strength are of a kind
		if !(w.Density > 300 && w.Density < 1100) || !(w.ElasticModulus > 5e9 && w.ElasticModulus < 20e9) ||
			!(w.RuptureModulus > 40e6 && w.RuptureModulus < 200e6) {
			t.Errorf("%s: numbers out of all reason: %+v", w.Name, w)
		}
		if w.Latin == "" || !strings.HasPrefix(w.Source, "5-") || !strings.HasPrefix(w.Confidence, "verified-") {
			t.Errorf("%s: a row without its Latin name, source or confidence: %+v", w.Name, w)
		}
		if imported := w.Origin == "imported"; imported != strings.Contains(w.Source, "green-volume") {
			t.Errorf("%s: origin %q does not go with the source %q", w.Name, w.Origin, w.Source)
		}
	}
}

func TestReadWoodsPanicsOnABrokenTable(t *testing.T) {
	const row = "Ash,Fraxinus,US,0.6,table,672,12.0,103.0,5-3a,verified-2src,"
	for _, tt := range []struct{ name, table, want string }{
		{"nothing", "", "its columns"},
		{"other columns", "species,latin\n", "its columns"},
		{"a short row", woodColumns + "\nAsh,Fraxinus\n", "wrong number of fields"},
		{"no number", woodColumns + "\n" + strings.Replace(row, "672", "heavy", 1) + "\n", "Ash"},
	} {
		func() {
			defer func() {
				if got, _ := recover().(string); !strings.Contains(got, tt.want) {
					t.Errorf("%s: panic %q, want one that says %q", tt.name, got, tt.want)
				}
			}()
			readWoods(tt.table)
		}()
	}
}
