package sim

import (
	"math"

	"rockerwright/rocker"
	"rockerwright/rocker/root"
)

// A stretch is a part of a swing on one Bearing, from its outer end, the further from the rest, inwards. All that the
// motion needs there follows from the stance at the outer end and the turn δ ≥ 0 inwards from it:
//
//	H  = H₁ + c(1 − cos δ) − σ H′₁ sin δ,   c = R − H₁
//	H′ = H′₁ cos δ − σ c sin δ
//	E₁ − E = σ f₁ sin δ − Z′₁(1 − cos δ) − σ R sin α · δ,   f₁ = Z₁ + R sin α
//
// with σ = +1 at the back of the rest and −1 in front. (E is a sine of the tilt and the distance rolled; these are
// its addition theorems.) Taking differences so keeps all digits of small rocks, and with t = tan(δ/2) in place of δ
// a level floor needs no trigonometry.
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

// stretchOn returns the stretch on b from the outer to the inner roll, on the side σ of the rest, above (m) being the
// height fallen before it. The two are less than half a turn apart.
func (r *Rig) stretchOn(b *rocker.Bearing, outer, inner, side, above float64) stretch {
	g := r.Floor.ground()
	s := stretch{rig: r, ground: g, side: side, outer: r.stand(b, outer), above: above, end: math.Tan(side * (outer - inner) / 2)}
	s.slide = b.Radius * g.sin
	s.pull = g.arm(s.outer) + s.slide
	s.slant = g.slope(s.outer)
	return s
}

// An instant of a swing.
type instant struct {
	stance
	fallen float64 // height lost since the turning point, m
}

// at returns the rig turned inwards from the outer end by δ, t = tan(δ/2).
func (s *stretch) at(t float64) instant {
	sin := 2 * t / (1 + t*t)
	versed := t * sin // 1 − cos δ
	c := s.outer.radius - s.outer.height
	fallen := s.above + s.side*s.pull*sin - s.slant*versed
	if s.slide != 0 {
		fallen -= s.side * s.slide * 2 * math.Atan(t)
	}
	return instant{
		stance: stance{
			height: s.outer.height + c*versed - s.side*s.outer.ahead*sin,
			ahead:  s.outer.ahead*(1-versed) - s.side*c*sin,
			radius: s.outer.radius,
		},
		fallen: fallen,
	}
}

// A climb is what goes out from the inner end of a stretch by a turn δ gains:
//
//	E − E₁ = σ f₁ sin δ + Z′₁(1 − cos δ) − σ R sin α · δ
//
// the same theorems, taken from the inner end.
type climb struct{ pull, slope, slide float64 } // σ f₁, Z′₁ and σ R sin α, m

func (g ground) climbFrom(a stance, side, radius float64) climb {
	slide := radius * g.sin
	return climb{side * (g.arm(a) + slide), g.slope(a), side * slide}
}

// gained returns the height gained by a turn, m.
func (c climb) gained(turn float64) float64 {
	half, cosHalf := math.Sincos(turn / 2)
	return 2*half*(c.pull*cosHalf+c.slope*half) - c.slide*turn
}

// turn returns the least turn that gains a height, which most does. Without a slide that is a
// quadratic in t = tan(δ/2); with one it is sought, the height's root being nearly straight.
func (c climb) turn(height, most float64) float64 {
	if c.slide == 0 {
		return 2 * math.Atan(height/(c.pull+math.Sqrt(max(0, c.pull*c.pull+height*(2*c.slope-height)))))
	}
	return root.Between(func(turn float64) float64 {
		return math.Sqrt(max(0, c.gained(turn))) - math.Sqrt(height)
	}, 0, most, 0)
}
