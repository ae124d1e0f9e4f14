package check

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Fit is one measure of the piece against one of an owner, as the piece stands with
// that owner upright in it, soles down; where nobody is asked to be upright, at ease, m.
type Fit struct {
	Who       string // the owner
	Key       string // the measure that changes it
	What      string // "front edge, off the floor"
	Size      person.Size
	Have      float64
	Low, High float64 // what common practice asks; ±Inf where it asks nothing
	Change    float64 // to add to the measure; zero where it is within common practice
}

// Holds reports whether the measure is within common practice.
func (f Fit) Holds() bool { return f.Change == 0 }

// A clearance is what common practice asks of one measure against one size of the person.
type clearance struct {
	key       string
	what      string
	size      person.Size
	low, high float64 // to add to the person's size, m
	cushion   bool    // the person has the measure from the cushion on
}

// Clearances between a seat and its sitter, m; all common practice among chairmakers.
var clearances = [...]clearance{
	{"seat.front", "front edge, off the floor", person.KneeCrease, -2 * quantity.In, 0, false}, // at the rest
	{"seat.depth", "seat depth", person.ThighLength, -4 * quantity.In, -1.5 * quantity.In, false},
	{"seat.width", "seat width", person.Hips, 2 * quantity.In, math.Inf(1), false},
	{"arms.height", "arms, over the seat", person.Elbow, -2 * quantity.In, quantity.In / 2, true},
	{"back.height", "back, for the shoulders", person.Shoulder, 0, math.Inf(1), true},
	{"back.height", "back, if a headrest is wanted", person.SittingHeight, -4 * quantity.In, math.Inf(1), true},
	{"back.lumbar", "bulge, over the seat", person.Lumbar, -1 * quantity.In, 1 * quantity.In, true},
}

// frontHeight returns the height of the front edge over the floor as the piece rests with a load, cushion and all, m.
func (b *Balanced) frontHeight(l *Load) float64 {
	edge := r2.Add(b.Design.Seat.FrontEdge(), r2.Vec{Y: b.Design.Seat.Cushion})
	return b.Edge.Height(b.Placed(edge), l.Balance.Rest.Tilt-b.Design.Floor.Slope)
}

// sits returns the load of somebody in the first of some postures in which there is one, of owners who sit side by
// side that of both; nil of nobody.
func (b *Balanced) sits(one Somebody, postures ...person.Posture) *Load {
	if b.Design.Traits().ForTwo && one.Role == piece.Owner {
		one.Name = "both"
	}
	for _, posture := range postures {
		for i := range b.Loads {
			if l := &b.Loads[i]; l.Sitter == one.Name && l.Posture == posture {
				return l
			}
		}
	}
	return nil
}

// fit returns the fit of each owner; none where none is posed or the piece does not stand.
func (b *Balanced) fit() []Fit {
	var list []Fit
	for _, one := range b.Somebody {
		if one.Role == piece.Owner && b.Design.Seat.SlopeKnown() {
			list = append(list, b.fits(one)...)
		}
	}
	return list
}

// fits returns the fit of one owner. The width of a seat for two is for both.
func (b *Balanced) fits(one Somebody) []Fit {
	owner := one.Person
	l := b.sits(one, person.Upright, person.AtEase)
	if l == nil || !l.Upright() {
		return nil
	}
	var list []Fit
	for _, c := range clearances {
		_, drawn, err := b.Design.Measure(c.key)
		if err != nil || *drawn == 0 {
			continue
		}
		have := *drawn
		if c.cushion {
			have -= b.Design.Seat.Cushion
		} else if c.key == "seat.front" {
			have = b.frontHeight(l)
		}
		size := owner.Sizes[c.size]
		f := Fit{Who: one.Name, Key: c.key, What: c.what, Size: c.size, Have: have, Low: size + c.low, High: size + c.high}
		if b.Design.Traits().ForTwo && c.size == person.Hips {
			f.Low *= 2
		}
		f.Change = math.Max(0, f.Low-f.Have) + math.Min(0, f.High-f.Have)
		list = append(list, f)
	}
	return list
}

// A Trouble is how a person does not fit a seat.
type Trouble int

const (
	FeetHang      Trouble = iota // they are off the floor, hanging at ease
	KneesUp                      // the seat is so low that the knees stand far above the hips
	KneesOverChin                // or even above the chin
	TooWide                      // the hips are wider than the seat
	TooDeep                      // the seat is deeper than the thigh is long
)

// A Misfit is one person whom the piece does not fit.
type Misfit struct {
	Name    string
	Trouble Trouble
	By      float64 // m
}

// kneesHigh is how far the knees may stand above the hips before a seat is said to be low, m; our judgement.
const kneesHigh = 0.13

// hang returns how far the toes of the first of a load are off the floor at the rest, m; zero where they are not.
func (b *Balanced) hang(l *Load) float64 {
	if len(l.Feet) == 0 || l.Feet[0].Stage != body.FeetOff {
		return 0
	}
	return b.Edge.Height(l.Legs[0].Knee, l.Balance.Rest.Tilt-b.Design.Floor.Slope) - l.Legs[0].ToeHeight()
}

// misfits returns who, of those who sit, the piece does not fit, at the rest with each of them at ease in it.
func (b *Balanced) misfits() []Misfit {
	d := b.Design
	if !d.Seat.SlopeKnown() {
		return nil
	}
	var list []Misfit
	for _, one := range b.Somebody {
		l := b.sits(one, person.AtEase)
		if l == nil {
			continue
		}
		j := l.Figures[0]
		switch up := j.Knee.Y - j.Hip.Y; { // the knees over the hip joints
		case j.Knee.Y > j.Chin.Y:
			list = append(list, Misfit{one.Name, KneesOverChin, up})
		case up > kneesHigh:
			list = append(list, Misfit{one.Name, KneesUp, up})
		}
		if !l.Upright() || one.Role == piece.Hazard {
			continue
		}
		for _, m := range []struct {
			trouble Trouble
			by      float64
		}{
			{FeetHang, b.hang(l)},
			{TooWide, one.Person.Sizes[person.Hips] - d.Seat.Width},
			{TooDeep, d.Seat.Depth - one.Person.Sizes[person.ThighLength]},
		} {
			if m.by > 0 && (m.trouble != TooWide || d.Seat.Width > 0) {
				list = append(list, Misfit{one.Name, m.trouble, m.by})
			}
		}
	}
	return list
}

// restFall is how far a seat falls back with its owner at ease, rad: 5 degrees, the
// upright end of what is common practice for a relaxed seat (5 to 8).
const restFall = 5 * quantity.Deg

// beyond is what is added to a size where common practice only asks for at least so much, m.
const beyond = 2 * quantity.In

// Recommended returns the design with its seat, arms and back sized to its first owner: each in the middle of what
// common practice asks, at the rest with the owner at ease, and the seat set so far behind the low point that it
// falls back as a relaxed seat does. The sizes are rounded to what a tape is read to; the rockers stay. keys are the
// measures that were set. A design without an owner by sizes, or whose seat is not drawn, comes back as it was.
func Recommended(d piece.Design) (sized piece.Design, keys []string, err error) {
	sized = d.Clone()
	b, err := Balance(sized)
	if err != nil || len(b.Somebody) == 0 || b.Somebody[0].Role != piece.Owner || !sized.Seat.SlopeKnown() {
		return sized, nil, err
	}
	owner := b.Somebody[0]
	for range rounds {
		for _, f := range b.fit() {
			if f.Size == person.SittingHeight {
				continue
			}
			_, field, err := sized.Measure(f.Key)
			if err != nil {
				return d, nil, err
			}
			want := (f.Low + f.High) / 2
			if math.IsInf(f.High, 1) {
				want = f.Low + beyond
			}
			*field += want - f.Have
			if f.Key == "seat.front" {
				sized.Seat.Rear += want - f.Have
			}
		}
		if b, err = Balance(sized); err != nil {
			return d, nil, err
		}
		l := b.sits(owner, person.AtEase)
		if l == nil || !l.Upright() {
			break
		}
		if by := l.Balance.Steadiness; !math.IsNaN(by) { // about so far the seat is moved for a radian of rest
			sized.Seat.Behind += (restFall - l.SeatFall) * by
		}
		if b, err = Balance(sized); err != nil {
			return d, nil, err
		}
	}
	keys = []string{"seat.front", "seat.rear", "seat.depth", "seat.width", "seat.behind_low_point", "arms.height", "back.height"}
	step := quantity.In / 8
	if d.Units == quantity.Metric {
		step = 0.005
	}
	for _, key := range keys {
		if _, field, err := sized.Measure(key); err == nil {
			*field = quantity.Round(math.Round(*field/step)*step, quantity.Length, d.Units)
		}
	}
	return sized, keys, nil
}

// rounds is how often sizes and rest are set in turn. Each round leaves a few hundredths of the last error.
const rounds = 12
