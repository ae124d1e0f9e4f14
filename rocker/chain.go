package rocker

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// rounding is how far, as a part of the edge, a sum of lengths may miss a joint
// and still mean it: a few hundred units in the last place.
const rounding = 1e-13

// Single is the rocker of one arc: its radius, and the lengths along the floor edge from the origin to the nose tip
// and to the tail tip, all in m and above zero. It panics where they make no rocker; for measures that a person typed
// use [Chain].
func Single(radius, nose, tail float64) Profile {
	p, err := Chain(nose, Arc(radius, nose+tail))
	if err == nil && !(radius > 0 && nose > 0 && tail > 0) {
		err = &SpanError{Span: Arc(radius, nose+tail), Reason: "radius, nose and tail are more than 0"}
	}
	if err != nil {
		panic(err)
	}
	return p
}

// Chain joins spans from the nose tip to the tail tip. The origin lies nose (m) along the edge from the nose tip, and
// at tilt 0 the floor is tangent there; where the origin falls on a corner, half of its turn lies before.
//
// Spans are tangent to each other except at a [Turn]. Splitting a span changes nothing. Hollows and notches are
// bridged; upside down the piece is taken to lie on its two tips alone, whatever a reverse curve does between them.
// No spans at all make a rocker of one point, on which a body swings. The error is a [*SpanError]: a length or radius
// that is not a number or not in range, turns that come to 360 degrees, or a chain that curls in on itself.
func Chain(nose float64, spans ...Span) (Profile, error) {
	if err := check(nose, spans); err != nil {
		return Profile{}, err
	}
	joined := join(spans)
	edge := walk(cut(nose, joined))
	bearings, ok := hull(edge)
	if !ok {
		return Profile{}, &SpanError{Index: len(spans), Reason: "the edge curls in on itself"}
	}
	return Profile{edge: edge, bearings: bearings}, nil
}

// check returns the first thing wrong with what was given.
func check(nose float64, spans []Span) error {
	var length, turned, hollowed float64
	for i, s := range spans {
		bad := func(reason string) error { return &SpanError{Index: i, Span: s, Reason: reason} }
		switch {
		case !finite(s.Radius) || !finite(s.Length) || !finite(s.Turn):
			return bad("not a number")
		case s.Length < 0 || s.Radius != 0 && s.Length == 0:
			return bad("a length is more than 0")
		case s.Turn != 0 && (s.Radius != 0 || s.Length != 0):
			return bad("a turn has no length and no radius")
		case math.Abs(s.Turn) >= math.Pi:
			return bad("a turn is less than 180 degrees")
		}
		length += s.Length
		turned += max(s.turn(), 0)
		if turned >= 2*math.Pi {
			return bad("the turns come to 360 degrees or more")
		}
		if hollowed += min(s.turn(), 0); hollowed <= -2*math.Pi {
			return bad("the hollows come to 360 degrees or more")
		}
	}
	if !finite(nose) || nose < 0 || nose > length*(1+rounding) {
		return &SpanError{Index: len(spans), Reason: "the origin lies outside the edge"}
	}
	return nil
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// join merges neighbours that are one span split in two, and drops empty ones.
func join(spans []Span) []Span {
	var joined []Span
	for _, s := range spans {
		if s == (Span{}) {
			continue
		}
		if n := len(joined); n > 0 && joined[n-1].continues(s) {
			joined[n-1].Length += s.Length
			joined[n-1].Turn += s.Turn
			continue
		}
		joined = append(joined, s)
	}
	return joined
}

// cut parts the spans at the origin: those before it, from the origin to the nose
// tip, and those after it, from the origin to the tail tip.
func cut(nose float64, spans []Span) (before, after []Span) {
	var total, done float64
	for _, s := range spans {
		total += s.Length
	}
	at := func(length float64) bool { return math.Abs(length-nose) <= rounding*total }
	for _, s := range spans {
		switch {
		case s.Length == 0 && at(done): // the corner at the origin
			half := Turn(s.Turn / 2)
			before, after = append(before, half), append(after, half)
		case at(done) || done > nose:
			after = append(after, s)
		case at(done+s.Length) || done+s.Length < nose:
			before = append(before, s)
		default:
			first, last := s, s
			first.Length, last.Length = nose-done, done+s.Length-nose
			before, after = append(before, first), append(after, last)
		}
		done += s.Length
	}
	slices.Reverse(before)
	return before, after
}

// An edgeSpan is a span laid in the chair frame.
type edgeSpan struct {
	Span
	start    r2.Vec  // nose end, m
	from, to float64 // the floor's tilt at the nose end and at the tail end, rad
	at       r2.Vec  // the end nearer to the origin, m
	atTilt   float64 // the floor's tilt there, rad
}

// point returns the point a distance (m) along the span from its nose end.
func (e *edgeSpan) point(distance float64) r2.Vec { return along(e.start, e.from, e.Radius, distance) }

// along returns the point reached from p, where the floor's tilt is tilt, by going
// a distance along the edge towards the tail (below zero: to the nose) on an arc of
// the given radius, zero standing for a flat. The two lie a chord of 2R sin(δ/2) apart.
func along(p r2.Vec, tilt, radius, distance float64) r2.Vec {
	chord, half := distance, 0.0
	if radius != 0 {
		half = distance / radius / 2
		chord = 2 * radius * math.Sin(half)
	}
	_, du := Down(tilt + half)
	return r2.Add(p, r2.Scale(chord, du))
}

// walk lays the spans outwards from the origin and returns them from nose to tail.
// A span that the origin parts is laid as two halves, which hull joins again.
func walk(before, after []Span) []edgeSpan {
	edge := make([]edgeSpan, len(before)+len(after))
	var p r2.Vec
	var tilt float64
	for i, s := range before {
		e := edgeSpan{Span: s, from: tilt - s.turn(), to: tilt, at: p, atTilt: tilt}
		e.start = along(p, tilt, s.Radius, -s.Length)
		edge[len(before)-1-i] = e
		p, tilt = e.start, e.from
	}
	p, tilt = r2.Vec{}, 0
	for i, s := range after {
		e := edgeSpan{Span: s, start: p, from: tilt, to: tilt + s.turn(), at: p, atTilt: tilt}
		edge[len(before)+i] = e
		p, tilt = e.point(s.Length), e.to
	}
	return edge
}
