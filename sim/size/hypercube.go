package size

import (
	"math/rand/v2"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"
	"gonum.org/v1/gonum/stat/samplemv"
)

// hypercube returns n points of a Latin hypercube of so many independent normal variables, in
// standard deviations, a point a row. Each block of a seed has points of its own.
func hypercube(n, variables int, seed, block uint64) *mat.Dense {
	points := mat.NewDense(n, variables, nil)
	samplemv.LatinHypercube{Q: normals{}, Src: rand.NewPCG(seed, block)}.Sample(points)
	return points
}

// normals are independent standard normal variables, for the sampler.
type normals struct{}

// Quantile fills x with the values below which each variable lies with the probabilities p.
func (normals) Quantile(x, p []float64) []float64 {
	for i := range p {
		x[i] = distuv.UnitNormal.Quantile(p[i])
	}
	return x
}
