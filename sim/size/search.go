package size

import (
	"math"
	"math/rand/v2"
	"runtime"
	"sync"

	"gonum.org/v1/gonum/optimize"
)

// Sizes of the first steps of a search: radii by a tenth, places along the edge by inches.
const (
	radiusScale = 0.1
	placeScale  = 0.03 // m
)

// unknowns lists a shape as unknowns of like size, seen from the one that was drawn.
func (q *question) unknowns(s shape) []float64 {
	var x []float64
	for _, r := range s.radii {
		x = append(x, math.Log(r/q.start.radii[0])/radiusScale)
	}
	for _, j := range s.joints {
		x = append(x, j/placeScale)
	}
	x = append(x, (s.nose-q.start.nose)/placeScale, (s.tail-q.start.tail)/placeScale)
	if q.movable {
		x = append(x, s.low/placeScale)
	}
	return x
}

// shapeAt is unknowns backwards, for so many arcs.
func (q *question) shapeAt(x []float64, arcs int) shape {
	var s shape
	for _, u := range x[:arcs] {
		s.radii = append(s.radii, q.start.radii[0]*math.Exp(u*radiusScale))
	}
	for _, u := range x[arcs : 2*arcs-1] {
		s.joints = append(s.joints, u*placeScale)
	}
	x = x[2*arcs-1:]
	s.nose, s.tail = q.start.nose+x[0]*placeScale, q.start.tail+x[1]*placeScale
	if q.movable {
		s.low = x[2] * placeScale
	}
	return s
}

// compound returns the best shape of so many arcs that is found from several starts, around
// a shape of one arc, by the simplex of Nelder and Mead, each start followed by a second from
// where the first ended. The starts run side by side; which of them is best does not hang on
// that, and neither on luck: the seed gives their places.
func (q *question) compound(around shape, arcs int, seed uint64) shape {
	starts := q.starts(around, arcs, seed)
	found := make([]shape, len(starts))
	scores := make([]float64, len(starts))
	each(len(starts), func(i int) {
		found[i], scores[i] = q.descend(q.descended(starts[i]))
	})
	best := 0
	for i := range found {
		if scores[i] < scores[best] {
			best = i
		}
	}
	return found[best]
}

// each calls do for 0 to n−1, as many at a time as there are processors.
func each(n int, do func(i int)) {
	var wait sync.WaitGroup
	next := make(chan int, n)
	for i := range n {
		next <- i
	}
	close(next)
	for range min(n, runtime.GOMAXPROCS(0)) {
		wait.Go(func() {
			for i := range next {
				do(i)
			}
		})
	}
	wait.Wait()
}

// starts returns the shapes from which so many arcs are searched: as one arc, flatter towards
// the tail, flatter at both ends, tighter at both ends, and two by chance.
func (q *question) starts(around shape, arcs int, seed uint64) []shape {
	rng := rand.New(rand.NewPCG(seed, uint64(arcs)))
	base := around
	base.radii, base.joints = nil, nil
	for i := range arcs {
		base.radii = append(base.radii, around.radii[0])
		if i > 0 {
			base.joints = append(base.joints, -around.nose+(around.nose+around.tail)*float64(i)/float64(arcs))
		}
	}
	if arcs == 1 {
		return []shape{base}
	}
	curved := func(first, last float64) shape {
		s := base
		s.radii = append([]float64(nil), base.radii...)
		s.radii[0] *= first
		s.radii[arcs-1] *= last
		return s
	}
	list := []shape{base, curved(1, 1.4), curved(1.4, 1.4), curved(0.8, 0.8)}
	for range 2 {
		list = append(list, curved(math.Exp(0.5*rng.NormFloat64()), math.Exp(0.5*rng.NormFloat64())))
	}
	return list
}

// descended is descend without the score.
func (q *question) descended(s shape) shape {
	s, _ = q.descend(s)
	return s
}

// descend goes downhill from a shape by one simplex, and returns where it ends.
func (q *question) descend(s shape) (shape, float64) {
	arcs := len(s.radii)
	x := q.unknowns(s)
	problem := optimize.Problem{Func: func(x []float64) float64 { return q.score(q.shapeAt(x, arcs)) }}
	settings := &optimize.Settings{
		FuncEvaluations: evaluations * len(x),
		Concurrent:      1,
		Converger:       &optimize.FunctionConverge{Absolute: 1e-7, Relative: 1e-6, Iterations: 20 * len(x)},
	}
	result, err := optimize.Minimize(problem, x, settings, &optimize.NelderMead{SimplexSize: 1})
	if result == nil || err != nil && result.X == nil {
		return s, q.score(s)
	}
	if was := q.score(s); !(result.F < was) {
		return s, was
	}
	return q.shapeAt(result.X, arcs), result.F
}

// evaluations is how often a search may ask, for each unknown: enough for the tests of this
// package, in which no random shape is better.
const evaluations = 80
