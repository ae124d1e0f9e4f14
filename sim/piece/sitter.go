package piece

import (
	"cmp"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
)

// Gyration is the radius of gyration taken for a seated person about the left-right axis where a balance point but
// no inertia is given, m: the middle of 0.29 to 0.33 m, which a chain of body segments gives for people of the
// middle size (derived, not published).
const Gyration = 0.31

// A Sitter is someone who rides rigidly: a person by sizes; or by weight and where the
// balance point lies in each posture; or by mass, centre and inertia.
type Sitter struct {
	Name string
	Role Role
	Mass float64 // kg

	Person  person.Given   // sizes, without the mass
	Posture person.Posture // the only one; or that in which Centre or Placed was taken; Unsaid means at ease

	Centre  r2.Vec  // seat frame; zero means by the places, or by Person
	Inertia float64 // about the person's own centre, kg·m²; zero means by Gyration, of a hazard none

	Placed         Place // in Posture
	AtEase, Rising Place
}

// A Role is for whom a load is checked.
type Role int

const (
	Owner  Role = iota // for whom the piece is made; the limits are asked of its loads
	Other              // who may sit too
	Hazard             // what ought not to happen; no limit is asked
)

var roles = [...]string{"owner", "other", "hazard"}

func (r Role) String() string { return roles[r] }

// A Place is where a person's balance point lies in one posture, from where back and seat meet, m; zero: not given.
type Place struct {
	Ahead, Above float64
}

// HasCentre reports whether the sitter is placed by Centre.
func (s Sitter) HasCentre() bool { return s.Centre != (r2.Vec{}) }

// BySizes reports whether the sitter is a person to be posed.
func (s Sitter) BySizes() bool { return !s.HasCentre() && len(s.Places()) == 0 }

// Lies reports whether the sitter is an infant lying in a cradle's bed, placed by Placed.Ahead, from the middle.
func (s Sitter) Lies(d Design) bool {
	bed := d.Traits().Bed && d.Bed.Drawn()
	return bed && !s.HasCentre() && s.Placed.Above == 0 && s.AtEase == (Place{}) && s.Rising == (Place{})
}

// A PlacedIn is a place with its posture.
type PlacedIn struct {
	Posture person.Posture
	Place   Place
}

// Places returns the places given, at ease first.
func (s Sitter) Places() []PlacedIn {
	var given []PlacedIn
	first := cmp.Or(s.Posture, person.AtEase)
	for _, p := range [...]PlacedIn{{person.AtEase, s.AtEase}, {first, s.Placed}, {person.Rising, s.Rising}} {
		if p.Place != (Place{}) {
			given = append(given, p)
		}
	}
	return given
}

// sizeKeys are the sizes that go by another name in a design.
var sizeKeys = map[person.Size]string{
	person.Stature: "height", person.Mass: "weight", person.ThighLength: "thigh", person.Lumbar: "lumbar",
}

// SizeKey returns the last part of a size's key: "knee_crease".
func SizeKey(size person.Size) string {
	return cmp.Or(sizeKeys[size], strings.ReplaceAll(size.String(), " ", "_"))
}

// A Usual is someone who is checked without being asked, unless a sitter has that name or the design says no.
type Usual int

const (
	SmallWoman     Usual = iota // 5th percentile, who may sit too
	LargeMan                    // 95th percentile
	YoungerChild                // in a child's chair, two years younger than the owner, 5th percentile
	OlderChild                  // three years older, 95th percentile
	OneAtTheEnd                 // of a settee
	ArmsBehindHead              // the owner at ease, hands behind the head
	ChildOnTheTail              // a child of 6, read two ways
	Riders                      // of a horse: the youngest and the oldest
	Newborn                     // in a cradle
	FiveMonths                  // in a cradle
	Usuals         int   = iota
)

var usualNames = [Usuals]string{
	"small woman", "large man", "younger child", "older child", "one at the end", "arms behind the head", "child on the tail",
	"riders", "newborn", "five months",
}

// String returns what the person is called.
func (u Usual) String() string { return usualNames[u] }

// Checks reports whether a usual person is checked: of the kind's company, not left out, no sitter of the name.
func (d Design) Checks(u Usual) bool {
	return slices.Contains(d.Traits().Usual, u) && !d.People.Without[u] &&
		!slices.ContainsFunc(d.Sitters, func(s Sitter) bool { return s.Name == u.String() })
}

// People says who else is checked. The zero People leaves nobody out.
type People struct {
	Without  [Usuals]bool // left out
	Youngest float64      // rider of a horse, years; zero means 3
	Oldest   float64      // zero means 8
	Lap      float64      // the child on a lap, years; zero means 3
}

// Ages that are taken where none is given, years; common practice of toys, and our judgement.
const (
	YoungestRider = 3.0
	OldestRider   = 8.0
	OnTheLap      = 3.0
	OnTheTail     = 6.0
)
