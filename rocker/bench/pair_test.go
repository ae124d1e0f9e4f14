package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
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
