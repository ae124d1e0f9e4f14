package readings

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"rockerwright/rocker"
)

// TestLevelErrors: each tilt that cannot be is told by its key, and what to read next in the words of the shop.
func TestLevelErrors(t *testing.T) {
	three := func(r *Readings) { r.NoseTip, r.TailTip = 0, 0 }
	for _, tt := range []struct {
		name   string
		change func(r *Readings)
		fails  string
		says   string
	}{
		{"no number", func(r *Readings) { r.BalancesOnTail = math.NaN() }, "balances_on_tail", "no number"},
		{"no number comes back", func(r *Readings) { r.ReturnsFromNose = math.Inf(-1) }, "returns_from_nose", "no number"},
		{"round and round", func(r *Readings) { r.SeatFallsEmpty = 7 }, "seat_falls_empty", "less than 180"},
		{"tip under the floor", func(r *Readings) { r.TailTip = -0.1 }, "tail_tip", "under the floor"},
		{"tip over the roof", func(r *Readings) { r.NoseTip = 3 }, "nose_tip", "at no rest"},
		{"rest alone, zero unknown", func(r *Readings) { three(r); r.onlyTail(); r.BalancesOnTail, r.ReturnsFromTail = 0, 0 },
			"balances_on_tail", "balances_on_tail and balances_on_nose too"},
		{"no rest, zero unknown", func(r *Readings) { three(r); r.SeatFallsEmpty = 0 }, "seat_falls_empty", "draw the seat"},
		{"rest alone, seat drawn", func(r *Readings) {
			three(r)
			r.onlyTail()
			r.BalancesOnTail, r.ReturnsFromTail = 0, 0
			*r = r.drawn(0.06)
		}, "balances_on_tail", "two that cross"},
		{"heights alone", func(r *Readings) {
			*r = Readings{Edge: r.Edge, Weight: 12, NoseTip: r.NoseTip, TailTip: r.TailTip}
		}, "balances_on_tail", "two that cross"},
		{"short of the tail", func(r *Readings) {
			*r = r.drawn(0.06)
			r.BalancesOnTail, r.ReturnsFromTail = 0.4, 0.4
		}, "balances_on_tail", "does not stand on its tail ends"},
		{"far beyond the nose", func(r *Readings) {
			three(r)
			r.BalancesOnNose, r.ReturnsFromNose = -3, -3
		}, "seat_falls_empty", "nearer together"},
		{"rests over the centre of its curve", func(r *Readings) {
			*r = Readings{Edge: r.Edge, Weight: 12, DowelAbove: 1.2, SeatFallsEmpty: 0.06}.drawn(0.06)
		}, "seat_falls_empty", "roll on"},
		{"tail and nose alike", func(r *Readings) {
			three(r)
			r.BalancesOnNose, r.ReturnsFromNose = r.BalancesOnTail, r.BalancesOnTail
		}, "balances_on_nose", "the sign of balances_on_nose"},
		{"tail and nose swapped", func(r *Readings) {
			r.BalancesOnTail, r.BalancesOnNose = r.BalancesOnNose, r.BalancesOnTail
			r.ReturnsFromTail, r.ReturnsFromNose = r.ReturnsFromNose, r.ReturnsFromTail
		}, "balances_on_tail", "probably swapped: balances_on_tail and balances_on_nose"},
	} {
		r := knownLevel(t)
		r.TenRocks, r.LetGo = 0, 0
		tt.change(&r)
		result, err := r.Read()
		var wrong *ReadingError
		if !errors.As(err, &wrong) || wrong.Reading != tt.fails || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%s: %v, %+v; want an error of %s that says %q", tt.name, err, result, tt.fails, tt.says)
		}
	}
}

// TestRestOnAFlat: a piece that rests on a flat of its rockers rests alike wherever over it the balance point lies, so
// that its rest is no line; its ends are.
func TestRestOnAFlat(t *testing.T) {
	edge, err := rocker.Chain(0.43, rocker.Arc(1, 0.38), rocker.Flat(0.1), rocker.Arc(1, 0.5))
	if err != nil {
		t.Fatal(err)
	}
	tail, nose := plumb(known.Centre, edge.Tail()), plumb(known.Centre, edge.Nose())
	r := Readings{Edge: edge, Weight: 12, BalancesOnTail: tail + 0.06, BalancesOnNose: nose + 0.06}.drawn(0.06)
	if result, err := r.Read(); err != nil || math.Hypot(result.Ahead.Value-known.Centre.X, result.Above.Value-known.Centre.Y) > 1e-12 {
		t.Errorf("on its ends: %v, %+v", err, result.Body)
	}
	r.SeatFallsEmpty = 0.06
	var wrong *ReadingError
	if _, err := r.Read(); !errors.As(err, &wrong) || wrong.Reading != "seat_falls_empty" || !strings.Contains(wrong.Reason, "flat") {
		t.Errorf("at rest: %v", err)
	}
}

// TestFinger: of both readings the middle counts, and half of what they differ is its error, at least the level's own;
// of one alone the finger's usual part is counted.
func TestFinger(t *testing.T) {
	for _, tt := range []struct{ over, back, read, deviation float64 }{
		{0.61, 0.59, 0.6, 0.01}, {0.6, 0.6, 0.6, 0.1 * degree},
		{0.61, 0, 0.61, math.Sqrt(0.1) * degree}, {0, 0.59, 0.59, math.Sqrt(0.1) * degree},
	} {
		r := Readings{BalancesOnTail: tt.over, ReturnsFromTail: tt.back}
		_, got, _ := r.tiltings()
		if math.Abs(got.read-tt.read) > 1e-15 || math.Abs(got.deviation/tt.deviation-1) > 1e-12 {
			t.Errorf("over at %v, back at %v: %+v, want %v ± %v", tt.over, tt.back, got, tt.read, tt.deviation)
		}
	}
	r := Readings{SeatFallsEmpty: 0, Zero: []string{"seat_falls_empty"}, LevelError: 0.005}
	if rest, _, _ := r.tiltings(); rest == nil || rest.deviation != 0.005 {
		t.Errorf("a level that shows 0: %+v", rest)
	}
}

// TestTheOneThatIsOff: a slip of four degrees at rest, or in the drawn seat, is doubted alone, with what all the others
// give, where these are enough.
func TestTheOneThatIsOff(t *testing.T) {
	exact := knownLevel(t).drawn(0.06)
	for name, slip := range map[string]func(r *Readings) (read *float64){
		"seat_falls_empty": func(r *Readings) *float64 { return &r.SeatFallsEmpty },
		"seat":             func(r *Readings) *float64 { return &r.SeatFall },
	} {
		r := exact
		truth := *slip(&r)
		*slip(&r) += 4 * degree
		result, err := r.Read()
		if err != nil || len(result.Doubts) != 1 || result.Doubts[0].Reading != name ||
			math.Abs(result.Doubts[0].Expected-truth) > 1e-9 || math.Abs(result.Doubts[0].Read-truth-4*degree) > 1e-9 {
			t.Errorf("%s: %v, %+v; want it alone, %v by the others", name, err, result.Doubts, truth)
		}
	}
}

// TestAnyTilts: whatever is typed, on whatever curve, there is an error or a balance point that is a number.
func TestAnyTilts(t *testing.T) {
	rng := rand.New(rand.NewPCG(20, 6))
	var edges []rocker.Profile
	for _, spans := range [][]rocker.Span{
		{rocker.Arc(1.067, 1.04)}, {rocker.Flat(1)}, {rocker.Arc(1, 0.3), rocker.Flat(0.2), rocker.Arc(1, 0.5)},
		{rocker.Arc(0.8, 0.4), rocker.Turn(0.1), rocker.Arc(1.2, 0.4)}, {rocker.Arc(-2, 0.2), rocker.Arc(0.9, 0.6), rocker.Arc(-2, 0.2)},
		{rocker.Turn(0.3), rocker.Arc(1, 0.9), rocker.Turn(0.3)},
	} {
		edge, err := rocker.Chain(0.42, spans...)
		if err != nil {
			t.Fatal(err)
		}
		edges = append(edges, edge)
	}
	read := 0
	for range 3000 {
		r := Readings{Edge: edges[rng.IntN(len(edges))], Weight: 12}
		for _, value := range []*float64{&r.SeatFallsEmpty, &r.BalancesOnTail, &r.ReturnsFromTail, &r.BalancesOnNose, &r.ReturnsFromNose,
			&r.NoseTip, &r.TailTip, &r.DowelAhead, &r.DowelAbove} {
			if rng.IntN(2) == 0 {
				*value = rng.NormFloat64() * []float64{0.05, 0.5, 2}[rng.IntN(3)]
			}
		}
		if rng.IntN(2) == 0 {
			r = r.drawn(rng.NormFloat64() * 0.1)
		}
		r.NoseEnd, r.TailEnd = End{Radius: rng.ExpFloat64()}, End{Radius: 0.1 * rng.ExpFloat64(), Round: true}
		result, err := r.Read()
		var wrong *ReadingError
		switch {
		case err != nil && !errors.As(err, &wrong):
			t.Errorf("%+v: %v", r, err)
		case err == nil && !(math.Abs(result.Ahead.Value)+result.Ahead.Uncertain+math.Abs(result.Above.Value)+result.Above.Uncertain < 10):
			t.Errorf("%+v: %+v", r, result)
		case err == nil:
			read++
		}
	}
	t.Logf("read %d", read)
}
