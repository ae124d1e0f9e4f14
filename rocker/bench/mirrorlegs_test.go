package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"
)

// legs holds how legs stand, what blocks they take and by how much they miss.
func (c twin) legs(t *testing.T, rng *rand.Rand) {
	t.Helper()
	for range 8 {
		l := Leg{r3.Vec{X: 1.6 * (rng.Float64() - 0.5), Y: 0.5 + 0.2*rng.Float64(), Z: 0.2 + 0.1*rng.Float64()},
			0.6 * (rng.Float64() - 0.5), 0.2 * (rng.Float64() - 0.5)}
		o := Leg{r3.Scale(c.size, r3.Vec{X: c.side * l.Seat.X, Y: l.Seat.Y, Z: l.Seat.Z}), c.side * l.Rake, l.Splay}
		s, err := c.p.Stand(l)
		z, wrong := c.q.Stand(o)
		if err != nil {
			var miss, other *MissError
			if !errors.As(err, &miss) || !errors.As(wrong, &other) {
				t.Fatal(err, wrong)
			}
			c.alike(t, "miss", c.size*miss.By, other.By)
			turned := map[string]string{"ahead of the nose": "behind the tail", "behind the tail": "ahead of the nose"}
			if want := turned[miss.Where]; c.side > 0 && other.Where != miss.Where || c.side < 0 && want != "" && other.Where != want {
				t.Fatalf("%v; laid otherwise %v", err, wrong)
			}
			continue
		}
		if wrong != nil {
			t.Fatal(wrong)
		}
		c.same(t, "foot", r2.Vec{X: s.Foot.X, Y: s.Foot.Y}, r2.Vec{X: z.Foot.X, Y: z.Foot.Y})
		angle := s.Angle
		if c.side < 0 {
			angle = math.Pi - angle
		}
		for _, tt := range [][2]float64{{c.size * s.Foot.Z, z.Foot.Z}, {c.size * s.Length, z.Length}, {angle, z.Angle}, {c.side * s.Cut, z.Cut},
			{c.side * s.Slope, z.Slope}, {s.Across, z.Across}, {s.Tilt, z.Tilt}, {s.Resultant, z.Resultant},
			{c.side * math.Cos(s.Sightline), math.Cos(z.Sightline)}} {
			c.alike(t, "stand", tt[0], tt[1])
		}
		b, err := s.Block(0.04, 0.03, 0.012)
		d, wrong := z.Block(c.size*0.04, c.size*0.03, c.size*0.012)
		if (err == nil) != (wrong == nil) {
			t.Fatal(err, wrong)
		}
		if c.side < 0 {
			d.NoseInner, d.NoseOuter, d.TailInner, d.TailOuter = d.TailInner, d.TailOuter, d.NoseInner, d.NoseOuter
		}
		for _, tt := range [][2]float64{{b.NoseInner, d.NoseInner}, {b.NoseOuter, d.NoseOuter}, {b.TailInner, d.TailInner},
			{b.TailOuter, d.TailOuter}, {b.Shorter, d.Shorter}, {b.Bow, d.Bow}} {
			c.alike(t, "block", c.size*tt[0], tt[1])
		}
	}
}
