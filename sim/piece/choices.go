package piece

import (
	"fmt"
	"reflect"
	"slices"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// Choices returns the entries that are words.
func Choices() []Choice { return slices.Clone(choices[:]) }

var choices = [...]Choice{
	text("title", "what the piece is called"),
	oneOf("kind", "kind of piece", wordsOf(kinds[:]...), Chair),
	oneOf("units", "units of plain numbers", wordsOf(quantity.Inch, quantity.Metric), quantity.Inch),
	oneOf("rocks", "how a cradle rocks", directions[:], Side),
	text("rocker.wood", "wood of the rockers"),
	oneOf("rocker.top", "how the top edge runs", tops[:], Concentric),
	oneOf("rocker.nose_end", "how the nose is finished", ends[:], bench.Square),
	oneOf("rocker.tail_end", "how the tail is finished", ends[:], bench.Square),
	oneOf("rocker.made", "how the rockers are made", mades[1:], Sawn),
	text("leg.N.name", "name of the leg"),
	oneOf("leg.N.kind", "which pair of legs", whiches[:], Front),
	text("panel.N.name", "name of the coopered panel"),
	text("shop.paper", "paper on which patterns are printed"),
	text("part.N.name", "name of the part"),
	oneOf("part.N.shape", "shape of the part", shapes[:], Box),
	text("part.N.wood", "wood of the part"),
	text("sitter.N.name", "who sits"),
	oneOf("sitter.N.role", "for whom it is checked", roles[:], Owner),
	oneOf("sitter.N.sex", "whose usual sizes to take; else the mean of both", wordsOf(person.Woman, person.Man), person.Woman),
	oneOf("sitter.N.posture", "the only way the person sits", wordsOf(person.Postures()...), person.AtEase),
	oneOf("measured.level_on", "what the level lies on", levelsOn[:], OnSeat),
	oneOf("floor.surface", "what the floor is made of", surfaces[1:], Hardwood),
	text("back.braces.wood", "wood of the braces"),
	oneOf("back.braces.held", "how the braces are held", helds[:], body.Held(0)),
	usual("small_woman", SmallWoman), usual("large_man", LargeMan), usual("younger_child", YoungerChild), usual("older_child", OlderChild),
	usual("one_at_the_end", OneAtTheEnd), usual("arms_behind_head", ArmsBehindHead), usual("child_on_the_tail", ChildOnTheTail),
	usual("riders", Riders), usual("newborn", Newborn), usual("five_months", FiveMonths),
}

// text is a choice that may be any text.
func text(key, label string) Choice {
	field := fieldOf(key)
	return Choice{key, label, nil, func(d *Design, n int, word string) { field(d, n).SetString(word) }}
}

// oneOf is a choice among words, of which the first stands for first and each other one for one more.
func oneOf[T ~int](key, label string, words []string, first T) Choice {
	field := fieldOf(key)
	return Choice{key, label, words, func(d *Design, n int, word string) {
		field(d, n).Set(reflect.ValueOf(first + T(slices.Index(words, word))))
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
