package check

import (
	"math"
	"testing"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// braced is the reading chair with a person by size and braces of a thickness.
func braced(thick float64) piece.Design {
	d := readingChair()
	d.Sitters = []piece.Sitter{{Name: "owner", Mass: 82, Person: person.Given{Sizes: person.Measures{person.Stature: 1.78}}}}
	d.Back.Braces = piece.Braces{Count: 7, Width: 0.028, Thickness: thick, Length: 0.66, Wood: "white ash"}
	return d
}

// find returns the load of a name.
func find(t *testing.T, r Report, name string) *Load {
	t.Helper()
	for i := range r.Loads {
		if r.Loads[i].Name == name {
			return &r.Loads[i]
		}
	}
	t.Fatalf("there is no load %q", name)
	return nil
}

// TestBackGives holds that yield, load and rest agree with each other: the force is that
// of the leaning trunk at the rest found, the yield that of the beam under it, and the
// trunk leans by that much more. A back twice as thick yields about an eighth.
func TestBackGives(t *testing.T) {
	if _, err := Check(braced(0)); err == nil {
		t.Error("braces without a thickness are taken")
	}
	thin, err := Check(braced(0.008))
	if err != nil {
		t.Fatal(err)
	}
	thick, err := Check(braced(0.016))
	if err != nil {
		t.Fatal(err)
	}
	noBraces := braced(0.01)
	noBraces.Back.Braces = piece.Braces{}
	stiff, err := Check(noBraces)
	if err != nil {
		t.Fatal(err)
	}
	const load = "owner, lying back"
	a, b, c := find(t, thin, load), find(t, thick, load), find(t, stiff, load)
	if c.Give != nil {
		t.Error("a back without braces gives")
	}
	if ratio := a.Give.Yield / b.Give.Yield; ratio < 7.5 || ratio > 9.5 { // 2³, and more weight on the back that leans further
		t.Errorf("a back twice as thick yields %v times less", ratio)
	}
	if !(a.Balance.Rest.Tilt > b.Balance.Rest.Tilt && b.Balance.Rest.Tilt > c.Balance.Rest.Tilt) {
		t.Errorf("rests at %v with thin braces, %v with thick, %v stiff", a.Balance.Rest.Tilt, b.Balance.Rest.Tilt, c.Balance.Rest.Tilt)
	}
	d := braced(0.008)
	bar, strength, err := d.Back.Braces.Beam()
	if err != nil {
		t.Fatal(err)
	}
	one, err := SittersOf(d)
	if err != nil {
		t.Fatal(err)
	}
	s := Load{Posture: person.LyingBack, people: one[:1]}
	s.pose(d, a.Give.Turn)
	if again := s.give(d, a.Balance.Rest.Tilt, bar); math.Abs(again.Turn-a.Give.Turn) > 1e-9 || math.Abs(again.Force-a.Give.Force) > 1e-6 {
		t.Errorf("at the rest found the back gives %+v, was said to give %+v", again, *a.Give)
	}
	if math.Abs(a.Give.Share*strength-a.Give.Stress) > 1e-3 {
		t.Errorf("share %v of %v Pa is not %v Pa", a.Give.Share, strength, a.Give.Stress)
	}
}

// TestRockerBends holds the cantilever by hand: on a nearly straight rocker the stress at
// the leg is 6·F·(distance to the tip)/(w·h²).
func TestRockerBends(t *testing.T) {
	d := braced(0.01)
	d.Rocker = piece.Rocker{Radius: 50, Nose: 0.45, Tail: 0.60, Depth: 0.06, Width: 0.03, Wood: "black walnut"}
	d.Limits = piece.Limits{}
	r, err := Check(d)
	if err != nil || len(r.Bending) != 2 {
		t.Fatal(err, r.Bending)
	}
	for _, b := range r.Bending {
		arm := 0.60 - d.Seat.Behind
		if !b.Tail {
			arm = 0.45 - d.Seat.FrontEdge().X
		}
		want := 6 * b.Force * arm / (0.03 * 0.06 * 0.06)
		if math.Abs(b.Along.Stress/want-1) > 0.02 { // the worst of 400 sections, and a curve of 50 m
			t.Errorf("tail %v: %v Pa at the leg, want %v", b.Tail, b.Along.Stress, want)
		}
	}
	heaviest := find(t, r, "large man, sitting")
	if got := r.Bending[0].Force; math.Abs(got-heaviest.Rig.Body.Mass*heaviest.Rig.Floor.FreeFall()/2) > 1e-9 {
		t.Errorf("force %v, want half of %v", got, heaviest.Rig.Body.Mass*heaviest.Rig.Floor.FreeFall())
	}
}

// TestHankinson holds both ends of the formula: along the grain all of the strength,
// across it the part q.
func TestHankinson(t *testing.T) {
	for _, n := range []float64{1.5, 2} {
		if got := hankinson(0, n, 0.07); got != 1 {
			t.Errorf("along the grain %v", got)
		}
		if got := hankinson(math.Pi/2, n, 0.07); math.Abs(got-0.07) > 1e-15 {
			t.Errorf("across the grain %v", got)
		}
	}
}
