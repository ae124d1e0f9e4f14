package check

import (
	"errors"
	"fmt"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

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
	for _, p := range s.PlacedIn() {
		add(p.Posture, r2.Add(meet, r2.Vec{X: p.Place.Ahead, Y: p.Place.Above}))
	}
	return list
}

// sitters returns the design's sitters, each person under a name of its own: of two who are called the
// same the later one is numbered, "owner 2". Entries of one name that are balance points in
// postures of their own are one person.
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
	seat, placed := d.Seat, len(s.PlacedIn()) > 0
	switch {
	case s.Lies(d) && (s.Person.Age > 2 || s.Person.Percentile >= 100):
		return &piece.KeyError{Key: key + ".age", Reason: "who lies in a cradle is two years old at most, 0 being newborn", Give: "age"}
	case s.Lies(d):
		return nil
	case s.Person.Percentile >= 100:
		return &piece.KeyError{Key: key + ".percentile", Reason: "a percentile lies between 0 and 100: that many in 100 people are smaller", Give: "percentile"}
	case s.Person.Age != 0 && s.Person.Age < 1:
		return &piece.KeyError{Key: key + ".age", Reason: "a child who sits by itself is a year old or more", Give: "age"}
	case s.Person.Age > 12 && s.Person.Age < 18 && s.Person.Sizes[person.Stature] == 0:
		return &piece.KeyError{Key: key + ".age", Reason: "the growth charts here end at 12 years: give height and weight too", Give: "height"}
	case s.HasCentre() && placed:
		return &piece.KeyError{Key: key + ".centre", Reason: "give centre, or ahead and above, not both"}
	case (s.HasCentre() || placed) && s.Mass <= 0:
		return &piece.KeyError{Key: key + ".weight", Reason: "a person has a weight", Give: "weight"}
	case placed && !seat.Drawn():
		return &piece.KeyError{Key: key + ".ahead", Reason: "ahead and above are measured from the seat: draw one, or give centre", Give: "centre"}
	case s.HasCentre() || placed:
		if given := givenSize(s); given != "" {
			return &piece.KeyError{Key: key + "." + given, Reason: "this person is placed by numbers, which leave no use for " + given + ": keep one of the two"}
		}
		return nil
	case !seat.Drawn() && d.Traits().Bed:
		return &piece.KeyError{Key: key, Reason: "an infant lies in the drawn bed, and none is drawn: draw it, or give weight and centre", Give: "bed"}
	case !seat.Drawn():
		return &piece.KeyError{Key: key, Reason: "a person sits on the drawn seat, and none is drawn: draw it, or give weight and centre", Give: "seat"}
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
