package layout

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// A Remedy is what to do where the level shows another fall of the seat than the design says.
// A length below zero is a shim, or a slide back; NaN is where none up to mostCut or mostSlide
// does it.
type Remedy struct {
	Shows float64 // fall of the seat with the sitter, + back, rad
	Empty float64 // what the empty piece shows then, rad
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

// remedies asks the piece again with a leg cut, or the seat slid, so that it shows what the
// level shows; the cure is the opposite. So it holds whatever made the difference, as long as
// it is like a leg that is off.
func (l *Layout) remedies() error {
	d := l.Design
	as := l.sitting()
	now := l.Report.Loads[as].SeatFall
	if math.IsNaN(now) || d.Body.Mass > 0 {
		return nil
	}
	company, err := d.Company()
	if err != nil {
		return err
	}
	const half = math.Pi / 360
	rounded := math.Round(now/half) * half
	for _, step := range falls {
		r := Remedy{Shows: rounded + step*2*half, Empty: math.NaN(), Slide: math.NaN()}
		var at piece.Report
		r.Rear, at = search(company, d, as, r.Shows, mostCut, func(d *piece.Design, x float64) { d.Seat.RearCut += x })
		if !math.IsNaN(r.Rear) {
			r.Empty = at.Loads[0].SeatFall
		}
		r.Front, _ = search(company, d, as, r.Shows, mostCut, func(d *piece.Design, x float64) { d.Seat.FrontCut += x })
		if d.Rocker.Top != piece.Concentric {
			r.Slide, _ = search(company, d, as, r.Shows, mostSlide, func(d *piece.Design, x float64) { d.Seat.Slide += x })
		}
		l.Remedies = append(l.Remedies, r)
	}
	return nil
}

// sitting returns which load the table is for: the owner, or the first who sits; else the
// empty piece.
func (l *Layout) sitting() int {
	for i := range l.Report.Loads {
		if load := &l.Report.Loads[i]; load.Asked() && load.Posture == person.Sitting && load.Upright() {
			return i
		}
	}
	for i := range l.Report.Loads {
		if load := &l.Report.Loads[i]; load.Asked() && load.Upright() {
			return i
		}
	}
	return 0
}

// search finds by how much a measure is off, up to most either way, in a piece whose seat
// falls by so much under a load, and returns the cure, the opposite, with the piece as it shows. It
// halves the range, in which the fall only grows or shrinks, to a hundredth of a millimetre.
func search(company piece.Company, d piece.Design, load int, shows, most float64, change func(d *piece.Design, x float64)) (float64, piece.Report) {
	fall := func(x float64) (float64, piece.Report) {
		changed := d.Clone()
		change(&changed, x)
		r, err := company.Balance(changed)
		if err != nil || load >= len(r.Loads) {
			return math.NaN(), r
		}
		return r.Loads[load].SeatFall - shows, r
	}
	low, high := -most, most
	a, _ := fall(low)
	b, _ := fall(high)
	if !(a*b <= 0) {
		return math.NaN(), piece.Report{}
	}
	for {
		x := (low*b - high*a) / (b - a) // where a straight line between them crosses
		if !(x > low && x < high) {
			x = (low + high) / 2
		}
		y, r := fall(x)
		const level, fine = 1e-5, 1e-5 // rad, and m: far below what a level and a rule show
		switch {
		case math.IsNaN(y):
			return math.NaN(), r
		case math.Abs(y) < level, high-low < fine:
			return -x + 0, r
		case a*y < 0:
			high, b = x, y
			a /= 2 // so that the other end moves too (the Illinois rule)
		default:
			low, a = x, y
			b /= 2
		}
	}
}
