package rises

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// A Beside is a row of rises beside a curve that it should be.
type Beside struct {
	Station   int     // that lies furthest off, counted from 0
	Off       float64 // by how much its rise is more than the curve's, by all the other stations, m
	Uncertain float64 // of Off, for the worst of so many stations, ± at 95 %, m
	Squares   float64 // sum of all squares over the variance of a reading
	Alone     float64 // the same with this station left out
	Others    bool    // with this station left out, the others agree
}

// Agrees reports whether no station lies further off than the reading error explains.
func (b Beside) Agrees() bool { return math.Abs(b.Off) <= b.Uncertain }

// Against sets a row of rises beside a curve, by the height of the curve at each station. A straightedge a little off
// or aslant is allowed for. The station is the one with the largest residual over its own deviation, which a single
// misreading is always at, as the residuals' matrix I − H has no eigenvalue below zero; by the others it is off by its
// residual over 1 − h (Belsley, Kuh, Welsch, Regression Diagnostics, 1980, from memory). The error is a [*Error].
func (r Row) Against(curve []float64) (Beside, error) {
	if err := r.check(); err != nil {
		return Beside{}, err
	}
	b := r.beside(curve, -1)
	rest := r.beside(curve, b.Station)
	b.Alone, b.Others = rest.Squares, rest.Agrees()
	return b, nil
}

// beside is Against by all stations but one.
func (r Row) beside(curve []float64, without int) Beside {
	stations := r.except(without)
	n := float64(len(stations))
	x, off := make([]float64, len(stations)), make([]float64, len(stations))
	for i, at := range stations {
		x[i], off[i] = r.at(at), r.Rise[at]-curve[at]
	}
	offset, slope := stat.LinearRegression(x, off, nil, false)
	middle, width := stat.Mean(x, nil), stat.Variance(x, nil)*(n-1)
	b, most := Beside{}, -1.0
	quantile := distuv.UnitNormal.Quantile(1 - 0.025/n) // all stations, both signs
	for i, at := range stations {
		residual := off[i] - offset - slope*x[i]
		free := 1 - 1/n - (x[i]-middle)*(x[i]-middle)/width
		b.Squares += residual * residual / (r.deviation() * r.deviation())
		if size := math.Abs(residual) / math.Sqrt(free); size > most {
			most = size
			b.Station, b.Off, b.Uncertain = at, residual/free, quantile*r.deviation()/math.Sqrt(free)
		}
	}
	return b
}

// A Bend is by how much a row lies off a curve along one way of changing it.
type Bend struct {
	By, Uncertain float64 // times that way; ± at 95 %
	Squares       float64 // left, over the variance of a reading
}

// Bent returns the bend of several rows, each on a straightedge of its own, by least squares: how far they lie off their
// curves along ways, the change of each curve at its stations. Uncertain is infinite where the stations do not tell.
func Bent(rows []Row, curves, ways [][]float64) Bend {
	var lines [][]float64
	var off []float64
	for k, r := range rows {
		for i := range r.Rise {
			line := make([]float64, 2*len(rows)+1)
			line[2*k], line[2*k+1], line[2*len(rows)] = 1, r.at(i), ways[k][i]
			for j := range line {
				line[j] /= r.deviation()
			}
			lines, off = append(lines, line), append(off, (r.Rise[i]-curves[k][i])/r.deviation())
		}
	}
	unknowns := 2*len(rows) + 1
	a, y := mat.NewDense(len(lines), unknowns, slices.Concat(lines...)), mat.NewVecDense(len(off), off)
	var normal, covariance mat.Dense
	normal.Mul(a.T(), a)
	bend := Bend{Uncertain: math.Inf(1), Squares: mat.Dot(y, y)}
	if covariance.Inverse(&normal) != nil {
		return bend
	}
	var right, x, left mat.VecDense
	right.MulVec(a.T(), y)
	x.MulVec(&covariance, &right)
	left.MulVec(a, &x)
	left.SubVec(y, &left)
	last := unknowns - 1
	return Bend{x.AtVec(last), 1.96 * math.Sqrt(covariance.At(last, last)), mat.Dot(&left, &left)}
}
