package check

import (
	"cmp"
	"fmt"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// Somebody is a person who is posed, with what was given of the sizes.
type Somebody struct {
	Name     string
	Role     piece.Role
	Person   person.Person
	postures []person.Posture // to be checked
}

// SittersOf returns who sits in the design by sizes: its own sitters in file order, then
// the usual others. The error is a [*piece.KeyError].
func SittersOf(d piece.Design) (Sitters, error) {
	var list Sitters
	byNumbers, keys := false, d.KeysOf("sitter.N")
	for i, s := range sitters(d) {
		key := keys[i]
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
		one := Somebody{s.Name, s.Role, p, posturesOf(d, s.Role, p)}
		if s.Posture != person.Unsaid {
			one.postures = []person.Posture{s.Posture}
		}
		list = append(list, one)
	}
	if byNumbers || len(list) == 0 && d.Body.Given() { // plain numbers in, plain numbers out
		return list, nil
	}
	others, err := others(d, list)
	return append(list, others...), err
}

// others returns the usual people who may sit too.
func others(d piece.Design, owners []Somebody) ([]Somebody, error) {
	owner := 0.0 // years, of a child
	if len(owners) > 0 {
		owner = owners[0].Person.Age
	}
	var list []Somebody
	var err error
	add := func(name string, role piece.Role, g person.Given) {
		p, wrong := person.New(g)
		list, err = append(list, Somebody{name, role, p, posturesOf(d, role, p)}), cmp.Or(err, wrong)
	}
	for _, u := range d.Traits().Company {
		switch seat := d.Seat.SlopeKnown(); {
		case !d.Checks(u):
		case u == piece.Riders && d.Seat.Drawn():
			for _, age := range []float64{cmp.Or(d.People.Youngest, piece.YoungestRider), cmp.Or(d.People.Oldest, piece.OldestRider)} {
				add(fmt.Sprintf("child of %g", age), piece.Owner, person.Given{Age: age})
			}
		case u == piece.YoungerChild && seat && owner > 0:
			add(u.String(), piece.Other, person.Given{Age: max(2, owner-2), Percentile: 5})
		case u == piece.OlderChild && seat && owner > 0:
			add(u.String(), piece.Other, person.Given{Age: min(12, owner+3), Percentile: 95})
		case u == piece.SmallWoman && seat && owner == 0:
			add(u.String(), piece.Other, person.Given{Sex: person.Woman, Percentile: 5})
		case u == piece.LargeMan && seat && owner == 0:
			add(u.String(), piece.Other, person.Given{Sex: person.Man, Percentile: 95})
		}
	}
	return list, err
}

// posturesOf returns the postures in which somebody of a role is checked; an owner whose seat is not drawn with its
// slope as who may sit too.
func posturesOf(d piece.Design, role piece.Role, p person.Person) []person.Posture {
	if role == piece.Owner && !d.Seat.SlopeKnown() {
		role = piece.Other
	}
	return slices.DeleteFunc(slices.Clone(d.Traits().Postures[role]), func(posture person.Posture) bool {
		return posture == person.PushingUp && !d.Arms.Drawn() || posture == person.ChildOnLap && p.Age > 0 ||
			posture == person.ArmsBehindHead && !d.Checks(piece.ArmsBehindHead)
	})
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
