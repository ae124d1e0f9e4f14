package words

import (
	"testing"

	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestCutSize by hand: sixteenths with their unit, a strip finer, whole millimetres plain and parts of
// one with their unit, so that no spreadsheet makes a day of it.
func TestCutSize(t *testing.T) {
	for _, tt := range []struct {
		x     float64
		units quantity.System
		want  string
	}{
		{0.75 * 0.0254, quantity.Inch, "3/4 in"}, {13.3125 * 0.0254, quantity.Inch, "13 5/16 in"}, {18 * 0.0254, quantity.Inch, "18 in"},
		{0.281 * 0.0254, quantity.Inch, "0.281 in"}, {0.25 * 0.0254, quantity.Inch, "1/4 in"},
		{0.4448, quantity.Metric, "445"}, {0.0064, quantity.Metric, "6.4 mm"}, {0.006, quantity.Metric, "6"},
		{0.0135, quantity.Metric, "14"},
	} {
		if got := CutSize(tt.x, tt.units); got != tt.want {
			t.Errorf("%v m is %q, want %q", tt.x, got, tt.want)
		}
	}
}

// TestCutRemark says of a seat how its grain runs, and of what is over the boards by which size.
func TestCutRemark(t *testing.T) {
	l := layout.Layout{Shop: piece.Shop{StockWidth: 8 * 0.0254, StockThick: 1.5 * 0.0254}}
	const wider = "rough, it is wider than your boards (8 in)"
	for want, c := range map[string]layout.Cut{
		"":                             {},
		"the grain runs front to back": {Seat: true},
		wider + ": glue it up":         {Wider: true},
		"the grain runs front to back; " + wider +
			" and thicker than your boards (1 1/2 in): glue it up": {Seat: true, Wider: true, Thicker: true},
	} {
		if got := CutRemark(l, c); got != want {
			t.Errorf("%+v: %q, want %q", c, got, want)
		}
	}
}

// TestNoRiseIsMinusNought: the rise at the low point is nothing, and on paper so, though it comes out a rounding below it.
func TestNoRiseIsMinusNought(t *testing.T) {
	l := layout.Layout{Design: piece.Design{Units: quantity.Metric}}
	l.Rises.Low = 1
	l.Rises.Rows[0] = layout.RiseRow{Rise: -1e-17, Allowed: 0.0008}
	if got := risesBlock(wordingOf(l.Design), l).Table.Rows[0].Cells[1]; got != "0" {
		t.Errorf("the rise at the low point is %q, want 0", got)
	}
}
