package layout

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/body/person"
	"rockerwright/rocker/bench"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

const (
	inch   = 0.0254
	degree = math.Pi / 180
)

// reading is the built-in reading chair.
func reading() piece.Design {
	d := piece.Design{
		Title:  "Reading chair",
		Rocker: piece.Rocker{Radius: 42 * inch, Nose: 17 * inch, Tail: 24 * inch},
		Seat:   piece.Seat{Front: 16.5 * inch, Rear: 15.875 * inch, Depth: 18 * inch, Width: 20 * inch, Behind: 9 * inch},
		Back:   piece.Back{Recline: 15 * degree, Height: 28 * inch}, Arms: piece.Arms{Height: 8 * inch},
		Piece:   piece.Piece{Mass: 11.8},
		Sitters: []piece.Sitter{{Name: "owner", Mass: 81.6}},
		Limits:  piece.Design{Kind: piece.Chair}.UsualLimits(),
	}
	d.Sitters[0].Person.Sizes[person.Stature] = 70 * inch
	return d
}

func mustLay(t testing.TB, d piece.Design) Layout {
	t.Helper()
	l, err := Of(d, Options{})
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// near compares with a handful of roundings.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-12*(1+math.Abs(b)) }

// TestStrips by hand: 2 1/4 in of 1/4 in strips are nine; nine strips with 1/16 in planing and eight
// cuts of 1/8 in are 3 13/16 in of board; the longer edge is the floor edge, 41 in, with 2 in
// at each end. Nine strips lose 1/81: the middle of the stack, 42 − 1 1/8 in, lies on the form
// at 80/81 of that, and the form inside the curve is half a stack less.
func TestStrips(t *testing.T) {
	l := mustLay(t, reading())
	s := l.Strips
	if s == nil || s.Stack.Strips != 9 || !near(s.Stack.Strip, 0.25*inch) || !near(s.Stack.Stock, 3.8125*inch) ||
		!near(s.Stack.Length, 45*inch) {
		t.Fatalf("strips %+v", s)
	}
	middle := (42 - 1.125) * inch * 80 / 81
	f := l.Form.Radii[0]
	if !near(f.FloorEdge, 42*inch) || !near(f.ConvexForm, middle-1.125*inch) || !near(f.ConcaveForm, middle+1.125*inch) {
		t.Errorf("form %+v", f)
	}
	if !near(s.Thickest, 2*39.75*inch*usualStrain) || !near(s.Common, 0.25*inch) {
		t.Errorf("thickest %v, common %v", s.Thickest, s.Common)
	}
}

// TestFormFace: the face of the form inside the curve is a circle of the form radius, by three
// of its points, and as the middle of the wood keeps its length, so does each side of the low point: the way
// along the face from there to the end of the rocker is the rocker's, shortened by where the
// face lies in the bent wood.
func TestFormFace(t *testing.T) {
	l := mustLay(t, reading())
	a, b, c := l.Form.Face[0], l.Form.Low, l.Form.Face[1]
	// the circle through three points: abc/4K, any handbook
	ab, bc, ca := r2.Norm(r2.Sub(a, b)), r2.Norm(r2.Sub(b, c)), r2.Norm(r2.Sub(c, a))
	area := math.Abs(r2.Cross(r2.Sub(b, a), r2.Sub(c, a))) / 2
	radius := ab * bc * ca / (4 * area)
	if want := l.Form.Radii[0].ConvexForm; math.Abs(radius-want) > 1e-9*want {
		t.Fatalf("the face has a radius of %v, want %v", radius, want)
	}
	const middleOut = 1.125 * inch // from the face to the middle of the stack
	for _, side := range []struct {
		end  r2.Vec
		edge float64
	}{{c, 17 * inch}, {a, 24 * inch}} {
		angle := 2 * math.Asin(r2.Norm(r2.Sub(side.end, b))/2/radius)
		along := angle * (radius + middleOut)                             // of the middle, on the form
		waste := 2 * inch * (radius + middleOut) / (radius + 2*middleOut) // given along the floor side
		if want := side.edge * (42 - 1.125) / 42; math.Abs(along-waste-want) > 1e-9 {
			t.Errorf("the middle is %v m long on the form, want %v", along-waste, want)
		}
	}
}

// TestFormOfACornerAtTheTip: a turn at the very tip is no length of wood, so the form has the same end waste
// beyond both ends as without.
func TestFormOfACornerAtTheTip(t *testing.T) {
	plain, turned := reading(), reading()
	turned.Rocker.Radius, turned.Rocker.Tail = 0, 0
	turned.Rocker.Arcs = []piece.Arc{{Turn: 0.1}, {Radius: 42 * inch, Length: 41 * inch}}
	a, b := mustLay(t, plain).Form, mustLay(t, turned).Form
	for i := range a.Face {
		if got, want := r2.Norm(r2.Sub(b.Face[i], b.Low)), r2.Norm(r2.Sub(a.Face[i], a.Low)); math.Abs(got-want) > 1e-9 {
			t.Errorf("the face ends %v m from the low point, without the corner %v", got, want)
		}
	}
}

// TestManyStaves: where no number of staves leaves half of the stock, as many as are tried are laid out, and
// the stave is one of so many.
func TestManyStaves(t *testing.T) {
	d := reading()
	d.Panels = []piece.Panel{{Chord: 20 * inch, Rise: 10 * inch, Length: 20 * inch, Stock: 0.01 * inch}}
	l, err := Of(d, Options{})
	if err != nil {
		t.Fatal(err)
	}
	p := l.Panels[0]
	if want, err := p.Curve.Stave(); err != nil || p.Stave != want {
		t.Errorf("%d staves are told with %+v, want %+v, %v", p.Curve.Staves, p.Stave, want, err)
	}
}

// TestThickStripIsRefused names the thickest that works.
func TestThickStripIsRefused(t *testing.T) {
	d := reading()
	d.Rocker.Wood, d.Shop.Strip = "black walnut", 0.5*inch
	_, err := Of(d, Options{})
	var wrong *piece.KeyError
	if !errors.As(err, &wrong) || wrong.Key != "shop.strip" || !strings.Contains(err.Error(), "thickest that works") {
		t.Fatalf("%v", err)
	}
	d.Shop.Strip = 0.25 * inch
	mustLay(t, d)
}

// TestLegs: what is not drawn stands plumb where it is taken to stand; what is drawn meets the top
// edge where it was said, in three dimensions by its direction.
func TestLegs(t *testing.T) {
	d := reading()
	l := mustLay(t, d)
	if len(l.Legs) != 2 || len(l.Taken) != 2 || !l.Legs[0].Taken {
		t.Fatalf("legs %+v", l.Legs)
	}
	for i, at := range []float64{d.Seat.FrontEdge().X, d.Seat.Meet().X} {
		if leg := l.Legs[i]; !near(leg.Standing.Foot.X, at) || leg.Line.Rake != 0 || !near(leg.Line.Seat.X, at) {
			t.Errorf("leg %d stands at %v, want plumb at %v", i, leg.Standing.Foot, at)
		}
	}
	d.Rocker.Track = 21 * inch
	d.Legs = []piece.Leg{{Which: piece.Rear, At: -10 * inch, Rake: -8 * degree, Splay: 6 * degree}}
	l = mustLay(t, d)
	if len(l.Taken) != 1 || l.Taken[0] != piece.Front || l.Legs[0].Name != "rear leg" {
		t.Fatalf("taken %v", l.Taken)
	}
	leg := l.Legs[0]
	foot := r3.Vec{X: -10 * inch, Y: 42*inch - math.Sqrt(39.75*39.75-100)*inch, Z: 10.5 * inch} // on the circle of the top edge
	if r3.Norm(r3.Sub(leg.Standing.Foot, foot)) > 1e-12 {
		t.Errorf("foot %v, want %v", leg.Standing.Foot, foot)
	}
	way := r3.Sub(foot, leg.Line.Seat) // down the leg
	if !near(math.Atan2(way.X, -way.Y), -8*degree) || !near(math.Atan2(way.Z, -way.Y), 6*degree) || !near(r3.Norm(way), leg.Standing.Length) {
		t.Errorf("the leg goes %v", way)
	}
	// the seat's underside: the plane of the drawn top, 1 3/4 in lower, square to it
	up := r2.Unit(r2.Vec{X: -(d.Seat.FrontEdge().Y - d.Seat.Meet().Y), Y: d.Seat.FrontEdge().X - d.Seat.Meet().X})
	if below := -r2.Dot(up, r2.Sub(r2.Vec{X: leg.Line.Seat.X, Y: leg.Line.Seat.Y}, d.Seat.Meet())); !near(below, 1.75*inch) {
		t.Errorf("the leg enters the seat %v m under its top, want 1 3/4 in", below)
	}
	plumb := r3.Vec{Y: -1}
	if want := math.Acos(r3.Dot(way, plumb) / r3.Norm(way)); math.Abs(leg.Standing.Resultant-want) > 1e-9 { // an arc cosine
		t.Errorf("resultant %v, want %v", leg.Standing.Resultant, want)
	}
}

// TestLegAstray: a leg that was not drawn and misses where it is taken is left out, and said.
func TestLegAstray(t *testing.T) {
	d := reading()
	d.Rocker.Nose = 6 * inch
	l := mustLay(t, d)
	if len(l.Legs) != 1 || len(l.Taken) != 1 || len(l.OffRocker) != 1 || l.OffRocker[0] != piece.Front {
		t.Errorf("%d legs, taken %v, astray %v", len(l.Legs), l.Taken, l.OffRocker)
	}
}

// TestLegMisses names by how much and where.
func TestLegMisses(t *testing.T) {
	for _, tt := range []struct {
		leg  piece.Leg
		key  string
		says string
	}{
		{piece.Leg{Which: piece.Rear, At: -26 * inch}, "leg.at", "misses the rocker by"},
		{piece.Leg{Which: piece.Front, At: 20 * inch}, "leg.at", "ahead of the nose"},
		{piece.Leg{Which: piece.Front, At: 8 * inch, Top: 2 * inch}, "leg.top", "under the top edge"},
		{piece.Leg{Which: piece.Front, At: 8 * inch, Rake: 70 * degree}, "leg.1", "less than 60 degrees"},
	} {
		d := reading()
		d.Legs = []piece.Leg{tt.leg}
		_, err := Of(d, Options{})
		var wrong *piece.KeyError
		if !errors.As(err, &wrong) || wrong.Key != tt.key || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%+v: %v; want %s: %s", tt.leg, err, tt.key, tt.says)
		}
	}
}

// heavy is a chair whose mass is all in the seat frame, one point 24 in over the floor, on a
// 42 in arc with its legs at 8 in and −10 in.
func heavy() piece.Design {
	d := reading()
	d.Sitters, d.Piece = nil, piece.Piece{}
	for i := range d.People.Without {
		d.People.Without[i] = true
	}
	d.Rocker.Depth = 2 * inch
	d.Parts = []piece.Part{{Shape: piece.Point, Mass: 90, At: r2.Vec{Y: 24 * inch}}}
	d.Legs = []piece.Leg{{Which: piece.Front, At: 8 * inch}, {Which: piece.Rear, At: -10 * inch}}
	return d
}

// TestRemediesByHand: a cut c at both rear legs, a run apart, turns the seat by α = c/run about the
// front foot, t over the floor. That moves the balance point back by α·(h − t), and on an arc the piece then
// rests further back by that over R − h: altogether
//
//	α·(R − t)/(R − h).
func TestRemediesByHand(t *testing.T) {
	d := heavy()
	l := mustLay(t, d)
	if len(l.Remedies) != 6 {
		t.Fatalf("%d remedies", len(l.Remedies))
	}
	footOver := (42 - math.Sqrt(42*42-64)) + 2 // in: the rise at 8 in and the depth
	grows := (42 - footOver) / (42 - 24)
	now := l.Rests[0].SeatFalls
	for _, r := range l.Remedies {
		off := r.Shows - now
		// the cure cuts where the level shows that the seat falls forward
		if want := -off / grows * 18 * inch; math.Abs(r.Rear-want) > 0.02*math.Abs(want) { // 2 %: the formula is of small turns
			t.Errorf("shows %.2f degrees more: rear %v in, want %v", off/degree, r.Rear/inch, want/inch)
		}
		if math.Abs(r.Front+r.Rear) > 0.03*math.Abs(r.Rear) { // cutting in front turns the other way
			t.Errorf("front %v, rear %v", r.Front, r.Rear)
		}
		if !math.IsNaN(r.Slide) {
			t.Errorf("slide %v on a concentric top", r.Slide)
		}
	}
	d.Rocker.Top = piece.Straight
	d.Rocker.Depth = 8 * inch
	for _, r := range mustLay(t, d).Remedies {
		// on a straight top the balance point moves along by so much, and the piece tilts by slide/(R − h)
		off := r.Shows - now
		if want := math.Tan(off) * 18 * inch; math.Abs(r.Slide-want) > 0.01*math.Abs(want) {
			t.Errorf("shows %.2f degrees more: slide %v in, want %v", off/degree, r.Slide/inch, want/inch)
		}
	}
}

// TestRemediesCure: an empty piece that is off by a row's own cure shows what the row says; and one
// that shows it for another reason shows, once any cure of the row is done, what is drawn, as near as a level reads.
func TestRemediesCure(t *testing.T) {
	tapered := reading()
	tapered.Rocker.Top, tapered.Rocker.NoseDepth, tapered.Rocker.TailDepth = piece.Taper, 1.25*inch, 1.25*inch
	tapered.Rocker.Made = piece.Sawn
	raked := reading()
	raked.Legs = []piece.Leg{{Which: piece.Front, At: 8 * inch, Rake: 5 * degree}, {Which: piece.Rear, At: -10 * inch, Rake: -8 * degree}}
	settee := reading()
	settee.Kind, settee.Seat.Width, settee.Rocker.Radius, settee.Piece.Mass = piece.Settee, 44*inch, 40*inch, 24
	for name, d := range map[string]piece.Design{"chair": reading(), "tapered": tapered, "raked": raked, "settee": settee} {
		l := mustLay(t, d)
		shows := func(changes ...func(d *piece.Design)) float64 {
			off := d.Clone()
			for _, change := range changes {
				change(&off)
			}
			r, err := check.Balance(off)
			if err != nil {
				t.Fatal(err)
			}
			return r.Loads[0].SeatFall // Loads[0] is the piece alone
		}
		drawn := shows()
		rear := func(x float64) func(*piece.Design) { return func(d *piece.Design) { d.Seat.RearCut += x } }
		front := func(x float64) func(*piece.Design) { return func(d *piece.Design) { d.Seat.FrontCut += x } }
		slide := func(x float64) func(*piece.Design) { return func(d *piece.Design) { d.Seat.Slide += x } }
		cured := 0
		for _, r := range l.Remedies {
			const level = 2e-5 // rad, as near as the search goes
			for _, one := range []struct {
				cure   float64
				change func(x float64) func(*piece.Design)
			}{{r.Rear, rear}, {r.Front, front}, {r.Slide, slide}} {
				if math.IsNaN(one.cure) {
					continue
				}
				cured++
				if got := shows(one.change(-one.cure)); math.Abs(got-r.Shows) > level {
					t.Errorf("%s, off by %v in: shows %v degrees, the table says %v", name, -one.cure/inch, got/degree, r.Shows/degree)
				}
				for other, off := range map[string]func(*piece.Design){"rear": rear(-r.Rear), "front": front(-r.Front)} {
					if got := shows(off, one.change(one.cure)); !(math.Abs(got-drawn) < degree/2) {
						t.Errorf("%s, %s legs off, shows %v degrees; cured by %v in it shows %v, drawn is %v",
							name, other, r.Shows/degree, one.cure/inch, got/degree, drawn/degree)
					}
				}
			}
		}
		if least := 12; cured < least || len(l.Remedies) != 6 {
			t.Errorf("%s: %d cures in %d rows, want %d or more", name, cured, len(l.Remedies), least)
		}
	}
}

// TestRemediesAreOfTheEmptyPiece: who sits in it changes no row.
func TestRemediesAreOfTheEmptyPiece(t *testing.T) {
	d := reading()
	want := mustLay(t, d)
	most, least, drawn := want.Remedies[0].Shows, want.Remedies[5].Shows, want.Rests[0].SeatFalls
	if math.Abs(most-least-6*degree) > 1e-12 || math.Abs((most+least)/2-drawn) > degree/4 { // drawn is rounded to half a degree
		t.Errorf("rows from %v to %v degrees; want three to either side of %v", most/degree, least/degree, drawn/degree)
	}
	d.Sitters[0].Mass *= 1.3
	for i, r := range mustLay(t, d).Remedies {
		if r.Shows != want.Remedies[i].Shows || r.Rear != want.Remedies[i].Rear || r.Front != want.Remedies[i].Front {
			t.Errorf("row %d is %+v under a heavier owner, else %+v", i, r, want.Remedies[i])
		}
	}
}

// TestRises: five stations by the circle's formula, one of them the low point.
func TestRises(t *testing.T) {
	l := mustLay(t, reading())
	r := l.Rises
	if r.Low != 3 || !near(r.Spacing, 8*inch) || !near(r.Rows[r.Low-1].Rise, 0) {
		t.Fatalf("%+v", r)
	}
	for _, row := range r.Rows {
		if want := 42*inch - math.Sqrt(42*42*inch*inch-row.At*row.At); math.Abs(row.Rise-want) > 1e-12 {
			t.Errorf("rise at %v in: %v, want %v", row.At/inch, row.Rise, want)
		}
		if row.Allowed < leastDifference {
			t.Errorf("may differ by %v", row.Allowed)
		}
	}
}

// TestTwins: a design in inches and the same in millimetres lie out alike where the shop is said.
func TestTwins(t *testing.T) {
	d := reading()
	d.Shop = piece.Shop{Spacing: 0.05, Cutter: 0.012, Kerf: 0.003, Planing: 0.0015, EndWaste: 0.05, Springback: 0.07}
	e := d
	e.Units = quantity.Metric
	a, b := mustLay(t, d), mustLay(t, e)
	if a.Strips.Stack != b.Strips.Stack || a.Outline.Length() != b.Outline.Length() ||
		a.Legs[0].Standing != b.Legs[0].Standing || a.Form.Radii[0] != b.Form.Radii[0] {
		t.Error("the twins differ")
	}
}

// TestTaperedWood: the mass of a tapered rocker by piece's strip is that of bench's outline, two
// methods; the top is followed to 0.05 mm, over a metre of it.
func TestTaperedWood(t *testing.T) {
	d := reading()
	d.Rocker.Depth, d.Rocker.Width, d.Rocker.Density = 2.25*inch, 1.25*inch, 700
	d.Rocker.Top, d.Rocker.NoseDepth, d.Rocker.TailDepth = piece.Taper, 1.25*inch, inch
	d.Rocker.Made = piece.Sawn
	d.Piece, d.Parts = piece.Piece{}, []piece.Part{{Shape: piece.Point, Mass: 5, At: r2.Vec{Y: 0.4}}}
	l := mustLay(t, d)
	wood := l.Report.Loads[0].Rig.Body.Mass - 5
	if want := 2 * 1.25 * inch * 700 * l.Outline.Area(); math.Abs(wood-want) > 2*1.25*inch*700*0.05e-3 {
		t.Errorf("the rockers weigh %v kg, by their outline %v", wood, want)
	}
}

// TestAnyProfile: whatever curve balances lies out, or has an error that names an entry.
func TestAnyProfile(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 7))
	laid := 0
	for range 150 {
		d := reading()
		d.Rocker = piece.Rocker{Nose: 0.2 + 0.3*rng.Float64(), Made: piece.Made(rng.IntN(4)), Sole: 0.004 * float64(rng.IntN(2)),
			NoseEnd: bench.Finish(rng.IntN(3)), TailEnd: bench.Finish(rng.IntN(3))}
		for range 1 + rng.IntN(3) {
			switch rng.IntN(8) {
			case 0:
				d.Rocker.Arcs = append(d.Rocker.Arcs, piece.Arc{Flat: 0.05 + 0.1*rng.Float64()})
			case 1:
				d.Rocker.Arcs = append(d.Rocker.Arcs, piece.Arc{Turn: 0.1 * rng.Float64()}, piece.Arc{Radius: 1, Length: 0.3})
			case 2:
				d.Rocker.Arcs = append(d.Rocker.Arcs, piece.Arc{Radius: -1 - rng.Float64(), Length: 0.2})
			default:
				d.Rocker.Arcs = append(d.Rocker.Arcs, piece.Arc{Radius: 0.7 + rng.Float64(), Length: 0.2 + 0.4*rng.Float64()})
			}
		}
		if rng.IntN(3) == 0 {
			d.Rocker.Top, d.Rocker.NoseDepth, d.Rocker.TailDepth = piece.Taper, 0.04, 0.03
		}
		l, err := Of(d, Options{})
		var wrong *piece.KeyError
		switch {
		case err != nil && !errors.As(err, &wrong):
			t.Fatalf("%+v: %v", d.Rocker, err)
		case err == nil:
			laid++
			if (l.Form == nil) == (l.Board == nil) {
				t.Fatalf("%+v: a form and a board, or neither", d.Rocker)
			}
			length := 0.0
			for _, s := range l.Rocker.Edge.Drawn() {
				length += s.Length
			}
			floor, _, _, _ := l.Rocker.Edges()
			if math.Abs(floor.Length()-length) > 1e-9 {
				t.Fatalf("the floor edge is %v long, its arcs %v", floor.Length(), length)
			}
		}
	}
	if laid < 75 { // half of them; a fifth are no rockers at all
		t.Errorf("only %d of 150 lay out", laid)
	}
}

// TestPair: left and right lie in the board, the cutter and its web apart and no more somewhere, and the grain
// arrow is mirrored.
func TestPair(t *testing.T) {
	for _, cutter := range []float64{0, 0.25 * inch, 2 * inch} {
		for _, top := range []piece.Top{piece.Concentric, piece.Taper} {
			d := reading()
			d.Rocker.Made, d.Rocker.Top, d.Rocker.NoseDepth, d.Shop.Cutter = piece.Sawn, top, 1.5*inch, cutter
			p := mustLay(t, d).Board.Pair
			left, right := p.Left.Outline.Flattened(1e-5), p.Right.Outline.Flattened(1e-5)
			for _, list := range [][]r2.Vec{left, right} {
				for _, q := range list {
					if q.X < -1e-9 || q.Y < -1e-9 || q.X > p.Length+1e-9 || q.Y > p.Width+1e-9 {
						t.Fatalf("%v is out of the board of %v by %v", q, p.Length, p.Width)
					}
				}
			}
			closest := math.Inf(1) // corners of either from points of the other, no further apart than 0.1 mm
			for _, pair := range [][2]bench.Path{{p.Left.Outline, p.Right.Outline}, {p.Right.Outline, p.Left.Outline}} {
				for _, q := range pair[0].Flattened(1e-4) {
					for d := 0.0; d < pair[1].Length(); {
						on, _ := pair[1].At(d)
						off := r2.Norm(r2.Sub(q, on))
						closest = min(closest, off)
						d += max(1e-4, off-closest) // no nearer place within that
					}
				}
			}
			want := cutter + 0.125*inch
			if cutter == 0 {
				want = (0.5 + 0.125) * inch // as usual: half an inch, and an eighth of wood
			}
			if closest < want || closest > want+2e-4 { // so little is it widened at a time, and so fine the points
				t.Errorf("cutter %v in: the two are %v in apart, want %v", cutter/inch, closest/inch, want/inch)
			}
			if p.Left.Grain != (r2.Vec{X: 1}) || p.Right.Grain != (r2.Vec{X: -1}) {
				t.Errorf("grain %v and %v", p.Left.Grain, p.Right.Grain)
			}
		}
	}
}

// TestCutList by hand: strips, and the mass of one named wood.
func TestCutList(t *testing.T) {
	d := reading()
	d.Rocker.Density = 600
	l := mustLay(t, d)
	c := l.Cuts[0]
	cubic, feet := c.Volume()
	want := 18 * 45 * (1.25 + 1.0/16) * (0.25 + 1.0/16) / 144 // board feet: a square foot, an inch thick
	if c.Count != 18 || math.Abs(feet-want) > 1e-9 || math.Abs(cubic-want*144*inch*inch*inch) > 1e-12 {
		t.Errorf("%d strips of %v board feet, want %v", c.Count, feet, want)
	}
	// two bands of 41 in along an arc of 42 in, 2 1/4 deep, between radii: half the angle by the difference of the squares
	if mass := 2 * 1.25 * 41.0 / 42 / 2 * (42*42 - 39.75*39.75) * inch * inch * inch * 600; math.Abs(c.Mass()-mass) > 1e-9 {
		t.Errorf("mass %v, want %v", c.Mass(), mass)
	}
}
