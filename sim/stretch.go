package sim

import (
	"math"

	"rockerwright/rocker"
)

// A stretch is a part of a swing on one Bearing, from its outer end, the further
// from the rest, inwards. All that the motion needs there follows from the stance at
// the outer end and the turn δ ≥ 0 inwards from it:
//
//	H  = H₁ + c(1 − cos δ) − σ H′₁ sin δ,   c = R − H₁
//	H′ = H′₁ cos δ − σ c sin δ
//	E₁ − E = σ f₁ sin δ − Z′₁(1 − cos δ) − σ R sin α · δ,   f₁ = Z₁ + R sin α
//
// with σ = +1 at the back of the rest and −1 in front. (E is a sine of the tilt and
// the distance rolled; these are its addition theorems.) Taking differences so
// keeps all digits of small rocks, and with t = tan(δ/2) in place of δ a level floor
// needs no trigonometry.
type stretch struct {
	rig *Rig
	ground
	side  float64 // σ
	outer stance  // at the outer end
	slide float64 // R sin α
	pull  float64 // f₁
	slant float64 // Z′₁
	above float64 // height fallen from the turning point to the outer end, m
	end   float64 // t at the inner end
}

// stretchOn returns the stretch on b from the outer to the inner roll, on the side σ of
// the rest, above (m) being the height fallen before it. The two are less than half a
// turn apart.
func (r *Rig) stretchOn(b *rocker.Bearing, outer, inner, side, above float64) stretch {
	g := r.Floor.ground()
	s := stretch{rig: r, ground: g, side: side, outer: r.stand(b, outer), above: above, end: math.Tan(side * (outer - inner) / 2)}
	s.slide = b.Radius * g.sin
	s.pull = g.arm(s.outer) + s.slide
	s.slant = g.slope(s.outer)
	return s
}

// A moment is the rig at one instant of a swing.
type moment struct {
	stance
	fallen float64 // height lost since the turning point, m
}

// at returns the rig turned inwards from the outer end by δ, t = tan(δ/2).
func (s *stretch) at(t float64) moment {
	sin := 2 * t / (1 + t*t)
	versed := t * sin // 1 − cos δ
	c := s.outer.radius - s.outer.height
	fallen := s.above + s.side*s.pull*sin - s.slant*versed
	if s.slide != 0 {
		fallen -= s.side * s.slide * 2 * math.Atan(t)
	}
	return moment{
		stance: stance{
			height: s.outer.height + c*versed - s.side*s.outer.ahead*sin,
			ahead:  s.outer.ahead*(1-versed) - s.side*c*sin,
			radius: s.outer.radius,
		},
		fallen: fallen,
	}
}

// climb returns the height gained on going out from the inner end a of a stretch by
// δ, and the outward arm there: the same theorems, taken from the inner end.
func (g ground) climb(a stance, side, slide, turn float64) (gained, arm float64) {
	half, cosHalf := math.Sincos(turn / 2)
	sin, versed := 2*half*cosHalf, 2*half*half
	pull, slope := g.arm(a)+slide, g.slope(a)
	return side*(pull*sin-slide*turn) + slope*versed, side*(pull*(1-versed)-slide) + slope*sin
}
