package trial

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/quantity"
)

// A Heaved is what becomes of a load whose people rock it hard, leaning to and fro at each turn of the rock.
type Heaved struct {
	Load          string
	Back, Forward float64        // the whole leans, rad, + back
	Whole, Fifth  motion.Heaving // by the whole leans, and by a fifth of them
	Lifts         float64        // the work of the whole lean that takes the most, as a lift of all that rocks, m
	Way           sim.Outcome    // which way it goes over with whole leans; Rocks where that is not said
	Use           Use
}

// heaved rocks hard every load in which somebody does.
func heaved(r *check.Report) []Heaved {
	var list []Heaved
	for i := range r.Loads {
		l := &r.Loads[i]
		if back, forward := l.Leans(); back != forward && l.Asked() && l.Posture != person.FeetOff {
			h := Heaved{Load: l.Name, Back: back, Forward: forward, Use: wild(r),
				Whole: r.RockedHard(l, 1), Fifth: r.RockedHard(l, 0.2)}
			if h.Whole.Outcome != sim.Rocks && h.Whole.Survived() == 0 {
				h.Use = Daily // everybody sits up at once now and then
			}
			h.Way, h.Lifts = wayOver(r, l, h.Whole.Outcome), h.Whole.Work()/(l.Off.Body.Mass*l.Off.Floor.FreeFall())
			list = append(list, h)
		}
	}
	return list
}

// wayOver returns which way a load goes over that is rocked hard, as with whole leans, where it goes the same way with leans a
// twentieth less and more; else Rocks, for then nobody can tell.
func wayOver(r *check.Report, l *check.Load, way sim.Outcome) sim.Outcome {
	for _, share := range []float64{0.95, 1.05} {
		if r.RockedHard(l, share).Outcome != way {
			return sim.Rocks
		}
	}
	return way
}

// firstTurn returns how far from its rest a motion turns first, rad; NaN where it does not.
func firstTurn(t motion.Trace, rest float64) float64 {
	for _, e := range t.Events {
		if e.Kind == motion.Turns {
			return e.Tilt - rest
		}
	}
	return math.NaN()
}

// A Tread is what comes of pushing with the feet on the floor.
type Tread struct {
	Load      string
	Ahead     float64 // how far the feet stand ahead of the hips, along the floor, at the rest, m
	Reaches   bool    // they stand where the legs are not stretched; else nothing of the following is known
	OneDegree float64 // on a scale under the feet for one degree back, N; NaN where that is more than the own weight, or none
	Force     float64 // with which the rock is made, N
	Turn      float64 // that it makes, from the rest to the turn, rad, + back; NaN where it does not come back
	Made      string  // how that ends the rocking; "" where it comes back
	Hardest   float64 // the least steady push that ends its rocking, N
	None      bool    // none does, up to Hardest, the own weight
	EndedBy   string  // how that push ends it; "" where none does
}

// treadShare is with how much of the own weight people push off lightly; our judgement.
const treadShare = 0.1

// treads pushes off with the feet of everybody who can, with a force (N) and feet so far ahead of the hips, m; zero is a
// tenth of the weight, and under the knees.
func treads(r *check.Report, force, ahead float64) []Tread {
	var list []Tread
	for i := range r.Loads {
		l := &r.Loads[i]
		if l.Asked() && l.Posture == person.AtEase && l.Treads() {
			if t, stands := tread(r, l, force, ahead); stands {
				list = append(list, t)
			}
		}
	}
	return list
}

// tread pushes off with the feet of one load, all of the people riding as they sit; stands is false where that has no rest.
func tread(r *check.Report, l *check.Load, force, ahead float64) (t Tread, stands bool) {
	rig, feet := r.Treading(l, ahead)
	b := rig.Balance()
	if b.Outcome != sim.Rocks {
		return t, false
	}
	weight := (rig.Body.Mass - r.Loads[0].Rig.Body.Mass) * rig.Floor.FreeFall()
	hips, up := rig.Place(feet.Hips, b.Rest.Tilt)
	t = Tread{Load: l.Name, Ahead: feet.At - hips, OneDegree: math.NaN(), Force: force, Turn: math.NaN(), Hardest: math.NaN(), None: true}
	t.Reaches = math.Hypot(feet.At-hips, up-feet.Ankle) < feet.Reach
	if force == 0 {
		t.Force = treadShare * weight
	}
	if !t.Reaches {
		return t, true
	}
	if one := rig.Tread(b, feet.At, quantity.Deg); one <= weight {
		t.OneDegree = one
	}
	push := func(force float64) motion.Trace {
		feet.Force = force
		return motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt, Feet: feet},
			motion.Options{Duration: watched, Turns: bothSides, Losses: r.Losses(l)})
	}
	ends := func(force float64) string {
		trace := push(force)
		return trace.EndedBy()
	}
	if t.Made = ends(t.Force); t.Made == "" {
		t.Turn = firstTurn(push(t.Force), b.Rest.Tilt)
	}
	if t.Hardest, t.None = motion.Threshold(func(force float64) bool { return ends(force) != "" }, weight); !t.None {
		t.EndedBy = ends(t.Hardest)
	}
	return t, true
}
