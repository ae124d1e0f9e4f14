package check

import (
	"errors"
	"math"
	"strings"
	"testing"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// finished is a chair known by its readings alone: an arc of 42 in and a body whose scale
// readings follow from statics, exact.
func finished() piece.Design {
	d := sized()
	known := sim.Rig{Profile: must2(d.Rocker.Profile()), Body: sim.Rig{}.Body}
	known.Body.Mass, known.Body.Centre, known.Body.Inertia = 12, vec(-0.02, 0.42), 1.6
	d.Rocker = piece.Rocker{Nose: d.Rocker.Nose, Tail: d.Rocker.Tail}
	d.Piece = piece.Piece{}
	const radius, spacing = 42 * quantity.In, 2 * quantity.In
	for i := 8; i >= -9; i-- {
		x := spacing * float64(i)
		d.Measured.Left = append(d.Measured.Left, radius-math.Sqrt(radius*radius-x*x))
	}
	d.Measured.Right = append([]float64(nil), d.Measured.Left...)
	d.Measured.Spacing = spacing
	d.Measured.Weight, d.Measured.DowelAhead, d.Measured.DowelAbove = 12, -0.02, 0.42
	d.Measured.LetGo = 5 * quantity.Deg
	d.Measured.TenRocks = 10 * known.Swing(known.Balance(), 5*quantity.Deg).Period
	return d
}

func must2[T any](x T, err error) T {
	if err != nil {
		panic(err)
	}
	return x
}

// TestReadingsAreUsed holds that check takes weight, balance point, inertia and curve from
// the readings, and finds what they were made from.
func TestReadingsAreUsed(t *testing.T) {
	d := finished()
	r := checked(t, d)
	b := r.Loads[0].Rig.Body
	if math.Abs(b.Mass-12) > 1e-12 || math.Abs(b.Centre.Y-0.42) > 1e-12 || math.Abs(b.Inertia-1.6) > 1e-6 { // through a fitted curve
		t.Errorf("the piece is %+v", b)
	}
	if r.Curve == nil || !r.Curve.One || len(r.Curve.Fit.Arcs) != 1 || math.Abs(r.Curve.Fit.Arcs[0].Radius-42*quantity.In) > 1e-6 {
		t.Errorf("the curve is %+v", r.Curve)
	}
	if math.Abs(r.Tape.Edge-d.Rocker.Nose-d.Rocker.Tail) > 1e-9 {
		t.Errorf("the edge is %v long", r.Tape.Edge)
	}
	f, err := Examine(d)
	if err != nil || f.Read == nil || f.UsualInertia || f.Read.Mass.Limits() != "weight" {
		t.Errorf("%v, %+v", err, f)
	}
	d.Measured.TenRocks, d.Measured.LetGo = 0, 0
	if r, err = Check(d); err != nil || !r.UsualInertia || r.Loads[0].Rig.Body.Inertia <= 0 {
		t.Errorf("without timed rocks: %v, usual %v, %+v", err, r.UsualInertia, r.Loads[0].Rig.Body)
	}
	d.Measured.Right = nil
	if r, err = Check(d); err != nil || r.Curve.Right != nil || !r.Curve.One {
		t.Errorf("one rocker read: %v, %+v", err, r.Curve)
	}
}

// TestRiddenRocks holds that rocks with the sitter in it, whose body hides that of the
// piece, leave the inertia to the drawn sizes, and that rocks that disagree with the empty
// ones are doubtful.
func TestRiddenRocks(t *testing.T) {
	d := finished()
	empty := checked(t, d)
	l := find(t, empty, "owner, upright")
	d.Measured.RiddenLetGo = 4 * quantity.Deg
	d.Measured.RiddenTenRocks = 10 * l.Rig.Swing(l.Balance, 4*quantity.Deg).Period
	r, err := Check(d)
	if err != nil || len(r.Read.Doubts) > 0 || !(math.Abs(r.Loads[0].Rig.Body.Inertia-1.6) < 1e-5) {
		t.Errorf("both: %v, doubts %+v, inertia %v", err, r.Read.Doubts, r.Loads[0].Rig.Body.Inertia)
	}
	off := d
	off.Measured.RiddenTenRocks *= 3
	if r, err = Check(off); err != nil || len(r.Read.Doubts) != 1 || r.Read.Doubts[0].Reading != "ten_rocks_ridden" {
		t.Errorf("three times off: %v, doubts %+v", err, r.Read.Doubts)
	}
	d.Measured.TenRocks, d.Measured.LetGo = 0, 0
	if r, err = Check(d); err != nil || !r.UsualInertia || !(r.Loads[0].Rig.Body.Inertia > 0) {
		t.Errorf("%v, usual %v, inertia %v", err, r.UsualInertia, r.Loads[0].Rig.Body.Inertia)
	}
	f, err := Examine(d)
	if err != nil || f.Read.Untold != "ten_rocks_ridden" || f.Read.Body != r.Loads[0].Rig.Body {
		t.Errorf("%v, %+v", err, f.Read)
	}
}

// TestUnequalReadings holds that rockers read unequal are not one curve and walk, and that
// a misread rise is left out of what is compared.
func TestUnequalReadings(t *testing.T) {
	d := finished()
	for i := range d.Measured.Right {
		d.Measured.Right[i] *= 1.04
	}
	r, err := Check(d)
	if err != nil || r.Curve.One {
		t.Fatalf("%v, %+v", err, r.Curve)
	}
	if w := r.Walk(&r.Loads[0]); w == nil || w.OneCurve || w.Heading == 0 {
		t.Errorf("%+v", w)
	}
	d = finished()
	d.Measured.Left[4] += quantity.In
	c, err := Check(d)
	if err != nil || c.Curve.Left.Suspect != 4 || !c.Curve.One {
		t.Errorf("%v, %+v", err, c.Curve)
	}
}

// TestReadingErrors holds that each wrong reading is named by its key.
func TestReadingErrors(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(d *piece.Design)
		key    string
	}{
		{"slid", func(d *piece.Design) { d.Seat.Slide = 0.01 }, "seat.slide"},
		{"left and right differ", func(d *piece.Design) { d.Measured.Right = d.Measured.Right[1:] }, "measured.right"},
		{"low point at an end", func(d *piece.Design) { d.Measured.LowPoint = 1 }, "measured.low_point"},
		{"half a station", func(d *piece.Design) { d.Measured.LowPoint = 4.5 }, "measured.low_point"},
		{"no spacing", func(d *piece.Design) { d.Measured.Spacing = 0 }, "measured.spacing"},
		{"few rises", func(d *piece.Design) { d.Measured.Left, d.Measured.Right = d.Measured.Left[7:11], nil }, "measured.left"},
		{"a rise of a mile", func(d *piece.Design) { d.Measured.Left[3] = 1600 }, "measured.left.4"},
		{"no rest", func(d *piece.Design) { d.Measured.DowelAbove = 2 }, "measured.ten_rocks"},
		{"nobody rides", func(d *piece.Design) {
			d.Measured.TenRocks, d.Measured.RiddenTenRocks, d.Sitters = 0, 20, nil
			d.People.Without = [piece.Usuals]bool{piece.SmallWoman: true, piece.LargeMan: true}
		}, "measured.ten_rocks_ridden"},
		{"no inertia and no seat", func(d *piece.Design) {
			d.Measured.TenRocks, d.Seat, d.Sitters = 0, piece.Seat{}, nil
		}, "measured"},
		{"no height", func(d *piece.Design) { d.Measured.DowelAbove = 0 }, "measured.raised"},
	} {
		d := finished()
		tt.change(&d)
		_, err := Check(d)
		var wrong *piece.KeyError
		if !errors.As(err, &wrong) || wrong.Key != tt.key {
			t.Errorf("%s: %v, want an error of %s", tt.name, err, tt.key)
		}
		if _, err := Examine(d); !errors.As(err, &wrong) {
			t.Errorf("%s: examined without an error", tt.name)
		}
	}
	d := finished()
	d.Measured = piece.Measured{}
	d.Rocker.Radius = 1
	if _, err := Examine(d); err == nil || !strings.Contains(err.Error(), "nothing was read") {
		t.Errorf("no readings: %v", err)
	}
	d = finished()
	d.Measured.Weight, d.Measured.DowelAhead, d.Measured.DowelAbove, d.Measured.TenRocks = 0, 0, 0, 0
	d.Piece.Mass = 12
	if f, err := Examine(d); err != nil || f.Read != nil || f.Curve == nil {
		t.Errorf("only a curve: %v, %+v", err, f)
	}
}

// TestMoreErrors holds the messages of people, braces, parts and rocks.
func TestMoreErrors(t *testing.T) {
	braces := piece.Braces{Count: 7, Width: 0.03, Thickness: 0.01, Length: 0.6, Wood: "white ash"}
	for _, tt := range []struct {
		name   string
		change func(d *piece.Design)
		key    string
	}{
		{"percentile of 100", func(d *piece.Design) { d.Sitters[0].Person.Percentile = 100 }, "sitter.percentile"},
		{"half a year", func(d *piece.Design) { d.Sitters[0].Person = person.Given{Age: 0.5} }, "sitter.age"},
		{"fourteen without a height", func(d *piece.Design) { d.Sitters[0].Person = person.Given{Age: 14} }, "sitter.age"},
		{"infant of three", func(d *piece.Design) {
			d.Kind, d.Bed, d.Sitters[0].Person = piece.Cradle, piece.Bed{Height: 0.1, Length: 0.8, Width: 0.4}, person.Given{Age: 3}
		}, "sitter.age"},
		{"infant without a bed", func(d *piece.Design) {
			d.Kind, d.Seat, d.Piece = piece.Cradle, piece.Seat{}, piece.Piece{}
			d.Body = body.Body{Mass: 10, Centre: vec(0, 0.2), Inertia: 1}
		}, "sitter"},
		{"placed without a weight", func(d *piece.Design) { d.Sitters[0] = piece.Sitter{Centre: vec(0, 0.5)} }, "sitter.weight"},
		{"placed, with a percentile", func(d *piece.Design) {
			d.Sitters[0] = piece.Sitter{Mass: 70, Centre: vec(0, 0.5), Person: person.Given{Percentile: 50}}
		}, "sitter.percentile"},
		{"half a brace", func(d *piece.Design) { d.Back.Braces = braces; d.Back.Braces.Count = 2.5 }, "back.braces.count"},
		{"braces of no wood", func(d *piece.Design) { d.Back.Braces = braces; d.Back.Braces.Wood = "" }, "back.braces.wood"},
		{"braces of unknown wood", func(d *piece.Design) { d.Back.Braces = braces; d.Back.Braces.Wood = "ebbony" }, "back.braces.wood"},
		{"braces of paper", func(d *piece.Design) { d.Back.Braces = braces; d.Back.Braces.Thickness = 0.0005 }, "back.braces.thickness"},
		{"rockers of unknown wood", func(d *piece.Design) { d.Rocker.Depth, d.Rocker.Width, d.Rocker.Wood = 0.05, 0.03, "oack" },
			"rocker.wood"},
		{"a part without its size", func(d *piece.Design) {
			d.Piece, d.Parts = piece.Piece{}, []piece.Part{{Shape: piece.Cylinder, Mass: 1}}
		}, "part.1.height"},
		{"half a part", func(d *piece.Design) {
			d.Piece, d.Parts = piece.Piece{}, []piece.Part{{Shape: piece.Point, Mass: 1, Count: 1.5}}
		}, "part.1.count"},
		{"a wet part", func(d *piece.Design) {
			bar := piece.Part{Shape: piece.Crosswise, Diameter: 0.03, Width: 0.4, Wood: "white ash", Moisture: 0.9}
			d.Piece, d.Parts = piece.Piece{}, []piece.Part{bar}
		}, "part.1.moisture"},
		{"a cone of no wood", func(d *piece.Design) {
			d.Piece, d.Parts = piece.Piece{}, []piece.Part{{Shape: piece.Cone, Diameter: 0.03, Height: 0.4}}
		}, "part.1.wood"},
	} {
		d := sized()
		tt.change(&d)
		_, err := Check(d)
		var wrong *piece.KeyError
		if !errors.As(err, &wrong) || wrong.Key != tt.key {
			t.Errorf("%s: %v, want an error of %s", tt.name, err, tt.key)
		}
	}
}

// TestCureOfArcs holds that the cure of a chain of arcs lengthens its last arc.
func TestCureOfArcs(t *testing.T) {
	short := sized()
	short.Rocker = piece.Rocker{Nose: 17 * quantity.In, Arcs: []piece.Arc{{Radius: 42 * quantity.In, Length: 29 * quantity.In}}}
	short.Limits = piece.Limits{BackLift: 0.02}
	c, err := Check(short)
	if err != nil || c.Holds() || c.Try == nil || c.Try.Key != "rocker.arcs.1.length" {
		t.Errorf("%v, holds %v, %+v", err, c.Holds(), c.Try)
	}
	same, keys, err := Recommended(plain(1, 0.4, 0.4, 10, vec(0, 0.5), 1))
	if err != nil || keys != nil || same.Body.Mass != 10 {
		t.Errorf("nothing to size: %v, %v", err, keys)
	}
	if _, _, err := Recommended(piece.Design{}); err == nil {
		t.Error("an empty design is sized")
	}
}
