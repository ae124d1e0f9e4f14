package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/rocker"
)

// TestStandOnBar: on a level bar all is by hand: a leg of 0.3 m height raked forward by 10° and
// splayed by 6° is 0.3·√(1 + tan² + tan²) long and stands on tangents.
func TestStandOnBar(t *testing.T) {
	const rake, splay = 10 * math.Pi / 180, 6 * math.Pi / 180
	r := Rocker{Edge: chain(t, 0.4, rocker.Flat(0.9)), Depth: 0.06}
	s, err := r.Stand(Leg{Seat: r3.Vec{X: 0.1, Y: 0.36, Z: 0.2}, Rake: rake, Splay: splay})
	if err != nil {
		t.Fatal(err)
	}
	x, z := math.Tan(rake), math.Tan(splay)
	want := Standing{
		Foot: r3.Vec{X: 0.1 + 0.3*x, Y: 0.06, Z: 0.2 + 0.3*z}, Length: 0.3 * math.Sqrt(1+x*x+z*z),
		Resultant: math.Atan(math.Hypot(x, z)), Sightline: math.Atan2(z, x),
		Angle: math.Pi/2 + rake, Cut: -rake, Across: splay, Tilt: math.Atan(math.Hypot(x, z)),
	}
	if r3.Norm(r3.Sub(s.Foot, want.Foot)) > near || math.Abs(s.Length-want.Length) > near || math.Abs(s.Angle-want.Angle) > near ||
		math.Abs(s.Cut-want.Cut) > near || math.Abs(s.Across-want.Across) > near || math.Abs(s.Tilt-want.Tilt) > near ||
		math.Abs(s.Resultant-want.Resultant) > near || math.Abs(s.Sightline-want.Sightline) > near || s.Slope != 0 ||
		!math.IsInf(s.Radius, 1) {
		t.Errorf("%+v, want %+v", s, want)
	}
}

// TestStandSquare: a leg whose line goes through the centre of the arc stands square on it, as
// long as it is far from the centre less the radius of the top.
func TestStandSquare(t *testing.T) {
	const R, d = 1.05, 0.06
	r := Rocker{Edge: rocker.Single(R, 0.4, 0.5), Depth: d}
	for _, angle := range []float64{-0.4, -0.1, 0, 0.2, 0.35} {
		seat := r3.Vec{X: 0.6 * math.Sin(angle), Y: R - 0.6*math.Cos(angle)}
		s, err := r.Stand(Leg{Seat: seat, Rake: angle})
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(s.Cut) > near || math.Abs(s.Tilt) > near || math.Abs(s.Angle-math.Pi/2) > near ||
			math.Abs(s.Length-(R-d-0.6)) > near || math.Abs(s.Slope-angle) > near || math.Abs(s.Radius-(R-d)) > near {
			t.Errorf("at %v: %+v", angle, s)
		}
	}
}

// TestStandRandom holds a leg to a place of the top edge, by vectors in space: the angles are
// those between its direction, the top edge, the line square to it and the plane across.
func TestStandRandom(t *testing.T) {
	rng := rand.New(rand.NewPCG(27, 28))
	stood := 0
	for range 400 {
		r := Rocker{Edge: randomEdge(rng), Depth: 0.05, Middle: 0.25 + 0.1*rng.Float64(), Width: 0.03}
		_, _, top, err := r.Edges()
		if err != nil {
			continue
		}
		want, heading := top.At(top.Length() * (0.1 + 0.8*rng.Float64()))
		seat := r3.Vec{X: want.X + 0.2*(rng.Float64()-0.5), Y: want.Y + 0.3, Z: 0.15 + 0.2*rng.Float64()}
		l, err := LegBetween(seat, r3.Vec{X: want.X, Y: want.Y, Z: r.Middle})
		if err != nil {
			t.Fatal(err)
		}
		s, err := r.Stand(l)
		if err != nil || math.Abs(s.Foot.X-want.X) > 1e-9 || math.Abs(s.Foot.Y-want.Y) > 1e-9 {
			continue // a steep edge stands in the way, or the place is not the highest there
		}
		stood++
		up := r3.Sub(seat, r3.Vec{X: want.X, Y: want.Y, Z: r.Middle})
		along := r3.Vec{X: -math.Cos(heading), Y: -math.Sin(heading)}
		square := r3.Vec{X: -along.Y, Y: along.X}
		side := r3.Vec{X: up.X, Y: up.Y}
		// rake and tangent of it, a joint of the edge found by its length: some 1e-9
		for _, tt := range []struct {
			name      string
			got, want float64
		}{
			{"length", s.Length, r3.Norm(up)},
			{"angle", math.Cos(s.Angle), r3.Cos(side, along)},
			{"cut", math.Sin(s.Cut), r3.Cos(side, along)},
			{"tilt", math.Cos(s.Tilt), r3.Cos(up, square)},
			{"across", math.Tan(s.Across), -up.Z / r3.Dot(up, square)},
			{"resultant", math.Cos(s.Resultant), up.Y / r3.Norm(up)},
			{"middle plane", s.Foot.Z, r.Middle},
		} {
			if math.Abs(tt.got-tt.want) > 1e-8 {
				t.Errorf("%s: %v, want %v (%+v)", tt.name, tt.got, tt.want, s)
			}
		}
		block(t, s, up, along, square)
	}
	if stood < 250 {
		t.Errorf("only %d legs stood", stood)
	}
}

// block holds the adder block of a leg: the plane through its four upper corners is square to the leg,
// its lowest corner as high as asked, and the leg ends where it meets it.
func block(t *testing.T, s Standing, up, along, square r3.Vec) {
	t.Helper()
	const long, wide, least = 0.04, 0.03, 0.012
	b, err := s.Block(long, wide, least)
	if err != nil {
		t.Fatal(err)
	}
	out := r3.Vec{Z: 1}
	at := func(x, h, z float64) r3.Vec {
		return r3.Add(r3.Scale(x, along), r3.Add(r3.Scale(h, square), r3.Scale(z, out)))
	}
	middle, lowest := at(0, (b.NoseInner+b.TailOuter)/2, 0), math.Inf(1)
	for _, corner := range []r3.Vec{at(long/2, b.NoseInner, -wide/2), at(long/2, b.NoseOuter, wide/2),
		at(-long/2, b.TailInner, -wide/2), at(-long/2, b.TailOuter, wide/2)} {
		if math.Abs(r3.Cos(r3.Sub(corner, middle), up)) > 1e-8 {
			t.Errorf("%+v is not square to the leg", b)
		}
		lowest = min(lowest, r3.Dot(corner, square))
	}
	if math.Abs(lowest-least) > near {
		t.Errorf("%+v: lowest corner %v, want %v", b, lowest, least)
	}
	end := r3.Scale(b.Shorter, r3.Unit(up))
	if math.Abs(r3.Dot(r3.Sub(end, middle), up)) > 1e-9 {
		t.Errorf("%+v: the leg ends off its upper face", b)
	}
}

// TestBlockByHand: square on an arc the block is a slab with the sagitta of its length below.
func TestBlockByHand(t *testing.T) {
	b, err := Standing{Radius: 1}.Block(0.1, 0.05, 0.02)
	want := 1 - math.Sqrt(1-0.05*0.05)
	if err != nil ||
		b.NoseInner != 0.02 || b.NoseOuter != 0.02 || b.TailInner != 0.02 || b.TailOuter != 0.02 || math.Abs(b.Bow-want) > 1e-15 {
		t.Errorf("%+v, %v", b, err)
	}
	for _, bad := range []struct {
		s                 Standing
		long, wide, least float64
	}{{Standing{Radius: 1}, 0, 1, 0}, {Standing{Radius: 1}, 0.1, -1, 0}, {Standing{Radius: 1}, 0.1, 0.1, -1},
		{Standing{Radius: 0.04}, 0.1, 0.1, 0}, {Standing{Radius: 1, Cut: math.Pi / 2}, 0.1, 0.1, 0}} {
		var size *SizeError
		if _, err := bad.s.Block(bad.long, bad.wide, bad.least); !errors.As(err, &size) {
			t.Errorf("%+v: %v", bad, err)
		}
	}
}

// TestMiss says by how much: plumb lines by their x, a slanting one square to itself.
func TestMiss(t *testing.T) {
	r := Rocker{Edge: chain(t, 0.4, rocker.Flat(0.9)), Depth: 0.06, Middle: 0.25, Width: 0.04}
	seat := func(x, z float64) r3.Vec { return r3.Vec{X: x, Y: 0.36, Z: z} }
	for _, tt := range []struct {
		leg   Leg
		by    float64
		where string
	}{
		{Leg{Seat: seat(0.45, 0.25)}, 0.05, "ahead of the nose"},
		{Leg{Seat: seat(-0.53, 0.25)}, 0.03, "behind the tail"},
		{Leg{Seat: seat(0.3, 0.25), Rake: math.Pi / 4}, 0.2 / math.Sqrt2, "ahead of the nose"},
		{Leg{Seat: seat(0, 0.28)}, 0.01, "outside"},
		{Leg{Seat: seat(0, 0.2)}, 0.03, "inside"},
		{Leg{Seat: r3.Vec{Y: 0.02, Z: 0.25}}, 0.04, "below the top edge"},
	} {
		_, err := r.Stand(tt.leg)
		var miss *MissError
		if !errors.As(err, &miss) || miss.Where != tt.where || math.Abs(miss.By-tt.by) > near {
			t.Errorf("%+v: %v; want %v %s", tt.leg, err, tt.by, tt.where)
		}
	}
	var size *SizeError
	if _, err := LegBetween(r3.Vec{Y: 0.01}, r3.Vec{Y: 0.06}); !errors.As(err, &size) {
		t.Errorf("LegBetween from below: %v", err)
	}
	if _, err := r.Stand(Leg{Seat: r3.Vec{X: math.NaN()}}); !errors.As(err, &size) {
		t.Errorf("a seat that is no place: %v", err)
	}
	var outline *OutlineError
	if _, err := (Rocker{}).Stand(Leg{}); !errors.As(err, &outline) {
		t.Errorf("no rocker: %v", err)
	}
	l, err := LegBetween(r3.Vec{X: 0.1, Y: 0.4, Z: 0.2}, r3.Vec{X: 0.2, Y: 0.1, Z: 0.26})
	if err != nil || math.Abs(math.Tan(l.Rake)-1.0/3) > near || math.Abs(math.Tan(l.Splay)-0.2) > near {
		t.Errorf("LegBetween: %+v, %v", l, err)
	}
}

// TestBelowTheTopEdge: a seat under the top edge would meet it that much higher, wherever along it.
func TestBelowTheTopEdge(t *testing.T) {
	const R, d = 1.05, 0.06
	r := Rocker{Edge: rocker.Single(R, 0.4, 0.5), Depth: d}
	for _, x := range []float64{-0.4, -0.1, 0, 0.2, 0.3} {
		top := R - math.Sqrt((R-d)*(R-d)-x*x)
		for _, below := range []float64{0.001, 0.02, 0.2} {
			_, err := r.Stand(Leg{Seat: r3.Vec{X: x, Y: top - below}})
			var miss *MissError
			if !errors.As(err, &miss) || math.Abs(miss.By-below) > near {
				t.Errorf("%v below the top edge at %v: %v", below, x, err)
			}
		}
	}
}

// TestBlockOfAFlatLeg: a leg that lies along its rocker or across it has no block, whichever way it points.
func TestBlockOfAFlatLeg(t *testing.T) {
	for _, angle := range []float64{-math.Pi / 2, math.Pi / 2, -2, 2} {
		for _, s := range []Standing{{Radius: 1, Cut: angle}, {Radius: 1, Across: angle}} {
			if b, err := s.Block(0.1, 0.05, 0.02); err == nil {
				t.Errorf("%+v: %+v", s, b)
			}
		}
	}
}
