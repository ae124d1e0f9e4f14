package piece

import (
	"math"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim/quantity"
)

// A Kind is a kind of rocking furniture: the place of its row among the kinds.
type Kind int

const (
	Chair Kind = iota
	Settee
	Cradle
	Horse
)

// Traits are what is known of a kind of piece, and all by which one is told from another but its phrases.
type Traits struct {
	Name       string
	Directions [2]Directions // by Direction; both alike where its maker does not say in which it rocks
	Directed   bool          // its maker does
	Unsaid     Design        // the floor and the limits where its maker says nothing; our judgement

	Seating bool // who may sit, the seating tests and the trade's radii are of it
	ForTwo  bool // its owners sit side by side, one given alone with a companion alike
	Bed     bool // an infant lies in it; it has no legs under a seat, and nobody leans over its side
	Ridden  bool // its riders are stood on a slope

	Postures [3][]person.Posture // in which somebody of a Role is checked
	Usual    []Usual             // who is checked without being asked
}

// seatingLimits are those of chairs and settees. No published limit for rocking chairs was found, so they are our
// judgement: none is missed by most ordinary ones of usual sizes (the study in the tests of package check), and beyond
// them nobody would call it a rocking chair any more.
var seatingLimits = Limits{
	BackMargin: 15 * quantity.Deg, BackLift: 0.020,
	ForwardMargin: 10 * quantity.Deg, ForwardLift: quantity.In / 2, // less is gone when a foot slips or somebody rises in a hurry
	SeatFallsLeast: Wish{true, 0}, SeatFallsMost: 18 * quantity.Deg, // forward one slides, further back one cannot rise
	EmptyFallsLeast: Wish{true, -5 * quantity.Deg}, EmptyFallsMost: 15 * quantity.Deg, // else sitting down is a fall, or a climb
	SlidesOff:    math.Atan(slipperyCloth), // beyond it cloth may slide on the wood
	OneRockLeast: 1.2, OneRockMost: 3.5,    // a shake, and a swing that stops nowhere
	Push:       8 * quantity.One(quantity.Force, quantity.Inch), // lb; more, and nobody rocks it with a foot
	LegsBeyond: Wish{true, 0},                                   // nothing carries a leg there
}

// The least and the most friction of clothes on a wooden seat; our judgement.
const slipperyCloth, firmCloth = 0.3, 0.5

// SlidesOff returns between which falls of the seat forward who sits on it slides off, rad: atan of the friction.
func SlidesOff() (least, most float64) { return math.Atan(slipperyCloth), math.Atan(firmCloth) }

// childsRock are the times of one rock that a child's chair keeps: a smaller pendulum; our judgement.
var childsRock = [2]float64{0.9, 2.5}

// childrensLeans is how many whole leans to and fro a piece for children comes back from: back, forward and back once more,
// which is play; our judgement. In the end every timed lean takes a piece over.
const childrensLeans = 3

// kinds are the rows. A horse's limits are our judgement; a cradle's is the tilt beyond which deaths are on record
// (Ackerman and Gilbert-Barness, Arch Pediatr Adolesc Med 1997;151:573-575, abstract).
var kinds = [...]Traits{
	Chair: {
		Name: "chair", Directions: [2]Directions{backAndForth, backAndForth}, Seating: true, Postures: seated,
		Unsaid: Design{Floor: Floor{Surface: Hardwood}, Limits: seatingLimits},
		Usual:  []Usual{SmallWoman, LargeMan, YoungerChild, OlderChild, ArmsBehindHead, ChildOnTheTail},
	},
	Settee: {
		Name: "settee", Directions: [2]Directions{backAndForth, backAndForth}, Seating: true, ForTwo: true, Postures: seated,
		Unsaid: Design{Floor: Floor{Surface: Boards}, Limits: seatingLimits},
		Usual:  []Usual{SmallWoman, LargeMan, YoungerChild, OlderChild, OneAtTheEnd, ArmsBehindHead, ChildOnTheTail},
	},
	Cradle: {
		Name: "cradle", Directions: [2]Directions{Side: acrossABed, End: alongABed}, Directed: true, Bed: true, Postures: seated,
		Unsaid: Design{Floor: Floor{Surface: Hardwood}, Limits: Limits{RestTilt: 5 * quantity.Deg}},
		Usual:  []Usual{ArmsBehindHead, Newborn, FiveMonths},
	},
	Horse: {
		Name: "horse", Directions: [2]Directions{backAndForth, backAndForth}, Ridden: true, Postures: riding,
		Unsaid: Design{Floor: Floor{Surface: Hardwood}, Limits: Limits{
			BackMargin: 15 * quantity.Deg, ForwardMargin: 15 * quantity.Deg, Leans: childrensLeans}},
		Usual: []Usual{Riders},
	},
}

// seated are the postures of who sits; some are of grown-ups alone, or need arms.
var seated = [3][]person.Posture{
	Owner: {person.AtEase, person.FeetOff, person.Rising, person.Upright, person.PushingUp,
		person.ChildOnLap, person.ArmsBehindHead},
	Other:  {person.AtEase},
	Hazard: {person.AtEase},
}

// riding are those of who rides, whoever it is.
var riding = [3][]person.Posture{Owner: rides, Other: rides, Hazard: rides}

var rides = []person.Posture{person.Riding, person.RidingForward, person.RidingBack}

// Traits returns the row of the design's kind.
func (d Design) Traits() *Traits { return &kinds[d.Kind] }

// UsualLimits returns what is asked of the design where its maker asks nothing else: what goes with its kind, and
// with an owner who is a child.
func (d Design) UsualLimits() Limits {
	l := d.Traits().Unsaid.Limits
	child := func(s Sitter) bool { return s.Role == Owner && s.Person.OfAChild() }
	if d.Traits().Seating && slices.ContainsFunc(d.Sitters, child) {
		l.OneRockLeast, l.OneRockMost, l.Leans = childsRock[0], childsRock[1], childrensLeans
	}
	return l
}

// String returns the word for a kind that stands in a design file.
func (t Traits) String() string { return t.Name }

func (k Kind) String() string { return kinds[k].Name }

// A Direction is how a cradle rocks.
type Direction int

const (
	Side Direction = iota // from side to side
	End                   // from end to end
)

var directions = [...]string{"side", "end"}

func (d Direction) String() string { return directions[d] }
