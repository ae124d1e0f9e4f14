package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// TestStations: over one arc every height is R − √(R² − x²), under its top R − √(r² − x²).
func TestStations(t *testing.T) {
	const R, nose, tail, d, sole, spacing = 1.05, 0.4, 0.5, 0.06, 0.008, 0.05
	r := Rocker{Edge: rocker.Single(R, nose, tail), Depth: d, Sole: sole}
	rows, err := r.Stations(spacing)
	if err != nil {
		t.Fatal(err)
	}
	ahead, behind := int(R*math.Sin(nose/R)/spacing), int(R*math.Sin(tail/R)/spacing)
	rows, ends := parted(rows)
	if len(rows) != ahead+1+behind || len(ends) != 6 {
		t.Fatalf("%d rows, %d of ends; want %d ahead, %d behind, the low point, three of each end", len(rows), len(ends), ahead, behind)
	}
	for i, row := range rows {
		at := float64(ahead-i) * spacing
		if math.Abs(row.At-at) > near || row.Floor.X != row.At {
			t.Errorf("row %d at %v, want %v", i, row.At, at)
		}
		height := func(radius float64) float64 { return R - math.Sqrt(radius*radius-at*at) }
		if math.Abs(row.Floor.Y-height(R)) > near {
			t.Errorf("floor edge at %v: %v, want %v", at, row.Floor, height(R))
		}
		for _, edge := range []struct {
			got    r2.Vec
			radius float64
		}{{row.Wood, R - sole}, {row.Top, R - d}} {
			want := r2.Vec{X: at, Y: height(edge.radius)}
			for _, end := range []float64{nose / R, -tail / R} {
				if x := edge.radius * math.Sin(end); at*end > 0 && math.Abs(at) > math.Abs(x) {
					want = r2.Vec{X: x, Y: R - edge.radius*math.Cos(end)}
				}
			}
			if r2.Norm(r2.Sub(edge.got, want)) > near {
				t.Errorf("radius %v at %v: %v, want %v", edge.radius, at, edge.got, want)
			}
		}
	}
	for i, angle := range []float64{nose / R, -tail / R} {
		for k, radius := range []float64{R, R - sole, R - d} { // tip, lower corner, top corner
			row := ends[3*i+k]
			want := r2.Vec{X: radius * math.Sin(angle), Y: R - radius*math.Cos(angle)}
			got := [3]r2.Vec{row.Floor, row.Wood, row.Top}[k]
			if r2.Norm(r2.Sub(got, want)) > near || row.At != got.X || row.Ends != Tip+Ending(k) || row.Nose != (i == 0) {
				t.Errorf("end %d: %+v, want %v", 3*i+k, row, want)
			}
			// the edges below pass it at the same place
			for j, below := range []float64{R, R - sole}[:min(k, 2)] {
				if got := [2]r2.Vec{row.Floor, row.Wood}[j]; got.X != row.At ||
					math.Abs(got.Y-(R-math.Sqrt(below*below-row.At*row.At))) > near {
					t.Errorf("end %d: edge %d passes at %v", 3*i+k, j, got)
				}
			}
		}
	}
}

// parted returns the rows of the stations, and those where an edge ends.
func parted(rows []Station) (stations, ends []Station) {
	for _, row := range rows {
		if row.Ends == Passing {
			stations = append(stations, row)
		} else {
			ends = append(ends, row)
		}
	}
	return stations, ends
}

// TestUprightEndHasOneRow: where the end stands plumb its corner has the tip's own place.
func TestUprightEndHasOneRow(t *testing.T) {
	rows, err := Rocker{Edge: chain(t, 0.4, rocker.Flat(0.9)), Depth: 0.06}.Stations(0.1)
	if _, ends := parted(rows); err != nil || len(ends) != 2 || ends[0].Top.X != ends[0].At || ends[1].Ends != Tip {
		t.Errorf("%+v, %v", ends, err)
	}
}

// TestStationsOfFlatArcs: from 1 to 100 km of radius the rises are x²/(R + √(R² − x²)).
func TestStationsOfFlatArcs(t *testing.T) {
	for _, R := range []float64{1e3, 1e4, 1e5} {
		rows, err := Rocker{Edge: rocker.Single(R, 0.4, 0.5), Depth: 0.05}.Stations(0.1)
		if err != nil || len(rows) < 10 {
			t.Fatalf("%d rows, %v", len(rows), err)
		}
		for _, row := range rows {
			want := row.At * row.At / (R + math.Sqrt(R*R-row.At*row.At))
			if math.Abs(row.Floor.Y-want) > 1e-16*R+near { // the centre is R off, and rounded
				t.Errorf("R %v at %v: %v, want %v", R, row.At, row.Floor.Y, want)
			}
		}
	}
}

// TestChordStations: under a chord c of a circle the edge is √(R² − u²) − √(R² − c²/4) deep,
// u from the chord's middle; the deepest is the sagitta.
func TestChordStations(t *testing.T) {
	const R, nose, tail, d = 1.05, 0.4, 0.5, 0.06
	r := Rocker{Edge: rocker.Single(R, nose, tail), Depth: d}
	rows, err := r.ChordStations(0.0254)
	if err != nil {
		t.Fatal(err)
	}
	c := 2 * R * math.Sin((nose+tail)/2/R)
	// the chord leans by half the difference of the two angles, so its middle, square under
	// the centre, lies R sin of that behind the low point
	middle := R * math.Sin((nose-tail)/2/R)
	for _, row := range rows {
		u := row.At - middle
		want := math.Sqrt(max(0, R*R-c*c/4)) - math.Sqrt(R*R-u*u)
		if math.Abs(row.Floor.Y-want) > 1e-12 { // a slope at the tip of 0.4, on places rounded once more
			t.Errorf("at %v the floor edge is %v over the chord, want %v", row.At, row.Floor.Y, want)
		}
	}
	tips := 0
	for _, row := range rows {
		if row.Ends != Tip {
			continue
		}
		tips++
		if math.Abs(row.Floor.Y) > near || math.Abs(math.Abs(row.At-middle)-c/2) > near {
			t.Errorf("tip at %v, %v over the chord", row.At, row.Floor.Y)
		}
	}
	if tips != 2 {
		t.Errorf("%d tips", tips)
	}
}

// TestStationsOnTheEdge: every height of a random rocker is on the edge it is of, and no
// place of the edge there is lower.
func TestStationsOnTheEdge(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 18))
	for range 100 {
		r := Rocker{Edge: randomEdge(rng), Depth: 0.05}
		rows, err := r.Stations(0.05)
		if err != nil {
			continue
		}
		h, _, _ := r.Edge.Support(0)
		points := r.Edge.Outline(1e-7)
		rows, _ = parted(rows)
		for _, row := range rows {
			lowest := math.Inf(1)
			for i := 1; i < len(points); i++ {
				a, b := points[i-1], points[i]
				if low, high := min(a.X, b.X), max(a.X, b.X); row.At >= low && row.At <= high && low < high {
					lowest = min(lowest, a.Y+(b.Y-a.Y)*(row.At-a.X)/(b.X-a.X)+h)
				}
			}
			// the chords' 1e-7, over their slope of at most some 3 to 1
			if math.Abs(row.Floor.Y-lowest) > 5e-7 && !math.IsInf(lowest, 1) {
				t.Fatalf("%+v at %v: %v, want %v", r.Edge.Drawn(), row.At, row.Floor.Y, lowest)
			}
		}
	}
}

func TestStationErrors(t *testing.T) {
	r := Rocker{Edge: rocker.Single(1, 0.4, 0.4), Depth: 0.05}
	for _, spacing := range []float64{0, -1, math.NaN(), math.Inf(1), 1e-6} {
		var size *SizeError
		if _, err := r.Stations(spacing); !errors.As(err, &size) {
			t.Errorf("spacing %v: %v", spacing, err)
		}
	}
	var outline *OutlineError
	if _, err := (Rocker{}).Stations(0.1); !errors.As(err, &outline) {
		t.Errorf("no rocker: %v", err)
	}
}

// TestTrammel: of a brake and a hollow tail. Pivot, touching point and next pivot are on one
// line; the arms are the radii less sole and depth; all lies ahead of the corner.
func TestTrammel(t *testing.T) {
	edge := chain(t, 0.4, rocker.Arc(1.05, 0.6), rocker.Arc(2.1, 0.2), rocker.Arc(-0.7, 0.1), rocker.Flat(0.05))
	r := Rocker{Edge: edge, Depth: 0.06, Sole: 0.01}
	sweeps, corner, err := r.Trammel()
	if err != nil || len(sweeps) != 4 {
		t.Fatalf("%d sweeps, %v", len(sweeps), err)
	}
	if got := r2.Add(sweeps[0].Pivot, corner); math.Hypot(got.X, got.Y-1.05) > near {
		t.Errorf("first pivot %v, want plumb over the low point", sweeps[0].Pivot)
	}
	for i, want := range []Sweep{{Floor: 1.05, Wood: 1.04, Top: 0.99}, {Floor: 2.1, Wood: 2.09, Top: 2.04},
		{Floor: 0.7, Wood: 0.71, Top: 0.76}, {}} {
		s := sweeps[i]
		if math.Abs(s.Floor-want.Floor) > near || math.Abs(s.Wood-want.Wood) > near || math.Abs(s.Top-want.Top) > near {
			t.Errorf("arms %+v, want %+v", s, want)
		}
		for _, end := range []r2.Vec{s.From, s.To} {
			if s.Radius != 0 && math.Abs(r2.Norm(r2.Sub(end, s.Pivot))-s.Floor) > near {
				t.Errorf("sweep %d ends %v from its pivot", i, r2.Norm(r2.Sub(end, s.Pivot)))
			}
			if end.X < -r.Sole || end.Y < -near { // the corner is that of the wood, without its sole
				t.Errorf("sweep %d reaches behind the corner, %v", i, end)
			}
		}
		if i > 0 && r2.Norm(r2.Sub(s.From, sweeps[i-1].To)) > near {
			t.Errorf("sweep %d begins elsewhere than the last ended", i)
		}
		if i > 0 && s.Radius != 0 {
			if got, want := r2.Norm(r2.Sub(s.Pivot, sweeps[i-1].Pivot)), math.Abs(s.Radius-sweeps[i-1].Radius); math.Abs(got-want) > 1e-12 {
				t.Errorf("pivots %v apart, want the difference of the radii, %v", got, want)
			}
		}
	}
	r.NoseDepth, r.Sole = 0.04, 0
	if sweeps, _, err := r.Trammel(); err != nil || sweeps[0].Top != 0 {
		t.Errorf("a tapered top on a trammel: %+v, %v", sweeps, err)
	}
}

// TestArm: a cutter of 12 mm touches the wood from outside.
func TestArm(t *testing.T) {
	bulge, hollow := Sweep{Radius: 1, Wood: 1, Top: 0.9}, Sweep{Radius: -1, Wood: 1, Top: 1.1}
	for _, tt := range []struct{ got, want Arm }{
		{bulge.WoodArm(0.012), Arm{1, 1.006, 1.012}},
		{bulge.TopArm(0.012), Arm{0.888, 0.894, 0.9}},
		{hollow.WoodArm(0.012), Arm{0.988, 0.994, 1}},
		{hollow.TopArm(0.012), Arm{1.1, 1.106, 1.112}},
		{Sweep{}.WoodArm(0.012), Arm{}},
	} {
		if math.Abs(tt.got.Inside-tt.want.Inside) > near || math.Abs(tt.got.Middle-tt.want.Middle) > near ||
			math.Abs(tt.got.Outside-tt.want.Outside) > near {
			t.Errorf("arm %+v, want %+v", tt.got, tt.want)
		}
	}
}
