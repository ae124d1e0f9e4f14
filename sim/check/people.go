package check

import (
	"cmp"
	"fmt"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// usualAsked reports whether a usual person is to be checked in this design.
func usualAsked(d piece.Design, u piece.Usual) bool {
	if d.People.Without[u] {
		return false
	}
	for _, s := range d.Sitters {
		if s.Name == u.String() {
			return false
		}
	}
	return true
}

// A somebody is a person who sits, with the postures to be checked.
type somebody struct {
	name     string
	role     piece.Role
	person   person.Person
	postures []person.Posture
}

// everybody returns who sits in the design by sizes: its own sitters in file order, then
// the usual others.
func everybody(d piece.Design) ([]somebody, error) {
	var list []somebody
	byNumbers := false
	for i, s := range sitters(d) {
		key := sitterKey(d, i)
		if err := checkSitter(s, key, d); err != nil {
			return nil, err
		}
		if s.Lies(d) {
			continue
		}
		if !s.BySizes() {
			byNumbers = true
			continue
		}
		p, err := personOf(s, key, d.Units)
		if err != nil {
			return nil, err
		}
		one := somebody{s.Name, s.Role, p, posturesOf(d, s.Role, p)}
		if s.Posture != person.Unsaid {
			one.postures = []person.Posture{s.Posture}
		}
		list = append(list, one)
	}
	if byNumbers || len(list) == 0 && d.Body.Mass > 0 { // plain numbers in, plain numbers out
		return list, nil
	}
	others, err := others(d, list)
	return append(list, others...), err
}

// others returns the usual people who may sit too.
func others(d piece.Design, owners []somebody) ([]somebody, error) {
	var list []somebody
	var err error
	add := func(u piece.Usual, name string, role piece.Role, g person.Given) {
		if !usualAsked(d, u) || err != nil {
			return
		}
		var p person.Person
		if p, err = person.New(g); err == nil {
			list = append(list, somebody{name, role, p, posturesOf(d, role, p)})
		}
	}
	switch d.Kind {
	case piece.Horse:
		if d.Seat.Drawn() {
			for _, age := range []float64{cmp.Or(d.People.Youngest, piece.YoungestRider), cmp.Or(d.People.Oldest, piece.OldestRider)} {
				add(piece.Riders, fmt.Sprintf("child of %g", age), piece.Owner, person.Given{Age: age})
			}
		}
	case piece.Chair, piece.Settee:
		switch {
		case !d.Seat.SlopeKnown():
		case len(owners) > 0 && owners[0].person.Age > 0:
			age := owners[0].person.Age
			add(piece.YoungerChild, piece.YoungerChild.String(), piece.Other, person.Given{Age: max(2, age-2), Percentile: 5})
			add(piece.OlderChild, piece.OlderChild.String(), piece.Other, person.Given{Age: min(12, age+3), Percentile: 95})
		default:
			add(piece.SmallWoman, piece.SmallWoman.String(), piece.Other, person.Given{Sex: person.Woman, Percentile: 5})
			add(piece.LargeMan, piece.LargeMan.String(), piece.Other, person.Given{Sex: person.Man, Percentile: 95})
		}
	}
	return list, err
}

// posturesOf returns the postures in which somebody of a role is checked.
func posturesOf(d piece.Design, role piece.Role, p person.Person) []person.Posture {
	switch {
	case d.Kind == piece.Horse:
		return []person.Posture{person.Riding, person.RidingForward, person.RidingBack}
	case role == piece.Hazard:
		return []person.Posture{person.Sitting}
	case role == piece.Other || !d.Seat.SlopeKnown():
		return []person.Posture{person.Sitting, person.LyingBack}
	}
	list := []person.Posture{person.Sitting, person.LyingBack, person.Perched, person.Upright, person.FeetFlat, person.FeetUp}
	if d.Arms.Height > 0 {
		list = append(list, person.PushingUp)
	}
	if p.Age == 0 {
		list = append(list, person.ChildOnLap)
	}
	if usualAsked(d, piece.ArmsBehindHead) {
		list = append(list, person.ArmsBehindHead)
	}
	return list
}

// seatOf returns the seat as package person wants it; give is by how much the back gives
// way, rad.
func seatOf(d piece.Design, give float64) person.Seat {
	s := person.Seat{Meet: d.Seat.Meet(), Backed: d.Back.Drawn(), Recline: d.Back.Recline + give, Arms: d.Arms.Height, Cushion: d.Seat.Cushion}
	if d.Seat.SlopeKnown() {
		front := d.Seat.FrontEdge()
		s.Fall, s.Depth = d.Seat.Fall(), d.Seat.Depth
		s.Reach = cmp.Or(d.Arms.Length, piece.ArmReach*d.Seat.Depth) / d.Seat.Depth * (front.X - s.Meet.X)
	}
	return s
}
