package rises

import (
	"slices"

	"gonum.org/v1/gonum/diff/fd"
	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"
)

// start returns where the search for a single arc begins.
func (r Row) start() bow {
	n := len(r.Rise)
	span := r.at(0) - r.at(n-1)
	middle := (r.Rise[0] + r.Rise[n-1]) / 2
	curvature := 8 * max(middle-r.Rise[r.Low], 1e-4) / (span * span)
	return bow{height: r.Rise[r.Low], curvature: []float64{curvature}}
}

// leastSquares moves a bow to the least sum of squared residuals by Gauss-Newton steps, halved until they gain, and
// returns it with that sum: first with the joints where they are, for between arcs alike they have no place.
func (r Row) leastSquares(b bow, stations []int) (bow, float64) {
	squares := r.squares(&b, stations)
	for _, joints := range []bool{false, true} {
		for range 30 {
			step, ok := r.step(&b, stations, joints)
			if !ok {
				break
			}
			before := squares
			for try, share := 0, 1.0; try < 8; try, share = try+1, share/2 {
				next := b.moved(step, share)
				if now := r.squares(&next, stations); r.ordered(&next) && now < squares {
					b, squares = next, now
					break
				}
			}
			if before-squares <= 1e-12*before {
				break
			}
		}
	}
	return b, squares
}

// moved returns the bow with a share of a step added to its first parameters.
func (b *bow) moved(step []float64, share float64) bow {
	first := b.parameters()[:len(step)]
	floats.AddScaled(first, share, step)
	return b.with(first)
}

// toEach is how many spacings an arc has at least: it goes through a misread end only if its neighbours agree.
const toEach = 3

// ordered reports whether the joints lie in order, with enough stations to every arc.
func (r Row) ordered(b *bow) bool {
	before := r.at(0)
	for _, x := range append(slices.Clone(b.joint), r.at(len(r.Rise)-1)) {
		if x > before-(toEach-0.5)*r.apart() {
			return false
		}
		before = x
	}
	return true
}

// residuals returns the readings less a bow.
func (r Row) residuals(b *bow, stations []int) []float64 {
	left := make([]float64, len(stations))
	for row, i := range stations {
		y, _ := b.at(r.at(i))
		left[row] = r.Rise[i] - y
	}
	return left
}

func (r Row) squares(b *bow, stations []int) float64 {
	left := r.residuals(b, stations)
	return floats.Dot(left, left)
}

// jacobian returns how the fitted rises go with each parameter, by central differences; joints last, or left out.
func (r Row) jacobian(b *bow, stations []int, joints bool) *mat.Dense {
	parameters := b.parameters()
	if !joints {
		parameters = parameters[:len(parameters)-len(b.joint)]
	}
	j := mat.NewDense(len(stations), len(parameters), nil)
	fd.Jacobian(j, func(rises, parameters []float64) {
		changed := b.with(parameters)
		for row, i := range stations {
			rises[row], _ = changed.at(r.at(i))
		}
	}, parameters, &fd.JacobianSettings{Formula: fd.Central, Step: 1e-6})
	return j
}

// step returns the Gauss-Newton step.
func (r Row) step(b *bow, stations []int, joints bool) ([]float64, bool) {
	var step mat.VecDense
	left := mat.NewVecDense(len(stations), r.residuals(b, stations))
	if err := step.SolveVec(r.jacobian(b, stations, joints), left); err != nil {
		return nil, false
	}
	return step.RawVector().Data, true
}
