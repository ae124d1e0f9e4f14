package plots

import (
	"bytes"
	"encoding/xml"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/plots/scene"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/motion"
	"rockerwright/sim/quantity"
)

// loadOn returns a load of 60 kg on an arc of 1 m, its centre so high and so far ahead.
func loadOn(label string, ahead, height float64) Load {
	rig := sim.Rig{
		Profile: rocker.Single(1, 0.4, 0.5),
		Body:    body.Body{Mass: 60, Centre: r2.Vec{X: ahead, Y: height}, Inertia: 5},
	}
	return Load{Label: label, Rig: rig, Balance: rig.Balance()}
}

// svgOf draws a picture, which is well-formed, the same twice and without a number that is none; as PDF too.
func svgOf(t *testing.T, p scene.Picture) string {
	t.Helper()
	var first, second, page bytes.Buffer
	for _, b := range []*bytes.Buffer{&first, &second} {
		if err := p.Draw(b, scene.SVG); err != nil {
			t.Fatalf("%s: %v", p.Name, err)
		}
	}
	text := first.String()
	if text != second.String() || strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
		t.Errorf("%s: not the same twice, or not whole", p.Name)
	}
	var whole struct{ XMLName xml.Name }
	if err := xml.Unmarshal(first.Bytes(), &whole); err != nil {
		t.Errorf("%s: %v", p.Name, err)
	}
	if err := p.Draw(&page, scene.PDF); err != nil || !bytes.HasPrefix(page.Bytes(), []byte("%PDF-")) {
		t.Errorf("%s is no PDF: %v", p.Name, err)
	}
	return text
}

// linesOf returns the points of the lines of a colour, mm.
func linesOf(t *testing.T, svg string, colour scene.Colour) [][]r2.Vec {
	t.Helper()
	var lines [][]r2.Vec
	paths := regexp.MustCompile(`<path d="M([^"]*)" fill="none" stroke="` + string(colour) + `"`)
	for _, d := range paths.FindAllStringSubmatch(svg, -1) {
		var line []r2.Vec
		for _, pair := range strings.Split(d[1], "L") {
			x, y, _ := strings.Cut(pair, " ")
			a, errX := strconv.ParseFloat(x, 64)
			b, errY := strconv.ParseFloat(y, 64)
			if errX != nil || errY != nil {
				t.Fatalf("%q is no point", pair)
			}
			line = append(line, r2.Vec{X: a, Y: b})
		}
		lines = append(lines, line)
	}
	return lines
}

// TestArmIsDrawn reads the curve of a single arc back: while it rolls on the arc its arm is (R − h) sin of the
// tilt from rest, so that the drawn heights are as those sines.
func TestArmIsDrawn(t *testing.T) {
	load := loadOn("straight", 0, 0.6)
	svg := svgOf(t, Chart{Units: quantity.Metric}.RightingArm(load))
	var curve []r2.Vec
	for _, line := range linesOf(t, svg, scene.Soft) {
		if len(line) > len(curve) {
			curve = line
		}
	}
	first, last := load.degrees()
	if len(curve) != last-first+1 {
		t.Fatalf("the curve has %d points, want one at each degree from %d to %d", len(curve), first, last)
	}
	at := func(degree int) r2.Vec { return curve[degree-first] }
	unit := (at(20).Y - at(0).Y) / math.Sin(20*quantity.Deg)
	for n := -22; n <= 22; n++ { // 0.4 m of an arc of 1 m are 22.9°
		want := at(0).Y + unit*math.Sin(float64(n)*quantity.Deg)
		if math.Abs(at(n).Y-want) > 0.01 || math.Abs(at(n).X-at(0).X-float64(n)/20*(at(20).X-at(0).X)) > 0.01 {
			t.Errorf("at %d degrees the curve stands at %v, want %.3f mm down", n, at(n), want)
		}
	}
	if unit >= 0 {
		t.Error("the arm at 20 degrees back is not drawn above that at rest")
	}
}

// TestPeriodIsDrawn: the curve has a point at each half degree far to both sides, and in the middle stands the small
// rock, 2π √((I + mh²)/(mg(R − h))).
func TestPeriodIsDrawn(t *testing.T) {
	load := loadOn("straight", 0, 0.6)
	points := load.periods()
	small := 2 * math.Pi * math.Sqrt((5+60*0.36)/(60*9.80665*0.4))
	middle := len(points) / 2
	for i, p := range points {
		if p.X == 0 {
			middle = i
		}
		if i > 0 && p.X-points[i-1].X != 0.5 {
			t.Fatalf("after %v degrees comes %v", points[i-1].X, p.X)
		}
	}
	if math.Abs(points[middle].Y-small) > 1e-12 {
		t.Errorf("the small rock is %v s, want %v", points[middle].Y, small)
	}
	if !(points[0].X < -10 && points[len(points)-1].X > 10) {
		t.Errorf("drawn from %v to %v degrees", points[0].X, points[len(points)-1].X)
	}
}

// TestOddLoads: what does not stand, stands everywhere, or has no tip is drawn and told.
func TestOddLoads(t *testing.T) {
	loads := []Load{loadOn("fallen", 0, 1.3), loadOn("neutral", 0, 1), loadOn("ahead", 0.1, 0.5)}
	ring := loadOn("ring", 0, 0.5)
	ring.Rig.Profile = rocker.Single(1, 3, 3)
	ring.Balance = ring.Rig.Balance()
	loads = append(loads, ring)
	c := Chart{Title: "Odd", Marks: []float64{0.1}, Back: "to the left", Behind: "left", Ahead: "right"}
	arm := c.RightingArm(loads...)
	for _, want := range []string{"fallen: no rest", "neutral: neutral", "ahead rests at", "right"} {
		if !strings.Contains(arm.Alt, want) {
			t.Errorf("the righting arms tell %q, not %q", arm.Alt, want)
		}
	}
	svg := svgOf(t, arm)
	for _, want := range []string{">fallen<", ">ring<", "+ to the left (dot", "Odd: what brings it back",
		"righting arm, in"} {
		if !strings.Contains(svg, want) {
			t.Errorf("the righting arms lack %q", want)
		}
	}
	times := c.Period(loads...)
	svg = svgOf(t, times)
	if !strings.Contains(times.Alt, "fallen has no time of its own") || strings.Contains(svg, ">fallen<") {
		t.Errorf("the times tell %q", times.Alt)
	}
	svgOf(t, Chart{}.RightingArm())
	svgOf(t, Chart{}.Period())
}

// TestTraces: a motion is drawn in four pictures, its knocks in rings and its end in a dot.
func TestTraces(t *testing.T) {
	edge, err := rocker.Chain(0.4, rocker.Arc(1, 0.3), rocker.Flat(0.2), rocker.Arc(1, 0.4))
	if err != nil {
		t.Fatal(err)
	}
	load := loadOn("flat", 0, 0.5)
	load.Rig.Profile = edge
	load.Balance = load.Rig.Balance()
	start := motion.Start{Tilt: load.Balance.Rest.Tilt + 0.15}
	trace := motion.Run(load.Rig, load.Balance, start, motion.Options{Duration: 10, Keep: true})
	knocks := 0
	for _, e := range trace.Events {
		if e.Kind == motion.Knock {
			knocks++
		}
	}
	pictures := Chart{}.Traces(load, trace)
	if len(pictures) != 4 || knocks == 0 {
		t.Fatalf("%d pictures, %d knocks", len(pictures), knocks)
	}
	for i, p := range pictures {
		svg := svgOf(t, p)
		if rings := strings.Count(svg, "<circle"); i == 0 && rings != knocks+1 || i > 0 && rings != 0 {
			t.Errorf("%s: %d rings, want one for each of %d knocks and one for the end", p.Name, rings, knocks)
		}
		if !strings.Contains(svg, ">flat: ") {
			t.Errorf("%s does not tell whose it is", p.Name)
		}
	}
}
