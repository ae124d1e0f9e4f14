package piece

import "rockerwright/sim/quantity"

// Directions are the two ways in which a piece rocks, as they are called, and the tilts that are looked at.
type Directions struct {
	Back, Forward string    // behind "going"; a tilt above zero is Back
	Behind, Ahead string    // behind an angle: "back", "left"
	Over          string    // behind "at the edge of going", where it goes Back
	Marks         []float64 // tilts of which its cautions speak, rad; of a chair none
	Across        bool      // across its length: its two rockers are alike, and stand at its ends
}

// Directions returns the directions of this piece; in which it rocks matters to a cradle alone.
func (d Design) Directions() Directions { return d.Traits().Directions[d.Rocks] }

var (
	backAndForth = Directions{Back: "back", Forward: "forward", Behind: "back", Ahead: "forward", Over: "back"}
	alongABed    = Directions{Back: "to the head", Forward: "to the foot", Behind: "back", Ahead: "forward", Over: "over",
		Marks: cradleMarks}
	acrossABed = Directions{Back: "to the left", Forward: "to the right", Behind: "left", Ahead: "right", Over: "over",
		Marks: cradleMarks, Across: true}
	cradleMarks = []float64{5 * quantity.Deg, 10 * quantity.Deg}
)
