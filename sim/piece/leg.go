package piece

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// A Leg is one of a pair alike, left and right, by its centre line, and where that meets the rocker's top edge.
type Leg struct {
	Name  string
	Which Which
	At    float64 // where the centre line meets the rocker's top edge, ahead of the low point
	Rake  float64 // in the side view from plumb, + where the foot is ahead
	Splay float64 // in the front view from plumb, + where the foot is further out
	Top   float64 // over the floor, where the centre line enters the seat; zero: the seat's underside
	Side  float64 // of its square section; zero: the usual one
	Block float64 // least height of an added block between leg and rocker; zero: none
}

// Which says which pair a leg belongs to.
type Which int

const (
	Front Which = iota
	Rear
)

var whiches = [...]string{"front", "rear"}

func (w Which) String() string { return whiches[w] }

// A Panel is coopered: flat staves glued to a hollow curve, as a headrest or a seat.
type Panel struct {
	Name   string
	Chord  float64 // across the finished hollow face
	Rise   float64 // how deep it is hollow over the chord
	Radius float64 // of the hollow face, instead of Rise
	Staves float64 // how many; zero: as few as leave half of the stock
	Stock  float64 // thickness of the staves before shaping
	Length float64 // of the staves
}

// usualEase is the radius of an eased corner where none is drawn, m; our judgement: 1/4 in.
const usualEase = 0.00635

// ThickOr returns the thickness of the seat, the usual one where none is drawn, m.
func (s Seat) ThickOr() float64 { return cmp.Or(s.Thick, seatThick) }

// SideOr returns the side of the leg's section, the usual one where none is drawn, m.
func (l Leg) SideOr() float64 { return cmp.Or(l.Side, legThick) }

// EaseOr returns the radius of an eased corner, the usual one where none is drawn, m.
func (r Rocker) EaseOr() float64 { return cmp.Or(r.Ease, usualEase) }

// LegsOr returns the legs as drawn, and of a pair that is not a plumb one where it is taken to stand: under where
// back and seat meet, or the front edge, splayed as the rockers say. Without a seat none are taken.
func (d Design) LegsOr() []Leg {
	legs := slices.Clone(d.Legs)
	if !d.Seat.SlopeKnown() || d.Traits().Bed {
		return legs
	}
	for _, w := range []Which{Front, Rear} {
		if _, drawn := d.Leg(w); !drawn {
			legs = append(legs, Leg{Name: w.String() + " leg", Which: w, At: d.Seat.over(w).X, Splay: d.Rocker.Splay})
		}
	}
	return legs
}

// over returns the place of the seat under which a pair that is not drawn is taken to stand.
func (s Seat) over(which Which) r2.Vec {
	if which == Rear {
		return s.Meet()
	}
	return s.FrontEdge()
}

// Leg returns the first leg drawn of a pair.
func (d Design) Leg(which Which) (Leg, bool) {
	if i := slices.IndexFunc(d.Legs, func(l Leg) bool { return l.Which == which }); i >= 0 {
		return d.Legs[i], true
	}
	return Leg{}, false
}

// Foot returns where the legs of a pair stand on the rocker's top edge.
func (d Design) Foot(which Which, edge rocker.Profile) r2.Vec {
	x := d.Seat.over(which).X
	if l, drawn := d.Leg(which); drawn {
		x = l.At
	}
	at, _ := comesDown(d.Rocker.OnBench(edge).TopEdge(), r2.Vec{X: x, Y: d.Seat.Rear}, 0)
	return at
}

// checkLegs returns the first thing that is wrong with the legs as drawn.
func (d Design) checkLegs() error {
	front, isFront := d.Leg(Front)
	rear, isRear := d.Leg(Rear)
	if isFront && isRear && front.At <= rear.At {
		return &KeyError{Key: "leg", Reason: "the front legs stand ahead of the rear ones; behind the low point is negative", Give: "at"}
	}
	for i, l := range d.Legs {
		if math.Abs(l.Rake) >= 60*quantity.Deg || math.Abs(l.Splay) >= 60*quantity.Deg {
			return &KeyError{Key: fmt.Sprintf("leg.%d", i+1),
				Reason: "rake and splay are angles from plumb, less than 60 degrees", Give: "rake"}
		}
	}
	return nil
}

// Track returns how far apart the middles of the floor edges are, as given or by the splay, m, and whether known.
func (d Design) Track() (float64, bool) {
	track := d.Rocker.Track
	if track == 0 && d.Seat.Width > 0 {
		rear, _ := d.Leg(Rear)
		track = d.Seat.Width + 2*d.Seat.Rear*math.Tan(cmp.Or(d.Rocker.Splay, rear.Splay))
	}
	return track, track > 0
}

// A Beyond is a pair of legs that stand beyond an end of the rockers, where nothing carries them.
type Beyond struct {
	Which Which
	Taken bool    // not drawn: it stands where it is taken to
	Tail  bool    // the end beyond which it stands; else the nose
	By    float64 // how far its centre line passes the end of the top edge, m
}

// Beyond returns the pairs that stand beyond the rockers, drawn or taken. A rocker that has no
// outline has no end to pass either: a layout says so.
func (d Design) Beyond(edge rocker.Profile) []Beyond {
	legs := d.LegsOr()
	if len(legs) == 0 {
		return nil
	}
	r := d.Rocker.OnBench(edge)
	outline, err := r.Outline()
	if err != nil {
		return nil
	}
	above := outline.Bounds().Max.Y + 1 // m, over all of the rocker
	var list []Beyond
	for i, l := range legs {
		var miss *bench.MissError
		if _, err := comesDown(r.TopEdge(), r2.Vec{X: l.At, Y: above}, 0); errors.As(err, &miss) {
			list = append(list, Beyond{l.Which, i >= len(d.Legs), l.At < 0, miss.By})
		}
	}
	return list
}
