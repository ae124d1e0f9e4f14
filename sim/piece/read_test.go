package piece

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// circle returns points of a circle of a radius over the floor, from 0.4 m ahead to 0.5 m behind where it touches.
func circle(radius float64) (points []r2.Vec) {
	for i := range 19 {
		x := 0.4 - 0.05*float64(i)
		points = append(points, r2.Vec{X: x, Y: radius - math.Sqrt(radius*radius-x*x)})
	}
	return points
}

// TestReadFromEitherEnd: points of a circle read from the nose or from the tail make one edge, of its radius and of the
// nose and tail that were told; drawn by the arcs that fit it, the edge stays where it is. A point out of order is
// named by its place in what was typed, whichever end that began with.
func TestReadFromEitherEnd(t *testing.T) {
	from := func(points []r2.Vec) Design { return Design{Rocker: Rocker{Points: points, Nose: 0.38, Tail: 0.47}} }
	turned := slices.Clone(circle(1.1))
	slices.Reverse(turned)
	for name, d := range map[string]Design{"nose": from(circle(1.1)), "tail": from(turned)} {
		read := edgeOf(t, d)
		fitted, err := d.Fitted()
		if r := fitted.Rocker; err != nil || !near(r.Radius, 1.1, 1e-6) || !near(r.Nose, 0.38, 1e-9) || !near(r.Tail, 0.47, 1e-9) {
			t.Errorf("from the %s: %+v, %v", name, r, err)
		}
		for _, tilt := range []float64{-0.5, -0.2, 0, 0.3, 0.6} {
			if a, b := edgeOf(t, fitted).Contact(tilt), read.Contact(tilt); r2.Norm(r2.Sub(a, b)) > 1e-9 {
				t.Errorf("from the %s: at %v rad the drawn edge touches at %v, the read one at %v", name, tilt, a, b)
			}
		}
		for _, wrong := range []int{3, 12} { // as typed, from 0
			points := slices.Clone(d.Rocker.Points)
			points[wrong].X = points[wrong-1].X
			_, _, err := from(points).Profile()
			key := fmt.Sprintf("rocker.points.%d", wrong+1)
			if name == "tail" { // read backwards it is the one before that stands no further behind
				key = fmt.Sprintf("rocker.points.%d", wrong)
			}
			if e := (*KeyError)(nil); !errors.As(err, &e) || e.Key != key {
				t.Errorf("from the %s, point %d again where the one before was: %v", name, wrong+1, err)
			}
		}
	}
}

// TestTwoRockersRead: of two rockers that are bent apart the difference is largest at an end, and has the sign of who
// is higher there; the edge of both has the mean of their bends, and of two that are alike the radius is surer by the
// root of two than of one. The low point may be any station but the first and the last.
func TestTwoRockersRead(t *testing.T) {
	rises := func(radius float64) (rise []float64) {
		for _, p := range circle(radius) {
			rise = append(rise, p.Y)
		}
		return rise
	}
	read := func(m Measured) (*Traced, error) {
		m.Spacing = 0.05
		_, c, err := Design{Rocker: Rocker{Nose: 0.38, Tail: 0.47}, Measured: m}.Profile()
		return c, err
	}
	for _, tt := range []struct{ left, right, sign float64 }{{1.0, 1.2, 1}, {1.2, 1.0, -1}} {
		c, err := read(Measured{Left: rises(tt.left), Right: rises(tt.right)})
		if err != nil || c.One || !(c.Apart*tt.sign > 0) || c.Station != 19 { // the tail reaches further
			t.Fatalf("left %v m, right %v m: %+v, %v", tt.left, tt.right, c, err)
		}
		mean := func(x float64) float64 { // of both circles, where the straightedge touches
			return 1 - math.Sqrt(1-x*x)/2 - math.Sqrt(1.44-x*x)/2 + 0.1
		}
		if want := 0.01 / (mean(0.1) - 2*mean(0) + mean(-0.1)); math.Abs(c.Fit.Arcs[0].Radius/want-1) > 0.02 { // one arc through two
			t.Errorf("both have %+v, want a radius of about %v", c.Fit.Arcs, want)
		}
	}
	one, errOne := read(Measured{Left: rises(1.1)})
	both, errBoth := read(Measured{Left: rises(1.1), Right: rises(1.1)})
	if errOne != nil || errBoth != nil || !near(one.Fit.Arcs[0].Uncertain/both.Fit.Arcs[0].Uncertain, math.Sqrt2, 1e-3) || !both.One {
		t.Errorf("one rocker %+v, %v; both %+v, %v", one, errOne, both, errBoth)
	}
	for low, good := range map[float64]bool{1: false, 2: true, 9: true, 18: true, 19: false, 9.5: false} {
		var rise []float64
		for i := range 19 {
			x := 0.05 * (low - 1 - float64(i))
			rise = append(rise, 1.1-math.Sqrt(1.21-x*x))
		}
		_, err := read(Measured{Left: rise, LowPoint: low})
		if e := (*KeyError)(nil); good != (err == nil) || !good && (!errors.As(err, &e) || e.Key != "measured.low_point") {
			t.Errorf("low point at station %v: %v", low, err)
		}
	}
}

// TestTheSecondIsNamed: of two alike of which the second is wrong, the message names the second, counting from 1.
func TestTheSecondIsNamed(t *testing.T) {
	part := Part{Shape: Box, Length: 1, Height: 1, Width: 1, Mass: 1}
	good := Arc{Radius: 1, Length: 0.5}
	misread := []float64{0.1, 99, 0.01, 0, 0.01, 0.1, 0.2}
	single := Rocker{Radius: 1, Nose: 0.4, Tail: 0.4}
	for _, tt := range []struct {
		key string
		d   Design
	}{
		{"part.2.length", Design{Rocker: single, Parts: []Part{part, {Shape: Box, Mass: 1}}}},
		{"leg.2", Design{Rocker: single, Legs: []Leg{{At: 0.1}, {Which: Rear, Rake: 1.5}}}},
		{"rocker.arcs.2", Design{Rocker: Rocker{Arcs: []Arc{good, {Radius: 1}}, Nose: 0.2}}},
		{"rocker.arcs.2", Design{Rocker: Rocker{Arcs: []Arc{good, {Turn: 4}}, Nose: 0.2}}},
		{"rocker.rises.2", Design{Rocker: Rocker{Rises: misread, Spacing: 0.1, Origin: 4}}},
		{"rocker.points.2", Design{Rocker: Rocker{Points: []r2.Vec{{X: 0.2, Y: 0.1}, {X: 0.3}, {X: 0.1}, {}, {X: -0.1, Y: 0.1}}}}},
		{"measured.left.2", Design{Measured: Measured{Left: misread, Spacing: 0.1, LowPoint: 4}}},
	} {
		edge, _, err := tt.d.Profile()
		if err == nil {
			err = tt.d.Validate()
		}
		if err == nil {
			_, err = tt.d.Masses(edge)
		}
		if e := (*KeyError)(nil); !errors.As(err, &e) || e.Key != tt.key {
			t.Errorf("want an error of %s, got %v", tt.key, err)
		}
	}
}

// TestKeysLeadToTheirFields: each key of a design with three of everything leads to a field of its own, and the number
// in it counts from 1; each word of a choice sets what is called by it.
func TestKeysLeadToTheirFields(t *testing.T) {
	var d Design
	for _, l := range lists {
		l.Make(&d, 3)
	}
	seen := map[*float64]string{}
	for _, key := range d.Keys() {
		m, field, err := d.Measure(key)
		if !strings.HasSuffix("."+m.Key, "."+m.Name()) || strings.Contains(m.Name(), ".") {
			t.Errorf("the last part of %s is %q", m.Key, m.Name())
		}
		if err != nil {
			t.Fatal(err)
		}
		if other, twice := seen[field]; twice && other != "sitter."+key[7:8]+".weight" { // mass is a second word for it
			t.Errorf("%s and %s are one field", key, other)
		}
		seen[field] = key
	}
	if len(d.KeysOf("sitter.N.weight")) != 3 || seen[&d.Parts[2].Density] != "part.3.density" ||
		seen[&d.Rocker.Arcs[0].Turn] != "rocker.arcs.1.turn" {
		t.Errorf("numbered %v", d.KeysOf("sitter.N.weight"))
	}
	for key, is := range map[string]func() fmt.Stringer{
		"kind":          func() fmt.Stringer { return d.Kind },
		"part.2.shape":  func() fmt.Stringer { return d.Parts[1].Shape },
		"floor.surface": func() fmt.Stringer { return d.Floor.Surface },
	} {
		choice, set, err := d.Choice(key)
		if err != nil {
			t.Fatal(err)
		}
		for _, word := range choice.Words {
			if err := set(word); err != nil || is().String() != word {
				t.Errorf("%s = %q sets %v; %v", key, word, is(), err)
			}
		}
	}
}
