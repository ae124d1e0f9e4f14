package person

import "gonum.org/v1/gonum/spatial/r2"

// Lap returns the seat that a child has on the thighs of the posed person: its back
// against the belly, along the trunk.
func (p *Person) Lap(j Joints) Seat {
	a, scale := ansur(), p.Sizes[Stature]
	stature := a.mean(p.Sex, "stature")
	belly := a.mean(p.Sex, "abdominal_extension_depth_sitting")/stature*scale - p.hipAhead
	thick := a.mean(p.Sex, "thigh_clearance")/stature*scale - p.hipUp
	thigh := r2.Sub(j.Knee, j.Hip)
	rise := unit(thigh)
	return Seat{
		Meet:   r2.Add(j.Hip, r2.Add(r2.Scale(belly, rise), r2.Scale(thick, r2.Vec{X: -rise.Y, Y: rise.X}))),
		Fall:   angleOf(thigh),
		Backed: true, Recline: leanOf(r2.Sub(j.Neck, j.Hip)),
		Floor: j.Hip.Y - 10, // the child's feet hang
	}
}
