package main

import (
	"fmt"
	"regexp"
	"strings"
)

// fit compares how the piece fits its owner.
func (r *pageReader) fit(lines [][]printedCell) {
	unit, within := r.length()
	n := 0
	for _, cells := range lines {
		if len(cells) != 5 || cells[1].text == "have" {
			continue
		}
		if n >= len(r.answer.Fit) {
			r.t.Fatalf("%s: more lines of fit are printed than there are", r.name)
		}
		f := r.answer.Fit[n]
		n++
		if begins, _ := strings.CutSuffix(cells[0].text, "…"); !strings.HasPrefix(f.What, begins) {
			r.t.Errorf("%s: %q is printed for %q", r.name, cells[0].text, f.What)
		}
		r.holds("fit", f.What+", have", cells[1].text, &f.Have, unit, within)
		low, high, both := strings.Cut(cells[2].text, " to ")
		switch {
		case both:
			r.holds("fit", f.What+", at least", low, f.AtLeast, unit, within)
			r.holds("fit", f.What+", at most", high, f.AtMost, unit, within)
		case strings.HasSuffix(low, " or more"):
			r.holds("fit", f.What+", at least", strings.TrimSuffix(low, " or more"), f.AtLeast, unit, within)
		default:
			r.holds("fit", f.What+", at most", strings.TrimSuffix(low, " or less"), f.AtMost, unit, within)
		}
		change := &f.Change
		if f.Change == 0 {
			change = nil
		}
		r.holds("fit", f.What+", change", cells[3].text, change, unit, within)
	}
	if n != len(r.answer.Fit) && n > 0 {
		r.t.Errorf("%s: %d of %d lines of fit are printed", r.name, n, len(r.answer.Fit))
	}
}

// people compares the sizes of the first person.
func (r *pageReader) people(lines [][]printedCell) {
	size := regexp.MustCompile(`^(.*?) \(.*\)$`)
	feet := regexp.MustCompile(`^(\d+) ft(?: (.*) in)?$`)
	for _, cells := range lines {
		if len(cells) != 3 {
			continue
		}
		m := size.FindStringSubmatch(cells[0].text)
		if m == nil {
			r.t.Errorf("%s: a size is %q", r.name, cells[0].text)
			continue
		}
		for _, s := range r.answer.People[0].Sizes {
			if s.Name != m[1] {
				continue
			}
			text, unit, within := cells[1].text, 0.0254, 1./32
			if r.metric {
				unit, within = 1e-3, 0.5
			}
			if f := feet.FindStringSubmatch(text); f != nil { // stature, to the inch
				text, within = fmt.Sprint(12*amount(f[1])+amount(f[2])), 0.5
			}
			want := s.M
			if s.KG != nil {
				want, unit, within = s.KG, 0.45359237, 0.5
				if r.metric {
					unit = 1
				}
			}
			r.holds("people", s.Name, text, want, unit, within)
		}
	}
}
