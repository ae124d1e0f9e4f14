package piece

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// drawnChair has every measure of a chair drawn, no two alike, m and rad.
func drawnChair() Design {
	return Design{
		Rocker: Rocker{Radius: 1.05, Nose: 0.42, Tail: 0.58, Depth: 0.06, Width: 0.034, Density: 640},
		Seat:   Seat{Rear: 0.40, Front: 0.43, Depth: 0.45, Width: 0.50, Behind: 0.19, Thick: 0.05},
		Back:   Back{Recline: 0.25, Height: 0.70},
		Arms:   Arms{Height: 0.20, Length: 0.33, Width: 0.07, RearWidth: 0.05},
		Legs: []Leg{
			{Name: "front leg", Which: Front, At: 0.16, Rake: 0.10, Splay: 0.09, Side: 0.045},
			{Name: "rear leg", Which: Rear, At: -0.23, Rake: -0.20, Splay: 0.12, Side: 0.041},
		},
		Piece: Piece{Mass: 12},
	}
}

// edgeOf returns the floor edge of a design.
func edgeOf(t *testing.T, d Design) rocker.Profile {
	t.Helper()
	edge, _, err := d.Profile()
	if err != nil {
		t.Fatal(err)
	}
	return edge
}

// grains are small pieces of wood, summed up.
type grains struct {
	mass, second float64 // kg, about the origin kg·m²
	first        r2.Vec  // kg·m
}

func (g *grains) add(mass float64, at r2.Vec) {
	g.mass, g.second = g.mass+mass, g.second+mass*r2.Norm2(at)
	g.first = r2.Add(g.first, r2.Scale(mass, at))
}

func (g *grains) body() body.Body {
	centre := r2.Scale(1/g.mass, g.first)
	return body.Body{Mass: g.mass, Centre: centre, Inertia: g.second - g.mass*r2.Norm2(centre)}
}

// bar adds a bar of some mass between two points, so thick, by 200 times 200 grains.
func (g *grains) bar(mass float64, from, to r2.Vec, thick float64) {
	const n = 200
	way := r2.Sub(to, from)
	across := r2.Scale(thick/r2.Norm(way), r2.Vec{X: -way.Y, Y: way.X})
	for i := range n {
		for j := range n {
			at := r2.Add(from, r2.Scale((float64(i)+0.5)/n, way))
			g.add(mass/n/n, r2.Add(at, r2.Scale((float64(j)+0.5)/n-0.5, across)))
		}
	}
}

// rockers adds the pair of rockers of one arc by wedges of 1/4000 of its length and 20 grains each.
func (g *grains) rockers(r Rocker, density float64, depth func(along float64) float64) {
	const n, layers = 4000, 20
	step := (r.Nose + r.Tail) / n
	for i := range n {
		along := -r.Tail + (float64(i)+0.5)*step
		sin, cos := math.Sincos(along / r.Radius)
		for j := range layers {
			deep := depth(along)
			in := r.Radius - deep*(float64(j)+0.5)/layers
			wood := 2 * r.Width * density * step * in / r.Radius * deep / layers
			g.add(wood, r2.Vec{X: in * sin, Y: r.Radius - in*cos})
		}
	}
}

// alike reports whether two bodies agree to a part of their size.
func alike(a, b body.Body, part float64) bool {
	return near(a.Mass, b.Mass, part*b.Mass) && r2.Norm(r2.Sub(a.Centre, b.Centre)) <= part && near(a.Inertia, b.Inertia, part*b.Inertia)
}

// TestWeightStandsWhereTheWoodDoes sums a spread weight up from grains of the drawn wood: seat, back, arms and legs as
// bars of their shaped thickness along lines drawn by hand, the rockers by wedges of each kind of top edge. All of
// it is one wood, and weighs what the piece weighs.
func TestWeightStandsWhereTheWoodDoes(t *testing.T) {
	for top := Concentric; top <= Taper; top++ {
		d := drawnChair()
		d.Rocker.Top, d.Rocker.NoseDepth, d.Rocker.TailDepth = top, 0.04, 0.03
		depth := func(float64) float64 { return 0.06 } // square to the floor edge, ahead of the low point
		switch top {
		case Straight:
			d.Rocker.Depth = 0.16 // over both tips
			depth = func(along float64) float64 { return 1.05 - (1.05-0.16)/math.Cos(along/1.05) }
		case Taper:
			depth = func(along float64) float64 {
				if along > 0 {
					return 0.06 - 0.02*math.Pow(along/0.42, 2)
				}
				return 0.06 - 0.03*math.Pow(along/0.58, 2)
			}
		}
		var wood grains
		meet, fall := r2.Vec{X: -0.19, Y: 0.40}, math.Asin(0.03/0.45)
		along := r2.Vec{X: math.Cos(fall), Y: math.Sin(fall)}
		wood.bar(0.45*0.50*seatShaped, meet, r2.Add(meet, r2.Scale(0.45, along)), seatShaped)
		wood.bar(0.70*0.50*backShaped, meet, r2.Add(meet, r2.Scale(0.70, r2.Vec{X: -math.Sin(0.25), Y: math.Cos(0.25)})), backShaped)
		arm := r2.Add(meet, r2.Vec{Y: 0.20})
		wood.bar(2*0.33*0.06*armThick, arm, r2.Add(arm, r2.Scale(0.33, along)), armThick)
		for _, l := range d.Legs {
			foot := r2.Vec{X: l.At}
			for along, step := 0.0, 0.5; step > 1e-12; step /= 2 { // along the floor edge, below the foot
				sin, cos := math.Sincos(along / 1.05)
				foot.Y = 1.05 - (1.05-depth(along))*cos
				along += math.Copysign(step, l.At-(1.05-depth(along))*sin)
			}
			up := 0.0 // so far up the leg meets the top of the seat
			for step := 1.0; step > 1e-12; step /= 2 {
				if at := foot.Y + up + step; at < 0.40+(foot.X-(up+step)*math.Tan(l.Rake)+0.19)*math.Tan(fall) {
					up += step
				}
			}
			end := r2.Add(foot, r2.Vec{X: -up * math.Tan(l.Rake), Y: up})
			length := up * math.Sqrt(1+math.Pow(math.Tan(l.Rake), 2)+math.Pow(math.Tan(l.Splay), 2))
			wood.bar(2*length*l.Side*l.Side, foot, end, l.Side)
		}
		wood.rockers(d.Rocker, 1, depth)
		edge := edgeOf(t, d)
		for along := -0.58; along < 0.42 && top != Straight; along += 0.05 {
			nose, tail := d.Rocker.DepthAt(edge, false, 0.42-along), d.Rocker.DepthAt(edge, true, 0.58+along)
			if want := depth(along); !near(nose, want, 1e-12) || !near(tail, want, 1e-12) {
				t.Errorf("%v: %v ahead of the low point it is %v deep from the nose, %v from the tail", tops[top], along, nose, tail)
			}
		}
		m, err := d.Estimate(edge)
		want := wood.body().Scaled(12 / wood.mass)
		// grains are 1/200 of a bar, the product's rule for a taper errs by a ten-thousandth of the rockers
		if got := m.Joined(Carry{}); err != nil || !alike(got, want, 1e-4) {
			t.Errorf("top edge %v: %+v, %v; grain by grain %+v", tops[top], got, err, want)
		}
		for i := range len(m.Seat) + 1 { // seat, back, arms, legs, and behind them the rockers
			mass := func(m Masses, i int) float64 { return append(m.Seat, m.Rockers)[i].Mass }
			more, other := m.Weighted(i, 1.2, 12), (i+1)%len(m.Seat)
			if got := mass(more, i) / mass(more, other); !near(got, 1.2*mass(m, i)/mass(m, other), 1e-12) ||
				!near(more.Joined(Carry{}).Mass, 12, 1e-12) {
				t.Errorf("a fifth more of the %d. weighs %+v, and was %+v", i, more, m)
			}
		}
	}
}

// TestPartsAreTheirSolids sums each solid up slice by slice from the outline that is drawn of it: a slice of a box is
// a rectangle as wide as the part, one of a bar a disc. Leaning turns it, and two alike weigh twice.
func TestPartsAreTheirSolids(t *testing.T) {
	const density = 500.0
	at := r2.Vec{X: 0.13, Y: 0.31}
	d := Design{Rocker: Rocker{Radius: 1.05, Nose: 0.42, Tail: 0.58}, Parts: []Part{
		{Shape: Box, Length: 0.30, Height: 0.12, Width: 0.45, Lean: 0.3},
		{Shape: Cylinder, Diameter: 0.05, Height: 0.50, Lean: -0.2},
		{Shape: Cone, Diameter: 0.06, TopDiameter: 0.03, Height: 0.40, Lean: 0.5},
		{Shape: Crosswise, Diameter: 0.04, Width: 0.52},
		{Shape: Point, Mass: 3},
	}}
	for i := range d.Parts {
		d.Parts[i].At, d.Parts[i].Density, d.Parts[i].Count = at, density, 2
	}
	m, err := d.Masses(edgeOf(t, d))
	if err != nil {
		t.Fatal(err)
	}
	for i, member := range d.Members(edgeOf(t, d)) {
		p, c := d.Parts[i], member.Outline
		var want body.Body
		switch p.Shape {
		case Crosswise, Point:
			radius := map[Shape]float64{Crosswise: 0.02, Point: 0.01}[p.Shape] // a point is drawn 2 cm across
			for k, q := range c {
				sin, cos := math.Sincos(2 * math.Pi * float64(k) / float64(len(c)))
				if r2.Norm(r2.Sub(q, r2.Add(at, r2.Vec{X: radius * cos, Y: radius * sin}))) > 1e-15 {
					t.Errorf("%v: corner %d of its circle is drawn at %v", p.Shape, k, q)
				}
			}
			if want = (body.Body{Mass: 6, Centre: at}); p.Shape == Crosswise {
				want.Mass = 2 * density * math.Pi * 0.02 * 0.02 * 0.52
				want.Inertia = want.Mass * 0.02 * 0.02 / 2
			}
		default:
			const n = 2000
			var g grains
			high := r2.Norm(r2.Sub(r2.Add(c[2], c[3]), r2.Add(c[0], c[1]))) / 2
			for k := range n {
				up := (float64(k) + 0.5) / n
				left, right := r2.Add(c[0], r2.Scale(up, r2.Sub(c[3], c[0]))), r2.Add(c[1], r2.Scale(up, r2.Sub(c[2], c[1])))
				half := r2.Norm(r2.Sub(right, left)) / 2
				area, square := math.Pi*half*half, half*half/4 // of a disc, and the mean square across it
				if p.Shape == Box {
					area, square = 2*half*p.Width, half*half/3
				}
				mass := 2 * density * area * high / n
				g.add(mass, r2.Scale(0.5, r2.Add(left, right)))
				g.second += mass * square
			}
			want = g.body()
			along := r2.Vec{X: member.Axis[1].X - member.Axis[0].X, Y: member.Axis[1].Y - member.Axis[0].Y}
			if !near(high, p.Height, 1e-12) || !near(math.Atan2(-along.X, along.Y), p.Lean, 1e-12) || !near(member.Length(), high, 1e-12) {
				t.Errorf("%v: %v m high, drawn %v m high along %v", p.Shape, p.Height, high, along)
			}
		}
		if got := m.Seat[i]; !alike(got, want, 1e-6) {
			t.Errorf("%v: %+v, slice by slice %+v", p.Shape, got, want)
		}
	}
}

// TestTaperedStrip: a tapered bar's area is length·depth less a third of what the tips lack, by
// Simpson on squares; a strip without a taper is that of Strip.
func TestTaperedStrip(t *testing.T) {
	bar, err := rocker.Chain(0.4, rocker.Flat(0.4), rocker.Flat(0.5))
	if err != nil {
		t.Fatal(err)
	}
	strip, err := bar.Tapered(0.06, 0.04, 0.03)
	if want := 0.9*0.06 - (0.4*0.02+0.5*0.03)/3; err != nil || !near(strip.Area, want, 1e-15) {
		t.Errorf("area %v, %v; want %v", strip.Area, err, want)
	}
	one := rocker.Single(1, 0.4, 0.5)
	a, errA := one.Tapered(0.06, 0.06, 0.06)
	b, errB := one.Strip(0.06, rocker.Concentric)
	if errA != nil || errB != nil || a != b {
		t.Errorf("%v, %v; %v, %v", a, b, errA, errB)
	}
	if _, err := one.Tapered(0.06, 0.06, 1.1); err == nil {
		t.Error("a tail deeper than the radius has a strip")
	}
}
