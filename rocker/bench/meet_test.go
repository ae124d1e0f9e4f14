package bench

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestMeet: crossings whose points are known: of the unit circle's upper half with a level
// line at ½, with the circle about (1, 0), and of two lines.
func TestMeet(t *testing.T) {
	upper := Piece{r2.Vec{X: 1}, Stroke{r2.Vec{X: -1}, math.Pi}}
	h := math.Sqrt(3) / 2
	for _, tt := range []struct {
		name string
		a, b Piece
		want []r2.Vec
	}{
		{"lines", Piece{r2.Vec{}, Stroke{To: r2.Vec{X: 1, Y: 1}}}, Piece{r2.Vec{Y: 1}, Stroke{To: r2.Vec{X: 1}}},
			[]r2.Vec{{X: 0.5, Y: 0.5}}},
		{"lines side by side", Piece{r2.Vec{}, Stroke{To: r2.Vec{X: 1}}}, Piece{r2.Vec{Y: 1}, Stroke{To: r2.Vec{X: 1, Y: 1}}}, nil},
		{"lines that end short", Piece{r2.Vec{}, Stroke{To: r2.Vec{X: 1}}},
			Piece{r2.Vec{X: 0.5, Y: 1}, Stroke{To: r2.Vec{X: 0.5, Y: 0.1}}}, nil},
		{"level line", Piece{r2.Vec{X: -2, Y: 0.5}, Stroke{To: r2.Vec{X: 2, Y: 0.5}}}, upper, []r2.Vec{{X: -h, Y: 0.5}, {X: h, Y: 0.5}}},
		{"level line, one half", Piece{r2.Vec{X: 0, Y: 0.5}, Stroke{To: r2.Vec{X: 2, Y: 0.5}}}, upper, []r2.Vec{{X: h, Y: 0.5}}},
		{"line below", Piece{r2.Vec{X: -2, Y: -0.5}, Stroke{To: r2.Vec{X: 2, Y: -0.5}}}, upper, nil},
		{"line far off", Piece{r2.Vec{X: -2, Y: 3}, Stroke{To: r2.Vec{X: 2, Y: 3}}}, upper, nil},
		{"circle", upper, Piece{r2.Vec{X: 2}, Stroke{r2.Vec{}, math.Pi}}, []r2.Vec{{X: 0.5, Y: h}}},
		{"one circle", upper, Piece{r2.Vec{Y: 1}, Stroke{r2.Vec{Y: -1}, math.Pi}}, nil},
	} {
		got := meet(tt.a, tt.b)
		if len(got) != len(tt.want) {
			t.Errorf("%s: %d meetings, want %d", tt.name, len(got), len(tt.want))
			continue
		}
		for i, m := range got {
			if p, q := tt.a.At(m.first), tt.b.At(m.second); r2.Norm(r2.Sub(p, tt.want[i])) > near || r2.Norm(r2.Sub(q, tt.want[i])) > near {
				t.Errorf("%s: at %v and %v, want %v", tt.name, p, q, tt.want[i])
			}
		}
	}
}

// TestMeetEnds: a piece that begins on an end of an arc meets it there, whichever side of the
// end rounding puts it.
func TestMeetEnds(t *testing.T) {
	rng := rand.New(rand.NewPCG(31, 32))
	for range 2000 {
		arc := Piece{r2.Vec{X: rng.Float64()}, Stroke{r2.Vec{Y: 1 + rng.Float64()}, 12 * (rng.Float64() - 0.5)}}
		for _, end := range []r2.Vec{arc.From, arc.To} {
			other := Piece{end, Stroke{r2.Vec{X: 3, Y: 3 * rng.Float64()}, rng.Float64()}}
			found := false
			for _, m := range meet(arc, other) {
				found = found || r2.Norm(r2.Sub(arc.At(m.first), end)) < 1e-8 // ten times what a slanting meeting loses
			}
			if !found {
				t.Fatalf("%+v and %+v do not meet at %v", arc, other, end)
			}
		}
	}
}

// TestSimple against the flattened outline, of which every pair of chords is tried.
func TestSimple(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 14))
	simple := 0
	for n := range 400 {
		p := randomPath(rng)
		if p.Closed && len(p.Strokes) == 1 && p.Strokes[0].Turn == 0 {
			continue // a line there and back crosses no chord; TestTurnsBack has it
		}
		points := p.Flattened(1e-5)
		crossed, nearly := false, false
		for i := 1; i < len(points); i++ {
			for j := i + 2; j < len(points); j++ {
				if p.Closed && i == 1 && j == len(points)-1 {
					continue
				}
				a, b := points[i-1], points[i]
				c, d := points[j-1], points[j]
				if cut(a, b, c, d) {
					crossed = true
				}
				// where two strokes pass within the chords' error the chords decide nothing
				for _, q := range []r2.Vec{c, d} {
					if near := r2.Norm(r2.Sub(q, a)); near < 5e-5 && near > 0 {
						nearly = true
					}
				}
			}
		}
		if crossed == p.Simple() && !nearly {
			t.Errorf("path %d %+v: simple %v, its chords cross: %v", n, p, p.Simple(), crossed)
		}
		if !crossed {
			simple++
		}
	}
	if simple < 50 {
		t.Errorf("only %d simple paths tried", simple)
	}
}

// cut reports whether the lines ab and cd cross, by the sides on which their ends lie.
func cut(a, b, c, d r2.Vec) bool {
	side := func(p, q, r r2.Vec) bool { return r2.Cross(r2.Sub(q, p), r2.Sub(r, p)) > 0 }
	return side(a, b, c) != side(a, b, d) && side(c, d, a) != side(c, d, b)
}

// TestTurnsBack: a line there and back lies on itself.
func TestTurnsBack(t *testing.T) {
	there := []Stroke{{To: r2.Vec{X: 1}}}
	if (Path{Strokes: there, Closed: true}).Simple() || !(Path{Strokes: there}).Simple() {
		t.Error("a line there and back is simple, or a line is not")
	}
}
