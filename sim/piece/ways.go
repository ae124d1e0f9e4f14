package piece

import "rockerwright/sim/quantity"

// Ways are the two ways in which a piece rocks, as they are called, and the tilts that are looked at.
type Ways struct {
	Back, Forward string    // behind "going"; a tilt above zero is Back
	Behind, Ahead string    // behind an angle: "back", "left"
	Over          string    // behind "at the edge of going", where it goes Back
	Marks         []float64 // tilts of which its cautions speak, rad; of a chair none
}

// WaysOf returns the ways of a kind; the direction matters to a cradle alone.
func WaysOf(kind Kind, rocks Direction) Ways { return ways[kind][rocks] }

// Ways returns the ways of this piece.
func (d Design) Ways() Ways { return WaysOf(d.Kind, d.Rocks) }

var ways = func() [4][2]Ways {
	chair := Ways{Back: "back", Forward: "forward", Behind: "back", Ahead: "forward", Over: "back"}
	end := chair
	end.Back, end.Forward, end.Over, end.Marks = "to the head", "to the foot", "over", []float64{5 * quantity.Deg, 10 * quantity.Deg}
	side := end
	side.Back, side.Forward, side.Behind, side.Ahead = "to the left", "to the right", "left", "right"
	return [...][2]Ways{Chair: {chair, chair}, Settee: {chair, chair}, Cradle: {Side: side, End: end}, Horse: {chair, chair}}
}()
