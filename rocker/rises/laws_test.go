package rises

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"

	"rockerwright/rocker"
)

// anyBow returns a bow of one to three arcs over 15 stations, of which one may be straight and
// the last hollow.
func anyBow(rng *rand.Rand) (Row, bow) {
	r := Row{Spacing: 0.05, Low: 7, Rise: make([]float64, 15), Error: ruler}
	b := bow{height: 0.002 * rng.NormFloat64(), slope: 0.01 * rng.NormFloat64()}
	for i := range 1 + rng.IntN(3) {
		b.curvature = append(b.curvature, 0.4+rng.Float64())
		if i > 0 {
			b.joint = append(b.joint, 0.2-0.25*float64(i)+0.05*rng.Float64())
		}
	}
	if last := len(b.curvature) - 1; last > 0 {
		b.curvature[rng.IntN(last+1)] = 0
		b.curvature[last] *= 1 - 1.2*float64(rng.IntN(2))
	}
	for i := range r.Rise {
		r.Rise[i], _ = b.at(r.at(i))
	}
	return r, b
}

// TestSpansFollowTheFit: the chain of a fit's spans passes through every station as high over
// the low point as the fit does, and ends where the stations do, or where it was told to.
func TestSpansFollowTheFit(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 2))
	for range 200 {
		r, b := anyBow(rng)
		f, err := r.placed(Fit{bow: b, Arcs: r.arcs(b, r.except(-1), ruler)})
		if err != nil {
			continue // it does not rise on both sides
		}
		nose, tail := 0.0, 0.0 // as far as the stations reach
		if drawn := rng.IntN(2) > 0; drawn {
			nose, tail = 0.25+0.2*rng.Float64(), 0.25+0.2*rng.Float64()
		}
		spans, toNose := f.Spans(nose, tail)
		p, err := rocker.Chain(toNose, spans...)
		if err != nil {
			t.Fatal(err)
		}
		ground, _ := b.at(f.low)
		for i, rise := range r.Rise {
			x := r.at(i) - f.low
			if inside := x <= p.Nose().X+1e-9 && x >= p.Tail().X-1e-9; inside && math.Abs(p.Rise(x)-(rise-ground)) > 1e-9 {
				t.Errorf("%+v: %v m ahead the chain is %v high, the fit %v", b, x, p.Rise(x), rise-ground)
			}
		}
		last := len(r.Rise) - 1
		if nose == 0 && (math.Abs(p.Nose().X-(r.at(0)-f.low)) > 1e-9 || math.Abs(p.Tail().X-(r.at(last)-f.low)) > 1e-9) {
			t.Errorf("%+v: it ends at %v and %v", b, p.Nose(), p.Tail())
		}
		if nose > 0 && (toNose != nose || math.Abs(p.Length()-nose-tail) > 1e-12) {
			t.Errorf("%+v: told to reach %v and %v it is %v long", b, nose, tail, p.Length())
		}
	}
}

// TestGuessesAreLeastSquares: by how much joints at stations, and one station left out, make the
// sum of squares smaller, and how far that station is off, against the linear least squares
// that are written out and solved by gonum.
func TestGuessesAreLeastSquares(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 3))
	for range 20 {
		r, _ := anyBow(rng)
		for i := range r.Rise {
			r.Rise[i] += 20 * ruler * rng.NormFloat64()
		}
		c, all := r.coarse(), r.except(-1)
		own, left := r.jacobian(&c.single, all, false), r.residuals(&c.single, all)
		solve := func(columns ...[]float64) (squares float64, last float64) {
			a := mat.NewDense(len(all), 3+len(columns), nil)
			a.Slice(0, len(all), 0, 3).(*mat.Dense).Copy(own)
			for k, column := range columns {
				a.SetCol(3+k, column)
			}
			var x, fitted mat.VecDense
			if err := x.SolveVec(a, mat.NewVecDense(len(all), left)); err != nil {
				t.Fatal(err)
			}
			fitted.MulVec(a, &x)
			rest := floats.SubTo(make([]float64, len(all)), left, fitted.RawVector().Data)
			return floats.Dot(rest, rest), x.AtVec(x.Len() - 1)
		}
		one, _ := solve()
		for arcs := 1; arcs <= mostArcs; arcs++ {
			for _, without := range []int{-1, rng.IntN(len(all))} {
				list := c.guesses(arcs, without)
				g := list[rng.IntN(len(list))]
				var columns [][]float64
				for _, j := range g.joints {
					k := c.single.curvature[0]
					bent := bow{c.single.height, c.single.slope, []float64{k, k}, []float64{r.at(j)}}
					columns = append(columns, mat.Col(nil, 3, r.jacobian(&bent, all, false)))
				}
				if without >= 0 {
					unit := make([]float64, len(all))
					unit[without] = 1
					columns = append(columns, unit)
				}
				squares, off := solve(columns...)
				if math.Abs(one-squares-g.gains) > 1e-6*one || without >= 0 && math.Abs(off-g.off) > 1e-6*math.Sqrt(one) {
					t.Errorf("%+v: gains %v and is off by %v", g, one-squares, off)
				}
				if !slices.IsSortedFunc(list, byGains) {
					t.Errorf("%d arcs: the best guess is not the first", arcs)
				}
			}
		}
	}
}

// TestArcsAreLong: rough readings too are told by arcs of two and a half spacings or more.
func TestArcsAreLong(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 4))
	for range 30 {
		r, _ := anyBow(rng)
		for i := range r.Rise {
			r.Rise[i] += 3 * ruler * rng.NormFloat64()
		}
		f, err := r.Fit()
		for _, arc := range f.Arcs {
			if err == nil && arc.From-arc.To < 2.5*r.Spacing-1e-12 {
				t.Errorf("an arc of %v spacings", (arc.From-arc.To)/r.Spacing)
			}
		}
	}
}

// TestMirroredAndScaled: read from the other end a row gives the same arcs the other way round; twice as large
// in all, arcs twice as large and as unsure; and with its even stations written out, the same.
func TestMirroredAndScaled(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 5))
	for range 15 {
		r, _ := anyBow(rng)
		for i := range r.Rise {
			r.Rise[i] += ruler * rng.NormFloat64()
		}
		mirrored, scaled, uneven := r, r, r
		mirrored.Rise = slices.Clone(r.Rise)
		slices.Reverse(mirrored.Rise)
		scaled.Spacing, scaled.Error, scaled.Rise = 2*r.Spacing, 2*r.Error, floats.ScaleTo(make([]float64, len(r.Rise)), 2, r.Rise)
		for i := range r.Rise {
			uneven.Ahead = append(uneven.Ahead, 3+r.at(i))
		}
		f, err := r.Fit()
		for name, other := range map[string]Row{"mirrored": mirrored, "scaled": scaled, "uneven": uneven} {
			g, wrong := other.Fit()
			if (err == nil) != (wrong == nil) || len(f.Arcs) != len(g.Arcs) {
				t.Errorf("%s: %v, %d arcs; %v, %d arcs", name, err, len(f.Arcs), wrong, len(g.Arcs))
				continue
			}
			size := 1.0
			if name == "scaled" {
				size = 2
			}
			for i, arc := range f.Arcs {
				like := g.Arcs[i]
				if name == "mirrored" {
					like = g.Arcs[len(g.Arcs)-1-i]
					like.From, like.To = -like.To, -like.From
				}
				near := func(a, b float64) bool { return math.Abs(a-b) <= 1e-3*math.Abs(a)+1e-3*r.Spacing }
				if !near(size/arc.Radius, size*size/like.Radius) || !near(size*arc.From, like.From) || !near(size*arc.To, like.To) ||
					!near(size*arc.Uncertain/arc.Radius, size*like.Uncertain/like.Radius) {
					t.Errorf("%s: %+v, was %+v", name, like, arc)
				}
			}
		}
	}
}

// TestSpreadIsOfTheFreeStations: of one arc, with its height and slope, three stations are not free.
func TestSpreadIsOfTheFreeStations(t *testing.T) {
	r := noisy(arcRises(42*inch, 2*inch, 7, 9), rand.New(rand.NewPCG(9, 6)))
	f, all := r.fit([]bow{r.start()}, -1), r.except(-1)
	if want := math.Sqrt(r.squares(&f.bow, all) / float64(len(all)-3)); math.Abs(f.Spread/want-1) > 1e-12 {
		t.Errorf("spread %v, want %v", f.Spread, want)
	}
}
