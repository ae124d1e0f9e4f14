package size

import (
	"math"
	"slices"

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
	nose := r.Design.Rocker.Nose
	edge := r.Edge.Drawn()
	before, rest, starts := parted(edge, touches(edge, l.Balance.Rest.Tilt-r.Design.Floor.Slope)-WornOver/2)
	inside, after, ends := parted(rest, WornOver)
	if !starts || !ends {
		return d, false
	}
	// the two ends of the stretch, and how it turns between them
	start, length := nose-lengthOf(before), lengthOf(inside)
	from, _ := r.Edge.At(start)
	to, _ := r.Edge.At(start - length)
	chord := r2.Norm(r2.Sub(to, from))
	tilt := inside[0].From // of the floor at the nose end of the stretch
	turn := inside[len(inside)-1].To - tilt
	rise := chord/2*math.Tan(turn/4) - alterations[Worn].Change
	if rise <= 0 {
		return d, false
	}
	flatter := 4 * math.Atan(2*rise/chord)
	radius := chord / (2 * math.Sin(flatter/2))
	corner := (turn - flatter) / 2

	// where the worn edge touches the floor at the attitude as drawn
	at, low := r2.Vec{}, nose
	switch begins := tilt + corner; {
	case begins <= 0 && begins+flatter >= 0:
		_, along := rocker.Down(begins / 2)
		at = r2.Add(from, r2.Scale(2*radius*math.Sin(-begins/2), along))
		low = nose - start - radius*begins
	case tilt+turn <= 0: // behind the stretch
		low += radius*flatter - length
	case tilt < 0: // on a corner
		return d, false
	}
	d = shifted(r.Design, -at.X, -at.Y)
	d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Nose = 0, 0, low
	stretch := []piece.Arc{{Turn: corner}, {Radius: radius, Length: radius * flatter}, {Turn: corner}}
	d.Rocker.Arcs = slices.Concat(arcs(before), stretch, arcs(after))
	return d, true
}

// touches returns the length from the nose tip at which the floor touches an edge at a tilt.
func touches(edge []rocker.DrawnSpan, tilt float64) float64 {
	length := 0.0
	for _, s := range edge {
		if tilt <= s.To {
			if s.To > s.From {
				length += s.Length * max(0, tilt-s.From) / (s.To - s.From)
			}
			return length
		}
		length += s.Length
	}
	return length
}

// parted parts an edge at a length from its nose end; ok is false where that does not lie inside.
func parted(edge []rocker.DrawnSpan, at float64) (front, rear []rocker.DrawnSpan, ok bool) {
	for i, s := range edge {
		if at < s.Length {
			first := s
			first.Length, first.To = at, s.From+(s.To-s.From)*at/s.Length
			s.Length, s.From = s.Length-at, first.To
			if front = edge[:i:i]; at > 0 {
				front = append(front, first)
			}
			return front, append([]rocker.DrawnSpan{s}, edge[i+1:]...), len(front) > 0
		}
		at -= s.Length
	}
	return nil, nil, false
}

func lengthOf(edge []rocker.DrawnSpan) (sum float64) {
	for _, s := range edge {
		sum += s.Length
	}
	return sum
}

// arcs returns spans as a design has them.
func arcs(edge []rocker.DrawnSpan) (list []piece.Arc) {
	for _, s := range edge {
		a := piece.Arc{Radius: s.Radius, Length: s.Length, Turn: s.Turn}
		if s.Radius == 0 {
			a.Length, a.Flat = 0, s.Length
		}
		list = append(list, a)
	}
	return list
}
