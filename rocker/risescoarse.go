package rocker

import (
	"cmp"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// A coarse is the search for joints, and for a misread station, among all of them at once.
// Near the best single arc the rises are nearly linear in its height, slope and curvature,
// in a change of curvature from each station on, and in the misreading of one station. So
// the sum of squares that joints at stations leave follows from the products of those few
// columns, without the single arc's own (derived here: the linear least squares of the
// first Gauss-Newton step).
type coarse struct {
	r      Rises
	single bow
	all    []int
	gram   [][]float64 // products of the changes of curvature, what one arc fits taken out
	gain   []float64   // of the same with the residuals
	hinge  [][]float64 // the changes of curvature themselves, by station
	left   []float64   // residuals of the single arc
	own    [][]float64 // what of a misreading of each station one arc does not fit
}

// coarse prepares the search.
func (r Rises) coarse() *coarse {
	c := &coarse{r: r}
	for i := range r.Rise {
		c.all = append(c.all, i)
	}
	c.single, _ = r.leastSquares(r.start(), c.all)
	n := len(r.Rise)
	base := r.jacobian(&c.single, c.all, false)
	var qr mat.QR
	qr.Factorize(base)
	var q mat.Dense
	qr.QTo(&q)
	outside := func(column []float64) []float64 { // the part square to the columns of one arc
		column = slices.Clone(column)
		for k := range 3 {
			dot := 0.0
			for i, x := range column {
				dot += q.At(i, k) * x
			}
			for i := range column {
				column[i] -= dot * q.At(i, k)
			}
		}
		return column
	}
	left := make([]float64, n)
	for i, y := range r.Rise {
		fitted, _ := c.single.at(r.at(i))
		left[i] = y - fitted
	}
	c.left = outside(left)
	for j := range n {
		bent := bow{c.single.height, c.single.slope, []float64{c.single.curvature[0], c.single.curvature[0]}, []float64{r.at(j)}}
		c.hinge = append(c.hinge, outside(mat.Col(nil, 3, r.jacobian(&bent, c.all, false))))
		unit := make([]float64, n)
		unit[j] = 1
		c.own = append(c.own, outside(unit))
	}
	for j := range n {
		row := make([]float64, n)
		for k := range n {
			row[k] = dot(c.hinge[j], c.hinge[k])
		}
		c.gram, c.gain = append(c.gram, row), append(c.gain, dot(c.hinge[j], c.left))
	}
	return c
}

func dot(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += a[i] * b[i]
	}
	return sum
}

// A guess is where the joints of some arcs may lie, and a station left out, −1 for none.
type guess struct {
	joints  []int
	without int
	gains   float64 // by how much its sum of squares is less than that of one arc, m²
	off     float64 // by how much the reading left out is off, m
}

// guesses returns the joints, at stations that leave enough of them to each arc, for so
// many arcs through all stations but one, the best first.
func (c *coarse) guesses(arcs, without int) []guess {
	n := len(c.r.Rise)
	gram := func(j, k int) float64 { return c.gram[j][k] }
	gain, saved := c.gain, 0.0
	var e []float64 // of the changes of curvature at the station left out
	own := 1.0
	if without >= 0 { // the misreading is one more column, taken out of the others
		own = c.own[without][without]
		saved = c.left[without] * c.left[without] / own
		gain = make([]float64, n)
		for j := range n {
			e = append(e, c.hinge[j][without])
			gain[j] = c.gain[j] - e[j]*c.left[without]/own
		}
		gram = func(j, k int) float64 { return c.gram[j][k] - e[j]*e[k]/own }
	}
	var list []guess
	add := func(gains float64, bends []float64, joints ...int) {
		g := guess{joints: joints, without: without, gains: saved + gains}
		if without >= 0 {
			g.off = c.left[without]
			for i, bend := range bends {
				g.off -= bend * e[joints[i]]
			}
			g.off /= own
		}
		list = append(list, g)
	}
	switch arcs {
	case 1:
		add(0, nil)
	case 2:
		for j := toEach; j < n-toEach; j++ {
			if size := gram(j, j); size > 0 {
				add(gain[j]*gain[j]/size, []float64{gain[j] / size}, j)
			}
		}
	default:
		for j := toEach; j < n-2*toEach; j++ {
			for k := j + toEach; k < n-toEach; k++ {
				jj, jk, kk := gram(j, j), gram(j, k), gram(k, k)
				if size := jj*kk - jk*jk; size > 0 {
					first, second := (kk*gain[j]-jk*gain[k])/size, (jj*gain[k]-jk*gain[j])/size
					add(first*gain[j]+second*gain[k], []float64{first, second}, j, k)
				}
			}
		}
	}
	slices.SortStableFunc(list, func(a, b guess) int { return cmp.Compare(b.gains, a.gains) })
	return list
}

// starts returns where the search for some arcs begins: the best guesses.
func (c *coarse) starts(list []guess, most int) []bow {
	var bows []bow
	for _, g := range list[:min(len(list), most)] {
		b := bow{height: c.single.height, slope: c.single.slope, curvature: []float64{c.single.curvature[0]}}
		for _, j := range g.joints {
			b.curvature = append(b.curvature, c.single.curvature[0])
			b.joint = append(b.joint, c.r.at(j))
		}
		bows = append(bows, b)
	}
	return bows
}
