package piece

import (
	"fmt"
	"math"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// A Load is the piece with one person in one posture, or empty, and what was found.
// What does not exist is NaN.
type Load struct {
	Name    string
	Empty   bool
	Role    Role   // of a load with a person
	Sitter  string // the person's name
	Posture Posture

	Rig     sim.Rig
	Balance sim.Balance
	person  body.Body // carried on the rockers

	SeatFall    float64 // of the seat at rest, from level, + back, rad
	BackRecline float64 // of the back at rest, from plumb, rad
	Pull        sim.Pull
	Equilibria  []sim.Equilibrium // every rest and hilltop above the floor
	Swings      []sim.Swing
	Righting    []Righting // each degree
}

// Upright reports whether the load stands at rest, and not upside down.
func (l *Load) Upright() bool {
	return l.Balance.Outcome == sim.Rocks && math.Abs(l.Balance.Rest.Tilt) < math.Pi/2
}

// Righting is one point of the righting curve.
type Righting struct {
	Degree int     // the tilt, whole degrees
	Tilt   float64 // the same, rad
	Arm    float64 // m
	Height float64 // of the balance point over the floor, m
}

// loads returns the piece empty, then with each sitter in each posture, in file
// order, with the rig of each and nothing computed.
func (d Design) loads(edge rocker.Profile, h heap) ([]Load, error) {
	carry := d.carry(edge)
	empty := h.joined(carry)
	floor := sim.Floor{Slope: d.Floor.Slope, Gravity: d.Floor.Gravity, Friction: d.Floor.Friction}
	rig := func(b body.Body) sim.Rig { return sim.Rig{Profile: edge, Body: b, Floor: floor} }
	list := []Load{{Name: "empty", Empty: true, Rig: rig(empty)}}
	for i, s := range d.Sitters {
		if err := s.check(d.sitterKey(i), d.Seat); err != nil {
			return nil, err
		}
		for _, seat := range s.seats(d.Seat.Meet()) {
			person := carry.body(seat.body)
			list = append(list, Load{
				Name: s.loadName(seat), Role: s.Role, Sitter: s.Name, Posture: seat.posture,
				Rig: rig(body.Join(empty, person)), person: person,
			})
		}
	}
	return list, nil
}

// sitterKey returns where the i-th sitter stands in a design.
func (d Design) sitterKey(i int) string {
	if len(d.Sitters) == 1 {
		return "sitter"
	}
	return fmt.Sprintf("sitter.%d", i+1)
}

// read fills in all that follows from the balance at rest.
func (l *Load) read(d Design, edge rocker.Profile, releases []float64) {
	l.SeatFall, l.BackRecline = math.NaN(), math.NaN()
	l.Pull = sim.Pull{EffortBack: math.NaN(), EffortForward: math.NaN(), Slow: math.NaN(), Sudden: math.NaN()}
	for _, e := range l.Rig.Equilibria(nil) {
		if e.Height > 0 && math.Abs(e.Tilt) < math.Pi && l.Balance.Outcome != sim.Neutral {
			l.Equilibria = append(l.Equilibria, e)
		}
	}
	l.Righting = righting(l.Rig, l.Balance)
	for _, release := range releases {
		l.Swings = append(l.Swings, l.swing(release))
	}
	if l.Balance.Outcome != sim.Rocks {
		return
	}
	carry := d.carry(edge)
	tilt := l.Balance.Rest.Tilt + carry.turn
	if d.Seat.drawn() {
		l.SeatFall = tilt + d.Seat.Fall()
	}
	if d.Back.drawn() {
		l.BackRecline = tilt + d.Back.Recline
	}
	if top, known := d.TopOfBack(); known {
		l.Pull = l.Rig.Pull(l.Balance, carry.point(top))
	}
}

// swing lets the load go from its rest; with no rest, that is the swing.
func (l *Load) swing(release float64) sim.Swing {
	if l.Balance.Outcome != sim.Rocks {
		return sim.Swing{Outcome: l.Balance.Outcome, Release: release, Period: math.NaN(), Reach: math.NaN(), Friction: math.NaN()}
	}
	return l.Rig.Swing(l.Balance, release)
}

// righting returns the righting curve at each whole degree, from five degrees before
// the hilltop in front to five behind the one at the back; without a rest, from 45
// degrees forward to 45 back.
func righting(r sim.Rig, b sim.Balance) []Righting {
	first, last := -45, 45
	if b.Forward.Exists() && b.Back.Exists() {
		first = int(math.Floor((b.Rest.Tilt-b.Forward.Angle)/degree)) - 5
		last = int(math.Ceil((b.Rest.Tilt+b.Back.Angle)/degree)) + 5
	}
	first, last = max(first, -179), min(last, 179)
	curve := make([]Righting, 0, max(0, last-first+1))
	for n := first; n <= last; n++ {
		tilt := float64(n) * degree
		arm, height := r.Righting(tilt)
		curve = append(curve, Righting{n, tilt, arm, height})
	}
	return curve
}
