package pattern

import (
	"fmt"
	"strings"
)

// A Paper is what a PDF is printed on. A roll has no height: it is as long as it must be.
type Paper struct {
	Name          string
	Width, Height float64 // m
}

// papers are those with names. ISO 216 for the A sizes; ANSI/ASME Y14.1 sizes A and B for
// letter and tabloid; rolls as they are sold (common practice).
var papers = []Paper{
	{"letter", 8.5 * inch, 11 * inch},
	{"A4", 0.210, 0.297},
	{"tabloid", 11 * inch, 17 * inch},
	{"A3", 0.297, 0.420},
	{"roll 24 in", 24 * inch, 0},
	{"roll 36 in", 36 * inch, 0},
	{"roll 610 mm", 0.610, 0},
	{"roll 914 mm", 0.914, 0},
}

const inch = 0.0254 // m, exact

// Papers returns the papers with names.
func Papers() []Paper { return append([]Paper(nil), papers...) }

// PaperNamed returns the paper of a name, capital letters or not. The error lists the names.
func PaperNamed(name string) (Paper, error) {
	var names []string
	for _, p := range papers {
		if strings.EqualFold(strings.Join(strings.Fields(name), " "), p.Name) {
			return p, nil
		}
		names = append(names, p.Name)
	}
	if len(name) > 40 {
		name = name[:40] + "…"
	}
	return Paper{}, &Error{fmt.Sprintf("no paper is called %q; there are %s", strings.ToValidUTF8(name, "?"), strings.Join(names, ", "))}
}

// isRoll reports whether the paper is as long as it must be.
func (p Paper) isRoll() bool { return p.Height == 0 }

// check returns an error for paper too small to print a pattern on.
func (p Paper) check() error {
	const least = 0.14 // m: the test squares and their margins
	if !(p.Width >= least && p.Width <= largest) || !p.isRoll() && !(p.Height >= 0.2 && p.Height <= largest) {
		return &Error{fmt.Sprintf("paper %q is %g by %g m; a sheet is at least 0.14 by 0.2 m, a roll at least 0.14 m wide", p.Name, p.Width, p.Height)}
	}
	return nil
}
