package check

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/rocker/root"
	"rockerwright/sim/piece"
)

// A May says who may sit: between which weights, and which heights, the limits hold for
// a person at ease. Weights are those of a person of the middle height,
// heights those of a person as stout as the mean. It looks from 40 to 180 kg and from 1.45 to 2.05 m.
type May struct {
	Nobody             bool // not even the middle person
	Lightest, Heaviest float64
	Shortest, Tallest  float64
	Middle             person.Measures // the middle person's height and weight
}

// How far [May] looks, m and kg; our judgement of who sits in a grown-up's chair.
const (
	lowMass, highMass       = 40.0, 180.0
	lowStature, highStature = 1.45, 2.05
	cells                   = 12 // of the grid from the middle to either end, before halving
)

// may returns who may sit in a chair for grown-ups; nil where none is drawn.
func (b *Balanced) may() *May {
	d := b.Design
	if !d.Seat.SlopeKnown() || !d.Traits().Seating || len(b.Somebody) == 0 || b.Somebody[0].Person.Age > 0 {
		return nil
	}
	middle, err := person.New(person.Given{})
	if err != nil {
		return nil
	}
	m := &May{Middle: middle.Sizes}
	stature, mass := m.Middle[person.Stature], m.Middle[person.Mass]
	weighs := func(x float64) bool { return b.keepsFor(person.Measures{person.Stature: stature, person.Mass: x}) }
	stands := func(x float64) bool { return b.keepsFor(person.Measures{person.Stature: x}) }
	if m.Nobody = !weighs(mass); m.Nobody {
		return m
	}
	m.Lightest = furthest(weighs, mass, lowMass)
	m.Heaviest = furthest(weighs, mass, highMass)
	m.Shortest = furthest(stands, stature, lowStature)
	m.Tallest = furthest(stands, stature, highStature)
	return m
}

// furthest returns how far from one value towards another all is well: the first cell of
// a grid in which it is not is halved, for it need not be well again beyond.
func furthest(well func(float64) bool, from, to float64) float64 {
	good := from
	for i := 1; i <= cells; i++ {
		next := from + (to-from)*float64(i)/cells
		if well(next) {
			good = next
			continue
		}
		good, _ = root.Edge(well, good, next, math.Abs(next-good)/1000, 0)
		return good
	}
	return to
}

// keepsFor reports whether the limits hold for a person of some sizes, at ease.
func (b *Balanced) keepsFor(sizes person.Measures) bool {
	p, err := person.New(person.Given{Sizes: sizes})
	if err != nil {
		return false
	}
	l := Load{Role: piece.Other, Posture: person.AtEase, Rig: b.Loads[0].Rig, people: []Somebody{{Person: p}}}
	l.pose(b.Design, 0)
	l.ride(b.carry)
	l.settle(b, b.Loads[0].Rig.Body)
	limits, _ := b.limitsOf([]Load{l})
	return holds(limits)
}
