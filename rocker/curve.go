package rocker

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/integrate/quad"
)

// A Curve is a floor edge given by its radius of curvature ρ(θ) ≥ 0 (m) at each tilt from
// that of the nose tip (below zero) to that of the tail tip (above zero), rad.
type Curve struct {
	Radius     func(tilt float64) float64
	Nose, Tail float64
}

// A CurveError reports a curve that no chain of arcs follows.
type CurveError struct{ Reason string }

func (e *CurveError) Error() string { return "rocker: curve: " + e.Reason }

// Arcs returns the curve as a chain of n arcs for [Chain], and the length from the nose tip to the origin. The arcs
// turn by like angles, one of them lying astride the origin, so that its radius stands for that at rest; each is as
// long as the curve there, so that length and tilt agree at every joint and the error falls as 1/n².
func (c Curve) Arcs(n int) (spans []Span, nose float64, err error) {
	if !(c.Nose < 0 && c.Tail > 0 && c.Tail-c.Nose < 2*math.Pi && n > 0) {
		return nil, 0, &CurveError{"the nose lies at a tilt below zero, the tail above, and one arc or more between"}
	}
	width := (c.Tail - c.Nose) / float64(n)
	cuts := []float64{c.Nose}
	for tilt := width/2 - width*math.Ceil((width/2-c.Nose)/width); tilt < c.Tail; tilt += width {
		if tilt > c.Nose+1e-9*width && tilt < c.Tail-1e-9*width {
			cuts = append(cuts, tilt)
		}
	}
	cuts = append(cuts, c.Tail)
	for i := 1; i < len(cuts); i++ {
		length := c.length(cuts[i-1], cuts[i])
		radius := length / (cuts[i] - cuts[i-1])
		if !(radius > 0) || math.IsInf(radius, 0) {
			return nil, 0, &CurveError{fmt.Sprintf("at %g rad its radius is %g m", cuts[i], radius)}
		}
		spans = append(spans, Arc(radius, length))
		switch {
		case cuts[i] <= 0:
			nose += length
		case cuts[i-1] < 0:
			nose += radius * -cuts[i-1]
		}
	}
	return spans, nose, nil
}

// length returns the length of the curve between two tilts, ∫ρ dθ, by the five-point
// Gauss-Legendre rule, which is far finer than the arcs.
func (c Curve) length(from, to float64) float64 {
	return quad.Fixed(c.Radius, from, to, 5, quad.Legendre{}, 0)
}

// Ellipse returns the lower part of an ellipse between two tilts: its half axes along the
// floor and up, m. Its support function is √(a²sin²θ + b²cos²θ), so ρ = a²b²/h³ (textbook).
func Ellipse(along, up, nose, tail float64) Curve {
	return Curve{func(tilt float64) float64 {
		sin, cos := math.Sincos(tilt)
		h := math.Hypot(along*sin, up*cos)
		return along * along * up * up / (h * h * h)
	}, nose, tail}
}

// Parabola returns y = x²/4f between two tilts, f its focal length, m: ρ = 2f·sec³θ (textbook).
func Parabola(focal, nose, tail float64) Curve {
	return Curve{func(tilt float64) float64 {
		cos := math.Cos(tilt)
		return 2 * focal / (cos * cos * cos)
	}, nose, tail}
}

// Cycloid returns the arch of a point on a wheel of radius a, turned up, between two tilts: ρ = 4a·cos θ (textbook).
func Cycloid(wheel, nose, tail float64) Curve {
	return Curve{func(tilt float64) float64 { return 4 * wheel * math.Cos(tilt) }, nose, tail}
}

// EvenTime returns the edge on which a body of radius of gyration k, its centre of mass at the height H₀ over the
// floor at rest, rocks in the same time 2π√(2λ/g) from every tilt, reaching so far to both sides:
//
//	H′² = d·(k² + H²)/(λ − d),  d = H − H₀;  ρ = H + H″
//
// (derived here: with ½(k² + H² + H′²)φ̇² = g(d_A − d) the left side becomes
// ½·λ·(k² + H²)/(λ − d)·φ̇², and with u = √d the motion is 2λ·u̇² = g(u_A² − u²), a simple
// one in u.) H is found by Runge-Kutta steps of u over the tilt, du/dθ = ½√((k² + H²)/(λ − u²)).
func EvenTime(gyration, height, lambda, reach float64) (Curve, error) {
	const steps = 2000
	u := make([]float64, steps+1)
	rate := func(u float64) float64 {
		h := height + u*u
		return math.Sqrt((gyration*gyration+h*h)/(lambda-u*u)) / 2
	}
	step := reach / steps
	for i := range steps {
		a := rate(u[i])
		b := rate(u[i] + step*a/2)
		c := rate(u[i] + step*b/2)
		d := rate(u[i] + step*c)
		if u[i+1] = u[i] + step*(a+2*b+2*c+d)/6; !(u[i+1]*u[i+1] < lambda) {
			reaches := float64(i) * step
			return Curve{}, &CurveError{fmt.Sprintf("an even-time edge of λ = %g m reaches to %g rad, not to %g", lambda, reaches, reach)}
		}
	}
	radius := func(tilt float64) float64 {
		at := math.Min(math.Abs(tilt)/step, steps)
		i := min(int(at), steps-1)
		u0, u1 := u[i], u[i+1]
		t := at - float64(i)
		m0, m1 := step*rate(u0), step*rate(u1) // cubic through both ends and slopes
		x := u0 + t*(m0+t*(3*(u1-u0)-2*m0-m1+t*(2*(u0-u1)+m0+m1)))
		d := x * x
		h := height + d
		square := gyration*gyration + h*h
		left := lambda - d
		return h + (square+2*d*h)/(2*left) + d*square/(2*left*left)
	}
	return Curve{radius, -reach, reach}, nil
}
