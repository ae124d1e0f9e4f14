package check

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestUnequalOnEveryCurve: whatever the floor edge is made of, an unequal tail tip stands as much higher, and the
// piece turns on the floor by the difference of what both roll, over the track.
func TestUnequalOnEveryCurve(t *testing.T) {
	for name, draw := range map[string]piece.Rocker{
		"one arc": {Radius: 1.067, Nose: 0.43, Tail: 0.61},
		"three arcs": {Nose: 0.43, Arcs: []piece.Arc{{Radius: 0.95, Length: 0.3}, {Radius: 1.067, Length: 0.35},
			{Radius: 1.5, Length: 0.4}}},
		"a flat": {Nose: 0.43, Arcs: []piece.Arc{{Radius: 1, Length: 0.4}, {Flat: 0.06}, {Radius: 1, Length: 0.5}}},
	} {
		d := readingChair()
		draw.Unequal = 0.004
		d.Rocker = draw
		r, err := Check(d)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		left, ok := risen(r.Edge, draw.Unequal)
		if rise := left.Tail().Y - r.Edge.Tail().Y; !ok || math.Abs(rise-draw.Unequal) > 1e-9 {
			t.Errorf("%s: the tail tip rises by %v, want %v", name, rise, draw.Unequal)
		}
		rolled := func(p rocker.Profile, roll float64) float64 {
			i, within := p.Find(roll)
			return p.Bearing(i).RolledAt(within)
		}
		w := r.Walk(&r.Loads[0])
		track, _ := d.Track()
		want := (rolled(r.Edge, w.To) - rolled(r.Edge, w.From) - rolled(left, w.To) + rolled(left, w.From)) / track
		if w.OneCurve || !(math.Abs(w.Heading) > 1e-4) || math.Abs(w.Heading-want) > 1e-12 || math.IsNaN(w.Enough) {
			t.Errorf("%s: it turns by %v rad, want %v; equal enough within %v m", name, w.Heading, want, w.Enough)
		}
	}
}

// TestLeaningScales: who leans over an arm goes to the side as far as stature tells, and a child's chair is
// judged by a child's lean: by hand, the margin is atan((track/2 − share·lean)/H). Who is given by plain numbers, 0
// here, leans as the mean man of the survey (1.756 m, ANSUR II).
func TestLeaningScales(t *testing.T) {
	for _, stature := range []float64{1.10, 1.756, 1.95, 0} {
		d := readingChair()
		if stature > 0 {
			d.Sitters = []piece.Sitter{{Name: "owner", Mass: 24 * stature * stature}}
			d.Sitters[0].Person.Sizes[person.Stature] = stature
		} else {
			stature = 1.756
		}
		r := checked(t, d)
		track, _ := d.Track()
		var sitting Load
		for _, l := range r.Loads {
			if l.Name == "owner, at ease" {
				sitting = l
			}
		}
		lean := 0.20 * stature / 1.756
		off := lean * sitting.Rider().Mass / sitting.Rig.Body.Mass
		want := math.Atan2(track/2-off, sitting.Balance.Rest.Height)
		found := false
		for _, s := range r.Sideways() {
			if s.Load == "owner, leaning over an arm" {
				found = true
				if math.Abs(s.Lean-lean) > 1e-12 || math.Abs(s.Angle-want) > 1e-12 {
					t.Errorf("%v m tall: leans %v m, %v rad are left; want %v and %v", stature, s.Lean, s.Angle, lean, want)
				}
			}
		}
		if !found {
			t.Errorf("nobody leans over an arm: %+v", r.Sideways())
		}
	}
}

// TestFloorIsTaken: a drawn piece of which no floor is said stands on the usual one of its kind; whatever is said of a
// floor, and plain numbers, stay.
func TestFloorIsTaken(t *testing.T) {
	for kind := piece.Chair; kind <= piece.Horse; kind++ {
		d := sized()
		d.Kind = kind
		d.Floor.Slope = quantity.Deg
		on, taken := d.OnItsFloor()
		if !taken || on.Floor.Surface == piece.NoSurface || on.Floor.Slope != quantity.Deg {
			t.Errorf("%v: %+v, %v", kind, on.Floor, taken)
		}
	}
	for name, change := range map[string]func(d *piece.Design){
		"a surface":      func(d *piece.Design) { d.Floor.Surface = piece.Rug },
		"a friction":     func(d *piece.Design) { d.Floor.Friction = 0.2 },
		"a loss":         func(d *piece.Design) { d.Floor.Halves = 5 },
		"a body":         func(d *piece.Design) { d.Body.Mass = 12 },
		"a plain sitter": func(d *piece.Design) { d.Sitters = readingChair().Sitters },
	} {
		d := sized()
		change(&d)
		if on, taken := d.OnItsFloor(); taken || on.Floor != d.Floor {
			t.Errorf("with %s the floor becomes %+v", name, on.Floor)
		}
	}
}

// TestWalkIsKept holds that like, parallel rockers do not walk, that a difference at the
// tips does, and that the difference said to be enough scrubs as much as is unnoticed.
func TestWalkIsKept(t *testing.T) {
	d := sized()
	r := checked(t, d)
	w := r.Walk(&r.Loads[1])
	if w == nil || !w.OneCurve || w.Heading != 0 || w.Scrub != 0 {
		t.Fatal(w)
	}
	r.Design.Rocker.Unequal = w.Enough
	again := r.Walk(&r.Loads[1])
	if math.Abs(again.Scrub/Unnoticed-1) > 0.02 { // from a trial of 1 mm, straight
		t.Errorf("scrub %v, want %v", again.Scrub, Unnoticed)
	}
	left := tape(must(risen(r.Edge, w.Enough)))
	right := tape(r.Edge)
	if got := left.TailTip - right.TailTip; math.Abs(got/w.Enough-1) > 1e-6 { // the radius by halving
		t.Errorf("the tail tip rises by %v, want %v", got, w.Enough)
	}
}

func must[T any](x T, ok bool) T {
	if !ok {
		panic("not one arc")
	}
	return x
}

func vec(x, y float64) r2.Vec { return r2.Vec{X: x, Y: y} }

// TestWalkFollowsTheSlope: a load rocks ten degrees either way of where it rests on its floor, measured along the
// edge; a tip that no bend can raise so far is told. What is taken as unnoticed is less than a tape shows.
func TestWalkFollowsTheSlope(t *testing.T) {
	d := sized()
	d.Floor.Slope = 3 * quantity.Deg
	r := checked(t, d)
	for i := range r.Loads {
		l := &r.Loads[i]
		w := r.Walk(l)
		if !near((w.From+w.To)/2, l.Balance.Rest.Tilt-d.Floor.Slope, 1e-12) || !near(w.To-w.From, 20*quantity.Deg, 1e-12) {
			t.Errorf("%s rests at %v and rocks from %v to %v", l.Name, l.Balance.Rest.Tilt, w.From, w.To)
		}
	}
	for by, can := range map[float64]bool{0.05: true, -0.05: true, 0.15: false, -0.12: false, 5: false} { // it stands 0.12 m up
		if _, ok := risen(rocker.Single(1, 0.4, 0.5), by); ok != can {
			t.Errorf("a tip is bent up by %v m: %v", by, ok)
		}
	}
	if _, ok := risen(rocker.Single(0.5, 1.5, 0.3), 0.1); ok { // its long nose curls in before
		t.Error("a short tail is bent up by 0.1 m")
	}
	if !multiple(Unnoticed, quantity.In/64) || !(Unnoticed < quantity.In/16) {
		t.Errorf("%v m of scrub are unnoticed", Unnoticed)
	}
	last := r.Releases[len(r.Releases)-1]
	if !slices.IsSorted(r.Releases) || !multiple(last, quantity.Deg) || last > math.Pi/6 { // a release further goes over mostly
		t.Errorf("let go from %v", r.Releases)
	}
	d.Measured.ScaleStep = 0.4
	if got := readingsOf(d, r.Edge, nil).ScaleError; got != 0.2 {
		t.Errorf("scales that show each 0.4 kg are off by %v at most", got)
	}
}

// TestAtTheEndOfASettee: who sits at the end has the balance point as far in from the end of any seat, never past its
// middle; further than half a pair of hips (0.17 m and more, ANSUR II), and by no more than a hand.
func TestAtTheEndOfASettee(t *testing.T) {
	end := func(width float64) float64 {
		d := sized()
		d.Kind, d.Seat.Width = piece.Settee, width
		r := checked(t, d)
		i := slices.IndexFunc(r.Sideways(), func(s Sideway) bool { return s.Load == "one at the end, at ease" })
		return r.Sideways()[i].Lean
	}
	in := 0.6 - end(1.2)
	if !near(0.7-end(1.4), in, 1e-12) || !multiple(in, 0.01) || in < 0.17 || in > 0.30 || end(0.4) != 0 {
		t.Errorf("one sits %v and %v in from the end, of a narrow one %v beside the middle", in, 0.7-end(1.4), end(0.4))
	}
}
