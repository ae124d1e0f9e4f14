package speed

import (
	"fmt"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
)

const degree = math.Pi / 180

// chair is a reading chair with its sitter, as plain numbers.
var chair = circle{radius: 1.067, nose: 0.43, tail: 0.61, mass: 93, x: -0.01, y: 0.61, inertia: 9}

// rig is the same for this project.
func (c circle) rig() sim.Rig {
	return sim.Rig{
		Profile: rocker.Single(c.radius, c.nose, c.tail),
		Body:    body.Body{Mass: c.mass, Centre: r2.Vec{X: c.x, Y: c.y}, Inertia: c.inertia},
	}
}

// statics are the works of one rig.
func statics() []work {
	r := chair.rig()
	b := r.Balance()
	works := []work{{
		name: "static answer",
		floor: func() error {
			_, period, back, forward := chair.balance()
			return rocks(period + back.lift + forward.lift)
		},
		ours: func() error {
			b := r.Balance()
			return rocks(b.Period + b.Back.Lift + b.Forward.Lift)
		},
	}}
	for _, from := range []float64{5, 15} {
		works = append(works, work{
			name:  fmt.Sprintf("period from %g degrees", from),
			floor: func() error { return rocks(chair.period(from * degree)) },
			ours: func() error {
				period, _ := r.Period(b, from*degree)
				return rocks(period)
			},
		})
	}
	return append(works, work{
		name: "a minute of motion",
		floor: func() error {
			angle, _ := chair.follow(15*degree, 60)
			return rocks(math.Abs(angle))
		},
		ours: func() error {
			return rocks(motion.Run(r, b, motion.Start{Tilt: b.Rest.Tilt + 15*degree}, motion.Options{}).Duration)
		},
	})
}

// report is a whole Report of a chair that is drawn, of whom it is asked. The floor has
// as many closed forms, periods and points of a righting curve, and follows as many seconds as
// a search for the hardest shove: 30 trials of 2 s.
func report(t *testing.T) work {
	d := drawn()
	r, err := check.Check(d)
	if err != nil {
		t.Fatal(err)
	}
	return work{
		name: "a Report",
		floor: func() error {
			var sum float64
			for _, l := range r.Loads {
				rest, _, _, _ := chair.balance()
				for range r.Releases {
					sum += chair.period(5 * degree)
				}
				for _, p := range l.Righting() {
					sum += (chair.radius - chair.y) * math.Sin(p.Tilt-rest)
				}
			}
			angle, _ := chair.follow(15*degree, 30*2)
			return rocks(math.Abs(sum) + math.Abs(angle))
		},
		ours: func() error {
			r, err := check.Check(d)
			if err != nil {
				return err
			}
			sum := 0.0
			for i := range r.Loads {
				l := &r.Loads[i]
				for _, release := range r.Releases {
					if p := l.Swing(release).Period; p > 0 {
						sum += p
					}
				}
				for _, p := range l.Righting() {
					sum += math.Abs(p.Arm)
				}
			}
			return rocks(sum)
		},
	}
}

// drawn is a chair off a tape for somebody of a height and a weight.
func drawn() piece.Design {
	const inch = 0.0254
	given := person.Given{}
	given.Sizes[person.Stature] = 1.78
	return piece.Design{
		Title:   "Timed chair",
		Rocker:  piece.Rocker{Radius: 42 * inch, Nose: 17 * inch, Tail: 24 * inch},
		Seat:    piece.Seat{Front: 16.5 * inch, Rear: 16 * inch, Depth: 18 * inch, Width: 20 * inch, Behind: 9 * inch},
		Back:    piece.Back{Recline: 15 * degree, Height: 28 * inch},
		Arms:    piece.Arms{Height: 8 * inch},
		Piece:   piece.Piece{Mass: 12},
		Sitters: []piece.Sitter{{Name: "owner", Mass: 80, Person: given}},
		Limits:  piece.Design{Kind: piece.Chair}.UsualLimits(),
	}
}

// rocks keeps an answer from being left out, and is an error where there is none.
func rocks(x float64) error {
	if !(x > 0) {
		return fmt.Errorf("no answer: %v", x)
	}
	return nil
}
