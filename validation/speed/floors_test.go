package speed

import (
	"math"
	"testing"

	"rockerwright/sim/motion"
)

// TestFloorsAnswer holds that each floor does the work it is measured for: its answers are
// those of the general code, to ten digits.
func TestFloorsAnswer(t *testing.T) {
	const accuracy = 1e-10 // what a period is promised to
	r := chair.rig()
	b := r.Balance()
	rest, period, back, forward := chair.balance()
	same := func(name string, got, want float64) {
		t.Helper()
		if !(math.Abs(got-want) <= accuracy*math.Abs(want)) {
			t.Errorf("%s: the floor says %v, sim %v", name, got, want)
		}
	}
	same("rest", rest, b.Rest.Tilt)
	same("period", period, b.Period)
	same("back tip", back.tip, b.Back.Tip)
	same("back margin", back.margin, b.Back.Angle)
	same("back lift", back.lift, b.Back.Lift)
	same("forward tip", forward.tip, b.Forward.Tip)
	same("forward margin", forward.margin, b.Forward.Angle)
	same("forward lift", forward.lift, b.Forward.Lift)
	for _, from := range []float64{5, 15} {
		want, _ := r.Period(b, from*degree)
		same("a rock", chair.period(from*degree), want)
	}
	trace := motion.Run(r, b, motion.Start{Tilt: b.Rest.Tilt + 15*degree}, motion.Options{})
	angle, rate := chair.follow(15*degree, 60)
	if off := math.Abs(angle - (trace.Last.Tilt - b.Rest.Tilt)); off > 1e-9 { // what 60 s are promised to
		t.Errorf("after a minute the floor is at %v, motion %v", angle, trace.Last.Tilt-b.Rest.Tilt)
	}
	if off := math.Abs(rate - trace.Last.Rate); off > 1e-8 { // the same times 2π/T
		t.Errorf("after a minute the floor turns at %v, motion %v", rate, trace.Last.Rate)
	}
}

// TestMeasure holds that what takes ten times as long is told so, and that a failure is.
func TestMeasure(t *testing.T) {
	spin := func(n int) func() error {
		return func() error {
			x := 1.0
			for range n {
				x = math.Sqrt(x + 1)
			}
			return rocks(x)
		}
	}
	ratio := 0.0
	for tries := 0; tries < 5 && (ratio < 5 || ratio > 20); tries++ { // a machine with other work to do stops one of the two at times
		floor, ours, err := work{"", spin(1000), spin(10_000)}.measure()
		if err != nil {
			t.Fatal(err)
		}
		ratio = ours / floor
	}
	if ratio < 5 || ratio > 20 {
		t.Errorf("ten times the work: ratio %v", ratio)
	}
	fails := func() error { return rocks(math.NaN()) }
	if _, _, err := (work{"", spin(1), fails}).measure(); err == nil {
		t.Error("no answer is measured")
	}
}
