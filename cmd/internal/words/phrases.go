package words

import (
	"strings"

	"rockerwright/sim/piece"
)

// phrases are what is said of one kind of piece and otherwise of another: one value a kind, of a cradle two, for
// one that rocks sideways has a left and a right, one that rocks end to end a head and a foot. Nothing else in
// this room knows of kinds.
type phrases struct {
	piece.Directions
	piece string // what it is called

	shortForward, shortBack   string // the ways, over a column
	overForward, overBack     string // behind "goes over"
	angleForward              string // behind an angle in a table
	angleBack                 maybe  // where a table does not say back anyhow
	nose, tail                string // the ends of a rocker, before "tip"
	noseEnd, tailEnd          string // the ends by themselves
	noseLength, tailLength    string // what limits it on these ways
	ahead, behind             string // from a place on a rocker
	reachAhead, reachBehind   string // as it rocks
	fromCorner, fromLow       string // how a place is counted forward
	leftRocker, rightRocker   string // over a column
	leftPattern, rightPattern string // in an outline
	faces                     []string
	renamed                   *strings.Replacer // what sim calls outcomes, trials and readings

	rider, seated string // who is at ease in it, and the head of their column
	owners        string // the label of what is said of them
	falls         string // what its seat does, over a column
	tracks        string // the entries that tell how far apart the rockers stand
	noPull        string // why nothing is said of a pull
	legs          maybe  // how long legs are on the cut list
	slides        maybe  // what sliding does
	marked        maybe  // the title over its rests, set against its Marks
	dotted        maybe  // how those stand in the chart of righting arms
	infants       maybe  // where their sizes are from
	lying         maybe  // how they are taken to lie
	disclaimer    string // the last line of every first page
	alone         maybe  // of one at the end
	beware        []string
	whoever       string // who uses it, and until when
	fuller        bool   // whether its owner is told that a child grows, and of weak wood
	leans         maybe  // how it stands, as its owner sees it
	children      string // the title over what children do
	climb         []string
	locked        maybe // when it is not used
}

// maybe is a phrase that a kind may have none of.
type maybe string

func phrasesOf(d piece.Design) *phrases {
	return [...][2]*phrases{piece.Chair: {&chairs, &chairs}, piece.Settee: {&settees, &settees},
		piece.Cradle: {&sideways, &endwise}, piece.Horse: {&horses, &horses}}[d.Kind][d.Rocks]
}

// judged begins what stands at the foot of every page.
const judged = "A calculation for your judgement, no certificate. "

var chairs = phrases{
	Directions: piece.Design{Kind: piece.Chair}.Directions(),
	piece:      "chair",

	shortForward: "forward", shortBack: "back", overForward: "forwards", overBack: "backwards", angleForward: " fwd",
	nose: "nose", tail: "tail", noseEnd: "nose", tailEnd: "tail",
	noseLength: "the length of the nose", tailLength: "the length of the tail",
	ahead: "ahead", behind: "behind", reachAhead: "ahead", reachBehind: "behind",
	fromCorner: "forward of the square corner", fromLow: "ahead of the low point (behind it, below zero)",
	leftRocker: "left", rightRocker: "right", leftPattern: "left", rightPattern: "right",
	faces:   []string{"Right rocker: this face out, the other inside.", "Left rocker: turned over, this face inside."},
	renamed: strings.NewReplacer(),

	rider: "the owner at ease", seated: "seated", owners: "YOUR OWNER",
	falls:  "falls",
	tracks: "track under [rocker], or width under [seat],",
	noPull: "Draw [seat] and [back] to learn what a pull at the top of the back does.",
	legs:   ", legs to the top of the seat",
	slides: "Slid on a concentric top edge the seat turns about the arc's centre and takes the people along, so it hardly tilts; " +
		"on a straight one it moves along the edge, and tilts.",
	disclaimer: judged + "Clamp and sit before glue.",
	beware: []string{
		"A child who climbs on the tail, or leans over the back, can take any chair over. " +
			"Keep fingers, toes and tails from under the rockers; the tails are a trip hazard.",
		"Rugs, a sloping porch and worn rockers change every number on this page."},
	whoever:  " One at a time.",
	fuller:   true,
	leans:    " With somebody in it, it leans by itself to where that person sits at ease; it should never need to be held.",
	children: "Children on the tail",
	climb: []string{"A child who stands on the ends of the rockers behind, climbs up the back or leans over it can take it over, " +
		"with or without somebody in it. It is no ladder and no toy. Nobody stands on the seat."},
}

// but returns these phrases with some changed.
func (p phrases) but(change func(p *phrases)) phrases {
	change(&p)
	return p
}

var settees = chairs.but(func(p *phrases) {
	p.piece = "settee"
	p.alone = "One alone at the end loads one rocker more than the other; where the seat reaches out over the " +
		"rockers the far end can lift. Sit down and rise one at a time."
	p.whoever, p.fuller = " Two together, or one alone; one alone at the end was looked at too.", false
	p.children = "Children, and one at the end"
	p.climb = append(p.climb[:1:1], "Sit down and rise one at a time. One alone sits in the middle sooner than at the end: "+
		"at the end one rocker carries nearly all, and the far end can lift.")
})

var horses = chairs.but(func(p *phrases) {
	p.piece, p.owners = "horse", "RIDERS"
	p.disclaimer = judged + "Keep feet and toes clear of the bows; young children ride only with an adult beside them."
	p.beware = []string{"Feet, toes and fingers are caught under bows. " +
		"A bow that is nearly straight at both ends, or stops, resists going over. " +
		"Published toy tests stand a horse on a slope of 10 degrees with its riders: ask a test house."}
	p.whoever, p.fuller = " One rider at a time.", false
	p.children = "Riders"
	p.climb = []string{"A young child rides only with a grown-up within reach, sitting, holding on, feet on the rests. " +
		"Who leans to and fro at each turn of the rock takes any " + p.piece + " over in the end: no bucking. " +
		"Nobody stands on it, climbs on the bows or the tail, or stands in front of or behind it while somebody rides. " +
		"Toes and fingers are caught under the bows."}
})

var endwise = chairs.but(func(p *phrases) {
	p.turned(piece.Design{Kind: piece.Cradle, Rocks: piece.End}.Directions())
	p.shortForward, p.shortBack, p.reachAhead, p.reachBehind = "foot", "head", "at the foot", "at the head"
	p.piece, p.owners, p.rider, p.seated = "cradle", "INFANTS", "the first infant", "laden"
	p.falls = "tilts"
	p.tracks, p.noPull = "track under [rocker]", "What a pull at the rail does is not worked out."
	p.legs, p.slides, p.leans = "", "", ""
	p.marked, p.dotted = "Against 5 and 10 degrees", " The dotted lines stand at 5 and 10 degrees."
	p.infants = "Infants: weights and lengths of the CDC growth charts (2000)."
	p.disclaimer = judged + "Look at 5 and 10 degrees of tilt; fit a lock and stops by the current local standard; " +
		"never leave an infant in an unlocked cradle."
	p.beware = []string{
		"Infants have died in cradles that rested tilted by more than 5 degrees with the lock not used (published " +
			"case series, 1991 to 1997). Look at the lines at 5 and at 10 degrees; a curve alone cannot hold a " +
			"cradle within 5 degrees: fit stops and a lock that a child cannot open.",
		"Sideways tilt and the slope from head to foot are two different angles with different limits in the " +
			"standards. Read the current one.",
		"The bedding, the height of the sides and the gaps are outside this calculation."}
	p.whoever = " Stop using it when the child weighs more, can sit, pull up or push up on hands and knees, " +
		"or reaches the age that your local standard names, whichever comes first (common practice)."
	p.fuller = false
	p.children = "The infant, and other children"
	p.climb = []string{
		"Never leave an infant in it unless it is locked and stands level. " +
			"Infants have died in cradles that came to rest tilted with the lock not used.",
		"Its stops and its lock are not for taking off. " +
			"A brother or sister who leans on a side, climbs in or rocks it hard takes it over: be there."}
	p.locked = " A cradle with a lock or a stop that is loose or lost is not used until it is mended."
})

var sideways = endwise.but(func(p *phrases) {
	p.nose, p.tail, p.noseEnd, p.tailEnd = "right", "left", "right end", "left end"
	p.turned(piece.Design{Kind: piece.Cradle}.Directions())
	p.shortForward, p.shortBack, p.reachAhead, p.reachBehind = "right", "left", "to the right", "to the left"
	p.angleForward, p.angleBack = " right", " left"
	p.noseLength, p.tailLength = "the length of the rocker on the right", "the length of the rocker on the left"
	p.leftRocker, p.rightRocker, p.leftPattern, p.rightPattern = "at head", "at foot", "head end", "foot end"
	p.faces = []string{"Rocker at the head: this face inside.", // seen from the foot
		"Rocker at the foot: this face out, the other inside."}
	p.leans = " It stands level from side to side, and comes back to that by itself."
	p.lying = "Infants are capsules of even density, of the weight and length of the growth charts (CDC, 2000; no " +
		"published balance point of an infant was found). How far up the bed one lies, at the foot, in the middle " +
		"or at the head, makes no difference to a rock from side to side; how far to one side does."
})

// turned puts the ways of a cradle, whose tips are named already, for those of a chair.
func (p *phrases) turned(ways piece.Directions) {
	p.Directions = ways
	p.overForward, p.overBack, p.ahead, p.behind = ways.Forward, ways.Back, ways.Forward, ways.Back
	p.fromCorner = "from the square corner, " + ways.Forward
	p.fromLow = "from the low point, " + ways.Forward + " (" + ways.Back + ", below zero)"
	p.renamed = strings.NewReplacer("backwards", ways.Back, "forwards", ways.Forward,
		"nose tip", p.nose+" tip", "tail tip", p.tail+" tip", "nose, along", p.noseEnd+", along", "tail, along", p.tailEnd+", along",
		"at the nose", "at the "+p.noseEnd, "at the tail", "at the "+p.tailEnd,
		"rises to the front", "rises "+ways.Forward, "sitter leans back", "lies further "+ways.Back,
		"front mark", p.nose+" mark", "rear mark", p.tail+" mark", "the rear one", "the "+p.tail+" one",
		"front raised", p.nose+" raised", "ahead of the low point", "from the low point, "+ways.Forward)
}
