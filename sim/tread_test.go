package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// runBack returns how far a point of the piece has run back along the floor from tilt to tilt, by its height alone: rolled about
// the contact, what lies y over the floor moves by y to the rear for each radian. Between the joints y is smooth, and 20
// places of Gauss's rule take it to rounding.
func runBack(p rocker.Profile, q r2.Vec, from, to float64) float64 {
	if to < from {
		return -runBack(p, q, to, from)
	}
	sum := 0.0
	for i := range p.Bearings() {
		if a, b := max(from, p.Bearing(i).From), min(to, p.Bearing(i).To); a < b {
			sum += quad.Fixed(func(tilt float64) float64 { return p.Height(q, tilt) }, a, b, 20, quad.Legendre{}, 0)
		}
	}
	return sum
}

// TestTreadAgainstPotential: the feet carry m·g·Z over their way from the contact, both by the heights of points alone: Z is
// the difference of the balance point's plumb height, and the contact lies under the point of the piece that a little turn does
// not lift, h′ behind the origin.
func TestTreadAgainstPotential(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 21))
	held, behind := 0, 0
	for range 150 {
		r := random(t, rng)
		b := r.Balance()
		if b.Outcome != Rocks {
			continue
		}
		sin, cos := math.Sincos(r.Floor.Slope)
		for range 12 {
			turn, at := -0.3+1.1*rng.Float64(), -0.4+1.1*rng.Float64()
			roll := b.Rest.Tilt + turn - r.Floor.Slope
			const step = 1e-5
			before, _ := r.Profile.Find(roll - step)
			after, _ := r.Profile.Find(roll + step)
			if before != after {
				continue // a kink between the two
			}
			slope := func(q r2.Vec) float64 {
				return (r.Profile.Height(q, roll+step) - r.Profile.Height(q, roll-step)) / (2 * step)
			}
			ahead := at + runBack(r.Profile, r2.Vec{}, 0, roll) + slope(r2.Vec{})
			arm := cos*slope(r.Body.Centre) - sin*runBack(r.Profile, r.Body.Centre, roll-step, roll+step)/(2*step)
			tread := r.Tread(b, at, turn)
			switch {
			case math.Abs(ahead) < 1e-9: // as good as under the contact
			case ahead < 0:
				behind++
				if !math.IsNaN(tread) {
					t.Errorf("feet %v m behind the contact hold it with %v N", -ahead, tread)
				}
			default:
				held++
				// metres: the rounding of 1 m over 20 µrad and step² of the next term
				if got := tread * ahead / (r.Body.Mass * Gravity); !(math.Abs(got-arm) <= 1e-9*max(1, math.Abs(got)/ahead)) {
					t.Errorf("%v rad back, feet %v m ahead: %v N, an arm of %v m; want %v (%+v)", turn, ahead, tread, got, arm, r)
				}
			}
		}
	}
	if held < 500 || behind < 200 {
		t.Errorf("only %d were held, %d not", held, behind)
	}
}

// TestTreadOnOneArc: m·g·d·sin φ/(at + R·φ) in closed form.
func TestTreadOnOneArc(t *testing.T) {
	r := arc(0.6, 0)
	b := r.Balance()
	for _, turn := range []float64{-0.3, 0, 1 * degree, 0.2, 0.45} {
		want := 80 * Gravity * 0.4 * math.Sin(turn) / (0.5 + turn)
		if got := r.Tread(b, 0.5, turn); !sameTo(got, want, closed) {
			t.Errorf("%v rad back feet half a metre ahead carry %v N, want %v", turn, got, want)
		}
	}
	if got := r.Tread(b, -0.2, 0.2); !math.IsNaN(got) { // just under them
		t.Errorf("feet where it touches hold it with %v N", got)
	}
}

// TestOriginInAFlat: as drawn the origin touches the floor at the origin of the floor, wherever in a flat it lies. From there
// the piece tips over either end of the flat on the circle beside it: points move as on a circle whose centre runs along the
// floor, and none jumps as the contact does.
func TestOriginInAFlat(t *testing.T) {
	const front, flat, back = 1.2, 0.1, 0.9 // radius, length, radius, m
	for _, part := range []float64{0, 1e-3, 0.3, 0.5, 0.999, 1} {
		before := part * flat // of the flat, ahead of the origin
		r := chain(t, 0.4+before, rocker.Arc(front, 0.4), rocker.Flat(flat), rocker.Arc(back, 0.4))
		for _, q := range []r2.Vec{{}, {X: -0.4, Y: 1.1}, {X: 0.3, Y: 0.5}} {
			for _, tilt := range []float64{-0.3, -0.1, -1e-3, -1e-12, 0, 1e-12, 1e-3, 0.1, 0.4} {
				centre := r2.Vec{X: before, Y: front} // of the circle, where it stands on its end of the flat
				if tilt >= 0 {
					centre = r2.Vec{X: before - flat, Y: back}
				}
				want := r2.Add(r2.Vec{X: centre.X - centre.Y*tilt, Y: centre.Y}, r2.Rotate(r2.Sub(q, centre), tilt, r2.Vec{}))
				x, y := r.Place(q, tilt)
				if off := r2.Norm(r2.Sub(r2.Vec{X: x, Y: y}, want)); off > 1e-14 { // a dozen roundings of a metre
					t.Errorf("%v of the flat ahead: %v at %v rad is at %v, %v; want %v", part, q, tilt, x, y, want)
				}
			}
		}
	}
}
