package check

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// anyOwner is the reading chair with seat, rockers and owner at random, such as people make and are.
func anyOwner(rng *rand.Rand) piece.Design {
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	d := readingChair()
	d.Rocker.Radius, d.Rocker.Tail = between(36, 48)*quantity.In, between(22, 28)*quantity.In
	d.Seat.Front = between(13, 19) * quantity.In
	d.Seat.Rear, d.Seat.Behind = d.Seat.Front-between(0, 2)*quantity.In, between(6.5, 9)*quantity.In
	tall := between(1.5, 1.95)
	d.Sitters = []piece.Sitter{{Name: "owner", Mass: between(19, 38) * tall * tall}}
	d.Sitters[0].Person.Sizes[person.Stature] = tall
	return d
}

// TestEveryOwnerHasARest: of 500 owners at random nobody is without a rest at ease, a time or a push where there are
// any with the feet off; feet never stand under the floor, and what is said of them is what is drawn at the rest: on
// the floor where it carries something, over it by what does not fit where it does not.
func TestEveryOwnerHasARest(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 4))
	stages := map[body.Stage]int{}
	for range 500 {
		d := anyOwner(rng)
		r, err := Balance(d)
		if err != nil {
			t.Fatal(err)
		}
		l, off := r.Load("owner, at ease"), r.Load("owner, feet off")
		if off.Balance.Outcome == sim.Rocks && (!l.Moves() || math.IsNaN(l.Balance.Period+l.EffortBack+l.Back.Angle+l.Forward.Angle)) {
			t.Errorf("%+v: with the feet off it rests at %v, at ease %+v", d.Seat, off.Balance.Rest.Tilt, l.Balance)
			continue
		}
		if !l.Moves() {
			continue
		}
		feet, j := l.Feet[0], l.FiguresAt(l.Balance.Rest.Tilt)[0]
		stages[feet.Stage]++
		over := func(q r2.Vec) float64 { _, y := l.Rig.Place(q, l.Balance.Rest.Tilt); return y }
		heel, toe := over(j.Heel), over(j.Toe)
		flat, onToe := math.Abs(heel) < 1e-6 && math.Abs(toe) < 1e-6, math.Abs(toe) < 1e-6
		switch feet.Stage {
		case body.SoleFlat, body.HeelLifting:
			if !flat || feet.Carried <= 0 {
				t.Errorf("%v: heel %v and toe %v over the floor, which carries %v kg", feet.Stage, heel, toe, feet.Carried)
			}
		case body.HeelLifted:
			if flat || !onToe || feet.Carried <= 0 {
				t.Errorf("%v: heel %v and toe %v over the floor, which carries %v kg", feet.Stage, heel, toe, feet.Carried)
			}
		case body.FeetOff:
			if !(toe > -1e-9) || feet.Carried != 0 || math.Abs(toe-r.hang(l)) > 1e-9 {
				t.Errorf("%v: toe %v over the floor, said %v", feet.Stage, toe, r.hang(l))
			}
		}
		if part := r2.Norm(r2.Sub(j.Knee, j.Ankle)) - l.Legs[0].Length; math.Abs(part) > 1e-9 {
			t.Errorf("%v: a shank is drawn %v m too long", feet.Stage, part)
		}
		if l.Pressed < l.Balance.Rest.Tilt {
			t.Errorf("pressing calves bring it forward: %v of %v", l.Pressed, l.Balance.Rest.Tilt)
		}
	}
	for stage := body.SoleFlat; stage <= body.FeetOff; stage++ {
		if stages[stage] < 5 {
			t.Errorf("only %d of the owners have their feet %v", stages[stage], stage)
		}
	}
}

// TestForwardIsTheLesser: forward is said of feet off or of rising, whichever lifts less, and never of feet that hold.
func TestForwardIsTheLesser(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 5))
	seen := [2]int{}
	for range 50 {
		r, err := Balance(anyOwner(rng))
		if err != nil {
			t.Fatal(err)
		}
		l, off, rising := r.Load("owner, at ease"), r.Load("owner, feet off"), r.Load("owner, rising")
		if !l.Moves() || !off.Moves() || !rising.Upright() {
			continue
		}
		lesser := off.Forward
		if rising.Forward.Lift < lesser.Lift {
			lesser = rising.Forward
			seen[1]++
		} else {
			seen[0]++
		}
		if l.Forward != lesser || l.OffBalance.Forward != off.Forward {
			t.Errorf("forward %+v, of feet off %+v, rising %+v", l.Forward, off.Forward, rising.Forward)
		}
	}
	if seen[0] == 0 || seen[1] == 0 {
		t.Errorf("the lesser was of feet off %d times, of rising %d", seen[0], seen[1])
	}
}

// TestLeaningBack: who leans back by nothing is where he was, forward too; by an inch the piece rests further back, or on
// the same step of the heel, and is further from going forward.
func TestLeaningBack(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 8))
	for range 30 {
		r, err := Balance(anyOwner(rng))
		if err != nil {
			t.Fatal(err)
		}
		same, back := r.LeaningBack(0), r.LeaningBack(quantity.In)
		for i := range r.Loads {
			was, is, now := &r.Loads[i], &same.Loads[i], &back.Loads[i]
			if !was.Upright() {
				continue
			}
			if is.Balance.Rest != was.Balance.Rest || is.Forward != was.Forward || is.SeatFall != was.SeatFall ||
				is.OffBalance.Forward != was.OffBalance.Forward {
				t.Errorf("%s leans by nothing: rests at %v, forward %v, was %v and %v",
					was.Name, is.Balance.Rest.Tilt, is.Forward, was.Balance.Rest.Tilt, was.Forward)
			}
			if now.Upright() && !now.Empty && now.Balance.Rest.Tilt < was.Balance.Rest.Tilt {
				t.Errorf("%s leans back and rests at %v, was %v", was.Name, now.Balance.Rest.Tilt, was.Balance.Rest.Tilt)
			}
			if now.Moves() && len(now.Legs) > 0 && !(now.OffBalance.Forward.Angle > was.OffBalance.Forward.Angle) {
				t.Errorf("%s leans back and goes forward at %v, was %v", was.Name, now.OffBalance.Forward.Angle, was.OffBalance.Forward.Angle)
			}
		}
	}
}

// TestLeastBackIsTheLeastSaid: of people at ease the nearest to going back has the least of the angles that are printed.
func TestLeastBackIsTheLeastSaid(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 9))
	for range 30 {
		r, err := Balance(anyOwner(rng))
		if err != nil {
			t.Fatal(err)
		}
		var eased []*Load
		least := math.Inf(1)
		for i := range r.Loads {
			if l := &r.Loads[i]; l.Posture == person.AtEase && l.Upright() {
				eased, least = append(eased, l), min(least, l.Back.Angle)
			}
		}
		if got := LeastBack(eased); got != nil && got.Back.Angle != least {
			t.Errorf("%s keeps %v, the least is %v", got.Name, got.Back.Angle, least)
		}
	}
}
