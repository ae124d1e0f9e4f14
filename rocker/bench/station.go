package bench

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// mostStations is how many stations one side of a rocker may have: more is a slip of a unit.
const mostStations = 2000

// An Ending says which edge ends at a station.
type Ending int

const (
	Passing    Ending = iota // none
	Tip                      // the floor edge
	WoodCorner               // the lower edge of the wood, over a sole
	TopCorner                // the top edge
)

// A Station is one row of heights over a straight line, m. A point is (along the line, height over it). It lies at
// At; an edge that ends short of the station is given by its own end, which has a row of its own.
type Station struct {
	At               float64
	Ends             Ending
	Nose             bool   // which end of the rocker it is, of a row where an edge ends
	Floor, Wood, Top r2.Vec // the floor edge, the lower edge of the wood, the top edge
}

// Ended reports whether the edge of one of its points ends short of the station.
func (s Station) Ended(p r2.Vec) bool { return math.Abs(p.X-s.At) > samePoint }

// Stations returns the heights of the edges over the floor line as drawn, every spacing (m) ahead of the low
// point and behind it, from the nose to the tail; then the ends of the edges, each at its own place: the tips,
// nose first, and the corners over them that stand elsewhere. Where an edge passes over a station more than
// once the floor edge and the wood are taken lowest, the top edge highest. The error is an [*OutlineError], or
// a [*SizeError] for a spacing that is not more than zero or makes thousands of stations.
func (r Rocker) Stations(spacing float64) ([]Station, error) {
	return r.stations(spacing, func(q r2.Vec) r2.Vec {
		h, _, _ := r.Edge.Support(0)
		return r2.Vec{X: q.X, Y: q.Y + h}
	})
}

// ChordStations returns the same from a straightedge or a string from tip to tip of the floor
// edge: places are along it, forward of the point square over the low point.
func (r Rocker) ChordStations(spacing float64) ([]Station, error) {
	if err := r.check(); err != nil {
		return nil, err
	}
	nose, tail := r.Edge.Nose(), r.Edge.Tail()
	chord := r2.Sub(nose, tail)
	if r2.Norm(chord) < samePoint {
		return nil, &OutlineError{-1, "its two tips are one point, and have no chord"}
	}
	along := r2.Unit(chord)
	return r.stations(spacing, func(q r2.Vec) r2.Vec {
		return r2.Vec{X: r2.Dot(q, along), Y: r2.Cross(along, r2.Sub(q, tail))}
	})
}

// stations measures in the frame that put brings a point into, by turning and moving it.
func (r Rocker) stations(spacing float64, put func(r2.Vec) r2.Vec) ([]Station, error) {
	e, err := r.edges()
	if err != nil {
		return nil, err
	}
	if err := above("a spacing of stations", spacing); err != nil {
		return nil, err
	}
	laid := func(list []Piece) []Piece { return pathOf(list, false).Placed(put).Pieces() }
	floor, wood, top := laid(e.floor), laid(e.wood), laid(e.top)
	box := pathOf(floor, false).Bounds()
	if (box.Max.X-box.Min.X)/spacing > mostStations {
		return nil, &SizeError{"a spacing of stations", spacing, "so small that they are thousands"}
	}
	row := func(at float64) Station {
		return Station{At: at, Floor: over(floor, at, slices.Min), Wood: over(wood, at, slices.Min), Top: over(top, at, slices.Max)}
	}
	var rows []Station
	for k := math.Floor(box.Max.X / spacing); k*spacing >= box.Min.X; k-- {
		rows = append(rows, row(k*spacing))
	}
	ends := func(nose bool, floor, wood, top r2.Vec) {
		tip := Station{floor.X, Tip, nose, floor, wood, top}
		rows = append(rows, tip)
		for i, edge := range []Ending{WoodCorner, TopCorner} {
			if corner := []r2.Vec{wood, top}[i]; math.Abs(corner.X-tip.At) > samePoint {
				s := row(corner.X)
				s.Ends, s.Nose = edge, nose
				rows = append(rows, s)
			}
		}
	}
	ends(true, floor[len(floor)-1].To, wood[len(wood)-1].To, top[0].From)
	ends(false, floor[0].From, wood[0].From, top[len(top)-1].To)
	return rows, nil
}

// over returns the point of an edge at x, of several the one that pick takes, beyond its ends the nearer of these.
func over(list []Piece, x float64, pick func([]float64) float64) r2.Vec {
	first, last, heights := list[0].From, list[len(list)-1].To, heights(list, x)
	switch {
	case len(heights) > 0:
		return r2.Vec{X: x, Y: pick(heights)}
	case math.Abs(first.X-x) < math.Abs(last.X-x):
		return first
	}
	return last
}

// heights returns those at which an upright line at x meets the pieces; of an upright
// piece on the line only what its neighbours share with it.
func heights(list []Piece, x float64) []float64 {
	var heights []float64
	for _, s := range list {
		box := pathOf([]Piece{s}, false).Bounds()
		if x < box.Min.X-samePoint || x > box.Max.X+samePoint {
			continue
		}
		margin := 1 + box.Max.Y - box.Min.Y
		line := Piece{r2.Vec{X: x, Y: box.Min.Y - margin}, Stroke{To: r2.Vec{X: x, Y: box.Max.Y + margin}}}
		for _, m := range meet(s, line) {
			heights = append(heights, s.At(m.first).Y)
		}
	}
	return heights
}
