package body

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// Legs are the shanks and the feet of somebody whose thighs ride on the seat, left and right as one. Knee and ankle
// are free pins and the floor is a smooth wall, so a foot at ease pushes neither way: with friction a planted leg is
// a strut, and its share could be anything. What the floor then carries, N in kg, falls with the height y of the knee
// over the floor; with l, c and mₛ the length, the centre and the mass of the shank, m_f and (f, −b) mass and centre
// of the foot, t and a its toe ahead of the ankle and the ankle over its sole,
//
//	y < l + a        flat      N = m_f + c·mₛ, the shank acos((y − a)/l) off plumb
//	y = l + a        lifting   anything from there down to N at ψ = 0
//	l + a < y        lifted    t sin ψ + a cos ψ = y − l, a foot turned by ψ on its toe under a plumb shank:
//	                           N = m_f (f cos ψ − b sin ψ)/(t cos ψ − a sin ψ)
//	ψ = the last     off       N = 0: what hangs at the knee is as a point there
//
// the last ψ being atan(f/b), where the foot hangs at ease, or Bend where that is less. N is that
// of the least potential energy of a leg whose knee is held at y (moments about knee, ankle and
// toe, by hand), and never grows with y as long as b·t > f·a, so that it only steepens the moment: where all radii are
// larger than the heights of the knees and of what rides, a piece has one rest between its tips with legs as without. On a
// tip or a tight arc, which tip a piece over, a heel that lifts may hold it in a shallow well of its own.
type Legs struct {
	Knee   r2.Vec // the knee joints, chair frame, m
	Shank  float64
	Foot   float64 // masses, kg
	Length float64 // l, of the shank from knee to ankle, m
	Centre float64 // c, of the shank from the knee, as a part of its length
	Ankle  float64 // a, the ankle joint over the sole, m
	Toe    float64 // t, its tip ahead of the ankle joint, m
	Ahead  float64 // f, the foot's centre ahead of the ankle joint, m
	Below  float64 // b, and below it, m
	Bend   float64 // how far the ankle lets the foot turn on its toe, rad
	Heel   float64 // how far the heel is behind the ankle joint, m; for pictures
	Thigh  float64 // of the thighs, what hangs at the knees where the front edge of the seat bears nothing, kg
}

// A Stage is how somebody's feet stand.
type Stage int

const (
	SoleFlat    Stage = iota
	HeelLifting       // the soles just lie on the floor
	HeelLifted        // on the toes
	FeetOff
)

// String returns what the feet do, in words.
func (s Stage) String() string { return [...]string{"flat", "heel lifting", "heel lifted", "off"}[s] }

// Validate returns what keeps legs from standing: a length, a mass or a bend that is not above zero, a shank whose
// centre is not on it, a thigh that weighs less than nothing, or a foot whose centre is not behind its toe and under
// the line from there to the ankle.
func (l *Legs) Validate() error {
	for _, x := range []float64{l.Shank, l.Foot, l.Length, l.Ankle, l.Toe, l.Ahead, l.Below, l.Bend} {
		if !(x > 0) {
			return fmt.Errorf("body: legs have lengths and masses above 0; %g is none", x)
		}
	}
	if !(l.Centre >= 0 && l.Centre <= 1 && l.Thigh >= 0) {
		return fmt.Errorf("body: the centre of a shank lies on it and a thigh weighs something; %g of the length and %g kg are none",
			l.Centre, l.Thigh)
	}
	if l.Ahead >= l.Toe || l.Below*l.Toe <= l.Ahead*l.Ankle {
		return fmt.Errorf("body: the centre of a foot (%g m ahead of the ankle and %g m below) lies behind the toe and under the line to it",
			l.Ahead, l.Below)
	}
	return nil
}

// Mass returns that of shanks and feet, kg.
func (l *Legs) Mass() float64 { return l.Shank + l.Foot }

// Full returns N with the soles flat, kg.
func (l *Legs) Full() float64 { return l.Foot + l.Centre*l.Shank }

// last returns the turn of the foot at which the toe leaves, rad.
func (l *Legs) last() float64 { return min(math.Atan2(l.Ahead, l.Below), l.Bend) }

// HeelHeight returns the height of the knee at which the heels lift, m.
func (l *Legs) HeelHeight() float64 { return l.Length + l.Ankle }

// ToeHeight returns the height of the knee at which the toes leave, m.
func (l *Legs) ToeHeight() float64 {
	sin, cos := math.Sincos(l.last())
	return l.Length + l.Toe*sin + l.Ankle*cos
}

// turn returns ψ at a height of the knee at which the foot stands on its toe, rad.
func (l *Legs) turn(y float64) float64 {
	return math.Asin(min(1, (y-l.Length)/math.Hypot(l.Toe, l.Ankle))) - math.Atan2(l.Ankle, l.Toe)
}

// OnToe returns N of a foot so far turned, kg.
func (l *Legs) OnToe(turn float64) float64 {
	sin, cos := math.Sincos(turn)
	return l.Foot * (l.Ahead*cos - l.Below*sin) / (l.Toe*cos - l.Ankle*sin)
}

// Carried returns N in a stage at a height of the knee, kg; of lifting heels the most.
func (l *Legs) Carried(s Stage, y float64) float64 {
	switch s {
	case HeelLifted:
		return l.OnToe(l.turn(y))
	case FeetOff:
		return 0
	}
	return l.Full()
}

// StageAt returns how the feet stand at a height of the knee.
func (l *Legs) StageAt(y float64) Stage {
	switch {
	case y < l.HeelHeight():
		return SoleFlat
	case y == l.HeelHeight():
		return HeelLifting
	case y < l.ToeHeight():
		return HeelLifted
	}
	return FeetOff
}

// Borne returns the integral of N over the height of the knee, from where the toes leave, kg·m: below that it is less
// than zero. On its toe a foot is borne as high as its centre.
func (l *Legs) Borne(y float64) float64 {
	centre := func(turn float64) float64 { // of the foot over the toe, and what is constant
		sin, cos := math.Sincos(turn)
		return l.Foot * (l.Ahead*sin + l.Below*cos)
	}
	switch l.StageAt(y) {
	case FeetOff:
		return 0
	case HeelLifted:
		return centre(l.turn(y)) - centre(l.last())
	}
	return centre(0) - centre(l.last()) - l.Full()*(l.HeelHeight()-y)
}

// Bars returns where ankle, heel and toe are with the knee at a place over a level floor, x forward and y over the
// floor, m. Flat soles stand ahead of the knee; off the floor the shank is plumb and the foot as it was when it left.
func (l *Legs) Bars(knee r2.Vec) (ankle, heel, toe r2.Vec) {
	turn := 0.0
	ankle = r2.Vec{X: knee.X, Y: knee.Y - l.Length}
	switch l.StageAt(knee.Y) {
	case SoleFlat:
		drop := max(-l.Length, knee.Y-l.Ankle)
		ankle = r2.Vec{X: knee.X + math.Sqrt((l.Length-drop)*(l.Length+drop)), Y: knee.Y - drop}
	case HeelLifted:
		turn = l.turn(knee.Y)
	case FeetOff:
		turn = l.last()
	}
	foot := func(ahead float64) r2.Vec {
		return r2.Add(ankle, r2.Rotate(r2.Vec{X: ahead, Y: -l.Ankle}, -turn, r2.Vec{}))
	}
	return ankle, foot(-l.Heel), foot(l.Toe)
}
