package body

// A Held is how a beam is held.
type Held int

const (
	BothEnds Held = iota // resting on both ends, free to turn there
	OneEnd               // fast at one end, free at the other
)

// A Beam is a straight bar of even section that bends under one load across it.
type Beam struct {
	Length  float64 // m
	Modulus float64 // of elasticity, Pa
	Second  float64 // second moment of area of its section, m⁴
	Half    float64 // from the middle of the section to its face, m
	Held    Held
}

// SecondMoment returns the second moment of area of count bars side by side, each wide
// across and thick in the direction in which it bends (m): n·b·h³/12, m⁴.
func SecondMoment(count, wide, thick float64) float64 {
	return count * wide * thick * thick * thick / 12
}

// Bend returns the deflection under the load (m) and the largest bending stress (Pa) for a force (N) at a distance
// from the first end, which is the fast one (m, kept within the bar). Both are infinite or NaN for a bar without
// length, stiffness or section. Textbook formulas of the elastic beam, E·I·y″ = M:
//
//	resting on both ends   y = F·a²·b²/(3·E·I·L)   M = F·a·b/L,  b = L − a
//	fast at one end        y = F·a³/(3·E·I)        M = F·a
func (b Beam) Bend(force, at float64) (deflection, stress float64) {
	at = min(at, b.Length)
	var moment float64
	stiff := 3 * b.Modulus * b.Second
	switch b.Held {
	case OneEnd:
		deflection = force * at * at * at / stiff
		moment = force * at
	default:
		rest := b.Length - at
		deflection = force * at * at * rest * rest / (stiff * b.Length)
		moment = force * at * rest / b.Length
	}
	return deflection, moment * b.Half / b.Second
}
