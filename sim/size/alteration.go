package size

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// An Alteration is a change that is no entry of the design.
type Alteration int

const (
	ChangeMeasure  Alteration = iota
	SlidConcentric            // the chair slid half an inch forward on rockers of a concentric top edge
	SlidStraight              // the same, of a straight one
	RearLegsCut               // by a quarter of an inch
	Worn                      // floor edge worn by 1/8 in over 12 in, where it rolls with the owner at ease
	PorchSlope                // the floor rises one degree to the front
	LeansAnInch               // the owner's balance point comes back by an inch
)

const inch = 0.0254 // m, exact

// WornOver is the length along the floor edge over which it wears, by the trade, m.
const WornOver = 12 * inch

// alterations are what each is called, and how much is done of it, SI.
var alterations = [...]Row{
	SlidConcentric: {Alteration: SlidConcentric, Label: "slid, concentric top edge", Kind: quantity.Length, Change: inch / 2},
	SlidStraight:   {Alteration: SlidStraight, Label: "slid, straight top edge", Kind: quantity.Length, Change: inch / 2},
	RearLegsCut:    {Alteration: RearLegsCut, Label: "rear legs cut", Kind: quantity.Length, Change: inch / 4},
	Worn:           {Alteration: Worn, Label: "edge worn", Kind: quantity.Length, Change: inch / 8},
	PorchSlope:     {Alteration: PorchSlope, Label: "floor rises to the front", Kind: quantity.Angle, Change: quantity.Deg},
	LeansAnInch:    {Alteration: LeansAnInch, Label: "sitter leans back", Kind: quantity.Length, Change: inch},
}

// altered returns the rows of all that can be done to this piece and is no entry of its design.
func altered(d piece.Design, sitters check.Sitters, now check.Balanced) []Row {
	var rows []Row
	add := func(a Alteration, before piece.Design, alter func(d *piece.Design, by float64)) {
		row, after := alterations[a], before.Clone()
		alter(&after, row.Change)
		was, err := sitters.Balance(before)
		if err == nil && row.ask(after, sitters) {
			row.Before = readingsOf(was)
			rows = append(rows, row)
		}
	}
	if d.Seat.SlopeKnown() {
		for i, top := range [...]piece.Top{piece.Concentric, piece.Straight} {
			before := d.Clone()
			before.Rocker.Top = top
			add(SlidConcentric+Alteration(i), before, func(d *piece.Design, by float64) { d.Seat.Slide += by })
		}
		add(RearLegsCut, d, func(d *piece.Design, by float64) { d.Seat.RearCut += by })
	}
	if worn, ok := wornDown(now); ok {
		add(Worn, d, func(d *piece.Design, _ float64) { *d = worn })
	}
	add(PorchSlope, d, func(d *piece.Design, by float64) { d.Floor.Slope += by })
	if len(now.Loads) > 1 {
		rows = append(rows, leansAnInch(now))
	}
	return rows
}

// leansAnInch moves the balance point of who sits back by an inch, on every load.
func leansAnInch(now check.Balanced) Row {
	row := alterations[LeansAnInch]
	after := now.LeaningBack(row.Change)
	row.Before, row.After, row.Outcome = readingsOf(now), readingsOf(after), after.Loads[1].Balance.Outcome
	return row
}

// wornDown returns the piece with its floor edge worn where it rolls with the owner at ease: the stretch becomes a
// flatter arc between the same two points, its rise less by what is worn, with a corner at either end: a smaller one
// where the stretch was flatter. The attitude as drawn stays, and all that stands on the rockers comes down with
// them. ok is false where it has no rest, the stretch reaches a tip or is so much flatter at one end that the arc
// would stand out there, or a corner touches the floor as drawn.
func wornDown(r check.Balanced) (d piece.Design, ok bool) {
	l := r.Seated()
	if r.Curve != nil || l.Balance.Outcome != sim.Rocks {
		return d, false
	}
	nose := r.Design.Rocker.Nose
	edge := r.Edge.Drawn()
	begin := touches(edge, l.Balance.Rest.Tilt-r.Design.Floor.Slope) - WornOver/2 // from the nose tip
	before, rest, starts := parted(edge, begin)
	inside, after, ends := parted(rest, WornOver)
	if !starts || !ends {
		return d, false
	}
	// the two ends of the stretch, and how it turns between them
	start := nose - begin
	from, _ := r.Edge.At(start)
	to, _ := r.Edge.At(start - WornOver)
	chord := r2.Norm(r2.Sub(to, from))
	tilt := inside[0].From // of the floor at the nose end of the stretch
	turn := inside[len(inside)-1].To - tilt
	rise := chord/2*math.Tan(turn/4) - alterations[Worn].Change
	if rise <= 0 {
		return d, false
	}
	flatter := 4 * math.Atan(2*rise/chord)
	radius := chord / (2 * math.Sin(flatter/2))
	level := math.Atan2(to.Y-from.Y, from.X-to.X) // the tilt at which the chord lies along the floor
	front, back := level-flatter/2-tilt, tilt+turn-level-flatter/2
	if front < 0 || back < 0 {
		return d, false
	}

	// where the worn edge touches the floor at the attitude as drawn
	at, low := r2.Vec{}, nose
	switch begins := tilt + front; {
	case begins <= 0 && begins+flatter >= 0:
		_, along := rocker.Down(begins / 2)
		at = r2.Add(from, r2.Scale(2*radius*math.Sin(-begins/2), along))
		low = nose - start - radius*begins
	case tilt+turn <= 0: // behind the stretch
		low += radius*flatter - WornOver
	case tilt < 0: // on a corner
		return d, false
	}
	d = shifted(r.Design, -at.X, -at.Y)
	d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Nose = 0, 0, low
	stretch := []piece.Arc{{Turn: front}, {Radius: radius, Length: radius * flatter}, {Turn: back}}
	d.Rocker.Arcs = slices.Concat(piece.Arcs(before), stretch, piece.Arcs(after))
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
