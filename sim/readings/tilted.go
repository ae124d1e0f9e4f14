package readings

import (
	"fmt"
	"math"
	"slices"

	"rockerwright/rocker"
)

// steps are the places at which the zero of a level is tried where nothing says it.
const steps = 60

// solveTilted is place with a level: by all lines and tilts together.
func (r Readings) solveTilted(lines []line) (p placed, err error) {
	if p.at, err = r.start(lines); err != nil {
		return p, err
	}
	if err := r.flat(&p.at); err != nil {
		return p, err
	}
	sights := r.sights(lines)
	found, ok := adjust(sights, p.at)
	if !ok {
		return p, r.lacking(lines)
	}
	p.at, p.zero = found.at, found.at[zero]
	if rest, tail, nose := r.tiltings(); rest == nil && tail == nil && nose == nil {
		p.zero = math.NaN()
	}
	if err := r.onEnds(&found); err != nil {
		return p, err
	}
	if err := r.rests(&p.at); err != nil {
		return p, err
	}
	p.doubts = suspects(sights, &found)
	const oneSided95 = 1.6448536269514722 // deviations that 95 of 100 normal errors do not pass
	for i, s := range sights {
		if IsTilt(s.name) && s.name != "seat" && found.free[i] >= least {
			p.slips = append(p.slips, Slip{s.name, (doubtful + oneSided95) * s.deviation / math.Sqrt(found.free[i])})
		}
	}
	return p, nil
}

// suspects returns the sights that are off by more than three deviations of what they may be off: of these each that,
// left out alone, lets all the others agree; all of them where there is none. Nothing that no key says is among them.
func suspects(sights []sight, found *adjusted) []Doubt {
	var off, alone []Doubt
	for i, s := range sights {
		if s.name == "" || math.Abs(found.odd(sights, i)) <= doubtful {
			continue
		}
		others := slices.Delete(slices.Clone(sights), i, i+1)
		without, agree := adjust(others, found.at)
		expected := s.read - found.off[i]/found.free[i] // to first order
		if agree {
			expected, _ = s.of(&without.at)
		}
		for j := range others {
			agree = agree && math.Abs(without.odd(others, j)) <= doubtful
		}
		off = append(off, Doubt{Reading: s.name, Read: s.read, Expected: expected})
		if agree {
			alone = append(alone, off[len(off)-1])
		}
	}
	if len(alone) > 0 {
		return alone
	}
	return off
}

// start returns a state near the solution: given the zero, each balance is a line. Where neither the drawn seat nor
// the height of a tip tells the zero, it is tried wherever the ends can bear the piece, and the best is taken.
func (r *Readings) start(lines []line) (state, error) {
	if r.near != nil {
		return *r.near, nil
	}
	rest, tail, nose := r.tiltings()
	onTail, onNose := r.tips()
	first, _ := r.levelNames()
	var at state
	heights := 0.0
	for _, end := range []struct {
		name        string
		height, off float64
		on          tip
	}{{"nose_tip", r.NoseTip, r.off.noseEnd, onNose}, {"tail_tip", r.TailTip, r.off.tailEnd, onTail}} {
		if end.height == 0 {
			continue
		}
		tilt, err := r.tiltOf(end.name, end.height, end.off, end.on)
		if err != nil {
			return at, err
		}
		heights++
		at[resting] += (tilt - at[resting]) / heights
	}
	low, high := -math.Pi, math.Pi
	narrow := func(read, from, to float64) { low, high = max(low, read-to), min(high, read-from) }
	if tail != nil {
		narrow(tail.read, onTail.from, min(onTail.to, onTail.from+math.Pi/2))
	}
	if nose != nil {
		narrow(nose.read, max(onNose.from, onNose.to-math.Pi/2), onNose.to)
	}
	if rest != nil {
		narrow(rest.read, onNose.to, onTail.from)
	}
	zeros := []float64{0}
	switch {
	case r.SeatDrawn:
		zeros[0] = r.SeatFall
	case heights > 0 && rest != nil:
		zeros[0] = rest.read - at[resting]
	case low > high:
		return at, wrong(first, "these tilts lie nearer together than the ends of the rockers do: "+
			"back is +, forward -, all on one mark; read again")
	default:
		zeros = zeros[:0]
		for i := range steps + 1 {
			zeros = append(zeros, low+(high-low)*float64(i)/steps)
		}
	}
	best := math.Inf(1)
	chosen := at
	for _, z := range zeros {
		x, sum, ok := r.tried(lines, at, z, heights > 0)
		if ok && sum < best {
			best, chosen = sum, x
		}
	}
	if math.IsInf(best, 1) {
		return at, r.lacking(lines)
	}
	return chosen, nil
}

// tried returns the state with a level's zero, and the squares that the lines are off there.
func (r *Readings) tried(lines []line, at state, zeroed float64, known bool) (state, float64, bool) {
	rest, tail, nose := r.tiltings()
	onTail, onNose := r.tips()
	at[zero] = zeroed
	all := slices.Clone(lines)
	const lever = 0.5 // m, about
	if rest != nil && !known {
		at[resting] = rest.read - zeroed
	}
	if r.rested() {
		_, du := rocker.Down(at[resting])
		p := r.Edge.Contact(at[resting])
		all = append(all, line{"seat_falls_empty", du, p.X*du.X + p.Y*du.Y, r.level() * lever})
	}
	for _, on := range []struct {
		t  *tilting
		on tip
	}{{tail, onTail}, {nose, onNose}} {
		if on.t != nil {
			_, du := rocker.Down(on.t.read - zeroed)
			c := on.on.centre
			all = append(all, line{on.t.name, du, c.X*du.X + c.Y*du.Y, math.Hypot(usualEnd, on.t.deviation*lever)})
		}
	}
	g, ok := crossing(all)
	if !ok {
		return at, 0, false
	}
	at[ahead], at[above] = g.X, g.Y
	sum := 0.0
	for _, l := range all {
		off := l.off(g)
		sum += off * off
	}
	return at, sum, true
}

// onEnds returns the error of a tilt at which the piece does not stand on the end that is read: short of it, on the
// curve, or beyond it. What the level and its zero may be off is left to it.
func (r *Readings) onEnds(found *adjusted) error {
	_, tail, nose := r.tiltings()
	onTail, onNose := r.tips()
	sure := found.spread.At(zero, zero)
	for _, end := range []struct {
		t    *tilting
		on   tip
		name string
		at   float64 // from here on it stands on its end
	}{{tail, onTail, "tail", onTail.from}, {nose, onNose, "nose", onNose.to}} {
		if end.t == nil {
			continue
		}
		tilt, may := end.t.read-found.at[zero], doubtful*math.Sqrt(sure+end.t.deviation*end.t.deviation)
		if tilt < end.on.from-may || tilt > end.on.to+may {
			return wrong(end.t.name, fmt.Sprintf("at this tilt the piece does not stand on its %s ends: on this curve and mark it comes "+
				"to stand on them where the level shows %.0f degrees; back is +, forward -; read again",
				end.name, (end.at+found.at[zero])*180/math.Pi))
		}
	}
	return nil
}

// restName returns the key by which the tilt at rest was read, "" where it was not.
func (r *Readings) restName() string {
	switch {
	case r.has("seat_falls_empty", r.SeatFallsEmpty):
		return "seat_falls_empty"
	case r.NoseTip != 0:
		return "nose_tip"
	case r.TailTip != 0:
		return "tail_tip"
	}
	return ""
}

// flat returns the error of a rest on a flat, which holds the piece at one tilt wherever over it the balance point lies.
func (r *Readings) flat(x *state) error {
	const near = 0.5 * math.Pi / 180 // rad; more than a level errs
	for i := range r.Edge.Bearings() - 1 {
		if b := r.Edge.Bearing(i); r.rested() && b.Flat > 0 && math.Abs(x[resting]-b.To) < max(near, doubtful*r.level()) {
			return wrong(r.restName(), "here the piece lies on a flat of its rockers, and rests alike wherever over it the balance "+
				"point lies: leave this reading out, and read others")
		}
	}
	return nil
}

// rests returns the error of a rest that is none: the piece would roll on.
func (r *Readings) rests(x *state) error {
	if !r.rested() {
		return nil
	}
	i, within := r.Edge.Find(x[resting])
	if _, _, curve := r.Edge.Bearing(i).Above(x.centre(), within); curve <= 0 {
		return wrong(r.restName(), "by these readings the piece could not rest here: it would roll on; read all the tilts again")
	}
	return r.flat(x)
}
