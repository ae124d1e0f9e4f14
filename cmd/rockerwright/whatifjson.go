package main

import (
	"io"
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// A whatIfJSON is what whatif says to a program.
type whatIfJSON struct {
	Design string          `json:"design"`
	Now    readingsJSON    `json:"now"`
	Fails  number          `json:"fails_share"`
	Rows   []whatIfRowJSON `json:"rows"`
}

// A readingsJSON is what is read of a piece.
type readingsJSON struct {
	SeatFalls number `json:"seat_slope_deg"`
	Empty     number `json:"seat_slope_empty_deg"`
	OneRock   number `json:"period_s"`
	Effort    number `json:"effort_back_n"`
	Back      number `json:"back_margin_deg"`
	Lift      number `json:"back_lift_m"`
	Forward   number `json:"forward_margin_deg"`
}

// A whatIfRowJSON is one change. Change, held and usual are in the SI unit of the measure,
// degrees for angles; hold_to is null where it need not be exact, or where no exactness helps.
type whatIfRowJSON struct {
	Key    string       `json:"key,omitempty"`
	Label  string       `json:"label"`
	Unit   string       `json:"unit"`
	Change number       `json:"change"`
	Before readingsJSON `json:"before"`
	After  readingsJSON `json:"after"`
	Made   bool         `json:"made"`
	HoldTo number       `json:"hold_to"`
	Loose  bool         `json:"need_not_be_exact"`
	NoUse  bool         `json:"no_exactness_helps"`
	Usual  number       `json:"shop_holds"`
}

func readingsOf(r size.Readings) readingsJSON {
	return readingsJSON{degrees(r[size.FallSitting]), degrees(r[size.FallEmpty]), number(r[size.Time]), number(r[size.Effort]),
		degrees(r[size.BackMargin]), number(r[size.BackLift]), degrees(r[size.ForwardMargin])}
}

// inUnit returns an SI value as a program reads it, and its unit.
func inUnit(x float64, kind quantity.Kind) (number, string) {
	switch kind {
	case quantity.Angle:
		return degrees(x), "deg"
	case quantity.Length:
		return number(x), "m"
	case quantity.Mass:
		return number(x), "kg"
	case quantity.Time:
		return number(x), "s"
	case quantity.Force:
		return number(x), "N"
	case quantity.Density:
		return number(x), "kg/m3"
	case quantity.Inertia:
		return number(x), "kg m2"
	}
	return number(x), "1"
}

// printWhatIfJSON prints the table for a program.
func printWhatIfJSON(out io.Writer, t size.Table) error {
	j := whatIfJSON{Design: t.Report.Design.Title, Now: readingsOf(t.Now), Fails: number(t.Fails), Rows: []whatIfRowJSON{}}
	for _, r := range t.Rows {
		row := whatIfRowJSON{Key: r.Key, Label: r.Label, Before: readingsOf(r.Before), After: readingsOf(r.After), Made: r.Made,
			Loose: r.Made && math.IsInf(r.HoldTo, 1), NoUse: r.Made && math.IsNaN(r.HoldTo)}
		row.Change, row.Unit = inUnit(r.Change, r.Kind)
		row.HoldTo, _ = inUnit(r.HoldTo, r.Kind)
		row.Usual, _ = inUnit(r.Shop, r.Kind)
		if !r.Made {
			row.HoldTo, row.Usual = number(math.NaN()), number(math.NaN())
		}
		j.Rows = append(j.Rows, row)
	}
	return encoded(out, j)
}

// A studyJSON is what --chairs says to a program.
type studyJSON struct {
	Design  string        `json:"design"`
	Asked   int           `json:"asked"`
	Chairs  int           `json:"chairs"`
	Stopped bool          `json:"stopped"`
	Fails   int           `json:"any_limit_fails"`
	Astray  int           `json:"no_rest"`
	Varied  []variedJSON  `json:"measures"`
	Spreads []spreadJSON  `json:"spreads"`
	Limits  []failingJSON `json:"limits"`
}

// A variedJSON is a measure that is off.
type variedJSON struct {
	Key       string `json:"key"`
	Unit      string `json:"unit"`
	Value     number `json:"value"`
	Tolerance number `json:"tolerance_95"`
}

// A spreadJSON is how one quantity lies; shares are in the order of measures.
type spreadJSON struct {
	Quantity string   `json:"quantity"`
	Drawn    number   `json:"drawn"`
	Low      number   `json:"below_5"`
	Middle   number   `json:"below_50"`
	High     number   `json:"below_95"`
	Shares   []number `json:"shares"`
	LeftOver number   `json:"left_over"`
}

// A failingJSON is how often a limit fails.
type failingJSON struct {
	limitJSON
	Fails int `json:"fails"`
}

// quantityFields name the quantities to a program, with their units.
var quantityFields = [...]string{"seat_slope_deg", "seat_slope_empty_deg", "period_s", "effort_back_n", "back_margin_deg", "back_lift_m", "forward_margin_deg"}

// printStudyJSON prints a study for a program.
func printStudyJSON(out io.Writer, d piece.Design, s size.Study) error {
	j := studyJSON{Design: d.Title, Asked: s.Asked, Chairs: s.Chairs, Stopped: s.Stopped(), Fails: s.Fails, Astray: s.Astray, Spreads: []spreadJSON{}, Limits: []failingJSON{}}
	for _, v := range s.Varied {
		one := variedJSON{Key: v.Key}
		one.Value, one.Unit = inUnit(v.Value, v.Measure.Kind)
		one.Tolerance, _ = inUnit(v.Tolerance, v.Measure.Kind)
		j.Varied = append(j.Varied, one)
	}
	for _, spread := range s.Spreads {
		in := func(x float64) number {
			if q := spread.Quantity; q == size.Time || q == size.Effort || q == size.BackLift {
				return number(x)
			}
			return degrees(x)
		}
		one := spreadJSON{quantityFields[spread.Quantity], in(s.Nominal[spread.Quantity]), in(spread.Low), in(spread.Middle), in(spread.High), nil, number(spread.LeftOver)}
		for _, share := range spread.Shares {
			one.Shares = append(one.Shares, number(share))
		}
		j.Spreads = append(j.Spreads, one)
	}
	for _, l := range s.Limits {
		j.Limits = append(j.Limits, failingJSON{limitsOf([]check.Limit{l.Limit})[0], l.Fails})
	}
	return encoded(out, j)
}
