package person

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// Standing returns the person upright with arms at the sides, feet together under the
// balance point at the given place (m), and the joints. The chain hangs from the top of
// the head. De Leva's joint to joint lengths stacked up come to more than the stature
// (the spine is not straight, nor are the legs), so thighs and shanks are shortened alike
// until the ankles are at their height over the soles.
func (p *Person) Standing(feet r2.Vec) (body.Body, Joints) {
	var j Joints
	j.Vertex = r2.Add(feet, r2.Vec{Y: p.Sizes[Stature]})
	down := func(from r2.Vec, length float64) r2.Vec { return r2.Add(from, r2.Vec{Y: -length}) }
	j.Chin = r2.Add(down(j.Vertex, 0.13*p.Sizes[Stature]), r2.Vec{X: 0.05 * p.Sizes[Stature]})
	j.Neck = down(j.Vertex, p.lengths[Head])
	j.Hip = down(j.Neck, p.lengths[Trunk])
	j.Shoulder = r2.Add(j.Hip, r2.Vec{Y: p.shoulder})
	j.Elbow = down(j.Shoulder, p.lengths[UpperArm])
	j.Wrist = down(j.Elbow, p.lengths[Forearm])
	j.Fingertip = down(j.Wrist, p.lengths[Hand])
	j.Ankle = r2.Add(feet, r2.Vec{Y: ankleUp * p.Sizes[Stature]})
	share := p.lengths[Thigh] / (p.lengths[Thigh] + p.lengths[Shank])
	j.Knee = down(j.Hip, share*(j.Hip.Y-j.Ankle.Y))
	j.Heel = r2.Add(feet, r2.Vec{X: -0.25 * p.lengths[Foot]})
	j.Toe = r2.Add(feet, r2.Vec{X: 0.75 * p.lengths[Foot]})
	return p.body(j), j
}
