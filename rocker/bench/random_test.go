package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// randomEdge is a valid floor edge of one to four arcs, hollows, flats and small turns.
func randomEdge(rng *rand.Rand) rocker.Profile {
	for {
		var spans []rocker.Span
		nose := 0.0
		for range 1 + rng.IntN(4) {
			length := 0.08 + 0.3*rng.Float64()
			switch rng.IntN(6) {
			case 0:
				spans = append(spans, rocker.Flat(length))
			case 1:
				spans = append(spans, rocker.Arc(-0.3-rng.Float64(), length))
			default:
				spans = append(spans, rocker.Arc(0.2+1.2*rng.Float64(), length))
			}
			nose += length * rng.Float64()
			if rng.IntN(4) == 0 {
				spans = append(spans, rocker.Turn(0.3*(rng.Float64()-0.5)))
			}
		}
		if p, err := rocker.Chain(nose, spans...); err == nil {
			return p
		}
	}
}

// TestOutlineRandom holds any rocker of a random edge to laysOut.
func TestOutlineRandom(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 16))
	laid := 0
	for range 400 {
		r := Rocker{Edge: randomEdge(rng), Depth: 0.03 + 0.06*rng.Float64(),
			Nose: End{Finish: Finish(rng.IntN(3)), Radius: 0.01}, Tail: End{Finish: Finish(rng.IntN(3)), Radius: 0.005}}
		switch rng.IntN(4) {
		case 0:
			r.Top, r.Depth = rocker.Straight, 0.3
		case 1:
			r.NoseDepth, r.TailDepth = 0.03, 0.04
		case 2:
			r.Sole = 0.01
		}
		if laysOut(t, r) {
			laid++
		}
		if laysOut(t, Rocker{Edge: r.Edge, Depth: r.Depth}) {
			laid++
		}
	}
	if laid < 600 {
		t.Errorf("only %d of 800 rockers are laid out", laid)
	}
}

// laysOut holds that a rocker has a typed error, or an outline that is closed, does not cross
// itself by the chords, and bounds wood. With square ends, a concentric top and no sole its
// area is that of the strip, but for the wood at corners and notches: a notch adds d²|τ|/2,
// and over a corner wood that the strip counts twice is there once. There every place of the
// top is a depth from the floor edge.
func laysOut(t testing.TB, r Rocker) bool {
	t.Helper()
	p, err := r.Outline()
	if err != nil {
		var outline *OutlineError
		if !errors.As(err, &outline) {
			t.Fatalf("%+v: %v", r, err)
		}
		return false
	}
	onTheBench(t, r, p)
	if p.Area() <= 0 || !p.Closed || p.Strokes[len(p.Strokes)-1].To != p.Start {
		t.Fatalf("%+v: area %v, from %v to %v", r, p.Area(), p.Start, p.Strokes[len(p.Strokes)-1].To)
	}
	points := p.Flattened(5e-6)
	for i := 1; i < len(points); i++ {
		for j := i + 2; j < len(points) && !(i == 1 && j == len(points)-1); j++ {
			if cut(points[i-1], points[i], points[j-1], points[j]) {
				t.Fatalf("%+v crosses itself at %v", r, points[i])
			}
		}
	}
	if !r.concentric() || r.Sole != 0 || r.Nose.Finish != Square || r.Tail.Finish != Square {
		return true
	}
	strip, err := r.Edge.Strip(r.Depth, r.Top)
	if err != nil {
		t.Fatalf("%+v has an outline and no strip: %v", r, err)
	}
	want, corners := strip.Area, false
	for _, s := range r.spans() {
		want -= min(0, s.Turn) * r.Depth * r.Depth / 2
		corners = corners || s.Turn > 0
	}
	// the strip's quadrature is good to 1e-10 of its size
	if got := p.Area(); got > want+1e-10 || !corners && got < want-1e-10 {
		t.Fatalf("%+v:\narea %v, of the strip %v", r, got, want)
	}
	floor, _, top, _ := r.Edges()
	edge := floor.Flattened(1e-6)
	for _, q := range top.Flattened(1e-4) {
		closest, under := math.Inf(1), false
		for i := 1; i < len(edge); i++ {
			if off := toLine(q, edge[i-1], edge[i]); off < closest {
				closest, under = off, r2.Cross(r2.Sub(edge[i], edge[i-1]), r2.Sub(q, edge[i-1])) < 0
			}
		}
		tips := min(r2.Norm(r2.Sub(q, edge[0])), r2.Norm(r2.Sub(q, edge[len(edge)-1])))
		if (under || tips == closest) && closest < r.Depth {
			continue // an edge bent like a C or a hook: there is no wood between, the mouth is
		}
		if math.Abs(closest-r.Depth) > 1.1e-6 { // the chords of the floor edge
			t.Fatalf("%+v:\n%v of the top edge is %v from the floor edge", r, q, closest)
		}
	}
	return true
}

// onTheBench holds that all that is read from a rocker with an outline is a number or has a
// typed error, and the bounds that any outline keeps to.
func onTheBench(t testing.TB, r Rocker, p Path) {
	t.Helper()
	b := SmallestBlank(p)
	shift, width, err := b.Nest(p, 0.003)
	// wood fills no more than its blank; two spooned no more than two blanks and a cut
	if err != nil || !(b.Length >= b.Width && b.Length*b.Width >= p.Area()*(1-1e-9)) ||
		!(shift > 0.003 && shift <= b.Width+0.003+1e-9) || !finite(width) {
		t.Fatalf("%+v: blank %+v, shift %v, width %v, %v", r, b, shift, width, err)
	}
	nose, tail, err := r.Runout(b)
	if err != nil || !(nose >= 0 && tail >= 0 && nose <= math.Pi/2 && tail <= math.Pi/2) {
		t.Fatalf("%+v: run-out %v and %v, %v", r, nose, tail, err)
	}
	var outline *OutlineError
	if s, err := r.Thinnest(b); err != nil && !errors.As(err, &outline) || err == nil && !(s >= 0 && s <= shift) {
		t.Fatalf("%+v: thinnest %+v, %v", r, s, err)
	}
	for _, stations := range []func(float64) ([]Station, error){r.Stations, r.ChordStations} {
		rows, err := stations(r.Edge.Length() / 20)
		if err != nil && !errors.As(err, &outline) {
			t.Fatalf("%+v: %v", r, err)
		}
		for _, row := range rows {
			if sum := row.At + row.Floor.X + row.Floor.Y + row.Wood.X + row.Wood.Y + row.Top.X + row.Top.Y; !finite(sum) {
				t.Fatalf("%+v: station %+v", r, row)
			}
		}
	}
	if sweeps, _, err := r.Trammel(); err != nil || len(sweeps) == 0 {
		t.Fatalf("%+v: trammel %v, %v", r, sweeps, err)
	}
}

// toLine returns how far q is from the line between a and b, its ends included.
func toLine(q, a, b r2.Vec) float64 {
	along := r2.Sub(b, a)
	part := max(0, min(1, r2.Dot(r2.Sub(q, a), along)/r2.Norm2(along)))
	return r2.Norm(r2.Sub(q, r2.Add(a, r2.Scale(part, along))))
}

// FuzzOutline holds a rocker of any chain to laysOut.
func FuzzOutline(f *testing.F) {
	f.Add(1.2, 0.9, 0.45, 0.05, 0.06, 0.4, 0)
	f.Add(1.2, -0.4, 0.3, -0.1, 0.06, 0.3, 1)
	f.Add(0.5, 2.0, 0.3, 0.5, 0.1, 0.0, 2)
	f.Fuzz(func(t *testing.T, nose, tail, length, turn, depth, before float64, finish int) {
		edge, err := rocker.Chain(before, rocker.Arc(nose, length), rocker.Turn(turn), rocker.Arc(tail, length), rocker.Flat(length/2))
		if err != nil || !(math.Abs(nose) < 100 && math.Abs(tail) < 100 && length < 10 && length > 1e-3 && depth < 10 && depth > 1e-3) {
			t.Skip("not a rocker of a workshop")
		}
		laysOut(t, Rocker{Edge: edge, Depth: depth})
		end := End{Finish(((finish % 3) + 3) % 3), depth / 8}
		laysOut(t, Rocker{Edge: edge, Depth: depth, Nose: end, Tail: end, Sole: depth / 10})
		laysOut(t, Rocker{Edge: edge, Depth: depth, NoseDepth: depth / 2, Nose: end})
		laysOut(t, Rocker{Edge: edge, Depth: depth, Top: rocker.Straight, Tail: end})
	})
}

// TestPairFillsItsBoard: the board of a pair is the rectangle round both, whichever way the upper one is shifted.
func TestPairFillsItsBoard(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 17))
	for range 40 {
		outline, err := Rocker{Edge: randomEdge(rng), Depth: 0.05}.Outline()
		if err != nil {
			continue
		}
		for _, o := range []Path{outline, outline.Mirrored(0).Reversed()} {
			pair, err := Nested(o, 0.2*(rng.Float64()-0.5), 0.003)
			if err != nil {
				t.Fatal(err)
			}
			a, b := pair.Left.Outline.Bounds(), pair.Right.Outline.Bounds()
			for _, off := range []float64{
				min(a.Min.X, b.Min.X), min(a.Min.Y, b.Min.Y), max(a.Max.X, b.Max.X) - pair.Length, max(a.Max.Y, b.Max.Y) - pair.Width,
			} {
				if math.Abs(off) > 1e-9 {
					t.Errorf("a side of the board of %v by %v m is off by %v", pair.Length, pair.Width, off)
				}
			}
		}
	}
}
