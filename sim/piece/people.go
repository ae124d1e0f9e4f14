package piece

import (
	"fmt"

	"rockerwright/body/person"
)

// A Usual is someone who is checked without being asked, unless the design has a sitter
// of the same name or says no.
type Usual int

const (
	SmallWoman     Usual = iota // 5th percentile, who may sit too
	LargeMan                    // 95th percentile
	YoungerChild                // in a child's chair, two years younger than the owner, 5th percentile
	OlderChild                  // three years older, 95th percentile
	OneAtTheEnd                 // of a settee
	ArmsBehindHead              // the owner lying back, hands behind the head
	ChildOnTheTail              // a child of 6, read two ways
	Riders                      // of a horse: the youngest and the oldest
	Newborn                     // in a cradle
	FiveMonths                  // in a cradle
	usuals         int   = iota
)

var usualNames = [usuals]string{
	"small woman", "large man", "younger child", "older child", "one at the end", "arms behind the head", "child on the tail",
	"riders", "newborn", "five months",
}

// String returns what the person is called.
func (u Usual) String() string { return usualNames[u] }

// People says who else is checked. The zero People leaves nobody out.
type People struct {
	Without  [usuals]bool // left out
	Youngest float64      // rider of a horse, years; zero means 3
	Oldest   float64      // zero means 8
	Lap      float64      // the child on a lap, years; zero means 3
}

// Ages that are taken where none is given, years; common practice of toys, and our
// judgement.
const (
	youngestRider = 3.0
	oldestRider   = 8.0
	onTheLap      = 3.0
	onTheTail     = 6.0
)

// or returns x, or where it is zero the other.
func or(x, other float64) float64 {
	if x == 0 {
		return other
	}
	return x
}

// asked reports whether a usual person is to be checked in this design.
func (d Design) asked(u Usual) bool {
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
	role     Role
	person   person.Person
	postures []person.Posture
}

// everybody returns who sits in the design by sizes: its own sitters in file order, then
// the usual others.
func (d Design) everybody() ([]somebody, error) {
	var list []somebody
	byNumbers := false
	for i, s := range d.sitters() {
		key := d.sitterKey(i)
		if err := s.check(key, d); err != nil {
			return nil, err
		}
		if s.lies(d) {
			continue
		}
		if !s.bySizes() {
			byNumbers = true
			continue
		}
		p, err := s.person(key, d.Units)
		if err != nil {
			return nil, err
		}
		one := somebody{s.Name, s.Role, p, d.postures(s.Role, p)}
		if s.Posture != person.Unsaid {
			one.postures = []person.Posture{s.Posture}
		}
		list = append(list, one)
	}
	if byNumbers || len(list) == 0 && d.Body.Mass > 0 { // plain numbers in, plain numbers out
		return list, nil
	}
	others, err := d.others(list)
	return append(list, others...), err
}

// others returns the usual people who may sit too.
func (d Design) others(owners []somebody) ([]somebody, error) {
	var list []somebody
	var err error
	add := func(u Usual, name string, role Role, g person.Given) {
		if !d.asked(u) || err != nil {
			return
		}
		var p person.Person
		if p, err = person.New(g); err == nil {
			list = append(list, somebody{name, role, p, d.postures(role, p)})
		}
	}
	switch d.Kind {
	case Horse:
		if d.Seat.drawn() {
			for _, age := range []float64{or(d.People.Youngest, youngestRider), or(d.People.Oldest, oldestRider)} {
				add(Riders, fmt.Sprintf("child of %g", age), Owner, person.Given{Age: age})
			}
		}
	case Chair, Settee:
		switch {
		case !d.Seat.level():
		case len(owners) > 0 && owners[0].person.Age > 0:
			age := owners[0].person.Age
			add(YoungerChild, YoungerChild.String(), Other, person.Given{Age: max(2, age-2), Percentile: 5})
			add(OlderChild, OlderChild.String(), Other, person.Given{Age: min(12, age+3), Percentile: 95})
		default:
			add(SmallWoman, SmallWoman.String(), Other, person.Given{Sex: person.Woman, Percentile: 5})
			add(LargeMan, LargeMan.String(), Other, person.Given{Sex: person.Man, Percentile: 95})
		}
	}
	return list, err
}

// postures returns the postures in which somebody of a role is checked.
func (d Design) postures(role Role, p person.Person) []person.Posture {
	switch {
	case d.Kind == Horse:
		return []person.Posture{person.Riding, person.RidingForward, person.RidingBack}
	case role == Hazard:
		return []person.Posture{person.Sitting}
	case role == Other || !d.Seat.level():
		return []person.Posture{person.Sitting, person.LyingBack}
	}
	list := []person.Posture{person.Sitting, person.LyingBack, person.Perched, person.Upright, person.FeetFlat, person.FeetUp}
	if d.Arms.Height > 0 {
		list = append(list, person.PushingUp)
	}
	if p.Age == 0 {
		list = append(list, person.ChildOnLap)
	}
	if d.asked(ArmsBehindHead) {
		list = append(list, person.ArmsBehindHead)
	}
	return list
}

// place returns the seat as package person wants it; give is by how much the back gives
// way, rad.
func (d Design) place(give float64) person.Seat {
	s := person.Seat{Meet: d.Seat.Meet(), Backed: d.Back.drawn(), Recline: d.Back.Recline + give, Arms: d.Arms.Height, Cushion: d.Seat.Cushion}
	if d.Seat.level() {
		front := d.Seat.FrontEdge()
		s.Fall, s.Depth = d.Seat.Fall(), d.Seat.Depth
		s.Reach = or(d.Arms.Length, armReach*d.Seat.Depth) / d.Seat.Depth * (front.X - s.Meet.X)
	}
	return s
}
