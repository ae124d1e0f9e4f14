package layout

import (
	"math"
	"slices"

	"rockerwright/rocker/root"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// LetGo is the tilt from which ten rocks are timed, rad: 5 degrees, which a level reads.
const LetGo = 5 * math.Pi / 180

// A Rest is what one load should show when the piece stands there.
type Rest struct {
	Load      string
	Empty     bool
	SeatFalls float64 // rad
	Pressed   float64 // and with the calves pressing, rad; NaN where that is not told beside it
	Least     float64 // and with the balance point of who sits an inch off, rad; NaN of the empty piece, and of plain numbers
	Most      float64 // with the calves pressing too
	BackLeans float64 // rad
	TenRocks  float64 // let go from LetGo, s, without losses; NaN where it does not rock
}

func (l *Layout) rests() {
	for _, i := range slices.Compact([]int{0, l.sitting()}) {
		load := &l.Report.Loads[i]
		r := Rest{Load: load.Name, Empty: load.Empty, SeatFalls: load.SeatFall, Pressed: math.NaN(),
			Least: math.NaN(), Most: math.NaN(), BackLeans: load.BackRecline, TenRocks: math.NaN()}
		if fall, told := load.PressedFall(); told {
			r.Pressed = fall
		}
		if spread := l.Report.RestSpread(load); !load.Empty {
			pressed, _ := load.PressedFall()
			r.Least, r.Most = r.SeatFalls-spread, r.SeatFalls+spread
			if pressed > r.SeatFalls {
				r.Most = pressed + spread
			}
		}
		if load.Upright() {
			if swing := load.Rig.Swing(load.Balance, LetGo); swing.Outcome == sim.Rocks {
				r.TenRocks = 10 * swing.Period
			}
		}
		l.Rests = append(l.Rests, r)
	}
}

// sitting returns the load of who sits in it: the owner, or the first; else the empty piece.
func (l *Layout) sitting() int { return l.Report.Sitting() }

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

// leastDifference is what two rockers may always differ by, m: 1/32 in, to which makers match them (common practice).
const leastDifference = quantity.In / 32

// rises chooses five stations alike, one of them the low point, that reach as far as they can, and allows each the
// difference that drags no more than nobody notices, which grows with the square of the way from the low point.
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
	if printed := quantity.Round(best, quantity.Length, l.Design.Units); printed <= best*(1+1e-9) { // as it is measured and typed
		best = printed
	} else if less := quantity.Round(best-(printed-best), quantity.Length, l.Design.Units); less > 0 {
		best = less
	}
	l.Rises.Spacing, l.Rises.Allowed = best, math.NaN()
	if walk := l.Report.Walk(&l.Report.Loads[l.sitting()]); walk != nil {
		l.Rises.Allowed = walk.Enough
	}
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

// A Remedy is what to do where the level on the empty piece shows another fall of the seat than the design says: with
// somebody in it that hangs on the person too, and nothing is to be cut. A length below zero is a shim, or a slide back;
// NaN is where none up to mostCut or mostSlide does it.
type Remedy struct {
	Shows float64 // fall of the seat of the empty piece, + back, rad
	Rear  float64 // to cut off both rear legs, m
	Front float64 // to cut off both front legs, m
	Slide float64 // to slide the chair forward along its rockers, m; NaN also on a concentric top, where it changes nothing
}

// How far a cure is looked for, m; our judgement: more is another chair.
const (
	mostCut   = 0.038
	mostSlide = 0.076
)

// remedies asks the empty piece again with a leg cut, or the seat slid, so that it shows what the level shows; the cure
// is the opposite. So it holds whatever made the difference, as long as it is like a leg that is off. Where the empty
// piece does not rest there is no table.
func (l *Layout) remedies() error {
	d := l.Design
	now := l.Report.Loads[0].SeatFall
	if math.IsNaN(now) || d.Body.Mass > 0 {
		return nil
	}
	company, err := check.SittersOf(d)
	if err != nil {
		return err
	}
	company = company.First() // of whom nothing is asked
	const half = math.Pi / 360
	rounded := math.Round(now/half) * half
	for _, step := range []float64{3, 2, 1, -1, -2, -3} { // degrees from what the design says
		shows := rounded + step*2*half
		// cure finds by how much a measure is off, up to most either way, in a piece that shows so much, and
		// returns the opposite; NaN where it does not rest on the way.
		cure := func(most float64, change func(d *piece.Design, x float64)) float64 {
			rests := true
			off := root.Between(func(x float64) float64 {
				changed := d.Clone()
				change(&changed, x)
				r, err := company.Balance(changed)
				if rests = rests && err == nil && !math.IsNaN(r.Loads[0].SeatFall); !rests {
					return math.NaN()
				}
				return r.Loads[0].SeatFall - shows
			}, -most, most, 0)
			if !rests {
				return math.NaN()
			}
			return 0 - off
		}
		r := Remedy{Shows: shows, Slide: math.NaN()}
		r.Rear = cure(mostCut, func(d *piece.Design, x float64) { d.Seat.RearCut += x })
		r.Front = cure(mostCut, func(d *piece.Design, x float64) { d.Seat.FrontCut += x })
		if d.Rocker.Top != piece.Concentric {
			r.Slide = cure(mostSlide, func(d *piece.Design, x float64) { d.Seat.Slide += x })
		}
		l.Remedies = append(l.Remedies, r)
	}
	return nil
}
