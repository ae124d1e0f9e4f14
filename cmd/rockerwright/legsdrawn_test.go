package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"path/filepath"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// legged returns the designs with drawn legs of the papers and, from the first of them, six that are raked, splayed,
// tapered, slid and cut at random, within what their measures may be.
func legged(t *testing.T) map[string]piece.Design {
	t.Helper()
	designs := map[string]piece.Design{}
	for _, name := range []string{"chair", "horse", "settee", "settee-metric"} {
		f, err := design.Read(filepath.Join("testdata", "papers", name+".toml"))
		if err != nil {
			t.Fatal(err)
		}
		designs[name] = f.Design
	}
	random := rand.New(rand.NewPCG(15, 1))
	within := func(from, to, unit float64) float64 { return (from + random.Float64()*(to-from)) * unit }
	for n := range 6 {
		f, err := design.Read(filepath.Join("testdata", "papers", "chair.toml"))
		if err != nil {
			t.Fatal(err)
		}
		d := f.Design
		d.Rocker.NoseDepth, d.Rocker.TailDepth = within(1, 2.25, quantity.In), within(1, 2.25, quantity.In)
		d.Seat.Slide = within(-1, 1, quantity.In)
		d.Seat.FrontCut, d.Seat.RearCut = within(0, 1, quantity.In), within(0, 1, quantity.In)
		for i := range d.Legs {
			d.Legs[i].Rake, d.Legs[i].Splay = within(-12, 12, quantity.Deg), within(-4, 12, quantity.Deg)
		}
		designs[fmt.Sprintf("random %d", n)] = d
	}
	return designs
}

// underside returns the length of a drawn leg's axis from the top edge of its rocker, on which it is drawn to stand, to
// where it comes out of the seat: out of the line that lies under the drawn top of the seat by the seat's thickness,
// square to it.
func underside(leg, seat piece.Member) float64 {
	side := func(p r3.Vec) r2.Vec { return r2.Vec{X: p.X, Y: p.Y} }
	top := r2.Unit(r2.Sub(side(seat.Axis[1]), side(seat.Axis[0])))
	square := r2.Vec{X: top.Y, Y: -top.X} // from the top downwards
	below := func(p r3.Vec) float64 { return r2.Dot(square, r2.Sub(side(p), side(seat.Axis[0]))) }
	foot, head := below(leg.Axis[0]), below(leg.Axis[1])
	return leg.Length() * (foot - seat.Thick) / (foot - head)
}

// TestLegsAsDrawn: a leg is on pattern, card and cut list as the pictures draw it. Its length is compared from the top
// edge of the rocker to the underside of the seat, as the card has it before the thickness of the seat is added for the
// cut list; its rake, splay and lean from plumb are those of the drawn axis in space.
func TestLegsAsDrawn(t *testing.T) {
	const long, angle = 0.5e-3, 0.1 * quantity.Deg // m and rad: below what a tape and a bevel show
	for name, d := range legged(t) {
		l, err := layout.Of(d, layout.Options{})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		var seat piece.Member
		var drawn []piece.Member
		for _, m := range d.Members(l.Report.Edge) {
			switch {
			case m.Leg != nil:
				drawn = append(drawn, m)
			case m.Name == "seat":
				seat = m
			}
		}
		if len(drawn) != 2 || len(l.Legs) != 2 || len(l.Taken) > 0 {
			t.Fatalf("%s: %d pairs of legs are drawn, %d laid out", name, len(drawn), len(l.Legs))
		}
		for i, m := range drawn {
			leg := l.Legs[i]
			way := r3.Unit(r3.Sub(m.Axis[0], m.Axis[1])) // down
			for _, of := range []struct {
				what              string
				said, drawn, near float64
			}{
				{"length to the seat", leg.Standing.Length, underside(m, seat), long},
				{"rake", leg.Line.Rake, math.Atan2(way.X, -way.Y), angle},
				{"splay", leg.Line.Splay, math.Atan2(way.Z, -way.Y), angle},
				{"lean from plumb", leg.Standing.Resultant, math.Acos(-way.Y), angle},
				{"place of the foot", r3.Norm(r3.Sub(leg.Standing.Foot, m.Axis[0])), 0, long},
				{"side", leg.Finished.Width, m.Thick, long},
			} {
				if !(math.Abs(of.said-of.drawn) < of.near) {
					t.Errorf("%s: the %v leg's %s is laid out as %v and drawn as %v", name, leg.Which, of.what, of.said, of.drawn)
				}
			}
			// out of square by the lean of the leg to its rocker, half of it on its longest edge, and the seat's thickness on
			full := underside(m, seat) + d.Seat.ThickOr() + (math.Abs(leg.Cut)+math.Abs(leg.Across))/2
			if !(math.Abs(leg.Finished.Length-full) < long) {
				t.Errorf("%s: the %v leg is listed %v m long, and drawn %v", name, leg.Which, leg.Finished.Length, full)
			}
		}
	}
}
