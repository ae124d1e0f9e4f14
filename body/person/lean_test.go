package person

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestLeansAsItSays: a rider's neck is over the hip joints, ahead of them or behind, as the posture says.
func TestLeansAsItSays(t *testing.T) {
	rider := person(t, Given{Age: 5})
	saddle := Seat{Meet: r2.Vec{Y: 0.5}}
	ahead := func(posture Posture) float64 {
		j := rider.Pose(saddle, posture).Joints
		return j.Neck.X - j.Hip.X
	}
	if forward, back := ahead(RidingForward), ahead(RidingBack); !(forward > 0.05) || math.Abs(forward+back) > 1e-12 || ahead(Riding) != 0 {
		t.Errorf("forward %v m, back %v m, upright %v m", forward, back, ahead(Riding))
	}
}

// TestSolesOnTheFloor: on a seat that is not too high the soles of who sits stand flat on the floor, whatever its fall.
func TestSolesOnTheFloor(t *testing.T) {
	p := person(t, Given{Sizes: Measures{Stature: 1.75, Mass: 80}})
	for _, height := range []float64{0.30, 0.36, 0.40} {
		for _, fall := range []float64{0, 0.05, 0.1, 0.2} {
			j := p.Pose(Seat{Meet: r2.Vec{Y: height - 0.4*fall}, Fall: fall, Depth: 0.4, Backed: true, Recline: 0.3}, AtEase).Joints
			if math.Abs(j.Heel.Y) > 1e-9 || math.Abs(j.Toe.Y) > 1e-9 {
				t.Errorf("seat %v m high, falling %v: heel at %v, toe at %v", height, fall, j.Heel.Y, j.Toe.Y)
			}
		}
	}
}

// Who is about to rise sits as far behind the front edge whoever it is and however deep the seat, soles on the floor,
// trunk and head forward of plumb, the head less; who sits at ease has the trunk along the back, whatever its recline.
func TestWhereTheyLean(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 6))
	behind := 0.0
	for range 100 {
		p := person(t, Given{Sex: Sex(r.IntN(3)), Percentile: 5 + 90*r.Float64()})
		s := stool(p)
		s.Depth = 0.4 + 0.2*r.Float64()
		rising := p.Pose(s, Rising)
		j := rising.Joints
		lean := func(from, to r2.Vec) float64 { return math.Atan2(to.X-from.X, to.Y-from.Y) }
		if trunk, head := lean(j.Hip, j.Neck), lean(j.Neck, j.Vertex); !(trunk > head && head > 0) || j.Heel.Y != j.Toe.Y ||
			math.Abs(j.Heel.Y-s.Floor) > 1e-9 {
			t.Errorf("rising: trunk %v, head %v rad forward; heel at %v over a floor at %v", trunk, head, j.Heel.Y, s.Floor)
		}
		s.Recline = 0.3 + 0.3*r.Float64()
		eased := p.Pose(s, AtEase).Joints
		edge := s.Depth - rising.Body.Centre.X
		off := r2.Dot(r2.Sub(eased.Shoulder, eased.Hip), ahead(s.Recline))
		if behind == 0 {
			behind = edge
		}
		if math.Abs(edge-behind) > 1e-9 || math.Abs(off) > 1e-9 || !(behind > 0.05) {
			t.Errorf("rising %v behind the front edge, others %v; shoulders %v off the line of the back", edge, behind, off)
		}
	}
}

// Forearms that reach them lie level on the arms of the seat, whatever their height, over them by the thickness of a
// forearm; the elbows are not behind the shoulders.
func TestForearmsOnTheArms(t *testing.T) {
	p := person(t, Given{Sex: Man})
	s := stool(p)
	over := 0.0
	for s.Arms = 0.26; s.Arms < 0.34; s.Arms += 0.02 {
		j := p.Pose(s, Upright).Joints
		if over == 0 {
			over = j.Elbow.Y - s.Arms
		}
		if math.Abs(j.Elbow.Y-s.Arms-over) > 1e-12 || math.Abs(j.Wrist.Y-j.Elbow.Y) > 1e-12 || !(over > 0 && over < 0.06) ||
			j.Elbow.X < j.Shoulder.X || !(j.Wrist.X > j.Elbow.X) {
			t.Errorf("arms %v m up: elbow at %v, wrist at %v", s.Arms, j.Elbow, j.Wrist)
		}
	}
	s.Arms = 0.24 // too low for the elbows: the wrists come down to them
	if j := p.Pose(s, Upright).Joints; math.Abs(j.Wrist.Y-s.Arms-over) > 1e-12 || j.Elbow.X != j.Shoulder.X || j.Elbow.Y < j.Wrist.Y {
		t.Errorf("low arms: shoulder at %v, elbow at %v, wrist at %v", j.Shoulder, j.Elbow, j.Wrist)
	}
}

// TestKneesAndReach: on a seat that is not low the thighs lie alike with the feet on the floor and off it; astride the
// knees are ahead of the hips and under them; an arm that does not reach is stretched towards what it reaches for.
func TestKneesAndReach(t *testing.T) {
	p := person(t, Given{Sex: Man})
	s := stool(p)
	if off, eased := p.Pose(s, FeetOff).Joints, p.Pose(s, AtEase).Joints; r2.Norm(r2.Sub(off.Knee, eased.Knee)) > 1e-12 {
		t.Errorf("the knees are at %v with the feet off, at ease at %v", off.Knee, eased.Knee)
	}
	if j := p.Pose(s, Riding).Joints; !(j.Knee.X > j.Hip.X && j.Knee.Y < j.Hip.Y) {
		t.Errorf("astride: knees %v, hips %v", j.Knee, j.Hip)
	}
	from, to := r2.Vec{X: 1, Y: 2}, r2.Vec{X: 4, Y: 6}
	elbow, wrist := twoBars(from, to, 0.3, 0.2)
	if want := r2.Add(from, r2.Scale(0.5/5, r2.Sub(to, from))); r2.Norm(r2.Sub(wrist, want)) > 1e-12 ||
		math.Abs(r2.Norm(r2.Sub(elbow, from))-0.3) > 1e-12 || math.Abs(r2.Norm(r2.Sub(wrist, elbow))-0.2) > 1e-12 {
		t.Errorf("stretched: elbow %v, wrist %v, want it at %v", elbow, wrist, want)
	}
}
