package check

import (
	"math"
	"slices"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// sized is the reading chair with its owner by size.
func sized() piece.Design {
	d := readingChair()
	d.Seat.Behind = 9 * quantity.In
	d.Sitters = []piece.Sitter{{Name: "owner", Mass: 82, Person: person.Given{Sizes: person.Measures{person.Stature: 1.78}}}}
	return d
}

func names(t *testing.T, d piece.Design) []string {
	t.Helper()
	r := checked(t, d)
	var list []string
	for _, l := range r.Loads {
		list = append(list, l.Name)
	}
	return list
}

// TestLoadsByKind holds who is checked without being asked, and in what order.
func TestLoadsByKind(t *testing.T) {
	chair := sized()
	settee := sized()
	settee.Kind = piece.Settee
	two := sized()
	two.Kind = piece.Settee
	two.Sitters = append(two.Sitters, piece.Sitter{Name: "companion", Mass: 60})
	child := sized()
	child.Sitters = []piece.Sitter{{Name: "child of 5", Person: person.Given{Age: 5}}}
	horse := plain(1.2, 0.5, 0.5, 12, r2.Vec{Y: 0.4}, 1)
	horse.Kind, horse.Seat = piece.Horse, piece.Seat{Rear: 0.6, Behind: 0.12}
	horse.Sitters = []piece.Sitter{{Name: "own", Person: person.Given{Age: 4}}}
	cradle := plain(0.8, 0.3, 0.3, 12, r2.Vec{Y: 0.2}, 1)
	cradle.Kind, cradle.Bed = piece.Cradle, piece.Bed{Height: 0.12, Length: 0.85, Width: 0.42}
	endwise := cradle
	endwise.Rocks = piece.End
	for _, tt := range []struct {
		name   string
		design piece.Design
		want   string
	}{
		{"chair", chair, "empty|owner, at ease|owner, feet off|owner, rising|owner, upright|owner, pushing up|owner, child on the lap|" +
			"owner, arms behind the head|small woman, at ease|large man, at ease|child on the tail|child on the tail, holding the back"},
		{"settee", settee, "both, at ease|both, feet off|both, rising|both, upright|one at the end, at ease|small woman, at ease"},
		{"two on a settee", two, "empty|both, at ease"},
		{"child's chair", child, "child of 5, at ease|younger child, at ease|older child, at ease|child on the tail"},
		{"horse", horse, "empty|own, riding|own, leaning forward|own, leaning back|child of 3, riding|" +
			"child of 3, leaning forward|child of 3, leaning back|child of 8, riding"},
		{"cradle", cradle, "empty|newborn, in the middle|newborn, at the right side|newborn, at the left side|five months, in the middle"},
		{"cradle end to end", endwise, "empty|newborn, in the middle|newborn, at the foot|newborn, at the head|five months, in the middle"},
	} {
		got := names(t, tt.design)
		rest := got
		for _, want := range strings.Split(tt.want, "|") {
			i := slices.Index(rest, want)
			if i < 0 {
				t.Errorf("%s: %q is not checked, or out of order: %v", tt.name, want, got)
				break
			}
			rest = rest[i+1:]
		}
	}
	if got := names(t, two); slices.ContainsFunc(got, func(n string) bool { return strings.HasPrefix(n, "companion, ") }) {
		t.Errorf("two on a settee sit apart: %v", got)
	}
}

// TestTwoWeighTwo holds that two alike on a settee are twice the body of one.
func TestTwoWeighTwo(t *testing.T) {
	d := sized()
	d.Kind = piece.Settee
	r := checked(t, d)
	both, one := find(t, r, "both, at ease").Person, find(t, r, "one at the end, at ease").Person
	if math.Abs(both.Mass-2*one.Mass) > 1e-12 || r2.Norm(r2.Sub(both.Centre, one.Centre)) > 1e-12 ||
		math.Abs(both.Inertia-2*one.Inertia) > 1e-12 {
		t.Errorf("two are %+v, one %+v", both, one)
	}
}

// TestSwitchedOffAndReplaced holds that each usual person can be left out, or given by
// the maker.
func TestSwitchedOffAndReplaced(t *testing.T) {
	for u := range piece.Usuals {
		usual := piece.Usual(u)
		for _, kind := range []piece.Kind{piece.Chair, piece.Settee} {
			d := sized()
			d.Kind = kind
			d.People.Without[usual] = true
			for _, n := range names(t, d) {
				if strings.HasPrefix(n, usual.String()) || strings.HasSuffix(n, usual.String()) {
					t.Errorf("%v: %v is switched off, and %q is checked", kind, usual, n)
				}
			}
		}
	}
	d := sized()
	d.Sitters = append(d.Sitters, piece.Sitter{Name: "large man", Role: piece.Other, Mass: 140})
	r := checked(t, d)
	if l := find(t, r, "large man, at ease"); math.Abs(l.Rider().Mass+onFloor(l)-140) > 1e-9 {
		t.Errorf("the maker's large man weighs %v", l.Rider().Mass+onFloor(l))
	}
	d = sized()
	d.Sitters[0].Posture = person.FeetOff
	if got := names(t, d); !slices.Contains(got, "owner, feet off") || slices.Contains(got, "owner, upright") {
		t.Errorf("one posture was asked, got %v", got)
	}
}

// TestNumbersStayAlone holds that a design of plain numbers has the loads it names and
// no others.
func TestNumbersStayAlone(t *testing.T) {
	d := sized()
	d.Sitters = []piece.Sitter{{Name: "rider", Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 8}}
	if got := names(t, d); len(got) != 2 {
		t.Errorf("loads %v", got)
	}
	alone := plain(1, 0.4, 0.5, 12, r2.Vec{Y: 0.4}, 1)
	if got := names(t, alone); len(got) != 1 {
		t.Errorf("loads %v", got)
	}
	if r, err := Check(alone); err != nil || r.Seated() != &r.Loads[0] {
		t.Errorf("of a piece alone %v stands for the owner: %v", r.Seated(), err)
	}
}

// TestWhoElseMaySit: a child's chair is checked with one two years younger and one three years older, as far as
// growth charts reach, who are small and large for their age; a grown-up's with the survey's ends.
func TestWhoElseMaySit(t *testing.T) {
	for age, want := range map[float64][2]float64{5: {3, 8}, 3: {2, 6}, 11: {9, 12}} {
		d := sized()
		d.Sitters = []piece.Sitter{{Name: "child", Person: person.Given{Age: age}}}
		r := checked(t, d)
		for i, percentile := range []float64{5, 95} {
			p, err := person.New(person.Given{Age: want[i], Percentile: percentile})
			if err != nil || r.Somebody[1+i].Person.Sizes != p.Sizes {
				t.Errorf("beside a child of %v: %+v, want one of %v; %v", age, r.Somebody[1+i].Person.Sizes, want[i], err)
			}
		}
	}
}

// TestSeatCarriesWhatTheFloorDoesNot: of everybody in any posture the piece and the floor carry all, a child on the lap
// included; and hands reach as far forward as the arms are drawn.
func TestSeatCarriesWhatTheFloorDoesNot(t *testing.T) {
	for _, kind := range []piece.Kind{piece.Chair, piece.Settee} {
		for _, length := range []float64{0, 0.30} {
			d := sized()
			d.Kind, d.Arms.Length = kind, length
			r := checked(t, d)
			standing := 0
			for _, l := range r.Loads {
				people := 0.0
				for _, one := range l.people {
					people += one.Person.Sizes[person.Mass]
				}
				if l.Posture == person.ChildOnLap {
					people += l.people[0].lap.Sizes[person.Mass]
				}
				if len(l.people) > 0 && !near(l.Rider().Mass+onFloor(&l), people, 1e-9) {
					t.Errorf("%s: the piece carries %v, the floor %v of %v kg", l.Name, l.Rider().Mass, onFloor(&l), people)
				}
				if l.Standing > 0 {
					standing++
				}
			}
			if standing < 2 { // rising, pushing up
				t.Errorf("%v: the floor carries part of %d loads", kind, standing)
			}
			arm := d.Members(r.Edge)[2]
			if got := seatOf(d, 0).Reach; !near(got, arm.Axis[1].X-d.Seat.Meet().X, 1e-12) {
				t.Errorf("the arms reach %v m, drawn to %v", got, arm.Axis[1].X)
			}
		}
	}
}

// onFloor returns what the floor carries of who is on a load at its rest, kg.
func onFloor(l *Load) float64 {
	sum := l.Standing
	for _, f := range l.Feet {
		sum += f.Carried
	}
	return sum
}

// TestPeopleRideOnASlidSeat holds that who is posed by sizes is carried with the seat.
func TestPeopleRideOnASlidSeat(t *testing.T) {
	d := sized()
	before := checked(t, d)
	d.Seat.Slide = 0.5 * quantity.In
	d.Rocker.Top = piece.Straight
	after := checked(t, d)
	a, b := find(t, before, "owner, upright"), find(t, after, "owner, upright")
	if moved := r2.Sub(b.Person.Centre, a.Person.Centre); r2.Norm(r2.Sub(moved, r2.Vec{X: 0.5 * quantity.In})) > 1e-12 {
		t.Errorf("the person moved by %v", moved)
	}
	if moved := r2.Sub(b.Figures[0].Hip, a.Figures[0].Hip); r2.Norm(r2.Sub(moved, r2.Vec{X: 0.5 * quantity.In})) > 1e-12 {
		t.Errorf("the joints moved by %v", moved)
	}
}
