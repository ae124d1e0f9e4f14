package sim

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/optimize"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// atEase returns one of the people at ease in a chair of so many arcs, on a level floor: 60 to 120 kg without shanks
// and feet, these as in a body of 40 to 120 kg. On a step the shank is as long as lets the heel lift between the rests
// with the full share and with the toe's, neither of which hangs on its length.
func atEase(t testing.TB, rng *rand.Rand, arcs int, onStep bool) Seated {
	t.Helper()
	between := func(from, to float64) float64 { return from + (to-from)*rng.Float64() }
	whole := between(40, 120)
	l := body.Legs{
		Knee:  r2.Vec{X: between(0.25, 0.42), Y: between(0.38, 0.5)},
		Shank: 2 * 0.043 * whole, Foot: 2*0.014*whole + between(0, 1.5), Thigh: between(0.05, 0.1) * whole,
		Length: between(0.3, 0.45), Centre: between(0.4, 0.46), Ankle: between(0.06, 0.1), Toe: between(0.14, 0.2),
	}
	l.Ahead = l.Toe * between(0.2, 0.4)
	l.Below = l.Ankle * between(0.7, 1)
	l.Bend = between(0.3, 1)
	nose, tail := between(0.3, 0.4), between(0.4, 0.6)
	s := Seated{Rig: Rig{Profile: rocker.Single(between(0.9, 1.4), nose, tail)}, Legs: []body.Legs{l}}
	if arcs > 1 {
		spans := make([]rocker.Span, arcs)
		for i := range spans {
			spans[i] = rocker.Arc(between(0.75, 1.6), (nose+tail)/float64(arcs))
		}
		if arcs == 3 {
			spans[1].Radius = between(0.25, 1) // two wells where the middle is tight
		}
		s.Profile = chain(t, nose, spans...).Profile
	}
	s.Body = body.Body{Mass: between(60, 120), Centre: r2.Vec{X: between(-0.1, 0.02), Y: between(0.45, 0.62)}}
	s.Body.Inertia = s.Body.Mass * between(0.05, 0.15)
	if onStep {
		full, toe := s.held([]float64{l.Full()}).Balance(), s.held([]float64{l.OnToe(0)}).Balance()
		lifts := full.Rest.Tilt + rng.Float64()*(toe.Rest.Tilt-full.Rest.Tilt)
		s.Legs[0].Length = s.Profile.Height(l.Knee, lifts) - l.Ankle
	}
	return s
}

// byBars returns the potential energy over g at a tilt of a level floor, kg·m: the heights of the piece, the shank and
// the foot, where Bars puts them.
func (s *Seated) byBars(tilt float64) float64 {
	v := s.Body.Mass * s.Profile.Height(s.Body.Centre, tilt)
	for i := range s.Legs {
		l := &s.Legs[i]
		knee := r2.Vec{Y: s.Profile.Height(l.Knee, tilt)}
		ankle, heel, toe := l.Bars(knee)
		sole := r2.Unit(r2.Sub(toe, heel))
		v += l.Shank*(knee.Y+l.Centre*(ankle.Y-knee.Y)) + l.Foot*(ankle.Y+l.Ahead*sole.Y-l.Below*sole.X)
	}
	return v
}

// dips returns the places between two where f is least of its surroundings: by scan, then by golden section.
func dips(f func(x float64) float64, from, to, step float64) []float64 {
	var list []float64
	golden := (math.Sqrt(5) - 1) / 2
	for a, b, x := f(from), f(from+step), from+2*step; x < to; x += step {
		c := f(x)
		if b < a && b <= c {
			left, right := x-2*step, x
			for range 36 { // 0.618³⁶ of two steps: 1e-9
				if one, two := right-golden*(right-left), left+golden*(right-left); f(one) < f(two) {
					right = two
				} else {
					left = one
				}
			}
			list = append(list, (left+right)/2)
		}
		a, b = b, c
	}
	return list
}

// narrow reports whether a hilltop is so near to the i-th of all, a rest.
func narrow(all []Equilibrium, i int, near float64) bool {
	return i > 0 && all[i].Tilt-all[i-1].Tilt < near || i+1 < len(all) && all[i+1].Tilt-all[i].Tilt < near
}

// TestSeatedAgainstHeights finds every rest of 500 people and seats once more, as the dips of the potential energy
// over the tilt alone, and the lowest of them as where people rest.
func TestSeatedAgainstHeights(t *testing.T) {
	const within = 0.001 * degree
	rng := rand.New(rand.NewPCG(17, 10))
	onStep, two := 0, 0
	for i := range 500 {
		s := atEase(t, rng, 1+2*(i/2%2), i%2 == 0)
		if i%5 == 0 { // somebody beside
			s.Legs = append(s.Legs, atEase(t, rng, 1, false).Legs...)
		}
		const step = 0.004 // rad
		want := dips(s.byBars, -math.Pi/2, math.Pi/2, step)
		var got []Equilibrium
		all := s.Equilibria()
		for k, e := range all {
			// a dip narrower than the scan, of a heel that lifts where the piece goes over, may be missed
			found := slices.ContainsFunc(want, func(tilt float64) bool { return math.Abs(tilt-e.Tilt) < within })
			if e.Stable && (found || !narrow(all, k, 2*step)) {
				got = append(got, e)
			}
		}
		if len(got) != len(want) {
			t.Errorf("%d: %d rests, by heights %d: %+v and %v (%+v)", i, len(got), len(want), got, want, s)
			continue
		}
		b := s.Balance()
		if b.Outcome == Rocks && narrow([]Equilibrium{{Tilt: b.Forward.Tip}, b.Rest, {Tilt: b.Back.Tip}}, 1, 2*step) {
			continue
		}
		if len(want) == 0 {
			if b.Outcome != NoRest || !math.IsNaN(b.Period) || b.Back.Exists() || b.Forward.Exists() {
				t.Errorf("%d: no dip, and the balance is %+v", i, b)
			}
			continue
		}
		for k, tilt := range want {
			if math.Abs(got[k].Tilt-tilt) > within {
				t.Errorf("%d: rest at %v, by heights %v", i, got[k].Tilt, tilt)
			}
			if s.byBars(tilt) < s.byBars(b.Rest.Tilt)-1e-12 {
				t.Errorf("%d: rest at %v, lower at %v", i, b.Rest.Tilt, tilt)
			}
		}
		if len(want) > 1 {
			two++
		}
		if b.Feet[0].Stage == body.HeelLifting {
			onStep++
			if b.Rest.Tilt != b.Feet[0].HeelLifts {
				t.Errorf("%d: on a step at %v, the heels lift at %v", i, b.Rest.Tilt, b.Feet[0].HeelLifts)
			}
		}
	}
	if onStep < 50 || two < 20 {
		t.Errorf("of 500 %d rest on a step and %d have two wells: too few to say anything", onStep, two)
	}
}

// TestSeatedAgainstThreeFreeAngles minimises the whole potential energy by Nelder and Mead from six starts: the tilt,
// the shank and the foot all free, the floor a stiff smooth wall under heel and toe. The law of the legs has no part in it.
func TestSeatedAgainstThreeFreeAngles(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 11))
	for i := range 12 {
		s := atEase(t, rng, 1+i/3%2, i%3 == 0)
		l := &s.Legs[0]
		l.Bend = math.Pi / 2 // no stop
		stiff := 0.0         // kg/m
		energy := func(x []float64) float64 {
			y, sunk := s.Profile.Height(l.Knee, x[0]), 0.0
			sin, cos := math.Sincos(x[2])
			ankle := y - l.Length*math.Cos(x[1])
			for _, ahead := range []float64{-0.05, l.Toe} {
				low := min(0, ankle-ahead*sin-l.Ankle*cos)
				sunk += low * low
			}
			return s.Body.Mass*s.Profile.Height(s.Body.Centre, x[0]) + l.Shank*(y+l.Centre*(ankle-y)) +
				l.Foot*(ankle-l.Ahead*sin-l.Below*cos) + stiff/2*sunk
		}
		best, tilt := math.Inf(1), math.NaN()
		for k := range 6 {
			x := []float64{0.1 * float64(k%3), 0.5 * float64(k%2), 0.1 * float64(k/3)}
			for _, stiff = range []float64{1e2, 1e3, 1e4, 1e5, 1e5, 1e5} { // at last 5 kg sink in by 0.05 mm, worth 0.01 degree
				found, err := optimize.Minimize(optimize.Problem{Func: energy}, x, nil, &optimize.NelderMead{SimplexSize: 0.05})
				if err != nil {
					t.Fatal(err)
				}
				x = found.X
			}
			if v := energy(x); v < best && math.Abs(x[2]) < math.Pi/2 { // no foot stands on its instep
				best, tilt = v, x[0]
			}
		}
		if got := s.Balance(); math.Abs(got.Rest.Tilt-tilt) > 0.05*degree {
			t.Errorf("%d: feet %v: rest at %v, with all angles free %v (%+v)", i, got.Feet[0].Stage, got.Rest.Tilt, tilt, s)
		}
	}
}

// ahead returns how far a point of the chair is ahead of the contact, plumb, at a tilt, m.
func (r *Rig) ahead(q r2.Vec, tilt float64) float64 {
	return r2.Rotate(r2.Sub(q, r.Profile.Contact(tilt-r.Floor.Slope)), tilt, r2.Vec{}).X
}

// TestSeatedMoments takes the moments about the contact by hand, also on sloping floors: at the rest they are zero with
// what the floor is said to carry, and that lies between what it carries just under and just over that height of the knee.
func TestSeatedMoments(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 12))
	var seen [4]int
	for i := range 300 {
		s := atEase(t, rng, 1+i%3, i%2 == 0)
		if i > 100 {
			s.Floor.Slope = 0.2 * (rng.Float64() - 0.5)
		}
		s.Legs = append(s.Legs, atEase(t, rng, 1, false).Legs...)
		b := s.Balance()
		if b.Outcome != Rocks {
			continue
		}
		sum := s.Body.Mass * s.ahead(s.Body.Centre, b.Rest.Tilt)
		for k, f := range b.Feet {
			seen[f.Stage]++
			l := &s.Legs[k]
			sum += (l.Mass() - f.Carried) * s.ahead(l.Knee, b.Rest.Tilt)
			y := s.Profile.Height(l.Knee, b.Rest.Tilt-s.Floor.Slope)
			under, over := l.Carried(l.StageAt(y-1e-9), y-1e-9), l.Carried(l.StageAt(y+1e-9), y+1e-9)
			if f.Carried > under+1e-12 || f.Carried < over-1e-12 {
				t.Errorf("%d: the floor carries %v kg, by the height of the knee between %v and %v", i, f.Carried, over, under)
			}
		}
		if math.Abs(sum) > 1e-12*s.Body.Mass {
			t.Errorf("%d: at %v on a slope of %v the moment is %v kg·m (%v)", i, b.Rest.Tilt, s.Floor.Slope, sum, b.Feet)
		}
	}
	if slices.Min(seen[:]) < 30 {
		t.Errorf("stages seen %v: too few", seen)
	}
}
