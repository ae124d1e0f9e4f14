package size

import (
	"context"
	"math"
	"slices"
	"testing"

	"rockerwright/body"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// standing are chairs in which the feet stay as they are whatever the balance point of this owner does.
func standing() map[body.Stage]piece.Design {
	low, high := atEase(1.78, 130), atEase(1.55, 55)
	low.Seat.Front, low.Seat.Rear = 12*quantity.In, 11.375*quantity.In
	high.Seat.Front, high.Seat.Rear = 19*quantity.In, 18.375*quantity.In
	return map[body.Stage]piece.Design{body.SoleFlat: low, body.FeetOff: high}
}

// turned returns by how much the rest of the owner turns back when his balance point goes so far back, m, on one arc:
// G hangs under its centre C, w = G − C, θ = atan2(−wx, −wy); wx goes by his whole mass over all that rocks as one.
func turned(b check.Balanced, back float64) float64 {
	l := b.Seated()
	whole := l.Person.Mass
	for _, legs := range l.Legs {
		whole += legs.Mass()
	}
	w := l.Rig.Body.Centre
	w.Y -= b.Design.Rocker.Radius
	moved := w.X - back*whole/l.Rig.Body.Mass
	return math.Atan2(-moved, -w.Y) - math.Atan2(-w.X, -w.Y)
}

// TestPeopleMove holds against the closed form the row of a table, people with their balance point elsewhere and the ±
// of a rest, with the feet flat on the floor and off it.
func TestPeopleMove(t *testing.T) {
	for stage, d := range standing() {
		table, err := WhatIf(d)
		if err != nil {
			t.Fatal(err)
		}
		b := table.Report
		if got := b.Seated().Feet[0].Stage; got != stage {
			t.Fatalf("the feet are %v, want %v", got, stage)
		}
		r := row(t, table, "", LeansAnInch)
		if got, want := r.Moved(FallAtEase), turned(b, inch); math.Abs(got-want) > 1e-9 { // a rest is found to less
			t.Errorf("%v: the row has %v, want %v", stage, got, want)
		}
		for _, by := range []float64{-0.045, -0.01, 0.01, 0.045} { // 0.045 is 3 1/2 deviations
			other, err := b.Somebody.Ahead(-by).Balance(d)
			if err != nil {
				t.Fatal(err)
			}
			if got, want := other.Seated().SeatFall-b.Seated().SeatFall, turned(b, by); math.Abs(got-want) > 1e-9 {
				t.Errorf("%v: %v m back the rest turns by %v, want %v", stage, by, got, want)
			}
		}
		want := max(turned(b, check.PersonSpread), -turned(b, -check.PersonSpread))
		if got := b.RestSpread(b.Seated()); math.Abs(got-want) > 1e-9 {
			t.Errorf("%v: the rest is known to %v, want %v", stage, got, want)
		}
	}
}

// TestPeopleVary holds that with the person alone varied the variance of the fall at ease is (25 mm/1.96 · slope)², the
// slope by the closed form and by the difference of two, and that all of it goes with the person.
func TestPeopleVary(t *testing.T) {
	for stage, d := range standing() {
		m, err := newMaking(d)
		if err != nil {
			t.Fatal(err)
		}
		last := len(m.varied) - 1
		if v := m.varied[last]; v.Key != People || v.Tolerance != 0.025 {
			t.Fatalf("%+v varies last", v)
		}
		m.varied = m.varied[last:]
		tally := m.block(context.Background(), 7, 0, Block)
		if tally.Chairs != Block || tally.Unusable != 0 {
			t.Fatalf("%d chairs, %d of them without a rest", tally.Chairs, tally.Unusable)
		}
		at, n := 1+int(FallAtEase), float64(Block)
		mean := tally.sums[at] / n
		variance := tally.products.At(at, at)/n - mean*mean
		const by = 0.002
		b := m.nominal
		less, more := b.LeaningBack(-by), b.LeaningBack(by)
		for method, slope := range map[string]float64{
			"closed form":       (turned(b, 1e-6) - turned(b, -1e-6)) / 2e-6,
			"difference of two": (more.Seated().SeatFall - less.Seated().SeatFall) / (2 * by),
		} {
			// The rest turns by 2 degrees a deviation, e = 0.035: what an arc tangent has beyond its slope changes a
			// variance by some 2e² = 0.25 %, strata of 1/4096 by 0.1 %.
			want := math.Pow(0.025/1.96*slope, 2)
			if math.Abs(variance/want-1) > 0.01 {
				t.Errorf("%v: variance %v, by the %s %v", stage, variance, method, want)
			}
		}
		if shares, left := tally.shares(FallAtEase); shares[0] < 0.99 || left > 0.01 || math.Abs(shares[0]+left-1) > 1e-9 {
			t.Errorf("%v: the person has %v of it, %v is left over", stage, shares[0], left)
		}
	}
}

// TestSharesSum holds that what goes with each measure, the person among them, and what is left over make the whole.
func TestSharesSum(t *testing.T) {
	s, err := Chairs(context.Background(), readingChair(), 2*Block, StudyOptions{})
	if err != nil {
		t.Fatal(err)
	}
	for _, spread := range s.Spreads {
		sum := spread.LeftOver
		for k, share := range spread.Shares {
			if sum += share; s.Varied[k].Key == People && (share > 1e-3) == (spread.Quantity == FallEmpty) {
				t.Errorf("quantity %d: the person has %v", spread.Quantity, share)
			}
		}
		// errors that are drawn independently correlate by 1/√8192 = 1.1 %, one pair for each measure beside the largest
		if math.Abs(sum-1) > 0.03 {
			t.Errorf("quantity %d: the shares sum to %v", spread.Quantity, sum)
		}
	}
}

// TestPlainNumbersDoNotVary: who is given by plain numbers stays, and is not said to matter most; who is given by sizes
// in the same design does vary.
func TestPlainNumbersDoNotVary(t *testing.T) {
	plain := piece.Sitter{Name: "plain", Mass: 80, Placed: piece.Place{Ahead: 0.2, Above: 0.25}}
	d := readingChair()
	sized := d.Sitters[0]
	varies := func(v Varied) bool { return v.Key == People }
	for _, tt := range []struct {
		sitters []piece.Sitter
		varies  bool
	}{{[]piece.Sitter{plain}, false}, {[]piece.Sitter{plain, sized}, true}} {
		d.Sitters = tt.sitters
		m, err := newMaking(d)
		if err != nil {
			t.Fatal(err)
		}
		if got := slices.ContainsFunc(m.varied, varies); got != tt.varies {
			t.Errorf("%d sitters: people vary %v, want %v", len(tt.sitters), got, tt.varies)
		}
		other, err := m.sitters.Ahead(0.02).Balance(d)
		if err != nil {
			t.Fatal(err)
		}
		moved := false
		for i := range other.Loads {
			was, is := &m.nominal.Loads[i], &other.Loads[i]
			if is.Sitter == sized.Name {
				moved = moved || is.Balance.Rest.Tilt < was.Balance.Rest.Tilt
			} else if is.Balance.Rest != was.Balance.Rest {
				t.Errorf("%s rests at %v, was %v", is.Name, is.Balance.Rest.Tilt, was.Balance.Rest.Tilt)
			}
		}
		if moved != tt.varies {
			t.Errorf("%d sitters: one by sizes moves: %v", len(tt.sitters), moved)
		}
		table := Table{Report: m.nominal}
		if table.PersonMatters() {
			t.Errorf("%d sitters: the first, in plain numbers, matters most", len(tt.sitters))
		}
	}
}

// TestPersonMatters holds it at both sides: a shop that is off by so much that the recline alone moves the rest more
// than 25 mm of the person do, and one that is exact.
func TestPersonMatters(t *testing.T) {
	for _, tt := range []struct {
		angle float64 // to which the shop holds one
		want  bool
	}{{0.01 * degree, true}, {12 * degree, false}} {
		d := readingChair()
		d.Shop.Angle = tt.angle
		table, err := WhatIf(d)
		if err != nil {
			t.Fatal(err)
		}
		r := row(t, table, "back.recline", ChangeMeasure)
		off, spread := math.Abs(r.Moved(FallAtEase)/r.Change*tt.angle), table.Report.RestSpread(table.Report.Seated())
		if got := table.PersonMatters(); got != tt.want || (off < spread) != tt.want {
			t.Errorf("an angle to %v: matters most %v; %v and %v", tt.angle, got, off, spread)
		}
	}
	// with a measure that leaves it no rest nothing is said
	table, err := WhatIf(readingChair())
	if err != nil {
		t.Fatal(err)
	}
	at := slices.IndexFunc(table.Rows, func(r Row) bool { return r.Made })
	table.Rows[at].After[FallAtEase] = math.NaN()
	if table.PersonMatters() {
		t.Error("a measure leaves it no rest, and the person is said to matter more")
	}
}
