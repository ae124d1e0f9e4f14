package size

import (
	"context"
	"errors"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// TestUnsuited holds the errors.
func TestUnsuited(t *testing.T) {
	if _, err := Solve(readingChair(), 0); !errors.Is(err, ErrNoTarget) {
		t.Errorf("without a target: %v", err)
	}
	measured := readingChair()
	measured.Rocker.Radius = 0
	measured.Measured.Spacing = 2 * inch
	for i := -7; i <= 7; i++ {
		x := float64(i) * 2 * inch
		measured.Measured.Left = append(measured.Measured.Left, 42*inch-math.Sqrt(42*inch*42*inch-x*x))
	}
	measured.Target.OneRock = 2
	var unsuited *UnsuitedError
	if _, err := Solve(measured, 0); !errors.As(err, &unsuited) {
		t.Errorf("measured rockers: %v", err)
	}
	if _, err := Like(readingChair(), measured); !errors.As(err, &unsuited) || unsuited.Error() == "" {
		t.Errorf("measured rockers: %v", err)
	}
	var old *OldError
	if _, err := Like(piece.Design{}, readingChair()); !errors.As(err, &old) || old.Error() == "" {
		t.Errorf("no old piece: %v", err)
	}
	var key *piece.KeyError
	if _, err := Like(readingChair(), piece.Design{}); !errors.As(err, &key) {
		t.Errorf("no new piece: %v", err)
	}
	bare := piece.Design{Rocker: readingChair().Rocker}
	if _, err := Chairs(context.Background(), bare, 10, StudyOptions{}); !errors.As(err, &key) {
		t.Errorf("no weight: %v", err)
	}
	if _, err := WhatIf(bare); !errors.As(err, &key) {
		t.Errorf("no weight: %v", err)
	}
}

// TestNamed holds that each way, curve and quantity has a name of its own.
func TestNamed(t *testing.T) {
	seen := map[string]bool{}
	add := func(name string) {
		if name == "" || seen[name] {
			t.Errorf("the name %q", name)
		}
		seen[name] = true
	}
	for _, w := range Keeps {
		add(w.String())
	}
	for _, c := range []Shape{OneArc, TwoArcs, ThreeArcs, FlatterTail, EvenTime} {
		add(c.String())
	}
	for _, a := range []Alteration{SlidConcentric, SlidStraight, RearLegsCut, Worn, PorchSlope, LeansAnInch} {
		add(alterations[a].Label)
	}
}

// plainBody is a piece in plain numbers with one sitter.
func plainBody() piece.Design {
	return piece.Design{
		Rocker:  piece.Rocker{Radius: 1.1, Nose: 0.4, Tail: 0.6},
		Body:    body.Body{Mass: 12, Centre: r2.Vec{X: 0.01, Y: 0.45}, Inertia: 1.5},
		Sitters: []piece.Sitter{{Name: "one", Mass: 70, Centre: r2.Vec{X: -0.01, Y: 0.66}}},
	}
}

// TestWhatIfWithoutRest holds that a piece that falls over has rows of nothing, and that a change
// after which it does is the largest of all.
func TestWhatIfWithoutRest(t *testing.T) {
	d := plainBody()
	d.Rocker.Radius = 0.5
	if table, err := WhatIf(d); err != nil || !math.IsNaN(table.Now[Time]) {
		t.Errorf("%+v, %v", table.Now, err)
	}
	edge := readingChair()
	edge.Rocker.Radius = 25.6 * inch // an inch above the balance point
	edge.Sitters[0].Person.Sizes[person.Stature] = 70 * inch
	table, err := WhatIf(edge)
	if err != nil {
		t.Fatal(err)
	}
	worst := table.Rows[0].Effect
	for _, r := range table.Rows {
		if r.Effect > worst && !r.loose() {
			t.Errorf("%s does more (%v) than the first (%v)", r.Key, r.Effect, worst)
		}
	}
}
