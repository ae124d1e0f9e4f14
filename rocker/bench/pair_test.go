package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// TestBookMatched: the two are as large, run the same way round, keep the cut between them,
// lie on the board, and each point of one is the other's mirrored.
func TestBookMatched(t *testing.T) {
	rng := rand.New(rand.NewPCG(25, 26))
	const kerf = 0.003
	for n := 0; n < 50; {
		outline, err := Rocker{Edge: randomEdge(rng), Depth: 0.06}.Outline()
		if err != nil {
			continue
		}
		n++
		grain := SmallestBlank(outline).Grain
		p, err := BookMatched(outline, grain, kerf)
		if err != nil {
			t.Fatal(err)
		}
		left, right := p.Left.Outline, p.Right.Outline
		if math.Abs(left.Area()-outline.Area()) > near || math.Abs(right.Area()-outline.Area()) > near {
			t.Errorf("areas %v, %v of %v", left.Area(), right.Area(), outline.Area())
		}
		l, r := left.Bounds(), right.Bounds()
		if math.Abs(l.Max.X+kerf/2) > near || math.Abs(r.Min.X-kerf/2) > near || math.Abs(l.Min.Y) > near || math.Abs(r.Max.Y-p.Length) > near || math.Abs(r.Max.X-l.Min.X-p.Width) > near {
			t.Errorf("%v and %v on a board of %v by %v", l, r, p.Length, p.Width)
		}
		for k := range 20 {
			d := left.Length() * float64(k) / 20
			a, _ := left.At(d)
			b, _ := right.At(right.Length() - d)
			if math.Abs(a.X+b.X) > 1e-12 || math.Abs(a.Y-b.Y) > 1e-12 { // d is a sum of lengths, taken from both ends
				t.Errorf("%v is mirrored to %v", a, b)
			}
		}
		if p.Left.Mark == p.Right.Mark || p.Left.Grain != (r2.Vec{Y: 1}) || p.Right.Grain != p.Left.Grain {
			t.Errorf("marks and grain: %v %v, %v %v", p.Left.Mark, p.Left.Grain, p.Right.Mark, p.Right.Grain)
		}
		// the grain of the part as drawn and as laid is one direction in the wood
		if got := SmallestBlank(left).Length - p.Length; math.Abs(got) > 1e-9 {
			t.Errorf("along the grain it is %v off", got)
		}
		v := ahead(MirroredGrain(grain))
		if math.Abs(r2.Cross(v, r2.Vec{X: -math.Cos(grain), Y: math.Sin(grain)})) > 1e-15 {
			t.Errorf("grain %v is mirrored to %v", grain, MirroredGrain(grain))
		}
	}
	var size *SizeError
	if _, err := BookMatched(Path{}, 0, -1); !errors.As(err, &size) {
		t.Errorf("a cut below zero: %v", err)
	}
}

// TestNested: of two bars, each of them its own mirror image, the board is twice as wide and a
// saw cut; of two bands of concentric arcs the upper is moved by what the lower is high over
// itself straight up, at the low point its depth, and grain and mirror are as said.
func TestNested(t *testing.T) {
	const kerf = 0.003
	bar := mustOutline(t, Rocker{Edge: chain(t, 0.4, rocker.Flat(0.9)), Depth: 0.06})
	p, err := Nested(bar, 0, kerf)
	if err != nil || math.Abs(p.Length-0.9) > near || math.Abs(p.Width-0.123) > near {
		t.Errorf("bars in %v by %v, %v; want 0.9 by 0.123", p.Length, p.Width, err)
	}
	arc := mustOutline(t, Rocker{Edge: rocker.Single(1.05, 0.45, 0.45), Depth: 0.06})
	p, err = Nested(arc, 0, kerf)
	if err != nil || p.Left.Grain.X != 1 || p.Right.Grain.X != -1 {
		t.Fatalf("%+v, %v", p, err)
	}
	// straight up the band is highest where an end begins: the top edge there over the floor edge
	x := (1.05 - 0.06) * math.Sin(0.45/1.05)
	high := math.Sqrt(1.05*1.05-x*x) - math.Sqrt(0.99*0.99-x*x)
	box := arc.Bounds()
	if want := box.Max.Y - box.Min.Y + high + kerf; math.Abs(p.Width-want) > near {
		t.Errorf("bands in a board of %v, want %v", p.Width, want)
	}
	if _, err := Nested(arc, 0, -1); err == nil {
		t.Error("a saw cut below zero is taken")
	}
}
