package page

import (
	"encoding/json"
	"hash/fnv"
	"math"
	"slices"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/design"
	"rockerwright/plots/view"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A form is what a maker can change of a design, in groups as in the file; those that
// matter first stand in the first.
type form struct {
	Groups []formGroup `json:"groups"`
}

type formGroup struct {
	Name   string  `json:"name"`
	Title  string  `json:"title"`
	Open   bool    `json:"open"`
	Fields []field `json:"fields"`
}

// A field is one entry. A measure has a range; a choice has its words, or is any text.
type field struct {
	Key     string   `json:"key"`
	Label   string   `json:"label"`
	Unit    string   `json:"unit,omitempty"`
	Low     float64  `json:"low"`
	High    float64  `json:"high"`
	Step    float64  `json:"step,omitempty"`
	Words   []string `json:"words,omitempty"`
	Text    bool     `json:"text,omitempty"`
	Example string   `json:"example,omitempty"`

	now  value
	held bool // the file or a change says it
}

// A value is what an entry has now.
type value struct {
	Text string  `json:"text"` // as it is typed; "" where it is not given
	At   float64 `json:"at"`   // of a measure, in its unit
}

// id returns by what a form is told from another.
func (f form) id() string {
	data, err := json.Marshal(f)
	if err != nil {
		return ""
	}
	h := fnv.New64a()
	h.Write(data) // a hash takes all
	return strconv.FormatUint(h.Sum64(), 36)
}

// always are the sections that are offered where the file has none of their entries.
var always = []string{"", "rocker", "floor", "limits"}

// first are the entries that matter most, as far as a design has them.
var first = []string{
	"rocker.radius", "rocker.arcs.N.radius", "rocker.arcs.N.length", "rocker.nose", "rocker.tail",
	"seat.behind_low_point", "seat.front", "seat.rear",
	"bed.height", "back.recline", "sitter.N.age", "sitter.N.height", "sitter.N.weight", "people.youngest",
	"people.oldest", "piece.weight", "floor.surface", "floor.slope",
}

// onlyGiven are the entries that are offered only where they are given: another way to
// draw the same thing, or a list.
var onlyGiven = []string{"rocker.arcs.", "rocker.rises.", "rocker.spacing", "rocker.origin", "rocker.points.",
	"rocker.density", "part.", "leg.", "panel.", "body.", "measured.", ".ahead", ".above", ".centre.", ".inertia",
	".percentile", "sitter.N.posture"}

// never are not changed on the page; units and kind by what they are started from.
var never = []string{"kind", "units", "sitter.N.mass"}

// formOf returns the form of a design.
func formOf(f *design.File) form {
	groups := map[string][]field{}
	given := map[string]bool{}
	top := make([][]field, len(first))
	add := func(general string, made field) {
		section, _, sectioned := strings.Cut(general, ".")
		if !sectioned {
			section = ""
		}
		only := slices.ContainsFunc(onlyGiven, func(part string) bool { return strings.Contains(general, part) })
		d := &f.Design
		arcs := len(d.Rocker.Arcs) > 0 && (general == "rocker.radius" || general == "rocker.tail") ||
			d.Read() && general == "rocker.radius" // drawn in another way
		if slices.Contains(never, general) || only && !made.held || arcs || general == "rocks" && !d.Traits().Directed {
			return
		}
		given[section] = given[section] || made.held
		if place := slices.Index(first, general); place >= 0 && (made.held || section == "floor" || section == "rocker") {
			top[place] = append(top[place], made)
			return
		}
		groups[section] = append(groups[section], made)
	}
	for _, c := range piece.Choices() {
		for _, key := range f.Design.KeysOf(c.Key) {
			made := field{Key: key, Label: numbered(key, c.Label), Words: c.Words, Text: c.Words == nil}
			made.now.Text, made.held = f.Held(key)
			add(c.Key, made)
		}
	}
	for _, key := range f.Design.Keys() {
		if m, at, err := f.Design.Measure(key); err == nil {
			add(m.Key, measureField(f, key, m, *at))
		}
	}
	made := form{[]formGroup{{Name: "first", Title: "What matters most", Open: true, Fields: slices.Concat(top...)}}}
	for _, s := range append([]piece.Section{{Label: "The piece"}}, piece.Sections()...) { // what stands before all sections first
		if fields := groups[s.Name]; len(fields) > 0 && (given[s.Name] || slices.Contains(always, s.Name)) {
			made.Groups = append(made.Groups, formGroup{Name: s.Name, Title: s.Label, Fields: fields})
		}
	}
	return made
}

// numbered returns a label with the number of its key's list in front.
func numbered(key, label string) string {
	for _, word := range strings.Split(key, ".") {
		if _, err := strconv.Atoi(word); err == nil {
			return word + ": " + label
		}
	}
	return label
}

// measureField returns the field of a measure; its range reaches to where it stands.
func measureField(f *design.File, key string, m piece.Measure, at float64) field {
	units := f.Design.Units
	one := quantity.One(m.Kind, units)
	step := m.Step / one
	if units == quantity.Metric {
		switch m.Kind {
		case quantity.Length:
			step = 1
		case quantity.Mass:
			step = 0.5
		}
	}
	if step == 0 {
		step = (m.High - m.Low) / one / 100
	}
	low, high := math.Floor(m.Low/one/step)*step, math.Ceil(m.High/one/step)*step
	if at != 0 {
		low, high = min(low, math.Floor(at/one/step)*step), max(high, math.Ceil(at/one/step)*step)
	}
	made := field{
		Key: key, Label: numbered(key, m.Label), Unit: quantity.Unit(m.Kind, units), Example: exampleOf(m, units),
		Low: rounded(low), High: rounded(high), Step: rounded(step),
	}
	if made.now.Text, made.held = f.Held(key); made.held || at != 0 {
		made.now.At = rounded(at / one)
	}
	if !made.held && at != 0 { // our own, such as a limit
		made.now.Text = design.AsTyped(at, m.Kind, units)
	}
	return made
}

// exampleOf returns what a measure might be, as typed.
func exampleOf(m piece.Measure, units quantity.System) string {
	example := strings.Trim(m.Example, `"`)
	if units == quantity.Inch {
		return example
	}
	x, err := quantity.Parse(example, m.Kind, quantity.Inch)
	if err != nil {
		return ""
	}
	return quantity.Shop(x, m.Kind, units)
}

// rounded returns a number without the dust of its division.
func rounded(x float64) float64 { return math.Round(x*1e6) / 1e6 }

// values returns what the entries of a form have now, by their keys.
func (f form) values() map[string]value {
	values := map[string]value{}
	for _, g := range f.Groups {
		for _, one := range g.Fields {
			values[one.Key] = one.now
		}
	}
	return values
}

// A handle is pulled to change measures.
type handle struct {
	Name  string     `json:"name"`
	At    [2]float64 `json:"at"`
	Along [2]float64 `json:"along"`
	Pulls []pull     `json:"pulls"`
}

// A pull is by how much a measure changes, in its unit, for one unit along the handle.
type pull struct {
	Key string  `json:"key"`
	By  float64 `json:"by"`
}

// pulls returns which measures a handle changes.
func pulls(d piece.Design, h view.Handle) []pull {
	by := h.Metres / quantity.One(quantity.Length, d.Units)
	arcs := len(d.Rocker.Arcs)
	length := func(i int) string {
		name := "length"
		if d.Rocker.Arcs[i].Flat != 0 {
			name = "flat"
		}
		return piece.ArcKey(i+1, name)
	}
	turn := func(i int) bool { return d.Rocker.Arcs[i].Turn != 0 }
	switch {
	case d.Read():
		return nil // it is as it was read
	case h.Name == "low" && d.Seat.SlopeKnown():
		return []pull{{"seat.behind_low_point", by}}
	case h.Name == "low" && arcs > 0:
		return []pull{{"rocker.nose", -by}}
	case h.Name == "low":
		return []pull{{"rocker.nose", -by}, {"rocker.tail", by}}
	case h.Name == "nose" && arcs > 0 && turn(0), h.Name == "tail" && arcs > 0 && turn(arcs-1):
		return nil
	case h.Name == "nose" && arcs > 0:
		return []pull{{"rocker.nose", by}, {length(0), by}}
	case h.Name == "nose":
		return []pull{{"rocker.nose", by}}
	case arcs > 0:
		return []pull{{length(arcs - 1), by}}
	}
	return []pull{{"rocker.tail", by}}
}
