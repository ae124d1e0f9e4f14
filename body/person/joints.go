package person

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// Moved returns the joints carried along, each point by move.
func (j Joints) Moved(move func(r2.Vec) r2.Vec) Joints {
	for _, p := range []*r2.Vec{
		&j.Vertex, &j.Chin, &j.Neck, &j.Shoulder, &j.Elbow, &j.Wrist, &j.Fingertip,
		&j.Hip, &j.Knee, &j.Ankle, &j.Heel, &j.Toe,
	} {
		*p = move(*p)
	}
	return j
}

// A Limit is a part of the body that reaches furthest, under the name of the limb it ends.
type Limit struct {
	Limb  string
	Point r2.Vec // m
}

// Limits returns all of them.
func (j Joints) Limits() []Limit {
	return []Limit{
		{"head", j.Vertex}, {"head", j.Chin}, {"shoulders", j.Shoulder}, {"elbows", j.Elbow}, {"hands", j.Wrist}, {"hands", j.Fingertip},
		{"knees", j.Knee}, {"feet", j.Ankle}, {"feet", j.Heel}, {"feet", j.Toe},
	}
}

// Upper returns those of trunk, head and arms.
func (j Joints) Upper() []Limit { return j.Limits()[:upper] }

// upper is how many of the Limits are of trunk, head and arms; they come first.
const upper = 6

// Leaning returns the joints with trunk, head and arms turned about the hips by a lean, rad, + back.
func (j Joints) Leaning(lean float64) Joints {
	for _, p := range []*r2.Vec{&j.Vertex, &j.Chin, &j.Neck, &j.Shoulder, &j.Elbow, &j.Wrist, &j.Fingertip} {
		*p = r2.Rotate(*p, lean, j.Hip)
	}
	return j
}

// OnTheBack returns what leans on the back of the seat and turns about the hip joints:
// trunk, head and upper arms; the forearms lie on the arms of the seat.
func (p *Person) OnTheBack(j Joints) body.Body {
	list := p.chain(j)
	return body.Join(list[Head], list[Trunk], list[UpperArm])
}

// bladesUp is where the shoulder blades touch the back, from the hip joints along the
// trunk to the shoulder joints; our judgement.
const bladesUp = 0.8

// Blades returns how far along the trunk from the hip joints the back is touched, m.
func (p *Person) Blades() float64 { return bladesUp * p.shoulder }

// HipUp returns the height of the hip joints over a hard seat, m.
func (p *Person) HipUp() float64 { return p.hipUp }

// navelUp is where the navel lies on the way from the hip joints to the seventh neck vertebra:
// de Leva (1996), Table 4, 145.7 of 603.3 mm in men and 181.5 of 614.8 mm in women; the mean.
const navelUp = 0.27

// Navel returns the place of the navel, taken on the line of the trunk.
func (j Joints) Navel() r2.Vec { return r2.Add(j.Hip, r2.Scale(navelUp, r2.Sub(j.Neck, j.Hip))) }

// Lap returns the seat that a child has on the thighs of the posed person: its back
// against the belly, along the trunk.
func (p *Person) Lap(j Joints) Seat {
	a, scale := ansur(), p.Sizes[Stature]
	stature := a.mean(p.Sex, "stature")
	belly := a.mean(p.Sex, "abdominal_extension_depth_sitting")/stature*scale - p.hipAhead
	thick := a.mean(p.Sex, "thigh_clearance")/stature*scale - p.hipUp
	thigh := r2.Sub(j.Knee, j.Hip)
	trunk, rise := r2.Sub(j.Neck, j.Hip), unit(thigh)
	return Seat{
		Meet:   r2.Add(j.Hip, r2.Add(r2.Scale(belly, rise), r2.Scale(thick, r2.Vec{X: -rise.Y, Y: rise.X}))),
		Fall:   math.Atan2(thigh.Y, thigh.X), // rise forward of level
		Backed: true, Recline: math.Atan2(-trunk.X, trunk.Y),
		Floor: j.Hip.Y - 10, // the child's feet hang
	}
}

// legStretched is how far the hips are from the ankles where legs stop pushing, of thigh and shank end to end; our judgement.
const legStretched = 0.97

// LegReach returns how far from the ankles the hips are where the legs are stretched, as they push, m.
func (p *Person) LegReach() float64 { return legStretched * (p.lengths[Thigh] + p.lengths[Shank]) }

// Upper returns trunk, head and arms, which turn about the hip joints when somebody leans.
func (p *Person) Upper(j Joints) body.Body {
	list := p.chain(j)
	return body.Join(list[Head], list[Trunk], list[UpperArm], list[Forearm], list[Hand])
}
