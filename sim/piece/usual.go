package piece

import "slices"

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
	Usuals         int   = iota
)

var usualNames = [Usuals]string{
	"small woman", "large man", "younger child", "older child", "one at the end", "arms behind the head", "child on the tail",
	"riders", "newborn", "five months",
}

// String returns what the person is called.
func (u Usual) String() string { return usualNames[u] }

// Checks reports whether a usual person is to be checked: of the company of such a piece, not left out, and no
// sitter has that name.
func (d Design) Checks(u Usual) bool {
	return slices.Contains(d.Traits().Company, u) && !d.People.Without[u] &&
		!slices.ContainsFunc(d.Sitters, func(s Sitter) bool { return s.Name == u.String() })
}

// People says who else is checked. The zero People leaves nobody out.
type People struct {
	Without  [Usuals]bool // left out
	Youngest float64      // rider of a horse, years; zero means 3
	Oldest   float64      // zero means 8
	Lap      float64      // the child on a lap, years; zero means 3
}

// Ages that are taken where none is given, years; common practice of toys, and our
// judgement.
const (
	YoungestRider = 3.0
	OldestRider   = 8.0
	OnTheLap      = 3.0
	OnTheTail     = 6.0
)
