package trial

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestRoomHoldsEverybody rolls every load on its circle by hand, x = −Rθ + (q − C) turned about C, and holds that
// no limb of anybody who is checked leaves the room that is told, and that one reaches it.
func TestRoomHoldsEverybody(t *testing.T) {
	d := readingChair()
	d.Seat.Behind = 9 * quantity.In
	d.Sitters = []piece.Sitter{{Name: "owner", Mass: 82}}
	d.Sitters[0].Person.Sizes[person.Stature] = 1.78
	r := rocked(t, d, RockOptions{})
	radius := d.Rocker.Radius
	furthest, ahead := math.Inf(-1), math.Inf(-1)
	who := ""
	for _, l := range r.Report.Loads {
		if !l.Upright() || !l.Empty && (l.Role == piece.Hazard || l.Posture == person.PushingUp) {
			continue
		}
		from, to := rock(&l)
		crest, _ := d.TopOfBack()
		swept := map[string][]r2.Vec{"": {crest, r.Report.Edge.Tail(), r.Report.Edge.Nose()}}
		for _, figure := range l.Figures {
			swept[l.Name+": head"] = []r2.Vec{figure.Vertex, figure.Chin}
			swept[l.Name+": feet"] = []r2.Vec{figure.Knee, figure.Toe, figure.Heel, figure.Fingertip}
		}
		for name, points := range swept {
			for _, q := range points {
				for i := range 1001 {
					sin, cos := math.Sincos(from + (to-from)*float64(i)/1000)
					// counter-clockwise by the tilt about the arc's centre, which goes back by R times it
					along := -radius*(from+(to-from)*float64(i)/1000) + q.X*cos - (q.Y-radius)*sin
					if -along > furthest {
						furthest, who = -along, name
					}
					ahead = max(ahead, along)
				}
			}
		}
	}
	// sampled at other tilts than the sweep: a tenth of a millimetre
	if math.Abs(r.Room.Behind-furthest) > 1e-4 || r.Room.BehindBy != who {
		t.Errorf("it needs %v m behind (%s), rolled by hand %v (%s)", r.Room.Behind, r.Room.BehindBy, furthest, who)
	}
	if math.Abs(r.Room.Front-ahead) > 1e-4 {
		t.Errorf("it needs %v m ahead (%s), rolled by hand %v", r.Room.Front, r.Room.FrontBy, ahead)
	}
}
