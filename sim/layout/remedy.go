package layout

import (
	"math"

	"rockerwright/rocker/root"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// A Remedy is what to do where the level on the empty piece shows another fall of the seat than the
// design says: with somebody in it that hangs on the person too, and nothing is to be cut.
// A length below zero is a shim, or a slide back; NaN is where none up to mostCut or mostSlide
// does it.
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

// falls are the rows, steps from what the design says.
var falls = [...]float64{3, 2, 1, -1, -2, -3}

// remedies asks the empty piece again with a leg cut, or the seat slid, so that it shows what the
// level shows; the cure is the opposite. So it holds whatever made the difference, as long as
// it is like a leg that is off. Where the empty piece does not rest there is no table.
func (l *Layout) remedies() error {
	d := l.Design
	now := l.Report.Loads[0].SeatFall
	if math.IsNaN(now) || d.Body.Given() {
		return nil
	}
	company, err := check.SittersOf(d)
	if err != nil {
		return err
	}
	company = company.First() // of whom nothing is asked
	const half = math.Pi / 360
	rounded := math.Round(now/half) * half
	for _, step := range falls {
		r := Remedy{Shows: rounded + step*2*half, Slide: math.NaN()}
		r.Rear = search(company, d, r.Shows, mostCut, func(d *piece.Design, x float64) { d.Seat.RearCut += x })
		r.Front = search(company, d, r.Shows, mostCut, func(d *piece.Design, x float64) { d.Seat.FrontCut += x })
		if d.Rocker.Top != piece.Concentric {
			r.Slide = search(company, d, r.Shows, mostSlide, func(d *piece.Design, x float64) { d.Seat.Slide += x })
		}
		l.Remedies = append(l.Remedies, r)
	}
	return nil
}

// search finds by how much a measure is off, up to most either way, in a piece whose seat
// falls by so much when it is empty, and returns the cure, the opposite; NaN where it does not
// rest on the way.
func search(company check.Sitters, d piece.Design, shows, most float64, change func(d *piece.Design, x float64)) float64 {
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
