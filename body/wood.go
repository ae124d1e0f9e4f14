package body

import (
	_ "embed" // for wood_fpl.csv
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
	"sync"
)

// Wood is one row of the table of woods: the means of small, clear, straight-grained
// specimens at 12 % moisture. A board may differ: the spread of the specific gravity
// is about 10 %, and an imported wood has 5 % more in doubt. The moduli are no design
// strengths.
type Wood struct {
	Name            string  // as the table has it, "Ash, white"
	Latin           string  // of the tree
	Origin          string  // "US" or "imported"
	SpecificGravity float64 // ovendry weight over that of as much water as its volume at 12 %
	Density         float64 // at 12 %, with its water, to the nearest whole kg/m³
	ElasticModulus  float64 // in bending, shear not taken out, Pa
	RuptureModulus  float64 // Pa
	Source          string  // tables of the Wood Handbook; how the specific gravity was found, if not read there
	Confidence      string  // "verified-2src" or "verified-1src": how many copies of the source agree
}

//go:embed wood_fpl.csv
var woodTable string

// woods returns every wood of the table, in its order.
//
// Source: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010) and
// FPL-GTR-282 (2021), chapter 5; the head of wood_fpl.csv says what was checked.
var woods = sync.OnceValue(func() []Wood { return readWoods(woodTable) })

// woodColumns are the columns of the table, in the order in which readWoods takes them.
const woodColumns = "species,latin,origin,specific_gravity_12,sg_basis,density_kg_m3,moe_gpa,mor_mpa,source_table,confidence,note"

// readWoods reads the table. It panics on a table that is not as it should be, for
// the table is part of the program.
func readWoods(table string) []Wood {
	r := csv.NewReader(strings.NewReader(table))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		panic("body: wood_fpl.csv: " + err.Error())
	}
	if len(rows) == 0 || strings.Join(rows[0], ",") != woodColumns {
		panic("body: wood_fpl.csv: its columns are not " + woodColumns)
	}
	list := make([]Wood, 0, len(rows)-1)
	for _, row := range rows[1:] {
		number := func(column int, exponent string) float64 {
			// the exponent is read with the number, so that 10.1 GPa has no second rounding
			v, err := strconv.ParseFloat(row[column]+exponent, 64)
			if err != nil {
				panic(fmt.Sprintf("body: wood_fpl.csv: %s: %v", row[0], err))
			}
			return v
		}
		w := Wood{
			Name:            row[0],
			Latin:           row[1],
			Origin:          row[2],
			SpecificGravity: number(3, ""),
			Density:         number(5, ""),
			ElasticModulus:  number(6, "e9"),
			RuptureModulus:  number(7, "e6"),
			Source:          row[8],
			Confidence:      row[9],
		}
		if basis := row[4]; basis != "table" {
			w.Source += "; specific gravity " + basis
		}
		list = append(list, w)
	}
	return list
}
