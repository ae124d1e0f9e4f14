package readings

import (
	"cmp"
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/rocker/root"
)

// An End is how an end of the rockers is finished, on which the piece balances. The zero End is square.
type End struct {
	Radius float64 // of its lower corner, m
	Round  bool    // the corner begins at the tip and goes on as the floor edge; else it is rounded off, square to the edge at the tip
}

// The usual standard deviations of what belongs to a level; our judgement.
const (
	usualLevel  = 0.1 * math.Pi / 180  // rad; read both ways round
	usualFinger = 0.3 * math.Pi / 180  // rad; a newton at 0.7 m holds 12 kg some 0.6 degree off
	usualSeat   = 0.15 * math.Pi / 180 // rad; the fall of a drawn seat: two heights by a tape, some 0.45 m apart
	usualEnd    = 0.003                // m; the place of an end along the floor edge, and what easing leaves of it
)

// level returns the standard deviation of a level, rad.
func (r *Readings) level() float64 { return cmp.Or(r.LevelError, usualLevel) }

// Offsets are the errors of readings that are no one number of the file; each is expected to be zero.
type offsets struct {
	rest, tail, nose float64 // of the level, rad
	seat             float64 // of the drawn seat, rad
	tailEnd, noseEnd float64 // of the ends outwards along the floor edge, m
	low              float64 // of the contact at rest, m
}

// A tilting is a level's reading, the middle of two where both were read, and its standard deviation, rad.
type tilting struct {
	name            string
	read, deviation float64
}

// tiltings returns the readings of the level at rest, on the tail ends and on the nose ends; nil where there is none.
func (r *Readings) tiltings() (rest, tail, nose *tilting) {
	if r.has("seat_falls_empty", r.SeatFallsEmpty) {
		rest = &tilting{"seat_falls_empty", r.SeatFallsEmpty + r.off.rest, r.level()}
	}
	return rest, r.balanced("balances_on_tail", "returns_from_tail", r.BalancesOnTail, r.ReturnsFromTail, r.off.tail),
		r.balanced("balances_on_nose", "returns_from_nose", r.BalancesOnNose, r.ReturnsFromNose, r.off.nose)
}

// IsTilt reports whether a reading of that name is one of a level, an angle.
func IsTilt(name string) bool {
	return name == "seat_falls_empty" || strings.HasPrefix(name, "balances_on_") || name == "seat"
}

// balanced returns a balance on an end: the middle of where the piece just goes over and where it just comes back is
// free of the finger, and uncertain by half of what they differ; of one of the two the finger's usual part is.
func (r *Readings) balanced(name, returns string, over, back, off float64) *tilting {
	hasOver, hasBack := r.has(name, over), r.has(returns, back)
	switch {
	case hasOver && hasBack:
		return &tilting{name, (over+back)/2 + off, max(r.level(), math.Abs(over-back)/2)}
	case hasOver:
		return &tilting{name, over + off, math.Hypot(r.level(), usualFinger)}
	case hasBack:
		return &tilting{name, back + off, math.Hypot(r.level(), usualFinger)}
	}
	return nil
}

// rested reports whether the tilt at rest was read, by the level or by the height of a tip.
func (r *Readings) rested() bool {
	return r.has("seat_falls_empty", r.SeatFallsEmpty) || r.NoseTip != 0 || r.TailTip != 0
}

// tilted reports whether anything was read with a level, or a tip over the floor.
func (r *Readings) tilted() bool {
	rest, tail, nose := r.tiltings()
	return rest != nil || tail != nil || nose != nil || r.rested()
}

// levelled returns the quantities of the readings with a level, as read does.
func (r *Readings) levelled() []reading {
	var list []reading
	rest, tail, nose := r.tiltings()
	if rest != nil {
		list = append(list, reading{rest.name, &r.off.rest, rest.deviation})
	}
	if tail != nil {
		list = append(list, reading{tail.name, &r.off.tail, tail.deviation})
	}
	if nose != nil {
		list = append(list, reading{nose.name, &r.off.nose, nose.deviation})
	}
	for _, height := range []reading{{"nose_tip", &r.NoseTip, usualTape}, {"tail_tip", &r.TailTip, usualTape}} {
		if *height.value != 0 {
			list = append(list, height)
		}
	}
	if r.SeatDrawn && (rest != nil || tail != nil || nose != nil) {
		list = append(list, reading{"seat", &r.off.seat, usualSeat})
	}
	if tail != nil || r.TailTip != 0 {
		list = append(list, reading{"tail_end", &r.off.tailEnd, usualEnd})
	}
	if nose != nil || r.NoseTip != 0 {
		list = append(list, reading{"nose_end", &r.off.noseEnd, usualEnd})
	}
	if r.rested() {
		list = append(list, reading{"low_point", &r.off.low, usualTape})
	}
	return list
}

// A tip is an end of the rockers as the piece balances on it: upright over the centre of its lower corner, for there
// (G − p)·u′ = (G − centre)·u′, whatever the corner's radius.
type tip struct {
	point, centre r2.Vec  // of the floor edge's end, of the corner, m
	outward       r2.Vec  // along the edge, of length one
	from, to      float64 // the tilts between which it stands on this tip, rad
}

// tips returns the tail and the nose.
func (r *Readings) tips() (tail, nose tip) {
	spans := r.Edge.Drawn()
	t, n := r.Edge.Bearing(r.Edge.Bearings()-1), r.Edge.Bearing(0)
	return ended(r.Edge.Tail(), t, t.From, 1, spans[len(spans)-1].Radius, r.TailEnd),
		ended(r.Edge.Nose(), n, n.To, -1, spans[0].Radius, r.NoseEnd)
}

// ended returns the tip at a point, off which the floor edge rolls at the tilt leaves, side being + at the tail. A
// corner of radius e rounded off an edge of radius R, square to it, has its centre e before the end and over the tip
//
//	R − √((R − e)² − e²) = 2e/(1 + √(1 − 2e/R)),
//
// and begins at a tilt of e/R before the tip, nearly.
func ended(point r2.Vec, b *rocker.Bearing, leaves, side, radius float64, end End) tip {
	u, du := rocker.Down(leaves)
	t := tip{point: point, centre: point, outward: r2.Scale(side, du), from: b.From, to: b.To}
	e := end.Radius
	switch {
	case e <= 0:
	case end.Round:
		t.centre = r2.Sub(point, r2.Scale(e, u))
	default:
		bend := 0.0 // of the edge, 1/m
		if radius != 0 {
			bend = min(1/radius, 1/(2*e))
		}
		over := 2 * e / (1 + math.Sqrt(1-2*e*bend))
		t.centre = r2.Sub(r2.Sub(point, r2.Scale(e, t.outward)), r2.Scale(over, u))
		if early := e * math.Abs(bend); side > 0 {
			t.from -= early
		} else {
			t.to += early
		}
	}
	return t
}

// tiltOf returns the tilt at which a tip, moved outwards by off, lies at a height over the floor between the two
// tilts at which the piece comes to stand on its ends.
func (r *Readings) tiltOf(name string, height, off float64, t tip) (float64, error) {
	last := r.Edge.Bearing(r.Edge.Bearings() - 1).From
	first := r.Edge.Bearing(0).To
	q := r2.Add(t.point, r2.Scale(off, t.outward))
	tilt := root.Between(func(tilt float64) float64 { return r.Edge.Height(q, tilt) - height }, first, last, 0)
	if math.IsNaN(tilt) {
		return 0, wrong(name, "at no rest on this curve does this tip stand so far over the floor: measure again from the floor up to "+
			"the end of the floor edge")
	}
	return tilt, nil
}
