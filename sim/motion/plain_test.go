package motion

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
)

// A plain is a rig on one arc between two tips by plane geometry and Newton's law alone, followed in small steps by the
// classical rule of Runge and Kutta: a second method. Of the rig only the body and the slope are read. Its frame is the
// floor's: x along it, forward from where the low point touches as drawn, y square to it.
type plain struct {
	rig                sim.Rig
	radius, nose, tail float64 // of the arc, and along it from the low point to the tips, m
	start              Start
	losses             Losses

	tip              float64 // which one it stands on, +1 the tail's, −1 the nose's; 0 is the arc
	side             float64 // to which it moves; 0 is none
	treading         bool
	time, roll, rate float64
}

// plainly returns the rig of [chair] at a start.
func plainly(r sim.Rig, start Start, losses Losses) *plain {
	p := &plain{rig: r, radius: 1.067, nose: 0.43, tail: 0.61, start: start, losses: losses,
		roll: start.Tilt - r.Floor.Slope, rate: start.Rate, treading: start.Feet.Force != 0}
	p.treading = p.treading && p.unstretched(p.roll)
	return p
}

// contact returns where it touches the floor: the circle rolls to the rear as it leans back, a tip stays.
func (p *plain) contact(roll float64) float64 {
	switch p.tip {
	case 1:
		return -p.tail
	case -1:
		return p.nose
	}
	return -p.radius * roll
}

// place returns where a point of the piece is, and how it moves with the roll, to the second order: it is turned about
// the centre of the circle, which runs along the floor, or about the tip.
func (p *plain) place(q r2.Vec, roll float64) (at, way, bend r2.Vec) {
	about, at := r2.Vec{Y: p.radius}, r2.Vec{X: p.contact(roll), Y: p.radius}
	way.X = -p.radius
	if p.tip != 0 {
		sin, cos := math.Sincos(p.contact(0) / p.radius)
		about, at, way = r2.Vec{X: p.radius * sin, Y: p.radius * (1 - cos)}, r2.Vec{X: p.contact(0)}, r2.Vec{}
	}
	d := r2.Rotate(r2.Sub(q, about), roll, r2.Vec{})
	return r2.Add(at, d), r2.Add(way, r2.Vec{X: -d.Y, Y: d.X}), r2.Scale(-1, d)
}

// unstretched reports whether the hips are nearer to the ankles than the legs reach.
func (p *plain) unstretched(roll float64) bool {
	f := p.start.Feet
	hips, _, _ := p.place(f.Hips, roll)
	return r2.Norm(r2.Sub(hips, r2.Vec{X: f.At, Y: f.Ankle})) < f.Reach
}

// moment returns what turns the piece, losses apart, and what holds it when it stands, N·m: the work of weight, hand and
// feet for a little roll, of which that of the feet is their force times the turn times their way from the contact.
func (p *plain) moment(time, roll float64) (moment, holds float64) {
	sin, cos := math.Sincos(p.rig.Floor.Slope)
	weight := p.rig.Body.Mass * sim.Gravity
	_, way, _ := p.place(p.rig.Body.Centre, roll)
	moment = -weight * (way.X*sin + way.Y*cos)
	if time < p.start.Push.Time {
		_, way, _ := p.place(p.start.Push.At, roll)
		moment -= p.start.Push.Force * way.X // + back is towards −x
	}
	if p.treading {
		moment += p.start.Feet.Force * (p.start.Feet.At - p.contact(roll))
	}
	return moment, p.losses.Rolling * weight * cos
}

// after returns roll and rate a time later.
func (p *plain) after(h float64) (roll, rate float64) {
	m := p.rig.Body.Mass
	speeding := func(roll, rate float64) float64 { // by Lagrange, of ½(I + m·way²)·rate²
		_, way, bend := p.place(p.rig.Body.Centre, roll)
		moment, holds := p.moment(p.time, roll)
		moment -= p.side*holds + p.losses.Viscous*rate + m*r2.Dot(way, bend)*rate*rate
		return moment / (p.rig.Body.Inertia + m*r2.Norm2(way))
	}
	w1 := p.rate
	a1 := speeding(p.roll, w1)
	w2 := p.rate + a1*h/2
	a2 := speeding(p.roll+w1*h/2, w2)
	w3 := p.rate + a2*h/2
	a3 := speeding(p.roll+w2*h/2, w3)
	w4 := p.rate + a3*h
	a4 := speeding(p.roll+w3*h, w4)
	return p.roll + h/6*(w1+2*w2+2*w3+w4), p.rate + h/6*(a1+2*a2+2*a3+a4)
}

// nothing is no event.
const nothing Kind = -1

// happens returns what has happened a time later.
func (p *plain) happens(h float64) Kind {
	roll, rate := p.after(h)
	sin, cos := math.Sincos(p.rig.Floor.Slope)
	_, way, _ := p.place(p.rig.Body.Centre, roll)
	tail, nose := p.tail/p.radius, -p.nose/p.radius
	switch {
	case rate*p.side < 0:
		return Turns
	case p.treading && !p.unstretched(roll):
		return FeetEnd
	case p.tip == 0 && (roll > tail && p.side > 0 || roll < nose && p.side < 0),
		p.tip > 0 && roll < tail && p.side < 0, p.tip < 0 && roll > nose && p.side > 0:
		return Joint
	case p.tip != 0 && p.side == p.tip && p.side*(way.X*sin+way.Y*cos) < 0: // the weight falls on
		return Over
	}
	return nothing
}

// follow returns what happens up to the second turn, joints left out.
func (p *plain) follow(step float64) []Event {
	var told []Event
	tell := func(kind Kind) { told = append(told, Event{kind, State{p.time, p.roll + p.rig.Floor.Slope, p.rate}}) }
	stop := func() {
		if p.treading {
			p.treading = false
			tell(FeetEnd)
		}
	}
	for turns := 0; turns < 2; {
		if p.rate == 0 {
			moment, holds := p.moment(p.time, p.roll)
			if p.side = math.Copysign(1, moment); math.Abs(moment) <= holds {
				if p.treading {
					stop()
					continue
				}
				tell(Settles)
				return told
			}
		} else {
			p.side = math.Copysign(1, p.rate)
		}
		h := step
		if left := p.start.Push.Time - p.time; left > 0 {
			h = min(h, left)
		}
		kind := p.happens(h)
		if kind != nothing { // it is found to rounding by halving
			for low := 0.0; ; {
				middle := (low + h) / 2
				if middle == low || middle == h {
					break
				}
				if then := p.happens(middle); then == nothing {
					low = middle
				} else {
					h, kind = middle, then
				}
			}
		}
		p.roll, p.rate = p.after(h)
		if p.time += h; math.Abs(p.time-p.start.Push.Time) < 1e-12 { // s: the sum of a thousand steps
			p.time = p.start.Push.Time
		}
		switch kind {
		case Turns:
			turns++
			p.rate = 0
			tell(Turns)
			stop()
		case FeetEnd:
			stop()
		case Joint:
			if p.tip != 0 {
				p.tip = 0
			} else {
				p.tip = p.side
			}
		case Over:
			tell(Over)
			return told
		}
	}
	return told
}
