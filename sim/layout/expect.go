package layout

import (
	"math"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim"
)

// LetGo is the tilt from which ten rocks are timed, rad: 5 degrees, which a level reads.
const LetGo = 5 * math.Pi / 180

// A Rest is what one load should show when the piece stands there.
type Rest struct {
	Load      string
	Empty     bool
	SeatFalls float64 // rad
	BackLeans float64 // rad
	TenRocks  float64 // let go from LetGo, s, without losses; NaN where it does not rock
}

func (l *Layout) rests() {
	for _, i := range slices.Compact([]int{0, l.sitting()}) {
		load := &l.Report.Loads[i]
		r := Rest{Load: load.Name, Empty: load.Empty, SeatFalls: load.SeatFall, BackLeans: load.BackRecline, TenRocks: math.NaN()}
		if load.Upright() {
			if swing := load.Rig.Swing(load.Balance, LetGo); swing.Outcome == sim.Rocks {
				r.TenRocks = 10 * swing.Period
			}
		}
		l.Rests = append(l.Rests, r)
	}
}

// sitting returns the load of who sits in it: the owner, or the first; else the empty piece.
func (l *Layout) sitting() int {
	first := 0
	for i := range l.Report.Loads {
		load := &l.Report.Loads[i]
		switch {
		case !load.Asked() || !load.Upright():
		case load.Posture == person.Sitting:
			return i
		case first == 0:
			first = i
		}
	}
	return first
}

// Rises are five stations by which two rockers are compared, from the nose to the tail.
type Rises struct {
	Spacing float64 // m
	Low     int     // which of them is the low point, from 1 at the nose
	Rows    [5]RiseRow
	Allowed float64 // how far the tail tips of the two may differ; NaN where the track is not known
}

// A RiseRow is one of the stations.
type RiseRow struct {
	At      float64 // ahead of the low point, m
	Rise    float64 // of the floor edge over the floor, m
	Allowed float64 // difference of left and right, m
}

// leastDifference is what two rockers may always differ by, m: 1/32 in, to which makers match
// them (common practice).
const leastDifference = 0.0254 / 32

// rises chooses five stations alike, one of them the low point, that reach as far as they can, and
// allows each the difference that drags no more than nobody notices, which grows with the
// square of the way from the low point.
func (l *Layout) rises() {
	nose, tail := l.Report.Edge.Nose().X, -l.Report.Edge.Tail().X
	best := 0.0
	for ahead := 1; ahead <= 3; ahead++ {
		if spacing := min(nose/float64(ahead), tail/float64(4-ahead)); spacing > best {
			best, l.Rises.Low = spacing, ahead+1
		}
	}
	step := l.Shop.Spacing / 4
	if floor := math.Floor(best/step) * step; floor > 0 {
		best = floor
	}
	l.Rises.Spacing, l.Rises.Allowed = best, l.Report.EqualEnough(&l.Report.Loads[l.sitting()])
	for k := range l.Rises.Rows {
		row := &l.Rises.Rows[k]
		row.At = best * float64(l.Rises.Low-1-k)
		row.Rise = l.Report.Edge.Rise(row.At)
		row.Allowed = leastDifference
		if !math.IsNaN(l.Rises.Allowed) && tail > 0 {
			row.Allowed = max(leastDifference, l.Rises.Allowed*row.At*row.At/tail/tail)
		}
	}
}
