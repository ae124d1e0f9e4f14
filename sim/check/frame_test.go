package check

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// heavySeat is a design whose mass is all in the seat frame, so that sliding it on the
// rockers moves all of it: one body of 90 kg, 24 in over the floor, on a 42 in arc.
func heavySeat(top piece.Top) piece.Design {
	return piece.Design{
		Rocker: piece.Rocker{Radius: 42 * quantity.In, Nose: 18 * quantity.In, Tail: 22 * quantity.In, Depth: 2 * quantity.In, Top: top},
		Seat:   piece.Seat{Rear: 16 * quantity.In, Front: 16.5 * quantity.In, Depth: 18 * quantity.In, Behind: 8 * quantity.In},
		Parts:  []piece.Part{{Shape: piece.Point, Mass: 90, At: r2.Vec{Y: 24 * quantity.In}}},
	}
}

// TestSlideOnConcentricTop: on arcs that are concentric top and bottom, sliding the
// chair turns it about the arc's centre, so that it rests as before and only the
// overhangs change.
func TestSlideOnConcentricTop(t *testing.T) {
	d := heavySeat(piece.Concentric)
	before := checked(t, d)
	d.Seat.Slide = 0.5 * quantity.In
	after := checked(t, d)
	a, b := before.Loads[0], after.Loads[0]
	if !near(a.SeatFall, b.SeatFall, 1e-12) || !near(a.Balance.Period, b.Balance.Period, 1e-12) {
		t.Errorf("slid: seat falls %v then %v rad, period %v then %v s; want the same", a.SeatFall, b.SeatFall, a.Balance.Period,
			b.Balance.Period)
	}
	if !(b.Balance.Back.Angle > a.Balance.Back.Angle) {
		t.Errorf("slid forward: margin at the back %v then %v rad; want more", a.Balance.Back.Angle, b.Balance.Back.Angle)
	}
	// the slide is a turn about the centre by slide over the top edge's radius, 40 in
	if want := a.Balance.Back.Angle; math.Abs(b.Balance.Rest.Tilt-a.Balance.Rest.Tilt+0.5/40) > 1e-12 {
		t.Errorf("the rockers turned by %v rad, want %v (margin was %v)", b.Balance.Rest.Tilt-a.Balance.Rest.Tilt, -0.5/40, want)
	}
}

// TestRolesAndNames: which loads there are, in file order.
func TestRolesAndNames(t *testing.T) {
	d := readingChair()
	d.Sitters = append(d.Sitters, piece.Sitter{Name: "rider", Role: piece.Other, Mass: 30, Inertia: 1, Centre: r2.Vec{Y: 0.6}})
	r, err := Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	d.Sitters = append(d.Sitters, piece.Sitter{Name: "guest", Role: piece.Other, Posture: person.AtEase, Mass: 60,
		Placed: piece.Place{Ahead: 0.1, Above: 0.2}})
	r, err = Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"empty", "owner, at ease", "owner, upright", "owner, rising", "rider", "guest, at ease"}
	for i, name := range want {
		if r.Loads[i].Name != name {
			t.Errorf("load %d is %q, want %q", i, r.Loads[i].Name, name)
		}
	}
	if r.Loads[0].Balance.Outcome != sim.Rocks {
		t.Errorf("the empty chair: %v", r.Loads[0].Balance.Outcome)
	}
}
