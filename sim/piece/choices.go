package piece

import (
	"fmt"
	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
	"slices"
)

// Choices returns the entries that are words.
func Choices() []Choice { return slices.Clone(choices[:]) }

var choices = [...]Choice{
	text("title", "what the piece is called", func(d *Design, _ int) *string { return &d.Title }),
	oneOf("kind", "kind of piece", wordsOf(kinds[:]...), Chair, func(d *Design, _ int) *Kind { return &d.Kind }),
	oneOf("units", "units of plain numbers", wordsOf(quantity.Inch, quantity.Metric), quantity.Inch,
		func(d *Design, _ int) *quantity.System { return &d.Units }),
	oneOf("rocks", "how a cradle rocks", directions[:], Side, func(d *Design, _ int) *Direction { return &d.Rocks }),
	text("rocker.wood", "wood of the rockers", func(d *Design, _ int) *string { return &d.Rocker.Wood }),
	oneOf("rocker.top", "how the top edge runs", tops[:], Concentric,
		func(d *Design, _ int) *Top { return &d.Rocker.Top }),
	oneOf("rocker.nose_end", "how the nose is finished", ends[:], bench.Square,
		func(d *Design, _ int) *bench.Finish { return &d.Rocker.NoseEnd }),
	oneOf("rocker.tail_end", "how the tail is finished", ends[:], bench.Square,
		func(d *Design, _ int) *bench.Finish { return &d.Rocker.TailEnd }),
	oneOf("rocker.made", "how the rockers are made", mades[1:], Sawn,
		func(d *Design, _ int) *Made { return &d.Rocker.Made }),
	text("leg.N.name", "name of the leg", func(d *Design, n int) *string { return &d.Legs[n].Name }),
	oneOf("leg.N.kind", "which pair of legs", whiches[:], Front,
		func(d *Design, n int) *Which { return &d.Legs[n].Which }),
	text("panel.N.name", "name of the coopered panel", func(d *Design, n int) *string { return &d.Panels[n].Name }),
	text("shop.paper", "paper on which patterns are printed", func(d *Design, _ int) *string { return &d.Shop.Paper }),
	text("part.N.name", "name of the part", func(d *Design, n int) *string { return &d.Parts[n].Name }),
	oneOf("part.N.shape", "shape of the part", shapes[:], Box, func(d *Design, n int) *Shape { return &d.Parts[n].Shape }),
	text("part.N.wood", "wood of the part", func(d *Design, n int) *string { return &d.Parts[n].Wood }),
	text("sitter.N.name", "who sits", func(d *Design, n int) *string { return &d.Sitters[n].Name }),
	oneOf("sitter.N.role", "for whom it is checked", roles[:], Owner,
		func(d *Design, n int) *Role { return &d.Sitters[n].Role }),
	oneOf("sitter.N.sex", "whose usual sizes to take; else the mean of both", wordsOf(person.Woman, person.Man), person.Woman,
		func(d *Design, n int) *person.Sex { return &d.Sitters[n].Person.Sex }),
	oneOf("sitter.N.posture", "the only way the person sits", wordsOf(person.Postures()...), person.Sitting,
		func(d *Design, n int) *person.Posture { return &d.Sitters[n].Posture }),
	oneOf("floor.surface", "what the floor is made of", surfaces[1:], Hardwood,
		func(d *Design, _ int) *Surface { return &d.Floor.Surface }),
	text("back.braces.wood", "wood of the braces", func(d *Design, _ int) *string { return &d.Back.Braces.Wood }),
	oneOf("back.braces.held", "how the braces are held", helds[:], 0,
		func(d *Design, _ int) *body.Held { return &d.Back.Braces.Held }),
	usual("small_woman", SmallWoman), usual("large_man", LargeMan), usual("younger_child", YoungerChild), usual("older_child", OlderChild),
	usual("one_at_the_end", OneAtTheEnd), usual("arms_behind_head", ArmsBehindHead), usual("child_on_the_tail", ChildOnTheTail),
	usual("riders", Riders), usual("newborn", Newborn), usual("five_months", FiveMonths),
} // text is a choice that may be any text.
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
