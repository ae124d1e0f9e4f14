package piece

import (
	"fmt"
	"slices"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// What a shop usually holds, 95 times in 100, ±; common practice: a tape to a sixteenth, a
// radius to a quarter, a bevel to half a degree. The weight is a guess at a kitchen scale.
const (
	lengthTolerance = quantity.In / 16
	radiusTolerance = quantity.In / 4
	angleTolerance  = quantity.Deg / 2
	weightTolerance = 2 * quantity.Lb
)

// Measures returns the one table of what a maker can change. The file loader, changes
// on the command line, sizing and labels all read it.
func Measures() []Measure { return slices.Clone(measures[:]) }

// Choices returns the entries that are words.
func Choices() []Choice { return slices.Clone(choices[:]) }

// length is a measure that is read off a tape, to a sixteenth of an inch.
func length(key, label string, low, high float64, example string, field func(d *Design, n int) *float64) Measure {
	return Measure{
		Key: key, Label: label, Kind: quantity.Length, Low: low * quantity.In, High: high * quantity.In,
		Step: quantity.In / 8, Tolerance: lengthTolerance, Example: example, field: field,
	}
}

// Measures of which there are several alike, but for [Measure.of].
var (
	weight = Measure{Kind: quantity.Mass, Low: 1 * quantity.Lb, High: 300 * quantity.Lb, Step: quantity.Lb,
		Tolerance: weightTolerance, Example: "26"}
	bevel = Measure{Kind: quantity.Angle, Sign: AnySign, Low: -25 * quantity.Deg, High: 25 * quantity.Deg,
		Step: quantity.Deg / 2, Tolerance: angleTolerance, Example: "8"}
	limit   = Measure{Kind: quantity.Angle, Sign: AtLeastZero, High: 45 * quantity.Deg, Step: quantity.Deg, Example: "15"}
	timber  = Measure{Kind: quantity.Density, Low: 300, High: 1100, Step: 10, Tolerance: 50, Example: `"650 kg/m3"`}
	inertia = Measure{Kind: quantity.Inertia, Sign: AtLeastZero, High: 20, Step: 0.1, Example: `"2.1 kg m2"`}
)

// of returns m of an entry.
func (m Measure) of(key, label string, field func(d *Design, n int) *float64) Measure {
	m.Key, m.Label, m.field = key, label, field
	return m
}

// as returns m with another sign.
func (m Measure) as(sign Sign) Measure {
	m.Sign = sign
	return m
}

// like returns m with another example.
func (m Measure) like(example string) Measure {
	m.Example = example
	return m
}

// onSheet returns m with the number of its blank on the measuring sheets.
func (m Measure) onSheet(blank int) Measure {
	m.Blank = blank
	return m
}

// fitted returns m as one that is set when the piece is put together, not drawn.
func (m Measure) fitted() Measure {
	m.Fitted = true
	return m
}

// held returns m with another usual tolerance.
func (m Measure) held(tolerance float64) Measure {
	m.Tolerance = tolerance
	return m
}

var measures = [...]Measure{
	length("rocker.radius", "radius of the floor edge", 20, 80, "42", func(d *Design, _ int) *float64 { return &d.Rocker.Radius }).held(radiusTolerance),
	length("rocker.nose", "nose, along the curve from the low point", 6, 22, "15", func(d *Design, _ int) *float64 { return &d.Rocker.Nose }).onSheet(10),
	length("rocker.tail", "tail, along the curve from the low point", 6, 36, "18", func(d *Design, _ int) *float64 { return &d.Rocker.Tail }).onSheet(11),
	length("rocker.arcs.N.radius", "radius of this arc", 10, 200, "42", func(d *Design, n int) *float64 { return &d.Rocker.Arcs[n].Radius }).as(NotZero).held(radiusTolerance),
	length("rocker.arcs.N.length", "length of this arc, along the curve", 1, 40, "16", func(d *Design, n int) *float64 { return &d.Rocker.Arcs[n].Length }),
	length("rocker.arcs.N.flat", "length of this flat", 1, 20, "3", func(d *Design, n int) *float64 { return &d.Rocker.Arcs[n].Flat }),
	{Key: "rocker.arcs.N.turn", Label: "angle of this corner", Kind: quantity.Angle, Sign: NotZero, Low: 1 * quantity.Deg, High: 30 * quantity.Deg, Step: quantity.Deg / 2, Tolerance: angleTolerance, Example: "5", field: func(d *Design, n int) *float64 { return &d.Rocker.Arcs[n].Turn }},
	length("rocker.rises.N", "rise of the floor edge at this station", 0, 12, `"1-3/8"`, func(d *Design, n int) *float64 { return &d.Rocker.Rises[n] }).as(AnySign).held(quantity.In / 64),
	length("rocker.spacing", "stations of the rises along the straightedge, apart", 0.5, 6, "2", func(d *Design, _ int) *float64 { return &d.Rocker.Spacing }),
	number("rocker.origin", "which station is the low point, counted from the nose", 1, 60, 1, "8", func(d *Design, _ int) *float64 { return &d.Rocker.Origin }),
	length("rocker.points.N.x", "this point of the floor edge ahead of the low point", -40, 40, "-8", func(d *Design, n int) *float64 { return &d.Rocker.Points[n].X }).as(AnySign).held(quantity.In / 64),
	length("rocker.points.N.y", "this point of the floor edge over the floor", 0, 12, `"1-3/8"`, func(d *Design, n int) *float64 { return &d.Rocker.Points[n].Y }).as(AnySign).held(quantity.In / 64),
	length("rocker.depth", "depth of a rocker, floor edge to top edge", 1, 4, `"2-1/4"`, func(d *Design, _ int) *float64 { return &d.Rocker.Depth }),
	length("rocker.width", "width of a rocker, across", 0.5, 3, `"1-1/4"`, func(d *Design, _ int) *float64 { return &d.Rocker.Width }),
	length("rocker.sole", "thickness of a wear strip under the rocker, a part of its depth", 0.0625, 0.5, `"1/8"`, func(d *Design, _ int) *float64 { return &d.Rocker.Sole }),
	length("rocker.nose_depth", "depth of a tapered rocker at the nose", 0.5, 4, `"1-1/4"`, func(d *Design, _ int) *float64 { return &d.Rocker.NoseDepth }),
	length("rocker.tail_depth", "depth of a tapered rocker at the tail", 0.5, 4, `"1-1/4"`, func(d *Design, _ int) *float64 { return &d.Rocker.TailDepth }),
	length("rocker.ease", "radius of the corners of an eased end", 0.0625, 1, `"1/4"`, func(d *Design, _ int) *float64 { return &d.Rocker.Ease }),
	length("rocker.track", "between the middles of the two floor edges", 8, 60, "19", func(d *Design, _ int) *float64 { return &d.Rocker.Track }),
	{Key: "rocker.splay", Label: "splay of the legs, outwards from plumb", Kind: quantity.Angle, Sign: AnySign, Low: 0, High: 10 * quantity.Deg, Step: quantity.Deg / 2, Tolerance: angleTolerance, Example: "5", field: func(d *Design, _ int) *float64 { return &d.Rocker.Splay }},
	{Key: "rocker.toe_in", Label: "each rocker turned in, closer together in front", Kind: quantity.Angle, Sign: AnySign, Low: -2 * quantity.Deg, High: 2 * quantity.Deg, Step: quantity.Deg / 4, Tolerance: quantity.Deg / 4, Example: "0.5", field: func(d *Design, _ int) *float64 { return &d.Rocker.ToeIn }},
	length("rocker.unequal", "left tail tip higher than the right one", -0.5, 0.5, `"1/8"`, func(d *Design, _ int) *float64 { return &d.Rocker.Unequal }).as(AnySign).fitted(),
	timber.of("rocker.density", "density of the wood", func(d *Design, _ int) *float64 { return &d.Rocker.Density }),

	length("seat.front", "floor to the top of the seat's front edge", 8, 20, `"16-1/2"`, func(d *Design, _ int) *float64 { return &d.Seat.Front }).onSheet(12),
	length("seat.rear", "floor to the lowest of the seat, near the back", 8, 20, `"15-7/8"`, func(d *Design, _ int) *float64 { return &d.Seat.Rear }).onSheet(13),
	length("seat.depth", "depth of the seat", 10, 24, "18", func(d *Design, _ int) *float64 { return &d.Seat.Depth }).onSheet(14),
	length("seat.width", "width of the seat", 10, 60, "20", func(d *Design, _ int) *float64 { return &d.Seat.Width }).onSheet(15),
	length("seat.behind_low_point", "low point back to where the back meets the seat", 0, 16, "9", func(d *Design, _ int) *float64 { return &d.Seat.Behind }).as(AnySign).onSheet(16),
	length("seat.slide", "the chair slid forward along its rockers", -2, 2, `"1/2"`, func(d *Design, _ int) *float64 { return &d.Seat.Slide }).as(AnySign).fitted(),
	length("seat.thickness", "thickness of the seat where the legs are let in", 0.5, 3, `"1-3/4"`, func(d *Design, _ int) *float64 { return &d.Seat.Thick }),

	length("seat.front_cut", "cut off both front legs, below zero a shim", -1, 1, `"1/4"`, func(d *Design, _ int) *float64 { return &d.Seat.FrontCut }).as(AnySign).fitted(),
	length("seat.rear_cut", "cut off both rear legs, below zero a shim", -1, 1, `"1/4"`, func(d *Design, _ int) *float64 { return &d.Seat.RearCut }).as(AnySign).fitted(),

	length("seat.cushion", "thickness of the cushion when sat on", 0, 4, "1", func(d *Design, _ int) *float64 { return &d.Seat.Cushion }).as(AtLeastZero),
	length("bed.height", "floor to the top of the mattress", 2, 24, "5", func(d *Design, _ int) *float64 { return &d.Bed.Height }),
	length("bed.length", "length of the bed inside, head to foot", 24, 48, "34", func(d *Design, _ int) *float64 { return &d.Bed.Length }),
	length("bed.width", "width of the bed inside, side to side", 12, 30, "17", func(d *Design, _ int) *float64 { return &d.Bed.Width }),

	{Key: "back.recline", Label: "recline of the back, from plumb", Kind: quantity.Angle, Sign: AnySign, Low: 0, High: 35 * quantity.Deg, Step: quantity.Deg / 2, Tolerance: angleTolerance, Blank: 17, Example: "15", field: func(d *Design, _ int) *float64 { return &d.Back.Recline }},
	length("back.height", "height of the back, along it from the seat", 10, 36, "28", func(d *Design, _ int) *float64 { return &d.Back.Height }).onSheet(18),
	length("back.lumbar", "bulge of the back, above the seat", 4, 12, "8", func(d *Design, _ int) *float64 { return &d.Back.Lumbar }),
	number("back.braces.count", "how many braces the back has", 1, 15, 1, "7", func(d *Design, _ int) *float64 { return &d.Back.Braces.Count }),
	length("back.braces.width", "width of a brace, across", 0.5, 4, `"1-1/8"`, func(d *Design, _ int) *float64 { return &d.Back.Braces.Width }),
	length("back.braces.thickness", "thickness of a brace, front to back", 0.125, 1.5, `"3/8"`, func(d *Design, _ int) *float64 { return &d.Back.Braces.Thickness }).held(quantity.In / 64),
	length("back.braces.length", "length of a brace, seat to crest rail", 10, 36, "24", func(d *Design, _ int) *float64 { return &d.Back.Braces.Length }),
	length("arms.height", "arms above the seat", 4, 12, "8", func(d *Design, _ int) *float64 { return &d.Arms.Height }).onSheet(19),
	length("arms.length", "length of an arm, from the back forward", 8, 24, "15", func(d *Design, _ int) *float64 { return &d.Arms.Length }),
	length("arms.width", "width of an arm in front", 1.5, 8, "3", func(d *Design, _ int) *float64 { return &d.Arms.Width }),
	length("arms.rear_width", "width of an arm at the back", 1, 8, "2", func(d *Design, _ int) *float64 { return &d.Arms.RearWidth }),

	weight.of("piece.weight", "weight of the whole piece", func(d *Design, _ int) *float64 { return &d.Piece.Mass }).onSheet(20),
	weight.of("body.mass", "weight of the whole piece", func(d *Design, _ int) *float64 { return &d.Body.Mass }),
	length("body.centre.x", "balance point ahead of the low point", -6, 6, `"1/2"`, func(d *Design, _ int) *float64 { return &d.Body.Centre.X }).as(AnySign),
	length("body.centre.y", "balance point over the floor", 10, 30, "17", func(d *Design, _ int) *float64 { return &d.Body.Centre.Y }).as(AnySign),
	inertia.of("body.inertia", "inertia of the whole piece about its balance point", func(d *Design, _ int) *float64 { return &d.Body.Inertia }),

	length("part.N.at.x", "middle of the part, ahead of the low point", -24, 24, "-8", func(d *Design, n int) *float64 { return &d.Parts[n].At.X }).as(AnySign),
	length("part.N.at.y", "middle of the part, over the floor", 0, 48, "16", func(d *Design, n int) *float64 { return &d.Parts[n].At.Y }).as(AnySign),
	{Key: "part.N.lean", Label: "lean of the part, from plumb", Kind: quantity.Angle, Sign: AnySign, Low: -30 * quantity.Deg, High: 30 * quantity.Deg, Step: quantity.Deg / 2, Tolerance: angleTolerance, Example: "15", field: func(d *Design, n int) *float64 { return &d.Parts[n].Lean }},
	length("part.N.length", "length of the part, along the floor", 0.5, 48, "18", func(d *Design, n int) *float64 { return &d.Parts[n].Length }),
	length("part.N.height", "height of the part, or length along its axis", 0.5, 48, "2", func(d *Design, n int) *float64 { return &d.Parts[n].Height }),
	length("part.N.width", "width of the part, across", 0.5, 60, "20", func(d *Design, n int) *float64 { return &d.Parts[n].Width }),
	length("part.N.diameter", "diameter of the part", 0.25, 6, `"1-1/2"`, func(d *Design, n int) *float64 { return &d.Parts[n].Diameter }),
	length("part.N.top_diameter", "diameter at the top of a tapered part", 0, 6, "1", func(d *Design, n int) *float64 { return &d.Parts[n].TopDiameter }).as(AtLeastZero),
	{Key: "part.N.count", Label: "how many of them", Kind: quantity.Count, Low: 1, High: 12, Step: 1, Example: "4", field: func(d *Design, n int) *float64 { return &d.Parts[n].Count }},
	weight.of("part.N.weight", "weight of each", func(d *Design, n int) *float64 { return &d.Parts[n].Mass }),
	timber.of("part.N.density", "density of the wood", func(d *Design, n int) *float64 { return &d.Parts[n].Density }),
	{Key: "part.N.moisture", Label: "moisture of its wood, by weight", Kind: quantity.Ratio, Low: 0.04, High: 0.2, Step: 0.01, Tolerance: 0.02, Example: `"8 %"`, field: func(d *Design, n int) *float64 { return &d.Parts[n].Moisture }},

	length("leg.N.at", "where the leg's centre line meets the rocker's top edge, ahead of the low point", -24, 24, "-8", func(d *Design, n int) *float64 { return &d.Legs[n].At }).as(AnySign),
	bevel.of("leg.N.rake", "rake of the leg, from plumb in the side view, + foot ahead", func(d *Design, n int) *float64 { return &d.Legs[n].Rake }),
	bevel.of("leg.N.splay", "splay of the leg, from plumb in the front view, + foot further out", func(d *Design, n int) *float64 { return &d.Legs[n].Splay }),
	length("leg.N.top", "where the leg's centre line enters the seat, over the floor", 6, 20, `"14-1/8"`, func(d *Design, n int) *float64 { return &d.Legs[n].Top }),
	length("leg.N.size", "side of the leg's square section", 0.75, 4, `"1-5/8"`, func(d *Design, n int) *float64 { return &d.Legs[n].Side }),
	length("leg.N.block", "least height of a block between leg and rocker", 0.25, 3, `"3/4"`, func(d *Design, n int) *float64 { return &d.Legs[n].Block }),

	length("panel.N.chord", "width of the coopered panel, across its finished hollow face", 4, 40, "20", func(d *Design, n int) *float64 { return &d.Panels[n].Chord }),
	length("panel.N.rise", "how deep the panel is hollow over that width", 0.125, 8, `"1-1/2"`, func(d *Design, n int) *float64 { return &d.Panels[n].Rise }),
	length("panel.N.radius", "radius of the panel's hollow face", 6, 120, "34", func(d *Design, n int) *float64 { return &d.Panels[n].Radius }),
	number("panel.N.staves", "how many staves the panel has", 1, 40, 1, "7", func(d *Design, n int) *float64 { return &d.Panels[n].Staves }),
	length("panel.N.stock", "thickness of the panel's staves before shaping", 0.25, 4, `"1-3/4"`, func(d *Design, n int) *float64 { return &d.Panels[n].Stock }),
	length("panel.N.length", "length of the panel's staves", 1, 60, "5", func(d *Design, n int) *float64 { return &d.Panels[n].Length }),

	weight.of("sitter.N.weight", "weight of the person", func(d *Design, n int) *float64 { return &d.Sitters[n].Mass }).like("180").onSheet(2),
	weight.of("sitter.N.mass", "weight of the person", func(d *Design, n int) *float64 { return &d.Sitters[n].Mass }).like("180"),
	size(person.Stature, "height of the person, standing, shoes off", 36, 80, `"5 ft 10 in"`).onSheet(1),
	size(person.KneeCrease, "floor to the crease behind the knee, shoes on", 8, 22, "17").onSheet(3),
	size(person.ThighLength, "back of the buttocks to the crease behind the knee", 9, 24, `"19-1/2"`).onSheet(4),
	size(person.Hips, "width across the hips, sitting", 8, 24, "15").onSheet(5),
	size(person.Elbow, "hard seat to the underside of the elbow", 5, 13, `"9-1/2"`).onSheet(6),
	size(person.Shoulder, "hard seat to the top of the shoulder", 12, 28, "24").onSheet(7),
	size(person.SittingHeight, "hard seat to the top of the head, sitting tall", 18, 40, "36").onSheet(8),
	size(person.Lumbar, "hard seat to the hollow of the back", 4, 12, "8").onSheet(9),
	number("sitter.N.age", "age of a child, years", 1, 17, 1, "6", func(d *Design, n int) *float64 { return &d.Sitters[n].Person.Age }),
	number("sitter.N.percentile", "percentile of the survey, instead of a height", 1, 99, 5, "50", func(d *Design, n int) *float64 { return &d.Sitters[n].Person.Percentile }),
	length("sitter.N.ahead", "sitting: balance point ahead of where back and seat meet", 0, 16, "7", func(d *Design, n int) *float64 { return &d.Sitters[n].Sitting.Ahead }).as(AnySign).held(quantity.In / 2),
	length("sitter.N.above", "sitting: balance point above where back and seat meet", 2, 16, `"9-1/2"`, func(d *Design, n int) *float64 { return &d.Sitters[n].Sitting.Above }).as(AnySign).held(quantity.In / 2),
	length("sitter.N.lying_back.ahead", "lying back: balance point ahead of where back and seat meet", 0, 16, "5", func(d *Design, n int) *float64 { return &d.Sitters[n].LyingBack.Ahead }).as(AnySign).held(quantity.In / 2),
	length("sitter.N.lying_back.above", "lying back: balance point above where back and seat meet", 2, 16, "9", func(d *Design, n int) *float64 { return &d.Sitters[n].LyingBack.Above }).as(AnySign).held(quantity.In / 2),
	length("sitter.N.perched.ahead", "perched to rise: balance point ahead of where back and seat meet", 0, 24, "14", func(d *Design, n int) *float64 { return &d.Sitters[n].Perched.Ahead }).as(AnySign).held(quantity.In / 2),
	length("sitter.N.perched.above", "perched to rise: balance point above where back and seat meet", 2, 16, "11", func(d *Design, n int) *float64 { return &d.Sitters[n].Perched.Above }).as(AnySign).held(quantity.In / 2),
	length("sitter.N.centre.x", "the person's balance point ahead of the low point", -16, 16, "0", func(d *Design, n int) *float64 { return &d.Sitters[n].Centre.X }).as(AnySign).held(quantity.In / 2),
	length("sitter.N.centre.y", "the person's balance point over the floor", 10, 40, "25", func(d *Design, n int) *float64 { return &d.Sitters[n].Centre.Y }).as(AnySign).held(quantity.In / 2),
	inertia.of("sitter.N.inertia", "the person's inertia about the own balance point", func(d *Design, n int) *float64 { return &d.Sitters[n].Inertia }),

	number("people.youngest", "age of the youngest rider, years", 1, 12, 1, "3", func(d *Design, _ int) *float64 { return &d.People.Youngest }),
	number("people.oldest", "age of the oldest rider, years", 1, 12, 1, "8", func(d *Design, _ int) *float64 { return &d.People.Oldest }),
	number("people.lap", "age of the child on the lap, years", 1, 6, 1, "3", func(d *Design, _ int) *float64 { return &d.People.Lap }),

	weight.of("measured.weight", "weight of the finished piece", func(d *Design, _ int) *float64 { return &d.Measured.Weight }).onSheet(20),
	weight.of("measured.scale_step", "smallest step that the scales show", func(d *Design, _ int) *float64 { return &d.Measured.ScaleStep }).like(`"1/2"`),
	weight.of("measured.front", "scale under the front mark, marks level", func(d *Design, _ int) *float64 { return &d.Measured.Front }).as(AtLeastZero).onSheet(21),
	weight.of("measured.rear", "scale under the rear mark, marks level", func(d *Design, _ int) *float64 { return &d.Measured.Rear }).as(AtLeastZero).onSheet(22),
	length("measured.apart", "between the two marks, straight", 6, 48, "24", func(d *Design, _ int) *float64 { return &d.Measured.Apart }).onSheet(23),
	length("measured.front_mark", "low point to the front mark, along the curve", 0, 30, "12", func(d *Design, _ int) *float64 { return &d.Measured.FrontMark }).as(AnySign).onSheet(24),
	length("measured.raised", "front mark raised against the rear one", 1, 24, "8", func(d *Design, _ int) *float64 { return &d.Measured.Raised }).onSheet(25),
	weight.of("measured.front_raised", "scale under the front mark, raised", func(d *Design, _ int) *float64 { return &d.Measured.FrontRaised }).as(AtLeastZero).onSheet(26),
	weight.of("measured.rear_raised", "scale under the rear mark, front raised", func(d *Design, _ int) *float64 { return &d.Measured.RearRaised }).as(AtLeastZero).onSheet(27),
	length("measured.dowel_ahead", "balances on a dowel, ahead of the low point", -12, 12, `"1/2"`, func(d *Design, _ int) *float64 { return &d.Measured.DowelAhead }).as(AnySign).onSheet(28),
	length("measured.dowel_above", "balances on a dowel, over the floor line", 4, 30, "17", func(d *Design, _ int) *float64 { return &d.Measured.DowelAbove }).onSheet(29),
	{Key: "measured.ten_rocks", Label: "time of ten rocks there and back, empty", Kind: quantity.Time, Low: 5, High: 60, Step: 0.1, Blank: 30, Example: "14.2", field: func(d *Design, _ int) *float64 { return &d.Measured.TenRocks }},
	{Key: "measured.let_go", Label: "let go from this tilt, empty", Kind: quantity.Angle, Low: quantity.Deg, High: 20 * quantity.Deg, Step: quantity.Deg, Blank: 31, Example: "5", field: func(d *Design, _ int) *float64 { return &d.Measured.LetGo }},
	{Key: "measured.ten_rocks_ridden", Label: "time of ten rocks with the sitter in it", Kind: quantity.Time, Low: 5, High: 60, Step: 0.1, Blank: 32, Example: "20.4", field: func(d *Design, _ int) *float64 { return &d.Measured.RiddenTenRocks }},
	{Key: "measured.let_go_ridden", Label: "let go from this tilt, ridden", Kind: quantity.Angle, Low: quantity.Deg, High: 20 * quantity.Deg, Step: quantity.Deg, Blank: 33, Example: "5", field: func(d *Design, _ int) *float64 { return &d.Measured.RiddenLetGo }},
	length("measured.spacing", "stations along the straightedge, apart", 0.5, 6, "2", func(d *Design, _ int) *float64 { return &d.Measured.Spacing }).onSheet(34),
	number("measured.low_point", "which station is the low point, counted from the nose", 1, 60, 1, "8", func(d *Design, _ int) *float64 { return &d.Measured.LowPoint }),
	length("measured.left.N", "rise of the left rocker at this station", 0, 12, `"1-3/8"`, func(d *Design, n int) *float64 { return &d.Measured.Left[n] }).as(AnySign).held(quantity.In / 64).onSheet(35),
	length("measured.right.N", "rise of the right rocker at this station", 0, 12, `"1-3/8"`, func(d *Design, n int) *float64 { return &d.Measured.Right[n] }).as(AnySign).held(quantity.In / 64).onSheet(36),

	{Key: "floor.slope", Label: "the floor's rise to the front", Kind: quantity.Angle, Sign: AnySign, Low: -5 * quantity.Deg, High: 5 * quantity.Deg, Step: quantity.Deg / 2, Tolerance: angleTolerance, Example: "1", field: func(d *Design, _ int) *float64 { return &d.Floor.Slope }},
	{Key: "floor.friction", Label: "friction of rocker on floor", Kind: quantity.Ratio, Low: 0.1, High: 0.9, Step: 0.05, Tolerance: 0.1, Example: "0.3", field: func(d *Design, _ int) *float64 { return &d.Floor.Friction }},
	length("floor.rolling", "lever of the floor's rolling resistance", 0, 0.5, `"1 mm"`, func(d *Design, _ int) *float64 { return &d.Floor.Rolling }).as(AtLeastZero),
	{Key: "floor.viscous", Label: "loss of a rock that grows with its rate", Kind: quantity.Damping, Sign: AtLeastZero, Low: 0, High: 20, Step: 0.5, Example: `"2.5 N m s"`, field: func(d *Design, _ int) *float64 { return &d.Floor.Viscous }},
	number("floor.halves", "in how many rocks a small rock halves", 1, 50, 1, "7", func(d *Design, _ int) *float64 { return &d.Floor.Halves }),
	{Key: "floor.gravity", Label: "acceleration of free fall", Kind: quantity.Gravity, Low: 9.78, High: 9.84, Step: 0.01, Example: "9.80665", field: func(d *Design, _ int) *float64 { return &d.Floor.Gravity }},

	limit.of("limits.back_margin", "degrees to keep before going back", func(d *Design, _ int) *float64 { return &d.Limits.BackMargin }),
	length("limits.back_lift", "lift of the weight to keep before going back", 0, 4, `"13/16"`, func(d *Design, _ int) *float64 { return &d.Limits.BackLift }).as(AtLeastZero),
	limit.of("limits.forward_margin", "degrees to keep before going forward", func(d *Design, _ int) *float64 { return &d.Limits.ForwardMargin }),
	length("limits.forward_lift", "lift of the weight to keep before going forward", 0, 4, `"7/16"`, func(d *Design, _ int) *float64 { return &d.Limits.ForwardLift }).as(AtLeastZero),
	limit.of("limits.rest_tilt", "largest tilt at rest", func(d *Design, _ int) *float64 { return &d.Limits.RestTilt }),

	{Key: "target.one_rock", Label: "time of one rock there and back, sitting", Kind: quantity.Time, Low: 1, High: 4, Step: 0.1, Example: "2.0", field: func(d *Design, _ int) *float64 { return &d.Target.OneRock }},
	wish("target.seat_falls", "the seat falls back, sitting", "5", func(d *Design) *Wish { return &d.Target.SeatFalls }),
	wish("target.back_leans", "the back leans from plumb, sitting", "20", func(d *Design) *Wish { return &d.Target.BackLeans }),
	wish("target.seat_falls_empty", "the seat falls back, empty", "2", func(d *Design) *Wish { return &d.Target.Empty }),
	limit.of("target.back_margin", "degrees to keep before going back", func(d *Design, _ int) *float64 { return &d.Target.BackMargin }),
	length("target.back_lift", "lift of the weight to keep before going back", 0, 4, `"13/16"`, func(d *Design, _ int) *float64 { return &d.Target.BackLift }).as(AtLeastZero),
	length("target.longest", "longest rocker, tip to tip", 20, 60, "40", func(d *Design, _ int) *float64 { return &d.Target.Longest }),
	length("target.stock_width", "width of the board a rocker is sawn from", 3, 16, "8", func(d *Design, _ int) *float64 { return &d.Target.StockWidth }),
	length("target.stock_length", "length of the board a rocker is sawn from", 20, 96, "48", func(d *Design, _ int) *float64 { return &d.Target.StockLength }),
	length("target.smallest_radius", "smallest radius to which the strips bend", 10, 80, "36", func(d *Design, _ int) *float64 { return &d.Target.SmallestRadius }),
	limit.of("target.largest_tilt", "tilt at which a cradle stands on its tips", func(d *Design, _ int) *float64 { return &d.Target.LargestTilt }),
	number("target.arcs", "how many arcs the rocker may have", 1, 3, 1, "1", func(d *Design, _ int) *float64 { return &d.Target.Arcs }),

	length("shop.length", "lengths are held to, 95 times in 100", 0.015625, 0.5, `"1/16"`, func(d *Design, _ int) *float64 { return &d.Shop.Length }),
	length("shop.radius", "radii are held to, 95 times in 100", 0.03125, 2, `"1/4"`, func(d *Design, _ int) *float64 { return &d.Shop.Radius }),
	{Key: "shop.angle", Label: "angles are held to, 95 times in 100", Kind: quantity.Angle, Low: 0.1 * quantity.Deg, High: 3 * quantity.Deg, Step: 0.1 * quantity.Deg, Example: `"1/2"`, field: func(d *Design, _ int) *float64 { return &d.Shop.Angle }},
	weight.of("shop.weight", "the weight of the piece is known to, 95 times in 100", func(d *Design, _ int) *float64 { return &d.Shop.Weight }).like("2"),
	length("shop.spacing", "stations of the rocker pattern, apart", 0.5, 6, "2", func(d *Design, _ int) *float64 { return &d.Shop.Spacing }),
	length("shop.cutter", "diameter of the router bit on trammel or machine", 0.125, 2, `"1/2"`, func(d *Design, _ int) *float64 { return &d.Shop.Cutter }),
	length("shop.web", "wood between a cutter's path and the next outline", 0.03125, 2, `"1/8"`, func(d *Design, _ int) *float64 { return &d.Shop.Web }),
	length("shop.strip", "thickness of the strips of a laminated rocker", 0.03125, 1, `"1/4"`, func(d *Design, _ int) *float64 { return &d.Shop.Strip }).held(quantity.In / 64),
	length("shop.kerf", "width of a saw cut", 0.03125, 0.25, `"1/8"`, func(d *Design, _ int) *float64 { return &d.Shop.Kerf }),
	length("shop.planing", "planed off a strip or a board, both faces together", 0.015625, 0.5, `"1/16"`, func(d *Design, _ int) *float64 { return &d.Shop.Planing }),
	length("shop.end_waste", "added to each end of a rough part", 0.25, 6, "2", func(d *Design, _ int) *float64 { return &d.Shop.EndWaste }),
	length("shop.stock_thickness", "thickness of the boards there are", 0.5, 4, `"1-3/4"`, func(d *Design, _ int) *float64 { return &d.Shop.StockThick }),
	length("shop.stock_width", "width of the boards there are", 3, 24, "8", func(d *Design, _ int) *float64 { return &d.Shop.StockWidth }),
	{Key: "shop.springback", Label: "part of its bend that steam-bent wood loses", Kind: quantity.Ratio, Low: 0.02, High: 0.2, Step: 0.01, Example: `"8 %"`, field: func(d *Design, _ int) *float64 { return &d.Shop.Springback }},
}

// wish is a tilt that may be zero.
func wish(key, label, example string, field func(d *Design) *Wish) Measure {
	return Measure{
		Key: key, Label: label, Kind: quantity.Angle, Sign: AnySign, Low: -10 * quantity.Deg, High: 35 * quantity.Deg, Step: quantity.Deg / 2, Example: example,
		field: func(d *Design, _ int) *float64 { return &field(d).Value },
		asked: func(d *Design) *bool { return &field(d).Asked },
	}
}

var choices = [...]Choice{
	text("title", "what the piece is called", func(d *Design, _ int) *string { return &d.Title }),
	oneOf("kind", "kind of piece", wordsOf(kinds[:]...), Chair, func(d *Design, _ int) *Kind { return &d.Kind }),
	oneOf("units", "units of plain numbers", wordsOf(quantity.Inch, quantity.Metric), quantity.Inch,
		func(d *Design, _ int) *quantity.System { return &d.Units }),
	oneOf("rocks", "how a cradle rocks", directions[:], Side, func(d *Design, _ int) *Direction { return &d.Rocks }),
	text("rocker.wood", "wood of the rockers", func(d *Design, _ int) *string { return &d.Rocker.Wood }),
	oneOf("rocker.top", "how the top edge runs", tops[:], Concentric, func(d *Design, _ int) *Top { return &d.Rocker.Top }),
	oneOf("rocker.nose_end", "how the nose is finished", ends[:], bench.Square, func(d *Design, _ int) *bench.Finish { return &d.Rocker.NoseEnd }),
	oneOf("rocker.tail_end", "how the tail is finished", ends[:], bench.Square, func(d *Design, _ int) *bench.Finish { return &d.Rocker.TailEnd }),
	oneOf("rocker.made", "how the rockers are made", mades[1:], Sawn, func(d *Design, _ int) *Made { return &d.Rocker.Made }),
	text("leg.N.name", "name of the leg", func(d *Design, n int) *string { return &d.Legs[n].Name }),
	oneOf("leg.N.kind", "which pair of legs", whiches[:], Front, func(d *Design, n int) *Which { return &d.Legs[n].Which }),
	text("panel.N.name", "name of the coopered panel", func(d *Design, n int) *string { return &d.Panels[n].Name }),
	text("shop.paper", "paper on which patterns are printed", func(d *Design, _ int) *string { return &d.Shop.Paper }),
	text("part.N.name", "name of the part", func(d *Design, n int) *string { return &d.Parts[n].Name }),
	oneOf("part.N.shape", "shape of the part", shapes[:], Box, func(d *Design, n int) *Shape { return &d.Parts[n].Shape }),
	text("part.N.wood", "wood of the part", func(d *Design, n int) *string { return &d.Parts[n].Wood }),
	text("sitter.N.name", "who sits", func(d *Design, n int) *string { return &d.Sitters[n].Name }),
	oneOf("sitter.N.role", "for whom it is checked", roles[:], Owner, func(d *Design, n int) *Role { return &d.Sitters[n].Role }),
	oneOf("sitter.N.sex", "whose usual sizes to take; else the mean of both", wordsOf(person.Woman, person.Man), person.Woman,
		func(d *Design, n int) *person.Sex { return &d.Sitters[n].Person.Sex }),
	oneOf("sitter.N.posture", "the only way the person sits", wordsOf(person.Postures()...), person.Sitting,
		func(d *Design, n int) *person.Posture { return &d.Sitters[n].Posture }),
	oneOf("floor.surface", "what the floor is made of", surfaces[1:], Hardwood, func(d *Design, _ int) *Surface { return &d.Floor.Surface }),
	text("back.braces.wood", "wood of the braces", func(d *Design, _ int) *string { return &d.Back.Braces.Wood }),
	oneOf("back.braces.held", "how the braces are held", helds[:], 0, func(d *Design, _ int) *body.Held { return &d.Back.Braces.Held }),
	usual("small_woman", SmallWoman), usual("large_man", LargeMan), usual("younger_child", YoungerChild), usual("older_child", OlderChild),
	usual("one_at_the_end", OneAtTheEnd), usual("arms_behind_head", ArmsBehindHead), usual("child_on_the_tail", ChildOnTheTail),
	usual("riders", Riders), usual("newborn", Newborn), usual("five_months", FiveMonths),
}

// text is a choice that may be any text.
func text(key, label string, field func(d *Design, n int) *string) Choice {
	return Choice{key, label, nil, func(d *Design, n int, word string) { *field(d, n) = word }}
}

// oneOf is a choice among words, of which the first stands for first and each other one for one more.
func oneOf[T ~int](key, label string, words []string, first T, field func(d *Design, n int) *T) Choice {
	return Choice{key, label, words, func(d *Design, n int, word string) {
		*field(d, n) = first + T(slices.Index(words, word))
	}}
}

// usual is the choice whether somebody is checked without being asked.
func usual(key string, u Usual) Choice {
	return Choice{"people." + key, "check " + u.String() + " without being asked", []string{"yes", "no"},
		func(d *Design, _ int, word string) { d.People.Without[u] = word == "no" }}
}

func wordsOf[T fmt.Stringer](all ...T) []string {
	words := make([]string, len(all))
	for i, one := range all {
		words[i] = one.String()
	}
	return words
}

// size is a size of a person.
func size(s person.Size, label string, low, high float64, example string) Measure {
	return length("sitter.N."+SizeKey(s), label, low, high, example, func(d *Design, n int) *float64 { return &d.Sitters[n].Person.Sizes[s] }).held(radiusTolerance)
}

// number is a plain count.
func number(key, label string, low, high, step float64, example string, field func(d *Design, n int) *float64) Measure {
	return Measure{Key: key, Label: label, Kind: quantity.Count, Low: low, High: high, Step: step, Example: example, field: field}
}
