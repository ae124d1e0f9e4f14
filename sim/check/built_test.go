package check

import (
	"errors"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// drawnAndRead is the finished chair of readings with its drawing.
func drawnAndRead() piece.Design {
	d, drawing := finished(), sized()
	d.Rocker, d.Piece = drawing.Rocker, drawing.Piece
	return d
}

// TestDrawnIsCheckedAsDrawn: what a file draws is checked as drawn, whatever was read of it and however wrong, and
// what it does not draw is taken from the readings.
func TestDrawnIsCheckedAsDrawn(t *testing.T) {
	drawing := checked(t, sized())
	d := drawnAndRead()
	d.Measured.Right, d.Measured.LowPoint, d.Measured.DowelAbove = d.Measured.Right[1:], 1, 0 // cannot be
	r := checked(t, d)
	if r.Curve != nil || r.Read != nil || r.Loads[0].Rig.Body != drawing.Loads[0].Rig.Body || r.Tape != drawing.Tape {
		t.Errorf("drawn and read: %+v, want %+v", r.Loads[0].Rig.Body, drawing.Loads[0].Rig.Body)
	}
	for name, tell := range map[string]func(piece.Design) error{
		"measure":  func(d piece.Design) error { _, err := Examine(d); return err },
		"as-built": func(d piece.Design) error { _, err := AsBuilt(d); return err },
	} {
		var wrong *piece.KeyError
		if err := tell(d); !errors.As(err, &wrong) || wrong.Key != "measured.right" {
			t.Errorf("%s: %v, want an error of measured.right", name, err)
		}
	}
	curve := drawnAndRead()
	curve.Piece.Mass = 0 // the weight is not drawn
	if r := checked(t, curve); r.Curve != nil || r.Read == nil || math.Abs(r.Loads[0].Rig.Body.Mass-12) > 1e-12 {
		t.Errorf("only the curve is drawn: %+v", r.Loads[0].Rig.Body)
	}
	weight := drawnAndRead()
	weight.Rocker = finished().Rocker
	if r := checked(t, weight); r.Curve == nil || r.Read != nil || math.Abs(r.Loads[0].Rig.Body.Mass-weight.Piece.Mass) > 1e-12 {
		t.Errorf("only the weight is drawn: %+v", r.Loads[0].Rig.Body)
	}
}

// TestMeasureTellsTheReadings: what the readings tell is the same whether the piece is drawn beside them or not.
func TestMeasureTellsTheReadings(t *testing.T) {
	alone, err := Examine(finished())
	if err != nil {
		t.Fatal(err)
	}
	both, err := Examine(drawnAndRead())
	if err != nil || both.Read.Body != alone.Read.Body || both.Curve.Fit.Arcs[0] != alone.Curve.Fit.Arcs[0] {
		t.Errorf("%v, %+v, want %+v", err, both.Read, alone.Read)
	}
}

// TestAsBuiltIsThePieceThatWasRead: with a full set of readings the piece as built is the one that these were made
// from, whatever is drawn; with fewer, what was not read is as drawn.
func TestAsBuiltIsThePieceThatWasRead(t *testing.T) {
	d := drawnAndRead()
	d.Rocker.Radius = 46 * quantity.In
	b, err := AsBuilt(d)
	if err != nil {
		t.Fatal(err)
	}
	got := b.As.Loads[0].Rig.Body
	if math.Abs(got.Mass-12) > 1e-9 || math.Abs(got.Centre.X+0.02) > 1e-9 || math.Abs(got.Centre.Y-0.42) > 1e-9 ||
		math.Abs(got.Inertia-1.6) > 1e-5 { // through a fitted radius
		t.Errorf("as built it is %+v", got)
	}
	if r := b.As.Design.Rocker.Radius; math.Abs(r-42*quantity.In) > 1e-7 {
		t.Errorf("its radius is %v in", r/quantity.In)
	}
	d.Measured = piece.Measured{Weight: 15}
	if b, err = AsBuilt(d); err != nil {
		t.Fatal(err)
	}
	got, drawn := b.As.Loads[0].Rig.Body, b.Drawn.Loads[0].Rig.Body
	if got.Mass != 15 || r2.Norm(r2.Sub(got.Centre, drawn.Centre)) > 1e-12 || math.Abs(got.Inertia/15-drawn.Inertia/drawn.Mass) > 1e-12 {
		t.Errorf("weighed alone it is %+v, drawn %+v", got, drawn)
	}
	if len(b.Rows) != 1 || b.Rows[0].What != BesideWeight || b.Rows[0].Agrees() {
		t.Errorf("weighed alone: %+v", b.Rows)
	}
	d.Measured = piece.Measured{TenRocks: 9, LetGo: 5 * quantity.Deg} // quicker than without inertia
	if b, err = AsBuilt(d); err != nil || b.Refused == nil || len(b.Rows) != 1 || b.Rows[0].Agrees() {
		t.Errorf("rocks that cannot be: %v, refused %v, %+v", err, b.Refused, b.Rows)
	}
}

// TestUnlikeRockers: of two rockers that came out otherwise, one flatter, both rows say so, and the piece walks.
func TestUnlikeRockers(t *testing.T) {
	d := drawnAndRead()
	for i := range d.Measured.Right {
		d.Measured.Right[i] *= 0.93
	}
	b, err := AsBuilt(d)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range b.Rows {
		want := map[string]bool{BesideRight: true, BesideTwins: true, BesideRadius: true}[r.What]
		if want == r.Agrees() && (r.What != BesideAbove && r.What != BesideAhead && r.What != BesideWeight && r.What != BesideRocks) {
			t.Errorf("%+v", r)
		}
	}
	if w := b.As.Walk(&b.As.Loads[0]); w == nil || w.OneCurve || w.Heading == 0 {
		t.Errorf("as built it does not walk: %+v", w)
	}
}

// TestTiltsBesideTheDrawing: what a level and a tape would show of the chair exactly as drawn (the fall of the seat and the tips at
// its rest, and on square ends the tilts at which it goes over) agrees; each spoilt by three times its ± is named.
func TestTiltsBesideTheDrawing(t *testing.T) {
	d := sized()
	drawing := checked(t, d)
	empty := &drawing.Loads[0]
	noseTip, tailTip := drawing.TipsAtRest(empty)
	fall := d.Seat.Fall()
	whole := piece.Measured{Weight: d.Piece.Mass, SeatFallsEmpty: empty.SeatFall,
		BalancesOnTail: empty.Back.Tip + fall, ReturnsFromTail: empty.Back.Tip + fall,
		BalancesOnNose: empty.Forward.Tip + fall, ReturnsFromNose: empty.Forward.Tip + fall, NoseTip: noseTip, TailTip: tailTip}
	rows := func(m piece.Measured) map[string]Beside {
		d.Measured = m
		b, err := AsBuilt(d)
		if err != nil {
			t.Fatal(err)
		}
		found := map[string]Beside{}
		for _, r := range b.Rows {
			found[r.What] = r
		}
		return found
	}
	as := rows(whole)
	if len(as) < 8 {
		t.Errorf("rows %v", as)
	}
	for what, r := range as {
		if !r.Agrees() || math.Abs(r.Read-r.Drawn) > 1e-6 {
			t.Errorf("%s: %v drawn, %v read ± %v", what, r.Drawn, r.Read, r.Uncertain)
		}
	}
	for what, spoil := range map[string]func(m *piece.Measured, by float64){
		"seat_falls_empty": func(m *piece.Measured, by float64) { m.SeatFallsEmpty += by },
		"balances_on_tail": func(m *piece.Measured, by float64) { m.BalancesOnTail += by; m.ReturnsFromTail += by },
		"balances_on_nose": func(m *piece.Measured, by float64) { m.BalancesOnNose += by; m.ReturnsFromNose += by },
		"nose_tip":         func(m *piece.Measured, by float64) { m.NoseTip += by },
		"tail_tip":         func(m *piece.Measured, by float64) { m.TailTip += by },
	} {
		for _, way := range []float64{-3, 3} {
			spoilt := whole
			by := as[what].Uncertain
			spoil(&spoilt, way*by)
			for name, r := range rows(spoilt) {
				tilt := name != BesideWeight && name != BesideAhead && name != BesideAbove // which all readings enter
				if tilt && r.Agrees() == (name == what) {
					t.Errorf("%s spoilt by %v: %s is %v drawn, %v read ± %v", what, way*by, name, r.Drawn, r.Read, r.Uncertain)
				}
			}
		}
	}
}
