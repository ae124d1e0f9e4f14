package validation

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"sort"
	"sync"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/rocker/root"
	"rockerwright/sim"
	"rockerwright/sim/motion"
)

// designs is on how many random designs independent methods are held against each other.
const designs = 200

// worst is the largest difference of each kind over the designs.
type worst struct {
	integrated         float64 // period by the integrator over that by quadrature, less one
	period, rest, lift float64 // of a brute-force roll: relative, rad, m
	count              int
}

// independent are two methods besides the product's own closed forms and quadrature.
func independent(f Fault) []Case {
	found := sync.OnceValues(func() (worst, error) { return compared(f) })
	one := func(name, checks, unit string, near bound, pick func(worst) float64) row {
		return row{fmt.Sprintf("%s, worst of %d designs", name, designs), checks,
			"derived here: two methods, one answer; seeded random designs of 1 to 4 arcs", unit, 0, near,
			func() (float64, error) { w, err := found(); return pick(w), err }}
	}
	const roll, why = "A roll of the sampled outline that shares no formula with the product.", "an outline sampled each 0.05 mm"
	return group("independent methods",
		one("integrator against quadrature, period", "The motion in time takes the period that the quadrature finds.", "",
			absolute(1e-9, followed.why), func(w worst) float64 { return w.integrated }),
		one("outline rolled, period", roll, "", absolute(1e-6, why), func(w worst) float64 { return w.period }),
		one("outline rolled, rest", roll, "rad", absolute(1e-6, why), func(w worst) float64 { return w.rest }),
		one("outline rolled, lift", roll, "m", absolute(1e-9, why), func(w worst) float64 { return w.lift }))
}

// compared holds the methods against each other.
func compared(f Fault) (worst, error) {
	rng := rand.New(rand.NewPCG(2026, 5))
	var w worst
	var outline rolled
	for w.count < designs {
		honest := randomRig(rng)
		b := honest.Balance()
		if b.Outcome != sim.Rocks || !b.Back.Exists() || math.Abs(b.Rest.Tilt) > 0.25 {
			continue
		}
		w.count++
		back, _ := honest.LargestRelease(b)
		release := 0.6 * back
		outline.roll(honest)
		rig := f.on(honest) // the product's answer, perhaps with a fault
		b = rig.Balance()
		period, _ := rig.Period(b, release)
		t := motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt + release}, motion.Options{Duration: 20})
		turns := slices.DeleteFunc(t.Events, func(e motion.Event) bool { return e.Kind != motion.Turns })
		if len(turns) > 1 {
			w.integrated = max(w.integrated, math.Abs(turns[1].Time/period-1))
		}
		rest, lift, brute, err := outline.answer(release)
		if err != nil {
			return w, err
		}
		w.period = max(w.period, math.Abs(period/brute-1))
		w.rest = max(w.rest, math.Abs(b.Rest.Tilt-rest))
		w.lift = max(w.lift, math.Abs(b.Back.Lift-lift))
	}
	return w, nil
}

// randomRig is a chair as people might make it, and some that they would not.
func randomRig(rng *rand.Rand) sim.Rig {
	for {
		var spans []rocker.Span
		total := 0.0
		for range 1 + rng.IntN(4) {
			length := 0.2 + 0.3*rng.Float64()
			total += length
			spans = append(spans, rocker.Arc(0.9+rng.Float64(), length))
		}
		edge, err := rocker.Chain(total*(0.3+0.4*rng.Float64()), spans...)
		if err != nil {
			continue
		}
		m := 20 + 100*rng.Float64()
		k := 0.2 + 0.2*rng.Float64()
		return sim.Rig{Profile: edge, Body: body.Body{Mass: m, Centre: r2.Vec{X: 0.05 * rng.NormFloat64(), Y: 0.4 + 0.3*rng.Float64()},
			Inertia: m * k * k}}
	}
}

// A rolled is a sampled outline rolled over a level floor by hand: for each of its edges the tilt at which that edge lies
// on the floor, and how far the balance point is then ahead of the edge's middle. The height of the balance point is the
// sum of those over the tilt, for rolling by a small angle lifts it by the angle times that distance.
type rolled struct {
	tilt, ahead, height []float64
	up                  float64 // the balance point over the floor at the first tilt
	gyration            float64 // squared, m²
}

// roll rolls the outline of a rig, in the room of an earlier one.
func (out *rolled) roll(r sim.Rig) {
	points := r.Profile.Outline(3e-10)
	out.tilt, out.ahead, out.height = out.tilt[:0], out.ahead[:0], out.height[:0]
	out.gyration = r.Body.Inertia / r.Body.Mass
	g := r.Body.Centre
	add := func(tilt float64, at r2.Vec) {
		forward := r2.Vec{X: math.Cos(tilt), Y: -math.Sin(tilt)} // along the floor, seen from the piece
		ahead := r2.Dot(forward, r2.Sub(g, at))
		if n := len(out.tilt); n == 0 {
			out.up = r2.Dot(r2.Vec{X: math.Sin(tilt), Y: math.Cos(tilt)}, r2.Sub(g, at))
			out.height = append(out.height, 0)
		} else {
			out.height = append(out.height, out.height[n-1]+(tilt-out.tilt[n-1])*(ahead+out.ahead[n-1])/2)
		}
		out.tilt, out.ahead = append(out.tilt, tilt), append(out.ahead, ahead)
	}
	direction := func(i int) float64 { // the tilt at which the edge from point i lies level
		step := r2.Sub(points[i+1], points[i]) // to the rear
		return math.Atan2(step.Y, -step.X)
	}
	const fine = 5e-5                                     // rad, of the turns about the tips
	first := direction(0) - (direction(1)-direction(0))/2 // where the first edge takes over from the tip
	for tilt := first - 1.2; tilt < first; tilt += fine {
		add(tilt, points[0])
	}
	add(first, points[0])
	for i := range points[:len(points)-1] {
		add(direction(i), r2.Scale(0.5, r2.Add(points[i], points[i+1])))
	}
	end := len(points) - 2
	last := direction(end) + (direction(end)-direction(end-1))/2
	for tilt := last; tilt < last+1.2; tilt += fine {
		add(tilt, points[len(points)-1])
	}
}

// at returns how far ahead, and how high over the first, the balance point is at a tilt.
func (o rolled) at(tilt float64) (ahead, height float64) {
	i := min(max(1, sort.SearchFloat64s(o.tilt, tilt)), len(o.tilt)-1)
	wide := o.tilt[i] - o.tilt[i-1]
	into := tilt - o.tilt[i-1]
	slope := (o.ahead[i] - o.ahead[i-1]) / wide
	return o.ahead[i-1] + slope*into, o.height[i-1] + into*(o.ahead[i-1]+slope*into/2)
}

// answer returns the lowest rest, the lift to the next hilltop at the back, and the time of a rock let go behind the rest.
func (o rolled) answer(release float64) (rest, lift, period float64, err error) {
	low := math.Inf(1)
	for i := 1; i < len(o.tilt); i++ {
		if o.ahead[i-1] < 0 && o.ahead[i] >= 0 && o.height[i] < low {
			low = o.height[i]
			rest = o.tilt[i-1] - o.ahead[i-1]*(o.tilt[i]-o.tilt[i-1])/(o.ahead[i]-o.ahead[i-1])
		}
	}
	_, ground := o.at(rest)
	for i := 1; i < len(o.tilt); i++ {
		if o.tilt[i-1] > rest+1e-3 && o.ahead[i-1] > 0 && o.ahead[i] <= 0 {
			_, top := o.at(o.tilt[i-1] - o.ahead[i-1]*(o.tilt[i]-o.tilt[i-1])/(o.ahead[i]-o.ahead[i-1]))
			lift = top - ground
			break
		}
	}
	back := rest + release
	_, start := o.at(back)
	far := rest - 1         // the turn on the other side lies nearer
	for i := range o.tilt { // up to the hilltop in front
		if o.tilt[i] < rest && o.ahead[i] >= 0 {
			far = o.tilt[i]
		}
	}
	near := root.Between(func(tilt float64) float64 {
		_, h := o.at(tilt)
		return h - start
	}, rest, far, 0)
	// θ = middle + half·sin ψ takes the roots at both turns out, 600 pieces of 8 points the kinks at joints.
	middle, half := (back+near)/2, (back-near)/2
	const pieces = 600
	for i := range pieces {
		from := -math.Pi/2 + math.Pi*float64(i)/pieces
		period += 2 * quad.Fixed(func(psi float64) float64 {
			tilt := middle + half*math.Sin(psi)
			ahead, h := o.at(tilt)
			over := o.up + h
			return half * math.Cos(psi) * math.Sqrt((o.gyration+over*over+ahead*ahead)/(2*sim.Gravity*(start-h)))
		}, from, from+math.Pi/pieces, 8, quad.Legendre{}, 0)
	}
	if math.IsNaN(period) {
		return rest, lift, period, fmt.Errorf("validation: the outline does not rock from %g rad", release)
	}
	return rest, lift, period, nil
}
