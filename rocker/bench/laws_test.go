package bench

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// TestNestedAgainstAllShifts: of polygons with corners at two hundredths the best pair is that of every shift
// by two hundredths, up to half the length, by the heights at the corners alone.
func TestNestedAgainstAllShifts(t *testing.T) {
	const places, grain = 200, 0.3
	rng := rand.New(rand.NewPCG(51, 52))
	for range 12 {
		kerf := 0.2 * rng.Float64()
		var top, under [places + 1]float64
		var upper, lower []r2.Vec
		low, high := math.Inf(1), 0.0
		for i := 0; i <= places; i += 20 {
			x := float64(i) / places
			under[i] = 0.3 * rng.Float64()
			top[i] = under[i] + 0.02 + 0.1*rng.Float64()
			lower, upper = append(lower, r2.Vec{X: x, Y: under[i]}), append(upper, r2.Vec{X: x, Y: top[i]})
			low, high = min(low, under[i]), max(high, top[i])
			for k := 1; k < 20 && i > 0; k++ {
				share := float64(k) / 20
				top[i-k] = top[i] + share*(top[i-20]-top[i])
				under[i-k] = under[i] + share*(under[i-20]-under[i])
			}
		}
		slices.Reverse(upper)
		outline := Polyline(true, append(lower, upper...)...)
		least := math.Inf(1)
		for shift := -places / 2; shift <= places/2; shift++ {
			up := 0.0
			for i := max(0, shift); i <= min(places, places+shift); i++ {
				up = max(up, top[i]-under[places-i+shift]) // the mirror image, moved
			}
			least = min(least, (1+math.Abs(float64(shift))/places)*(high-low+up+kerf))
		}
		pair, err := Nested(outline.Turned(grain, r2.Vec{X: 0.2}), grain, kerf)
		if got := pair.Length * pair.Width; err != nil || got > least*(1+2e-6) || got < least*(1-1e-9) { // like ones are a millionth alike
			t.Errorf("a board of %v by %v, %v; want %v m²", pair.Length, pair.Width, err, least)
		}
	}
}

// TestBlankNearestToLevel: about an acute triangle the rectangles on its three sides are all twice as large as
// it, and the one nearest to level is taken.
func TestBlankNearestToLevel(t *testing.T) {
	rng := rand.New(rand.NewPCG(53, 54))
	for range 300 {
		turn := 7 * rng.Float64()
		corners := []r2.Vec{ahead(turn), ahead(turn + 2 + 0.1*rng.Float64()), ahead(turn + 4.1 + 0.1*rng.Float64())}
		area := r2.Cross(r2.Sub(corners[1], corners[0]), r2.Sub(corners[2], corners[0])) / 2
		want := math.Inf(1)
		for i := range corners {
			side := r2.Sub(corners[(i+1)%3], corners[i])
			angle := math.Atan2(side.Y, side.X)
			if long := r2.Norm(side); long < 2*area/long {
				angle += math.Pi / 2
			}
			if angle = math.Remainder(angle, math.Pi); math.Abs(angle) < math.Abs(want) {
				want = angle
			}
		}
		b := SmallestBlank(Polyline(true, corners...))
		if math.Abs(b.Length*b.Width-2*area) > 1e-12 || math.Abs(b.Grain-want) > 1e-12 {
			t.Errorf("%v: %+v, want %v m² at %v", corners, b, 2*area, want)
		}
	}
}

// TestStaveIsThick: what the hollow takes of a stave is the rise of its own chord, and a stock of more is a panel.
func TestStaveIsThick(t *testing.T) {
	for _, n := range []int{1, 2, 7} {
		c := Coopered{Chord: 0.4, Radius: 0.5, Staves: n, Stock: 1}
		s, err := c.Stave()
		if err != nil {
			t.Fatal(err)
		}
		if got, err := SagittaRadius(s.Hollow, c.Stock-s.Thick); err != nil || math.Abs(got-c.Radius) > 1e-11 { // a rise of 2 mm of 1 m
			t.Errorf("%d staves: left %v thick, by the rise a radius of %v, %v", n, s.Thick, got, err)
		}
		if c.Stock-s.Thick > c.Radius {
			t.Errorf("%d staves: the hollow takes %v, more than half a circle is deep", n, c.Stock-s.Thick)
		}
		for _, over := range []float64{-1e-6, 1e-6} {
			c.Stock = 1 - s.Thick + over
			if thin, err := c.Stave(); (err == nil) != (over > 0) || err == nil && math.Abs(thin.Thick-over) > near {
				t.Errorf("%d staves of %v over the hollow: %+v, %v", n, over, thin, err)
			}
		}
	}
}

// TestNearestLeavesTheMost: of all crossings of two chains that is taken which leaves the longest way along both.
func TestNearestLeavesTheMost(t *testing.T) {
	rng := rand.New(rand.NewPCG(55, 56))
	several := 0
	for range 300 {
		before, behind := randomPath(rng).Pieces(), randomPath(rng).Pieces()
		most, crossings := 0.0, 0
		kept := func(i, j int, m meeting) float64 {
			first := append(slices.Clone(before[:i]), before[i].Cut(0, m.first))
			second := append([]Piece{behind[j].Cut(m.second, 1)}, behind[j+1:]...)
			return pathOf(first, false).Length() + pathOf(second, false).Length()
		}
		for i := range before {
			for j := range behind {
				for _, m := range meet(before[i], behind[j]) {
					if m.first > 0 && m.second < 1 {
						most, crossings = max(most, kept(i, j, m)), crossings+1
					}
				}
			}
		}
		i, j, m, found := nearest(before, behind)
		if found != (crossings > 0) || found && math.Abs(kept(i, j, m)-most) > 1e-9 {
			t.Errorf("%v and %v: crossing %d, %d %v; the most left is %v", before, behind, i, j, m, most)
		}
		if crossings > 1 {
			several++
		}
	}
	if several < 50 {
		t.Errorf("only %d chains crossed more than once", several)
	}
}

// TestDeepestAgainstLines: no upright line of four hundred finds the lower of two pieces higher over the upper one.
func TestDeepestAgainstLines(t *testing.T) {
	rng := rand.New(rand.NewPCG(57, 58))
	for range 80 {
		piece := func() []Piece {
			turn := 5 * (rng.Float64() - 0.5)
			if rng.IntN(4) == 0 {
				turn = 0
			}
			return []Piece{{r2.Vec{X: 0.3 * rng.Float64(), Y: rng.Float64()}, Stroke{r2.Vec{X: 0.7 + 0.3*rng.Float64(), Y: rng.Float64()}, turn}}}
		}
		upper, lower := piece(), piece()
		lower[0].From.Y += 3 // lies over it, and must be cleared
		lower[0].To.Y += 3
		got, most := deepest(lower, upper), 0.0
		for k := range 400 {
			x := 2*float64(k)/400 - 0.5
			if high, low := highest(lower, x), lowest(upper, x); high-low > most && !math.IsInf(high-low, 0) {
				most = high - low
			}
		}
		if got < most-1e-12 || got > most+0.2 { // near an upright heading lines 5 mm apart see little
			t.Errorf("%+v over %+v: raised by %v, by lines %v", upper, lower, got, most)
		}
	}
}

// TestOverItsEnds: beyond its ends an edge is given by the nearer one, and on them it is met, wherever it lies
// and whichever way it runs.
func TestOverItsEnds(t *testing.T) {
	for _, x := range []float64{-5, -0.55, 0, 5} {
		for _, turn := range []float64{0, 0.3, -0.3} {
			list := []Piece{{r2.Vec{X: x, Y: 1}, Stroke{r2.Vec{X: x + 0.7, Y: 2}, turn}}}
			for _, edge := range [][]Piece{list, backwards(list)} {
				for _, off := range []float64{0.1, 1, 20} {
					before, behind := over(edge, x-off, slices.Min), over(edge, x+0.7+off, slices.Min)
					if before != list[0].From || behind != list[0].To {
						t.Errorf("%v beyond %+v: %v, %v", off, edge, before, behind)
					}
				}
				if first, last := heights(edge, x), heights(edge, x+0.7); len(first) != 1 || len(last) != 1 {
					t.Errorf("%+v is met at its ends at %v, %v", edge, first, last)
				}
			}
		}
	}
}

// TestStraightTopOverASole: a level top is one as soon as it is over both lower corners of the wood, which
// stand R − (R − sole)·cos of their angles high.
func TestStraightTopOverASole(t *testing.T) {
	const R, nose, tail, sole = 1.05, 0.4, 0.5, 0.02
	for _, edge := range []rocker.Profile{rocker.Single(R, nose, tail), rocker.Single(R, tail, nose)} {
		corner := R - (R-sole)*math.Cos(tail/R)
		for _, over := range []float64{-1e-6, 1e-6} {
			r := Rocker{Edge: edge, Depth: corner + over, Sole: sole, Top: rocker.Straight}
			if _, _, _, err := r.Edges(); (err == nil) != (over > 0) {
				t.Errorf("%v over the corner: %v", over, err)
			}
		}
	}
}
