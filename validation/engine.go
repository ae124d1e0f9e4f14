package validation

import (
	_ "embed" // for the record of the engine
	"encoding/csv"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// engineTable is what a general-purpose rigid-body engine found, printed by node/rock.mjs;
// its first line names the engine, its version and the day.
//
//go:embed engine.csv
var engineTable string

// EngineRow is one rock of one chair of one arc in the engine.
type EngineRow struct {
	Chair                                   string
	Radius, Height, Mass, Inertia, Released float64 // m, m, kg, kg·m², rad
	Period                                  float64 // s
}

// EngineRows reads what the engine printed. The error says which line is not as it should be.
func EngineRows(table string) (rows []EngineRow, version string, err error) {
	version, _, _ = strings.Cut(strings.TrimPrefix(table, "# "), "\n")
	r := csv.NewReader(strings.NewReader(table))
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil || len(lines) < 2 {
		return nil, version, fmt.Errorf("validation: the engine's table: %d lines, %w", len(lines), err)
	}
	for _, line := range lines[1:] {
		var x [6]float64
		for i := range x {
			if x[i], err = strconv.ParseFloat(line[i+1], 64); err != nil {
				return nil, version, fmt.Errorf("validation: the engine's table: %q: %w", line, err)
			}
		}
		rows = append(rows, EngineRow{line[0], x[0], x[1], x[2], x[3], x[4] * math.Pi / 180, x[5]})
	}
	return rows, version, nil
}

// engines are the rocks of the record against ours.
func engines(f Fault) []Case {
	rows, version, err := EngineRows(engineTable)
	if err != nil {
		panic(err) // the record is part of the program
	}
	near := relative(5e-4, "the engine's small steps, and how far its shapes sink in")
	list := make([]row, len(rows))
	for i, r := range rows {
		list[i] = row{fmt.Sprintf("%s, from %.0f degrees", r.Chair, r.Released*180/math.Pi),
			"The period that a general-purpose rigid-body engine finds, which knows nothing of rockers.",
			version + "; harness in validation/node", "s", r.Period, near,
			func() (float64, error) { return large(f.oneArc(r.Radius, 1, r.Mass, r.Height, r.Inertia), r.Released) }}
	}
	return group("a stranger's engine", list...)
}
