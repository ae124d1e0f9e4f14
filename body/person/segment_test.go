package person

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// The masses that de Leva (1996), Table 4, prints, in percent with limbs doubled: men
// 100.00, women 99.99. So no share is moved by more than a ten-thousandth.
func TestSharesSumToOne(t *testing.T) {
	for _, sex := range []Sex{Either, Woman, Man} {
		sum := 0.0
		for part, s := range segments()[sex] {
			sum += s.share
			if s.share <= 0 || s.centre <= 0 || s.centre >= 1 || s.gyration <= 0 || s.length <= 0 {
				t.Errorf("%v: segment %d is %+v", sex, part, s)
			}
		}
		if math.Abs(sum-1) > 1e-15 {
			t.Errorf("%v: shares sum to %v", sex, sum)
		}
	}
	// Table 4: thigh of men 14.16 %, head and neck of women 6.68 %.
	if got := segments()[Man][Thigh].share; math.Abs(got-0.2832) > 1e-6 {
		t.Errorf("both thighs of men: %v, want 0.2832", got)
	}
	if got := segments()[Woman][Head].share; math.Abs(got-0.0668) > 1e-5 {
		t.Errorf("head and neck of women: %v, want 0.0668 (printed sum 99.99)", got)
	}
}

// Jensen, shares at 6 years: head and neck 18.2 of a printed sum of 100.2.
func TestChildSharesSumToOne(t *testing.T) {
	for age := 1.0; age < grownUp; age += 0.5 {
		p := person(t, Given{Age: age})
		sum := 0.0
		for _, s := range p.segments {
			sum += s.share
		}
		if math.Abs(sum-1) > 1e-15 {
			t.Errorf("%g years: shares sum to %v", age, sum)
		}
	}
	if got, want := person(t, Given{Age: 6}).segments[Head].share, 18.2/100.2; math.Abs(got-want) > 1e-12 {
		t.Errorf("head and neck at 6 years: %v, want %v", got, want)
	}
}

// rodMan is a person of two thin even rods: a trunk of mass m on its thighs of mass n.
func rodMan(m, n, trunk, thigh float64) Person {
	p := Person{}
	p.Sizes[Mass], p.Sizes[Stature], p.Sizes[KneeCrease] = m+n, 1.7, 0.5
	rod := 1 / math.Sqrt(12)
	p.segments[Trunk] = proportions{share: m / (m + n), centre: 0.5, gyration: rod}
	p.segments[Thigh] = proportions{share: n / (m + n), centre: 0.5, gyration: rod}
	p.lengths = [parts]float64{Trunk: trunk, Thigh: thigh, Shank: 0.4, UpperArm: 0.3, Forearm: 0.3, Hand: 0.2, Foot: 0.2, Head: 0.2}
	p.shoulder = trunk * 0.8
	p.hipUp = kneeOverCrease * 1.7 // thighs along the seat
	return p
}

// Two rods at a right angle: the centre is the mean of their middles, the inertia
// m·a²/12 + n·b²/12 + μ·((a/2)² + (b/2)²) with μ = m·n/(m+n).
func TestRodMan(t *testing.T) {
	const m, n, a, b = 40.0, 20.0, 0.6, 0.45
	p := rodMan(m, n, a, b)
	pose := p.Pose(Seat{Floor: -1}, Upright) // legs of no weight
	hip := pose.Joints.Hip
	want := body.Body{
		Mass:    m + n,
		Centre:  r2.Add(hip, r2.Vec{X: n * b / 2 / (m + n), Y: m * a / 2 / (m + n)}),
		Inertia: m*a*a/12 + n*b*b/12 + m*n/(m+n)*(a*a+b*b)/4,
	}
	if got := pose.Body; math.Abs(got.Inertia-want.Inertia) > 1e-12*want.Inertia || r2.Norm(r2.Sub(got.Centre, want.Centre)) > 1e-15 {
		t.Errorf("rod-man: %+v, want %+v", got, want)
	}
	// On the back, the trunk turned by r about the hip: the law of cosines.
	const r = 0.5
	leaning := p.Pose(Seat{Floor: -1, Backed: true, Recline: r}, AtEase)
	arms := (a*a + b*b - 2*a*b*math.Cos(math.Pi/2+r)) / 4
	if got, want := leaning.Body.Inertia, m*a*a/12+n*b*b/12+m*n/(m+n)*arms; math.Abs(got-want) > 1e-12*want {
		t.Errorf("rod-man at ease: inertia %v, want %v", got, want)
	}
}

// Standing, trunk and thighs of like mass hang in one line: two rods on each other.
func TestRodManStanding(t *testing.T) {
	p := rodMan(30, 30, 0.6, 0.45)
	got, j := p.Standing(r2.Vec{})
	thigh := j.Hip.Y - j.Knee.Y
	if want := (r2.Vec{Y: j.Hip.Y + (0.3-thigh/2)/2}); r2.Norm(r2.Sub(got.Centre, want)) > 1e-15 {
		t.Errorf("centre %v, want %v", got.Centre, want)
	}
	apart := 0.3 + thigh/2
	if want := 30*0.36/12 + 30*thigh*thigh/12 + 15*apart*apart; math.Abs(got.Inertia-want) > 1e-12 {
		t.Errorf("inertia %v, want %v", got.Inertia, want)
	}
	if want := j.Ankle.Y; math.Abs(want-ankleUp*1.7) > 1e-15 {
		t.Errorf("ankle %v over the floor", want)
	}
}

func person(t *testing.T, g Given) Person {
	t.Helper()
	p, err := New(g)
	if err != nil {
		t.Fatal(err)
	}
	return p
}
