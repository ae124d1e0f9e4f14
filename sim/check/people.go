package check

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Somebody is a person who is posed, with what was given of the sizes.
type Somebody struct {
	Name     string
	Role     piece.Role
	Person   person.Person
	postures []person.Posture // to be checked
	lap      *person.Person   // a child, where one of these has it on the lap
	ahead    float64          // of where the chain of segments has it, the balance point, m
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
		postures := posturesOf(d, s.Role, p)
		if s.Posture != person.Unsaid {
			postures = []person.Posture{s.Posture}
		}
		one, err := somebody(d, s.Name, s.Role, p, postures)
		if err != nil {
			return nil, err
		}
		list = append(list, one)
	}
	if byNumbers || len(list) == 0 && d.Body.Mass > 0 { // plain numbers in, plain numbers out
		return list, nil
	}
	others, err := others(d, list)
	return append(list, others...), err
}

// somebody returns who sits in some postures, with the child that is on the lap in one of them. The error
// is a [*piece.KeyError].
func somebody(d piece.Design, name string, role piece.Role, p person.Person, postures []person.Posture) (Somebody, error) {
	one := Somebody{Name: name, Role: role, Person: p, postures: postures}
	if slices.Contains(postures, person.ChildOnLap) {
		child, err := person.New(person.Given{Age: cmp.Or(d.People.Lap, piece.OnTheLap)})
		if err != nil {
			return one, &piece.KeyError{Key: "people.lap", Reason: err.Error()}
		}
		one.lap = &child
	}
	return one, nil
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
		one, also := somebody(d, name, role, p, posturesOf(d, role, p))
		list, err = append(list, one), cmp.Or(err, wrong, also)
	}
	for _, u := range d.Traits().Usual {
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

// placed appends a sitter who is given by balance points, in each posture given.
func placed(list []Load, s piece.Sitter, meet r2.Vec) []Load {
	inertia := s.Inertia
	if inertia == 0 && s.Role != piece.Hazard {
		inertia = s.Mass * piece.Gyration * piece.Gyration
	}
	add := func(posture person.Posture, at r2.Vec) {
		name := s.Name
		if posture != person.Unsaid && s.Role != piece.Hazard {
			name += ", " + posture.String()
		}
		list = append(list, Load{Name: name, Sitter: s.Name, Role: s.Role, Posture: posture,
			Person: body.Body{Mass: s.Mass, Centre: at, Inertia: inertia}})
	}
	if s.HasCentre() {
		add(s.Posture, s.Centre)
		return list
	}
	for _, p := range s.Places() {
		add(p.Posture, r2.Add(meet, r2.Vec{X: p.Place.Ahead, Y: p.Place.Above}))
	}
	return list
}

// sitters returns the design's sitters, each person under a name of its own: of two who are called the same the later
// one is numbered, "owner 2". Entries of one name that are balance points in postures of their own are one person.
func sitters(d piece.Design) []piece.Sitter {
	list := d.Sitters
	for i := 1; i < len(list); i++ {
		name := list[i].Name
		for n := 2; slices.ContainsFunc(list[:i], func(other piece.Sitter) bool { return clashes(other, list[i], d) }); n++ {
			if &list[0] == &d.Sitters[0] {
				list = slices.Clone(list)
			}
			list[i].Name = fmt.Sprintf("%s %d", name, n)
		}
	}
	return list
}

// clashes reports whether two entries that are called the same are two people: anybody who is posed or
// lies, and balance points in one posture.
func clashes(s piece.Sitter, other piece.Sitter, d piece.Design) bool {
	switch {
	case s.Name != other.Name:
		return false
	case s.Lies(d) || s.BySizes() || other.Lies(d) || other.BySizes():
		return true
	}
	return slices.ContainsFunc(placed(nil, s, r2.Vec{}), func(a Load) bool {
		return slices.ContainsFunc(placed(nil, other, r2.Vec{}), func(b Load) bool { return a.Name == b.Name })
	})
}

// checkSitter returns the first thing a sitter lacks. key is its place in the design.
func checkSitter(s piece.Sitter, key string, d piece.Design) error {
	who, placed, noSeat := s.Person, len(s.Places()) > 0, !d.Seat.Drawn()
	lies, given := s.Lies(d), givenSize(s)
	byNumbers := s.HasCentre() || placed
	bySizes := !lies && !byNumbers
	for _, w := range []struct {
		wrong               bool
		entry, give, reason string
	}{
		{lies && (who.Age > 2 || who.Percentile >= 100), ".age", "age", "who lies in a cradle is two years old at most, 0 being newborn"},
		{who.Percentile >= 100, ".percentile", "percentile", "a percentile lies between 0 and 100: that many in 100 people are smaller"},
		{!lies && who.Age != 0 && who.Age < 1, ".age", "age", "a child who sits by itself is a year old or more"},
		{!lies && who.Age > 12 && who.Age < 18 && who.Sizes[person.Stature] == 0, ".age", "height",
			"the growth charts here end at 12 years: give height and weight too"},
		{s.HasCentre() && placed, ".centre", "", "give centre, or ahead and above, not both"},
		{!lies && byNumbers && s.Mass <= 0, ".weight", "weight", "a person has a weight"},
		{s.Placed != (piece.Place{}) && s.AtEase != (piece.Place{}) && (s.Posture == person.Unsaid || s.Posture == person.AtEase),
			".at_ease.ahead", "", "ahead and above are the balance point at ease already: give one of the two, or say of which posture they are"},
		{!lies && placed && noSeat, ".ahead", "centre", "ahead and above are measured from the seat: draw one, or give centre"},
		{!lies && byNumbers && given != "", "." + given, "",
			"this person is placed by numbers, which leave no use for " + given + ": keep one of the two"},
		{bySizes && noSeat && d.Traits().Bed, "", "bed",
			"an infant lies in the drawn bed, and none is drawn: draw it, or give weight and centre"},
		{bySizes && noSeat, "", "seat", "a person sits on the drawn seat, and none is drawn: draw it, or give weight and centre"},
	} {
		if w.wrong {
			return &piece.KeyError{Key: key + w.entry, Reason: w.reason, Give: w.give}
		}
	}
	return nil
}

// givenSize returns the key of a size that is given, "" where none is.
func givenSize(s piece.Sitter) string {
	for _, size := range person.Sizes() {
		if s.Person.Sizes[size] > 0 {
			return piece.SizeKey(size)
		}
	}
	switch {
	case s.Person.Age > 0:
		return "age"
	case s.Person.Percentile > 0:
		return "percentile"
	}
	return ""
}

// personOf returns the person to be posed. key is the sitter's place in the design.
func personOf(s piece.Sitter, key string, units quantity.System) (person.Person, error) {
	given := s.Person
	given.Sizes[person.Mass] = s.Mass
	p, err := person.New(given)
	var wrong *person.SizeError
	if !errors.As(err, &wrong) {
		return p, err
	}
	kind := quantity.Length
	if wrong.Size == person.Mass {
		kind = quantity.Mass
	}
	reason := fmt.Sprintf("%s of %s: %s", wrong.Size, quantity.With(wrong.Value, kind, units), wrong.Reason)
	if wrong.Near > 0 {
		reason += fmt.Sprintf(" (about %s was expected)", quantity.With(wrong.Near, kind, units))
	}
	return p, &piece.KeyError{Key: key + "." + piece.SizeKey(wrong.Size), Reason: reason}
}
