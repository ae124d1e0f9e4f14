package piece

// A Kind is a kind of rocking furniture.
type Kind int

const (
	Chair Kind = iota
	Settee
	Cradle
	Horse
)

var kinds = [...]string{"chair", "settee", "cradle", "horse"}

// String returns the word for k that stands in a design file.
func (k Kind) String() string { return kinds[k] }

// A Direction is how a cradle rocks.
type Direction int

const (
	Side Direction = iota // from side to side
	End                   // from end to end
)

var directions = [...]string{"side", "end"}

func (d Direction) String() string { return directions[d] }

// A Top is how the top edge of a rocker runs.
type Top int

const (
	Concentric Top = iota // as deep everywhere
	Straight
	Taper // from Depth at the low point to NoseDepth and TailDepth, by the square of the way
)

var tops = [...]string{"concentric", "straight", "taper"}

func (t Top) String() string { return tops[t] }

// A Finish is how an end of a rocker is finished.
type Finish int

const (
	SquareEnd Finish = iota // sawn square to the floor edge
	RoundEnd                // a half circle
	EasedEnd                // square, with its corners rounded off
)

var ends = [...]string{"square", "round", "eased"}

// A Made is how the rockers are made.
type Made int

const (
	NotSaid   Made = iota
	Sawn           // out of a board
	Laminated      // glued up from strips over a form
	Steamed        // bent over a form in one thickness
)

var mades = [...]string{"", "sawn", "laminated", "steamed"}

// A Role is for whom a load is checked.
type Role int

const (
	Owner  Role = iota // for whom the piece is made; the limits are asked of its loads
	Other              // who may sit too
	Hazard             // what ought not to happen; no limit is asked
)

var roles = [...]string{"owner", "other", "hazard"}

func (r Role) String() string { return roles[r] }

// helds are how the braces of a back are held, in the order of body.Held: resting in seat
// and crest rail, or fast in the seat and free at the top.
var helds = [...]string{"both ends", "at the seat"}

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
