package rises

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"

	"rockerwright/rocker/root"
)

// An Arc is one arc of a fit to rises.
type Arc struct {
	Radius    float64 // m; below zero a hollow, ±Inf straight
	From, To  float64 // its ends ahead of the low point, nose side first, m
	Uncertain float64 // of Radius, ± at 95 %, m
}

// A Fit is the fewest arcs with continuous tangents that leave residuals of the size of the reading error.
type Fit struct {
	Arcs     []Arc   // from the nose
	Spread   float64 // root of the sum of squared residuals over the degrees of freedom, m
	Explains bool    // the residuals are no larger than the reading error explains, 95 times in 100
	Suspect  int     // a station that is probably misread and was left out; −1 where none is
	Without  float64 // what its rise is by all the others, m
	AtEnd    bool    // the Suspect is one of the last two stations at an end, where the edge may as well curve differently

	low float64 // x of the low point from its station, m
	bow bow
}

// mostArcs is how many arcs are tried before the readings are doubted.
const mostArcs = 3

// Fit returns the curve of the rises: one, two or three arcs, the fewest that explain them; where none does, those
// without the one station whose leaving out mends it, the Suspect. The error is a [*Error].
//
// The straightedge may stand a little off and aslant, so its height and slope are fitted with the arcs, by least
// squares; the low point is where the edge runs parallel to it. Radii are uncertain by the normal equations, with
// the reading error or, where that does not explain the residuals, their spread.
func (r Row) Fit() (Fit, error) {
	if err := r.check(); err != nil {
		return Fit{}, err
	}
	if f := r.fit([]bow{r.start()}, -1); f.Explains {
		return r.placed(f)
	}
	c := r.coarse()
	best := Fit{Suspect: -1, Spread: math.Inf(1)}
	for arcs := 1; arcs <= mostArcs && !best.Explains; arcs++ {
		if f := c.fit(arcs, -1); f.Explains || f.Spread < best.Spread {
			best = f
		}
		if best.Explains {
			break
		}
		if f := c.without(arcs); f.Explains || f.Spread < best.Spread/farBetter {
			best = f
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

// fit fits so many arcs to all stations but one.
func (c *coarse) fit(arcs, without int) Fit {
	most := mostJoints
	if without < 0 {
		most = mostWhole
	}
	return c.row.fit(c.starts(c.guesses(arcs, without), most), without)
}

// without returns the best fit that leaves out one station which is grossly off it.
func (c *coarse) without(arcs int) Fit {
	best := Fit{Suspect: -1, Spread: math.Inf(1)}
	bound := gross * c.row.deviation()
	var list []guess // the best of each station
	for station := range c.left {
		all := c.guesses(arcs, station)
		if i := slices.IndexFunc(all, func(g guess) bool { return math.Abs(g.off) > bound/2 }); i >= 0 { // the guess is near, not right
			list = append(list, all[i])
		}
	}
	slices.SortStableFunc(list, byGains)
	for _, g := range list[:min(len(list), mostLeft)] {
		f := c.fit(arcs, g.without)
		if f.Spread < best.Spread && math.Abs(c.row.Rise[g.without]-f.Without) > bound {
			best = f
		}
	}
	return best
}

// gross is how many deviations off a rise is a misreading rather than a turn of the curve; our judgement.
const gross = 8

// farBetter is by how many times leaving out one station must shrink the spread for that
// station to be suspected although the rest is not explained either; our judgement.
const farBetter = 3

// level is the slope below which an end of the edge does not rise.
const level = 1e-4

// placed puts the origin at the low point and reads the arcs off.
func (r Row) placed(f Fit) (Fit, error) {
	ahead, behind := r.at(0), r.at(len(r.Rise)-1)
	if len(f.bow.curvature) == 0 {
		return f, &Error{-1, "no curve goes through these readings; are they in order from the nose?"}
	}
	_, front := f.bow.at(ahead)
	_, rear := f.bow.at(behind)
	if !(front > level && rear < -level) {
		return f, &Error{-1, "the edge does not rise on both sides of the low point"}
	}
	f.low = root.Between(func(x float64) float64 { _, p := f.bow.at(x); return p }, behind, ahead, 0)
	for i := range f.Arcs {
		f.Arcs[i].From -= f.low
		f.Arcs[i].To -= f.low
	}
	return f, nil
}

// fit fits the arcs of the starts to all stations but one; its Spread is infinite where there are too few.
func (r Row) fit(starts []bow, without int) Fit {
	f := Fit{Suspect: without, Spread: math.Inf(1)}
	stations := r.except(without)
	best, freedom := math.Inf(1), 0
	for _, start := range starts {
		if freedom = len(stations) - len(start.parameters()); freedom < 1 {
			return f
		}
		if b, squares := r.leastSquares(start, stations); squares < best {
			best, f.bow = squares, b
		}
	}
	if math.IsInf(best, 1) {
		return f
	}
	deviation := r.deviation()
	f.Spread = math.Sqrt(best / float64(freedom))
	f.Explains = best/(deviation*deviation) <= chiSquared(freedom, 0.95)
	if !f.Explains {
		deviation = f.Spread
	}
	if without >= 0 {
		f.Without, _ = f.bow.at(r.at(without))
		f.AtEnd = min(without, len(r.Rise)-1-without) < toEach-1 // fewer spacings than an arc of its own takes
	}
	f.Arcs = r.arcs(f.bow, stations, deviation)
	return f
}

// arcs returns the arcs of a bow with the uncertainty of their radii.
func (r Row) arcs(b bow, stations []int, deviation float64) []Arc {
	j := r.jacobian(&b, stations, true)
	var normal, covariance mat.Dense
	normal.Mul(j.T(), j)
	known := covariance.Inverse(&normal) == nil
	ends := append(append([]float64{r.at(0)}, b.joint...), r.at(len(r.Rise)-1))
	var list []Arc
	for i, k := range b.curvature {
		arc := Arc{Radius: 1 / k, From: ends[i], To: ends[i+1], Uncertain: math.Inf(1)}
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
