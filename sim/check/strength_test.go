package check

import (
	"errors"
	"math"
	"strings"
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

// TestBackGives: a back twice as thick yields about an eighth, and the piece rests less far back; one without braces
// does not give, and braces have a thickness.
func TestBackGives(t *testing.T) {
	if _, err := Check(braced(0)); err == nil {
		t.Error("braces without a thickness are taken")
	}
	thin := checked(t, braced(0.008))
	thick := checked(t, braced(0.016))
	noBraces := braced(0.01)
	noBraces.Back.Braces = piece.Braces{}
	stiff := checked(t, noBraces)
	const load = "owner, at ease"
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
}

// TestBackByStatics holds a back that gives by hand, at the rest that was found: trunk, head and upper arms would turn
// about the hip joints and bear on the braces at the shoulder blades; the braces are a bar on two ends, as any textbook
// has it; who leans turns by as much. Also with a cushion, with legs cut, and of two on a settee.
func TestBackByStatics(t *testing.T) {
	const elastic, rupture = 12.0e9, 103.0e6 // white ash, Pa (Wood Handbook, FPL-GTR-190, table 5-3a)
	for name, change := range map[string]func(d *piece.Design){
		"plain":   func(*piece.Design) {},
		"cushion": func(d *piece.Design) { d.Seat.Cushion = 0.04 },
		"cut":     func(d *piece.Design) { d.Seat.RearCut = 0.02 },
		"settee":  func(d *piece.Design) { d.Kind = piece.Settee },
	} {
		d := braced(0.009)
		change(&d)
		r := checked(t, d)
		load, people := "owner, at ease", 1.0
		if d.Kind == piece.Settee {
			load, people = "both, at ease", 2
		}
		l := find(t, r, load)
		one := r.Somebody[0].Person
		joints := one.Pose(seatOf(d, l.Give.Turn), person.AtEase).Joints
		on := one.OnTheBack(joints)
		turn := l.Balance.Rest.Tilt + r.carry.Turn
		sin, cos := math.Sincos(turn)
		behind := -((on.Centre.X-joints.Hip.X)*cos - (on.Centre.Y-joints.Hip.Y)*sin)
		force := people * on.Mass * 9.80665 * behind / one.Blades()
		a := one.Blades() + one.HipUp() + d.Seat.Cushion
		b := 0.66 - a
		second := 7 * 0.028 * math.Pow(0.009, 3) / 12
		yield := force * a * a * b * b / (3 * elastic * second * 0.66)
		stress := force * a * b / 0.66 * 0.0045 / second
		for _, tt := range []struct {
			what      string
			got, want float64
		}{
			{"force", l.Give.Force, force}, {"yield", l.Give.Yield, yield}, {"turn", l.Give.Turn, math.Atan(yield / one.Blades())},
			{"stress", l.Give.Stress, stress}, {"share", l.Give.Share, stress / rupture},
			// two standard deviations of 16 in 100, in stronger and in weaker wood
			{"least", l.Give.Least, stress / (1.32 * rupture)}, {"most", l.Give.Most, stress / (0.68 * rupture)},
		} {
			if !near(tt.got/tt.want, 1, 1e-9) {
				t.Errorf("%s, %s: %v, by statics %v", name, tt.what, tt.got, tt.want)
			}
		}
	}
}

// TestRockerBendsOnItsTip holds the cantilever by hand: stood on a tip, a section so far along an arc is R·sin of their
// angle away from it, and the floor's force bends it with 6·F·arm/(w·h²). Its grain lies level in a sawn rocker, and
// follows the edge in a bent one; the wood's strength has a spread, and across the grain a range that is published.
// No section between tip and leg is worse than the one that is told.
func TestRockerBendsOnItsTip(t *testing.T) {
	const radius, width, strength = 1.05, 0.03, 101.0e6 // black walnut, Pa (Wood Handbook, FPL-GTR-190, table 5-3a)
	for top := piece.Concentric; top <= piece.Taper; top++ {
		d := braced(0.01)
		d.Rocker = piece.Rocker{Radius: radius, Nose: 0.45, Tail: 0.60, Depth: 0.18, Width: width, Wood: "black walnut",
			Top: top, NoseDepth: 0.04, TailDepth: 0.05}
		r, err := Check(d)
		if err != nil || len(r.Bending) != 2 {
			t.Fatal(err, r.Bending)
		}
		heaviest := 0.0
		for _, l := range r.Loads {
			heaviest = max(heaviest, l.Rig.Body.Mass)
		}
		force := heaviest * 9.80665 / 2 // on one of two rockers
		for _, b := range r.Bending {
			end, tip, leg := 0.45, 0.04, d.Seat.FrontEdge().X
			if b.Tail {
				end, tip, leg = 0.60, 0.05, d.Seat.Behind
			}
			section := func(from float64) (s Section) {
				s.From, s.Grain = from, math.Abs(end-from)/radius
				depth := 0.18
				switch top {
				case piece.Straight:
					depth -= radius * (1 - math.Cos(s.Grain))
				case piece.Taper:
					depth += (tip - depth) * math.Pow((end-from)/end, 2)
				}
				s.Stress = 6 * force * radius * math.Sin(from/radius) / (width * depth * depth)
				s.Least, s.Most = s.Stress/strength/1.32, s.Stress/strength/0.68
				return s
			}
			sawn := func(from float64) Section { // by Hankinson's formula over n from 1.5 to 2, q from 0.04 to 0.10
				s, best, worst := section(from), 0.0, math.Inf(1)
				for _, n := range []float64{1.5, 2} {
					for _, q := range []float64{0.04, 0.10} {
						share := q / (math.Pow(math.Sin(s.Grain), n) + q*math.Pow(math.Cos(s.Grain), n))
						best, worst = max(best, share), min(worst, share)
					}
				}
				s.Least, s.Most = s.Least/best, s.Most/worst
				return s
			}
			to := end - radius*math.Asin(leg/radius) // where the leg stands over the edge
			for made, by := range map[piece.Made]func(float64) Section{piece.Laminated: section, piece.Sawn: sawn} {
				got := b.At(made)
				want, worst := by(got.From), 0.0
				for i := range 10000 {
					worst = max(worst, by(to*float64(i)/10000).Most)
				}
				if !near(got.Stress/want.Stress, 1, 1e-9) || !near(got.Grain, want.Grain, 1e-9) || !near(got.Least/want.Least, 1, 1e-9) ||
					!near(got.Most/want.Most, 1, 1e-9) ||
					!near(got.Most/worst, 1, 0.02) { // it looks each 1/400 of the edge, 1/60 of the arm here
					t.Errorf("top %v, tail %v, made %v: %+v, by hand there %+v, at the worst %v", top, b.Tail, made, got, want, worst)
				}
			}
			if b.Force != force {
				t.Errorf("the floor holds %v N, want %v", b.Force, force)
			}
		}
	}
}

// TestHankinson holds both ends of the formula: along the grain all of the strength, across it the part q; and a grain
// that leans one way is as strong as one that leans the other.
func TestHankinson(t *testing.T) {
	for _, n := range []float64{1.5, 2} {
		if up, down := hankinson(0.4, n, 0.07), hankinson(-0.4, n, 0.07); up != down || !near(hankinson(math.Pi-0.4, n, 0.07), up, 1e-12) {
			t.Errorf("leaning by 0.4 rad %v, the other way %v", up, down)
		}
		if got := hankinson(0, n, 0.07); got != 1 {
			t.Errorf("along the grain %v", got)
		}
		if got := hankinson(math.Pi/2, n, 0.07); math.Abs(got-0.07) > 1e-15 {
			t.Errorf("across the grain %v", got)
		}
	}
}

// TestWoodIsKnown: a wood that there is not is told, also where no size of the rocker asks for its strength.
func TestWoodIsKnown(t *testing.T) {
	for _, depth := range []float64{0, 0.057} {
		d := readingChair()
		d.Rocker.Wood, d.Rocker.Depth = "wallnut", depth
		_, err := Check(d)
		var wrong *piece.KeyError
		if !errors.As(err, &wrong) || wrong.Key != "rocker.wood" || !strings.Contains(wrong.Reason, `"Walnut, black"`) {
			t.Errorf("depth %v: %v", depth, err)
		}
	}
}
