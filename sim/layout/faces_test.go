package layout

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// TestFacesOfLegs holds which face of a leg is drawn, which is the longer one, by planes in space: each face is
// followed down to the plane of the top edge, left and right, and seen from outside or from inside.
func TestFacesOfLegs(t *testing.T) {
	for _, splay := range []float64{6, -6} {
		for _, rake := range []float64{-12, 14} {
			d := reading()
			d.Rocker.Track = 21 * inch
			d.Legs = []piece.Leg{{Which: piece.Front, At: 4 * inch, Rake: rake * degree, Splay: splay * degree}}
			l := mustLay(t, d)
			leg, pair := l.Legs[0], l.Pairs[0]
			for _, one := range []struct {
				out  float64 // which way is out, along z
				part bench.Half
			}{{-1, pair.Pair.Left}, {1, pair.Pair.Right}} {
				up := r3.Unit(r3.Vec{X: -math.Tan(rake * degree), Y: 1, Z: -one.out * math.Tan(splay*degree)})
				square := r3.Vec{X: -math.Sin(leg.Standing.Slope), Y: math.Cos(leg.Standing.Slope)}
				out := r3.Unit(r3.Sub(r3.Vec{Z: one.out}, r3.Scale(one.out*up.Z, up)))
				nose := r3.Scale(one.out, r3.Cross(up, out)) // square to both, ahead
				if nose.X < 0 {
					t.Fatalf("%v is not ahead", nose)
				}
				// how much longer the foot is at half a side that way: down the leg to the plane
				longer := func(way r3.Vec) float64 { return leg.Side / 2 * r3.Dot(way, square) / r3.Dot(up, square) }
				face := map[string]float64{"outer": 1, "inner": -1}[pair.Face]
				if face == 0 || longer(r3.Scale(face, out)) < 0 {
					t.Errorf("rake %v, splay %v: the %q face is not the longer one", rake, splay, pair.Face)
				}
				// seen against the face, the seat up, the nose is to the right where out and nose are so
				seen := r3.Dot(r3.Cross(nose, up), r3.Scale(face, out)) // +1: nose, up and the way to the eye are right-handed
				footLeft := one.part.Grain.X > 0
				upper := seen > 0 != footLeft // turned so that the seat is up, upper is to the left of a leg whose foot is left
				if words := pair.Face == "outer"; words != upper {
					t.Errorf("rake %v, splay %v, %s: the nose is above: %v, said to be %v", rake, splay, one.part.Mark, upper, words)
				}
				box := one.part.Outline.Bounds()
				var corner r2.Vec // the foot's shorter side
				for _, s := range one.part.Outline.Strokes {
					if s.To.X > box.Min.X+1e-6 && s.To.X < box.Max.X-1e-6 {
						corner = s.To
					}
				}
				if noseShorter := longer(nose) < 0; (corner.Y > (box.Min.Y+box.Max.Y)/2) != (noseShorter == upper) {
					t.Errorf("rake %v, splay %v, %s: the foot is the shorter at %v", rake, splay, one.part.Mark, corner)
				}
			}
		}
	}
}
