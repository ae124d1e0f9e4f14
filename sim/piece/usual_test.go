package piece

import (
	"math"
	"testing"

	"rockerwright/sim/quantity"
)

// multiple reports whether a number is a whole multiple of a step.
func multiple(x, step float64) bool { return math.Abs(math.Remainder(x, step)) < 1e-9*step }

// TestJudgementsAreRound: what is taken where a maker says nothing is in steps that a tape or a bevel shows, for nobody
// knows it finer: sixteenths of an inch or half millimetres, whole degrees, whole years; and it lies in the range over
// which a maker may change it.
func TestJudgementsAreRound(t *testing.T) {
	const sixteenth, half = quantity.In / 16, 0.0005
	d := full()
	judged := func(key string, got, step float64) {
		t.Helper()
		if m, _, err := d.Measure(key); err != nil || !multiple(got, step) || !(m.Low < got && got < m.High) {
			t.Errorf("%s: %v is taken, between %v and %v in steps of %v; %v", key, got, m.Low, m.High, step, err)
		}
	}
	judged("rocker.depth", Rocker{}.DepthOr(), sixteenth)
	judged("rocker.width", usualWidth, sixteenth)
	judged("rocker.ease", Rocker{}.EaseOr(), sixteenth)
	judged("seat.thickness", Seat{}.ThickOr(), sixteenth)
	judged("seat.thickness", seatShaped, half)
	judged("back.braces.thickness", backShaped, half)
	judged("arms.width", armWide, half)
	judged("back.braces.thickness", armThick, half)
	judged("leg.size", Leg{}.SideOr(), half)
	for _, age := range []float64{YoungestRider, OldestRider, OnTheLap, OnTheTail} {
		judged("sitter.age", age, 1)
	}
	for kind := Chair; kind <= Horse; kind++ {
		d := Design{Limits: Design{Kind: kind}.UsualLimits()}
		for _, key := range []string{"limits.back_margin", "limits.back_lift", "limits.forward_margin", "limits.rest_tilt"} {
			if m, asked, _ := d.Measure(key); *asked > 0 {
				judged(key, *asked, map[quantity.Kind]float64{quantity.Angle: quantity.Deg, quantity.Length: 0.001}[m.Kind])
			}
		}
	}
	inch, metric := Design{Shop: Shop{}.Usual(quantity.Inch)}, Design{Shop: Shop{}.Usual(quantity.Metric)}
	for key, step := range map[string]float64{
		"spacing": 0.001, "cutter": 0.001, "web": half, "kerf": half, "planing": half, "end_waste": 0.001,
	} {
		_, a, _ := inch.Measure("shop." + key)
		_, b, _ := metric.Measure("shop." + key)
		judged("shop."+key, *a, sixteenth)
		judged("shop."+key, *b, step)
		if math.Abs(*a / *b - 1) > 0.1 {
			t.Errorf("%s: a shop in inches takes %v m, one in millimetres %v", key, *a, *b)
		}
	}
	arms, _ := Design{Arms: Arms{Height: 0.2}, Seat: Seat{Depth: 0.5}}.ArmsOr()
	if part := arms.Length / 0.5; seatShaped > seatThick || !(YoungestRider < OldestRider) || !multiple(part, 0.05) || part > 1 {
		t.Errorf("a seat grows when it is shaped, riders when they are younger, or arms of %v of the seat reach over it", part)
	}
}

// TestJudgementsKeepToSources holds what is taken to what was published or is practised: the friction of dry wood on a
// hard smooth floor (Wood Handbook, FPL-GTR-282, chapter 4: 0.3 to 0.5, the low end being taken), the spread of clear
// specimens (chapter 5, from memory: 16 and 22 in 100), the gyration of a seated person (0.29 to 0.33 m by a chain of
// segments), springback of bent wood (6 to 10 in 100, practice), the tilts of cradles on record (5 degrees where infants
// died, Ackerman and Gilbert-Barness 1997; 10 at most, 16 CFR 1310), and what a bench reads (a tape to 1/16 in, a bevel
// to 1/2 degree, practice).
func TestJudgementsKeepToSources(t *testing.T) {
	const low, high = 0.3, 0.5
	hard, boards, rug, stone := GroundOf(Hardwood), GroundOf(Boards), GroundOf(Rug), GroundOf(Stone)
	if hard.Friction != low || stone.Friction != low || !(boards.Friction > low && boards.Friction < high) || rug.Friction < high {
		t.Errorf("friction %v, %v, %v, %v", hard.Friction, boards.Friction, rug.Friction, stone.Friction)
	}
	for _, g := range []Ground{hard, boards, rug, stone} {
		if !multiple(g.Friction, 0.05) || !multiple(g.Rolling, 0.0005) {
			t.Errorf("%+v is given finer than anybody knows", g)
		}
	}
	if !(hard.Rolling == stone.Rolling && hard.Rolling < boards.Rolling && boards.Rolling < rug.Rolling) {
		t.Error("a softer floor takes less")
	}
	for _, tt := range []struct {
		what      string
		got, want float64
	}{
		{"strength", StrengthSpread, 16. / 100},
		{"elasticity", ModulusSpread, 22. / 100},
		{"gyration", Gyration, (0.29 + 0.33) / 2},
		{"springback", Shop{}.Usual(quantity.Inch).Springback, (6. + 10) / 200},
		{"springback, metric", Shop{}.Usual(quantity.Metric).Springback, (6. + 10) / 200},
		{"a cradle's rest", Design{Kind: Cradle}.UsualLimits().RestTilt, 5 * math.Pi / 180},
		{"a cradle's first mark", Design{Kind: Cradle}.Directions().Marks[0], 5 * math.Pi / 180},
		{"a cradle's second mark", Design{Kind: Cradle, Rocks: End}.Directions().Marks[1], 10 * math.Pi / 180},
		{"a tape", lengthTolerance, 0.0254 / 16},
		{"a bevel", angleTolerance, math.Pi / 360},
	} {
		if !near(tt.got, tt.want, 1e-12) {
			t.Errorf("%s: %v, by the source %v", tt.what, tt.got, tt.want)
		}
	}
	if !multiple(radiusTolerance, quantity.In/16) || radiusTolerance < lengthTolerance || radiusTolerance > quantity.In/2 {
		t.Errorf("a radius is held to %v m", radiusTolerance)
	}
	if !multiple(weightTolerance, quantity.Lb) || weightTolerance > 5*quantity.Lb {
		t.Errorf("a weight is guessed to %v kg", weightTolerance)
	}
}

// TestShopHoldsItsOwn: what a shop says that it holds is taken of all measures of that kind, and of no other. Where it
// says nothing a length is held to half an inch or better, no finer than a 64th; and no angle goes beyond a right one.
func TestShopHoldsItsOwn(t *testing.T) {
	for _, m := range Measures() {
		held := m.Tolerance == 0 || m.Tolerance >= quantity.In/64 && m.Tolerance <= quantity.In/2
		if m.Kind == quantity.Length && !held || m.Kind == quantity.Angle && max(-m.Low, m.High, 10*m.Step) > math.Pi/2 {
			t.Errorf("%s is held to %v between %v and %v", m.Key, m.Tolerance, m.Low, m.High)
		}
	}
	d := full()
	d.Shop = Shop{Length: 1e-5, Radius: 2e-5, Angle: 3e-5, Weight: 4e-5}
	for key, want := range map[string]float64{"seat.depth": 1e-5, "rocker.radius": 2e-5, "back.recline": 3e-5, "piece.weight": 4e-5,
		"floor.friction": 0.1, "target.seat_falls": 0} {
		if m, _, err := d.Measure(key); err != nil || d.Tolerance(m) != want {
			t.Errorf("%s is held to %v, want %v; %v", key, d.Tolerance(m), want, err)
		}
		if m, _, _ := d.Measure(key); (Design{}).Tolerance(m) != m.Tolerance {
			t.Errorf("%s in a shop that says nothing", key)
		}
	}
}
