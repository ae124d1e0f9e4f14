package bench

import (
	"errors"
	"math"
	"testing"

	"rockerwright/rocker"
)

// TestSpringbackByStress follows the stresses themselves: on the form each strip is strained by
// κ·(y − its own middle); let go, the glued section turns back as one, by δ·y. With δ the
// springback the moment left over the whole section is nothing, and so is the force.
func TestSpringbackByStress(t *testing.T) {
	const t0, bend = 0.006, 1 / 0.9 // thickness, m; curvature on the form, 1/m; E and width are 1
	for n := 1; n <= 12; n++ {
		back := bend * Springback(n)
		var moment, force, onForm float64
		const slices = 2000 // midpoints of each strip
		for strip := range n {
			middle := (float64(strip) - float64(n-1)/2) * t0
			for k := range slices {
				y := middle + (float64(k)+0.5-slices/2.0)/slices*t0
				stress := bend*(y-middle) - back*y
				moment += stress * y * t0 / slices
				onForm += bend * (y - middle) * y * t0 / slices
				force += stress * t0 / slices
			}
		}
		// midpoints of a square miss 1/(12·slices²) of each strip's y² share, n² of which stand back
		if math.Abs(moment) > onForm*float64(n*n)/slices/slices || math.Abs(force) > 1e-12*bend*t0 {
			t.Errorf("%d strips: moment %v of %v, force %v", n, moment, onForm, force)
		}
	}
}

// TestFormFor: a stack on either form is bent more by its springback, and let go
// its floor edge lies on the wanted one.
func TestFormFor(t *testing.T) {
	const wanted, thick, sole = 1.067, 0.04, 0.003
	for _, n := range []int{2, 5, 7, 9} {
		f, err := FormFor(wanted, thick, sole, Springback(n))
		if err != nil {
			t.Fatal(err)
		}
		middle := f.ConvexForm + thick/2
		if math.Abs(f.ConcaveForm-thick/2-middle) > near || f.FloorEdge != wanted {
			t.Errorf("%d strips: %+v", n, f)
		}
		free := 1 / ((1 - 1/float64(n*n)) / middle) // the formula as it is written
		if math.Abs(free+thick/2+sole-wanted) > near {
			t.Errorf("%d strips: let go the floor edge is %v", n, free+thick/2+sole)
		}
	}
	// steam, by hand: wood of no note in thickness bent to 34 in loses 1/18 and is 36 in
	f, err := FormFor(36*inch, 1e-9, 0, 1-34.0/36)
	if err != nil || math.Abs(f.ConvexForm-34*inch) > 1e-8 {
		t.Errorf("steam: %+v, %v", f, err)
	}
	for _, bad := range [][4]float64{{0, 1, 0, 0}, {1, 0, 0, 0}, {1, 0.1, -1, 0}, {1, 0.1, 0, 1}, {1, 0.1, 0, -0.1},
		{1, 0.1, 0, math.NaN()}, {0.1, 0.1, 0, 0.5}} {
		var size *SizeError
		if _, err := FormFor(bad[0], bad[1], bad[2], bad[3]); !errors.As(err, &size) {
			t.Errorf("%v: %v", bad, err)
		}
	}
}

// TestStrip: the strain of the strip found is the one allowed; the table by its rows.
func TestStrip(t *testing.T) {
	if got := StripThickness(0.5, 0.01); math.Abs(((0.5+got/2)-0.5)/0.5-0.01) > 1e-15 { // outer length over middle length
		t.Errorf("a strip of %v", got)
	}
	for _, tt := range []struct {
		radius, want float64 // in
		ok           bool
	}{{1, 0, false}, {2, 3.0 / 32, true}, {4, 3.0 / 32, true}, {4.1, 0.125, true}, {8, 0.125, true},
		{10, 0.1875, true}, {12.5, 0.25, true}, {42, 0.25, true}, {math.NaN(), 0, false}} {
		if got, ok := CommonStrip(tt.radius * inch); ok != tt.ok || math.Abs(got-tt.want*inch) > 1e-15 {
			t.Errorf("radius %v in: %v, %v", tt.radius, got, ok)
		}
	}
}

// TestStack by hand: 40 mm of strips up to 6.35 mm are 7, of 5.714 mm; with 1 mm planed off
// and cuts of 3 mm they take 40 + 7 + 18 = 65 mm.
func TestStack(t *testing.T) {
	s, err := Lamination{Depth: 0.04, Thickest: 0.00635, Kerf: 0.003, Planing: 0.001, Longest: 0.9, Waste: 0.05}.Stack()
	if err != nil || s.Strips != 7 || math.Abs(s.Strip-0.04/7) > 1e-15 || math.Abs(s.Stock-0.065) > 1e-15 || math.Abs(s.Length-1) > 1e-15 {
		t.Errorf("%+v, %v", s, err)
	}
	for n := 1; n < 40; n++ { // a depth of n strips is n strips, however it is rounded
		if s, err := (Lamination{Depth: float64(n) * 0.0017, Thickest: 0.0017, Longest: 1}).Stack(); err != nil || s.Strips != n {
			t.Errorf("%d strips: %+v, %v", n, s, err)
		}
	}
	for _, l := range []Lamination{{}, {Depth: 1, Thickest: 1e-6, Longest: 1},
		{Depth: 0.04, Thickest: 0.005, Longest: 1, Kerf: -1}, {Depth: 0.04, Thickest: 0.005, Longest: math.Inf(1)}} {
		var size *SizeError
		if _, err := l.Stack(); !errors.As(err, &size) {
			t.Errorf("%+v: %v", l, err)
		}
	}
}

// TestBend: over one arc the floor edge is the longer and the top edge the tighter; in a
// hollow it is the other way round; no stack bends over a corner.
func TestBend(t *testing.T) {
	longest, tightest, err := Rocker{Edge: rocker.Single(1.05, 0.4, 0.5), Depth: 0.06, Sole: 0.01}.Bend()
	if err != nil || math.Abs(longest-0.9*1.04/1.05) > near || math.Abs(tightest-0.99) > near {
		t.Errorf("one arc: %v, %v, %v", longest, tightest, err)
	}
	longest, tightest, err = Rocker{Edge: chain(t, 0.2, rocker.Arc(-0.7, 0.4)), Depth: 0.06}.Bend()
	if err != nil || math.Abs(longest-0.4*0.76/0.7) > near || math.Abs(tightest-0.7) > near {
		t.Errorf("hollow: %v, %v, %v", longest, tightest, err)
	}
	if _, tightest, err = (Rocker{Edge: chain(t, 0.2, rocker.Flat(0.4)), Depth: 0.06}).Bend(); err != nil || !math.IsInf(tightest, 1) {
		t.Errorf("bar: %v, %v", tightest, err)
	}
	var outline *OutlineError
	cornered := chain(t, 0.2, rocker.Flat(0.4), rocker.Turn(0.1), rocker.Flat(0.1))
	if _, _, err = (Rocker{Edge: cornered, Depth: 0.06}).Bend(); !errors.As(err, &outline) || outline.Span != 1 {
		t.Errorf("corner: %v", err)
	}
}
