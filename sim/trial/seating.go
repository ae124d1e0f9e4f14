package trial

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// How far a number of a published test can be trusted.
const (
	ReadInText = "read in the text"
	SecondHand = "second-hand"
	FromMemory = "from memory"
)

// A SeatTest is the lever arms of a published seating test, tried on the piece. It is no certificate: those tests
// are made on the finished piece, by their own rules, and leave rocking chairs out or treat them apart.
type SeatTest struct {
	Name       string
	Source     string
	Confidence string
	Force      float64     // horizontal, N, + back; NaN where its value was not seen
	Tips       float64     // slow force there that takes it over, N, ≥ 0
	Outcome    sim.Outcome // of Force for five seconds; meaningful only where it is known
}

// A SlopeTest is a rider's mass on a sloping floor.
type SlopeTest struct {
	Name   string
	Slope  float64 // rise to the front, rad
	Rests  bool
	Margin float64 // to the nearer hilltop, rad; 0 without a rest
}

const (
	seatLoad = 600.0 // N, of all the tests quoted
	held     = 5.0   // s
)

// seating tries the tests on a chair or settee whose seat and back are drawn; not on a child's, for they load a
// seat with a grown-up's weight. The forward force acts where the pad touches the seat, not at its edge.
//
// Sources as in the project's list of standards: ISO 7174-1:1988, 7.1.1 and 7.1.2 (clause
// text; part 1 excludes rocking chairs); EN 1022:2018 (forward second-hand, rearward from
// memory; rocking chairs are a case of their own there).
func seating(r check.Report) []SeatTest {
	d, empty := r.Design, &r.Loads[0]
	if !d.Traits().Seating || !d.Seat.SlopeKnown() || !d.Back.Drawn() || !empty.Upright() || r.ForAChild() {
		return nil
	}
	gravity := d.StaticFloor().FreeFall()
	along := func(fromBack float64) r2.Vec { // a place on the seat
		way := r2.Unit(r2.Sub(d.Seat.FrontEdge(), d.Seat.Meet()))
		return r.Placed(r2.Add(d.Seat.Meet(), r2.Scale(fromBack, way)))
	}
	up := min(0.300, d.Back.Height)
	sin, cos := math.Sincos(d.Back.Recline)
	onBack := r.Placed(r2.Add(d.Seat.Meet(), r2.Scale(up/cos, r2.Vec{X: -sin, Y: cos})))
	inSeat := along(0.175)
	rear := RearForce(r.Edge.Height(inSeat, 0))                          // loaded seat height, as drawn
	near, nearer := along(d.Seat.Depth-0.060), along(d.Seat.Depth-0.050) // the front edge
	var list []SeatTest
	for _, t := range []struct {
		SeatTest
		load, at r2.Vec
		way      float64
	}{
		{SeatTest{Name: "forward, 600 N at 50 mm from the front edge",
			Source: "ISO 7174-1:1988, 7.1.1 (leaves rocking chairs out)", Confidence: ReadInText, Force: math.NaN()}, nearer, nearer, -1},
		{SeatTest{Name: "forward, 600 N at 60 mm from the front edge, 20 N outward",
			Source: "EN 1022", Confidence: SecondHand, Force: -20}, near, near, -1},
		{SeatTest{Name: "rearward, 600 N at 175 mm from the back, force at 300 mm over the seat",
			Source: "ISO 7174-1:1988, 7.1.2 (leaves rocking chairs out)", Confidence: ReadInText, Force: math.NaN()}, inSeat, onBack, 1},
		{SeatTest{Name: fmt.Sprintf("rearward, 600 N on the seat and %.0f N at the back", rear),
			Source: "EN 1022, fixed back (rocking chairs are a case of their own)", Confidence: FromMemory, Force: rear},
			inSeat, onBack, 1},
	} {
		rig := empty.Rig
		rig.Body = body.Join(rig.Body, body.Body{Mass: seatLoad / gravity, Centre: t.load})
		b := rig.Balance()
		if t.Outcome = b.Outcome; b.Outcome == sim.Rocks {
			t.Tips = slowly(rig, b, t.at, t.way)
			if push := (motion.Push{At: t.at, Force: t.Force, Time: held}); !math.IsNaN(t.Force) {
				t.Outcome = motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt, Push: push}, motion.Options{Duration: held}).Outcome
			}
		}
		list = append(list, t.SeatTest)
	}
	return list
}

// RearForce returns the horizontal force (N) of EN 1022 on a fixed back at a loaded seat
// height (m), 0.2857·(1000 − H) N with H in mm: from memory, unverified.
func RearForce(height float64) float64 { return 0.2857 * (1000 - 1000*height) }

// slowly returns the force at a point that takes a rig over by pulling slowly in a way: the
// largest of m·g·Z/y up to the hilltop, looked at each quarter of a degree.
func slowly(rig sim.Rig, b sim.Balance, at r2.Vec, way float64) float64 {
	side := b.Back
	if way < 0 {
		side = b.Forward
	}
	if !side.Exists() {
		return math.Inf(1)
	}
	weight := rig.Body.Mass * rig.Floor.FreeFall()
	most := 0.0
	for turn := 0.0; turn < side.Angle; turn += quantity.Deg / 4 {
		tilt := b.Rest.Tilt + way*turn
		arm, _ := rig.Righting(tilt)
		if _, height := rig.Place(at, tilt); height > 0 {
			most = max(most, way*weight*arm/height)
		}
	}
	return most
}

// slopes stands a horse with riders of 25 and 50 kg on a floor of 10 degrees, either way
// (EN 71-1, 8.23.1: the loads and the slope, read in the text).
func slopes(r check.Report) []SlopeTest {
	i := slices.IndexFunc(r.Loads, func(l check.Load) bool { return !l.Empty && l.Role == piece.Owner })
	if i < 0 || !r.Design.Traits().Ridden {
		return nil
	}
	rider := r.Loads[i].Person
	var list []SlopeTest
	for _, mass := range []float64{25, 50} {
		for _, slope := range []float64{10 * quantity.Deg, -10 * quantity.Deg} {
			l := check.Load{Rig: r.Loads[0].Rig}
			l.Rig.Body = body.Join(l.Rig.Body, rider.Scaled(mass/rider.Mass))
			l.Rig.Floor.Slope = slope
			l.Balance = l.Rig.Balance()
			t := SlopeTest{Name: fmt.Sprintf("%.0f kg, nose uphill", mass), Slope: slope, Rests: l.Upright()}
			if slope < 0 {
				t.Name = fmt.Sprintf("%.0f kg, tail uphill", mass)
			}
			if t.Rests {
				t.Margin = min(l.Balance.Back.Angle, l.Balance.Forward.Angle)
			}
			list = append(list, t)
		}
	}
	return list
}
