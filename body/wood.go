package body

import (
	_ "embed" // for wood_fpl.csv
	"encoding/csv"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// Wood is one row of the table of woods: the means of small, clear, straight-grained specimens at 12 % moisture. A
// board may differ: the spread of the specific gravity is about 10 %, and an imported wood has 5 % more in doubt. The
// moduli are no design strengths.
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

// Woods returns every wood of the table, in its order.
//
// Source: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010) and
// FPL-GTR-282 (2021), chapter 5; the head of wood_fpl.csv says what was checked.
func Woods() []Wood { return slices.Clone(woods()) }

var woods = sync.OnceValue(func() []Wood { return readWoods(woodTable) })

// woodColumns are the columns of the table, in the order in which readWoods takes them.
const woodColumns = "species,latin,origin,specific_gravity_12,sg_basis,density_kg_m3,moe_gpa,mor_mpa,source_table,confidence,note"

// readWoods reads the table. It panics on a table that is not as it should be, for the table is part of the program.
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

const (
	tableMoisture   = 0.12 // at which the table of woods is given
	fibreSaturation = 0.30 // at which the rule of DensityAt has the wood fully swollen
)

// A MoistureError reports a moisture at which the density of a wood is not known.
type MoistureError struct {
	Moisture float64 // as a fraction of the ovendry weight
}

func (e *MoistureError) Error() string {
	return fmt.Sprintf("body: moisture is a fraction from 0 to 0.30; %g is not. For example: 0.08", e.Moisture)
}

// DensityAt returns the density (kg/m³) of the wood with its water at a moisture given as a fraction of the ovendry
// weight, 0 to 0.30, ends included; outside it the error is a [*MoistureError]. At 0.12 it is Density.
//
// The Wood Handbook, chapter 4, finds the specific gravity at 12 % from that of the
// green volume, Gb; here its rule is taken at any moisture M,
//
//	G(M) = Gb/(1 − 0.265·Gb·(1 − M/0.30)),   density = 1000·G(M)·(1 + M) kg/m³
//
// so that 1/G(M) = 1/G(0.12) + 0.265·(M − 0.12)/0.30 (derived here by taking Gb out).
// On the woods of which both gravities are printed the rule is off by −9 to +7 %
// between green and 12 %, and so by about a third of that between 12 and 6 %.
func (w Wood) DensityAt(moisture float64) (float64, error) {
	if !(moisture >= 0 && moisture <= fibreSaturation) { // so that NaN is outside too
		return 0, &MoistureError{moisture}
	}
	if moisture == tableMoisture {
		return w.Density, nil
	}
	swelling := 1 + 0.265*w.SpecificGravity*(moisture-tableMoisture)/fibreSaturation
	return w.Density * (1 + moisture) / (1 + tableMoisture) / swelling, nil
}
