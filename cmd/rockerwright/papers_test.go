package main

import (
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// A fact is one thing that papers tell: its value by the file as typed or by hand, NaN where the piece has none, as
// without a seat.
type fact struct {
	name  string
	angle bool // rad, + back; else a length, m
	value func(h handPiece) float64
}

var facts = []fact{
	{"radius", false, func(h handPiece) float64 { return h.arcs[0][0] }}, // the first from the nose
	{"radius at rest", false, func(h handPiece) float64 { return h.radiusAt(h.touches(h.seated)) }},
	{"nose", false, func(h handPiece) float64 { return h.nose }},
	{"tail", false, func(h handPiece) float64 { return h.tail }},
	{"floor edge", false, func(h handPiece) float64 { return h.nose + h.tail }},
	{"nose tip", false, func(h handPiece) float64 { p, _ := h.edge(h.nose); return p.Y }},
	{"tail tip", false, func(h handPiece) float64 { p, _ := h.edge(-h.tail); return p.Y }},
	{"tip to tip", false, func(h handPiece) float64 {
		a, _ := h.edge(h.nose)
		b, _ := h.edge(-h.tail)
		return math.Hypot(a.X-b.X, a.Y-b.Y)
	}},
	{"low point", false, func(h handPiece) float64 { p, _ := h.edge(-h.tail); return -p.X }}, // ahead of the square corner
	{"falls as drawn", true, handPiece.fall},
	{"falls put together", true, handPiece.stands},
	{"falls empty", true, func(h handPiece) float64 { return h.rests(false) }},
	{"falls seated", true, func(h handPiece) float64 { return h.rests(true) }},
	{"front leg", false, func(h handPiece) float64 { return h.leg(h.legs[0]) }},
	{"rear leg", false, func(h handPiece) float64 { return h.leg(h.legs[1]) }},
}

// TestPapersAgree: of one design all papers and answers tell one title, one curve, one fall of the seat and one length
// of each leg, as typed or as worked out by hand: five kinds, in inches and in millimetres, of odd sizes, slid and cut.
func TestPapersAgree(t *testing.T) {
	if testing.Short() {
		t.Skip("ten designs are laid out and reported only without -short")
	}
	made := makeAll(t)
	for _, paper := range allPapers {
		t.Run(paper.name, func(t *testing.T) {
			for _, p := range made {
				text := ""
				if !paper.silent(p, "*") {
					text = paper.read(t, p)
				}
				paper.agrees(t, p, text)
			}
		})
	}
}

// silent reports whether a paper does not say a fact of a piece; "*" is all of it.
func (paper paper) silent(p *madePiece, fact string) bool {
	return slices.ContainsFunc(silences, func(s silence) bool {
		return (s.paper == paper.name || s.paper == "*") && (s.fact == "*" || s.fact == fact || s.fact == paper.says[fact]) && s.of(p)
	})
}

// agrees holds a paper of a piece to each fact that it says.
func (paper paper) agrees(t *testing.T, p *madePiece, text string) {
	t.Helper()
	if strings.Contains(text, otherTitle) {
		t.Errorf("%s: it names %q, which was changed", p.name, otherTitle)
	}
	if says := p.filled(paper.says["title"]); !paper.silent(p, "title") && !regexp.MustCompile(says).MatchString(text) {
		t.Errorf("%s: it does not name %q: %.200s", p.name, p.values["title"], text)
	}
	for name, words := range paper.says {
		if name == "title" || words == "" {
			continue
		}
		i := slices.IndexFunc(facts, func(f fact) bool { return f.name == name })
		if i < 0 {
			t.Fatalf("there is no fact %q", name)
		}
		unit, within := p.step(facts[i].angle, paper.fine)
		want, told := facts[i].value(p.hand)/unit, numbersIn(text, p.filled(words))
		switch none := math.IsNaN(want) || paper.silent(p, name); {
		case none && len(told) > 0:
			t.Errorf("%s: it says %q of %s, where there is nothing to say", p.name, told, name)
		case !none && len(told) == 0:
			t.Errorf("%s: it does not say %s by %q: %.2000s", p.name, name, words, text)
		}
		for _, number := range told {
			if math.Abs(amountTold(number)-want) > within {
				t.Errorf("%s: it says that %s is %s, want %.4f", p.name, name, number, want)
			}
		}
	}
}

// step returns the unit of a number that papers tell, SI, and within how many of it they must agree: half of a
// sixteenth of an inch, of a millimetre, of half a degree, to which a shop's numbers are rounded, and a hair for the sums
// by hand. What is measured on a drawing is drawn to a thousandth of a millimetre, and a picture to a hundredth, on
// which a seat is 20 long: a quarter of a millimetre, a tenth of a degree.
func (f typedFile) step(angle, fine bool) (unit, within float64) {
	const hair = 1e-4
	switch {
	case angle && fine:
		return math.Pi / 180, 0.1
	case angle:
		return math.Pi / 180, 0.25 + hair
	case fine:
		return f.unit(), 0.25e-3 / f.unit()
	case f.metric():
		return f.unit(), 0.5 + hair
	}
	return f.unit(), 1.0/32 + hair
}

// a number as papers write it, and which way a seat falls.
const told = `-?(?:\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?)(?:°| degrees?)?(?: fwd| forward)?`

// amountTold reads a number that a paper tells, forward below zero.
func amountTold(text string) float64 {
	x := amount(strings.ReplaceAll(text, "°", " "))
	if strings.HasSuffix(text, "fwd") || strings.HasSuffix(text, "forward") {
		return -x
	}
	return x
}

// numbersIn returns the numbers, each once, of all places of a text where words stand.
func numbersIn(text, words string) (list []string) {
	for _, m := range regexp.MustCompile(words).FindAllStringSubmatch(text, -1) {
		for _, number := range m[1:] {
			if number != "" && !slices.Contains(list, number) { // "": of the other way to say it
				list = append(list, number)
			}
		}
	}
	return list
}
