package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
	"gonum.org/v1/gonum/spatial/r2"
)

// A typedFile is a design file read by its library alone, its numbers as they stand there.
type typedFile struct {
	text   string
	values map[string]any
}

func typedIn(t *testing.T, text string) typedFile {
	t.Helper()
	f := typedFile{text: text}
	if _, err := toml.Decode(text, &f.values); err != nil {
		t.Fatal(err)
	}
	return f
}

// amount reads "16 1/2", "-3/8", "430" and "41.375", with a unit behind it or without: as far as it is a number.
func amount(text string) (sum float64) {
	text, below := strings.CutPrefix(text, "-")
	for _, word := range strings.Fields(text) {
		over, under, parted := strings.Cut(word, "/")
		a, err := strconv.ParseFloat(over, 64)
		if err != nil {
			break
		}
		if b, err := strconv.ParseFloat(under, 64); parted && err == nil {
			a /= b
		}
		sum += a
	}
	if below {
		return -sum
	}
	return sum
}

func amountOf(value any) float64 { return amount(fmt.Sprint(value)) }

// metric reports whether plain numbers are millimetres.
func (f typedFile) metric() bool { return f.values["units"] == "metric" }

// unit is that of plain lengths, m.
func (f typedFile) unit() float64 {
	if f.metric() {
		return 1e-3
	}
	return 0.0254
}

// section returns a section of a name, empty where there is none; of a list the entry counted from 0.
func (f typedFile) section(name string, n int) map[string]any {
	switch s := f.values[name].(type) {
	case map[string]any:
		return s
	case []map[string]any:
		if n < len(s) {
			return s[n]
		}
	}
	return nil
}

// plain returns an entry in the unit of the file, 0 where it is not there.
func (f typedFile) plain(section, key string) float64 {
	if value, there := f.section(section, 0)[key]; there {
		return amountOf(value)
	}
	return 0
}

// arcs returns radius and length of the arcs from the nose, and nose and tail, in the unit of the file.
func (f typedFile) arcs() (arcs [][2]float64, nose, tail float64) {
	nose, tail = f.plain("rocker", "nose"), f.plain("rocker", "tail")
	list, _ := f.section("rocker", 0)["arcs"].([]any)
	if len(list) == 0 {
		return [][2]float64{{f.plain("rocker", "radius"), nose + tail}}, nose, tail
	}
	tail = -nose
	for _, each := range list {
		arc := each.(map[string]any)
		arcs = append(arcs, [2]float64{amountOf(arc["radius"]), amountOf(arc["length"])})
		tail += amountOf(arc["length"])
	}
	return arcs, nose, tail
}

// hand returns the file as plane geometry. Not typed are, as the help says: a seat of 1 3/4 in, legs of 40 mm square
// that stand plumb under the front edge and where back and seat meet.
func (f typedFile) hand() handPiece {
	m := func(section, key string) float64 { return f.plain(section, key) * f.unit() }
	h := handPiece{depth: m("rocker", "depth"), straight: f.section("rocker", 0)["top"] == "straight",
		front: m("seat", "front"), rear: m("seat", "rear"), seat: m("seat", "depth"), behind: m("seat", "behind_low_point"),
		slide: m("seat", "slide"), frontCut: m("seat", "front_cut"), rearCut: m("seat", "rear_cut"), thick: m("seat", "thickness"),
		weights: [2]float64{f.plain("part", "weight"), f.plain("sitter", "weight")}, hasSeat: f.section("seat", 0) != nil,
		seated: f.section("sitter", 0) != nil, legsDrawn: f.section("leg", 0) != nil}
	arcs, nose, tail := f.arcs()
	for _, arc := range arcs {
		h.arcs = append(h.arcs, [2]float64{arc[0] * f.unit(), arc[1] * f.unit()})
	}
	h.nose, h.tail = nose*f.unit(), tail*f.unit()
	h.noseDeep, h.tailDeep = h.depth, h.depth
	if f.section("rocker", 0)["top"] == "taper" {
		h.noseDeep, h.tailDeep = m("rocker", "nose_depth"), m("rocker", "tail_depth")
	}
	if h.thick == 0 {
		h.thick = 1.75 * 0.0254
	}
	if at, ok := f.section("part", 0)["at"].([]any); ok {
		h.empty = r2.Scale(f.unit(), r2.Vec{X: amountOf(at[0]), Y: amountOf(at[1])})
	}
	h.sits = r2.Add(h.meet(), r2.Vec{X: m("sitter", "ahead"), Y: m("sitter", "above")})
	run := math.Sqrt(h.seat*h.seat - (h.front-h.rear)*(h.front-h.rear))
	h.legs = [2]handLeg{{at: run - h.behind, side: 0.040}, {at: -h.behind, side: 0.040}}
	for i := range h.legs {
		if leg := f.section("leg", i); leg != nil {
			get := func(key string) float64 {
				if value, there := leg[key]; there {
					return amountOf(value)
				}
				return 0
			}
			h.legs[i] = handLeg{get("at") * f.unit(), get("rake") * math.Pi / 180, get("splay") * math.Pi / 180, get("size") * f.unit()}
		}
	}
	return h
}

// told writes what a design file says of the facts, as papers do.
func (f typedFile) told() string {
	arcs, nose, tail := f.arcs()
	fall := math.Asin((f.plain("seat", "front") - f.plain("seat", "rear")) / f.plain("seat", "depth"))
	text := fmt.Sprintf("title %v. radius %.4f, nose %.4f, tail %.4f.", f.values["title"], arcs[0][0], nose, tail)
	if !math.IsNaN(fall) {
		text += fmt.Sprintf(" drawn with a fall of %.4f.", fall*180/math.Pi)
	}
	return text
}
