package check

import (
	"errors"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestErrors holds that what is missing or doubled is named by its key.
func TestErrors(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(d *piece.Design)
		key    string
		says   string
	}{
		{"no radius", func(d *piece.Design) { d.Rocker.Radius = 0 }, "rocker.radius", "needs its radius"},
		{"no tail", func(d *piece.Design) { d.Rocker.Tail = 0 }, "rocker.tail", "needs its tail"},
		{"arcs and radius", func(d *piece.Design) { d.Rocker.Arcs = []piece.Arc{{Radius: 1, Length: 1}} }, "rocker.arcs", "not both"},
		{"no mass", func(d *piece.Design) { d.Piece.Mass = 0 }, "piece", "missing"},
		{"two masses", func(d *piece.Design) { d.Body.Mass = 10 }, "piece", "given twice"},
		{"seat without front", func(d *piece.Design) { d.Seat.Front = 0 }, "seat.front", "needs its front"},
		{"seat without rear", func(d *piece.Design) { d.Seat.Rear = 0 }, "seat.rear", "needs its rear"},
		{"arcs without nose", func(d *piece.Design) { d.Rocker = piece.Rocker{Arcs: []piece.Arc{{Radius: 1, Length: 1}}} },
			"rocker.nose", "arcs need nose"},
		{"seat too steep", func(d *piece.Design) { d.Seat.Depth = 0.5 * quantity.In }, "seat.depth", "differ"},
		{"no width to spread over", func(d *piece.Design) { d.Seat.Width = 0 }, "seat.width", "width is needed"},
		{"person without weight", func(d *piece.Design) { d.Sitters[0].Mass = 0 }, "sitter.weight", "has a weight"},
		{"person nowhere", func(d *piece.Design) {
			d.Sitters[0], d.Seat, d.Piece = piece.Sitter{Mass: 80}, piece.Seat{}, piece.Piece{}
			d.Body = body.Body{Mass: 12, Centre: r2.Vec{Y: 0.4}, Inertia: 1}
		}, "sitter", "none is drawn"},
		{"person of 4 m", func(d *piece.Design) {
			d.Sitters[0] = piece.Sitter{Mass: 80, Person: person.Given{Sizes: person.Measures{person.Stature: 4}}}
		}, "sitter.height", "157 1/2 in"},
		{"knee crease at the hip", func(d *piece.Design) {
			d.Sitters[0] = piece.Sitter{Mass: 80,
				Person: person.Given{Sizes: person.Measures{person.Stature: 1.78, person.KneeCrease: 0.8}}}
		}, "sitter.knee_crease", "does not go with the height"},
		{"sizes and places", func(d *piece.Design) { d.Sitters[0].Person.Age = 6 }, "sitter.age", "keep one"},
		{"person twice", func(d *piece.Design) { d.Sitters[0].Centre.Y = 1 }, "sitter.centre", "not both"},
		{"deep rocker", func(d *piece.Design) { d.Rocker.Depth = 2 }, "rocker.depth", "top edge"},
		{"too round", func(d *piece.Design) { d.Rocker.Radius = 0.1 }, "rocker.radius", "360 degrees"},
	} {
		d := readingChair()
		tt.change(&d)
		_, err := Check(d)
		var wrong *piece.KeyError
		if !errors.As(err, &wrong) || wrong.Key != tt.key || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%s: error %v; want one of %s that says %q", tt.name, err, tt.key, tt.says)
		}
	}
}

// TestRestlessPiecesAreAnswers holds that a piece that does not stand has a report.
func TestRestlessPiecesAreAnswers(t *testing.T) {
	for _, tt := range []struct {
		name    string
		design  piece.Design
		outcome sim.Outcome
	}{
		{"at the arc centre", plain(0.5, 0.3, 0.3, 10, r2.Vec{Y: 0.5}, 1), sim.Neutral},
		{"above the arc centre", plain(0.5, 0.3, 0.3, 10, r2.Vec{Y: 0.6}, 1), sim.NoRest},
		{"beyond the tail", plain(0.5, 0.3, 0.3, 10, r2.Vec{X: -0.4, Y: 0.3}, 1), sim.NoRest},
	} {
		r, err := Check(tt.design)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		l := r.Loads[0]
		if l.Balance.Outcome != tt.outcome || r.Holds() || r.Limits[0].Name != "rest" || r.Limits[0].Holds {
			t.Errorf("%s: outcome %v, limits %+v; want %v and no rest", tt.name, l.Balance.Outcome, r.Limits, tt.outcome)
		}
		for _, release := range r.Releases {
			if s := l.Swing(release); s.Outcome != tt.outcome || !math.IsNaN(s.Period) {
				t.Errorf("%s: swing %+v", tt.name, s)
			}
		}
	}
}
