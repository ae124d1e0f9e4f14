package piece

import (
	"cmp"
	"slices"

	"rockerwright/sim"
)

// A Surface is what the floor is made of.
type Surface int

const (
	NoSurface Surface = iota // not said: it holds any force and takes nothing
	Hardwood
	Boards
	Rug
	Stone
)

var surfaces = [...]string{"", "hardwood", "boards", "rug", "stone"}

func (s Surface) String() string { return surfaces[s] }

// A Ground is what a surface does to a rocker on it.
type Ground struct {
	Friction float64
	Rolling  float64 // m
	Basis    string
}

var grounds = [...]Ground{
	NoSurface: {0, 0, "not said: holds any force, takes nothing"},
	Hardwood:  {0.30, 0.0005, "friction: Wood Handbook, low end; rolling loss: our judgement"},
	Boards:    {0.35, 0.0010, "friction: Wood Handbook, within its range; rolling loss: our judgement"},
	Rug:       {0.50, 0.0040, "our judgement; its softness is outside the model"},
	Stone:     {0.30, 0.0005, "friction: Wood Handbook, low end; rolling loss: our judgement"},
}

// GroundOf returns friction and rolling loss of a surface. Friction is the low end of what is published for dry
// wood (Wood Handbook, FPL-GTR-282, chapter 4: 0.3 to 0.5 on hard smooth surfaces); for a rug, and all levers of
// rolling resistance, no source was found: they are our judgement.
func GroundOf(s Surface) Ground { return grounds[s] }

// OnItsFloor returns the design on the floor that is usual for its kind, and whether that was taken: nothing is
// said of the floor but its slope, and the design is drawn. Plain numbers keep the floor they have.
func (d Design) OnItsFloor() (Design, bool) {
	said := d.Floor
	said.Slope, said.Gravity = 0, 0
	byNumbers := func(s Sitter) bool { return !s.BySizes() && !s.Lies(d) }
	if said != (Floor{}) || d.Body.Mass > 0 || slices.ContainsFunc(d.Sitters, byNumbers) {
		return d, false
	}
	d.Floor.Surface = d.Traits().Unsaid.Floor.Surface
	return d, true
}

// StaticFloor returns the floor of the static questions: its slope, and the friction given or of its surface.
func (d Design) StaticFloor() sim.Floor {
	return sim.Floor{Slope: d.Floor.Slope, Gravity: d.Floor.Gravity, Friction: cmp.Or(d.Floor.Friction, GroundOf(d.Floor.Surface).Friction)}
}
