package check

import (
	"fmt"
	"math"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Side is that on which a piece goes over.
type Side int

const (
	NoSide Side = iota
	Back
	Forward
)

var sides = [...]string{"", "back", "forward"}

func (s Side) String() string { return sides[s] }

// A Limit is one thing that is asked of one load.
type Limit struct {
	Name   string // "rest", "back_margin", "back_lift", …
	Load   string
	Side   Side
	Kind   quantity.Kind // of the numbers; Count for "rest"
	Want   float64
	AtMost bool    // Want is the most that there may be; else the least
	Edge   float64 // what just reads as Want, in the units of the design: up to there it holds
	Got    float64 // NaN where there is nothing to measure
	Holds  bool
	Basis  string

	// Spread and Near are filled in by [Balance].
	Spread float64 // ± of Got, by how a guessed weight is spread and by how people of one size differ
	Near   bool    // it holds or fails by less than its Spread, so that this is too near to tell
}

// Room returns by how much a limit holds, as it is printed, below zero where it does not; NaN where nothing was measured.
func (l Limit) Room() float64 {
	if l.AtMost {
		return l.Edge - l.Got
	}
	return l.Got - l.Edge
}

// Fails reports whether a limit does not hold, and not only by less than is known.
func (l Limit) Fails() bool { return !l.Holds && !l.Near }

// Share returns how much of what is wanted there is, more than 1 where there is more than that; of an angle at or below
// zero that is wanted in parts of 10 degrees, of such a length in parts of an inch. It is NaN where nothing was measured.
func (l Limit) Share() float64 {
	room, part := l.Got-l.Want, l.Want
	if l.AtMost {
		room = -room
	}
	if !(part > 0) {
		part = map[quantity.Kind]float64{quantity.Angle: 10 * quantity.Deg, quantity.Length: quantity.In}[l.Kind]
	}
	return 1 + room/part
}

// Where a limit comes from.
const (
	OurJudgement = "our judgement"
	YourFile     = "your file"
	Physics      = "a piece must stand"
)

// An ask is one row of what is asked: a limit, of which the table of measures has the rest.
type ask struct {
	piece.Measure // under "limits.": what it is called, of which kind, and where a design has it
	side          Side
	atMost        bool
	empty         bool             // of the piece alone; else of who rides
	owner         bool             // of owners and riders alone
	seating       bool             // of chairs and settees alone
	of            []person.Posture // in which a person is asked, where one of them is given; nil means in all
	got           func(b *Balanced, l *Load) float64
	cause         Cause   // of a limit that is of no side
	look          float64 // of who rises where nothing is wanted: below it, it is worth a look
}

// leans is the name of the limit on how many leans to and fro it comes back from.
const leans = "leans"

var (
	leaningBack    = []person.Posture{person.AtEase, person.RidingBack}
	leaningForward = []person.Posture{person.FeetOff, person.Upright, person.Rising, person.RidingForward}
	atEase         = []person.Posture{person.AtEase}
)

// asks are the rows, in the order in which a load is asked. The look forward is our judgement.
var asks = []ask{
	{Measure: piece.LimitOf("back_margin"), side: Back, of: leaningBack,
		got: func(_ *Balanced, l *Load) float64 { return l.Back.Angle }},
	{Measure: piece.LimitOf("back_lift"), side: Back, of: leaningBack,
		got: func(_ *Balanced, l *Load) float64 { return l.Back.Lift }},
	{Measure: piece.LimitOf("forward_margin"), side: Forward, of: leaningForward, look: 10 * quantity.Deg,
		got: func(_ *Balanced, l *Load) float64 { return l.Forward.Angle }},
	{Measure: piece.LimitOf("forward_lift"), side: Forward, of: leaningForward,
		got: func(_ *Balanced, l *Load) float64 { return l.Forward.Lift }},
	{Measure: piece.LimitOf("rest_tilt"), atMost: true, cause: RestsTilted,
		got: func(_ *Balanced, l *Load) float64 { return math.Abs(l.Balance.Rest.Tilt) }},
	{Measure: piece.LimitOf("seat_falls_least"), seating: true, of: atEase, cause: RestsForward, got: seatFall},
	{Measure: piece.LimitOf("seat_falls_most"), seating: true, of: atEase, atMost: true, cause: RestsBack, got: seatFall},
	{Measure: piece.LimitOf("empty_falls_least"), seating: true, empty: true, cause: RestsForward, got: seatFall},
	{Measure: piece.LimitOf("empty_falls_most"), seating: true, empty: true, atMost: true, cause: RestsBack, got: seatFall},
	{Measure: piece.LimitOf("slides_off"), seating: true, of: seatedPostures, atMost: true, cause: RestsForward,
		got: func(_ *Balanced, l *Load) float64 { return max(0, -l.SeatFall) }},
	{Measure: piece.LimitOf("one_rock_least"), seating: true, of: atEase, cause: TooFlat, got: oneRock},
	{Measure: piece.LimitOf("one_rock_most"), seating: true, of: atEase, atMost: true, cause: TooRound, got: oneRock},
	{Measure: piece.LimitOf("push"), seating: true, of: atEase, atMost: true, cause: TooFlat,
		got: func(_ *Balanced, l *Load) float64 { return l.EffortBack }},
	{Measure: piece.LimitOf("legs_beyond"), seating: true, empty: true, atMost: true, cause: LegsBeyond,
		got: func(b *Balanced, _ *Load) float64 { return b.drawnBeyond() }},
	{Measure: piece.LimitOf(leans), owner: true, of: []person.Posture{person.AtEase, person.Riding}, cause: RockedOver, got: survived},
}

// seatedPostures are those of who has their weight on the seat.
var seatedPostures = []person.Posture{person.AtEase, person.FeetOff, person.Upright, person.Rising}

func seatFall(_ *Balanced, l *Load) float64 { return l.SeatFall }
func oneRock(_ *Balanced, l *Load) float64  { return l.Balance.Period }

// drawnBeyond returns how far a drawn leg stands beyond its rocker, m: 0 where none does, NaN where none is drawn.
func (b *Balanced) drawnBeyond() float64 {
	if len(b.Design.Legs) == 0 {
		return math.NaN()
	}
	most := 0.0
	for _, beyond := range b.Design.Beyond(b.Edge) {
		if !beyond.Taken {
			most = max(most, beyond.By)
		}
	}
	return most
}

// limitsOf asks each of some loads of the design, which have settled, what is checked: a rest, and of the piece and of a
// person what Limits says; of a hazard nothing.
func (b *Balanced) limitsOf(loads []Load) (limits, look []Limit) {
	limits = make([]Limit, 0, 4*len(loads)+4)
	wishes := b.wishes()
	for i := range loads {
		l := &loads[i]
		if !l.Empty && !l.Asked() {
			continue
		}
		rest := Limit{Name: "rest", Load: l.Name, Kind: quantity.Count, Want: 1, Edge: 1, Basis: Physics}
		if l.Upright() {
			rest.Got, rest.Holds = 1, true
		}
		limits = append(limits, rest)
		for i := range wishes {
			a := &wishes[i]
			looks := !a.asked && l.Posture == person.Rising
			if !looks && !(a.asked && a.asks(l, loads)) {
				continue
			}
			got := math.NaN()
			if l.Balance.Outcome == sim.Rocks {
				got = a.got(b, l)
			}
			switch {
			case !a.known(l, got):
			case looks:
				look = append(look, a.limit(b, l, a.look, got, OurJudgement))
			default:
				limits = append(limits, a.limit(b, l, a.want, got, a.basis))
			}
		}
	}
	return limits, look
}

// A wish is a row of what is asked with what a design asks of it.
type wish struct {
	*ask
	want  float64
	asked bool // else it is only looked at
	basis string
}

// wishes returns what a design asks, or is looked at where it does not ask.
func (b *Balanced) wishes() []wish {
	usual := piece.Design{Limits: b.Design.UsualLimits()}
	list := make([]wish, 0, len(asks))
	for i := range asks {
		w := wish{ask: &asks[i], basis: YourFile}
		if w.want, w.asked = w.Wanted(&b.Design); !w.asked && w.look == 0 || w.seating && !b.Design.Traits().Seating {
			continue
		}
		if own, _ := w.Wanted(&usual); own == w.want {
			w.basis = OurJudgement
		}
		list = append(list, w)
	}
	return list
}

// unasked returns an error for a limit that is asked of chairs and settees alone, of another kind of piece.
func (b *Balanced) unasked() error {
	d := &b.Design
	for i := range asks {
		if _, asked := asks[i].Wanted(d); asked && asks[i].seating && !d.Traits().Seating {
			return &piece.KeyError{Key: asks[i].Key, Reason: "this is asked of chairs and settees alone, not of a " + d.Kind.String()}
		}
	}
	asked := d.Limits.Leans
	switch leaning := slices.ContainsFunc(b.Loads, func(l Load) bool { back, forward := l.Leans(); return back != forward }); {
	case asked == 0:
	case asked > MostLeans || asked != math.Trunc(asked):
		return &piece.KeyError{Key: "limits.leans", Reason: fmt.Sprintf("leans are counted, and no more than %d are tried", MostLeans)}
	case !leaning && asked != d.UsualLimits().Leans && b.Loads[0].Upright():
		return &piece.KeyError{Key: "limits.leans",
			Reason: "nobody is checked in it who leans to and fro: who sits at ease or rides, by height and weight"}
	}
	return nil
}

// known reports whether a load that stands has what is asked for: who rises none of the motion, a stool no back to
// push, a piece on a flat no time of a small rock. What does not stand is asked, and has not.
func (a *ask) known(l *Load, got float64) bool {
	return !l.Upright() || l.Standing == 0 && a.side != NoSide || !math.IsNaN(got)
}

// asks reports whether a load is one to be asked: the piece alone or somebody on it, as it should be, the person in one of
// the postures, or in none of them on any load.
func (a *ask) asks(l *Load, loads []Load) bool {
	if a.empty != l.Empty || a.owner && l.Role != piece.Owner {
		return false
	}
	if a.of == nil || slices.Contains(a.of, l.Posture) {
		return true
	}
	for i := range loads {
		if o := &loads[i]; o.Sitter == l.Sitter && o.Asked() && slices.Contains(a.of, o.Posture) {
			return false
		}
	}
	return true
}

// limit returns what is asked of one load, and what it has: of one that has no rest there is nothing to measure.
func (a *ask) limit(b *Balanced, l *Load, want, got float64, basis string) Limit {
	limit := Limit{Name: a.Name(), Load: l.Name, Side: a.side, Kind: a.Kind, Basis: basis,
		Want: want, AtMost: a.atMost, Got: got}
	least, most := quantity.Reads(want, a.Kind, b.Design.Units)
	if limit.Edge = least; a.atMost {
		limit.Edge = most
	}
	limit.Holds = limit.Room() >= 0
	return limit
}

// Asked reports whether limits are asked of the load: somebody rides on it who is no
// hazard, and has not lifted off the seat to rise, with both feet on the floor.
func (l *Load) Asked() bool {
	return !l.Empty && asked(l.Role, l.Posture)
}

// asked is what [Load.Asked] reports of a load to be.
func asked(role piece.Role, posture person.Posture) bool {
	return role != piece.Hazard && posture != person.PushingUp
}
