package person

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// A Seat is what a person sits on, in the seat's own frame.
type Seat struct {
	Meet    r2.Vec  // where the back meets the seat, m
	Fall    float64 // how far the seat falls back, from level, rad
	Depth   float64 // from Meet to the front edge along the seat, m; zero means no edge, as of a saddle
	Backed  bool    // there is a back
	Recline float64 // of the back, from plumb, rad
	Arms    float64 // height of the arms over the seat, m; zero means none
	Reach   float64 // how far the arms reach forward from Meet, m
	Cushion float64 // thickness when sat on, m
	Floor   float64 // height of the floor under the feet, m
}

// Joints are the ends of the segments, in the seat's frame, m.
type Joints struct {
	Vertex, Chin, Neck, Shoulder, Elbow, Wrist, Fingertip r2.Vec
	Hip, Knee, Ankle, Heel, Toe                           r2.Vec
}

// A Pose is a person in a posture.
type Pose struct {
	Joints   Joints
	Body     body.Body // what the seat carries, in its frame
	Standing float64   // mass that the floor carries whatever the tilt, kg
	Legs     body.Legs // shanks and feet that stand on the floor, which Body is without; zero where the legs ride
}

// Pose places the person on the seat.
//
// Who sits has the hip joints at their height over the seat and their distance ahead of
// the back, both square to it. The thighs ride on the seat; shanks and feet hang from the knees
// and stand on the floor, which carries what [body.Legs] says.
//
// Who rises sits with the seat bones near the front edge and both feet on the
// floor, a bar on two supports: the seat carries at the seat bones what the feet do not,
// m·(feet − centre)/(feet − seat bones), feet meaning the middle of the soles.
//
// Who pushes up from the arms has lifted off the seat: half of the weight acts at the
// hands, the rest on the feet (our judgement). Who has the feet off the floor rides whole, and so does who is astride.
func (p *Person) Pose(s Seat, posture Posture) Pose {
	p.mustBe()
	l := p.limbs(s, posture)
	j := p.joints(s, l)
	pose := Pose{Joints: j}
	switch posture {
	case AtEase, Upright, ChildOnLap, ArmsBehindHead:
		pose.Body, pose.Legs = p.onTheLegs(j)
	case Rising:
		pose.Body, pose.Standing = p.onTheEdge(s, j)
	case PushingUp:
		half := p.Sizes[Mass] / 2
		pose.Body, pose.Standing = body.Body{Mass: half, Centre: j.Wrist}, half
	default:
		pose.Body = p.Whole(j)
	}
	return pose
}

// mustBe panics for the zero Person.
func (p *Person) mustBe() {
	if p.lengths[Thigh] == 0 {
		panic("person: the zero Person has no limbs: make one by New")
	}
}

// Whole returns the whole of who is posed as one body.
func (p *Person) Whole(j Joints) body.Body {
	list := p.chain(j)
	return body.Join(list[:]...)
}

// chain returns each Part between its ends, trunk and thighs with their flesh.
func (p *Person) chain(j Joints) (list [parts]body.Body) {
	for i, ends := range j.segments() {
		s, along := p.segments[i], r2.Sub(ends[1], ends[0])
		mass := s.share * p.Sizes[Mass]
		list[i] = body.Body{
			Mass:    mass,
			Centre:  r2.Add(ends[0], r2.Scale(s.centre, along)),
			Inertia: mass * s.gyration * s.gyration * r2.Norm2(along),
		}
	}
	if p.ahead > 0 {
		p.carryFlesh(&list, j)
	}
	return list
}

// heelBehind is how far the heel is behind the ankle joint, as a part of the foot.
const heelBehind = 0.25

// onTheLegs returns what rides on the seat, and the legs that stand on the floor. The foot's centre lies between
// heel and toe as de Leva has it, on the sole as he has both.
func (p *Person) onTheLegs(j Joints) (body.Body, body.Legs) {
	list := p.chain(j)
	thigh, shank, foot := p.segments[Thigh], p.segments[Shank], p.segments[Foot]
	legs := body.Legs{
		Knee: j.Knee, Shank: list[Shank].Mass, Foot: list[Foot].Mass,
		Length: p.lengths[Shank], Centre: shank.centre,
		Ankle: p.Ankle(), Toe: (1 - heelBehind) * p.lengths[Foot],
		Ahead: (foot.centre - heelBehind) * p.lengths[Foot], Below: p.Ankle(), Bend: ankleBends,
		Heel:  heelBehind * p.lengths[Foot],
		Thigh: thigh.centre * list[Thigh].Mass,
	}
	list[Shank], list[Foot] = body.Body{}, body.Body{}
	return body.Join(list[:]...), legs
}

// onTheEdge returns what the seat carries of who rises, as a point on the seat under
// the hip joints, and the mass that the feet carry.
func (p *Person) onTheEdge(s Seat, j Joints) (body.Body, float64) {
	whole := p.Whole(j)
	bones := r2.Sub(j.Hip, r2.Scale(p.hipUp, up(s.Fall)))
	feet := (j.Heel.X + j.Toe.X) / 2
	share := 1.0
	if feet > bones.X {
		share = max(0, min(1, (feet-whole.Centre.X)/(feet-bones.X)))
	}
	return body.Body{Mass: share * whole.Mass, Centre: bones}, (1 - share) * whole.Mass
}

// segments returns the two ends of each Part.
func (j Joints) segments() [parts][2]r2.Vec {
	return [parts][2]r2.Vec{
		Head: {j.Vertex, j.Neck}, Trunk: {j.Neck, j.Hip}, UpperArm: {j.Shoulder, j.Elbow}, Forearm: {j.Elbow, j.Wrist},
		Hand: {j.Wrist, j.Fingertip}, Thigh: {j.Hip, j.Knee}, Shank: {j.Knee, j.Ankle}, Foot: {j.Heel, j.Toe},
	}
}

// Standing returns the person upright with arms at the sides, feet together under the balance point at the given
// place (m), and the joints. The chain hangs from the top of the head. De Leva's joint to joint lengths stacked up
// come to more than the stature (the spine is not straight, nor are the legs), so thighs and shanks are shortened
// alike until the ankles are at their height over the soles.
func (p *Person) Standing(feet r2.Vec) (body.Body, Joints) {
	p.mustBe()
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
	j.Heel = r2.Add(feet, r2.Vec{X: -heelBehind * p.lengths[Foot]})
	j.Toe = r2.Add(feet, r2.Vec{X: (1 - heelBehind) * p.lengths[Foot]})
	upright := *p
	upright.ahead = 0 // flesh hangs where the chain has it
	return upright.Whole(j), j
}

// up returns the direction that leans back from plumb by an angle.
func up(lean float64) r2.Vec {
	sin, cos := math.Sincos(lean)
	return r2.Vec{X: -sin, Y: cos}
}

// ahead returns the direction that rises forward from level by an angle.
func ahead(rise float64) r2.Vec {
	sin, cos := math.Sincos(rise)
	return r2.Vec{X: cos, Y: sin}
}
