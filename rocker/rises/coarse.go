package rises

import (
	"cmp"
	"slices"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"
)

// A coarse is the search for joints, and for a misread station, among all of them at once. Near the best single arc
// the rises are nearly linear in its height, slope and curvature, in a change of curvature from each station on,
// and in one misreading. So what joints at stations leave follows from the products of those few columns, without
// the single arc's own (derived here: the linear least squares of the first Gauss-Newton step).
type coarse struct {
	row    Row
	single bow
	hinge  [][]float64 // the changes of curvature, by station, what one arc fits taken out
	gram   [][]float64 // their products
	gain   []float64   // their products with the residuals
	left   []float64   // residuals of the single arc
	own    []float64   // how much of a misreading of each station one arc does not fit
}

// coarse prepares the search.
func (r Row) coarse() *coarse {
	c := &coarse{row: r}
	all := r.except(-1)
	c.single, _ = r.leastSquares(r.start(), all)
	var qr mat.QR
	qr.Factorize(r.jacobian(&c.single, all, false))
	var q mat.Dense
	qr.QTo(&q)
	outside := func(column []float64) []float64 { // the part square to the columns of one arc
		for k := range 3 {
			one := mat.Col(nil, k, &q)
			floats.AddScaled(column, -floats.Dot(one, column), one)
		}
		return column
	}
	c.left = outside(r.residuals(&c.single, all))
	for j := range r.Rise {
		bent := bow{c.single.height, c.single.slope, []float64{c.single.curvature[0], c.single.curvature[0]}, []float64{r.at(j)}}
		c.hinge = append(c.hinge, outside(mat.Col(nil, 3, r.jacobian(&bent, all, false))))
		unit := make([]float64, len(all))
		unit[j] = 1
		c.own = append(c.own, outside(unit)[j])
	}
	for _, a := range c.hinge {
		var products []float64
		for _, b := range c.hinge {
			products = append(products, floats.Dot(a, b))
		}
		c.gram, c.gain = append(c.gram, products), append(c.gain, floats.Dot(a, c.left))
	}
	return c
}

// A guess is where the joints of some arcs may lie, and a station left out, −1 for none.
type guess struct {
	joints  []int
	without int
	gains   float64 // by how much its sum of squares is less than that of one arc, m²
	off     float64 // by how much the reading left out is off, m
}

// byGains puts the best guess first.
func byGains(a, b guess) int { return cmp.Compare(b.gains, a.gains) }

// guesses returns the joints, at stations that leave enough of them to each arc, for so
// many arcs through all stations but one, the best first.
func (c *coarse) guesses(arcs, without int) []guess {
	n := len(c.gain)
	at, gain := make([]float64, n), slices.Clone(c.gain) // the changes of curvature at the station left out
	missed, own := 0.0, 1.0
	if without >= 0 { // the misreading is one more column, taken out of the others
		missed, own = c.left[without], c.own[without]
		for j := range n {
			at[j] = c.hinge[j][without]
			gain[j] -= at[j] * missed / own
		}
	}
	gram := func(j, k int) float64 { return c.gram[j][k] - at[j]*at[k]/own }
	var list []guess
	add := func(gains, off float64, joints ...int) {
		list = append(list, guess{joints, without, missed*missed/own + gains, off / own})
	}
	switch arcs {
	case 1:
		add(0, missed)
	case 2:
		for j := toEach; j < n-toEach; j++ {
			if size := gram(j, j); size > 0 {
				bend := gain[j] / size
				add(bend*gain[j], missed-bend*at[j], j)
			}
		}
	default:
		for j := toEach; j < n-2*toEach; j++ {
			for k := j + toEach; k < n-toEach; k++ {
				jj, jk, kk := gram(j, j), gram(j, k), gram(k, k)
				if size := jj*kk - jk*jk; size > 0 {
					first, second := (kk*gain[j]-jk*gain[k])/size, (jj*gain[k]-jk*gain[j])/size
					add(first*gain[j]+second*gain[k], missed-first*at[j]-second*at[k], j, k)
				}
			}
		}
	}
	slices.SortStableFunc(list, byGains)
	return list
}

// starts returns where the search for some arcs begins: the best guesses.
func (c *coarse) starts(list []guess, most int) []bow {
	var bows []bow
	for _, g := range list[:min(len(list), most)] {
		b := bow{height: c.single.height, slope: c.single.slope, curvature: slices.Repeat(c.single.curvature, len(g.joints)+1)}
		for _, j := range g.joints {
			b.joint = append(b.joint, c.row.at(j))
		}
		bows = append(bows, b)
	}
	return bows
}
