package trial

import (
	"math"
	"testing"

	"rockerwright/sim/motion"
	"rockerwright/sim/quantity"
)

// TestWhole holds that a motion that goes over is followed on without a jump, that its
// energy stays what it was, and that it ends far over, before anything has sunk into the
// floor.
func TestWhole(t *testing.T) {
	report := checked(t, sized())
	for _, way := range []float64{1, -1} {
		b := report.Loads[1].Balance
		edge := b.Back.Angle
		if way < 0 {
			edge = b.Forward.Angle
		}
		r, err := Follow(report, RockOptions{From: way * (edge + 3*quantity.Deg)})
		if err != nil {
			t.Fatal(err)
		}
		if r.Trace.End != motion.WentOver {
			t.Fatalf("it does not go over: %v", r.Trace.End)
		}
		tilt, span := r.Whole()
		over := r.Trace.Duration
		const h = 1e-4                                                                    // s
		if jump := tilt(over+h) - tilt(over); math.Abs(jump-r.Trace.Last.Rate*h) > 1e-6 { // ½·a·h² at some 10 rad/s²
			t.Errorf("the fall begins %v rad away", jump)
		}
		energy := func(time float64) float64 {
			rate, at := (tilt(time+h)-tilt(time-h))/(2*h), tilt(time)
			rig := r.Load.Rig
			return 0.5*rig.Inertia(at)*rate*rate + rig.Body.Mass*rig.Floor.FreeFall()*rig.Rise(at)
		}
		first := energy(over + 0.05)
		for time := over + 0.1; time < span-0.05; time += 0.05 {
			if got := energy(time); math.Abs(got-first) > 0.05 { // J of some 700; the rate is a difference
				t.Errorf("way %v: the energy is %v J after %v s of fall, and was %v J", way, got, time-over, first)
			}
		}
		if end := tilt(span); way*end < math.Pi/4 || r.touches(r.highest(), tilt(span-2*fallenStep)) {
			t.Errorf("way %v: it ends at %v rad after %v s", way, end, span)
		}
		if after := tilt(span + 1); after != tilt(span) {
			t.Errorf("it moves on after it fell")
		}
	}
}

// TestFollowIsRock holds that the motion alone is the motion that rock works out.
func TestFollowIsRock(t *testing.T) {
	d := sized()
	whole := rocked(t, d, RockOptions{From: 10 * quantity.Deg})
	alone, err := Follow(whole.Report, RockOptions{From: 10 * quantity.Deg})
	if err != nil {
		t.Fatal(err)
	}
	for _, time := range []float64{0, 0.7, 3, 29} {
		if got, want := alone.Trace.At(time), whole.Trace.At(time); got != want {
			t.Errorf("at %v s: %v, want %v", time, got, want)
		}
	}
	if tilt, span := alone.Whole(); span != alone.Trace.Duration || tilt(3) != alone.Trace.At(3).Tilt {
		t.Error("a motion that stays up is not the whole of it")
	}
}
