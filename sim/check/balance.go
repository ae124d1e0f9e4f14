package check

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/readings"
)

// A Sitters is who sits in a design: made once, for many designs that differ in wood alone.
// The people are then posed in each of them anew, which is quick; their sizes are not.
type Sitters struct {
	people []somebody
}

// SittersOf returns who sits in the design. The error is a [*piece.KeyError].
func SittersOf(d piece.Design) (Sitters, error) {
	people, err := everybody(d)
	return Sitters{people}, err
}

// Deciding returns the company in those postures alone that decide most limits of the design: the
// first person as given and leaning furthest, others leaning furthest. Of who does not lean
// back, and where a tilt at rest is asked of everyone, nobody is left out. Loads that are left
// out must still be asked once, in the end.
func (c Sitters) Deciding(d piece.Design) Sitters {
	if d.Limits.RestTilt > 0 {
		return c
	}
	forward := d.Limits.ForwardMargin > 0 || d.Limits.ForwardLift > 0
	narrow := Sitters{people: slices.Clone(c.people)}
	for i := range narrow.people {
		one := &narrow.people[i]
		if !slices.Contains(one.postures, person.LyingBack) {
			continue
		}
		var kept []person.Posture
		for _, p := range one.postures {
			if i == 0 && p == one.postures[0] || p == person.LyingBack || p == person.Perched && forward {
				kept = append(kept, p)
			}
		}
		one.postures = kept
	}
	return narrow
}

// First returns the company with the first person alone to be posed, as given first; the others
// are there, but not asked.
func (c Sitters) First() Sitters {
	first := Sitters{people: slices.Clone(c.people)}
	for i := range first.people {
		one := &first.people[i]
		one.postures = one.postures[:min(len(one.postures), max(0, 1-i))]
	}
	return first
}

// Balance returns the first part of what [Check] finds of a design with this company in it:
// the piece alone and each load of which something is asked, where it rests, how far seat
// and back lean there, the push for one degree, and the limits. The error is a [*piece.KeyError].
func (c Sitters) Balance(d piece.Design) (Report, error) {
	s, err := drawn(d)
	if err != nil {
		return Report{}, err
	}
	s.people = c.people
	if err := s.balance(d, asked); err != nil {
		return Report{}, err
	}
	return s.report(d), nil
}

// Balance is [Sitters.Balance] with everybody, hazards too, made anew.
func Balance(d piece.Design) (Report, error) {
	s, err := balanced(d)
	if err != nil {
		return Report{}, err
	}
	return s.report(d), nil
}

// report returns a balanced design as a report of its first part.
func (s *standing) report(d piece.Design) Report {
	r := Report{Design: d, Edge: s.edge, Tape: tape(s.edge), Loads: s.loads, Curve: s.curve}
	carry := d.Carry(s.edge)
	top, known := d.TopOfBack()
	top = carry.Point(top)
	for i := range r.Loads {
		r.Loads[i].lean(d, carry)
		if l := &r.Loads[i]; known && l.Balance.Outcome == sim.Rocks {
			l.Pull.EffortBack, l.Pull.EffortForward = l.Rig.Effort(l.Balance, top)
		}
	}
	r.Limits, r.Look = limitsOf(d, r.Loads)
	return r
}

// A standing is a design whose loads are balanced.
type standing struct {
	edge         rocker.Profile
	curve        *piece.Curve
	masses       piece.Masses
	read         *readings.Result // of a piece that was measured, else nil
	usualInertia bool             // weighed, but no rocks told it
	people       []somebody
	loads        []Load
}

// balanced returns the design's edge, the mass of the piece, who sits, and the loads
// with their balance and nothing else.
func balanced(d piece.Design) (standing, error) {
	s, err := drawn(d)
	if err != nil {
		return s, err
	}
	if s.people, err = everybody(d); err != nil {
		return s, err
	}
	return s, s.balance(d, everyLoad)
}

// drawn returns the design's edge, and nothing else yet.
func drawn(d piece.Design) (standing, error) {
	var s standing
	var err error
	if s.edge, s.curve, err = d.Profile(); err != nil {
		return s, err
	}
	return s, d.Validate()
}

// balance fills in the mass of the piece and the loads that are wanted, balanced.
func (s *standing) balance(d piece.Design, wanted wanted) error {
	var err error
	if err = s.weigh(d); err != nil {
		return err
	}
	if s.loads, err = loadsOf(d, s.people, s.edge, s.masses, wanted); err != nil {
		return err
	}
	for i := range s.loads {
		s.loads[i].Balance = s.loads[i].Rig.Balance()
	}
	return nil
}

// Placed returns where a point of the seat frame lies as drawn, slid and cut, chair frame.
func (r Report) Placed(p r2.Vec) r2.Vec { return r.Design.Carry(r.Edge).Point(p) }
