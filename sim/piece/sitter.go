package piece

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/quantity"
)

// Gyration is the radius of gyration taken for a seated person about the left-right
// axis where a balance point but no inertia is given, m: the middle of 0.29 to 0.33 m,
// which a chain of body segments gives for men and women of the middle size (derived,
// not published).
const Gyration = 0.31

// A Sitter is someone who rides rigidly: a person by sizes; or by weight and where the
// balance point lies in each posture; or by mass, centre and inertia.
type Sitter struct {
	Name string
	Role Role
	Mass float64 // kg

	Person  person.Given   // sizes, without the mass
	Posture person.Posture // the only one; or that in which Centre or Sitting was taken

	Centre  r2.Vec  // seat frame; zero means by the places, or by Person
	Inertia float64 // about the person's own centre, kg·m²; zero means by Gyration, of a hazard none

	Sitting, LyingBack, Perched Place
}

// A Place is where a person's balance point lies in one posture, in the seat frame
// from where back and seat meet, m. The zero Place is not given.
type Place struct {
	Ahead, Above float64
}

// hasCentre reports whether the sitter is placed by Centre.
func (s Sitter) hasCentre() bool { return s.Centre != (r2.Vec{}) }

// bySizes reports whether the sitter is a person to be posed.
func (s Sitter) bySizes() bool { return !s.hasCentre() && len(s.places()) == 0 }

// lies reports whether the sitter is an infant that lies in the bed of a cradle, its place
// given by Sitting.Ahead, from the middle.
func (s Sitter) lies(d Design) bool {
	return d.Kind == Cradle && d.Bed.Height > 0 && !s.hasCentre() && s.Sitting.Above == 0 && s.LyingBack == (Place{}) && s.Perched == (Place{})
}

// given returns what is known of the person.
func (s Sitter) given() person.Given {
	g := s.Person
	g.Sizes[person.Mass] = s.Mass
	return g
}

// A posed is a place with its posture.
type posed struct {
	posture person.Posture
	place   Place
}

// places returns the places given, in the order of Posture.
func (s Sitter) places() []posed {
	first := person.Sitting
	if s.Posture != person.Unsaid {
		first = s.Posture
	}
	var given []posed
	for _, p := range []posed{{first, s.Sitting}, {person.LyingBack, s.LyingBack}, {person.Perched, s.Perched}} {
		if p.place != (Place{}) {
			given = append(given, p)
		}
	}
	return given
}

// placed returns a sitter who is given by balance points, in each posture given.
func (s Sitter) placed(meet r2.Vec) []seated {
	inertia := s.Inertia
	if inertia == 0 && s.Role != Hazard {
		inertia = s.Mass * Gyration * Gyration
	}
	one := func(posture person.Posture, at r2.Vec) seated {
		return seated{name: s.loadName(posture), sitter: s.Name, role: s.Role, posture: posture,
			body: body.Body{Mass: s.Mass, Centre: at, Inertia: inertia}}
	}
	if s.hasCentre() {
		return []seated{one(s.Posture, s.Centre)}
	}
	var list []seated
	for _, p := range s.places() {
		list = append(list, one(p.posture, r2.Add(meet, r2.Vec{X: p.place.Ahead, Y: p.place.Above})))
	}
	return list
}

// loadName returns what a load is called: the sitter, and the posture where it is
// known.
func (s Sitter) loadName(posture person.Posture) string {
	if posture == person.Unsaid || s.Role == Hazard && !s.bySizes() {
		return s.Name
	}
	return s.Name + ", " + posture.String()
}

// sitters returns the design's sitters, each person under a name of its own: of two who are called the
// same the later one is numbered, "owner 2". Entries of one name that are balance points in
// postures of their own are one person.
func (d Design) sitters() []Sitter {
	list := d.Sitters
	for i := 1; i < len(list); i++ {
		name := list[i].Name
		for n := 2; slices.ContainsFunc(list[:i], func(other Sitter) bool { return other.clashes(list[i], d) }); n++ {
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
func (s Sitter) clashes(other Sitter, d Design) bool {
	switch {
	case s.Name != other.Name:
		return false
	case s.lies(d) || s.bySizes() || other.lies(d) || other.bySizes():
		return true
	}
	return slices.ContainsFunc(s.placed(r2.Vec{}), func(a seated) bool {
		return slices.ContainsFunc(other.placed(r2.Vec{}), func(b seated) bool { return a.name == b.name })
	})
}

// check returns the first thing a sitter lacks. key is its place in the design.
func (s Sitter) check(key string, d Design) error {
	seat, placed := d.Seat, len(s.places()) > 0
	switch {
	case s.lies(d) && (s.Person.Age > 2 || s.Person.Percentile >= 100):
		return &KeyError{Key: key + ".age", Reason: "who lies in a cradle is two years old at most, 0 being newborn", Example: `age = 0.25`}
	case s.lies(d):
		return nil
	case s.Person.Percentile >= 100:
		return &KeyError{Key: key + ".percentile", Reason: "a percentile lies between 0 and 100: that many in 100 people are smaller", Example: "percentile = 95"}
	case s.Person.Age != 0 && s.Person.Age < 1:
		return &KeyError{Key: key + ".age", Reason: "a child who sits by itself is a year old or more", Example: "age = 5"}
	case s.Person.Age > 12 && s.Person.Age < 18 && s.Person.Sizes[person.Stature] == 0:
		return &KeyError{Key: key + ".age", Reason: "the growth charts here end at 12 years: give height and weight too", Example: `height = "5 ft 4 in"`}
	case s.hasCentre() && placed:
		return &KeyError{Key: key + ".centre", Reason: "give centre, or ahead and above, not both"}
	case (s.hasCentre() || placed) && s.Mass <= 0:
		return &KeyError{Key: key + ".weight", Reason: "a person has a weight", Example: "weight = 180"}
	case placed && !seat.drawn():
		return &KeyError{Key: key + ".ahead", Reason: "ahead and above are measured from the seat: draw [seat], or give centre", Example: "centre = [2, 24]"}
	case s.hasCentre() || placed:
		if given := s.givenSize(); given != "" {
			return &KeyError{Key: key + "." + given, Reason: "this person is placed by numbers, which leave no use for " + given + ": keep one of the two"}
		}
		return nil
	case !seat.drawn() && d.Kind == Cradle:
		return &KeyError{Key: key, Reason: "an infant lies in the drawn bed, and none is drawn: draw [bed], or give weight and centre", Example: "[bed] with height, length and width"}
	case !seat.drawn():
		return &KeyError{Key: key, Reason: "a person sits on the drawn seat, and none is drawn: draw [seat], or give weight and centre", Example: "[seat] with front, rear, depth, width and behind_low_point"}
	}
	return nil
}

// givenSize returns the key of a size that is given, "" where none is.
func (s Sitter) givenSize() string {
	for _, size := range person.Sizes() {
		if s.Person.Sizes[size] > 0 {
			return sizeKey(size)
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

// sizeKey returns the last part of a size's key: "knee_crease".
func sizeKey(size person.Size) string {
	switch size {
	case person.Stature:
		return "height"
	case person.Mass:
		return "weight"
	case person.ThighLength:
		return "thigh"
	case person.Lumbar:
		return "lumbar"
	}
	return strings.ReplaceAll(size.String(), " ", "_")
}

// person returns the person to be posed. key is the sitter's place in the design.
func (s Sitter) person(key string, units quantity.System) (person.Person, error) {
	p, err := person.New(s.given())
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
	return p, &KeyError{Key: key + "." + sizeKey(wrong.Size), Reason: reason}
}
