package sim

import "math"

// LargestRelease returns the largest tilts from the rest of b (rad, both ≥ 0), back and
// forward, from which a rig that loses nothing comes back when it is let go: less than the
// margin on that side, and not so high that it carries over the hilltop on the other. A
// side without a hilltop is infinite.
func (r Rig) LargestRelease(b Balance) (back, forward float64) {
	return r.largestRelease(b, 1), r.largestRelease(b, -1)
}

func (r *Rig) largestRelease(b Balance, way int) float64 {
	near, far := b.Back, b.Forward
	if way < 0 {
		near, far = far, near
	}
	limit := math.Inf(1)
	if near.Exists() {
		limit = near.Angle
	}
	if !far.Exists() || near.Exists() && far.Lift >= near.Lift {
		return limit
	}
	roll := r.rising(b.Rest, way, far.Lift, b.Rest.roll+float64(way)*limit)
	return math.Abs(roll - b.Rest.roll)
}

// LargestRate returns the largest rate at the rest of b (rad/s), back and forward, from
// which a rig that loses nothing does not go over the hilltop ahead: ½·J·ω² = m·g·lift.
// It is infinite on a side without one.
func (r Rig) LargestRate(b Balance) (back, forward float64) {
	inertia := r.inertia(r.stand(touching(r.Profile, b.Rest.roll)))
	over := func(m Margin) float64 {
		if !m.Exists() {
			return math.Inf(1)
		}
		return math.Sqrt(2 * m.Work / inertia)
	}
	return over(b.Back), over(b.Forward)
}
