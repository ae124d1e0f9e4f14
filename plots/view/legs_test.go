package view

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// standing returns chairs and settees of many heights, with one and two people by sizes whose feet stand.
func standing(t *testing.T) map[string]check.Report {
	t.Helper()
	list := map[string]check.Report{}
	for _, high := range []float64{-0.12, -0.05, 0, 0.01, 0.03, 0.12} {
		for _, kind := range []piece.Kind{piece.Chair, piece.Settee} {
			d := designs()["chair"]
			d.Kind, d.Seat.Behind = kind, 9*inch
			d.Seat.Front, d.Seat.Rear = d.Seat.Front+high, d.Seat.Rear+high
			d.Sitters = []piece.Sitter{
				{Name: "owner", Mass: 82, Person: person.Given{Sizes: person.Measures{person.Stature: 1.78}}}}
			if kind == piece.Settee {
				d.Sitters = append(d.Sitters, piece.Sitter{Name: "companion", Mass: 58,
					Person: person.Given{Sizes: person.Measures{person.Stature: 1.58}}})
			}
			r, err := check.Check(d)
			if err != nil {
				t.Fatal(err)
			}
			list[fmt.Sprintf("%v, %+.2f m", kind, high)] = r
		}
	}
	return list
}

// placesIn returns the ends of the lines of a group of an SVG, y up from its foot, mm.
func placesIn(t *testing.T, svg, name string) (lines [][]r2.Vec) {
	t.Helper()
	high := numberIn(t, svg, `viewBox="0 0 \S+ (\S+)"`)
	group := regexp.MustCompile(`(?s)<g id="` + name + `"[^>]*>(.*?)</g>`).FindStringSubmatch(svg)
	if group == nil {
		t.Fatalf("there is no group %s", name)
	}
	for _, path := range regexp.MustCompile(`d="([^"]*)"`).FindAllStringSubmatch(group[1], -1) {
		var line []r2.Vec
		for _, place := range regexp.MustCompile(`[ML](\S+) ([^MLZ ]+)`).FindAllStringSubmatch(path[1], -1) {
			x, errX := strconv.ParseFloat(place[1], 64)
			y, errY := strconv.ParseFloat(place[2], 64)
			if errX != nil || errY != nil {
				t.Fatal(errX, errY)
			}
			line = append(line, r2.Vec{X: x, Y: high - y})
		}
		lines = append(lines, line)
	}
	return lines
}

// numberIn returns the number that an expression finds.
func numberIn(t *testing.T, svg, expression string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(regexp.MustCompile(expression).FindStringSubmatch(svg)[1], 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// A drawnLeg is a leg as an SVG draws it, of which the floor is level, mm.
type drawnLeg struct {
	leg
	hipKnee r2.Vec  // the end of the thigh
	floor   float64 // its height
	scale   float64 // mm for a metre
}

// legsIn returns the legs of a ghost of so many people.
func legsIn(t *testing.T, svg, ghost string, people int) (list []drawnLeg) {
	t.Helper()
	rule := placesIn(t, svg, "scale")[0]
	thighs := placesIn(t, svg, "person-"+ghost)
	for i := range people {
		whose := ghost
		if i > 0 {
			whose = fmt.Sprintf("%s-%d", ghost, i+1)
		}
		shank, foot := placesIn(t, svg, "shank-"+whose)[0], placesIn(t, svg, "foot-"+whose)[0]
		list = append(list, drawnLeg{leg{shank[0], shank[1], foot[0], foot[2]}, thighs[2*i][2],
			placesIn(t, svg, "floor")[0][0].Y, (rule[3].X - rule[2].X) / (12 * inch)})
		if r2.Norm(r2.Sub(foot[1], shank[1])) > 0 {
			t.Errorf("%s: shank and foot have no ankle in common", whose)
		}
	}
	return list
}

// TestFeetStand measures the feet in the pictures back: at the rest they stand as is said of them, and hang as far over
// the floor as the misfit says; the shank hangs from the end of the thigh.
func TestFeetStand(t *testing.T) {
	const near = 0.021 // mm: two places, each to a hundredth
	seen := map[body.Stage]int{}
	for name, r := range standing(t) {
		l := r.Seated()
		for picture, p := range map[string]scene.Picture{"side view": SideView(r), "live": LiveView(Watched{Report: r, Load: l}).Picture} {
			svg := drawn(t, p, scene.SVG)
			legs := legsIn(t, svg, "seated", len(l.Legs))
			for i, at := range legs {
				stage := l.Feet[i].Stage
				seen[stage]++
				heel, toe := at.heel.Y-at.floor, at.toe.Y-at.floor
				heelDown, toeDown := math.Abs(heel) < near, math.Abs(toe) < near
				if min(heel, toe) < -near || heelDown != (stage < body.HeelLifted) || toeDown != (stage < body.FeetOff) {
					t.Errorf("%s, %s: feet %v are drawn with heel and toe %.2f and %.2f mm over the floor", name, picture, stage, heel, toe)
				}
				if r2.Norm(r2.Sub(at.knee, at.hipKnee)) > 0 {
					t.Errorf("%s, %s: the shank hangs from %v, the thigh ends in %v", name, picture, at.knee, at.hipKnee)
				}
				by := r.Edge.Height(l.Legs[i].Knee, l.Balance.Rest.Tilt) - l.Legs[i].ToeHeight() // what the misfit says of the first
				if stage == body.FeetOff && math.Abs(toe-by*at.scale) > 2*near {
					t.Errorf("%s, %s: the toe is drawn %.2f mm over the floor, said are %.2f", name, picture, toe, by*at.scale)
				}
			}
			for _, m := range r.Misfits {
				toe := legs[0].toe.Y - legs[0].floor
				if m.Trouble == check.FeetHang && m.Name == "owner" && math.Abs(toe-m.By*legs[0].scale) > 2*near && r.Design.Kind == piece.Chair {
					t.Errorf("%s, %s: the toe is drawn %.2f mm over the floor, the misfit is %v m", name, picture, toe, m.By)
				}
			}
		}
	}
	if len(seen) != 4 {
		t.Errorf("feet did no more than %v", seen)
	}
}

// turned moves a place of the paper, y up, as the script does: moved by (x, y), y down, having been turned clockwise.
func turned(q, about r2.Vec, x, y, degrees float64) r2.Vec {
	return r2.Add(r2.Rotate(q, -degrees*math.Pi/180, about), r2.Vec{X: x, Y: -y})
}

// TestFeetMove moves the legs as the script does, at each sample of a motion and at each tilt that a piece is leaned to:
// they are where the law has them, no foot is in the floor, and the shank stays at the thigh.
func TestFeetMove(t *testing.T) {
	for name, r := range standing(t) {
		l := r.Seated()
		motion, err := trial.Follow(r, trial.RockOptions{Load: l.Name, Duration: 12, From: 0.3})
		if err != nil {
			t.Fatal(err)
		}
		for picture, p := range map[string]scene.Picture{
			"rocking": RockingView(motion), "narrow": NarrowRockingView(motion),
			"leaned": LiveView(Watched{Report: r, Load: l, Motion: &motion}).Picture,
			"moving": LiveView(Watched{Report: r, Load: l, Motion: &motion, Moving: true}).Picture,
		} {
			svg := drawn(t, p, scene.SVG)
			high := numberIn(t, svg, `viewBox="0 0 \S+ (\S+)"`)
			if n := strings.Count(svg, "data-about="); n != 2*len(l.Legs) {
				t.Errorf("%s, %s: %d groups turn about an ankle", name, picture, n)
			}
			_, rows := samplesIn(t, svg)
			for n, at := range legsIn(t, svg, "seated", len(l.Legs)) {
				mm := at.scale / 1000
				for i, row := range rows {
					x, y, shank, foot := row[7+4*n], row[8+4*n], row[9+4*n], row[10+4*n]
					now := leg{turned(at.knee, at.ankle, x, y, shank), turned(at.ankle, at.ankle, x, y, 0),
						turned(at.heel, at.ankle, x, y, foot), turned(at.toe, at.ankle, x, y, foot)}
					if low := min(now.heel.Y, now.toe.Y) - at.floor; low < -mm {
						t.Errorf("%s, %s, sample %d: a foot is drawn %.2f mm in the floor", name, picture, i, -low/mm)
					}
					thigh := turned(at.hipKnee, r2.Vec{Y: high}, row[0], row[1], row[2])
					if off := r2.Norm(r2.Sub(thigh, now.knee)); off > mm {
						t.Errorf("%s, %s, sample %d: the shank is %.2f mm off the knee", name, picture, i, off/mm)
					}
					tilt := l.Balance.Rest.Tilt - row[2]*math.Pi/180
					law := poseAt(r, tilt).legs(l)[n]
					off := max(math.Abs(now.heel.Y-at.floor-law.heel.Y*at.scale), math.Abs(now.toe.Y-at.floor-law.toe.Y*at.scale),
						math.Abs(now.toe.X-now.knee.X-(law.toe.X-law.knee.X)*at.scale))
					if off > mm {
						t.Errorf("%s, %s, sample %d: a foot is drawn %.2f mm from where it stands", name, picture, i, off/mm)
					}
				}
			}
		}
	}
}

// TestFeetOnASlope holds that soles lie on a floor that slopes too, that a leg is as long as it is, and that a child on
// the lap rides whole.
func TestFeetOnASlope(t *testing.T) {
	for name, level := range standing(t) {
		d := level.Design
		d.Floor.Slope, d.Sitters[0].Posture = 0.05, person.ChildOnLap
		r, err := check.Check(d)
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range r.Loads {
			at := poseAt(r, l.Balance.Rest.Tilt)
			for i, leg := range at.legs(&l) {
				over := func(q r2.Vec) float64 { return r2.Rotate(q, -d.Floor.Slope, r2.Vec{}).Y }
				if low := min(over(leg.heel), over(leg.toe)); low < -1e-9 || low > 1e-9 && l.Feet[i].Stage != body.FeetOff {
					t.Errorf("%s, %s: feet %v are drawn %v m over the floor", name, l.Name, l.Feet[i].Stage, low)
				}
				thigh, shank := at.place(l.Figures[i].Knee), r2.Norm(r2.Sub(leg.knee, leg.ankle))
				whole := r2.Norm(r2.Sub(l.Figures[i].Toe, l.Figures[i].Heel)) // the foot
				if foot := r2.Norm(r2.Sub(leg.toe, leg.heel)); math.Abs(foot-whole) > 1e-9 {
					t.Errorf("%s, %s: a foot is drawn %v m long, want %v", name, l.Name, foot, whole)
				}
				if r2.Norm(r2.Sub(leg.knee, thigh)) > 1e-9 || math.Abs(shank-l.Legs[i].Length) > 1e-9 {
					t.Errorf("%s, %s: a shank of %v m from %v, the knee is at %v", name, l.Name, shank, leg.knee, thigh)
				}
			}
			if l.Posture == person.ChildOnLap && len(l.Figures) != len(l.Legs)+1 {
				t.Errorf("%s, %s: %d legs of %d people", name, l.Name, len(l.Legs), len(l.Figures))
			}
		}
	}
}
