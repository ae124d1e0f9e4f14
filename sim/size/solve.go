package size

import (
	"cmp"
	"errors"
	"math"
	"slices"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Shape is a kind of rocker that is proposed.
type Shape int

const (
	OneArc Shape = iota
	TwoArcs
	ThreeArcs
	FlatterTail // one arc with a flatter one behind, as a brake
	EvenTime    // a rock takes the same time large or small
)

func (c Shape) String() string {
	return [...]string{"one arc", "two arcs", "three arcs", "flatter tail", "even time"}[c]
}

// A Proposal is a rocker that was found, rounded to what a maker sets.
type Proposal struct {
	Shape  Shape
	Design piece.Design
	Report check.Balanced // of Design, the first part of what Check finds
	Misses []Miss         // how each aim came out, rounded as it is
	Even   []float64      // times of a rock from each of EvenReleases, the owner at ease, s; NaN where none
	Fitted int            // by how many arcs an EvenTime edge was fitted; a short end may have fewer
}

// Met reports whether everything that was aimed for is met, as far as a maker can read it.
func (p Proposal) Met() bool {
	return !slices.ContainsFunc(p.Misses, func(m Miss) bool { return !m.Met() })
}

// Binds returns what must hold and is only just held: what sets the answer.
func (p Proposal) Binds() []Miss {
	return slices.DeleteFunc(slices.Clone(p.Misses), func(m Miss) bool {
		return !m.must() || !(m.Steps > -1.5) || m.Limit.Name == "rest"
	})
}

// A Solution is the rockers that were found for a target.
type Solution struct {
	Proposals []Proposal // with one arc first
	Best      int        // the one to take

	question question
	one      shape // of one arc
}

// Take returns the rocker to take.
func (s Solution) Take() Proposal { return s.Proposals[s.Best] }

// Solve returns rockers for the design's target: one arc where that will do, the target asks for
// no more or a cradle rocks sideways, else two or three, each the best that was found. Where a target cannot be
// had they are the nearest to it that keep what must hold, if anything keeps it; then the one
// to take has the fewest arcs of those that are as near as a maker can tell. The seed is that of
// the starts of a search. The error is of package piece, an [*UnsuitedError], or [ErrNoTarget].
func Solve(d piece.Design, seed uint64) (Solution, error) {
	var s Solution
	if !d.Target.Asks() {
		return s, ErrNoTarget
	}
	q, err := ask(d)
	if err != nil {
		return s, err
	}
	one, met := q.oneArc()
	if !met {
		one = q.compound(one, 1, seed)
	}
	s.question, s.one = q, one
	s.Proposals = append(s.Proposals, q.propose(OneArc, one))
	most := cmp.Or(int(d.Target.Arcs), 3)
	if q.alike {
		most = 1 // several would be left and right alike, with the flatter ones at both ends
	}
	for arcs := 2; arcs <= most && !s.Proposals[len(s.Proposals)-1].Met(); arcs++ { // as few as will do
		s.Proposals = append(s.Proposals, q.propose(Shape(arcs-1), q.compound(one, arcs, seed)))
	}
	least := math.Inf(1)
	for _, p := range s.Proposals {
		least = min(least, score(p.Misses))
	}
	for s.Best = 0; score(s.Take().Misses) > least+1; s.Best++ {
	}
	return s, nil
}

// ErrNoTarget says that a design aims for nothing.
var ErrNoTarget = errors.New("nothing is aimed for: say what you want under [target]")

// Others returns rockers that a maker may like instead of the one arc that was found: with a
// flatter tail, and those of 1, 3 and 5 arcs that come near to the even-time edge for the owner at
// ease. One that cannot be is left out; of a cradle that rocks sideways both are.
func (s Solution) Others() []Proposal {
	q, one := s.question, s.one
	var list []Proposal
	if q.alike {
		return nil
	}
	if s, ok := q.flatterTail(one); ok {
		list = append(list, q.propose(FlatterTail, s))
	}
	limits := q.design.Limits
	q.design = s.Proposals[0].Design // its ends and its low point, as they are set
	q.design.Limits = limits
	var err error
	if q.drawn, err = q.sitters.Balance(q.design); err != nil {
		return list
	}
	q.start.nose, q.start.tail = q.drawn.Edge.Reach()
	for _, arcs := range []int{1, 3, 5} {
		if even, ok := q.evenTime(arcs); ok {
			p := q.proposal(EvenTime, even)
			p.Fitted = arcs
			list = append(list, p)
		}
	}
	return list
}

// propose rounds a shape to what a maker sets, and says how it comes out. Ends that must be
// so long for a limit are rounded up, those that must be so short down.
func (q *question) propose(curve Shape, s shape) Proposal {
	step := RadiusStep(q.design.Units)
	s.radii, s.joints = slices.Clone(s.radii), slices.Clone(s.joints)
	for i := range s.radii {
		s.radii[i] = atLeastOne(s.radii[i], step)
	}
	for i := range s.joints {
		s.joints[i] = math.Round(s.joints[i]/step) * step
	}
	s.nose, s.tail = atLeastOne(s.nose, step), atLeastOne(s.tail, step)
	if leaned := q.leaned(s); score(q.misses(leaned)) <= score(q.misses(s)) { // nothing else that is aimed for stands against it
		s = leaned
	}
	behind := q.design.Seat.Behind // is what reads on a tape
	s.low = quantity.Round(behind+s.low, quantity.Length, q.design.Units) - behind
	best, least := s, math.Inf(1)
	for _, more := range [...][2]float64{{0, 0}, {0, 1}, {1, 0}, {1, 1}, {0, -1}, {-1, 0}, {-1, -1}, {1, -1}, {-1, 1}} {
		t := s
		if q.alike && more[0] != more[1] {
			continue
		}
		t.nose, t.tail = max(step, s.nose+more[0]*step), max(step, s.tail+more[1]*step)
		if sc := score(q.misses(t)); sc < least-1e-9 {
			best, least = t, sc
		}
	}
	p := q.proposal(curve, best.with(q.design))
	p.Misses = append(p.Misses, Miss{Aim: Sensible, Steps: q.room.cramped(best)})
	return p
}

// proposal says how a design comes out. Its limits are those of the file again.
func (q *question) proposal(curve Shape, d piece.Design) Proposal {
	p := Proposal{Shape: curve}
	p.Design = rounded(d, q.design.Rocker)
	asked, err := q.sitters.Balance(p.Design)
	if err != nil {
		p.Misses = []Miss{{Aim: Sensible, Steps: noAnswer}}
		return p
	}
	p.Misses = misses(q.target, asked)
	p.Design.Limits = q.limits
	if p.Report, err = check.Balance(p.Design); err != nil {
		p.Misses = append(p.Misses, Miss{Aim: Sensible, Steps: noAnswer})
		return p
	}
	if l := p.Report.Seated(); l.Balance.Outcome == sim.Rocks {
		p.Even = evenness(l.Rig, l.Balance)
	}
	return p
}
