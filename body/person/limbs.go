package person

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

const degree = math.Pi / 180

// What the postures are made of; our judgement of how people sit.
const (
	headBack     = 10 * degree // head behind the line of the trunk, on the back
	leanToRise   = 20 * degree // trunk forward of plumb, rising
	seatBones    = 0.110       // hip joints behind the front edge, rising, m
	feetUnder    = 15 * degree // shanks drawn back from plumb, rising
	kneesBent    = 20 * degree // knees short of straight, feet off
	mostForward  = 35 * degree // shanks forward of plumb before the knees rise, sitting
	ankleBends   = 50 * degree // the most a foot turns on its toe
	astride      = 35 * degree // thighs below level, riding
	leanRiding   = 25 * degree // trunk fore and aft of plumb, riding
	leanOffBack  = 20 * degree // trunk forward of the back, rocking hard
	elbowsAside  = 0.7         // length of the upper arms as seen from the side, hands behind the head
	forearmThick = 0.030       // elbow joint over the arm rest, m
)

// Leans returns how far the trunk of who sits in a posture leans to and fro, rad, + back, from how it is posed: astride, or
// from the back of a chair. It is 0 and 0 in any other posture.
func Leans(p Posture) (back, forward float64) {
	switch p {
	case Riding:
		return leanRiding, -leanRiding
	case AtEase, FeetOff:
		return 0, -leanOffBack
	}
	return 0, 0
}

// limbs are where the hip is and the directions of all that hangs on it.
type limbs struct {
	hip         r2.Vec
	trunk, head float64 // from plumb, + back, rad
	thigh       float64 // from the hip to the knee, rise forward of level, rad
	shank       float64 // from the knee to the ankle, forward of plumb, rad
	reach       reach
	sole        float64 // height of the floor, m; NaN where the feet are off it
}

// A reach is what the arms do.
type reach int

const (
	onArms reach = iota // forearms on the arms, or in the lap
	onKnees
	pushing // hands on the ends of the arms
	behindHead
	forward // holding on to the neck of a horse
)

// limbs returns the person's posture on a seat.
func (p *Person) limbs(s Seat, posture Posture) limbs {
	l := limbs{hip: p.hip(s), thigh: s.Fall + p.thighRise(), sole: s.Floor}
	switch posture {
	case Riding, RidingForward, RidingBack:
		l.thigh, l.reach, l.sole = -astride, forward, math.NaN()
		l.trunk = map[Posture]float64{RidingForward: -leanRiding, RidingBack: leanRiding}[posture]
		l.head = l.trunk / 2
		return l
	case Rising, PushingUp:
		l.hip = r2.Add(l.hip, r2.Scale(max(0, s.Depth-seatBones-p.hipAhead), ahead(s.Fall)))
		l.trunk, l.head, l.reach = -leanToRise, -leanToRise/2, onKnees
		if posture == PushingUp && s.Arms > 0 {
			l.reach = pushing
		}
		l.shank = -feetUnder // the knees raised or lowered until the feet stand on the floor
		knee := s.Floor + p.Ankle() + p.lengths[Shank]*math.Cos(l.shank)
		l.thigh = math.Asin(min(1, max(-1, (knee-l.hip.Y)/p.lengths[Thigh])))
		return l
	case Upright:
	default:
		l.trunk, l.head = s.Recline, s.Recline+headBack
		if posture == ArmsBehindHead {
			l.reach = behindHead
		}
	}
	p.legs(s, &l)
	if posture == FeetOff {
		l.thigh = s.Fall + p.thighRise()
		l.shank, l.sole = math.Pi/2+l.thigh-kneesBent, math.NaN()
	}
	return l
}

// hip returns the hip joints of who sits with the buttocks at the back: their height
// over the seat and their distance ahead of the back, both measured square to it.
func (p *Person) hip(s Seat) r2.Vec {
	lean := s.Fall // where there is no back, as if one stood square on the seat
	if s.Backed {
		lean = s.Recline
	}
	height := p.hipUp + s.Cushion
	sin, cos := math.Sincos(lean - s.Fall)
	along := (p.hipAhead - height*sin) / cos
	return r2.Add(s.Meet, r2.Add(r2.Scale(along, ahead(s.Fall)), r2.Scale(height, up(s.Fall))))
}

// thighRise returns by how much the line of hip and knee joints rises forward of the
// seat, for the thigh is thinner at the knee.
func (p *Person) thighRise() float64 {
	return math.Asin((kneeOverCrease*p.Sizes[Stature] - p.hipUp) / p.lengths[Thigh])
}

// legs sets thighs along the seat and shanks to the floor: forward of plumb where the seat is low for them, with the
// knees raised where that is not enough, plumb where the feet do not reach.
func (p *Person) legs(s Seat, l *limbs) {
	thigh, shank := p.lengths[Thigh], p.lengths[Shank]
	ankle := s.Floor + p.Ankle()
	knee := l.hip.Y + thigh*math.Sin(l.thigh)
	switch drop := knee - ankle; {
	case drop >= shank:
		return // feet hang, or just reach
	case drop >= shank*math.Cos(mostForward):
		l.shank = math.Acos(drop / shank)
	default:
		l.shank = mostForward
		rise := (ankle + shank*math.Cos(mostForward) - l.hip.Y) / thigh
		l.thigh = math.Asin(min(1, max(-1, rise)))
	}
}

// Ankle returns the height of the ankle joint over the floor, shoes on, m.
func (p *Person) Ankle() float64 { return ankleUp*p.Sizes[Stature] + Shoe }

// joints returns the joints of a posture.
func (p *Person) joints(s Seat, l limbs) Joints {
	var j Joints
	j.Hip = l.hip
	spine := up(l.trunk)
	j.Neck = r2.Add(j.Hip, r2.Scale(p.lengths[Trunk], spine))
	j.Shoulder = r2.Add(j.Hip, r2.Scale(p.shoulder, spine))
	skull := up(l.head)
	j.Vertex = r2.Add(j.Neck, r2.Scale(p.lengths[Head], skull))
	j.Chin = r2.Add(r2.Sub(j.Vertex, r2.Scale(0.13*p.Sizes[Stature], skull)), r2.Scale(0.05*p.Sizes[Stature], ahead(l.head)))
	j.Knee = r2.Add(j.Hip, r2.Scale(p.lengths[Thigh], ahead(l.thigh)))
	j.Ankle = r2.Sub(j.Knee, r2.Scale(p.lengths[Shank], up(l.shank)))
	p.foot(l, &j)
	p.arms(s, l, &j)
	return j
}

// foot sets the foot flat on the floor where it reaches it, else square to the shank.
func (p *Person) foot(l limbs, j *Joints) {
	along, down := ahead(l.shank), r2.Scale(-p.Ankle(), up(l.shank))
	if j.Ankle.Y-p.Ankle() <= l.sole+0.05 { // on the floor, or nearly: toes down
		along, down = r2.Vec{X: 1}, r2.Vec{Y: -p.Ankle()}
	}
	sole := r2.Add(j.Ankle, down)
	j.Heel = r2.Sub(sole, r2.Scale(heelBehind*p.lengths[Foot], along))
	j.Toe = r2.Add(sole, r2.Scale((1-heelBehind)*p.lengths[Foot], along))
}

// arms sets upper arms, forearms and hands.
func (p *Person) arms(s Seat, l limbs, j *Joints) {
	upper, fore, hand := p.lengths[UpperArm], p.lengths[Forearm], p.lengths[Hand]
	switch l.reach {
	case behindHead:
		j.Elbow = r2.Add(j.Shoulder, r2.Scale(elbowsAside*upper, up(l.trunk)))
		behind := r2.Sub(r2.Add(j.Neck, r2.Scale(0.4, r2.Sub(j.Vertex, j.Neck))), j.Elbow)
		j.Wrist = r2.Add(j.Elbow, r2.Scale(elbowsAside*fore, unit(behind)))
		j.Fingertip = r2.Add(j.Wrist, r2.Scale(elbowsAside*hand, unit(behind)))
		return
	case pushing:
		grip := r2.Add(s.Meet, r2.Vec{X: s.Reach, Y: s.Arms})
		j.Elbow, j.Wrist = twoBars(j.Shoulder, grip, upper, fore)
	case onKnees:
		j.Elbow, j.Wrist = twoBars(j.Shoulder, r2.Add(j.Knee, r2.Vec{Y: 0.06}), upper, fore)
	case forward:
		j.Elbow = r2.Sub(j.Shoulder, r2.Scale(upper, up(45*degree)))
		j.Wrist = r2.Add(j.Elbow, r2.Vec{X: fore})
	default:
		p.atRest(s, l, j)
	}
	along := r2.Sub(j.Wrist, j.Elbow)
	if l.reach == pushing || l.reach == onKnees {
		along = r2.Vec{X: 1}
	}
	j.Fingertip = r2.Add(j.Wrist, r2.Scale(hand, unit(along)))
}

// atRest lays the forearms on the arms: the upper arms swing forward where the arms are
// high, hang where they are low. Without arms the hands lie in the lap.
func (p *Person) atRest(s Seat, l limbs, j *Joints) {
	upper, fore := p.lengths[UpperArm], p.lengths[Forearm]
	if s.Arms == 0 {
		j.Elbow = r2.Add(j.Shoulder, r2.Vec{Y: -upper})
		j.Wrist = r2.Add(j.Elbow, r2.Scale(fore, ahead(-10*degree)))
		return
	}
	rest := s.Meet.Y + s.Arms + forearmThick
	drop := min(upper, j.Shoulder.Y-rest)
	swing := otherSide(upper, drop)
	j.Elbow = r2.Add(j.Shoulder, r2.Vec{X: swing, Y: -drop})
	dip := min(0, max(-fore, rest-j.Elbow.Y)) // low arms: the wrist comes down to them
	j.Wrist = r2.Add(j.Elbow, r2.Vec{X: otherSide(fore, dip), Y: dip})
}

// twoBars returns elbow and wrist of an arm whose wrist reaches for a place, the elbow
// bent back; out of reach it points there.
func twoBars(shoulder, to r2.Vec, upper, fore float64) (elbow, wrist r2.Vec) {
	line := r2.Sub(to, shoulder)
	distance := r2.Norm(line)
	toward := unit(line)
	if distance >= upper+fore {
		return r2.Add(shoulder, r2.Scale(upper, toward)), r2.Add(shoulder, r2.Scale(upper+fore, toward))
	}
	along := (distance*distance + upper*upper - fore*fore) / (2 * max(distance, 1e-9))
	along = max(-upper, min(upper, along))
	out := otherSide(upper, along)
	elbow = r2.Add(shoulder, r2.Add(r2.Scale(along, toward), r2.Scale(out, r2.Vec{X: toward.Y, Y: -toward.X})))
	if distance < math.Abs(upper-fore) {
		return elbow, r2.Add(elbow, r2.Scale(fore, unit(r2.Sub(to, elbow))))
	}
	return elbow, to
}

// otherSide returns the second short side of a right triangle, m; nothing where the first is as long
// as the hypotenuse. Written as a product it is then exactly nothing on every processor: a fused
// hypotenuse² − side² leaves a rounding error, of which the root is a few nanometres.
func otherSide(hypotenuse, side float64) float64 {
	return math.Sqrt(max(0, (hypotenuse-side)*(hypotenuse+side)))
}

// unit returns v at length 1, forward where it has none.
func unit(v r2.Vec) r2.Vec {
	if n := r2.Norm(v); n > 0 {
		return r2.Scale(1/n, v)
	}
	return r2.Vec{X: 1}
}
