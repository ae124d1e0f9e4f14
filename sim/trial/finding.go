package trial

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/rocker/rises"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/readings"
)

// A Level is how grave a finding is, the gravest first.
type Level int

const (
	Falls      Level = iota // it does not stand
	Fails                   // a limit
	Hazardous               // what ought not to happen, and what it does
	Unfit                   // a person whom the piece does not fit
	TooNear                 // a limit that holds or fails by less than is known
	Warns                   // of the piece itself
	WorthALook              // below what is liked, of what nothing is asked
	levels     int   = iota
)

var levelNames = [levels]string{"does not stand", "limit", "hazard", "misfit", "too near to tell", "warning", "worth a look"}

func (l Level) String() string { return levelNames[l] }

// What warnings of the wood are of.
const Braces, Rockers, Thin = "braces of the back", "rockers", "thin rockers"

// A Finding is one thing that is wrong with a design, or ought to be known of it.
type Finding struct {
	Level  Level
	Load   *check.Load // on which it was found; nil of the piece itself, and of a person in no one load
	Who    string      // the person; "" of the piece itself
	Side   check.Side
	What   string        // "rest", the name of a limit, "feet hang", "legs beyond the rockers", …
	Key    string        // the measure to look at; "" where none is known
	Kind   quantity.Kind // of the numbers
	Got    float64       // NaN where there is nothing to measure
	Want   float64       // the bound that it passed; NaN where there is none
	Spread float64       // ± of Got, for how a guessed weight is spread and how people differ; NaN where that is not known

	// In what it was found, of which one at most is set, for who says it.
	Limit  *check.Limit
	Misfit *check.Misfit
	Fit    *check.Fit
	Beyond *piece.Beyond
	Bent   *check.Bending
	Doubt  *readings.Doubt
	Trial  *Result       // of what happens every day
	Rises  *rises.Fit    // of the side that Who names: a rise that the others contradict, or no curve
	Curve  *piece.Traced // of two rockers that are not one curve
}

// findings returns all that is wrong with a design, the gravest first, and of one level the worst.
func findings(r *check.Report) []Finding {
	list := slices.Concat(limited(r), hazards(r), unfit(r), warnings(r))
	slices.SortStableFunc(list, func(a, b Finding) int { return cmp.Compare(a.Level, b.Level) })
	return list
}

// found are findings as they are gathered.
type found []Finding

// add adds a finding, of whose spread nothing is known, and returns it.
func (list *found) add(level Level, what, key string, kind quantity.Kind, got, want float64) *Finding {
	f := Finding{Level: level, What: what, Key: key, Kind: kind, Got: got, Want: want, Spread: math.NaN()}
	*list = append(*list, f)
	return &(*list)[len(*list)-1]
}

// limited returns the limits that fail, and those that are too near to tell: of a load that does not stand only that.
func limited(r *check.Report) []Finding {
	var list found
	add := func(level Level, limit *check.Limit) {
		l := r.Load(limit.Load)
		if limit.Name == "rest" && level == Fails {
			level = Falls
		} else if !l.Upright() {
			return
		}
		f := list.add(level, limit.Name, r.LookAt(*limit), limit.Kind, limit.Got, limit.Want)
		f.Load, f.Who, f.Side, f.Limit, f.Spread = l, l.Sitter, limit.Side, limit, limit.Spread
	}
	for i := range r.Limits {
		switch limit := &r.Limits[i]; {
		case limit.Fails():
			add(Fails, limit)
		case limit.Near:
			add(TooNear, limit)
		}
	}
	// what could not be measured comes first
	slices.SortStableFunc(list, func(a, b Finding) int { return cmp.Compare(a.Limit.Share(), b.Limit.Share()) })
	for i := range r.Look {
		if limit := &r.Look[i]; !limit.Holds && !math.IsNaN(limit.Got) {
			add(WorthALook, limit)
		}
	}
	return list
}

// troubles are how a misfit is called, and the measure that mends it.
var troubles = map[check.Trouble][2]string{
	check.FeetHang:      {"feet hang", "seat.front"},
	check.KneesUp:       {"knees high", "seat.front"},
	check.KneesOverChin: {"knees over chin", "seat.front"},
	check.TooWide:       {"hips too wide", "seat.width"},
	check.TooDeep:       {"seat too deep", "seat.depth"},
}

// unfit returns where the seat does not fit its owner, and whom else it does not fit.
func unfit(r *check.Report) []Finding {
	var list found
	for i := range r.Fit {
		f := &r.Fit[i]
		if f.Holds() || f.Size == person.SittingHeight {
			continue // a rest for the head is a wish, not a fault
		}
		want := f.Low
		if f.Change < 0 {
			want = f.High
		}
		one := list.add(Unfit, f.What, f.Key, quantity.Length, f.Have, want)
		one.Who, one.Fit = f.Who, f
	}
	for i := range r.Misfits {
		m := &r.Misfits[i]
		name := troubles[m.Trouble]
		one := list.add(Unfit, name[0], name[1], quantity.Length, m.By, math.NaN())
		one.Who, one.Misfit = m.Name, m
	}
	return list
}

// warnings returns what is wrong with the piece itself: readings that others contradict, legs beyond the
// rockers, wood that bends near to its strength.
func warnings(r *check.Report) []Finding {
	var list found
	if r.Read != nil {
		for i := range r.Read.Doubts {
			d := &r.Read.Doubts[i]
			key := "measured." + d.Reading
			if d.Reading == "seat" { // as it is drawn
				key = "seat.front"
			}
			list.add(Warns, "doubtful reading", key, KindOf(d.Reading), d.Read, d.Expected).Doubt = d
		}
	}
	list = append(list, Uneven(r.Curve)...)
	for i := range r.Beyond {
		b, key := &r.Beyond[i], "rocker.nose"
		if b.Tail {
			key = "rocker.tail"
		}
		list.add(Warns, "legs beyond the rockers", key, quantity.Length, b.By, 0).Beyond = b
	}
	list = append(list, thin(r.Design.Rocker)...)
	if i := slices.IndexFunc(r.Loads, func(l check.Load) bool { return l.Give != nil && l.Give.Most > 1 }); i >= 0 {
		l := &r.Loads[i]
		one := list.add(Warns, Braces, "back.braces.thickness", quantity.Ratio, l.Give.Most, 1)
		one.Load, one.Who = l, l.Sitter
	}
	most := func(b check.Bending) float64 { return b.At(r.Design.Rocker.Made).Most }
	if i := slices.IndexFunc(r.Bending, func(b check.Bending) bool { return most(b) > 1 }); i >= 0 {
		one := list.add(Warns, Rockers, "rocker.depth", quantity.Ratio, most(r.Bending[i]), 1)
		one.Who, one.Bent = r.Bending[i].Load, &r.Bending[i]
	}
	return list
}

// leastTip is how deep the end of a rocker is at least before it is told that it may break off, m; our judgement.
const leastTip = quantity.In / 2

// thin returns the ends of a rocker that are too thin.
func thin(r piece.Rocker) []Finding {
	var list found
	ends := [...]struct {
		key   string
		depth float64
	}{{"rocker.tail_depth", r.TailDepth}, {"rocker.nose_depth", r.NoseDepth}}
	if r.Top != piece.Taper {
		ends[0].key, ends[0].depth, ends[1].depth = "rocker.depth", r.Depth, 0
	}
	for _, end := range ends {
		if end.depth > 0 && end.depth < leastTip {
			list.add(Warns, Thin, end.key, quantity.Length, end.depth, leastTip)
		}
	}
	return list
}

// Uneven returns what is wrong with the rises of measured rockers.
func Uneven(c *piece.Traced) []Finding {
	if c == nil {
		return nil
	}
	var list found
	for _, side := range []struct {
		who, key string
		fit      *rises.Fit
	}{{"floor edge", "rocker.rises", c.Drawn}, {"left", "measured.left", c.Left}, {"right", "measured.right", c.Right}} {
		switch fit := side.fit; {
		case fit == nil:
		case fit.Suspect >= 0:
			one := list.add(Warns, "doubtful rise", side.key, quantity.Length, math.NaN(), fit.Without)
			one.Who, one.Rises = side.who, fit
		case !fit.Explains:
			one := list.add(Warns, "no curve explains the rises", side.key, quantity.Length, fit.Spread, math.NaN())
			one.Who, one.Rises = side.who, fit
		}
	}
	if c.Left != nil && c.Right != nil && !c.One {
		list.add(Warns, "rockers not alike", "measured.right", quantity.Length, math.Abs(c.Apart), 0).Curve = c
	}
	return list
}

// KindOf returns the kind of a reading's number, by its key or those of a pair.
func KindOf(reading string) quantity.Kind {
	switch {
	case reading == "weight" || strings.Contains(reading, " and "):
		return quantity.Mass
	case strings.HasPrefix(reading, "ten_rocks"):
		return quantity.Time
	case readings.IsTilt(reading):
		return quantity.Angle
	}
	return quantity.Length
}
