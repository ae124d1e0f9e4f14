package plots

import (
	"context"
	"strings"
	"testing"

	"rockerwright/sim/size"
)

// TestBars holds that the pictures of a table and of a study show each value behind its bar, the
// largest on top, and are the same each time.
func TestBars(t *testing.T) {
	d := designs()["chair"]
	table, err := size.WhatIf(d)
	if err != nil {
		t.Fatal(err)
	}
	study, err := size.Chairs(context.Background(), d, size.Block, size.StudyOptions{})
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []Picture{Effects(table), Shares(d, study)} {
		for _, f := range []Format{SVG, PDF} {
			first := drawn(t, p, f)
			if first != drawn(t, p, f) {
				t.Errorf("%s as %s: drawn twice it differs", p.Name, f)
			}
			if f != SVG {
				continue
			}
			bars := strings.Split(strings.TrimSuffix(p.Alt[strings.Index(p.Alt, ": ")+2:], "."), "; ")
			if len(bars) < 8 {
				t.Errorf("%s: %d bars", p.Name, len(bars))
			}
			for _, bar := range bars {
				value := bar[strings.LastIndex(strings.TrimSuffix(bar, " %"), " ")+1:]
				if !strings.Contains(first, ">"+value+"<") {
					t.Errorf("%s does not show %q of %q", p.Name, value, bar)
				}
			}
		}
	}
}
