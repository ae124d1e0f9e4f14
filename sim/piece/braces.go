package piece

import "rockerwright/body"

// The spread of small clear specimens of one wood, as coefficients of variation; the
// Wood Handbook's, from memory.
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
	return body.Beam{Length: b.Length, Modulus: wood.ElasticModulus, Second: body.SecondMoment(b.Count, b.Width, b.Thickness), Half: b.Thickness / 2, Held: b.Held}, wood.RuptureModulus, nil
}
