package piece

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// Drawn reports whether the design has a seat.
func (s Seat) Drawn() bool { return s.Rear > 0 }

// Meet returns where the back meets the seat, in the seat frame.
func (s Seat) Meet() r2.Vec { return r2.Vec{X: -s.Behind, Y: s.Rear} }

// FrontEdge returns the top of the seat's front edge, in the seat frame; where front and
// depth are not drawn, where the back meets the seat.
func (s Seat) FrontEdge() r2.Vec {
	if !s.SlopeKnown() {
		return s.Meet()
	}
	run := math.Sqrt(s.Depth*s.Depth - (s.Front-s.Rear)*(s.Front-s.Rear))
	return r2.Add(s.Meet(), r2.Vec{X: run, Y: s.Front - s.Rear})
}

// Fall returns how far the seat falls back as drawn, rad; NaN where front and depth are not drawn.
func (s Seat) Fall() float64 {
	if !s.SlopeKnown() {
		return math.NaN()
	}
	return math.Asin((s.Front - s.Rear) / s.Depth)
}

// SlopeKnown reports whether the seat's slope is known.
func (s Seat) SlopeKnown() bool { return s.Front > 0 && s.Depth > 0 }

// check returns the first thing a drawn seat lacks. Without both front and depth its slope is not known.
func (s Seat) check() error {
	if s == (Seat{}) {
		return nil
	}
	needs := []need{{"rear", s.Rear}}
	if s.Front > 0 || s.Depth > 0 {
		needs = append(needs, need{"front", s.Front}, need{"depth", s.Depth})
	}
	if err := lacking("seat", "a seat needs its", needs...); err != nil {
		return err
	}
	if s.SlopeKnown() && math.Abs(s.Front-s.Rear) >= s.Depth {
		return &KeyError{Key: "seat.depth", Reason: "front and rear differ by more than the seat is deep", Give: "depth"}
	}
	return nil
}

// Drawn reports whether the design has a back.
func (b Back) Drawn() bool { return b.Height > 0 }

// Drawn reports whether the design has arms.
func (a Arms) Drawn() bool { return a.Height > 0 }

// Drawn reports whether the design has a bed.
func (b Bed) Drawn() bool { return b.Height > 0 }

// TopOfBack returns the middle of the crest rail's top, seat frame, and whether seat and back are drawn.
func (d Design) TopOfBack() (top r2.Vec, known bool) {
	if !d.Seat.Drawn() || !d.Back.Drawn() {
		return r2.Vec{}, false
	}
	sin, cos := math.Sincos(d.Back.Recline)
	return r2.Add(d.Seat.Meet(), r2.Scale(d.Back.Height, r2.Vec{X: -sin, Y: cos})), true
}

// LegLength returns a front leg's length as drawn, plumb, from the rocker's top edge to the seat's front edge, m.
func (d Design) LegLength(edge rocker.Profile) float64 {
	front := d.Seat.FrontEdge()
	foot, _ := comesDown(d.Rocker.OnBench(edge).TopEdge(), front, 0)
	return front.Y - foot.Y
}

// ArmsOr returns the arms with their usual sizes where those are not drawn, and whether any was
// taken. Height is zero where there are none.
func (d Design) ArmsOr() (arms Arms, taken bool) {
	a := d.Arms
	if !a.Drawn() {
		return Arms{}, false
	}
	taken = a.Length == 0 || a.Width == 0
	a.Length, a.Width = cmp.Or(a.Length, ArmReach*d.Seat.Depth), cmp.Or(a.Width, armWide)
	a.RearWidth = cmp.Or(a.RearWidth, a.Width)
	return a, taken
}

// Validate returns the first thing that the drawn seat, legs and braces lack, a [*KeyError], or nil.
func (d Design) Validate() error { return cmp.Or(d.Seat.check(), d.checkLegs(), d.Back.Braces.check()) }

// The coefficients of variation of small clear specimens of one wood; the Wood Handbook's, from memory.
const (
	StrengthSpread = 0.16
	ModulusSpread  = 0.22 // of the modulus of elasticity, and so of the yield
)

// helds are how the braces of a back are held, in the order of body.Held: resting in seat
// and crest rail, or fast in the seat and free at the top.
var helds = [...]string{"both ends", "at the seat"}

// Drawn reports whether the back has braces that bend.
func (b Braces) Drawn() bool { return b.Thickness > 0 }

// check returns the first thing that drawn braces lack.
func (b Braces) check() error {
	if b == (Braces{}) {
		return nil
	}
	needs := []need{{"count", b.Count}, {"width", b.Width}, {"thickness", b.Thickness}, {"length", b.Length}}
	if err := lacking("back.braces", "braces that bend need their", needs...); err != nil {
		return err
	}
	return whole("back.braces.count", b.Count)
}

// Beam returns the braces as one beam, and their wood's bending strength, Pa.
func (b Braces) Beam() (body.Beam, float64, error) {
	wood, err := FindWood(b.Wood, "back.braces")
	if err != nil {
		return body.Beam{}, 0, err
	}
	bar := body.Beam{Length: b.Length, Modulus: wood.ElasticModulus, Half: b.Thickness / 2, Held: b.Held,
		Second: body.SecondMoment(b.Count, b.Width, b.Thickness)}
	return bar, wood.RuptureModulus, nil
}
