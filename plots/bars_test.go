package plots

import (
	"context"
	"strings"
	"testing"

	"rockerwright/body/person"
	"rockerwright/plots/scene"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// TestBars holds that the pictures of a table and of a study show each value behind its bar, the
// largest on top.
func TestBars(t *testing.T) {
	d := piece.Design{
		Title:  "Reading chair",
		Rocker: piece.Rocker{Radius: 1.07, Nose: 0.43, Tail: 0.61},
		Seat:   piece.Seat{Front: 0.42, Rear: 0.40, Depth: 0.46, Width: 0.51, Behind: 0.18},
		Back:   piece.Back{Recline: 0.26, Height: 0.71},
		Piece:  piece.Piece{Mass: 12},
		Sitters: []piece.Sitter{{Name: "owner", Mass: 82, Posture: person.Upright, Placed: piece.Place{Ahead: 0.17, Above: 0.23},
			AtEase: piece.Place{Ahead: 0.13, Above: 0.22}}},
	}
	table, err := size.WhatIf(d)
	if err != nil {
		t.Fatal(err)
	}
	study, err := size.Chairs(context.Background(), d, size.Block, size.StudyOptions{})
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []scene.Picture{Effects(table), Shares(d, study)} {
		svg := svgOf(t, p)
		bars := strings.Split(strings.TrimSuffix(p.Alt[strings.Index(p.Alt, ": ")+2:], "."), "; ")
		if len(bars) < 8 {
			t.Errorf("%s: %d bars", p.Name, len(bars))
		}
		for _, bar := range bars {
			value := bar[strings.LastIndex(strings.TrimSuffix(bar, " %"), " ")+1:]
			if !strings.Contains(svg, ">"+value+"<") {
				t.Errorf("%s does not show %q of %q", p.Name, value, bar)
			}
		}
	}
}
