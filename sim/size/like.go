package size

import (
	"cmp"
	"math"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Keep is what is kept of a piece that is liked.
type Keep int

const (
	SameTime       Keep = iota // of one rock
	SameSteadiness             // R − H
	SameProportion             // R/H
	SameRadius
)

// Keeps are all of them.
var Keeps = [...]Keep{SameTime, SameSteadiness, SameProportion, SameRadius}

func (w Keep) String() string {
	return [...]string{"same time", "same steadiness", "same proportion", "radius kept"}[w]
}

// A Kept is the new piece with its radii scaled so that one thing is as in the old one.
type Kept struct {
	Keep   Keep
	Found  bool           // else no radius does it, and the rest is empty
	Exact  float64        // the radius at the rest, m
	More   float64        // by how much that is more than the old one's, m
	Scale  float64        // of all radii, against those the new piece was drawn with
	Design piece.Design   // rounded to what a maker sets
	Report check.Balanced // of Design, every load
	Feel   Feel           // of Design
}

// A Likeness answers how the radius goes with the chair.
type Likeness struct {
	Old, New         Feel
	OldPiece, Wanted check.Balanced // as they were given
	Kept             [len(Keeps)]Kept
	Rules            []Rule // of the trade, for the new piece
}

// Like returns the new piece with the rocker that keeps each thing of the old one. Its low point under the seat,
// seat heights and ratios of arcs stay; all radii scale by the one at the rest with the owner at ease. Edge lengths
// stay too, but under SameProportion are the old ones, scaled as the radius is. The error is of package piece, or
// an [*UnsuitedError] where a piece has no radius to scale or no feel to keep.
func Like(old, wanted piece.Design) (Likeness, error) {
	var l Likeness
	wanted, err := wanted.Fitted()
	if err != nil {
		return l, err
	}
	if l.OldPiece, err = check.Balance(old); err != nil {
		return l, &OldError{err}
	}
	if l.Wanted, err = check.Balance(wanted); err != nil {
		return l, err
	}
	if l.Wanted.Curve != nil {
		return l, &UnsuitedError{"its rockers are measured, not drawn: draw [rocker] to find another radius"}
	}
	var ok bool
	if l.Old, ok = FeelOf(l.OldPiece); !ok {
		return l, &OldError{&UnsuitedError{"with its owner it has no rest on a curve, so there is no feel to keep"}}
	}
	l.New, _ = FeelOf(l.Wanted)
	sitters, err := check.SittersOf(wanted)
	if err != nil {
		return l, err
	}
	for i, keep := range Keeps {
		if l.Kept[i], err = l.kept(keep, sitters.First()); err != nil {
			return l, err
		}
	}
	l.Rules = rules(l)
	return l, nil
}

// An UnsuitedError says why a piece cannot be sized.
type UnsuitedError struct{ Reason string }

func (e *UnsuitedError) Error() string { return e.Reason }

// An OldError is an error of the piece that is liked.
type OldError struct{ Err error }

func (e *OldError) Error() string { return "the piece that is liked: " + e.Err.Error() }
func (e *OldError) Unwrap() error { return e.Err }

// wantedRadius returns the radius at the rest that keeps what is said, with the new height and gyration there.
func (w Keep) wantedRadius(old, now Feel) float64 {
	switch w {
	case SameTime:
		return now.RadiusForPeriod(old.Period)
	case SameSteadiness:
		return now.radiusFor(old.Steadiness)
	case SameProportion:
		return now.Height * old.Radius / old.Height
	}
	return old.Radius
}

// How far a radius is scaled, at most.
const leastScale, mostScale = 0.25, 8.0

// kept solves for one thing that is kept. Where the piece has no rest its radius is too small.
func (l *Likeness) kept(keep Keep, sitters check.Sitters) (Kept, error) {
	k := Kept{Keep: keep}
	at := func(scale float64) (now Feel, short float64) {
		report, err := sitters.Balance(l.scaled(scale, keep))
		if err != nil {
			return now, math.NaN()
		}
		now, rests := FeelOf(report)
		if !rests {
			return now, math.NaN()
		}
		return now, keep.wantedRadius(l.Old, now) - now.Radius
	}
	scale, found := zero(func(scale float64) float64 { _, short := at(scale); return short }, 1, leastScale, mostScale)
	now, short := at(scale)
	if !found || !(math.Abs(short) <= 1e-6*now.Radius) { // across a joint it may jump
		return k, nil
	}
	k.Found, k.Scale, k.Exact, k.More = true, scale, now.Radius, now.Radius-l.Old.Radius
	k.Design = rounded(l.scaled(scale, keep), l.Wanted.Design.Rocker)
	var err error
	if k.Report, err = check.Balance(k.Design); err != nil {
		return k, err
	}
	k.Feel, _ = FeelOf(k.Report)
	return k, nil
}

// scaled returns the new piece with all its radii scaled, and under SameProportion with the
// ends of the old one, as much larger as the radius at its rest is, or its largest where it has none.
func (l *Likeness) scaled(scale float64, keep Keep) piece.Design {
	d := withRadii(l.Wanted.Design, scale)
	if keep != SameProportion {
		return d
	}
	lengths := scale * cmp.Or(l.New.Radius, largest(l.Wanted.Design.Rocker)) / l.Old.Radius
	nose, tail := l.OldPiece.Edge.Reach()
	nose, tail = lengths*nose, lengths*tail
	d.Rocker.Nose = nose
	if len(d.Rocker.Arcs) == 0 {
		d.Rocker.Tail = tail
	}
	for i := range d.Rocker.Arcs {
		d.Rocker.Arcs[i].Length *= (nose + tail) / l.Wanted.Edge.Length()
		d.Rocker.Arcs[i].Flat *= (nose + tail) / l.Wanted.Edge.Length()
	}
	return d
}

func withRadii(d piece.Design, scale float64) piece.Design {
	d = d.Clone()
	d.Rocker.Radius *= scale
	for i := range d.Rocker.Arcs {
		d.Rocker.Arcs[i].Radius *= scale
	}
	return d
}

// largest returns the largest radius of a rocker, m; zero where it has none.
func largest(r piece.Rocker) float64 { return slices.Max(append(radii(r), 0)) }

// RadiusStep returns what a radius is rounded to: an eighth of an inch, or 5 mm.
func RadiusStep(units quantity.System) float64 {
	if units == quantity.Metric {
		return 0.005
	}
	return inch / 8
}

// rounded returns the design with its rocker as a maker sets it: radii and lengths to the
// step of a radius, where the low point lies to what a tape is read to. What is as it was drawn stays so.
func rounded(d piece.Design, drawn piece.Rocker) piece.Design {
	d = d.Clone()
	step := RadiusStep(d.Units)
	to := func(x *float64, drawn float64) {
		if *x != 0 && *x != drawn {
			*x = quantity.Round(atLeastOne(*x, step), quantity.Length, d.Units)
		}
	}
	to(&d.Rocker.Radius, drawn.Radius)
	to(&d.Rocker.Nose, drawn.Nose)
	to(&d.Rocker.Tail, drawn.Tail)
	for i := range d.Rocker.Arcs {
		var was piece.Arc
		if len(drawn.Arcs) == len(d.Rocker.Arcs) {
			was = drawn.Arcs[i]
		}
		to(&d.Rocker.Arcs[i].Radius, was.Radius)
		to(&d.Rocker.Arcs[i].Length, was.Length)
		to(&d.Rocker.Arcs[i].Flat, was.Flat)
	}
	return d
}

// atLeastOne returns x rounded to whole steps, one at the least.
func atLeastOne(x, step float64) float64 { return max(1, math.Round(x/step)) * step }

// A ForSitter is what a piece for one sitter would want for another.
type ForSitter struct {
	Stature float64 // m
	Like    Likeness
}

// ForSitters returns what radius keeps the feel that the owner likes for owners of other statures, as stout as the
// mean, on the same piece. It is empty where the first sitter is no grown-up given by sizes.
func ForSitters(d piece.Design, statures []float64) ([]ForSitter, error) {
	if len(d.Sitters) == 0 || d.Sitters[0].Person.Sizes[person.Stature] == 0 || d.Sitters[0].Person.Age > 0 {
		return nil, nil
	}
	var list []ForSitter
	for _, stature := range statures {
		other := d.Clone()
		s := &other.Sitters[0]
		s.Mass, s.Person = 0, person.Given{Sex: s.Person.Sex}
		s.Person.Sizes[person.Stature] = stature
		l, err := Like(d, other)
		if err != nil {
			return nil, err
		}
		list = append(list, ForSitter{stature, l})
	}
	return list, nil
}
