package check

import (
	"errors"
	"math"
	"slices"

	"rockerwright/body"
	"rockerwright/sim/piece"
	"rockerwright/sim/readings"
)

// A Built is a finished piece beside its drawing.
type Built struct {
	Drawn, As Report   // as drawn, and as built: what was read stands for what is drawn
	Rows      []Beside // the worst first
	Refused   error    // of rocks that cannot be, which were not used; else nil
}

// AsBuilt sets what was read of a finished piece beside what is drawn of it, or predicted. The error is a
// [*piece.KeyError]: of the drawing, or a reading that cannot be.
func AsBuilt(d piece.Design) (Built, error) {
	if !d.Measured.Taken() {
		return Built{}, &piece.KeyError{Key: "measured",
			Reason: "nothing was read of this piece: write the readings of the check sheet", Give: "measured"}
	}
	if err := rocksSaid(d.Measured); err != nil {
		return Built{}, err
	}
	drawn, err := Check(d)
	if err != nil {
		return Built{}, err
	}
	b := Built{Drawn: drawn}
	as, rows, err := drawn.besideRises()
	if err != nil {
		return b, err
	}
	as.Measured.Built = true
	b.As, err = Check(as)
	if wrong := (*piece.KeyError)(nil); errors.As(err, &wrong) && (wrong.Key == "measured.ten_rocks" || wrong.Key == "measured.let_go") {
		b.Refused, as.Measured.TenRocks = wrong, 0
		b.As, err = Check(as)
	}
	if err != nil {
		return b, err
	}
	b.Rows = slices.Concat(rows, b.besideBalance(), b.besideTilts(), b.besideRocks())
	slices.SortStableFunc(b.Rows, worseFirst)
	return b, nil
}

// rocksSaid returns an error for rocks that were timed of which nothing says from where they were let go.
func rocksSaid(m piece.Measured) error {
	for _, one := range []struct {
		key          string
		timed, letGo float64
	}{{"let_go", m.TenRocks, m.LetGo}, {"let_go_ridden", m.RiddenTenRocks, m.RiddenLetGo}} {
		if one.timed > 0 && !(one.letGo > 0) {
			return &piece.KeyError{Key: "measured." + one.key, Give: one.key,
				Reason: "say from how many degrees of tilt it was let go"}
		}
	}
	return nil
}

// drawsWeight reports whether a design draws what the piece weighs, whatever was read.
func drawsWeight(d piece.Design) bool {
	d.Measured.Built = false
	source, err := d.Source()
	return err == nil && source != piece.ByReadings
}

// weighBuilt fills in the mass of a piece as built: by its readings, and where they do not tell it as it is drawn.
func (b *Balanced) weighBuilt() error {
	d := b.Design
	d.Measured.Built = false
	masses, err := d.Masses(b.Edge)
	if err != nil {
		return err
	}
	drawn := masses.Joined(b.carry)
	r := readingsOf(d, b.Edge, nil)
	r.RiddenTenRocks, r.RiddenLetGo = 0, 0 // they tell of who rides
	if b.Lacked, err = fillIn(&r, drawn); err != nil {
		return readingError(err)
	}
	result, err := r.Read()
	if err != nil {
		return readingError(err)
	}
	if b.Read = &result; math.IsNaN(result.Body.Inertia) {
		result.Body.Inertia = drawn.Inertia * result.Body.Mass / drawn.Mass
		b.UsualInertia = true
	}
	b.masses.Rockers = result.Body
	return nil
}

// fillIn gives readings that do not tell the balance point those that they lack, off the drawn piece, and returns which.
// The error is of readings that cannot be.
func fillIn(r *readings.Readings, drawn body.Body) (lacked []string, err error) {
	if r.Weight+r.Front+r.Rear == 0 {
		r.Weight, lacked = drawn.Mass, append(lacked, "weight")
	}
	for range 2 {
		still := *r
		still.TenRocks, still.LetGo = 0, 0
		_, err := still.Read()
		switch wrong := (*readings.ReadingError)(nil); {
		case !errors.As(err, &wrong):
			return lacked, err
		case !wrong.Missing:
			return lacked, err
		case r.DowelAbove == 0:
			r.DowelAbove, lacked = drawn.Centre.Y, append(lacked, "dowel_above")
		default:
			r.DowelAhead, lacked = drawn.Centre.X, append(lacked, "dowel_ahead")
			r.Zero = append(slices.Clip(r.Zero), "dowel_ahead")
		}
	}
	return lacked, nil
}
