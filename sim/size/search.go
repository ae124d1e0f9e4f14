package size

import (
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"sync"
	"sync/atomic"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/optimize"

	"rockerwright/sim"
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
	if q.alike {
		s.tail = s.nose
	}
	return s
}

// compound returns the best shape of so many arcs found from several starts around one of one arc: each goes
// downhill a little, and the best of them as far as they can. The starts run side by side; which is best hangs
// neither on that nor on luck: the seed gives their places.
func (q *question) compound(around shape, arcs int, seed uint64) shape {
	found := q.starts(around, arcs, seed)
	found = q.best(found, finalists, func(s shape) shape { return q.descended(s, 30) })
	found = q.best(found, 1, func(s shape) shape { return q.descended(q.descended(s, 60), 60) })
	return found[0]
}

// How many shapes are tried by chance before a search, are gone on from, and are followed to the end: enough for
// the tests of this package, in which no random shape is better.
const (
	scouts    = 150 // for each arc
	scouted   = 4
	finalists = 3
)

// best returns the n best shapes after each has been changed by better, the best first.
func (q *question) best(list []shape, n int, better func(s shape) shape) []shape {
	shapes, scores, order := make([]shape, len(list)), make([]float64, len(list)), make([]int, len(list))
	each(len(list), func(i int) {
		shapes[i] = better(list[i])
		scores[i] = q.score(shapes[i])
	})
	floats.ArgsortStable(scores, order)
	best := make([]shape, min(n, len(list)))
	for i := range best {
		best[i] = shapes[order[i]]
	}
	return best
}

// each calls do for 0 to n−1, as many at a time as there are processors.
func each(n int, do func(i int)) {
	var wait sync.WaitGroup
	var taken atomic.Int64
	for range min(n, runtime.GOMAXPROCS(0)) {
		wait.Go(func() {
			for i := int(taken.Add(1)) - 1; i < n; i = int(taken.Add(1)) - 1 {
				do(i)
			}
		})
	}
	wait.Wait()
}

// starts returns where a search of so many arcs starts: as one arc, with ends flatter or tighter, and by chance.
func (q *question) starts(around shape, arcs int, seed uint64) []shape {
	rng := rand.New(rand.NewPCG(seed, uint64(arcs)))
	chance := make([]shape, scouts*arcs)
	for i := range chance {
		chance[i] = chanced(around, arcs, rng)
		if q.alike {
			chance[i].tail = chance[i].nose
		}
	}
	list := q.best(chance, scouted, func(s shape) shape { return s })
	base := q.split(around, arcs)
	if arcs == 1 {
		return append(list, base)
	}
	for _, ends := range [...][2]float64{{1, 1}, {1, 1.4}, {1, 0.7}, {1.4, 1}, {0.7, 1}, {1.4, 0.7}, {0.7, 1.4}} {
		s := base
		s.radii = slices.Clone(base.radii)
		s.radii[0] *= ends[0]
		s.radii[arcs-1] *= ends[1]
		list = append(list, s)
	}
	return list
}

// split returns a shape of one arc as so many of the same radius: the first joint between its rests with somebody
// in it and empty, so that each can have a radius of its own, the second behind both.
func (q *question) split(one shape, arcs int) shape {
	s := one
	s.radii = slices.Repeat(one.radii, arcs)
	from, to := 0.0, 0.0
	if r, ok := q.answer(one); ok && r.Seated().Balance.Outcome == sim.Rocks {
		from, to = one.radii[0]*r.Loads[0].Balance.Rest.Tilt, one.radii[0]*r.Seated().Balance.Rest.Tilt
	}
	inside := func(x float64) float64 { return max(-one.nose+leastArc, min(one.tail-leastArc, x)) }
	middle := inside((from + to) / 2)
	s.joints = []float64{middle, inside((max(from, to, middle) + one.tail) / 2)}[:arcs-1]
	return s
}

// chanced returns a shape at random around one of one arc, whose joints lie in order.
func chanced(around shape, arcs int, rng *rand.Rand) shape {
	s := shape{
		nose: around.nose * math.Exp(0.15*rng.NormFloat64()),
		tail: around.tail * math.Exp(0.2*rng.NormFloat64()),
		low:  around.low + placeScale*rng.NormFloat64(),
	}
	for i := range arcs {
		s.radii = append(s.radii, around.radii[0]*math.Exp(0.35*rng.NormFloat64()))
		if i > 0 {
			s.joints = append(s.joints, -s.nose+(s.nose+s.tail)*rng.Float64())
		}
	}
	slices.Sort(s.joints)
	return s
}

// descended returns where a search downhill from a shape ends, asking at most so often for each unknown.
func (q *question) descended(s shape, asks int) shape {
	arcs := len(s.radii)
	x := q.unknowns(s)
	enough := &optimize.FunctionConverge{Absolute: 1e-7, Relative: 1e-6, Iterations: 20 * len(x)}
	best, least := downhill(func(x []float64) float64 { return q.score(q.shapeAt(x, arcs)) }, x, 1, asks*len(x), enough)
	if !(least < q.score(s)) {
		return s
	}
	return q.shapeAt(best, arcs)
}

// downhill returns where a simplex of Nelder and Mead ends that goes down from x, asking at most so
// often, and the value there; enough, where it is not nil, ends it before.
func downhill(f func([]float64) float64, x []float64, simplex float64, asks int, enough optimize.Converger) ([]float64, float64) {
	settings := &optimize.Settings{FuncEvaluations: asks, Concurrent: 1, Converger: enough}
	result, err := optimize.Minimize(optimize.Problem{Func: f}, x, settings, &optimize.NelderMead{SimplexSize: simplex})
	if err != nil { // of its settings
		panic("size: " + err.Error())
	}
	return result.X, result.F
}
