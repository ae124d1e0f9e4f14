package piece

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// A Company is who sits in a design: made once, for many designs that differ in wood alone.
// The people are then posed in each of them anew, which is quick; their sizes are not.
type Company struct {
	people []somebody
}

// Company returns who sits in the design. The error is a [*KeyError].
func (d Design) Company() (Company, error) {
	people, err := d.everybody()
	return Company{people}, err
}

// Deciding returns the company in those postures alone that decide most limits of the design: the
// first person as given and leaning furthest, others leaning furthest. Of who does not lean
// back, and where a tilt at rest is asked of everyone, nobody is left out. Loads that are left
// out must still be asked once, in the end.
func (c Company) Deciding(d Design) Company {
	if d.Limits.RestTilt > 0 {
		return c
	}
	forward := d.Limits.ForwardMargin > 0 || d.Limits.ForwardLift > 0
	narrow := Company{people: slices.Clone(c.people)}
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
func (c Company) First() Company {
	first := Company{people: slices.Clone(c.people)}
	for i := range first.people {
		one := &first.people[i]
		one.postures = one.postures[:min(len(one.postures), max(0, 1-i))]
	}
	return first
}

// Balance returns the first part of what [Check] finds of a design with this company in it:
// the piece alone and each load of which something is asked, where it rests, how far seat
// and back lean there, the push for one degree, and the limits. The error is a [*KeyError].
func (c Company) Balance(d Design) (Report, error) {
	s, err := d.drawn()
	if err != nil {
		return Report{}, err
	}
	s.people = c.people
	if err := s.balance(d, asked); err != nil {
		return Report{}, err
	}
	return s.report(d), nil
}

// Balance is [Company.Balance] with everybody, hazards too, made anew.
func Balance(d Design) (Report, error) {
	s, err := d.balanced()
	if err != nil {
		return Report{}, err
	}
	return s.report(d), nil
}

// report returns a balanced design as a report of its first part.
func (s *standing) report(d Design) Report {
	r := Report{Design: d, Edge: s.edge, Tape: tape(s.edge), Loads: s.loads, Curve: s.curve}
	carry := d.carry(s.edge)
	top, known := d.TopOfBack()
	top = carry.point(top)
	for i := range r.Loads {
		r.Loads[i].lean(d, carry)
		if l := &r.Loads[i]; known && l.Balance.Outcome == sim.Rocks {
			l.Pull.EffortBack, l.Pull.EffortForward = l.Rig.Effort(l.Balance, top)
		}
	}
	r.Limits, r.Look = d.limits(r.Loads)
	return r
}

// A standing is a design whose loads are balanced.
type standing struct {
	edge   rocker.Profile
	curve  *Curve
	heap   heap
	people []somebody
	loads  []Load
}

// balanced returns the design's edge, the mass of the piece, who sits, and the loads
// with their balance and nothing else.
func (d Design) balanced() (standing, error) {
	s, err := d.drawn()
	if err != nil {
		return s, err
	}
	if s.people, err = d.everybody(); err != nil {
		return s, err
	}
	return s, s.balance(d, everyLoad)
}

// drawn returns the design's edge, and nothing else yet.
func (d Design) drawn() (standing, error) {
	var s standing
	var err error
	if s.edge, s.curve, err = d.profile(); err != nil {
		return s, err
	}
	if err := d.Seat.check(); err != nil {
		return s, err
	}
	if err := d.checkLegs(); err != nil {
		return s, err
	}
	return s, d.Back.Braces.check()
}

// balance fills in the mass of the piece and the loads that are wanted, balanced.
func (s *standing) balance(d Design, wanted wanted) error {
	var err error
	if s.heap, err = d.heap(s.edge, s.people); err != nil {
		return err
	}
	if s.loads, err = d.loads(s.people, s.edge, s.heap, wanted); err != nil {
		return err
	}
	for i := range s.loads {
		s.loads[i].Balance = s.loads[i].Rig.Balance()
	}
	return nil
}

// Placed returns where a point of the seat frame lies as drawn, slid and cut, chair frame.
func (r Report) Placed(p r2.Vec) r2.Vec { return r.Design.carry(r.Edge).point(p) }
