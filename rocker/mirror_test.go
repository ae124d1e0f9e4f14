package rocker

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// A pair is an edge and the same one otherwise laid: seen from the other side, or all its lengths
// times size, or both.
type pair struct {
	p, q       Profile
	side, size float64 // −1 mirrored, else 1
}

// place returns where a point of p is on q.
func (c pair) place(v r2.Vec) r2.Vec { return r2.Scale(c.size, r2.Vec{X: c.side * v.X, Y: v.Y}) }

// other returns the edge laid otherwise.
func other(t *testing.T, p Profile, nose float64, spans []Span, side, size float64) pair {
	t.Helper()
	laid := slices.Clone(spans)
	if side < 0 {
		slices.Reverse(laid)
		nose = max(0, p.Length()-nose)
	}
	for i := range laid {
		laid[i].Radius *= size
		laid[i].Length *= size
	}
	return pair{p, mustChain(t, size*nose, laid...), side, size}
}

// TestMirroredAndScaled: an edge seen from the other side has nose and tail changed over, and one of
// other size has lengths, areas and second moments by powers of it.
func TestMirroredAndScaled(t *testing.T) {
	rng := rand.New(rand.NewPCG(41, 42))
	for n := 0; n < 150; {
		nose, spans := randomSpans(rng)
		p, err := Chain(nose, spans...)
		if err != nil {
			continue
		}
		n++
		for _, c := range []pair{other(t, p, nose, spans, -1, 1), other(t, p, nose, spans, 1, 3), other(t, p, nose, spans, -1, 0.5)} {
			tilts := []float64{7 * (rng.Float64() - 0.5), 7 * (rng.Float64() - 0.5)}
			c.support(t, tilts, r2.Vec{X: rng.Float64() - 0.5, Y: rng.Float64()})
			c.along(t, 3*(rng.Float64()-0.5))
			c.strips(t, 0.05, 0.03+0.04*rng.Float64())
		}
	}
}

// alike holds a number of q against that of p times a power of the size.
func (c pair) alike(t *testing.T, name string, p, q float64, power int) {
	t.Helper()
	scale := math.Pow(c.size, float64(power))
	if math.Abs(p*scale-q) > 1e-11*scale { // some sines of angles that differ by a rounding, of flat meetings
		t.Fatalf("%s: %v; laid otherwise (%v, %v) %v\n%+v", name, p, c.side, c.size, q, c.p.Drawn())
	}
}

// same holds a point of q against that of p.
func (c pair) same(t *testing.T, name string, p, q r2.Vec) {
	t.Helper()
	c.alike(t, name, 0, r2.Norm(r2.Sub(c.place(p), q)), 1)
}

// support holds heights, contacts and the length rolled over at any two tilts.
func (c pair) support(t *testing.T, tilts []float64, g r2.Vec) {
	t.Helper()
	var rolled, otherwise []float64
	for _, tilt := range tilts {
		h, dh, ddh := c.p.Support(tilt)
		k, dk, ddk := c.q.Support(c.side * tilt)
		c.alike(t, "h", h, k, 1)
		c.alike(t, "h′", c.side*dh, dk, 1)
		c.alike(t, "h″", ddh, ddk, 1)
		c.alike(t, "height", c.p.Height(g, tilt), c.q.Height(c.place(g), c.side*tilt), 1)
		c.same(t, "contact", c.p.Contact(tilt), c.q.Contact(c.side*tilt))
		i, within := c.p.Find(tilt)
		rolled = append(rolled, c.p.Bearing(i).RolledAt(within)+c.p.Perimeter()*math.Round((tilt-within)/(2*math.Pi)))
		i, within = c.q.Find(c.side * tilt)
		otherwise = append(otherwise, c.q.Bearing(i).RolledAt(within)+c.q.Perimeter()*math.Round((c.side*tilt-within)/(2*math.Pi)))
	}
	c.alike(t, "rolled", c.side*(rolled[1]-rolled[0]), otherwise[1]-otherwise[0], 1)
	c.alike(t, "perimeter", c.p.Perimeter(), c.q.Perimeter(), 1)
}

// along holds what is read along the drawn edge.
func (c pair) along(t *testing.T, at float64) {
	t.Helper()
	nose, tail := c.p.Reach()
	first, last := c.q.Reach()
	if c.side < 0 {
		first, last = last, first
	}
	c.alike(t, "reach", nose, first, 1)
	c.alike(t, "reach", tail, last, 1)
	p, on := c.p.At(at)
	q, also := c.q.At(c.side * c.size * at)
	c.same(t, "place along the edge", p, q)
	if inside := at <= nose && at >= -tail; on != inside || also != inside {
		t.Fatalf("%v m along an edge from %v to %v: %v, %v", at, nose, -tail, on, also)
	}
	for _, s := range c.p.Drawn() {
		if s.From < -1.5 || s.To > 1.5 || s.To < -1.5 || s.From > 1.5 {
			return // it stands over itself
		}
	}
	c.alike(t, "rise", c.p.Rise(at), c.q.Rise(c.side*c.size*at), 1)
}

// strips holds area, centroid and second moment under every top.
func (c pair) strips(t *testing.T, depth, tip float64) {
	t.Helper()
	for _, strip := range []func(p Profile, size, side float64) (Strip, error){
		func(p Profile, size, _ float64) (Strip, error) { return p.Strip(size*depth, Concentric) },
		func(p Profile, size, _ float64) (Strip, error) { return p.Strip(size*(depth+0.3), Straight) },
		func(p Profile, size, side float64) (Strip, error) {
			if side < 0 {
				return p.Tapered(size*depth, size*2*tip, size*tip)
			}
			return p.Tapered(size*depth, size*tip, size*2*tip)
		},
	} {
		p, bad := strip(c.p, 1, 1)
		q, wrong := strip(c.q, c.size, c.side)
		if (bad == nil) != (wrong == nil) {
			t.Fatalf("%v; laid otherwise %v", bad, wrong)
		}
		if bad == nil && p.Area < 10 { // a straight top's lines run far where they are nearly level
			c.alike(t, "area", p.Area, q.Area, 2)
			c.same(t, "centroid", p.Centroid, q.Centroid)
			c.alike(t, "second moment", p.Second, q.Second, 4)
		}
	}
}
