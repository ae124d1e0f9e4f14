package check

import (
	"cmp"
	"math"
	"slices"

	"rockerwright/sim"
	"rockerwright/sim/quantity"
	"rockerwright/sim/readings"
)

// What is set beside its drawing.
const (
	BesideWeight  = "weight"
	BesideAhead   = "ahead"
	BesideAbove   = "above"
	BesideRocks   = "ten_rocks"
	BesideRidden  = "ten_rocks_ridden"
	BesideLeft    = "left"
	BesideRight   = "right"
	BesideTwins   = "left_against_right"
	BesideRadius  = "radius"
	BesideBending = "all_radii"
)

// A Mend is what to do about a reading that does not agree.
type Mend int

const (
	NoMend    Mend = iota
	Reread         // this one alone is off: all else of its kind agrees
	TakeRead       // it came out otherwise: take what was read for the drawing
	NoCurve        // no bend of the drawn curve explains the rises
	MakeAlike      // the two rockers are not alike
	FurtherIn      // as drawn it does not come back from there
)

var mends = [...]string{"", "read again", "take what was read", "no curve", "make alike", "let go from less"}

func (m Mend) String() string { return mends[m] }

// A Beside is one thing that is drawn or predicted, beside what was read of it.
type Beside struct {
	What      string
	Key       string   // the reading to look at: "measured.left.3"
	Readings  []string // all that enter it, by the last part of their keys
	Station   int      // of a rise, counted from 1 at the nose; else 0
	Kind      quantity.Kind
	Drawn     float64 // NaN where the drawn piece has none
	Read      float64
	Uncertain float64 // of their difference, ± at 95 %
	Mend      Mend    // where they do not agree
}

// Agrees reports whether drawn and read differ by no more than is known.
func (r Beside) Agrees() bool { return math.Abs(r.Read-r.Drawn) <= r.Uncertain }

// off is by how many times what is known they differ.
func (r Beside) off() float64 {
	if math.IsNaN(r.Drawn) {
		return math.Inf(1)
	}
	return math.Abs(r.Read-r.Drawn) / r.Uncertain
}

func worseFirst(a, b Beside) int { return cmp.Compare(b.off(), a.off()) }

// twoSided95 is how many standard deviations hold 95 of 100 normal errors.
const twoSided95 = 1.96

// written returns by how much a number is off, ± at 95 %, for being written to the shop's step: as wide as that, and
// anywhere in it alike (JCGM 100:2008, 4.3.7).
func (r *Report) written(x float64, kind quantity.Kind) float64 {
	least, most := quantity.Reads(x, kind, r.Design.Units)
	return twoSided95 * (most - least) / math.Sqrt(12)
}

// besideBalance sets weight and balance point beside the drawn.
func (b *Built) besideBalance() []Beside {
	read := b.As.Read
	if read == nil || b.Drawn.Read != nil { // nothing is drawn beside them
		return nil
	}
	drawn := b.Drawn.Loads[0].Rig.Body
	var rows []Beside
	add := func(what, lack, key string, kind quantity.Kind, drawn float64, v readings.Value, known float64) {
		if slices.Contains(b.As.Lacked, lack) {
			return
		}
		row := Beside{What: what, Kind: kind, Drawn: drawn, Read: v.Value, Uncertain: math.Hypot(v.Uncertain, known), Mend: TakeRead}
		for _, s := range v.Shares {
			row.Readings = append(row.Readings, s.Reading)
		}
		if row.Key = "measured." + key; !slices.Contains(row.Readings, key) {
			row.Key = "measured." + v.Limits()
		}
		rows = append(rows, row)
	}
	place := func(of func(l *Load) float64, x float64) float64 {
		return math.Hypot(b.Drawn.unknown(0, of), b.Drawn.written(x, quantity.Length))
	}
	add(BesideWeight, "weight", "weight", quantity.Mass, drawn.Mass, read.Mass, 0)
	add(BesideAhead, "dowel_ahead", "dowel_ahead", quantity.Length, drawn.Centre.X, read.Ahead,
		place(func(l *Load) float64 { return l.Rig.Body.Centre.X }, read.Ahead.Value))
	add(BesideAbove, "dowel_above", "dowel_above", quantity.Length, drawn.Centre.Y, read.Above,
		place(func(l *Load) float64 { return l.Rig.Body.Centre.Y }, read.Above.Value))
	return rows
}

// besideTilts sets what a level showed on the drawn seat of the empty piece, and the tips at its rest, beside what the drawn
// piece would give.
func (b *Built) besideTilts() []Beside {
	d := &b.Drawn
	if d.Read != nil { // nothing is drawn beside them
		return nil
	}
	r := readingsOf(d.Design, d.Edge, nil)
	var rows []Beside
	for i, f := range r.Foretell(d.Loads[0].Rig.Body) {
		kind := quantity.Length
		if readings.IsTilt(f.Name) {
			kind = quantity.Angle
		}
		known := d.unknown(0, func(l *Load) float64 { return r.Foretell(l.Rig.Body)[i].Would })
		rows = append(rows, Beside{What: f.Name, Key: "measured." + f.Name, Readings: []string{f.Name}, Kind: kind, Mend: TakeRead,
			Drawn: f.Would, Read: f.Read, Uncertain: math.Hypot(math.Hypot(f.Uncertain, known), d.written(f.Read, kind))})
	}
	return rows
}

// besideRocks sets the time of ten rocks beside the predicted, let go from where they were.
func (b *Built) besideRocks() []Beside {
	m, d := b.Drawn.Design.Measured, &b.Drawn
	var rows []Beside
	add := func(what, letGoKey string, i int, timed, letGo float64) {
		if timed == 0 || i == 0 && d.Read != nil { // where nothing is drawn they are its inertia
			return
		}
		ten := func(from float64) func(l *Load) float64 {
			return func(l *Load) float64 { return tenRocks(l, from) }
		}
		row := Beside{What: what, Key: "measured." + what, Readings: []string{what, letGoKey}, Kind: quantity.Time,
			Drawn: tenRocks(&d.Loads[i], letGo), Read: timed, Mend: TakeRead}
		if math.IsNaN(row.Drawn) {
			row.Mend = FurtherIn
		}
		watch, angle := readings.UsualWatch, readings.UsualAngle
		turned := math.Abs(tenRocks(&d.Loads[i], letGo+angle) - row.Drawn)
		if math.IsNaN(turned) {
			turned = math.Abs(tenRocks(&d.Loads[i], letGo-angle) - row.Drawn)
		}
		row.Uncertain = math.Hypot(math.Hypot(twoSided95*watch, twoSided95*turned),
			math.Hypot(d.unknown(i, ten(letGo)), d.written(timed, quantity.Time)))
		rows = append(rows, row)
	}
	add(BesideRocks, "let_go", 0, m.TenRocks, m.LetGo)
	if i := d.Sitting(); i > 0 {
		add(BesideRidden, "let_go_ridden", i, m.RiddenTenRocks, m.RiddenLetGo)
	}
	return rows
}

// tenRocks returns how long ten rocks of a load take without losses, s; NaN where it does not come back.
func tenRocks(l *Load, letGo float64) float64 {
	if !l.Upright() {
		return math.NaN()
	}
	swing := l.Rig.Swing(l.Balance, letGo)
	if swing.Outcome != sim.Rocks {
		return math.NaN()
	}
	return 10 * swing.Period
}

// unknown returns by how much a number of the i-th load may be off: for how a guessed weight is spread, and how the people
// on it differ who are of one size.
func (b *Balanced) unknown(i int, of func(l *Load) float64) float64 {
	now := of(&b.Loads[i])
	empty := b.Loads[0].Rig.Body
	byWeight, byPeople := 0.0, 0.0
	raise := func(most *float64, loads []Load) {
		if off := math.Abs(of(&loads[i]) - now); off > *most {
			*most = off
		}
	}
	b.otherSpreads(func(loads []Load) { raise(&byWeight, loads) })
	if !b.Loads[i].Empty {
		raise(&byPeople, b.rebalanced(empty, -PersonSpread, anybody))
		raise(&byPeople, b.rebalanced(empty, PersonSpread, anybody))
	}
	return math.Hypot(byWeight, byPeople)
}
