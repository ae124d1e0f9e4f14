package page

import (
	"rockerwright/plots"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

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
func pulls(d piece.Design, h plots.Handle) []pull {
	one, err := quantity.FromNumber(1, quantity.Length, d.Units)
	if err != nil {
		return nil
	}
	by := h.Metres / one
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
