package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

const degree = math.Pi / 180

// arc is 80 kg on one arc of 1 m, the centre of mass h over the low point and a little
// behind it, radius of gyration 0.35 m.
func arc(h, behind float64) Rig {
	return Rig{
		Profile: rocker.Single(1, 0.4, 0.5),
		Body:    body.Body{Mass: 80, Centre: r2.Vec{X: -behind, Y: h}, Inertia: 80 * 0.35 * 0.35},
	}
}

// chain is the same body on any spans.
func chain(t testing.TB, nose float64, spans ...rocker.Span) Rig {
	t.Helper()
	p, err := rocker.Chain(nose, spans...)
	if err != nil {
		t.Fatal(err)
	}
	r := arc(0.6, 0)
	r.Profile = p
	return r
}

// random returns a rig of one to four spans of every sort, seeded by the caller.
func random(t testing.TB, rng *rand.Rand) Rig {
	t.Helper()
	for {
		var spans []rocker.Span
		total := 0.0
		for range 1 + rng.IntN(4) {
			length := 0.1 + 0.3*rng.Float64()
			switch rng.IntN(8) {
			case 0:
				spans = append(spans, rocker.Turn(0.2*rng.Float64()))
				continue
			case 1:
				spans = append(spans, rocker.Flat(length/3))
				total += length / 3
				continue
			}
			spans = append(spans, rocker.Arc(0.7+rng.Float64(), length))
			total += length
		}
		p, err := rocker.Chain(total*(0.3+0.4*rng.Float64()), spans...)
		if err != nil || total < 0.2 {
			continue
		}
		gyration := 0.2 + 0.3*rng.Float64()
		return Rig{
			Profile: p,
			Body:    body.Body{Mass: 5 + 100*rng.Float64(), Centre: r2.Vec{X: -0.08 + 0.16*rng.Float64(), Y: 0.35 + 0.3*rng.Float64()}},
			Floor:   Floor{Slope: (rng.Float64() - 0.5) * 0.1},
		}.withGyration(gyration)
	}
}

func (r Rig) withGyration(k float64) Rig {
	r.Body.Inertia = r.Body.Mass * k * k
	return r
}

// sameTo reports whether two numbers agree to a relative accuracy; NaN agrees with NaN.
func sameTo(a, b, accuracy float64) bool {
	if math.IsNaN(a) || math.IsNaN(b) {
		return math.IsNaN(a) && math.IsNaN(b)
	}
	return math.Abs(a-b) <= accuracy*max(math.Abs(a), math.Abs(b))
}

// TestRightingIsTheSlopeOfTheHeight: Z is the derivative of the plumb height of the
// centre of mass, taken here by differences of its path: it lies H over the floor and H′
// ahead of a contact that has rolled s to the rear.
func TestRightingIsTheSlopeOfTheHeight(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 1))
	for range 200 {
		r := random(t, rng)
		tilt := -1.2 + 2.4*rng.Float64()
		plumb := func(tilt float64) float64 {
			i, roll := r.Profile.Find(tilt - r.Floor.Slope)
			b := r.Profile.Bearing(i)
			contact := b.Contact(roll)
			down, rear := rocker.Down(roll)
			from := r2.Sub(r.Body.Centre, contact)
			along, over := -r2.Dot(from, rear)-b.RolledAt(roll), -r2.Dot(from, down)
			return along*math.Sin(r.Floor.Slope) + over*math.Cos(r.Floor.Slope)
		}
		const step = 1e-6
		before, _ := r.Profile.Find(tilt - r.Floor.Slope - step)
		after, _ := r.Profile.Find(tilt - r.Floor.Slope + step)
		if before != after {
			continue // a kink between the two
		}
		arm, _ := r.Righting(tilt)
		if got := (plumb(tilt+step) - plumb(tilt-step)) / (2 * step); math.Abs(got-arm) > 1e-9 { // rounding of 1 m over 2 µm
			t.Errorf("at %v rad the height grows by %v m/rad, the arm is %v m (%+v)", tilt, got, arm, r)
		}
	}
}
