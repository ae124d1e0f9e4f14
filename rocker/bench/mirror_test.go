package bench

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// laid returns the rocker of another size, seen from the other side where side is −1.
func laid(t *testing.T, r Rocker, side, size float64) Rocker {
	t.Helper()
	var spans []rocker.Span
	for _, s := range r.Edge.Drawn() {
		s.Radius *= size
		s.Length *= size
		spans = append(spans, s.Span)
	}
	nose, tail := r.Edge.Reach()
	if side < 0 {
		slices.Reverse(spans)
		nose = tail
		r.NoseDepth, r.TailDepth, r.Nose, r.Tail = r.TailDepth, r.NoseDepth, r.Tail, r.Nose
	}
	r.Edge = chain(t, size*max(0, nose), spans...)
	for _, length := range []*float64{&r.Depth, &r.NoseDepth, &r.TailDepth, &r.Nose.Radius, &r.Tail.Radius, &r.Sole, &r.Middle, &r.Width} {
		*length *= size
	}
	return r
}

// A twin is a rocker and the same one laid otherwise.
type twin struct {
	p, q       Rocker
	side, size float64
}

// within is how far a few thousand roundings may lie apart where lines meet aslant, m.
const within = 1e-9

func (c twin) alike(t *testing.T, name string, p, q float64) {
	t.Helper()
	if math.Abs(p-q) > within*max(1, math.Abs(p)) && p != q {
		t.Fatalf("%s: %v; laid otherwise (%v, %v) %v\n%+v of %+v", name, p, c.side, c.size, q, c.p, c.p.Edge.Drawn())
	}
}

func (c twin) same(t *testing.T, name string, p, q r2.Vec) {
	t.Helper()
	c.alike(t, name, c.side*c.size*p.X, q.X)
	c.alike(t, name, c.size*p.Y, q.Y)
}

// TestMirroredAndScaled: all that is read from a rocker follows it where it is seen from the other side,
// nose and tail changed over, or drawn in another size.
func TestMirroredAndScaled(t *testing.T) {
	rng := rand.New(rand.NewPCG(45, 46))
	for n := 0; n < 30; {
		r := Rocker{Edge: randomEdge(rng), Depth: 0.03 + 0.06*rng.Float64(), Middle: 0.25, Width: 0.05,
			Nose: End{Finish: Finish(rng.IntN(3)), Radius: 0.01}, Tail: End{Finish: Finish(rng.IntN(3)), Radius: 0.005}}
		side, size := -1.0, 1.0
		switch rng.IntN(4) {
		case 0:
			r.Top, r.Depth, size = rocker.Straight, 0.3, 5
		case 1:
			r.NoseDepth, r.TailDepth = 0.03, 0.04 // followed to 0.05 mm in every size
		case 2:
			r.Sole = 0.01
			fallthrough
		default:
			size, side = 2, 1-2*float64(rng.IntN(2))
		}
		outline, err := r.Outline()
		if err != nil {
			continue
		}
		n++
		c := twin{r, laid(t, r, side, size), side, size}
		other, err := c.q.Outline()
		if err != nil {
			t.Fatalf("%+v: %v", r, err)
		}
		c.alike(t, "length", size*outline.Length(), other.Length())
		c.alike(t, "area", size*size*outline.Area(), other.Area())
		c.boards(t, outline, other, 3*(rng.Float64()-0.5))
		c.rows(t, 0.05+0.03*rng.Float64())
		c.sweeps(t)
		c.legs(t, rng)
	}
}

// boards holds blank, spooning, run-out, thinnest place and bend.
func (c twin) boards(t *testing.T, outline, other Path, grain float64) {
	t.Helper()
	p, q := SmallestBlank(outline), SmallestBlank(other)
	if off := q.Length*q.Width/(p.Length*p.Width*c.size*c.size) - 1; math.Abs(off) > 1e-4 { // chords of 5 µm in every size
		t.Fatalf("smallest blank %+v; laid otherwise %+v", p, q)
	}
	p, q = BlankAlong(outline, grain), BlankAlong(other, c.side*grain)
	c.alike(t, "blank", c.size*p.Length, q.Length)
	c.alike(t, "blank", c.size*p.Width, q.Width)
	shift, width, err := p.Nest(outline, 0.003)
	shifted, wide, wrong := q.Nest(other, c.size*0.003)
	if err != nil || wrong != nil {
		t.Fatal(err, wrong)
	}
	c.alike(t, "shift", c.size*shift, shifted)
	c.alike(t, "spooned", c.size*width, wide)
	nose, tail, _ := c.p.Runout(p)
	first, last, _ := c.q.Runout(q)
	if c.side < 0 {
		first, last = last, first
	}
	c.alike(t, "run-out", nose, first)
	c.alike(t, "run-out", tail, last)
	thin, err := c.p.Thinnest(p)
	thinner, wrong := c.q.Thinnest(q)
	if (err == nil) != (wrong == nil) {
		t.Fatal(err, wrong)
	}
	c.alike(t, "thinnest", c.size*thin, thinner)
	long, tight, err := c.p.Bend()
	longer, tighter, wrong := c.q.Bend()
	if (err == nil) != (wrong == nil) {
		t.Fatal(err, wrong)
	}
	c.alike(t, "longest", c.size*long, longer)
	if math.Abs(tight) < 100 { // a taper's own arcs may be next to straight
		c.alike(t, "tightest", c.size*tight, tighter)
	}
}

// rows holds the stations over the floor and over the chord.
func (c twin) rows(t *testing.T, spacing float64) {
	t.Helper()
	for i, of := range []func(Rocker, float64) ([]Station, error){Rocker.Stations, Rocker.ChordStations} {
		rows, err := of(c.p, spacing)
		others, wrong := of(c.q, c.size*spacing)
		if err != nil || wrong != nil || len(rows) != len(others) {
			t.Fatalf("%d: %d rows, %v; laid otherwise %d, %v", i, len(rows), err, len(others), wrong)
		}
		for _, list := range [][]Station{rows, others} {
			slices.SortStableFunc(list, func(a, b Station) int { return int(a.Ends - b.Ends) })
		}
		if c.side < 0 {
			passing := 0
			for passing < len(others) && others[passing].Ends == Passing {
				passing++
			}
			slices.Reverse(others[:passing])
			slices.SortStableFunc(others[passing:], func(a, b Station) int { // nose before tail
				return 10*int(a.Ends-b.Ends) + map[bool]int{true: 1}[a.Nose] - map[bool]int{true: 1}[b.Nose]
			})
		}
		for k, row := range rows {
			other := others[k]
			if row.Ends != other.Ends || row.Ends != Passing && (row.Nose == other.Nose) != (c.side > 0) {
				t.Fatalf("row %d is %+v; laid otherwise %+v", k, row, other)
			}
			c.same(t, "station", r2.Vec{X: row.At}, r2.Vec{X: other.At})
			if row.Ends != Passing {
				continue // an upright end passes a place of rounding
			}
			c.same(t, "floor", row.Floor, other.Floor)
			c.same(t, "wood", row.Wood, other.Wood)
			c.same(t, "top", row.Top, other.Top)
		}
	}
}

// sweeps holds the trammel's pivots and arms.
func (c twin) sweeps(t *testing.T) {
	t.Helper()
	list, corner, err := c.p.Trammel()
	others, at, wrong := c.q.Trammel()
	if err != nil || wrong != nil || len(list) != len(others) {
		t.Fatal(list, err, others, wrong)
	}
	low := math.Inf(1)
	for _, q := range c.p.Edge.Outline(1e-7) {
		low = min(low, q.Y)
	}
	if math.Abs(corner.Y-low) > 1e-7 { // the chords
		t.Fatalf("the corner %v lies not under the lowest point, %v", corner, low)
	}
	if c.side < 0 {
		slices.Reverse(others)
	}
	for i, s := range list {
		o := others[i]
		if c.side < 0 {
			o.From, o.To = o.To, o.From
		}
		c.same(t, "from", r2.Add(s.From, corner), r2.Add(o.From, at))
		c.same(t, "to", r2.Add(s.To, corner), r2.Add(o.To, at))
		if s.Radius != 0 {
			c.same(t, "pivot", r2.Add(s.Pivot, corner), r2.Add(o.Pivot, at))
		}
		for k, arm := range []Arm{s.WoodArm(0.012), s.TopArm(0.012)} {
			far := []Arm{o.WoodArm(c.size * 0.012), o.TopArm(c.size * 0.012)}[k]
			c.alike(t, "arm", c.size*arm.Inside, far.Inside)
			c.alike(t, "arm", c.size*arm.Middle, far.Middle)
			c.alike(t, "arm", c.size*arm.Outside, far.Outside)
		}
	}
}
