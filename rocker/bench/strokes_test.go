package bench

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// TestMeetInEverySize: lines that cross aslant do so in every size; an end is as long as a nanometre, and a line
// that misses a circle by rounding touches it.
func TestMeetInEverySize(t *testing.T) {
	for _, size := range []float64{1e-6, 1, 1e6} {
		for _, other := range []float64{1e-6, 1, 1e6} {
			for _, angle := range []float64{5e-4, 0.1, 1.5} {
				across := r2.Scale(other, ahead(angle))
				a := Piece{r2.Vec{}, Stroke{To: r2.Vec{X: size}}}
				b := Piece{r2.Sub(r2.Vec{X: size / 4}, r2.Scale(0.5, across)), Stroke{To: r2.Add(r2.Vec{X: size / 4}, r2.Scale(0.5, across))}}
				found := lineLine(a, b)
				// a place on one known to a rounding of the other
				if len(found) != 1 || r2.Norm(r2.Sub(found[0], r2.Vec{X: size / 4})) > 1e-11*(size+other) {
					t.Errorf("lines of %v and %v m at %v rad cross at %v", size, other, angle, found)
				}
			}
		}
	}
	for _, long := range []float64{1e-3, 1, 1e2} {
		line := Piece{r2.Vec{}, Stroke{To: r2.Vec{X: long}}}
		for _, over := range []float64{-long / 2, 0, 0.5e-9, 2e-9} {
			for _, x := range []float64{long + over, -over} {
				if got := len(meet(line, Piece{r2.Vec{X: x, Y: -1}, Stroke{To: r2.Vec{X: x, Y: 1}}})); (got == 1) != (over < 1e-9) {
					t.Errorf("a line of %v m is met %d times at %v", long, got, x)
				}
			}
		}
	}
	for _, radius := range []float64{1e-3, 1, 1e3} {
		touch, past := halfChord(r2.Vec{}, r2.Vec{X: 1}, radius, radius*(1+2e-15)), halfChord(r2.Vec{}, r2.Vec{X: 1}, radius, radius*(1+1e-12))
		if len(touch) != 1 || len(past) != 0 {
			t.Errorf("radius %v: touched at %v, passed at %v", radius, touch, past)
		}
	}
}

// TestTouchIsNotSimple: a path whose end stands on an earlier stroke touches itself, whichever way it is turned.
func TestTouchIsNotSimple(t *testing.T) {
	p := Polyline(false, r2.Vec{}, r2.Vec{X: 1}, r2.Vec{X: 1, Y: 1}, r2.Vec{X: 0.5, Y: 1}, r2.Vec{X: 0.5})
	short := p
	short.Strokes = slices.Clone(p.Strokes)
	short.Strokes[3].To.Y = 0.001
	for k := range 4 {
		for _, list := range [][2]Path{{p, short}, {p.Mirrored(0), short.Mirrored(0)}, {p.Reversed(), short.Reversed()}} {
			quarter := float64(k) * math.Pi / 2
			if list[0].Turned(quarter, r2.Vec{}).Simple() || !list[1].Turned(quarter, r2.Vec{}).Simple() {
				t.Errorf("turned by %v: what touches itself is simple, or what ends short of it is not", quarter)
			}
		}
	}
}

// TestFlattenedCorners: a polygon is flattened to its own corners, and no chord turns by more than half a circle.
func TestFlattenedCorners(t *testing.T) {
	corners := []r2.Vec{{}, {X: 1}, {X: 1, Y: 2}, {X: -1}}
	if got := Polyline(false, corners...).Flattened(1e-3); !slices.Equal(got, corners) {
		t.Errorf("%v, want %v", got, corners)
	}
	for turn := 3.15; turn < 6.2; turn += 0.1 {
		if got := (Path{Strokes: []Stroke{{r2.Vec{X: 0.1}, turn}}}).Flattened(10); len(got) != 3 {
			t.Errorf("a turn of %v rad in %d chords", turn, len(got)-1)
		}
	}
}

// TestSegmentOfHalves: an arc's segment is the segments of its halves and the triangle between.
func TestSegmentOfHalves(t *testing.T) {
	for _, turn := range []float64{1e-4, 0.004, 0.0099, 0.0101, 0.0199, 0.5, 3, 6} {
		for _, sign := range []float64{1, -1} {
			s := Piece{Stroke: Stroke{r2.Vec{X: 1}, sign * turn}}
			middle := s.At(0.5)
			want := s.Cut(0, 0.5).segment() + s.Cut(0.5, 1).segment() - r2.Cross(s.chord(), middle)/2
			tolerance := 1e-15 / turn // a rounding of the middle, over a sagitta of turn/8
			if turn > 0.01 {
				tolerance = 2e-15 / turn / min(1, turn) // a rounding of the turn, over turn³/6
			}
			if got := s.segment(); math.Abs(got/want-1) > tolerance {
				t.Errorf("turn %v: segment %v, of its halves %v", sign*turn, got, want)
			}
		}
	}
}

// TestBiarcs: they begin and end with the headings given and are fair between.
func TestBiarcs(t *testing.T) {
	rng := rand.New(rand.NewPCG(59, 60))
	for range 300 {
		way := 7 * rng.Float64()
		q := r2.Vec{X: rng.Float64(), Y: rng.Float64()}
		hp, hq := way+2*(rng.Float64()-0.5), way+2*(rng.Float64()-0.5)
		pair := biarc(r2.Sub(q, ahead(way)), hp, q, hq)
		for _, off := range []float64{pair[0].heading(0) - hp, pair[0].heading(1) - pair[1].heading(0), pair[1].heading(1) - hq} {
			if math.Abs(math.Remainder(off, 2*math.Pi)) > 1e-12 || pair[0].To != pair[1].From || pair[1].To != q {
				t.Errorf("from %v to %v: %+v", hp, hq, pair)
			}
		}
	}
	for _, turn := range []float64{0, 0.5, -0.5} {
		s := Piece{r2.Vec{}, Stroke{r2.Vec{X: 2}, turn}}
		for _, off := range []float64{0.3, -0.3} {
			if got := s.off(r2.Add(s.At(0.4), r2.Scale(off, left(s.heading(0.4))))); math.Abs(got-0.3) > near {
				t.Errorf("%+v: %v off it is %v", s, off, got)
			}
		}
	}
}

// TestTaperInEverySize: the top of one arc keeps its rule to 0.05 mm, ten and ninety times as large too.
func TestTaperInEverySize(t *testing.T) {
	for _, size := range []float64{1, 10, 90} {
		radius, nose, tail := size, 0.4*size, 0.5*size
		r := Rocker{Edge: rocker.Single(radius, nose, tail), Depth: 0.09 * size, NoseDepth: 0.03 * size, TailDepth: 0.12 * size}
		_, _, top, err := r.Edges()
		if err != nil {
			t.Fatal(err)
		}
		for _, q := range top.Flattened(1e-6) {
			out := r2.Sub(q, r2.Vec{Y: radius})
			way, tip, reach := radius*math.Atan2(out.X, -out.Y), r.NoseDepth, nose
			if way < 0 {
				tip, reach = r.TailDepth, tail
			}
			if want := r.Depth + (tip-r.Depth)*way*way/reach/reach; math.Abs(radius-r2.Norm(out)-want) > 0.051e-3 { // and the chords
				t.Errorf("size %v: %v deep %v m along, want %v", size, radius-r2.Norm(out), way, want)
			}
		}
	}
	for _, tt := range []struct {
		depth, tip float64
		fits       bool
	}{{0.03, 0.049, true}, {0.06, 0.049, false}, {0.06, 0.04, true}} { // over an arc of 0.05 m at one end
		tail := Rocker{Edge: chain(t, 0.4, rocker.Arc(1, 0.8), rocker.Arc(0.05, 0.05)), Depth: tt.depth, TailDepth: tt.tip}
		for _, r := range []Rocker{tail, laid(t, tail, -1, 1)} {
			if _, _, _, err := r.Edges(); (err == nil) != tt.fits {
				t.Errorf("from %v to %v deep: %v", tt.depth, tt.tip, err)
			}
		}
	}
}
