package size

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// wornDown returns the piece with its floor edge worn where it rolls with the owner at ease: the
// stretch becomes a flatter arc between the same two points, its rise less by what is worn, and
// a corner is left at either end. The attitude as drawn stays, and all that stands on the
// rockers comes down with them. ok is false where it has no rest, the stretch reaches a tip, or
// what touches the floor as drawn is one of the corners.
func wornDown(r check.Balanced) (d piece.Design, ok bool) {
	l := r.Seated()
	if r.Curve != nil || l.Balance.Outcome != sim.Rocks {
		return d, false
	}
	drawn := arcsOf(r.Design.Rocker)
	nose := r.Design.Rocker.Nose
	middle := drawn.at(l.Balance.Rest.Tilt-r.Design.Floor.Slope, nose)
	before, inside, after, ok := drawn.cut(middle-WornOver/2, middle+WornOver/2)
	if !ok {
		return d, false
	}
	// the two ends of the stretch, and how it turns between them
	from, _ := r.Edge.At(nose - before.length())
	to, _ := r.Edge.At(nose - before.length() - inside.length())
	chord := r2.Norm(r2.Sub(to, from))
	turn := inside.turn()
	rise := chord/2*math.Tan(turn/4) - worn
	if rise <= 0 {
		return d, false
	}
	flatter := 4 * math.Atan(2*rise/chord)
	radius := chord / (2 * math.Sin(flatter/2))
	corner := (turn - flatter) / 2
	edge := append(append(before, piece.Arc{Turn: corner}, piece.Arc{Radius: radius, Length: radius * flatter}, piece.Arc{Turn: corner}), after...)

	// where the worn edge touches the floor at the attitude as drawn
	start := before.turn() - drawn.turnAt(nose) // the floor's tilt at the nose end of the stretch
	at := r2.Vec{}
	touches := nose
	switch tilt := start + corner; {
	case tilt <= 0 && tilt+flatter >= 0:
		way := radius * -tilt
		_, along := rocker.Down(tilt / 2)
		at = r2.Add(from, r2.Scale(2*radius*math.Sin(-tilt/2), along))
		touches = before.length() + way
	case start+turn <= 0: // behind the stretch
		touches += radius*flatter - inside.length()
	case start < 0: // on a corner
		return d, false
	}
	d = shifted(r.Design, -at.X, -at.Y)
	d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Nose, d.Rocker.Arcs = 0, 0, touches, edge
	return d, true
}

// An edge is a rocker's arcs from nose to tail.
type edge []piece.Arc

// arcsOf returns the arcs of a rocker, one where it is drawn as one.
func arcsOf(r piece.Rocker) edge {
	if len(r.Arcs) == 0 {
		return edge{{Radius: r.Radius, Length: r.Nose + r.Tail}}
	}
	return edge(r.Arcs)
}

// bend returns the angle by which the edge turns along an arc, flat or corner.
func bend(a piece.Arc) float64 {
	if a.Radius != 0 {
		return a.Length / a.Radius
	}
	return a.Turn
}

func (e edge) length() (sum float64) {
	for _, a := range e {
		sum += a.Length + a.Flat
	}
	return sum
}

func (e edge) turn() (sum float64) {
	for _, a := range e {
		sum += bend(a)
	}
	return sum
}

// turnAt returns the angle that the edge has turned at a length from the nose tip; at a corner
// half of it.
func (e edge) turnAt(length float64) (sum float64) {
	for _, a := range e {
		switch own := a.Length + a.Flat; {
		case own == 0 && length == 0:
			return sum + a.Turn/2
		case own >= length:
			return sum + bend(a)*length/own
		default:
			sum += bend(a)
			length -= own
		}
	}
	return sum
}

// at returns the length from the nose tip at which the floor touches at a tilt; nose is that of
// tilt 0.
func (e edge) at(tilt, nose float64) float64 {
	turn := tilt + e.turnAt(nose)
	length := 0.0
	for _, a := range e {
		if own := bend(a); turn <= own {
			if own > 0 {
				length += a.Length * max(0, turn) / own
			}
			return length
		}
		turn -= bend(a)
		length += a.Length + a.Flat
	}
	return length
}

// cut parts the edge at two lengths from the nose tip; ok is false where they do not lie in it.
func (e edge) cut(from, to float64) (before, inside, after edge, ok bool) {
	if from <= 0 || to >= e.length() {
		return nil, nil, nil, false
	}
	done := 0.0
	for _, a := range e {
		own := a.Length + a.Flat
		if own == 0 {
			switch {
			case done <= from:
				before = append(before, a)
			case done < to:
				inside = append(inside, a)
			default:
				after = append(after, a)
			}
			continue
		}
		for _, part := range [...]struct {
			of         *edge
			start, end float64
		}{{&before, 0, from}, {&inside, from, to}, {&after, to, math.Inf(1)}} {
			if length := min(done+own, part.end) - max(done, part.start); length > 0 {
				share := a
				share.Length *= length / own
				share.Flat *= length / own
				*part.of = append(*part.of, share)
			}
		}
		done += own
	}
	return before, inside, after, true
}
