package layout

import (
	"errors"
	"math"
	"strings"
	"testing"

	"rockerwright/body"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestPanels by hand: 0.48 m over a rise of 0.08 m is a circle of 0.4 m (0.24² + 0.32² = 0.4²), which turns by
// 2·asin(0.6); of seven staves each edge is bevelled by a fourteenth of that.
func TestPanels(t *testing.T) {
	d := reading()
	d.Panels = []piece.Panel{{Chord: 0.48, Rise: 0.08, Staves: 7, Stock: 0.04, Length: 0.1},
		{Name: "seat", Chord: 0.48, Radius: 0.4, Stock: 0.04}}
	l := mustLay(t, d)
	p := l.Panels[0]
	if p.Name != "panel" || !near(p.Curve.Radius, 0.4) || !near(p.Stave.Bevel, math.Asin(0.6)/7) {
		t.Errorf("%+v", p)
	}
	// the fewest that leave half of 0.04 m: R(1 − cos(α/2)) ≤ 0.02 needs α/2 ≤ acos(0.95) = 0.3176, and asin(0.6)/0.3176 = 2.03
	if q := l.Panels[1]; q.Curve.Staves != 3 || q.Stave.Thick < 0.02 {
		t.Errorf("%d staves leave %v", q.Curve.Staves, q.Stave.Thick)
	}
	last := l.Cuts[len(l.Cuts)-1]
	if last.Part != "stave of the panel" || last.Count != 7 || !near(last.Finished.Length, 0.1) {
		t.Errorf("cut %+v", last)
	}
	for _, tt := range []struct {
		p    piece.Panel
		key  string
		says string
	}{
		{piece.Panel{Rise: 0.1, Stock: 0.04}, "panel.chord", "needs its chord"},
		{piece.Panel{Chord: 0.5, Rise: 0.1}, "panel.stock", "needs its stock"},
		{piece.Panel{Chord: 0.5, Stock: 0.04}, "panel.rise", "one of the two"},
		{piece.Panel{Chord: 0.5, Rise: 0.1, Radius: 1, Stock: 0.04}, "panel.rise", "one of the two"},
		{piece.Panel{Chord: 0.5, Rise: 0.3, Stock: 0.04}, "panel.rise", "half a circle"},
		{piece.Panel{Chord: 0.5, Radius: 0.2, Stock: 0.04}, "panel.chord", "half a circle"},
		{piece.Panel{Chord: 0.5, Rise: 0.1, Staves: 1, Stock: 0.04}, "panel.stock", "hollowed through"},
	} {
		d.Panels = []piece.Panel{tt.p}
		refused(t, d, tt.key, tt.says)
	}
}

// refused holds that a design does not lay out, and which entry is named.
func refused(t *testing.T, d piece.Design, key, says string) {
	t.Helper()
	_, err := Of(d, Options{})
	var wrong *piece.KeyError
	if !errors.As(err, &wrong) || wrong.Key != key || !strings.Contains(err.Error(), says) {
		t.Errorf("%v; want %s: %s", err, key, says)
	}
}

// TestParts: solids are listed as the square they come out of, in their own wood.
func TestParts(t *testing.T) {
	d := reading()
	d.Piece = piece.Piece{}
	d.Rocker.Density, d.Rocker.Sole = 700, 0.004
	d.Back.Braces = piece.Braces{Count: 7, Width: 0.03, Thickness: 0.01, Length: 0.6, Wood: "white ash"}
	d.Parts = []piece.Part{
		{Name: "seat", Shape: piece.Box, Length: 0.45, Height: 0.04, Width: 0.5, Density: 500},
		{Name: "post", Shape: piece.Cone, Diameter: 0.04, TopDiameter: 0.03, Height: 0.4, Density: 500, Count: 4},
		{Name: "rung", Shape: piece.Crosswise, Diameter: 0.02, Width: 0.45, Density: 500},
		{Shape: piece.Point, Mass: 1},
	}
	l := mustLay(t, d)
	rows := map[string]Cut{}
	for _, c := range l.Cuts {
		rows[c.Part] = c
	}
	for name, want := range map[string]Size{"seat": {0.45, 0.5, 0.04}, "post": {0.4, 0.04, 0.04},
		"rung": {0.45, 0.02, 0.02}, "back brace": {0.6, 0.03, 0.01}, "sole": {41 * inch, l.Rocker.Width, 0.004}} {
		if got := rows[name].Finished; math.Abs(got.Length-want.Length)+math.Abs(got.Width-want.Width)+math.Abs(got.Thick-want.Thick) > 1e-9 {
			t.Errorf("%s is listed as %+v, want %+v", name, got, want)
		}
	}
	if c := rows["post"]; c.Count != 4 || !near(c.Mass(), 4*500*math.Pi/12*0.4*(0.04*0.04+0.04*0.03+0.03*0.03)) { // of a frustum
		t.Errorf("posts: %+v", c)
	}
	if c := rows["rung"]; !near(c.Mass(), 500*math.Pi/4*0.02*0.02*0.45) {
		t.Errorf("rung: %+v", c)
	}
	if !rows["seat"].Seat || rows["post"].Seat {
		t.Error("the grain of the seat is not said to run front to back, or a post's is")
	}
	for name := range rows {
		if strings.HasSuffix(name, " leg") {
			t.Errorf("%s is listed beside the parts, one of which it is", name)
		}
	}
	d.Back.Braces.Wood = "plywood of the moon"
	if _, err := Of(d, Options{}); err == nil {
		t.Error("a wood that there is not is taken")
	}
}

// TestWoodUnknown: a wood that there is not is refused in words that name no package.
func TestWoodUnknown(t *testing.T) {
	d := piece.Design{Rocker: piece.Rocker{Radius: 42 * inch, Nose: 17 * inch, Tail: 20 * inch, Wood: "plywoood"},
		Body: body.Body{Mass: 20, Inertia: 2}}
	d.Body.Centre.Y = 20 * inch
	var wrong *piece.KeyError
	if _, err := Of(d, Options{}); !errors.As(err, &wrong) || wrong.Key != "rocker.wood" ||
		!strings.HasPrefix(wrong.Reason, `no wood is named "plywoood"`) {
		t.Errorf("%v", err)
	}
}

// TestSeatOnce: a seat of boards is one row, its length the depth, along which the grain runs; a seat that
// is coopered is its staves, by its name or by its sizes, and so is a part of a panel's name; a panel without a length has
// no staves listed, and one that is something else takes no seat away.
func TestSeatOnce(t *testing.T) {
	seat := piece.Part{Name: "Seat", Shape: piece.Box, Length: 18 * inch, Height: 0.04, Width: 20 * inch, Density: 500}
	rail := piece.Part{Name: "rail", Shape: piece.Box, Length: 0.4, Height: 0.04, Width: 0.02, Density: 500}
	for _, tt := range []struct {
		panel piece.Panel
		parts []piece.Part
		want  string
	}{
		{piece.Panel{}, nil, "seat"},
		{piece.Panel{Name: "headrest", Chord: 20 * inch, Length: 5 * inch}, nil, "seat, stave of the headrest"},
		{piece.Panel{Name: "seat", Chord: 20 * inch}, nil, "seat"},
		{piece.Panel{Name: "Coopered seat", Chord: 19 * inch, Length: 18.5 * inch}, nil, "stave of the Coopered seat"},
		{piece.Panel{Name: "Sitz", Chord: 20 * inch, Length: 18 * inch}, nil, "stave of the Sitz"},
		{piece.Panel{}, []piece.Part{seat}, "Seat"},
		{piece.Panel{Name: "seat", Chord: 20 * inch, Length: 18 * inch}, []piece.Part{seat, rail}, "stave of the seat, rail"},
	} {
		d := reading()
		if tt.panel != (piece.Panel{}) {
			tt.panel.Radius, tt.panel.Stock, tt.panel.Staves = 0.9, 0.045, 7
			d.Panels = []piece.Panel{tt.panel}
		}
		if tt.parts != nil {
			d.Piece, d.Parts, d.Rocker.Density = piece.Piece{}, tt.parts, 700
		}
		var got []string
		for _, c := range mustLay(t, d).Cuts {
			if strings.HasPrefix(c.Part, "strip") || strings.HasSuffix(c.Part, "leg") || c.Part == "arm" {
				continue
			}
			got = append(got, c.Part)
			coopered := c.Part == tt.want && tt.panel.Length > 0 || c.Part == "stave of the seat"
			if c.Seat != (strings.EqualFold(c.Part, "seat") || coopered) {
				t.Errorf("%s: that its grain runs front to back is said: %v", c.Part, c.Seat)
			}
			if strings.EqualFold(c.Part, "seat") && (!near(c.Finished.Length, 18*inch) || !near(c.Finished.Width, 20*inch)) {
				t.Errorf("the seat is listed as %+v", c)
			}
		}
		if got := strings.Join(got, ", "); got != tt.want {
			t.Errorf("%q: %s; want %s", tt.panel.Name, got, tt.want)
		}
	}
}

// TestBeyondTheBoards: what does not come out of the boards there are is told, and by which of the two
// sizes: of boards of 1 3/4 in by 8 the legs of 1 5/8 come with 1/16 to plane, and not of boards of 1 5/8.
func TestBeyondTheBoards(t *testing.T) {
	for _, tt := range []struct {
		thick, wide float64 // in; zero is not named
		want        map[string][2]bool
	}{
		{0, 0, map[string][2]bool{"seat": {}, "rear leg": {}}},
		{1.75, 8, map[string][2]bool{"seat": {true, true}, "rear leg": {}}}, // the seat of 1 3/4 in has nothing left to plane
		{1.625, 24, map[string][2]bool{"seat": {false, true}, "rear leg": {false, true}}},
		{2, 20, map[string][2]bool{"seat": {true, false}, "rear leg": {}}}, // 20 in and the planing
	} {
		d := reading()
		d.Shop.StockThick, d.Shop.StockWidth = tt.thick*inch, tt.wide*inch
		d.Legs = []piece.Leg{{Which: piece.Rear, At: -9 * inch, Side: 1.625 * inch}}
		for _, c := range mustLay(t, d).Cuts {
			if want, asked := tt.want[c.Part]; asked && [2]bool{c.Wider, c.Thicker} != want {
				t.Errorf("boards of %v by %v in: %s wider %v, thicker %v, want %v", tt.thick, tt.wide, c.Part, c.Wider, c.Thicker, want)
			}
		}
	}
}

// TestSteamed: the maker's own part of the bend is lost: a floor edge of 42 in over 2 1/4 in of wood lies at
// (42 − 1 1/8)·0.9 − 1 1/8 in on a form inside the curve where a tenth is lost.
func TestSteamed(t *testing.T) {
	d := reading()
	d.Rocker.Made, d.Shop.Springback = piece.Steamed, 0.1
	l := mustLay(t, d)
	if l.Strips != nil || l.Board != nil || !l.Form.Steam || !near(l.Form.Radii[0].ConvexForm, (40.875*0.9-1.125)*inch) {
		t.Errorf("%+v", l.Form)
	}
	if l.Cuts[0].Part != "rocker, to be steamed" || !near(l.Cuts[0].Finished.Length, 41*inch) {
		t.Errorf("%+v", l.Cuts[0])
	}
}

// TestCorners: over a corner nothing bends, and what was not said is sawn.
func TestCorners(t *testing.T) {
	d := reading()
	d.Rocker = piece.Rocker{Nose: 17 * inch, Arcs: []piece.Arc{{Radius: 42 * inch, Length: 30 * inch},
		{Turn: 3 * degree}, {Radius: 42 * inch, Length: 11 * inch}}}
	if l := mustLay(t, d); l.Made != piece.Sawn || !l.MadeTaken || l.Board == nil || l.Form != nil {
		t.Errorf("made %v", l.Made)
	}
	d.Rocker.Made = piece.Laminated
	refused(t, d, "rocker.made", "bend over a corner")
	d = reading()
	d.Rocker.Top, d.Rocker.Depth = piece.Straight, 9*inch
	if l := mustLay(t, d); l.Made != piece.Sawn {
		t.Errorf("a straight top is %v", l.Made)
	}
}

// TestRefused holds what cannot be laid out.
func TestRefused(t *testing.T) {
	for _, tt := range []struct {
		change    func(d *piece.Design)
		key, says string
	}{
		{func(d *piece.Design) { d.Shop.Spacing = 1e-6 }, "shop.spacing", "too many"},
		{func(d *piece.Design) { d.Rocker.Top = piece.Straight }, "rocker.depth", "short of a tip"},
		{func(d *piece.Design) { d.Rocker.Top = piece.Taper }, "rocker.nose_depth", "tapered rocker needs"},
		{func(d *piece.Design) { d.Rocker.Sole = 3 * inch }, "rocker", "leaves no wood"},
		{func(d *piece.Design) { d.Rocker.Wood = "unobtainium" }, "rocker.wood", "unobtainium"},
		{func(d *piece.Design) { d.Rocker.Wood, d.Rocker.Made = "unobtainium", piece.Sawn }, "rocker.wood", "unobtainium"},
		{func(d *piece.Design) { d.Shop.Strip, d.Rocker.Depth = 1*inch, 0.2*inch }, "shop.strip", "a single strip"},
		{func(d *piece.Design) {
			d.Seat.Front, d.Seat.Depth = 0, 0
			d.Legs = []piece.Leg{{Which: piece.Rear, At: -8 * inch}}
			d.Piece, d.Body = piece.Piece{}, body.Body{Mass: 12, Inertia: 2}
			d.Body.Centre.Y = 0.4
			d.Sitters = []piece.Sitter{{Name: "owner", Mass: 80, Placed: piece.Place{Ahead: 0.2, Above: 0.2}}}
		}, "leg.top", "needs its height"},
	} {
		d := reading()
		tt.change(&d)
		refused(t, d, tt.key, tt.says)
	}
}

// TestStrainOfAWood: half of what breaks it, by the Wood Handbook's moduli of white ash: 103 MPa over 12.0 GPa.
func TestStrainOfAWood(t *testing.T) {
	d := reading()
	d.Rocker.Wood = "white ash"
	d.Units = quantity.Metric
	if s := mustLay(t, d).Strips; math.Abs(s.Strain-103.0/12000/2) > 1e-4 || s.Wood == "" { // the table's last digits
		t.Errorf("strain %v of %q", s.Strain, s.Wood)
	}
	d.Shop.Strip = 0.02
	refused(t, d, "shop.strip", "strips of")
}
