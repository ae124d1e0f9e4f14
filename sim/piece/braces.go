package piece

import (
	"math"

	"rockerwright/body"
)

// The spread of small clear specimens of one wood, as coefficients of variation; the
// Wood Handbook's, from memory.
const (
	StrengthSpread = 0.16
	ModulusSpread  = 0.22 // of the modulus of elasticity, and so of the yield
)

// drawn reports whether the back has braces that bend.
func (b Braces) Drawn() bool { return b.Thickness > 0 }

// check returns the first thing that drawn braces lack.
func (b Braces) check() error {
	if b == (Braces{}) {
		return nil
	}
	for _, m := range []struct {
		name string
		size float64
	}{{"count", b.Count}, {"width", b.Width}, {"thickness", b.Thickness}, {"length", b.Length}} {
		if m.size <= 0 {
			return &KeyError{Key: "back.braces." + m.name, Reason: "braces that bend need their " + m.name, Give: m.name}
		}
	}
	if b.Count != math.Trunc(b.Count) {
		return &KeyError{Key: "back.braces.count", Reason: "a count is a whole number", Give: "count"}
	}
	return nil
}

// beam returns the braces as one beam, and their wood's bending strength, Pa.
func (b Braces) Beam() (body.Beam, float64, error) {
	wood, err := FindWood(b.Wood, "back.braces")
	if err != nil {
		return body.Beam{}, 0, err
	}
	return body.Beam{Length: b.Length, Modulus: wood.ElasticModulus, Second: body.SecondMoment(b.Count, b.Width, b.Thickness), Half: b.Thickness / 2, Held: b.Held}, wood.RuptureModulus, nil
}
