package body

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"
)

// randomLegs returns two shanks and two feet such as people have: a shank is some 0.043 and a foot 0.014 of
// a body of 30 to 140 kg, with a shoe. The ankle lets the foot hang in three of four.
func randomLegs(rng *rand.Rand) Legs {
	between := func(from, to float64) float64 { return from + (to-from)*rng.Float64() }
	whole := between(30, 140)
	l := Legs{
		Knee:  r2.Vec{X: between(0.2, 0.5), Y: between(0.3, 0.6)},
		Shank: 2 * 0.043 * whole, Foot: 2*0.014*whole + between(0, 1.5), Thigh: between(0.05, 0.12) * whole,
		Length: between(0.28, 0.5), Centre: between(0.38, 0.48), Ankle: between(0.05, 0.11), Toe: between(0.12, 0.22),
	}
	l.Ahead = l.Toe * between(0.1, 0.6)
	l.Below = l.Ankle * between(l.Ahead/l.Toe+0.1, 1)
	hang := math.Atan2(l.Ahead, l.Below)
	l.Bend = hang * between(0.7, 2)
	return l
}

// least returns the smallest f between from and to: a grid, then golden section about its best place.
func least(f func(x float64) float64, from, to float64) float64 {
	const grid = 120
	step, best := (to-from)/grid, from
	for i := range grid + 1 {
		if x := from + float64(i)*step; f(x) < f(best) {
			best = x
		}
	}
	golden := (math.Sqrt(5) - 1) / 2
	a, b := best-step, best+step
	for range 70 { // 0.618⁷⁰ of a grid's step is rounding
		one, two := b-golden*(b-a), a+golden*(b-a)
		if f(one) < f(two) {
			b = two
		} else {
			a = one
		}
	}
	return f((a + b) / 2)
}

// energy returns the least potential energy over g, kg·m, of legs whose knees are held at a height y: of each turn
// of the foot, the shank as plumb as heel and toe, neither under the floor, let it be. behind is the heel's.
func (l *Legs) energy(y, behind float64) float64 {
	return least(func(turn float64) float64 {
		sin, cos := math.Sincos(turn)
		ankle := max(y-l.Length, l.Ankle*cos+l.Toe*sin, l.Ankle*cos-behind*sin)
		return l.Shank*(y-l.Centre*(y-ankle)) + l.Foot*(ankle-l.Ahead*sin-l.Below*cos)
	}, -1.2, 1.2)
}

// TestCarriedIsOfLeastEnergy: whoever lifts the knees of legs at rest by dy lifts what the floor does not carry,
// dV/dy = (mₛ + m_f − N) g (the envelope theorem: N are the multipliers of "not under the floor"). The stop of
// the ankle is no part of that: with it the law lets go at once, as it says.
func TestCarriedIsOfLeastEnergy(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 1))
	var seen [4]int
	for range 400 {
		l := randomLegs(rng)
		y := l.Length * (0.6 + 0.4*rng.Float64())
		if rng.IntN(3) > 0 {
			y = l.HeelHeight() + (l.ToeHeight()-l.HeelHeight())*1.3*rng.Float64()
		}
		const step = 2e-6 // m
		stopped := l.Bend < math.Atan2(l.Ahead, l.Below) && y > l.ToeHeight()-step
		stage := l.StageAt(y)
		if stopped || l.StageAt(y-step) != l.StageAt(y+step) {
			continue
		}
		seen[stage]++
		behind := 0.06 * rng.Float64()
		got := l.Mass() - (l.energy(y+step, behind)-l.energy(y-step, behind))/(2*step)
		if want := l.Carried(stage, y); math.Abs(got-want) > 1e-6 { // step²/6 of N″, and rounding of 3 kg·m over 2 steps
			t.Errorf("feet %v: at %v m the floor carries %v kg, by least energy %v (%+v)", stage, y, want, got, l)
		}
	}
	if seen[SoleFlat] < 40 || seen[HeelLifted] < 40 || seen[FeetOff] < 20 {
		t.Errorf("stages seen %v: too few", seen)
	}
}

// TestLiftingLiesBetween holds that where the heels just lift N falls from the full share to that on the toes, and
// that it never grows with the height of the knee.
func TestLiftingLiesBetween(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 2))
	for range 100 {
		l := randomLegs(rng)
		heel := l.HeelHeight()
		if s := l.StageAt(heel); s != HeelLifting || l.Carried(s, heel) != l.Full() {
			t.Errorf("at %v m the feet are %v and carry %v of %v kg", heel, s, l.Carried(s, heel), l.Full())
		}
		// on the toe, by moments about it: m_f (t − f) hangs at the ankle
		if got, want := l.Foot-l.OnToe(0), l.Foot*(l.Toe-l.Ahead)/l.Toe; math.Abs(got-want) > 1e-14*l.Foot {
			t.Errorf("%v kg of a foot just off its heel hang, want %v", got, want)
		}
		last := math.Inf(1)
		for y := 0.1; y < l.ToeHeight()+0.02; y += 0.0007 {
			n := l.Carried(l.StageAt(y), y)
			if n > last+1e-12 || n < -1e-12 || n > l.Mass() {
				t.Fatalf("at %v m the floor carries %v kg, just under it %v (%+v)", y, n, last, l)
			}
			last = n
		}
		// where the foot hangs at ease the toe leaves with nothing on it
		if y := l.ToeHeight() - 1e-9; l.Bend > math.Atan2(l.Ahead, l.Below) && l.Carried(l.StageAt(y), y) > 1e-5 {
			t.Errorf("a foot at ease leaves with %v kg on its toe", l.Carried(l.StageAt(y), y))
		}
	}
}

// TestBorneIsTheIntegral holds Borne by quadrature of N between its corners.
func TestBorneIsTheIntegral(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 3))
	for range 100 {
		l := randomLegs(rng)
		carried := func(y float64) float64 { return l.Carried(l.StageAt(y), y) }
		y := l.ToeHeight() - 0.25*rng.Float64()
		edge := max(y, l.HeelHeight())
		// with y = top − u² N is smooth also where turn and height part like root and square
		top := l.ToeHeight()
		want := -quad.Fixed(func(u float64) float64 { return carried(top-u*u) * 2 * u }, 0, math.Sqrt(top-edge), 40, nil, 0)
		want -= l.Full() * (edge - y)
		if got := l.Borne(y); math.Abs(got-want) > 1e-10 {
			t.Errorf("borne down to %v m: %v kg·m, by quadrature %v (%+v)", y, got, want, l)
		}
	}
}

// TestBarsAndForces holds the bars by their lengths, and complementarity: at heel and toe a gap ≥ 0, a force ≥ 0,
// and one of them zero. The floor pushes plumb, so of the shank the ankle carries what its moment about the knee asks,
// and the forces follow from those about the ankle (by hand):
//
//	F_heel + F_toe = N,   F_toe (x_toe − x_ankle) + F_heel (x_heel − x_ankle) = m_f (x_foot − x_ankle)
func TestBarsAndForces(t *testing.T) {
	const within = 1e-9
	rng := rand.New(rand.NewPCG(17, 4))
	same := func(got, want float64) bool { return math.Abs(got-want) < 1e-12 }
	for i := range 400 {
		l := randomLegs(rng)
		behind := 0.01 + 0.05*rng.Float64()
		l.Heel = behind
		knee := r2.Vec{X: rng.Float64(), Y: l.Length + (l.ToeHeight()-l.Length)*(2*rng.Float64()-0.7)}
		if i%8 == 0 {
			knee.Y = l.HeelHeight()
		}
		ankle, heel, toe := l.Bars(knee)
		sole := r2.Unit(r2.Sub(toe, heel))
		down := r2.Vec{X: sole.Y, Y: -sole.X}
		if !same(r2.Norm(r2.Sub(knee, ankle)), l.Length) || !same(r2.Norm(r2.Sub(toe, heel)), l.Toe+behind) ||
			!same(r2.Dot(r2.Sub(toe, ankle), down), l.Ankle) || !same(r2.Dot(r2.Sub(toe, ankle), sole), l.Toe) {
			t.Errorf("knee %v, ankle %v, heel %v, toe %v: not the bars of %+v", knee, ankle, heel, toe, l)
		}
		stage := l.StageAt(knee.Y)
		heelDown, toeDown := stage < HeelLifted, stage < FeetOff
		if heel.Y < -within || toe.Y < -within || heelDown != (heel.Y < within) || toeDown != (toe.Y < within) {
			t.Errorf("feet %v: heel and toe %v and %v m over the floor", stage, heel.Y, toe.Y)
		}
		if out := ankle.X - knee.X; out < 0 || !heelDown && out != 0 {
			t.Errorf("feet %v: the ankle %v m ahead of the knee", stage, out)
		}
		foot := r2.Add(ankle, r2.Add(r2.Scale(l.Ahead, sole), r2.Scale(l.Below, down)))
		n := l.Carried(stage, knee.Y)
		if stage == HeelLifting { // anything between
			n = l.OnToe(0) + rng.Float64()*(n-l.OnToe(0))
		}
		onToe := (l.Foot*(foot.X-ankle.X) + n*(ankle.X-heel.X)) / (toe.X - heel.X)
		onHeel := n - onToe
		if stage == FeetOff { // no force, and the foot turns about the ankle until the stop holds it
			onToe, onHeel = n, n
		}
		if onHeel < -within || onToe < -within || onHeel*heel.Y > within || onToe*toe.Y > within {
			t.Errorf("feet %v: %v kg on a heel %v m and %v kg on a toe %v m over the floor", stage, onHeel, heel.Y, onToe, toe.Y)
		}
		if bears := n - l.Foot; stage == SoleFlat && math.Abs((bears-l.Centre*l.Shank)*(ankle.X-knee.X)) > within {
			t.Errorf("the ankle bears %v kg of a shank of %v", bears, l.Shank)
		}
	}
}

// TestLegsValidate holds that each field that cannot be is refused, in words.
func TestLegsValidate(t *testing.T) {
	good := randomLegs(rand.New(rand.NewPCG(17, 5)))
	if err := good.Validate(); err != nil {
		t.Fatal(err)
	}
	for _, wrong := range []float64{0, -1, math.NaN()} {
		for name, field := range map[string]func(l *Legs) *float64{
			"Shank": func(l *Legs) *float64 { return &l.Shank }, "Foot": func(l *Legs) *float64 { return &l.Foot },
			"Length": func(l *Legs) *float64 { return &l.Length }, "Ankle": func(l *Legs) *float64 { return &l.Ankle },
			"Toe": func(l *Legs) *float64 { return &l.Toe }, "Ahead": func(l *Legs) *float64 { return &l.Ahead },
			"Below": func(l *Legs) *float64 { return &l.Below }, "Bend": func(l *Legs) *float64 { return &l.Bend },
		} {
			l := good
			*field(&l) = wrong
			if err := l.Validate(); err == nil || !strings.HasPrefix(err.Error(), "body: legs have") {
				t.Errorf("%s %v: %v", name, wrong, err)
			}
		}
	}
	for name, change := range map[string]func(l *Legs){
		"the foot's centre at its toe":   func(l *Legs) { l.Ahead, l.Below = l.Toe, l.Ankle },
		"and over the line to the ankle": func(l *Legs) { l.Below = 0.999 * l.Ankle * l.Ahead / l.Toe },
		"on it, where the toe would never leave": func(l *Legs) {
			l.Toe, l.Ahead, l.Ankle, l.Below = 0.25, 0.125, 0.125, 0.0625
		},
		"the shank's centre over the knee":  func(l *Legs) { l.Centre = -0.1 },
		"and under the ankle":               func(l *Legs) { l.Centre = 1.1 },
		"nowhere":                           func(l *Legs) { l.Centre = math.NaN() },
		"a thigh that is lighter than none": func(l *Legs) { l.Thigh = -1 },
		"or of no weight known":             func(l *Legs) { l.Thigh = math.NaN() },
	} {
		l := good
		change(&l)
		if err := l.Validate(); err == nil || !strings.HasPrefix(err.Error(), "body: the centre of a ") {
			t.Errorf("%s: %v", name, err)
		}
	}
	for stage, want := range []string{"flat", "heel lifting", "heel lifted", "off"} {
		if got := Stage(stage).String(); got != want {
			t.Errorf("stage %d is %q, want %q", stage, got, want)
		}
	}
}
