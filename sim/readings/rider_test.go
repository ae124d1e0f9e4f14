package readings

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// rodeBy makes exact readings of the known chair, rocked with a rider alone.
func rodeBy(t *testing.T, who body.Body) Readings {
	r := readingsOf(t, known)
	r.TenRocks, r.LetGo, r.Rider, r.RiddenLetGo = 0, 0, who, 0.09
	rig := sim.Rig{Profile: edge, Body: body.Join(known, who)}
	r.RiddenTenRocks = 10 * rig.Swing(rig.Balance(), r.RiddenLetGo).Period
	return r
}

// TestRiderHidesInertia reads a chair rocked with a rider a thousand times with normal
// reading errors. None is refused, and the inertia is within its uncertainty or not known:
// a man of 80 kg hides that of a chair of 12 kg, a doll of 2 kg does not.
func TestRiderHidesInertia(t *testing.T) {
	const trials = 1000
	for _, tt := range []struct {
		name        string
		who         body.Body
		least, most int // how often the inertia is told and within its uncertainty
	}{
		{"man", rider, 0, 0}, // its uncertainty is three times the inertia
		{"doll", body.Body{Mass: 2, Centre: r2.Vec{X: 0.01, Y: 0.55}, Inertia: 0.05}, 930, 970},
	} {
		exact := rodeBy(t, tt.who)
		rng := rand.New(rand.NewPCG(11, 6))
		told, within, doubts := 0, 0, 0
		for range trials {
			r := exact
			for _, one := range r.read() {
				*one.value += one.deviation * rng.NormFloat64()
			}
			result, err := r.Read()
			if err != nil {
				t.Fatalf("%s: %v", tt.name, err)
			}
			if len(result.Doubts) > 0 {
				doubts++
			}
			v := result.Inertia
			if math.IsNaN(v.Value) != (result.Untold == "ten_rocks_ridden") || math.IsNaN(result.Body.Inertia) != math.IsNaN(v.Value) {
				t.Fatalf("%s: inertia %v, untold %q", tt.name, v.Value, result.Untold)
			}
			if result.Untold == "" {
				told++
				if math.Abs(v.Value-known.Inertia) <= v.Uncertain {
					within++
				}
			}
		}
		t.Logf("%s: of %d told %d, within the uncertainty %d, doubts %d", tt.name, trials, told, within, doubts)
		if within < tt.least || within > tt.most {
			t.Errorf("%s: told %d times, within its uncertainty %d", tt.name, told, within)
		}
		if missed := told - within; missed > 70 { // 50 expected, 3 deviations
			t.Errorf("%s: told and not within its uncertainty %d times in %d", tt.name, missed, trials)
		}
		if doubts > 20 { // two sums and, of a doubt, 3 deviations: about 3 in 1000 each
			t.Errorf("%s: %d doubts of honest readings", tt.name, doubts)
		}
	}
}

// TestRiderAgrees holds that empty rocks and honest ones with a rider raise a doubt no more
// often than three deviations do, and that the inertia stays that of the empty rocks.
func TestRiderAgrees(t *testing.T) {
	exact := rodeBy(t, rider)
	exact.LetGo = readingsOf(t, known).LetGo
	exact.TenRocks = readingsOf(t, known).TenRocks
	if result, err := exact.Read(); err != nil || len(result.Doubts) > 0 || !(math.Abs(result.Body.Inertia-known.Inertia) < 1e-8) {
		t.Errorf("%+v, %v", result, err)
	}
	rng := rand.New(rand.NewPCG(11, 7))
	doubts := 0
	for range 1000 {
		r := exact
		for _, one := range r.read() {
			*one.value += one.deviation * rng.NormFloat64()
		}
		result, err := r.Read()
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range result.Doubts {
			if d.Reading == "ten_rocks_ridden" {
				doubts++
			}
		}
	}
	if doubts > 10 { // 3 expected (0.27 %), and 4 deviations of a rare count
		t.Errorf("%d doubts of honest rocks with a rider in 1000", doubts)
	}
}

// TestTrueZero holds that a reading of 0 that Zero names is read, with its error, and that
// one it does not name is missing.
func TestTrueZero(t *testing.T) {
	r := Readings{Edge: edge, Weight: 12, DowelAbove: 0.42}
	if _, err := r.Read(); err == nil {
		t.Error("a place fore and aft out of nothing")
	}
	r.Zero = []string{"dowel_ahead"}
	result, err := r.Read()
	if err != nil || result.Body.Centre != (r2.Vec{Y: 0.42}) || result.Ahead.Limits() != "dowel_ahead" {
		t.Errorf("%v, %+v", err, result)
	}
	if want := math.Sqrt2 * math.Erfinv(0.95) * usualDowel; math.Abs(result.Ahead.Uncertain-want) > 1e-12 {
		t.Errorf("uncertain by %v, want %v", result.Ahead.Uncertain, want)
	}
	marked := readingsOf(t, known) // the same chair, its front mark at the low point
	marked.FrontMark, marked.Zero = 0, []string{"front_mark"}
	marked.TenRocks = 0
	rear, _ := edge.At(-2 * 1.067 * math.Asin(marked.Apart/2/1.067))
	turn := math.Atan2(-rear.Y, -rear.X)
	for _, s := range []struct {
		turn        float64
		front, back *float64
	}{{-turn, &marked.Front, &marked.Rear}, {math.Asin(marked.Raised/marked.Apart) - turn, &marked.FrontRaised, &marked.RearRaised}} {
		g, m := r2.Rotate(known.Centre, s.turn, rear), r2.Rotate(r2.Vec{}, s.turn, rear)
		*s.front = known.Mass * (g.X - rear.X) / (m.X - rear.X)
		*s.back = known.Mass - *s.front
	}
	result, err = marked.Read()
	if err != nil || r2.Norm(r2.Sub(result.Body.Centre, known.Centre)) > 1e-9 {
		t.Fatalf("%v, %+v", err, result.Body)
	}
	for _, share := range result.Ahead.Shares {
		if share.Reading == "front_mark" {
			return
		}
	}
	t.Errorf("the tape's error of a front mark at 0 is dropped: %+v", result.Ahead.Shares)
}
