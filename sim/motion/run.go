package motion

import (
	"cmp"
	"math"

	"rockerwright/rocker"
	"rockerwright/sim"
)

// Options tune [Run]. The zero value follows a minute.
type Options struct {
	Duration float64 // s; zero means 60
	Losses   Losses
	Keep     bool // keep the steps, for [Trace.At]
	Turns    int  // end at so many turning points; zero means at none
}

// mostSteps is how many steps a run takes, which no piece needs.
const mostSteps = 100_000

// A run is a motion being followed.
type run struct {
	rig      sim.Rig
	balance  sim.Balance
	options  Options
	push     Push
	feet     Feet
	treading bool // the feet push
	sin, cos float64
	gravity  float64
	rest     float64 // its roll, rad

	index      int     // of the bearing
	shift      float64 // whole turns by which its tilts are moved, rad
	roll, rate float64
	time       float64
	turns      int
	flight     flight
	trace      Trace
}

// Run follows the rig from a start about a balance of it. It ends when the time is up, when
// it settles, when it passes the last hilltop on one side, when the floor would have to hold
// more than its friction, or pull, or after too many steps.
//
// It panics for a rig that [sim.Rig.Validate] refuses, a balance without a rest, a start that
// is not of finite numbers, and a time or a loss below zero or not a number.
func Run(r sim.Rig, b sim.Balance, start Start, options Options) Trace {
	m := begin(r, b, start, options)
	m.follow()
	m.trace.Duration, m.trace.Last = m.time, m.state()
	return m.trace
}

// begin returns the run at its start.
func begin(r sim.Rig, b sim.Balance, start Start, options Options) *run {
	mustFollow(r, b, start, options)
	options.Duration = cmp.Or(options.Duration, 60)
	slope := r.Floor.Slope
	m := &run{
		rig: r, balance: b, options: options, push: start.Push, feet: start.Feet, gravity: r.Floor.FreeFall(),
		rest: b.Rest.Tilt - slope, roll: start.Tilt - slope, rate: start.Rate,
		trace: Trace{Margin: math.Inf(1), slope: slope, push: start.Push},
	}
	m.sin, m.cos = math.Sincos(slope)
	index, within := r.Profile.Find(m.roll)
	m.index, m.shift = index, m.roll-within
	if b, at := m.bearing(); m.rate < 0 && at-b.From < sim.AtJoint || m.rate > 0 && b.To-at < sim.AtJoint {
		m.pass(math.Copysign(1, m.rate)) // set off on a joint it turns over that end of a flat which lies ahead
	}
	if m.treading = m.feet.Force != 0 && m.stretched(0) < 0; m.treading {
		m.trace.feet = m.feet.Force
	}
	return m
}

func (m *run) follow() {
	m.watch()
	for m.time < m.options.Duration {
		if m.trace.Steps >= mostSteps {
			m.trace.End = TooManySteps
			return
		}
		if m.treading && m.stretched(0) >= 0 {
			m.stopsTreading() // stretched just at a joint, and seen so only from beyond it
		}
		side, stays := m.direction()
		if stays {
			if !m.rests() {
				return
			}
			continue
		}
		if m.over(side) {
			return
		}
		if side*(m.roll-m.bound(side)) >= 0 {
			if !m.cross(side) {
				return
			}
			continue
		}
		if !m.step(side) {
			return
		}
	}
}

// rests keeps the rig where it is: until a push that holds it there ends, else for good; false ends the run. Feet that
// hold it there stop, and what becomes of it without them is looked at anew; what lifts all its weight does not hold it.
func (m *run) rests() bool {
	m.rate = 0
	if m.treading {
		if m.feet.Force >= m.rig.Body.Mass*m.gravity*m.cos {
			m.trace.Needs = math.Inf(1)
			m.trace.Friction = m.trace.Needs
			return m.slipped()
		}
		m.stopsTreading()
		return true
	}
	if m.pushed() {
		m.time = min(m.push.Time, m.options.Duration)
		m.event(PushEnd)
		return m.time < m.options.Duration
	}
	m.event(Settles)
	m.trace.End, m.trace.Outcome = AtRest, m.settledIn()
	return false
}

// bearing returns the arc in touch, and its tilt as the rocker counts it.
func (m *run) bearing() (*rocker.Bearing, float64) {
	return m.rig.Profile.Bearing(m.index), m.roll - m.shift
}

// bound returns the roll at which the arc in touch ends on one side.
func (m *run) bound(side float64) float64 {
	b := m.rig.Profile.Bearing(m.index)
	if side > 0 {
		return b.To + m.shift
	}
	return b.From + m.shift
}

// arc returns the equation of motion from this instant on, moving to one side.
func (m *run) arc(side float64) arc {
	b, roll := m.bearing()
	g := m.rig.Body
	height, ahead, _ := b.Above(g.Centre, roll)
	a := arc{
		mass: g.Mass, weight: g.Mass * m.gravity, sin: m.sin, cos: m.cos, radius: b.Radius,
		height: height, ahead: ahead, inertia: g.Inertia + g.Mass*(height*height+ahead*ahead),
		couple:  -side * m.options.Losses.Rolling * g.Mass * m.gravity * m.cos,
		viscous: m.options.Losses.Viscous,
	}
	if m.pushed() {
		a.force = m.push.Force
		a.pushUp, a.pushFore, _ = b.Above(m.push.At, roll)
	}
	if m.treading {
		a.foot, a.footFore = m.feet.Force, m.feet.At+b.RolledAt(roll)
	}
	return a
}

func (m *run) pushed() bool { return m.push.Force != 0 && m.time < m.push.Time }

// direction returns the side to which the rig moves next, +1 back or −1 forward, and whether it stays: at rest with
// no more moment than the rolling resistance holds, or between two arcs that both bring it back.
func (m *run) direction() (side float64, stays bool) {
	if m.rate != 0 {
		return math.Copysign(1, m.rate), false
	}
	a := m.arc(0)
	moment := a.moment()
	if math.Abs(moment) <= m.options.Losses.Rolling*a.weight*m.cos {
		return 0, true
	}
	side = math.Copysign(1, moment)
	if side*(m.roll-m.bound(side)) < 0 {
		return side, false
	}
	if m.beyond(side).moment()*side <= 0 {
		return 0, true // from the other side of the joint it is pushed back: it stays between
	}
	return side, false
}

// moment returns the couple that acts at the instant, losses apart, N·m.
func (a *arc) moment() float64 {
	return -a.weight*(a.cos*a.ahead-a.sin*a.height) + a.force*a.pushUp + a.foot*a.footFore
}

// step follows the rig on its arc to the next event; false ends the run.
func (m *run) step(side float64) bool {
	m.trace.Steps++
	a := m.arc(side)
	a.solve(m.rate, &m.flight)
	f := &m.flight
	span := min(f.span(), m.options.Duration-m.time)
	if m.pushed() {
		span = min(span, m.push.Time-m.time)
	}
	event := -1
	if end := f.rate.at(span) * side; end < 0 || end == 0 && m.rate != 0 {
		span, event = m.turning(span, side), int(Turns)
	}
	bound := m.bound(side)
	if top := m.hilltop(side); side*(top-m.roll) > 0 && side*(top-bound) <= 0 { // let go on it, it has passed with the next step
		bound = top
	}
	if left := bound - m.roll; side*(f.turn.at(span)-left) >= 0 {
		span, event = f.turn.reaches(left, 0, span), int(Joint)
	}
	if end, stretched := m.stretches(span); stretched {
		span, event = end, int(FeetEnd)
	}
	if t, slips := m.slips(&a, span); slips {
		m.advance(t)
		return m.slipped()
	}
	m.advance(span)
	switch Kind(event) {
	case Turns:
		m.rate = 0
		m.event(Turns)
		m.watch()
		m.stopsTreading()
		if m.turns++; m.turns == m.options.Turns {
			m.trace.End = Turned
			return false
		}
	case Joint:
		m.roll = bound
	case FeetEnd:
		m.stopsTreading()
	}
	if m.push.Force != 0 && event < 0 && m.time == m.push.Time {
		m.event(PushEnd)
	}
	return true
}

// turning returns when the rate is zero next, within a span at whose end it points the other side.
func (m *run) turning(span, side float64) float64 {
	low := 0.0
	if m.rate == 0 { // it has just set off
		for low = span / 2; m.flight.rate.at(low)*side <= 0 && low > 1e-12; low /= 2 {
		}
	}
	if t := m.flight.rate.reaches(0, low, span); t > 0 {
		return t
	}
	return span // it never went there
}

func (m *run) advance(span float64) {
	f := &m.flight
	if m.options.Keep {
		m.trace.steps = append(m.trace.steps, step{m.time, span, m.roll, *f})
	}
	m.roll += f.turn.at(span)
	m.rate = f.rate.at(span)
	if end := m.time + span; m.pushed() && math.Abs(end-m.push.Time) <= 1e-15*end {
		m.time = m.push.Time
	} else {
		m.time = end
	}
	if math.Abs(m.time-m.options.Duration) <= 1e-15*m.time {
		m.time = m.options.Duration
	}
}

func (m *run) state() State { return State{m.time, m.roll + m.rig.Floor.Slope, m.rate} }

func (m *run) event(kind Kind) { m.trace.Events = append(m.trace.Events, Event{kind, m.state()}) }
