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
		name, example string
		size          float64
	}{{"count", "7", b.Count}, {"width", `"1-1/8"`, b.Width}, {"thickness", `"3/8"`, b.Thickness}, {"length", "24", b.Length}} {
		if m.size <= 0 {
			return &KeyError{Key: "back.braces." + m.name, Reason: "braces that bend need their " + m.name, Example: m.name + " = " + m.example}
		}
	}
	if b.Count != math.Trunc(b.Count) {
		return &KeyError{Key: "back.braces.count", Reason: "a count is a whole number", Example: "count = 7"}
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
