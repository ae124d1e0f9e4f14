package piece

// A beam is a straight bar of even section that bends, with one point load across it.
type beam struct {
	length  float64 // m
	modulus float64 // of elasticity, Pa
	second  float64 // second moment of area of its section, m⁴
	half    float64 // from the middle of the section to its face, m
	held    Held
}

// rectangular returns the second moment of area of count bars side by side, each wide
// across and thick in the direction in which it bends: n·b·h³/12.
func rectangular(count, wide, thick float64) float64 {
	return count * wide * thick * thick * thick / 12
}

// bend returns the deflection under the load (m) and the largest bending stress (Pa) for
// a force (N) at a distance (m, kept within the bar) from the seat's end. Textbook
// formulas of the elastic beam, E·I·y″ = M:
//
//	resting on both ends   y = F·a²·b²/(3·E·I·L)   M = F·a·b/L,  b = L − a
//	fast at the seat       y = F·a³/(3·E·I)        M = F·a
func (b beam) bend(force, at float64) (deflection, stress float64) {
	at = min(at, b.length)
	var moment float64
	stiff := 3 * b.modulus * b.second
	switch b.held {
	case AtTheSeat:
		deflection = force * at * at * at / stiff
		moment = force * at
	default:
		rest := b.length - at
		deflection = force * at * at * rest * rest / (stiff * b.length)
		moment = force * at * rest / b.length
	}
	return deflection, moment * b.half / b.second
}
