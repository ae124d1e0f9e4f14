package sim

import (
	"math"
	"sync"

	"gonum.org/v1/gonum/integrate/quad"
)

// A rule is a Gauss-Legendre rule on [0, 1].
type rule struct{ at, weight []float64 }

func legendre(n int) rule {
	r := rule{make([]float64, n), make([]float64, n)}
	quad.Legendre{}.FixedLocations(r.at, r.weight, 0, 1)
	return r
}

// rules are the pair that checks itself: the integrand is analytic, so the error of
// the rule with twice the points is far below the difference of the two.
var rules = sync.OnceValue(func() [2]rule { return [2]rule{legendre(7), legendre(14)} })

// agreement is the relative difference of the two rules that is good enough. Against much finer rules the result is
// then right to 1e-11 (in this package's tests), a tenth of what is promised.
const agreement = 1e-8

// fallTime returns the time from the turning point at the given roll in to the rest, s, the integral of √(J/(2 m
// g·fallen)) over the turn, and the height fallen, m. The time is not finite for a start on a hilltop.
func (r *Rig) fallTime(turning float64, rest Equilibrium) (time, height float64) {
	f := r.fallFrom(turning, rest)
	for s, more := f.next(); more; s, more = f.next() {
		time += s.time()
	}
	return time, f.above
}

// time returns the time spent on the stretch, s. The integrand is infinite at the turning point, or nearly so a
// little outside, where with the arm at the outer end the turning point would be: at t = −t₀, t₀ = above/2Z. With t =
// y(y + 2√t₀) it is smooth. Further out than a hundred times the stretch the turning point is not felt.
func (s *stretch) time() float64 {
	before := 0.0
	if s.above > 0 {
		arm := max(0, s.side*(s.pull-s.slide))
		before = min(math.Sqrt(s.above/(2*arm)), 10*math.Sqrt(s.end))
	}
	end := s.end / (before + math.Sqrt(before*before+s.end))
	return s.timeOver(before, 0, end, 40)
}

// timeOver integrates over y from a to b, halving where the two rules differ, at most depth times.
func (s *stretch) timeOver(before, a, b float64, depth int) float64 {
	pair := rules()
	rough, fine := s.timeBy(pair[0], before, a, b), s.timeBy(pair[1], before, a, b)
	if !(math.Abs(rough-fine) > agreement*fine) || depth == 0 {
		return fine
	}
	middle := (a + b) / 2
	return s.timeOver(before, a, middle, depth-1) + s.timeOver(before, middle, b, depth-1)
}

// timeBy integrates over y from a to b by one rule; dδ = 2 dt/(1 + t²).
func (s *stretch) timeBy(by rule, before, a, b float64) float64 {
	var sum float64
	for i, x := range by.at {
		y := a + (b-a)*x
		t := y * (y + 2*before)
		m := s.at(t)
		sum += by.weight[i] * (y + before) / (1 + t*t) * math.Sqrt(s.rig.inertia(m.stance)/m.fallen)
	}
	return 4 * (b - a) * sum / math.Sqrt(2*s.rig.weight())
}
