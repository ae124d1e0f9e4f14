package piece

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// Gyration is the radius of gyration taken for a seated person about the left-right
// axis where no inertia is given, m: the middle of 0.29 to 0.33 m, which a chain of
// body segments gives for men and women of the middle size (derived, not published).
const Gyration = 0.31

// A Sitter is a person who rides rigidly: by mass, centre and inertia, or by weight
// and where the balance point lies in each posture.
type Sitter struct {
	Name    string
	Role    Role
	Mass    float64 // kg
	Inertia float64 // about the person's own centre, kg·m²; zero means by Gyration, of a hazard none

	Centre  r2.Vec  // seat frame; zero means by the places below
	Posture Posture // in which Centre, or else Sitting, was taken, where said

	Sitting, LyingBack, Perched Place
}

// A Place is where a person's balance point lies in one posture, in the seat frame
// from where back and seat meet, m. The zero Place is not given.
type Place struct {
	Ahead, Above float64
}

// A seated is one sitter in one posture.
type seated struct {
	posture Posture
	body    body.Body // seat frame
}

// hasCentre reports whether the sitter is placed by Centre.
func (s Sitter) hasCentre() bool { return s.Centre != (r2.Vec{}) }

// A posed is a place with its posture.
type posed struct {
	posture Posture
	place   Place
}

// places returns the places given, in the order of Posture.
func (s Sitter) places() []posed {
	first := Sitting
	if s.Posture != Unsaid {
		first = s.Posture
	}
	var given []posed
	for _, p := range []posed{{first, s.Sitting}, {LyingBack, s.LyingBack}, {Perched, s.Perched}} {
		if p.place != (Place{}) {
			given = append(given, p)
		}
	}
	return given
}

// seats returns the sitter in each posture given, in the order of Posture.
func (s Sitter) seats(meet r2.Vec) []seated {
	inertia := s.Inertia
	if inertia == 0 && s.Role != Hazard {
		inertia = s.Mass * Gyration * Gyration
	}
	at := func(p r2.Vec) body.Body { return body.Body{Mass: s.Mass, Centre: p, Inertia: inertia} }
	if s.hasCentre() {
		return []seated{{s.Posture, at(s.Centre)}}
	}
	var list []seated
	for _, p := range s.places() {
		list = append(list, seated{p.posture, at(r2.Add(meet, r2.Vec{X: p.place.Ahead, Y: p.place.Above}))})
	}
	return list
}

// loadName returns what a load is called: the sitter, and the posture where it is
// known.
func (s Sitter) loadName(p seated) string {
	if p.posture == Unsaid || s.Role == Hazard {
		return s.Name
	}
	return s.Name + ", " + p.posture.String()
}

// check returns the first thing a sitter lacks. key is its place in the design.
func (s Sitter) check(key string, seat Seat) error {
	if s.Mass <= 0 {
		return &KeyError{Key: key + ".weight", Reason: "a person has a weight", Example: "weight = 180"}
	}
	switch placed := len(s.places()) > 0; {
	case s.hasCentre() && placed:
		return &KeyError{Key: key + ".centre", Reason: "give centre, or ahead and above, not both"}
	case s.hasCentre():
		return nil
	case !placed:
		return &KeyError{Key: key + ".ahead", Reason: "say where the person's balance point lies: ahead and above, from where back and seat meet", Example: `ahead = 7 and above = "9-1/2"`}
	case !seat.drawn():
		return &KeyError{Key: key + ".ahead", Reason: "ahead and above are measured from the seat: draw [seat], or give centre", Example: "centre = [2, 24]"}
	}
	return nil
}
