package size

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

const (
	degree = math.Pi / 180
	pound  = 0.45359237
)

// readingChair is the chair of the built-in example, in numbers.
func readingChair() piece.Design {
	return piece.Design{
		Rocker: piece.Rocker{Radius: 42 * inch, Nose: 17 * inch, Tail: 24 * inch},
		Seat:   piece.Seat{Front: 16.5 * inch, Rear: 15.875 * inch, Depth: 18 * inch, Width: 20 * inch, Behind: 9 * inch},
		Back:   piece.Back{Recline: 15 * degree, Height: 28 * inch},
		Arms:   piece.Arms{Height: 8 * inch},
		Piece:  piece.Piece{Mass: 26 * pound},
		Sitters: []piece.Sitter{{
			Name: "owner", Mass: 180 * pound,
			Person: person.Given{Sizes: person.Measures{person.Stature: 70 * inch}},
		}},
		Limits: piece.Design{Kind: piece.Chair}.UsualLimits(),
	}
}

// plainChair is a chair in plain numbers, quick to balance: a body, and a sitter in three postures.
func plainChair(rng *rand.Rand) piece.Design {
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	d := piece.Design{
		Rocker: piece.Rocker{Radius: between(0.95, 1.3), Nose: between(0.38, 0.45), Tail: between(0.5, 0.7)},
		Body:   body.Body{Mass: between(8, 18), Centre: r2.Vec{X: between(-0.03, 0.03), Y: between(0.38, 0.48)}, Inertia: between(1, 2)},
		Seat:   piece.Seat{Front: between(0.39, 0.44), Rear: between(0.37, 0.40), Depth: 0.45, Behind: between(0.2, 0.25)},
		Back:   piece.Back{Recline: between(0.2, 0.32), Height: 0.7},
		Limits: piece.Limits{BackMargin: 15 * degree, BackLift: 0.020},
	}
	ahead := between(0.19, 0.23)
	d.Sitters = []piece.Sitter{{
		Name: "owner", Mass: between(50, 110),
		Posture: person.Upright, Placed: piece.Place{Ahead: ahead, Above: between(0.21, 0.25)},
		AtEase: piece.Place{Ahead: ahead - 0.05, Above: between(0.21, 0.24)},
		Rising: piece.Place{Ahead: ahead + 0.12, Above: 0.27},
	}}
	return d
}

// TestInversion holds that from the time, the steadiness and the proportion of a random chair
// each comes back to the radius it has, whatever radius it is drawn with.
func TestInversion(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		old := plainChair(rng)
		old.Floor.Slope = (rng.Float64() - 0.5) * 0.06
		drawn := old.Clone()
		drawn.Rocker.Radius *= 0.85 + 0.4*rng.Float64()
		l, err := Like(old, drawn)
		if err != nil {
			t.Fatal(err)
		}
		for _, k := range l.Kept {
			if k.Keep == SameProportion {
				continue // it scales the lengths too
			}
			if !k.Found {
				t.Fatalf("%v of %+v: not found", k.Keep, old)
			}
			got := drawn.Rocker.Radius * k.Scale
			// J/(m·g) and the rest carry a dozen roundings, magnified by R/(R − H) of some 3
			if math.Abs(got-old.Rocker.Radius) > 1e-12*old.Rocker.Radius {
				t.Errorf("%v: radius %v, want %v: off by %g", k.Keep, got, old.Rocker.Radius, got/old.Rocker.Radius-1)
			}
		}
	}
}

// TestClosedForm holds the radius against the formula worked by hand: H = 0.6, k = 0.35 m,
// T = 2 s, no sitter.
func TestClosedForm(t *testing.T) {
	const h, k, period = 0.6, 0.35, 2.0
	want := h + (k*k+h*h)*(2*math.Pi/period)*(2*math.Pi/period)/9.80665
	d := piece.Design{Rocker: piece.Rocker{Radius: want, Nose: 0.4, Tail: 0.5},
		Body: body.Body{Mass: 80, Centre: r2.Vec{Y: h}, Inertia: 80 * k * k}}
	r, err := check.Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	f, ok := FeelOf(r)
	if !ok || math.Abs(f.Period-period) > 1e-12 || math.Abs(f.RadiusForPeriod(period)-want) > 1e-12 || math.Abs(f.Radius-want) > 1e-12 {
		t.Errorf("%+v, want radius %v", f, want)
	}
}

// TestUnchangedReturnsItself holds that a piece is like itself.
func TestUnchangedReturnsItself(t *testing.T) {
	arcs := readingChair()
	arcs.Rocker = piece.Rocker{Nose: 17 * inch, Arcs: []piece.Arc{{Radius: 40 * inch, Length: 22 * inch},
		{Radius: 60 * inch, Length: 18 * inch}}}
	for name, d := range map[string]piece.Design{"one arc": readingChair(), "two arcs": arcs} {
		l, err := Like(d, d)
		if err != nil {
			t.Fatal(err)
		}
		for _, k := range l.Kept {
			if math.Abs(k.Scale-1) > 1e-12 || math.Abs(k.Design.Rocker.Radius-d.Rocker.Radius) > 1e-12 ||
				math.Abs(k.Design.Rocker.Tail-d.Rocker.Tail) > 1e-12 {
				t.Errorf("%s, %v: scale %v, %+v", name, k.Keep, k.Scale, k.Design.Rocker)
			}
		}
	}
}

// TestScaledPiece holds that a piece and its sitter scaled by s want the radius R·s for the
// same proportion, and then rock in √s of the time.
func TestScaledPiece(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 50 {
		old := plainChair(rng)
		s := 0.6 + rng.Float64()
		grown := old.Clone()
		grown.Rocker.Nose, grown.Rocker.Tail = old.Rocker.Nose*s, old.Rocker.Tail*s
		grown.Rocker.Radius *= s * (0.9 + 0.2*rng.Float64()) // drawn with another
		grown.Seat.Front, grown.Seat.Rear, grown.Seat.Depth, grown.Seat.Behind = s*old.Seat.Front, s*old.Seat.Rear,
			s*old.Seat.Depth, s*old.Seat.Behind
		cube := s * s * s
		grown.Body = body.Body{Mass: cube * old.Body.Mass, Centre: r2.Scale(s, old.Body.Centre), Inertia: cube * s * s * old.Body.Inertia}
		o := &grown.Sitters[0]
		o.Mass, o.Inertia = cube*o.Mass, cube*s*s*old.Sitters[0].Mass*piece.Gyration*piece.Gyration
		for _, p := range []*piece.Place{&o.Placed, &o.AtEase, &o.Rising} {
			p.Ahead, p.Above = s*p.Ahead, s*p.Above
		}
		l, err := Like(old, grown)
		if err != nil {
			t.Fatal(err)
		}
		k := l.Kept[SameProportion]
		if nose := k.Design.Rocker.Nose; math.Abs(nose-s*old.Rocker.Nose) > RadiusStep(old.Units) {
			t.Errorf("s = %v: nose %v, want %v", s, nose, s*old.Rocker.Nose)
		}
		if want := s * old.Rocker.Radius; math.Abs(k.Exact-want) > 1e-11*want {
			t.Errorf("s = %v: radius %v, want %v", s, k.Exact, want)
		}
		exact, err := check.Balance(withRadii(grown, k.Scale))
		if err != nil {
			t.Fatal(err)
		}
		now, _ := FeelOf(exact)
		if want := math.Sqrt(s) * l.Old.Period; math.Abs(now.Period-want) > 1e-11*want {
			t.Errorf("s = %v: period %v, want %v", s, now.Period, want)
		}
	}
}

// TestNoSuchRadius holds that a piece that no radius can give the wish is said to have none.
func TestNoSuchRadius(t *testing.T) {
	old := plainChair(rand.New(rand.NewPCG(5, 6)))
	flat := old.Clone()
	flat.Rocker = piece.Rocker{Nose: 0.4, Arcs: []piece.Arc{{Radius: 1.1, Length: 0.2}, {Flat: 0.5}, {Radius: 1.1, Length: 0.3}}}
	if _, err := Like(flat, old); err == nil {
		t.Error("a piece that rests on a flat has no feel to keep")
	}
	l, err := Like(old, flat)
	if err != nil {
		t.Fatal(err)
	}
	if l.Kept[SameTime].Found {
		t.Errorf("on a flat: %+v", l.Kept[SameTime])
	}
}

func BenchmarkLike(b *testing.B) {
	old := readingChair()
	tall := readingChair()
	tall.Sitters[0].Person.Sizes[person.Stature] = 75 * inch
	for b.Loop() {
		if _, err := Like(old, tall); err != nil {
			b.Fatal(err)
		}
	}
}

// TestForSitters holds that a taller sitter wants a larger radius for the same time, and the
// owner's own stature the one there is, as far as the owner is as stout as the mean.
func TestForSitters(t *testing.T) {
	d := readingChair()
	d.Sitters[0].Mass = 0
	list, err := ForSitters(d, []float64{60 * inch, 70 * inch, 76 * inch})
	if err != nil || len(list) != 3 {
		t.Fatal(err, len(list))
	}
	at := func(i int) float64 { return list[i].Like.Kept[SameTime].Exact }
	if !(at(0) < at(1) && at(1) < at(2)) || math.Abs(at(1)-42*inch) > 1e-9 {
		t.Errorf("radii %v, %v, %v", at(0)/inch, at(1)/inch, at(2)/inch)
	}
	if none, err := ForSitters(plainBody(), []float64{1.7}); err != nil || none != nil {
		t.Errorf("of numbers: %v, %v", none, err)
	}
}
