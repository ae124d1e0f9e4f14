package view

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// TestDrawnIsSaid: in the side view the seat falls as the sentence says, the legs stand as their maker drew
// them against the seat, a taper is as deep at its tips as it was typed, and the legs end on the rocker.
func TestDrawnIsSaid(t *testing.T) {
	const inch, degree = 0.0254, math.Pi / 180
	for name, change := range map[string]func(d *piece.Design){
		"as drawn": func(*piece.Design) {},
		"slid": func(d *piece.Design) {
			d.Seat.Slide, d.Rocker.Depth, d.Rocker.Top, d.Rocker.Nose, d.Rocker.Tail = inch, 0.2, piece.Straight, 0.4, 0.4
		},
		"front cut":   func(d *piece.Design) { d.Seat.FrontCut = 1.5 * inch },
		"rear cut":    func(d *piece.Design) { d.Seat.RearCut = 2 * inch },
		"both cut":    func(d *piece.Design) { d.Seat.FrontCut, d.Seat.RearCut = inch, 2.5*inch },
		"raked":       func(d *piece.Design) { d.Legs = raked() },
		"raked, cut":  func(d *piece.Design) { d.Legs, d.Seat.RearCut = raked(), 2*inch },
		"taper":       func(d *piece.Design) { taper(d) },
		"taper, slid": func(d *piece.Design) { taper(d); d.Seat.Slide = 2 * inch },
	} {
		d := designs()["chair"]
		change(&d)
		r, err := check.Check(d)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		edge, err := d.Rocker.Profile()
		if err != nil {
			t.Fatal(err)
		}
		ghosts := ghostsOf(r)
		view := frameOf(r, ghosts, area{width: viewWidth, high: 170, top: topRoom, low: lowRoom})
		for _, g := range ghosts {
			groups := view.ghost(r, g)
			lines := groups[slices.IndexFunc(groups, func(one scene.Group) bool { return one.Name == "piece-"+g.name })].Shapes
			angle := func(s scene.Shape) float64 {
				run := r2.Sub(s.Points[1], s.Points[0])
				return math.Atan2(run.Y, run.X)
			}
			fall, said := angle(lines[0]), g.load.SeatFall+g.tilt-g.load.Balance.Rest.Tilt
			if math.Abs(fall-said) > 0.1*degree {
				t.Errorf("%s, %s: the seat is drawn to fall %.2f degrees, said are %.2f", name, g.name, fall/degree, said/degree)
			}
			named := func(one scene.Group) bool { return one.Name == "rocker-"+g.name }
			strip := groups[slices.IndexFunc(groups, named)].Shapes[0].Points
			for i, leg := range d.Legs {
				// along the seat, the back, two arms' lines, then the legs from the foot up
				if got, want := angle(lines[4+i])-fall, math.Pi/2+leg.Rake-d.Seat.Fall(); math.Abs(got-want) > 0.1*degree {
					t.Errorf("%s, %s: the %s is drawn at %.2f degrees to the seat, want %.2f", name, g.name, leg.Which, got/degree, want/degree)
				}
				if off := distance(strip, lines[4+i].Points[0]) / view.scale; off > 0.001 {
					t.Errorf("%s, %s: the %s ends %v m off the rocker", name, g.name, leg.Which, off)
				}
			}
			if d.Rocker.Top != piece.Taper {
				continue
			}
			at := poseAt(r, g.tilt)
			nose := view.paper(at.place(edge.Nose()))
			deep := math.Inf(1) // the square end at the nose is the only corner so near
			for _, p := range strip {
				if away := r2.Norm(r2.Sub(p, nose)) / view.scale; away > 0.001 {
					deep = min(deep, away)
				}
			}
			if math.Abs(deep-d.Rocker.NoseDepth) > 0.001 {
				t.Errorf("%s, %s: the nose is drawn %v m deep, want %v", name, g.name, deep, d.Rocker.NoseDepth)
			}
		}
	}
}

func raked() []piece.Leg {
	return []piece.Leg{{Which: piece.Front, At: 0.2, Rake: 0.14}, {Which: piece.Rear, At: -0.25, Rake: -0.1}}
}

func taper(d *piece.Design) {
	d.Rocker.Top, d.Rocker.Depth, d.Rocker.NoseDepth, d.Rocker.TailDepth = piece.Taper, 0.1, 0.025, 0.03
}

// distance returns how far a point is from a closed line.
func distance(line []r2.Vec, p r2.Vec) float64 {
	least := math.Inf(1)
	for i, a := range line {
		run := r2.Sub(line[(i+1)%len(line)], a)
		part := 0.0
		if r2.Norm2(run) > 0 {
			part = min(1, max(0, r2.Dot(r2.Sub(p, a), run)/r2.Norm2(run)))
		}
		least = min(least, r2.Norm(r2.Sub(p, r2.Add(a, r2.Scale(part, run)))))
	}
	return least
}
