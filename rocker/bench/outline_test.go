package bench

import (
	"errors"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

func mustOutline(t testing.TB, r Rocker) Path {
	t.Helper()
	p, err := r.Outline()
	if err != nil {
		t.Fatalf("%+v: %v", r, err)
	}
	return p
}

func chain(t testing.TB, nose float64, spans ...rocker.Span) rocker.Profile {
	t.Helper()
	p, err := rocker.Chain(nose, spans...)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// TestOutlineAreas holds what has a closed form: the sector of a ring is a(R² − r²)/2 of its
// angle a; a bar is length times depth; a half circle adds πd²/8; a square corner eased to r
// loses r²(1 − π/4); a corner of angle τ between two bars counts the kite d²·tan(τ/2) once, not
// twice; a notch adds the sector d²|τ|/2; a sole takes the ring under it.
func TestOutlineAreas(t *testing.T) {
	const R, nose, tail, d = 1.05, 0.4, 0.5, 0.06
	const sector = d * (nose + tail) * (1 - d/(2*R))
	one := rocker.Single(R, nose, tail)
	bar := chain(t, 0.4, rocker.Flat(0.9))
	bent := func(turn float64) rocker.Profile {
		return chain(t, 0.2, rocker.Flat(0.4), rocker.Turn(turn), rocker.Flat(0.5))
	}
	for _, tt := range []struct {
		name string
		r    Rocker
		want float64
	}{
		{"one arc", Rocker{Edge: one, Depth: d}, sector},
		{"round nose", Rocker{Edge: one, Depth: d, Nose: End{Finish: Round}}, sector + math.Pi*d*d/8},
		{"round ends", Rocker{Edge: one, Depth: d, Nose: End{Finish: Round}, Tail: End{Finish: Round}}, sector + math.Pi*d*d/4},
		{"sole", Rocker{Edge: one, Depth: d, Sole: 0.01}, sector - 0.01*(nose+tail)*(1-0.01/(2*R))},
		{"bar", Rocker{Edge: bar, Depth: d}, 0.9 * d},
		{"bar, straight top", Rocker{Edge: bar, Depth: d, Top: rocker.Straight}, 0.9 * d},
		{"bar, eased nose", Rocker{Edge: bar, Depth: d, Nose: End{Eased, 0.02}}, 0.9*d - 2*0.02*0.02*(1-math.Pi/4)},
		{"bar, eased ends", Rocker{Edge: bar, Depth: d, Nose: End{Eased, 0.02}, Tail: End{Eased, 0.01}},
			0.9*d - 2*(0.02*0.02+0.01*0.01)*(1-math.Pi/4)},
		{"corner", Rocker{Edge: bent(0.4), Depth: d}, 0.9*d - d*d*math.Tan(0.2)},
		{"notch", Rocker{Edge: bent(-0.4), Depth: d}, 0.9*d + d*d*0.2},
		// Simpson on squares of the length
		{"tapered bar", Rocker{Edge: bar, Depth: d, NoseDepth: 0.04, TailDepth: 0.03}, 0.9*d - (0.4*0.02+0.5*0.03)/3},
	} {
		tolerance := near
		if strings.HasPrefix(tt.name, "tapered") {
			tolerance = 0.00005 * 0.9 // 0.05 mm along the top
		}
		if got := mustOutline(t, tt.r).Area(); math.Abs(got-tt.want) > tolerance {
			t.Errorf("%s: area %v, want %v", tt.name, got, tt.want)
		}
	}
}

// TestOutlineArcs: floor edge, top edge and rounded ends of one arc are four true arcs about
// the centres they must have.
func TestOutlineArcs(t *testing.T) {
	const R, d = 1.05, 0.06
	list := mustOutline(t, Rocker{Edge: rocker.Single(R, 0.4, 0.5), Depth: d, Nose: End{Finish: Round}, Tail: End{Finish: Round}}).Pieces()
	if len(list) != 4 {
		t.Fatalf("%d strokes, want 4", len(list))
	}
	middle := func(angle float64) r2.Vec {
		return r2.Vec{X: (R - d/2) * math.Sin(angle), Y: R - (R-d/2)*math.Cos(angle)}
	}
	for i, want := range []struct {
		radius float64
		centre r2.Vec
	}{{R, r2.Vec{Y: R}}, {d / 2, middle(0.4 / R)}, {-(R - d), r2.Vec{Y: R}}, {d / 2, middle(-0.5 / R)}} {
		if math.Abs(list[i].Radius()-want.radius) > near || r2.Norm(r2.Sub(list[i].centre(), want.centre)) > near {
			t.Errorf("stroke %d: radius %v about %v, want %v", i, list[i].Radius(), list[i].centre(), want)
		}
	}
}

// TestLikeRadii: arcs that touch and hardly differ, of which rounding could make crossings.
func TestLikeRadii(t *testing.T) {
	for more := 1e-2; more > 1e-13; more /= 3 {
		for _, other := range []float64{1.05 + more, 1.05 - more} {
			r := Rocker{Edge: chain(t, 0.4, rocker.Arc(1.05, 0.5), rocker.Arc(other, 0.4)), Depth: 0.06}
			want := 0.06 * (0.9 - 0.03*(0.5/1.05+0.4/other))
			if got := mustOutline(t, r).Area(); math.Abs(got-want) > near {
				t.Errorf("radius %v: area %v, want %v", other, got, want)
			}
		}
	}
}

// TestEasedTouches: an eased corner on arcs is fair at both its ends and has its radius.
func TestEasedTouches(t *testing.T) {
	r := Rocker{Edge: rocker.Single(1.05, 0.4, 0.5), Depth: 0.06, Nose: End{Eased, 0.012}, Tail: End{Eased, 0.02}}
	list := mustOutline(t, r).Pieces()
	eased := 0
	for i, s := range list {
		next := list[(i+1)%len(list)]
		if turn := corner(s, next); math.Abs(turn) > 1e-12 {
			t.Errorf("a corner of %v rad behind stroke %d", turn, i)
		}
		if r := s.Radius(); math.Abs(r-0.012) < near || math.Abs(r-0.02) < near {
			eased++
		}
	}
	if len(list) != 8 || eased != 4 {
		t.Errorf("%d strokes, %d eased corners; want 8 and 4", len(list), eased)
	}
}

// TestTaper: the top of a tapered rocker is as deep as its rule says, square to the floor
// edge, by the line from each place of the floor edge to the drawn top.
func TestTaper(t *testing.T) {
	edge := chain(t, 0.4, rocker.Arc(0.9, 0.3), rocker.Arc(1.3, 0.25), rocker.Arc(-0.8, 0.2), rocker.Flat(0.1))
	r := Rocker{Edge: edge, Depth: 0.07, NoseDepth: 0.045, TailDepth: 0.03}
	_, _, top, err := r.Edges()
	if err != nil {
		t.Fatal(err)
	}
	walked := 0.4 // from the origin towards the nose; the spans come from the nose
	for _, s := range edge.Drawn() {
		for k := 0; k <= 40; k++ {
			on := s.Length * float64(k) / 40
			bend := 0.0
			if s.Radius != 0 {
				bend = 1 / s.Radius
			}
			_, du := rocker.Down(s.From + on*bend/2)
			chord := on
			if s.Radius != 0 {
				chord = 2 * s.Radius * math.Sin(on*bend/2)
			}
			p := r2.Add(s.Start, r2.Scale(chord, du))
			down, _ := rocker.Down(s.From + on*bend)
			part, tip := (walked-on)/0.4, 0.045
			if part < 0 {
				part, tip = (on-walked)/0.45, 0.03
			}
			want := r2.Sub(p, r2.Scale(0.07+(tip-0.07)*part*part, down))
			off := math.Inf(1)
			for _, q := range top.Pieces() {
				if !q.straight() && q.Length() > 0 {
					c := q.centre()
					middle := q.At(0.5)
					from := math.Atan2(want.Y-c.Y, want.X-c.X) - math.Atan2(middle.Y-c.Y, middle.X-c.X)
					angle := math.Abs(math.Remainder(from, 2*math.Pi))
					if angle > math.Abs(q.Turn)/2+1e-6 {
						continue
					}
				}
				off = min(off, q.off(want))
			}
			if off > 0.00005 { // promised
				t.Errorf("over %v of the %v m arc the top is %v m off", on, s.Radius, off)
			}
		}
		walked -= s.Length
	}
	if n := len(top.Strokes); n > 40 {
		t.Errorf("the top takes %d arcs", n)
	}
}

// TestOutlineErrors holds what is refused, where and why.
func TestOutlineErrors(t *testing.T) {
	one := rocker.Single(1, 0.4, 0.4)
	for _, tt := range []struct {
		name string
		r    Rocker
		span int
		says string
	}{
		{"no edge", Rocker{Depth: 0.1}, -1, "no floor edge"},
		{"a point", Rocker{Edge: chain(t, 0), Depth: 0.1}, -1, "no floor edge"},
		{"no depth", Rocker{Edge: one}, -1, "not more than 0"},
		{"not a depth", Rocker{Edge: one, Depth: math.NaN()}, -1, "not more than 0"},
		{"all sole", Rocker{Edge: one, Depth: 0.05, Sole: 0.05}, -1, "leaves no wood"},
		{"sole below zero", Rocker{Edge: one, Depth: 0.05, Sole: -0.01}, -1, "leaves no wood"},
		{"tip without depth", Rocker{Edge: one, Depth: 0.05, NoseDepth: -0.01}, -1, "leaves no wood"},
		{"tip without end", Rocker{Edge: one, Depth: 0.05, TailDepth: math.Inf(1)}, -1, "not a number"},
		{"no such top", Rocker{Edge: one, Depth: 0.05, Top: 7}, -1, "no top number 7"},
		{"straight and tapered", Rocker{Edge: one, Depth: 0.1, Top: rocker.Straight, NoseDepth: 0.05}, -1, "straight top"},
		{"eased to nothing", Rocker{Edge: one, Depth: 0.05, Nose: End{Finish: Eased}}, -1, "radius more than 0"},
		{"eased too far", Rocker{Edge: one, Depth: 0.05, Tail: End{Eased, 0.04}}, -1, "no room"},
		{"deeper than an arc", Rocker{Edge: chain(t, 0.4, rocker.Arc(1, 0.5), rocker.Arc(0.05, 0.04)), Depth: 0.06},
			1, "not less than the radius, 0.05 m"},
		{"tapered deeper than an arc", Rocker{Edge: chain(t, 0.4, rocker.Arc(1, 0.5), rocker.Arc(0.06, 0.04)),
			Depth: 0.06, NoseDepth: 0.05}, 1, "not less than the radius"},
		{"straight top under the tips", Rocker{Edge: one, Depth: 0.05, Top: rocker.Straight}, -1, "short of a tip"},
		{"straight ends that cross", Rocker{Edge: one, Depth: 1.1, Top: rocker.Straight}, -1, "square ends meet"},
		{"corner with nothing behind it", Rocker{Edge: chain(t, 0.4, rocker.Flat(0.5), rocker.Turn(1),
			rocker.Flat(0.01)), Depth: 0.06}, 1, "do not cross"},
		{"crossed by its own hook", Rocker{Edge: chain(t, 0.2, rocker.Flat(0.4), rocker.Arc(-0.05, 0.25),
			rocker.Flat(0.1)), Depth: 0.06}, -1, ""},
	} {
		_, err := tt.r.Outline()
		var outline *OutlineError
		if !errors.As(err, &outline) || outline.Span != tt.span || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%s: %v; want span %d and %q", tt.name, err, tt.span, tt.says)
		}
	}
}

// TestStraightTop: under a straight top the outline is what the strip sums up of lines square to
// the floor edge, over bulges, hollows and flats.
func TestStraightTop(t *testing.T) {
	for _, edge := range []rocker.Profile{
		rocker.Single(1.05, 0.4, 0.5), chain(t, 0.4, rocker.Arc(0.9, 0.5), rocker.Flat(0.1), rocker.Arc(1.5, 0.3)),
		chain(t, 0.4, rocker.Arc(1, 0.6), rocker.Arc(-0.8, 0.2)),
	} {
		strip, err := edge.Strip(0.2, rocker.Straight)
		if err != nil {
			t.Fatal(err)
		}
		p := mustOutline(t, Rocker{Edge: edge, Depth: 0.2, Top: rocker.Straight})
		if got := p.Area(); math.Abs(got-strip.Area) > 1e-10 { // the strip's quadrature
			t.Errorf("%+v: area %v, of the strip %v", edge.Drawn(), got, strip.Area)
		}
	}
}
