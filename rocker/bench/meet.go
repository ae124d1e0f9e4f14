package bench

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// samePoint is how close two points are one, m: a nanometre, far below any tool and above rounding.
const samePoint = 1e-9

// A meeting is a point that two pieces share, as parts of their lengths.
type meeting struct{ first, second float64 }

// meet returns where two pieces cross or touch, their ends included. Of pieces that lie on
// one line or one circle it returns nothing.
func meet(a, b Piece) []meeting {
	var shared []r2.Vec
	switch {
	case a.straight() && b.straight():
		shared = lineLine(a, b)
	case a.straight():
		shared = lineArc(a, b)
	case b.straight():
		shared = lineArc(b, a)
	default:
		shared = arcArc(a, b)
	}
	var found []meeting
	for _, q := range shared {
		second, on := b.part(q)
		if !on {
			continue
		}
		if first, on := a.part(q); on {
			found = append(found, meeting{first, second})
		}
	}
	return found
}

// part returns at which part of the length the point q lies, which is on the line or the
// circle of the piece, and whether it is between the ends.
func (s Piece) part(q r2.Vec) (part float64, between bool) {
	if s.straight() {
		part = r2.Dot(r2.Sub(q, s.From), s.chord()) / r2.Norm2(s.chord())
	} else {
		c := s.centre()
		from, to := r2.Sub(s.From, c), r2.Sub(q, c)
		angle := math.Atan2(r2.Cross(from, to), r2.Dot(from, to)) * math.Copysign(1, s.Turn)
		whole := math.Abs(s.Turn)
		if angle < whole/2-math.Pi { // the half turn outside the arc is parted in its middle
			angle += 2 * math.Pi
		}
		part = angle / whole
	}
	margin := samePoint / s.Length()
	return min(1, max(0, part)), part > -margin && part < 1+margin
}

// lineLine returns where two lines cross: from a by cross(gap, b)/cross(a, b) of its chord.
func lineLine(a, b Piece) []r2.Vec {
	square := r2.Cross(a.chord(), b.chord())
	if math.Abs(square) < 1e-15*r2.Norm(a.chord())*r2.Norm(b.chord()) {
		return nil
	}
	return []r2.Vec{r2.Add(a.From, r2.Scale(r2.Cross(r2.Sub(b.From, a.From), b.chord())/square, a.chord()))}
}

// lineArc returns where a line meets a circle: from the foot of the centre, half a chord
// √(R² − d²) either way, R² − d² taken as (R − d)(R + d).
func lineArc(line, arc Piece) []r2.Vec {
	along := r2.Unit(line.chord())
	c := arc.centre()
	foot := r2.Add(line.From, r2.Scale(r2.Dot(r2.Sub(c, line.From), along), along))
	return halfChord(foot, along, math.Abs(arc.Radius()), r2.Norm(r2.Sub(foot, c)))
}

// arcArc returns where two circles meet: their common chord crosses the line of centres, D
// long, at (D + (Ra² − Rb²)/D)/2 from the first.
func arcArc(a, b Piece) []r2.Vec {
	ca, cb := a.centre(), b.centre()
	ra, rb := math.Abs(a.Radius()), math.Abs(b.Radius())
	line := r2.Sub(cb, ca)
	apart := r2.Norm(line)
	if apart < samePoint {
		return nil
	}
	along := r2.Scale(1/apart, line)
	d := (apart + (ra-rb)*(ra+rb)/apart) / 2
	return halfChord(r2.Add(ca, r2.Scale(d, along)), r2.Vec{X: -along.Y, Y: along.X}, ra, d)
}

// halfChord returns the ends of the chord of a circle that is d from the centre with its
// middle at foot. A line that stays outside by less than rounding touches at its middle.
func halfChord(foot, along r2.Vec, radius, d float64) []r2.Vec {
	square := (radius - math.Abs(d)) * (radius + math.Abs(d))
	switch {
	case square < -1e-14*radius*radius:
		return nil
	case square <= 0:
		return []r2.Vec{foot}
	}
	half := r2.Scale(math.Sqrt(square), along)
	return []r2.Vec{r2.Sub(foot, half), r2.Add(foot, half)}
}

// Simple reports whether the path neither crosses nor touches itself, but for its two ends where it is closed.
// Strokes that lie on one another along a stretch are seen only by what crosses beside them.
func (p Path) Simple() bool {
	list := p.Pieces()
	for i, a := range list {
		for j := i + 1; j < len(list); j++ {
			b := list[j]
			after := j == i+1
			before := p.Closed && i == 0 && j == len(list)-1
			if !apartBoxes(a, b) && crossAway(a, b, after, before) {
				return false
			}
		}
	}
	return true
}

// crossAway reports whether a and b meet elsewhere than where b follows on a (after) or a on b (before).
func crossAway(a, b Piece, after, before bool) bool {
	if after && turnsBack(a, b) || before && turnsBack(b, a) {
		return true
	}
	return slices.ContainsFunc(meet(a, b), func(m meeting) bool {
		const joint = 1e-7 // m, so far off one the rounding of a slanting meeting may put it
		near := func(end r2.Vec) bool { return r2.Norm(r2.Sub(a.At(m.first), end)) < joint }
		return !(after && near(a.To) || before && near(a.From))
	})
}

// corner returns by how much the heading turns from the end of a to the start of b, rad.
func corner(a, b Piece) float64 { return math.Remainder(b.heading(0)-a.heading(1), 2*math.Pi) }

// turnsBack reports whether b leaves the way a came.
func turnsBack(a, b Piece) bool {
	return math.Abs(corner(a, b)) > math.Pi-1e-9 && a.straight() && b.straight()
}

// apartBoxes reports whether the upright rectangles round the two do not touch.
func apartBoxes(a, b Piece) bool {
	p, q := pathOf([]Piece{a}, false).Bounds(), pathOf([]Piece{b}, false).Bounds()
	return p.Min.X > q.Max.X+samePoint || q.Min.X > p.Max.X+samePoint ||
		p.Min.Y > q.Max.Y+samePoint || q.Min.Y > p.Max.Y+samePoint
}
