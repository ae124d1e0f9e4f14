package main

import "testing"

// says are the facts that a paper tells, and the words around each number: # is the number, ~ one that is passed over,
// {title}, {unit}, {nose} and {tail} are those of the piece. All places where the words stand must tell one value.
type says map[string]string

// A paper is one row of the table: how its words are got, a space apart, and all that it must say. What is fine is
// measured or said in full, not rounded as in a shop.
type paper struct {
	name string
	read func(t *testing.T, p *madePiece) string
	fine bool
	says says
}

// firstPage is what all say that begin as check does.
var firstPage = says{
	"title": `{title} · `, "radius": `· # {unit} rocker ·`,
	"nose tip": `\({tail}\) and # {unit} \({nose}\)`, "tail tip": `tips # \({tail}\)`, "tip to tip": `off the floor, # {unit} tip to tip`,
	"falls empty": `seat falls back #`, "falls seated": `seat falls back ~ #`,
}

// sideBySide is what a table of two designs says, here of one beside itself.
var sideBySide = says{
	"nose tip": `{nose} tip up # # {unit}`, "tail tip": `{tail} tip up # # {unit}`, "tip to tip": `tip to tip # # {unit}`,
	"falls empty": `seat falls, empty # # deg`, "falls seated": `seat falls, seated # # deg`,
}

// fullSize is what is measured on a rocker that is drawn at full size, and on the legs.
var fullSize = says{
	"title": `Rocker,? {title}`, "radius": `radius #`, "nose": `, nose #`, "tail": `, tail #`,
	"nose tip": `nose tip #`, "tail tip": `tail tip #`, "tip to tip": `tip to tip #`, "front leg": `front leg #`, "rear leg": `rear leg #`,
}

// designFile is what a design file says.
var designFile = says{
	"title": `title {title}\.`, "radius": `radius #`, "nose": `, nose #`, "tail": `, tail #`, "falls as drawn": `a fall of #`,
}

// allPapers is the table.
var allPapers = []paper{
	{"check", said("check"), false, firstPage},
	{"check --all", said("check", "--all"), false, firstPage},
	{"check, side by side", said("check", "FILE"), false, sideBySide},
	{"check --json", inJSON, true, says{"title": `^{title}:`,
		"radius": `radius #`, "nose": `nose #`, "tail": `tail #`,
		"falls empty": `empty falls #`, "falls seated": `seated falls #`, "falls put together": `put together falls #`}},
	{"letter", said("report", "--text"), false, firstPage},
	{"report", inReport, false, with(firstPage, says{"falls empty": `empty seat falls #`})},
	{"picture of the report", picturedInReport, true, says{
		"falls empty": `empty, drawn falling #`, "falls seated": `seated, drawn falling #`}},
	{"design file in the report", fileInReport, true, designFile},
	{"class sheet", inClass, false, with(sideBySide, says{"title": firstPage["title"], "radius": firstPage["radius"]})},
	{"page", onPage("Title", "Sheet", "More"), false, firstPage},
	{"picture of the page", picturedOnPage, true, says{"falls seated": `seated, drawn falling #`}},
	{"form of the page", formOnPage, true, designFile},
	{"design file of the page", fileOfPage, true, designFile},
	{"design file of new", fileOfNew, true, designFile},
	{"design file of size", fileOfSize, true, designFile}, // with the radius kept, and nothing else asked
	{"size", said("size", "--all", "--like", "FILE"), false, says{"title": `^{title} · `,
		"radius": `[^,] radius(?: 1, from {nose})? # ~ ~ ~ ~ {unit}`,
		"nose":   `{nose} along the c\S* # ~ ~ ~ ~ {unit}`, "tail": `{tail} along the c\S* # ~ ~ ~ ~ {unit}`,
		"tip to tip": `tip to tip # ~ ~ ~ ~ {unit}`, "falls empty": `seat falls, empty #`, "falls seated": `seat falls, seated #`}},
	{"size, its sentence", said("size", "--like", "FILE"), false, says{"radius at rest": ` s on # {unit}, its centre`}},
	{"layout, as printed", func(_ *testing.T, p *madePiece) string { return p.layout }, false, says{"title": `^{title}: layout `}},
	{"bench card", onCard("1 bench card.pdf", 0), false, says{"title": `^{title}: bench card`, "radius": `FLOOR EDGE RADIUS #`,
		"nose tip": `{nose} tip # {unit} and {tail}`, "tail tip": `and {tail} tip # {unit} off the floor`,
		"tip to tip": `# {unit} tip to tip`, "floor edge": `# {unit} along the floor edge`, "low point": `Low point # {unit}`,
		"falls empty": `the seat should fall #`, "falls seated": `\([^()]*: #\): cut nothing by that`,
		"front leg": `foot to top of the seat #`, "rear leg": `foot to top of the seat ~ #`}},
	{"check sheet", onCard("1 bench card.pdf", 1), false, says{"title": `^{title}: check sheet`,
		"nose tip": `{nose} tip off the floor #`, "tail tip": `{tail} tip off the floor #`, "tip to tip": `tip to tip #`,
		"falls empty": `seat falls back #`, "falls seated": `seat falls back ~ \(37\) _+ #`}},
	{"stations", onCard("1 bench card.pdf", 2), false, says{"title": `^{title}: stations`, // a tip is 0 over the line from tip to tip
		"nose tip": `{nose} tip, ~ (?:0|#) –`, "tail tip": `{tail} tip, ~ (?:0|#) –`, "low point": `{tail} tip, -(?:~ 0|# ~) –`}},
	{"cut list on its card", onCard("1 bench card.pdf", 3), false, says{"title": `^{title}: cut list`,
		"floor edge": `Finished .*?strip of the rockers ~ of # ×`,
		"front leg":  `Finished .*?front leg ~ of # ×`, "rear leg": `Finished .*?rear leg ~ of # ×`}},
	{"cut list.csv", inLayout("cut list.csv"), false, says{"floor edge": `strip of the rockers,~,,#(?: in)?,`,
		"front leg": `front leg,~,,#(?: in)?,`, "rear leg": `rear leg,~,,#(?: in)?,`}},
	{"pattern", inWords("* rocker (*.pdf"), false, says{"title": `Rocker,? {title} `, "radius": `(?:up|arc 1:) pin to floor edge #`,
		"tip to tip": `tip to tip # {unit}`, "low point": `low point # {unit}`}},
	{"pattern, measured", measuredPDF, true, with(fullSize, says{"front leg": "", "rear leg": "", "low point": `low point #`})},
	{"pattern, measured in SVG", measuredSVG, true, fullSize},
	{"pattern, measured in DXF", measuredDXF, true, fullSize},
	{"form", inWords("* form inside the curve (*.pdf"), false, says{"title": `curve {title} `,
		"radius": `(?:FORM RADIUS:|arc 1:) floor edge # {unit}, form`}},
	{"leg sheet", inWords("* legs.pdf"), false, says{"title": `{title}: legs`,
		"front leg": `front leg, # {unit} long|foot to top of the seat #`,
		"rear leg":  `rear leg, # {unit} long|foot to top of the seat ~ #`}},
	{"pattern of front legs", inWords("* front legs left and right (*.pdf"), false, says{"title": `left and right,? {title} `,
		"front leg": `thick, # {unit} long`}},
	{"pattern of rear legs", inWords("* rear legs left and right (*.pdf"), false, says{"title": `left and right,? {title} `,
		"rear leg": `thick, # {unit} long`}},
}

// A silence is what a paper does not say of some pieces, and must not, and why. "*" is any paper, or all of it; words of
// the table stand for a fact in these words. Of a piece without a seat no paper says a fall or a leg.
type silence struct {
	paper, fact string
	of          func(p *madePiece) bool
	why         string
}

var silences = []silence{
	{"*", firstPage["radius"], ofArcs, "the heading says how many arcs there are"},
	{"cut list.csv", "floor edge", sawn, "a rocker out of a board is listed as long as its board"},
	{"cut list on its card", "floor edge", sawn, "as there"},
	{"cut list.csv", "front leg", legsTaken, "only what is drawn is listed"},
	{"cut list.csv", "rear leg", legsTaken, "as there"},
	{"cut list on its card", "front leg", legsTaken, "as there"},
	{"cut list on its card", "rear leg", legsTaken, "as there"},
	{"form", "*", sawn, "nothing is bent"},
	{"leg sheet", "*", noSeat, "it has no legs"},
	{"pattern of front legs", "*", noSeat, "it has no legs"},
	{"pattern of rear legs", "*", noSeat, "it has no legs"},
}

func sawn(p *madePiece) bool      { return p.section("rocker", 0)["made"] == "sawn" }
func ofArcs(p *madePiece) bool    { return len(p.hand.arcs) > 1 }
func legsTaken(p *madePiece) bool { return p.hand.hasSeat && !p.hand.legsDrawn }
func noSeat(p *madePiece) bool    { return !p.hand.hasSeat }

// with returns what is said with other words for some of it; "" where it is not said.
func with(all, other says) says {
	both := says{}
	for _, list := range []says{all, other} {
		for name, words := range list {
			both[name] = words
		}
	}
	return both
}
