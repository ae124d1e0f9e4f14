package pattern

import (
	"errors"
	"fmt"
	"math"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// near is how far a curve of a file may be from the drawing, m: what the brief of a pattern
// asks for, a seventh of the line's width.
const near = 0.05e-3

// truth returns points on the sample's outline from the circle's own formula, m.
func truth() []r2.Vec {
	var list []r2.Vec
	on := func(r, angle float64) r2.Vec { return r2.Vec{X: r * math.Sin(angle), Y: 1.0668 - r*math.Cos(angle)} }
	const n = 200
	for i := range n + 1 {
		angle := (-23 + 44*float64(i)/n) * degree
		list = append(list, on(1.0668, angle), on(1.0668-0.057, angle))
		list = append(list, on(1.0668-0.057*float64(i)/n, -23*degree), on(1.0668-0.057*float64(i)/n, 21*degree))
	}
	return list
}

// off returns the distance from a point to a chain of straight lines.
func off(p r2.Vec, chain []r2.Vec) float64 {
	least := math.Inf(1)
	for i := 1; i < len(chain); i++ {
		a, run := chain[i-1], r2.Sub(chain[i], chain[i-1])
		t := 0.0
		if n := r2.Norm2(run); n > 0 {
			t = min(max(r2.Dot(r2.Sub(p, a), run)/n, 0), 1)
		}
		least = min(least, r2.Norm(r2.Sub(p, r2.Add(a, r2.Scale(t, run)))))
	}
	return least
}

// commands reads an SVG path of absolute M, L, C, A and Z and returns its points, densely,
// in its own unit, and whether it is closed.
func commands(t testing.TB, d string) (chain []r2.Vec, closed bool) {
	t.Helper()
	for _, c := range "MLCAZ" {
		d = strings.ReplaceAll(d, string(c), " "+string(c)+" ")
	}
	words := strings.Fields(d)
	value := func(i int) float64 {
		x, err := strconv.ParseFloat(words[i], 64)
		if err != nil {
			t.Fatalf("path %q: %v", d, err)
		}
		return x
	}
	at := func(i int) r2.Vec { return r2.Vec{X: value(i), Y: value(i + 1)} }
	var now, start r2.Vec
	for i := 0; i < len(words); {
		switch words[i] {
		case "M":
			if closed { // what follows a closed path is the pen coming home
				return chain, true
			}
			now, start = at(i+1), at(i+1)
			chain = append(chain, now)
			i += 3
		case "L":
			now = at(i + 1)
			chain = append(chain, now)
			i += 3
		case "C":
			a, b, c := at(i+1), at(i+3), at(i+5)
			for k := 1; k <= 200; k++ {
				s := float64(k) / 200
				u := 1 - s
				chain = append(chain, r2.Add(r2.Add(r2.Scale(u*u*u, now), r2.Scale(3*u*u*s, a)), r2.Add(r2.Scale(3*u*s*s, b), r2.Scale(s*s*s, c))))
			}
			now = c
			i += 7
		case "A":
			to := at(i + 6)
			chain = append(chain, arcOf(now, to, value(i+1), words[i+4] == "1", words[i+5] == "1")...)
			now = to
			i += 8
		case "Z":
			chain, now, closed = append(chain, start), start, true
			i++
		default:
			t.Fatalf("path %q: no command %q", d, words[i])
		}
	}
	return chain, closed
}

// arcOf returns points on a circle's arc, from its ends to its centre as "Scalable Vector
// Graphics (SVG) 2", W3C, B.2.4 says, with both radii r and no rotation.
func arcOf(from, to r2.Vec, r float64, large, sweep bool) []r2.Vec {
	x, y := (from.X-to.X)/2, (from.Y-to.Y)/2 // eq. 5.1
	r = max(r, math.Hypot(x, y))             // B.2.5: a radius too small is scaled up
	root := math.Sqrt(max(0, (r*r*r*r-r*r*y*y-r*r*x*x)/(r*r*y*y+r*r*x*x)))
	if large == sweep {
		root = -root
	}
	cx, cy := root*y, -root*x // eq. 5.2
	centre := r2.Vec{X: cx + (from.X+to.X)/2, Y: cy + (from.Y+to.Y)/2}
	first := math.Atan2((y-cy)/r, (x-cx)/r) // eq. 5.5, 5.6
	turn := math.Atan2((-y-cy)/r, (-x-cx)/r) - first
	if !sweep && turn > 0 {
		turn -= 2 * math.Pi
	} else if sweep && turn < 0 {
		turn += 2 * math.Pi
	}
	var list []r2.Vec
	for k := 1; k <= 2000; k++ {
		s, c := math.Sincos(first + turn*float64(k)/2000)
		list = append(list, r2.Add(centre, r2.Vec{X: r * c, Y: r * s}))
	}
	return list
}

// tool returns what a program prints, or skips aloud where it is not installed.
func tool(t testing.TB, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		t.Skipf("NOT CHECKED: %s is not installed", name)
	}
	out, err := exec.Command(name, args...).Output()
	if err != nil {
		var exit *exec.ExitError
		if errors.As(err, &exit) {
			err = fmt.Errorf("%w: %s", err, exit.Stderr)
		}
		t.Fatalf("%s %v: %v", name, args, err)
	}
	return string(out)
}
