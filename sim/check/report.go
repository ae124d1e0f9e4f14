package check

import (
	"cmp"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Report is all that was found out about a design that stands still.
type Report struct {
	Balanced
	Releases []float64 // tilts from rest at which each load is to be let go, rad, + back; the usual ones

	Cause Cause // what limits the worst of the limits
	Try   *Try  // one change after which all limits hold; nil where none is needed or found

	Fit     []Fit          // the owner against the seat, at the seated rest
	Misfits []Misfit       // who does not fit, and how
	May     *May           // who may sit; nil where nobody is posed
	Beyond  []piece.Beyond // legs that stand beyond the rockers
	Bending []Bending      // of the rockers, where their sizes and wood are given
}

// A Tape is what can be tested with a tape on the drawing, m.
type Tape struct {
	NoseTip, TailTip float64 // heights over the floor, as drawn
	TipToTip         float64
	Edge             float64 // along the floor edge
}

// Check computes everything that is asked of a design. The error is a [*piece.KeyError]: a measure that is missing,
// given twice, or makes no piece. A piece that does not stand is an answer, not an error.
func Check(d piece.Design) (Report, error) {
	b, err := Balance(d)
	if err != nil {
		return Report{}, err
	}
	r := Report{Balanced: b}
	for _, degrees := range []float64{1, 2, 5, 10, 15, 20, 25} {
		r.Releases = append(r.Releases, degrees*quantity.Deg)
	}
	r.Cause, r.Try = b.cure()
	r.Fit, r.Misfits, r.May, r.Beyond = b.fit(), b.misfits(), b.may(), d.Beyond(b.Edge)
	r.Bending, err = b.bending()
	return r, err
}

func holds(limits []Limit) bool {
	return !slices.ContainsFunc(limits, Limit.Fails)
}

// Arcs returns the arcs of the floor edge as it is drawn, from nose to tail, without flats and corners.
func (b *Balanced) Arcs() []piece.Arc {
	r := b.Design.Rocker
	if len(r.Arcs) == 0 {
		return []piece.Arc{{Radius: r.Radius, Length: r.Nose + r.Tail}}
	}
	return slices.DeleteFunc(slices.Clone(r.Arcs), func(a piece.Arc) bool { return a.Radius == 0 })
}

// Radii returns radii of one arc to compare: its own, and two inches or 50 mm less, as far as that is one, and more, m.
func (b *Balanced) Radii() []float64 {
	radius, step := b.Design.Rocker.Radius, 2*quantity.In
	if b.Design.Units == quantity.Metric {
		step = 0.05
	}
	list := []float64{radius - step, radius, radius + step}
	return slices.DeleteFunc(list, func(x float64) bool { return x <= 0 })
}

// OnTips returns by how much it is tilted forward, and back, where it comes to stand on a tip, rad.
func (b *Balanced) OnTips() (forward, back float64) {
	return -b.Edge.Bearing(0).To, b.Edge.Bearing(b.Edge.Bearings() - 1).From
}

// tape measures the drawn edge.
func tape(edge rocker.Profile) Tape {
	nose, tail := edge.Nose(), edge.Tail()
	return Tape{
		NoseTip:  edge.Height(nose, 0),
		TailTip:  edge.Height(tail, 0),
		TipToTip: r2.Norm(r2.Sub(nose, tail)),
		Edge:     edge.Length(),
	}
}

// ForAChild reports whether seating is made for a child: its owner has an age.
func (r Report) ForAChild() bool {
	return r.Design.Traits().Seating &&
		slices.ContainsFunc(r.Somebody, func(s Somebody) bool { return s.Role == piece.Owner && s.Person.Age > 0 })
}

// A Checked is somebody with whom the piece was checked.
type Checked struct {
	Name     string
	Mass     float64 // of the person alone, kg
	Postures int     // in how many it was checked
}

// Checked returns who was checked, the lightest first; no hazards, of which nothing is asked.
func (r Report) Checked() []Checked {
	var list []Checked
	for i := range r.Loads {
		l := &r.Loads[i]
		if l.Empty || l.Role == piece.Hazard {
			continue
		}
		at := slices.IndexFunc(list, func(c Checked) bool { return c.Name == l.Sitter })
		if at < 0 {
			at = len(list)
			list = append(list, Checked{Name: l.Sitter, Mass: cmp.Or(r.sizesOf(l.Sitter)[person.Mass], l.Rider().Mass)})
		}
		list[at].Postures++
	}
	slices.SortStableFunc(list, func(a, b Checked) int { return cmp.Compare(a.Mass, b.Mass) })
	return list
}

// sizesOf returns the sizes of who is posed under a name, given or estimated; zeros where nobody is.
func (r Report) sizesOf(name string) person.Measures {
	for _, s := range r.Somebody {
		if s.Name == name {
			return s.Person.Sizes
		}
	}
	return person.Measures{}
}
