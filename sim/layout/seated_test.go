package layout

import (
	"math"
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// TestSeatedReadings: the card's bounds on what the level shows with the owner at ease are the falls of the seat with the balance
// point an inch off either way, by the report of other people of the same sizes, and as far again from the end of the band as
// from the rest; the empty piece has none.
func TestSeatedReadings(t *testing.T) {
	l := mustLay(t, reading())
	rest, load := l.Rests[1], &l.Report.Loads[l.sitting()]
	one, other := l.Report.LeaningBack(check.PersonSpread), l.Report.LeaningBack(-check.PersonSpread)
	behind, ahead := one.Load(load.Name).SeatFall, other.Load(load.Name).SeatFall
	spread := max(math.Abs(behind-load.SeatFall), math.Abs(ahead-load.SeatFall))
	if math.Abs(rest.SeatFalls-rest.Least-spread) > 1e-12 || math.Abs(rest.Most-rest.Pressed-spread) > 1e-12 {
		t.Errorf("from %v to %v, by other people %v and %v", rest.Least, rest.Most, behind, ahead)
	}
	if wide := rest.Most - rest.Least; !(wide > 4*quantity.Deg && wide < 15*quantity.Deg) || !(rest.Pressed > rest.SeatFalls) {
		t.Errorf("the readings %v to %v are no band", rest.Least, rest.Most)
	}
	if empty := l.Rests[0]; !math.IsNaN(empty.Least) || !math.IsNaN(empty.Most) {
		t.Errorf("the empty piece: %+v", empty)
	}
}
