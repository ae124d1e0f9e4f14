package person

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// Moved returns the joints carried along, each point by move.
func (j Joints) Moved(move func(r2.Vec) r2.Vec) Joints {
	for _, p := range []*r2.Vec{&j.Vertex, &j.Chin, &j.Neck, &j.Shoulder, &j.Elbow, &j.Wrist, &j.Fingertip, &j.Hip, &j.Knee, &j.Ankle, &j.Heel, &j.Toe} {
		*p = move(*p)
	}
	return j
}

// Limits returns the parts of the body that reach furthest, each under the name of the limb it ends.
func (j Joints) Limits() []struct {
	Limb  string
	Point r2.Vec
} {
	return []struct {
		Limb  string
		Point r2.Vec
	}{
		{"head", j.Vertex}, {"head", j.Chin}, {"shoulders", j.Shoulder}, {"elbows", j.Elbow}, {"hands", j.Wrist}, {"hands", j.Fingertip},
		{"knees", j.Knee}, {"feet", j.Ankle}, {"feet", j.Heel}, {"feet", j.Toe},
	}
}

// KneesUp returns how much higher than the hip joints the knees stand, m.
func (j Joints) KneesUp() float64 { return j.Knee.Y - j.Hip.Y }

// KneesOverChin reports whether the knees stand higher than the chin.
func (j Joints) KneesOverChin() bool { return j.Knee.Y > j.Chin.Y }

// OnTheBack returns what leans on the back of the seat and turns about the hip joints:
// trunk, head and upper arms; the forearms lie on the arms of the seat.
func (p *Person) OnTheBack(j Joints) body.Body {
	list := p.chain(j)
	return body.Join(list[Head], list[Trunk], list[UpperArm])
}

// bladesUp is where the shoulder blades touch the back, from the hip joints along the
// trunk to the shoulder joints; our judgement.
const bladesUp = 0.8

// Blades returns how far along the trunk from the hip joints the back is touched, m.
func (p *Person) Blades() float64 { return bladesUp * p.shoulder }

// HipAhead returns the distance of the hip joints ahead of a back, square to it, m, and
// HipUp their height over a hard seat.
func (p *Person) HipAhead() float64 { return p.hipAhead }

// HipUp returns the height of the hip joints over a hard seat, m.
func (p *Person) HipUp() float64 { return p.hipUp }

// navelUp is where the navel lies on the way from the hip joints to the seventh neck vertebra:
// de Leva (1996), Table 4, 145.7 of 603.3 mm in men and 181.5 of 614.8 mm in women; the mean.
const navelUp = 0.27

// Navel returns the place of the navel, taken on the line of the trunk.
func (j Joints) Navel() r2.Vec {
	return r2.Add(j.Hip, r2.Scale(navelUp, r2.Sub(j.Neck, j.Hip)))
}
