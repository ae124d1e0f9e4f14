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
	inch, metric := Shop{}.Usual(quantity.Inch), Shop{}.Usual(quantity.Metric)
	const sixteenth, half = quantity.In / 16, 0.0005
	chair, settee, cradle, horse := DefaultLimits(Chair), DefaultLimits(Settee), DefaultLimits(Cradle), DefaultLimits(Horse)
	for _, tt := range []struct {
		key  string // of the measure that it stands in for
		got  float64
		step float64
	}{
		{"rocker.depth", Rocker{}.DepthOr(), sixteenth},
		{"rocker.width", usualWidth, sixteenth},
		{"rocker.ease", Rocker{}.EaseOr(), sixteenth},
		{"seat.thickness", Seat{}.ThickOr(), sixteenth},
		{"seat.thickness", seatShaped, half},
		{"back.braces.thickness", backShaped, half},
		{"arms.width", armWide, half},
		{"back.braces.thickness", armThick, half},
		{"leg.size", Leg{}.SideOr(), half},
		{"limits.back_margin", chair.BackMargin, quantity.Deg},
		{"limits.back_lift", chair.BackLift, 0.001},
		{"limits.back_margin", settee.BackMargin, quantity.Deg},
		{"limits.back_lift", settee.BackLift, 0.001},
		{"limits.rest_tilt", cradle.RestTilt, quantity.Deg},
		{"limits.back_margin", horse.BackMargin, quantity.Deg},
		{"limits.forward_margin", horse.ForwardMargin, quantity.Deg},
		{"sitter.age", YoungestRider, 1},
		{"sitter.age", OldestRider, 1},
		{"sitter.age", OnTheLap, 1},
		{"sitter.age", OnTheTail, 1},
		{"shop.spacing", inch.Spacing, sixteenth},
		{"shop.cutter", inch.Cutter, sixteenth},
		{"shop.web", inch.Web, sixteenth},
		{"shop.kerf", inch.Kerf, sixteenth},
		{"shop.planing", inch.Planing, sixteenth},
		{"shop.end_waste", inch.EndWaste, sixteenth},
		{"shop.spacing", metric.Spacing, 2 * half},
		{"shop.cutter", metric.Cutter, half},
		{"shop.web", metric.Web, half},
		{"shop.kerf", metric.Kerf, half},
		{"shop.planing", metric.Planing, half},
		{"shop.end_waste", metric.EndWaste, 2 * half},
	} {
		d := full()
		m, _, err := d.Measure(tt.key)
		if err != nil || !multiple(tt.got, tt.step) || !(m.Low < tt.got && tt.got < m.High) {
			t.Errorf("%s: %v is taken, between %v and %v in steps of %v; %v", tt.key, tt.got, m.Low, m.High, tt.step, err)
		}
	}
	if seatShaped > seatThick || !(YoungestRider < OldestRider) {
		t.Error("a seat grows when it is shaped, or riders when they are younger")
	}
	if full := (Arms{Height: 0.2}); !multiple(ArmReach, 0.05) || (Design{Arms: full, Seat: Seat{Depth: 0.45}}).arm() > 0.45 {
		t.Errorf("an arm is taken to be %v of the seat", ArmReach)
	}
	for _, pair := range [][2]float64{{inch.Spacing, metric.Spacing}, {inch.Cutter, metric.Cutter}, {inch.Web, metric.Web},
		{inch.Kerf, metric.Kerf}, {inch.Planing, metric.Planing}, {inch.EndWaste, metric.EndWaste}} {
		if math.Abs(pair[0]/pair[1]-1) > 0.1 {
			t.Errorf("a shop in inches takes %v m, one in millimetres %v", pair[0], pair[1])
		}
	}
}

// arm returns how long an arm is, m.
func (d Design) arm() float64 {
	arms, _ := d.ArmsOr()
	return arms.Length
}

// TestJudgementsKeepToSources holds what is taken to what was published or is practised, in ../shared's lists: the
// friction of dry wood on a hard smooth floor (Wood Handbook, FPL-GTR-282, chapter 4: 0.3 to 0.5, the low end being
// taken), the spread of clear specimens (chapter 5, from memory: 16 and 22 in 100), the gyration of a seated person
// (0.29 to 0.33 m by a chain of segments), springback of bent wood (6 to 10 in 100, practice), the tilts of cradles
// on record (5 degrees where infants died, Ackerman and Gilbert-Barness 1997; 10 at most, 16 CFR 1310), and what a
// bench reads (a tape to 1/16 in, a bevel to 1/2 degree, practice).
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
		{"a cradle's rest", DefaultLimits(Cradle).RestTilt, 5 * math.Pi / 180},
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

// TestShopHoldsItsOwn: what a shop says that it holds is taken of all measures of that kind, and of no other.
func TestShopHoldsItsOwn(t *testing.T) {
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
