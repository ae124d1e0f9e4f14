package layout

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// usualStrain is what a strip of a wood that is not named is bent to at its faces: half of the strain at which common
// hardwoods break, some 0.8 % by the Wood Handbook's rupture over elastic modulus; the half is our judgement.
const usualStrain = 0.004

// Strips are the strips of a laminated rocker.
type Strips struct {
	bench.Stack
	Tightest float64 // the smallest radius that a strip is bent to, m
	Strain   float64 // that the wood is asked to bear at the faces of a strip: half of what breaks it
	Wood     string  // whose strain it is; "" for a usual hardwood
	Thickest float64 // the thickest strip that bears it, m
	Common   float64 // the thickest that makers use for the radius, m; zero where there is none
}

// SpringsBack returns n²: off the form the stack springs back by one part of so many of its bend, see [bench.Springback].
func (s *Strips) SpringsBack() int { return s.Stack.Strips * s.Stack.Strips }

// formDepth is how much wood a form has behind its face, its back parallel for clamps, m; our judgement: 4 in.
const formDepth = 0.1016

// A Form is what the stack, or the steamed wood, is bent over.
type Form struct {
	Lost   float64      // the part of its bend that the wood loses off the form
	Radii  []bench.Form // of each sweep, in their order; the zero Form of a flat and of a hollow
	Inside bench.Path   // the outline of a form inside the curve, as long as the wood with its waste
	Face   [2]r2.Vec    // the two ends of its face, tail and nose
	Out    bench.Path   // the face of a form outside the curve, from the nose to the tail
	Low    r2.Vec       // where the low point of the rocker lies on the inside face
	Steam  bool
}

func (l *Layout) bent() error {
	if l.Made == piece.Sawn {
		return nil
	}
	longest, tightest, err := l.Rocker.Bend()
	var outline *bench.OutlineError
	switch {
	case err != nil && l.MadeTaken:
		l.Made = piece.Sawn // no strip bends over a corner
		return nil
	case errors.As(err, &outline) && outline.Span >= 0:
		return &piece.KeyError{Key: "rocker.made", Reason: "neither strips nor steamed wood bend over a corner", Give: "made", Word: "sawn"}
	case err != nil:
		return err
	}
	depth := l.woodDepth()
	lost := l.Shop.Springback
	if l.Made != piece.Steamed {
		if err := l.stack(depth, longest, tightest); err != nil {
			return err
		}
		lost = bench.Springback(l.Strips.Strips)
		if l.Strips.Strips == 1 {
			lost = 0
			if !math.IsInf(tightest, 1) {
				return &piece.KeyError{Key: "shop.strip", Reason: "a single strip springs back flat", Give: "strip"}
			}
		}
	}
	return l.form(depth, lost)
}

// woodDepth returns what the deepest place of the rocker takes of wood, without a sole, m.
func (l *Layout) woodDepth() float64 {
	return max(l.Rocker.Depth, l.Rocker.NoseDepth, l.Rocker.TailDepth) - l.Rocker.Sole
}

func (l *Layout) stack(depth, longest, tightest float64) error {
	s := Strips{Tightest: tightest, Strain: usualStrain}
	if name := l.Design.Rocker.Wood; name != "" {
		wood, err := piece.FindWood(name, "rocker")
		if err != nil {
			return err
		}
		s.Strain, s.Wood = wood.RuptureModulus/wood.ElasticModulus/2, wood.Name
	}
	s.Thickest = bench.StripThickness(tightest, s.Strain)
	s.Common, _ = bench.CommonStrip(tightest)
	thick := min(s.Thickest, cmp.Or(s.Common, s.Thickest), depth)
	asked := l.Shop.Strip
	if asked > 0 {
		thick = min(asked, depth)
	}
	stack, err := bench.Lamination{Depth: depth, Thickest: thick, Kerf: l.Shop.Kerf, Planing: l.Shop.Planing,
		Longest: longest, Waste: l.Shop.EndWaste}.Stack()
	if err != nil {
		return err
	}
	if stack.Strip > s.Thickest*(1+1e-9) {
		n := math.Ceil(depth / s.Thickest)
		return &piece.KeyError{Key: "shop.strip", Reason: fmt.Sprintf(
			"a strip of %s is thicker than %s bends to %s, the smallest radius here: %s is the thickest that works, %.0f strips of %s",
			l.with(asked), cmp.Or(s.Wood, "a usual hardwood"), l.with(tightest), l.fine(s.Thickest), n, l.fine(depth/n)),
			Give: "strip", Value: l.floored(depth / n)}
	}
	s.Stack = stack
	l.Strips = &s
	return nil
}

// fine writes a thickness finer than a tape shows.
func (l *Layout) fine(x float64) string {
	return quantity.Fine(x, quantity.Length, l.Design.Units) + " " + quantity.Unit(quantity.Length, l.Design.Units)
}

// floored returns a length as it is typed, in thousandths of an inch or tenths of a millimetre, no more than it is, m.
func (l *Layout) floored(x float64) float64 {
	step := quantity.In / 1000
	if l.Design.Units == quantity.Metric {
		step = 1e-4
	}
	return math.Floor(x/step) * step
}

// form lays out the form: the middle of the wood keeps its length and is bent more by what it
// loses, so an arc whose middle has radius r lies on the form at r·(1 − lost).
func (l *Layout) form(depth, lost float64) error {
	f := Form{Lost: lost, Steam: l.Made == piece.Steamed}
	for _, s := range l.Sweeps {
		var radii bench.Form
		if s.Radius > 0 {
			var err error
			if radii, err = bench.FormFor(s.Radius, depth, l.Rocker.Sole, lost); err != nil {
				return &piece.KeyError{Key: "rocker.depth", Reason: "no form bends wood of " + l.with(depth) + " to this radius", Give: "depth"}
			}
		}
		f.Radii = append(f.Radii, radii)
	}
	lying, err := l.lying(depth, lost)
	if err != nil {
		return &piece.KeyError{Key: "rocker", Reason: "this curve lies on no form: " + err.Error()}
	}
	_, wood, top, edges := lying.Edges()
	band := lying // what lies above the wood is the form
	band.Sole, band.Depth = depth, depth+formDepth
	f.Inside, err = band.Outline()
	f.Face = [2]r2.Vec{top.End(), top.Start}
	f.Out, f.Low = wood.Reversed(), r2.Vec{Y: depth}
	l.Form = &f
	return cmp.Or(edges, err)
}

// lying returns the wood as it lies on the form, end waste and all, as a rocker.
func (l *Layout) lying(depth, lost float64) (bench.Rocker, error) {
	nose, _ := l.Rocker.Edge.Reach()
	waste := l.Shop.EndWaste
	var spans []rocker.Span
	// along the drawn edge from the nose, and along the edge on the form
	from, low := 0.0, waste
	drawn := slices.DeleteFunc(l.Rocker.Edge.Drawn(), func(s rocker.DrawnSpan) bool { return s.Length == 0 }) // a corner is no wood
	for i, s := range drawn {
		length, radius := s.Length, 0.0
		if s.Radius != 0 {
			middle := s.Radius - l.Rocker.Sole - depth/2
			radius = middle*(1-lost) + depth/2
			length = s.Length / s.Radius / (1 - lost) * radius // the wood turns more by what it loses
		}
		if length <= 0 {
			return bench.Rocker{}, errors.New("an arc is tighter than the wood is thick")
		}
		low += length * max(0, min(1, (nose-from)/s.Length))
		from += s.Length
		more := 0.0
		if i == 0 {
			more += waste
		}
		if i == len(drawn)-1 {
			more += waste
		}
		spans = append(spans, rocker.Span{Radius: radius, Length: length + more})
	}
	edge, err := rocker.Chain(low, spans...)
	return bench.Rocker{Edge: edge, Depth: depth}, err
}
