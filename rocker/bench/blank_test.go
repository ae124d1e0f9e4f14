package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// TestSmallestBlank: a turned rectangle is its own blank; round a ring of one arc even at both
// ends, chord along the grain, it is 2R sin a long and R − (R − d)cos a wide.
func TestSmallestBlank(t *testing.T) {
	rectangle := Path{Strokes: []Stroke{{To: r2.Vec{X: 0.9}}, {To: r2.Vec{X: 0.9, Y: 0.1}}, {To: r2.Vec{Y: 0.1}}}, Closed: true}
	for _, angle := range []float64{0, 0.3, -1.2, 1.5} {
		b := SmallestBlank(rectangle.Turned(angle, r2.Vec{X: 1}))
		if math.Abs(b.Length-0.9) > near || math.Abs(b.Width-0.1) > near || math.Abs(b.Grain-angle) > near {
			t.Errorf("turned by %v: %+v", angle, b)
		}
	}
	const R, d, half = 1.05, 0.06, 0.45
	b := SmallestBlank(mustOutline(t, Rocker{Edge: rocker.Single(R, half, half), Depth: d}))
	a := half / R
	if math.Abs(b.Length-2*R*math.Sin(a)) > near || math.Abs(b.Width-(R-(R-d)*math.Cos(a))) > near || math.Abs(b.Grain) > near {
		t.Errorf("one arc: %+v, want %v by %v, level", b, 2*R*math.Sin(a), R-(R-d)*math.Cos(a))
	}
	if b := SmallestBlank(Path{}); b != (Blank{}) {
		t.Errorf("nothing: %+v", b)
	}
}

// TestSmallestBlankAgainstTurning turns random outlines by 0.05° and measures: nothing smaller
// turns up, and the whole outline lies inside.
func TestSmallestBlankAgainstTurning(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 20))
	for n := 0; n < 40; {
		outline, err := Rocker{Edge: randomEdge(rng), Depth: 0.06}.Outline()
		if err != nil {
			continue
		}
		n++
		b := SmallestBlank(outline)
		for angle := 0.0; angle < math.Pi/2; angle += math.Pi / 3600 {
			box := outline.Turned(angle, r2.Vec{}).Bounds()
			size := r2.Sub(box.Max, box.Min)
			// 0.1 mm on either side, as promised
			if size.X*size.Y < b.Length*b.Width-1e-4*(size.X+size.Y) {
				t.Fatalf("turned by %v it is %v, the smallest blank %+v", angle, size, b)
			}
		}
		points := outline.Flattened(1e-4)
		if extent(points, ahead(b.Grain)) > b.Length+near || extent(points, left(b.Grain)) > b.Width+near {
			t.Fatalf("%+v reaches out of %+v", outline, b)
		}
	}
}

// TestNest: two bars as wide as they are; of a ring, chord along the grain, the largest height
// over itself is that over the ends of the top edge, which a radius sees at x = (R − d) sin a;
// random outlines just clear each other, by the chords.
func TestNest(t *testing.T) {
	bar := mustOutline(t, Rocker{Edge: chain(t, 0.4, rocker.Flat(0.9)), Depth: 0.06})
	shift, width, err := SmallestBlank(bar).Nest(bar, 0.003)
	if err != nil || math.Abs(shift-0.063) > near || math.Abs(width-0.123) > near {
		t.Errorf("bars: shift %v, width %v, %v", shift, width, err)
	}
	const R, d, half = 1.05, 0.06, 0.45
	ring := mustOutline(t, Rocker{Edge: rocker.Single(R, half, half), Depth: d})
	x := (R - d) * math.Sin(half/R)
	want := math.Sqrt(R*R-x*x) - (R-d)*math.Cos(half/R)
	if shift, _, err := SmallestBlank(ring).Nest(ring, 0); err != nil || math.Abs(shift-want) > near {
		t.Errorf("ring: shift %v, want %v", shift, want)
	}
	// under a straight top it is the depth over the low point, in the middle of the arc
	flat := mustOutline(t, Rocker{Edge: rocker.Single(R, half, half), Depth: 0.15, Top: rocker.Straight})
	if shift, _, err := BlankAlong(flat, 0).Nest(flat, 0); err != nil || math.Abs(shift-0.15) > near {
		t.Errorf("straight top: shift %v, %v", shift, err)
	}
	if shift, _, err := BlankAlong(flat, 0.1).Nest(flat, 0); err != nil || math.Abs(shift-0.15/math.Cos(0.1)) > near {
		t.Errorf("straight top aslant: shift %v, %v", shift, err)
	}
	var size *SizeError
	if _, _, err := SmallestBlank(bar).Nest(bar, -0.1); !errors.As(err, &size) {
		t.Errorf("a cut below zero: %v", err)
	}
	rng := rand.New(rand.NewPCG(21, 22))
	for n := 0; n < 60; {
		r := Rocker{Edge: randomEdge(rng), Depth: 0.03 + 0.05*rng.Float64(), Nose: End{Finish: Round}}
		outline, err := r.Outline()
		if err != nil {
			continue
		}
		n++
		b := SmallestBlank(outline)
		shift, _, err := b.Nest(outline, 0)
		if err != nil {
			t.Fatal(err)
		}
		points := outline.Turned(-b.Grain, r2.Vec{}).Flattened(1e-7)
		largest := 0.0
		for _, p := range points {
			for i := 1; i < len(points); i++ {
				a, c := points[i-1], points[i]
				if low, high := min(a.X, c.X), max(a.X, c.X); p.X >= low && p.X <= high && low < high {
					largest = max(largest, math.Abs(p.Y-a.Y-(c.Y-a.Y)*(p.X-a.X)/(c.X-a.X)))
				}
			}
		}
		// points 1 mm apart on a radius of 0.2 m miss a top by 1 µm; a square end that is nearly
		// upright is met by them a little off it
		if shift < largest-2e-6 || shift > largest+1e-5 {
			t.Errorf("%+v: shift %v, by its points %v", r.Edge.Drawn(), shift, largest)
		}
	}
}

// TestRunout: of one arc the half angles at its tips; both grow and shrink with the grain.
func TestRunout(t *testing.T) {
	r := Rocker{Edge: rocker.Single(1.05, 0.4, 0.5), Depth: 0.06}
	for _, grain := range []float64{0, 0.1, -0.2} {
		nose, tail, err := r.Runout(Blank{Grain: grain})
		if err != nil || math.Abs(nose-math.Abs(0.4/1.05-grain)) > near || math.Abs(tail-math.Abs(-0.5/1.05-grain)) > near {
			t.Errorf("grain %v: %v, %v, %v", grain, nose, tail, err)
		}
	}
}

// TestThinnest: level grain through one arc is thinnest in the middle, as thick as it is deep;
// a tapered bar at its tip; random ones against lines a millimetre apart.
func TestThinnest(t *testing.T) {
	got, err := Rocker{Edge: rocker.Single(1.05, 0.4, 0.5), Depth: 0.06}.Thinnest(Blank{})
	if err != nil || math.Abs(got-0.06) > near {
		t.Errorf("one arc: %+v, %v", got, err)
	}
	got, err = Rocker{Edge: chain(t, 0.4, rocker.Flat(0.9)), Depth: 0.06, TailDepth: 0.04}.Thinnest(Blank{})
	if err != nil || math.Abs(got-0.04) > near {
		t.Errorf("tapered bar: %+v, %v", got, err)
	}
	rng := rand.New(rand.NewPCG(23, 24))
	for n := 0; n < 60; {
		r := Rocker{Edge: randomEdge(rng), Depth: 0.06}
		outline, err := r.Outline()
		if err != nil {
			continue
		}
		n++
		b := SmallestBlank(outline)
		got, err := r.Thinnest(b)
		if err != nil {
			t.Fatal(err)
		}
		_, wood, top, _ := r.Edges()
		wood, top = wood.Turned(-b.Grain, r2.Vec{}), top.Turned(-b.Grain, r2.Vec{})
		least := math.Inf(1)
		for x := wood.Bounds().Min.X; x < wood.Bounds().Max.X; x += 0.001 {
			for _, low := range heights(wood.Pieces(), x) {
				for _, high := range heights(top.Pieces(), x) {
					least = min(least, math.Abs(high-low))
				}
			}
		}
		// lines 1 mm apart miss the least by their slope of up to 1 at an end, never go below it
		if got > least+1e-9 || got < least-0.001 {
			t.Errorf("%+v: thinnest %v, by lines %v", r.Edge.Drawn(), got, least)
		}
	}
}

// TestTurns: where an arc turns back is a place to look at: it is where a height begins.
func TestTurns(t *testing.T) {
	half := []Piece{{r2.Vec{Y: -1}, Stroke{r2.Vec{Y: 1}, math.Pi}}}
	for _, x := range turns(half, half) {
		if math.Abs(x-1) < near {
			return
		}
	}
	t.Error("a half circle reaches to 1, and nothing is looked at there")
}
