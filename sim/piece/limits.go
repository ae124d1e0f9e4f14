package piece

import "rockerwright/sim/quantity"

// Limits are what the piece must keep. Zero asks nothing. The margins and lifts are
// asked of the owner lying back, or of the postures the owner is given in.
type Limits struct {
	BackMargin    float64 // from the rest to the tip at the back
	BackLift      float64 // of the weight, on the way there
	ForwardMargin float64
	ForwardLift   float64
	RestTilt      float64 // largest tilt at rest, either way
}

// DefaultLimits returns what is asked of a kind of piece where its maker asks nothing
// else. No published limit for rocking chairs was found, so they are our judgement: a
// chair's are what ordinary chairs of custom sizes keep (the study in this package's
// tests); a cradle's is the tilt beyond which deaths are on record (Ackerman and
// Gilbert-Barness, Arch Pediatr Adolesc Med 1997;151:573-575, abstract).
func DefaultLimits(kind Kind) Limits {
	switch kind {
	case Cradle:
		return Limits{RestTilt: 5 * quantity.Deg}
	case Horse:
		return Limits{BackMargin: 15 * quantity.Deg, ForwardMargin: 15 * quantity.Deg}
	}
	return Limits{BackMargin: 15 * quantity.Deg, BackLift: 0.020}
}
