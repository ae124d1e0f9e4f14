package rocker

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"
)

// A FittedArc is one arc of a fit to rises.
type FittedArc struct {
	Radius    float64 // m; below zero a hollow, ±Inf straight
	From, To  float64 // its ends ahead of the low point, nose side first, m
	Uncertain float64 // of Radius, ± at 95 %, m
}

// A RisesFit is the fewest arcs with continuous tangents that leave residuals of the size
// of the reading error.
type RisesFit struct {
	Arcs     []FittedArc // from the nose
	Residual []float64   // reading less fit at each station, m; NaN at the Suspect
	Spread   float64     // root of the sum of squared residuals over the degrees of freedom, m
	Explains bool        // the residuals are no larger than the reading error explains, 95 times in 100
	Suspect  int         // a station that is probably misread and was left out; −1 where none is
	Without  float64     // what its rise is by all the others, m
	AtEnd    bool        // the Suspect is one of the two stations at an end, where the edge may as well curve differently: one station does not say which

	low float64 // x of the low point from its station, m
	bow bow
}

// mostArcs is how many arcs are tried before the readings are doubted.
const mostArcs = 3

// Fit returns the curve of the rises: one, two or three arcs, the fewest that explain
// them; where none does, those without the one station whose leaving out mends it, the
// Suspect. The error is a [*RisesError].
//
// The straightedge may stand a little off and aslant, so its height and slope are fitted
// with the arcs, by least squares; the low point is where the fitted edge runs parallel
// to it. Radii are uncertain by the normal equations, with the reading error or, where
// that does not explain the residuals, their spread.
func (r Rises) Fit() (RisesFit, error) {
	if err := r.check(); err != nil {
		return RisesFit{}, err
	}
	if f, ok := r.fit([]bow{r.start()}, -1); ok && f.Explains {
		return r.placed(f)
	}
	c := r.coarse()
	best := RisesFit{Suspect: -1, Spread: math.Inf(1)}
	for arcs := 1; arcs <= mostArcs; arcs++ {
		if f, ok := c.fit(arcs, -1); ok && (f.Explains || f.Spread < best.Spread) {
			if best = f; f.Explains {
				return r.placed(best)
			}
		}
		if f, ok := c.without(arcs); ok && (f.Explains || f.Spread < best.Spread/farBetter) {
			if best = f; f.Explains {
				return r.placed(best)
			}
		}
	}
	return r.placed(best)
}

// How many guesses are followed to their least squares: joints for one set of stations, and
// stations to leave out. Of 1,260 made rows of rises of 11 to 25 stations none came out with
// a larger spread than from joints at every station, and 11 with a smaller one.
const (
	mostJoints = 12
	mostWhole  = 60 // where no station is left out
	mostLeft   = 6
)

// fit fits so many arcs to all stations but one; ok is false where there are too few.
func (c *coarse) fit(arcs, without int) (RisesFit, bool) {
	most := mostJoints
	if without < 0 {
		most = mostWhole
	}
	return c.r.fit(c.starts(c.guesses(arcs, without), most), without)
}

// without returns the best fit that leaves out one station which is grossly off it.
func (c *coarse) without(arcs int) (best RisesFit, found bool) {
	best.Spread = math.Inf(1)
	bound := gross * c.r.deviation()
	var list []guess // the best of each station
	for station := range c.r.Rise {
		for _, g := range c.guesses(arcs, station) {
			if math.Abs(g.off) > bound/2 { // the guess is near, not right
				list = append(list, g)
				break
			}
		}
	}
	slices.SortStableFunc(list, func(a, b guess) int { return cmp.Compare(b.gains, a.gains) })
	for _, g := range list[:min(len(list), mostLeft)] {
		f, ok := c.fit(arcs, g.without)
		if ok && f.Spread < best.Spread && math.Abs(c.r.Rise[g.without]-f.Without) > bound {
			best, found = f, true
		}
	}
	return best, found
}

// gross is how many deviations a rise must be off to be taken for a misreading rather
// than for a turn of the curve; our judgement.
const gross = 8

// farBetter is by how many times leaving out one station must shrink the spread for that
// station to be suspected although the rest is not explained either; our judgement.
const farBetter = 3

// level is the slope below which an end of the edge does not rise.
const level = 1e-4

// placed puts the origin at the low point and reads the arcs off.
func (r Rises) placed(f RisesFit) (RisesFit, error) {
	ahead, behind := r.at(0), r.at(len(r.Rise)-1)
	if len(f.bow.curvature) == 0 {
		return f, &RisesError{-1, "no curve goes through these readings; are they in order from the nose?"}
	}
	_, front := f.bow.at(ahead)
	_, rear := f.bow.at(behind)
	if !(front > level && rear < -level) {
		return f, &RisesError{-1, "the edge does not rise on both sides of the low point"}
	}
	for range 60 { // the slope rises from the tail to the nose
		middle := (ahead + behind) / 2
		if _, p := f.bow.at(middle); p > 0 {
			ahead = middle
		} else {
			behind = middle
		}
	}
	f.low = (ahead + behind) / 2
	for i := range f.Arcs {
		f.Arcs[i].From -= f.low
		f.Arcs[i].To -= f.low
	}
	return f, nil
}

// fit fits the arcs of the starts to all stations but one; ok is false where there are too
// few.
func (r Rises) fit(starts []bow, without int) (f RisesFit, ok bool) {
	if len(starts) == 0 {
		return f, false
	}
	var stations []int
	for i := range r.Rise {
		if i != without {
			stations = append(stations, i)
		}
	}
	freedom := len(stations) - 2*len(starts[0].curvature) - 1
	if freedom < 1 {
		return f, false
	}
	best := math.Inf(1)
	var bestBow bow
	for _, start := range starts {
		b, squares := r.leastSquares(start, stations)
		if squares < best {
			best, bestBow = squares, b
		}
	}
	if math.IsInf(best, 1) {
		return f, false
	}
	deviation := r.deviation()
	f = RisesFit{Suspect: without, Spread: math.Sqrt(best / float64(freedom)), bow: bestBow}
	f.Explains = best/(deviation*deviation) <= chiSquared(freedom, 0.95)
	if !f.Explains {
		deviation = f.Spread
	}
	for i, y := range r.Rise {
		fitted, _ := bestBow.at(r.at(i))
		f.Residual = append(f.Residual, y-fitted)
		if i == without {
			f.Residual[i], f.Without = math.NaN(), fitted
			f.AtEnd = min(i, len(r.Rise)-1-i) < toEach-1 // fewer spacings than an arc of its own takes
		}
	}
	f.Arcs = r.arcs(bestBow, stations, deviation)
	return f, true
}

// arcs returns the arcs of a bow with the uncertainty of their radii.
func (r Rises) arcs(b bow, stations []int, deviation float64) []FittedArc {
	j := r.jacobian(&b, stations, true)
	var normal, covariance mat.Dense
	normal.Mul(j.T(), j)
	known := covariance.Inverse(&normal) == nil
	ends := append(append([]float64{r.at(0)}, b.joint...), r.at(len(r.Rise)-1))
	var list []FittedArc
	for i, k := range b.curvature {
		arc := FittedArc{Radius: 1 / k, From: ends[i], To: ends[i+1], Uncertain: math.Inf(1)}
		if known {
			arc.Uncertain = 1.96 * deviation * math.Sqrt(math.Max(0, covariance.At(2+i, 2+i))) / (k * k)
		}
		list = append(list, arc)
	}
	return list
}

// chiSquared returns the sum of squares of so many independent errors, each over its
// deviation, that is not exceeded with a probability.
func chiSquared(freedom int, probability float64) float64 {
	return distuv.ChiSquared{K: float64(freedom)}.Quantile(probability)
}
