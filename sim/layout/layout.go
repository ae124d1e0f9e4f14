package layout

import (
	"cmp"
	"errors"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Layout is all that the bench needs of a design.
type Layout struct {
	Design piece.Design
	Report check.Balanced // as it balances
	Shop   piece.Shop     // with its usual values

	Rocker    bench.Rocker
	Outline   bench.Path // of the wood
	Stations  []bench.Station
	Chord     []bench.Station // the same from the chord
	Corner    r2.Vec          // the square corner of the pattern
	Sweeps    []bench.Sweep   // places from the square corner
	Made      piece.Made
	MadeTaken bool // it was not said; strips are taken where they bend

	Board     *Board // nil where the rockers are not sawn
	Strips    *Strips
	Form      *Form // nil where nothing is bent
	Legs      []Leg
	Taken     []piece.Which // pairs of legs that were not drawn
	ArmsTaken bool          // length or width of the arms were not drawn, and are the usual ones
	OffRocker []piece.Which // pairs that were not drawn, and where they are taken miss the rocker
	Panels    []Panel
	Pairs     []Paired // legs and arms, left and right
	Cuts      []Cut

	Rests    []Rest
	Remedies []Remedy
	Rises    Rises
}

// LowPoint returns how far the low point lies ahead of the square corner, m.
func (l *Layout) LowPoint() float64 { return -l.Corner.X }

// Options are asked for on the spot. The zero value takes what the design says.
type Options struct {
	Spacing float64 // of stations, m
}

// Of lays a design out. The error is a [*piece.KeyError]: an entry that is missing, or of which nothing can be made.
func Of(d piece.Design, o Options) (Layout, error) {
	report, err := check.Balance(d)
	if err != nil {
		return Layout{}, err
	}
	l := Layout{Design: d, Report: report, Shop: d.Shop.Usual(d.Units)}
	if o.Spacing > 0 {
		l.Shop.Spacing = o.Spacing
	}
	for _, step := range []func() error{l.rocker, l.bent, l.board, l.legs, l.pairs, l.panels, l.cuts, l.remedies} {
		if err := step(); err != nil {
			return Layout{}, l.explain(err)
		}
	}
	l.rests()
	l.rises()
	return l, nil
}

func (l *Layout) rocker() error {
	k := l.Design.Rocker
	l.Rocker = k.OnBench(l.Report.Edge)
	l.Rocker.Nose = bench.End{Finish: k.NoseEnd, Radius: k.EaseOr()}
	l.Rocker.Tail = bench.End{Finish: k.TailEnd, Radius: k.EaseOr()}
	if l.Made = k.Made; l.Made == piece.NotSaid {
		l.Made, l.MadeTaken = piece.Laminated, true
		if k.Top == piece.Straight {
			l.Made = piece.Sawn // strips follow the floor edge, and a straight top would cut them all
		}
	}
	if k.Top == piece.Taper && k.NoseDepth == 0 && k.TailDepth == 0 {
		return &piece.KeyError{Key: "rocker.nose_depth",
			Reason: "a tapered rocker needs its depth at the nose, at the tail, or both", Give: "nose_depth"}
	}
	if track, known := l.Design.Track(); known {
		l.Rocker.Middle = track / 2
	}
	var outline, stations, chord, trammel error
	if l.Outline, outline = l.Rocker.Outline(); outline != nil && k.Top == piece.Straight {
		return l.tooShallow(outline)
	}
	l.Stations, stations = l.Rocker.Stations(l.Shop.Spacing)
	l.Chord, chord = l.Rocker.ChordStations(l.Shop.Spacing)
	l.Sweeps, l.Corner, trammel = l.Rocker.Trammel()
	return cmp.Or(outline, stations, chord, trammel)
}

// explain turns an error of the rocker into one of the design; others stay.
func (l *Layout) explain(err error) error {
	var size *bench.SizeError
	var outline *bench.OutlineError
	switch {
	case errors.As(err, &size) && size.What == "a spacing of stations":
		return &piece.KeyError{Key: "shop.spacing", Reason: "stations " + l.fine(size.Got) + " apart are too many to draw", Give: "spacing"}
	case errors.As(err, &size):
		return &piece.KeyError{Key: "rocker", Reason: size.What + " of " + l.with(size.Got) + " is not " + size.Want}
	case errors.As(err, &outline):
		return &piece.KeyError{Key: "rocker", Reason: "this rocker cannot be drawn: " + outline.Reason, Give: "depth"}
	}
	return err
}

// with writes a length as the maker reads it.
func (l *Layout) with(x float64) string { return quantity.With(x, quantity.Length, l.Design.Units) }

// tooShallow explains a straight top that cannot be drawn, with the least depth on the shop's scale that can. It is
// above both tips, and each is drawn to see, for an eased corner wants room and a hollow may be in the way.
func (l *Layout) tooShallow(err error) error {
	var outline *bench.OutlineError
	if !errors.As(err, &outline) {
		return err
	}
	wrong := &piece.KeyError{Key: "rocker.depth", Reason: "this rocker cannot be drawn: " + outline.Reason}
	deeper, units := l.Rocker, l.Design.Units
	deeper.Depth = max(deeper.Depth, deeper.Edge.Nose().Y, deeper.Edge.Tail().Y)
	const tried = 200 // depths over the first that could do: 12 1/2 in, or 200 mm
	for range tried {
		deeper.Depth = quantity.NextLength(deeper.Depth, units)
		if _, err := deeper.Outline(); err == nil {
			wrong.Reason += "; with a straight top it is at least " + l.with(deeper.Depth) + " deep"
			wrong.Give, wrong.Value = "depth", deeper.Depth
			return wrong
		}
	}
	wrong.Reason += "; no depth lets this edge have a straight top"
	wrong.Give, wrong.Word = "top", "concentric"
	return wrong
}
