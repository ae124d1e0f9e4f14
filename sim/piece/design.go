package piece

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// A Design is what a design file says: m, kg, rad. A section whose first measure is zero is not drawn.
type Design struct {
	Title string
	Kind  Kind
	Units quantity.System // in which the maker thinks
	Rocks Direction       // of a cradle

	Rocker   Rocker
	Seat     Seat
	Bed      Bed // of a cradle
	Back     Back
	Arms     Arms
	Piece    Piece // the mass of the piece: one of these four
	Parts    []Part
	Body     body.Body // the empty piece as plain numbers, rockers and all, in the chair frame as drawn
	Legs     []Leg     // each stands for the two of a pair
	Panels   []Panel   // coopered
	Measured Measured
	Sitters  []Sitter
	People   People
	Floor    Floor
	Limits   Limits
	Target   Target
	Shop     Shop
}

// A Rocker is the curve, and the strip of wood it is cut on. Radius and Tail, Arcs, Rises or
// Points are given; with Rises and Points a Nose or Tail of zero is as far as they reach.
type Rocker struct {
	Radius float64 // of the floor edge
	Nose   float64 // along the floor edge from the low point to the nose tip
	Tail   float64 // along the floor edge from the low point to the tail tip
	Arcs   []Arc   // from nose to tail

	Rises   []float64 // from a straightedge under the low point to the floor edge, from the nose
	Spacing float64   // of their stations
	Origin  float64   // which station is the low point, counted from 1; zero: the lowest
	Points  []r2.Vec  // of the floor edge, from the nose, ahead of the low point and over the floor

	Depth   float64 // of one rocker, floor edge to top edge
	Width   float64 // of one rocker, across
	Wood    string
	Density float64 // kg/m³, instead of Wood
	Top     Top
	Sole    float64 // thickness of a wear strip under the wood, a part of Depth
	Made    Made

	NoseDepth, TailDepth float64 // at the tips, of a taper; zero: Depth
	NoseEnd, TailEnd     bench.Finish
	Ease                 float64 // radius of the corners of an eased end; zero: the usual one

	Track   float64 // between the middles of the two floor edges; zero: the width of the seat
	Splay   float64 // of the legs, outwards from plumb, by which the track grows where it is not given, rad
	ToeIn   float64 // of each rocker, + closer together in front, rad
	Unequal float64 // rise of the left tail tip over that of the right one, standing as drawn
}

// An Arc is one stretch of the floor edge: Radius and Length, or Flat, or Turn.
type Arc struct {
	Radius, Length, Flat, Turn float64
}

// A Seat is measured as drawn, standing on the low point.
type Seat struct {
	Rear   float64 // height of the lowest of the scoop, near the back
	Front  float64 // height of the top of the front edge
	Depth  float64 // front edge to back, along the seat
	Width  float64
	Behind float64 // from the low point back to where the back meets the seat, along the floor
	Slide  float64 // how far the chair has been slid forward along its rockers
	Thick  float64 // where the legs are let in; zero: the usual thickness

	FrontCut float64 // cut off both front legs after drawing; below zero a shim
	RearCut  float64 // cut off both rear legs

	Cushion float64 // thickness when sat on
}

// A Bed is what an infant lies on, level over the middle of the rockers.
type Bed struct {
	Height float64 // floor to the top of the mattress
	Length float64 // head to foot, inside
	Width  float64 // side to side, inside
}

// A Back rises from where it meets the seat.
type Back struct {
	Height  float64 // along the back, from the seat
	Recline float64 // from plumb
	Lumbar  float64 // height of the bulge for the hollow of the sitter's back, above the seat
	Braces  Braces
}

// Braces are the slats of a back that bend under the sitter. Without Thickness the back is stiff.
type Braces struct {
	Count     float64
	Width     float64 // of one, across the piece
	Thickness float64 // of one, front to back
	Length    float64 // from the seat to the crest rail, along the back
	Wood      string
	Held      body.Held // the seat is the first end
}

// Arms stand over the seat.
type Arms struct {
	Height    float64 // above the seat
	Length    float64 // of one, along the seat from where the back meets it
	Width     float64 // of one in front
	RearWidth float64 // at the back; zero: as in front
}

// A Piece is a guess at the whole weight, spread by [Design.Estimate].
type Piece struct {
	Mass float64
}

// Limits are what the piece must keep. Zero asks nothing. Those of the seat, of one rock and of the push are
// asked of seating alone; see the rows of kinds for what is asked where its maker says nothing, and why.
type Limits struct {
	BackMargin    float64 // from the rest to the tip at the back, at ease
	BackLift      float64 // of the weight, on the way there
	ForwardMargin float64 // the same forward, in whatever posture
	ForwardLift   float64
	RestTilt      float64 // largest tilt at rest, either way

	SeatFallsLeast  Wish    // of the seat back from level, at ease
	SeatFallsMost   float64 // the same
	EmptyFallsLeast Wish    // the same of the empty piece
	EmptyFallsMost  float64
	SlidesOff       float64 // the seat falls forward, in whatever posture, at most
	OneRockLeast    float64 // time of one rock at ease
	OneRockMost     float64
	Push            float64 // for one degree back, at ease, at most
	LegsBeyond      Wish    // how far a leg may stand beyond its rocker

	Leans float64 // whole leans to and fro of its owner or rider that it comes back from, at least
}

// Measured holds raw shop readings of a finished piece. Zero is not read, unless Zero names it.
type Measured struct {
	Weight    float64 // of the whole piece
	ScaleStep float64 // the smallest step that the scales show; zero means 0.2 kg, about half a pound

	Front, Rear float64 // scales under two marks on the floor edge, both marks level
	Apart       float64 // between the marks, straight
	FrontMark   float64 // along the floor edge from the low point forward to the front mark

	Raised                  float64 // the front mark raised against the rear one
	FrontRaised, RearRaised float64 // the scales then

	DowelAhead, DowelAbove float64 // lines on which the piece balances on a dowel

	TenRocks, LetGo             float64 // time of ten rocks there and back, empty; tilt from which it was let go
	RiddenTenRocks, RiddenLetGo float64 // the same with the first sitter in it

	// What a level shows on one mark of the empty piece, on a level floor, + back: at rest, and as it just balances on
	// its ends, where it just goes over and where it just comes back.
	SeatFallsEmpty                  float64
	BalancesOnTail, ReturnsFromTail float64
	BalancesOnNose, ReturnsFromNose float64
	NoseTip, TailTip                float64 // of the floor edge over the floor at the same rest
	LevelStep                       float64 // the smallest step that the level shows; zero means 0.2 degree
	LevelOn                         LevelOn

	Spacing     float64   // of stations along a straightedge under the rocker
	LowPoint    float64   // which station is the low point, counted from 1 at the nose
	Left, Right []float64 // rises from the straightedge to the floor edge, from the nose

	Zero []string // the readings that are truly 0, by the last part of their keys: "dowel_ahead"

	Built bool // what was read stands for what is drawn: the piece as it came out; no file says it
}

// LevelOn is where the level lies for the readings of tilt.
type LevelOn int

const (
	OnSeat LevelOn = iota
	OnMark         // another mark on the piece, whose fall as drawn is not known
)

var levelsOn = [...]string{"seat", "mark"}

// Weighed reports whether the readings say what the piece weighs.
func (m Measured) Weighed() bool { return m.Weight > 0 || m.Front > 0 || m.Rear > 0 }

// curved reports whether the readings say how the rockers are curved.
func (m Measured) curved() bool { return len(m.Left) > 0 || len(m.Right) > 0 }

// A Floor is what the piece stands on.
type Floor struct {
	Slope    float64 // rise to the front
	Friction float64 // largest sideways force over weight; zero: not asked
	Gravity  float64 // m/s²; zero: the standard value

	Surface Surface // names friction and rolling loss where they are not given
	Rolling float64 // lever of the rolling resistance
	Viscous float64 // couple for each rad/s, N·m·s
	Halves  float64 // instead of Viscous: in how many rocks a small rock halves
}
