package person

import (
	_ "embed" // for the tables
	"encoding/csv"
	"strconv"
	"strings"
)

// The tables, with their sources and what was checked of them in their heads.
var (
	//go:embed segments_deleva1996.csv
	deLevaTable string
	//go:embed sitting_ansur2.csv
	ansurTable string
	//go:embed children_cdc.csv
	cdcTable string
	//go:embed segments_children_jensen.csv
	jensenTable string
	//go:embed children_dummies_nhtsa.csv
	dummyTable string
	//go:embed seated_umtri.csv
	umtriTable string
)

// A row is one line of a table, by the names of its columns.
type row map[string]string

// number returns a column as a number times scale. It panics on a table that is not as
// it should be, for the table is part of the program.
func (r row) number(column string, scale float64) float64 {
	x, err := strconv.ParseFloat(r[column], 64)
	if err != nil {
		panic("person: table: " + column + ": " + err.Error())
	}
	return x * scale
}

// rows reads a table.
func rows(table string) []row {
	r := csv.NewReader(strings.NewReader(table))
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil || len(lines) == 0 {
		panic("person: table: no rows, or " + err.Error())
	}
	list := make([]row, 0, len(lines)-1)
	for _, line := range lines[1:] {
		one := make(row, len(line))
		for i, column := range lines[0] {
			one[column] = line[i]
		}
		list = append(list, one)
	}
	return list
}
