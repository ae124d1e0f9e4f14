package readings

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
)

// knownLevel are exact readings of the known chair by a level that shows 0.06 rad at tilt 0, with its weight and rocks,
// each balance read from both sides of a finger of 0.3 degree.
func knownLevel(t *testing.T) Readings {
	t.Helper()
	r, ok := drawnBow(t, 0.43, []float64{1.067}, []float64{1.04}).read(known.Centre, 0.06)
	if !ok {
		t.Fatal("the known chair does not stand")
	}
	by := 0.3 * degree
	r.BalancesOnTail, r.ReturnsFromTail = r.BalancesOnTail+by, r.BalancesOnTail-by
	r.BalancesOnNose, r.ReturnsFromNose = r.BalancesOnNose-by, r.BalancesOnNose+by
	rig := sim.Rig{Profile: r.Edge, Body: known}
	r.LetGo = 0.09
	r.TenRocks = 10 * rig.Swing(rig.Balance(), r.LetGo).Period
	r.Weight = known.Mass
	return r
}

// TestLevelUncertaintyHolds reads the known chair two thousand times with normal errors of each reading: level, finger,
// places of the ends, drawn seat, tape and scale.
func TestLevelUncertaintyHolds(t *testing.T) {
	if testing.Short() {
		t.Skip("thousands of draws are looked at only without -short")
	}
	const trials = 2000
	whole := knownLevel(t)
	three := whole
	three.NoseTip, three.TailTip = 0, 0
	untimed := three
	untimed.TenRocks, untimed.LetGo = 0, 0
	scales := readingsOf(t, known)
	scales.TenRocks, scales.LetGo = 0, 0
	for _, tt := range []struct {
		name  string
		exact Readings
		known int // values
	}{
		{"three tilts, zero unknown", three, 5},
		{"three tilts, seat drawn", three.drawn(0.06), 5},
		{"three tilts and heights", func() Readings { r := whole; r.TenRocks = 0; return r }(), 4},
		{"three tilts and heights, seat drawn", func() Readings { r := whole.drawn(0.06); r.TenRocks = 0; return r }(), 4},
		{"ends alone, seat drawn", func() Readings { r := untimed.drawn(0.06); r.SeatFallsEmpty = 0; return r }(), 4},
		{"two scales level and the tail, seat drawn", func() Readings {
			r := scales.drawn(0.06)
			r.Raised, r.FrontRaised, r.RearRaised = 0, 0, 0
			r.BalancesOnTail, r.ReturnsFromTail = three.BalancesOnTail, three.ReturnsFromTail
			return r
		}(), 4},
		{"all scales and three tilts", func() Readings {
			r := untimed
			r.Front, r.Rear, r.Apart, r.FrontMark = scales.Front, scales.Rear, scales.Apart, scales.FrontMark
			r.Raised, r.FrontRaised, r.RearRaised = scales.Raised, scales.FrontRaised, scales.RearRaised
			return r
		}(), 4},
		{"a dowel and the tail, seat drawn", func() Readings {
			r := untimed.drawn(0.06)
			r.onlyTail()
			r.SeatFallsEmpty, r.DowelAhead = 0, known.Centre.X
			return r
		}(), 4},
	} {
		rng := rand.New(rand.NewPCG(20, 2))
		var covered [5]int
		var told [5]Value
		doubts := 0
		for range trials {
			r := tt.exact
			for _, one := range r.read() {
				*one.value += one.deviation * rng.NormFloat64()
			}
			result, err := r.result()
			if err != nil {
				t.Fatalf("%s: %v", tt.name, err)
			}
			if len(result.Doubts) > 0 {
				doubts++
			}
			truth := []float64{known.Mass, known.Centre.X, known.Centre.Y, 0.06, known.Inertia}
			told = [5]Value{result.Mass, result.Ahead, result.Above, result.Zero, result.Inertia}
			for i := range covered {
				if math.Abs(told[i].Value-truth[i]) <= told[i].Uncertain {
					covered[i]++
				}
			}
		}
		t.Logf("%s: mass, ahead, above, zero, inertia within %v of %d, doubts %d; "+
			"± %.1f mm ahead, %.1f mm above (%s), %.2f deg, %.0f %% of inertia",
			tt.name, covered, trials, doubts, 1e3*told[1].Uncertain, 1e3*told[2].Uncertain, told[2].Limits(), told[3].Uncertain/degree,
			100*told[4].Uncertain/known.Inertia)
		for i, n := range covered[:tt.known] {
			if n < trials*93/100 || n > trials*97/100 {
				t.Errorf("%s: value %d lies within its uncertainty %d times in %d", tt.name, i, n, trials)
			}
		}
		if doubts > trials/50 { // 0.27 % for each reading that others hold
			t.Errorf("%s: %d doubts of honest readings", tt.name, doubts)
		}
	}
}

// TestLevelErrsAsSaid draws the errors themselves two thousand times, by what package readings says of none: the ends of
// the chair 3 mm off along its edge, its low point and the tips by a tape, the level a tenth of a degree off, the finger
// by half of what it makes, the seat as a tape has it, the scale.
func TestLevelErrsAsSaid(t *testing.T) {
	const trials, tape = 2000, 0.0008
	rng := rand.New(rand.NewPCG(20, 5))
	outwards := func(p r2.Vec, side float64) r2.Vec { // along an arc of 1.067 m about (0, 1.067)
		off := 0.003 * rng.NormFloat64()
		return r2.Add(p, r2.Scale(off/1.067*side, r2.Vec{X: 1.067 - p.Y, Y: p.X}))
	}
	var covered [4]int
	for range trials {
		b := drawnBow(t, 0.43, []float64{1.067}, []float64{1.04})
		b.tail, b.nose, b.low = outwards(b.tail, -1), outwards(b.nose, 1), tape*rng.NormFloat64()
		r, ok := b.read(known.Centre, 0.06)
		if !ok {
			t.Fatal("the known chair does not stand")
		}
		r = r.drawn(0.06 + 0.15*degree*rng.NormFloat64())
		r.Weight = known.Mass + 0.1*rng.NormFloat64()
		r.NoseTip, r.TailTip = r.NoseTip+tape*rng.NormFloat64(), r.TailTip+tape*rng.NormFloat64()
		r.SeatFallsEmpty += 0.1 * degree * rng.NormFloat64()
		const finger = 0.3 * degree
		tail, nose := r.BalancesOnTail+finger*rng.NormFloat64(), r.BalancesOnNose+finger*rng.NormFloat64()
		r.BalancesOnTail, r.ReturnsFromTail = tail+finger, tail-finger
		r.BalancesOnNose, r.ReturnsFromNose = nose-finger, nose+finger
		result, err := r.result()
		if err != nil {
			t.Fatal(err)
		}
		for i, v := range []Value{result.Mass, result.Ahead, result.Above, result.Zero} {
			if math.Abs(v.Value-[]float64{known.Mass, known.Centre.X, known.Centre.Y, 0.06}[i]) <= v.Uncertain {
				covered[i]++
			}
		}
	}
	t.Logf("mass, ahead, above, zero within their uncertainty %v times in %d", covered, trials)
	for i, n := range covered {
		if n < trials*93/100 || n > trials*97/100 {
			t.Errorf("value %d lies within its uncertainty %d times in %d", i, n, trials)
		}
	}
}
