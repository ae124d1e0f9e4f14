package bench

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// near is the difference, in m or m², that a few dozen roundings of metres may make.
const near = 1e-13

// TestPathShapes holds circle, half disc, sector ring and square to the formulas of any handbook.
func TestPathShapes(t *testing.T) {
	const R, r, a = 1.1, 0.9, 0.7 // ring: outer and inner radius, whole angle
	on := func(radius, angle float64) r2.Vec { return r2.Scale(radius, ahead(angle)) }
	for _, tt := range []struct {
		name         string
		path         Path
		length, area float64
		box          r2.Box
	}{
		{"circle", Path{Start: r2.Vec{X: 3}, Strokes: []Stroke{{r2.Vec{X: 1}, math.Pi}, {r2.Vec{X: 3}, math.Pi}}, Closed: true},
			2 * math.Pi, math.Pi, r2.NewBox(1, -1, 3, 1)},
		{"clockwise", Path{Start: r2.Vec{X: 3}, Strokes: []Stroke{{r2.Vec{X: 1}, -math.Pi}, {r2.Vec{X: 3}, -math.Pi}}, Closed: true},
			2 * math.Pi, -math.Pi, r2.NewBox(1, -1, 3, 1)},
		{"half disc", Path{Start: r2.Vec{X: 1}, Strokes: []Stroke{{r2.Vec{X: -1}, math.Pi}}, Closed: true},
			2 + math.Pi, math.Pi / 2, r2.NewBox(-1, 0, 1, 1)},
		{"three quarters", Path{Start: r2.Vec{X: 1}, Strokes: []Stroke{{r2.Vec{Y: -1}, 3 * math.Pi / 2}}, Closed: true},
			1.5*math.Pi + math.Sqrt2, 0.75*math.Pi + 0.5, r2.NewBox(-1, -1, 1, 1)},
		{"ring", Path{Start: on(R, 0), Strokes: []Stroke{{on(R, a), a}, {on(r, a), 0}, {on(r, 0), -a}}, Closed: true},
			a*(R+r) + 2*(R-r), a * (R*R - r*r) / 2, r2.NewBox(r*math.Cos(a), 0, R, R*math.Sin(a))},
		{"square, its last side understood", Path{Strokes: []Stroke{{r2.Vec{X: 2}, 0}, {r2.Vec{X: 2, Y: 2}, 0},
			{r2.Vec{Y: 2}, 0}}, Closed: true},
			8, 4, r2.NewBox(0, 0, 2, 2)},
		{"a point", Path{}, 0, 0, r2.Box{}},
	} {
		if got := tt.path.Length(); math.Abs(got-tt.length) > near {
			t.Errorf("%s: length %v, want %v", tt.name, got, tt.length)
		}
		if got := tt.path.Area(); math.Abs(got-tt.area) > near {
			t.Errorf("%s: area %v, want %v", tt.name, got, tt.area)
		}
		if got := tt.path.Bounds(); r2.Norm(r2.Sub(got.Min, tt.box.Min)) > near || r2.Norm(r2.Sub(got.Max, tt.box.Max)) > near {
			t.Errorf("%s: bounds %v, want %v", tt.name, got, tt.box)
		}
	}
}

// randomPath is a chain of lines and arcs of any turn short of a circle.
func randomPath(rng *rand.Rand) Path {
	p := Path{Start: r2.Vec{X: rng.Float64(), Y: rng.Float64()}, Closed: rng.IntN(2) == 0}
	at := p.Start
	for range 1 + rng.IntN(5) {
		at = r2.Add(at, r2.Vec{X: rng.Float64() - 0.5, Y: rng.Float64() - 0.5})
		turn := 0.0
		switch rng.IntN(3) {
		case 0:
			turn = 10 * (rng.Float64() - 0.5)
		case 1:
			turn = 0.02 * (rng.Float64() - 0.5)
		}
		p.Strokes = append(p.Strokes, Stroke{at, turn})
	}
	return p
}

// TestPathAgainstChords walks each stroke by small chords that turn evenly, which knows
// nothing of centres: their sum, their polygon and their reach are those of the path.
func TestPathAgainstChords(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	const steps = 20000
	for range 40 {
		p := randomPath(rng)
		at := p.Start
		var length, area float64
		box := r2.Box{Min: at, Max: at}
		step := func(q r2.Vec) {
			length += r2.Norm(r2.Sub(q, at))
			area += r2.Cross(r2.Sub(at, p.Start), r2.Sub(q, p.Start)) / 2
			box = r2.Box{Min: r2.Vec{X: min(box.Min.X, q.X), Y: min(box.Min.Y, q.Y)},
				Max: r2.Vec{X: max(box.Max.X, q.X), Y: max(box.Max.Y, q.Y)}}
			at = q
		}
		for _, s := range p.Strokes {
			chord := r2.Sub(s.To, at)
			// even chords at even turns add up to a chord: their sum must be scaled and turned to it
			var sum r2.Vec
			for k := range steps {
				sum = r2.Add(sum, ahead(s.Turn*(float64(k)+0.5)/steps))
			}
			scale := r2.Norm(chord) / r2.Norm(sum)
			turned := math.Atan2(chord.Y, chord.X) - math.Atan2(sum.Y, sum.X)
			start := at
			var way r2.Vec
			for k := range steps {
				way = r2.Add(way, r2.Scale(scale, ahead(turned+s.Turn*(float64(k)+0.5)/steps)))
				step(r2.Add(start, way))
			}
		}
		if p.Closed {
			step(p.Start)
		}
		// a chord of 1/20000 of at most 5 rad is short by δ²/24 = 3e-9 of itself; an arc that
		// nearly closes is some ten times as long as its chord
		size := 1 + p.Length()*p.Length()
		if got := p.Length(); math.Abs(got-length) > 1e-7*size {
			t.Errorf("%+v: length %v, along the chords %v", p, got, length)
		}
		if got := p.Area(); math.Abs(got-area) > 1e-7*size {
			t.Errorf("%+v: area %v, of the chords %v", p, got, area)
		}
		if got := p.Bounds(); r2.Norm(r2.Sub(got.Min, box.Min)) > 1e-7*size || r2.Norm(r2.Sub(got.Max, box.Max)) > 1e-7*size {
			t.Errorf("%+v: bounds %v, of the chords %v", p, got, box)
		}
	}
}

// TestFlattened: every point is on the path, and the middle of each chord is within.
func TestFlattened(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	const within = 1e-4
	for range 100 {
		p := randomPath(rng)
		points := p.Flattened(within)
		if points[0] != p.Start || points[len(points)-1] != p.End() {
			t.Fatalf("%+v goes from %v to %v", p, points[0], points[len(points)-1])
		}
		i := 1
		for _, s := range p.Pieces() {
			for points[i-1] != s.To {
				middle := r2.Scale(0.5, r2.Add(points[i-1], points[i]))
				off := 0.0
				if !s.straight() {
					off = math.Abs(r2.Norm(r2.Sub(middle, s.centre())) - math.Abs(s.Radius()))
				}
				if off > within*(1+1e-9) {
					t.Fatalf("a chord of %+v leaves it by %v", s, off)
				}
				i++
			}
		}
		if i != len(points) {
			t.Fatalf("%d points, %d seen", len(points), i)
		}
	}
}

// TestAt: a way along, by quarter circles of radius 1 and a line of 2.
func TestAt(t *testing.T) {
	p := Path{Strokes: []Stroke{{r2.Vec{X: 1, Y: 1}, math.Pi / 2}, {r2.Vec{X: 1, Y: 3}, 0}, {r2.Vec{X: 2, Y: 4}, -math.Pi / 2}}}
	half := math.Sqrt(0.5)
	for _, tt := range []struct{ distance, x, y, heading float64 }{
		{-1, 0, 0, 0}, {0, 0, 0, 0}, {math.Pi / 4, half, 1 - half, math.Pi / 4}, {math.Pi/2 + 1, 1, 2, math.Pi / 2},
		{math.Pi/2 + 2 + math.Pi/4, 2 - half, 3 + half, math.Pi / 4}, {9, 2, 4, 0},
	} {
		at, heading := p.At(tt.distance)
		if r2.Norm(r2.Sub(at, r2.Vec{X: tt.x, Y: tt.y})) > near || math.Abs(heading-tt.heading) > near {
			t.Errorf("At(%v) = %v, %v; want %v, %v, %v", tt.distance, at, heading, tt.x, tt.y, tt.heading)
		}
	}
	if at, heading := (Path{}).At(1); at != (r2.Vec{}) || heading != 0 {
		t.Errorf("a point: %v, %v", at, heading)
	}
}

// TestMoves: length stays, area stays or changes its sign, and there and back is nowhere.
func TestMoves(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	same := func(a, b Path) bool {
		for k := range 20 {
			d := a.Length() * float64(k) / 19
			p, _ := a.At(d)
			q, _ := b.At(d)
			if r2.Norm(r2.Sub(p, q)) > 1e-10 { // a joint's distance is rounded on either side
				return false
			}
		}
		return true
	}
	for range 100 {
		p := randomPath(rng)
		by, angle := r2.Vec{X: rng.Float64(), Y: rng.Float64()}, rng.Float64()*6
		for _, tt := range []struct {
			name        string
			there, back Path
			sign        float64
		}{
			{"moved", p.Moved(by), p.Moved(by).Moved(r2.Scale(-1, by)), 1},
			{"turned", p.Turned(angle, by), p.Turned(angle, by).Turned(-angle, by), 1},
			{"mirrored", p.Mirrored(0.3), p.Mirrored(0.3).Mirrored(0.3), -1},
			{"reversed", p.Reversed(), p.Reversed().Reversed(), -1},
		} {
			size := 1 + p.Length()*p.Length() // arcs that nearly close are large
			if math.Abs(tt.there.Length()-p.Length()) > 1e-12*size ||
				math.Abs(tt.there.Area()-tt.sign*p.Area()) > 1e-12*size || !same(tt.back, p) {
				t.Errorf("%s: %+v becomes %+v and %+v", tt.name, p, tt.there, tt.back)
			}
		}
		first, _ := p.Mirrored(0.3).At(p.Length() / 3)
		second, _ := p.At(p.Length() / 3)
		if math.Abs(first.X+second.X-0.6) > 1e-12 || math.Abs(first.Y-second.Y) > 1e-12 {
			t.Errorf("mirrored: %v and %v", first, second)
		}
	}
}
