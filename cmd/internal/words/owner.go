package words

import (
	"fmt"
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// owner returns the page for whoever takes the piece home: no mathematics.
func (v voice) owner(a *trial.Answer, rocking *trial.Rocking) Section {
	r := &a.Report
	name := plain(short(r.Design.Title))
	if name == "" {
		name = "this " + v.piece()
	}
	return Section{ID: "owner", Title: "For the owner of " + name, Blocks: []Block{
		{Title: "Who it was checked for", Lines: []Line{{Text: v.whom(a)}}},
		{Title: "How it should rest", Lines: []Line{{Text: v.shouldRest(r)}}},
		{Title: "Where it stands", Lines: []Line{{Text: v.where(rocking)}}},
		{Title: "Fingers, toes and tails", Lines: []Line{{Text: "Under each rocker is a gap that closes as it rocks. Keep fingers, toes, cords and the tails of pets away from it. The ends of the rockers reach out where one walks: go round them, and do not leave it where somebody passes in the dark."}}},
		{Title: v.childrenTitle(), Lines: v.children()},
		{Title: "Wear, and when to bring it back", Lines: []Line{{Text: v.wear()}}},
		{Lines: []Line{
			{Text: "Nothing on this page is a test or a certificate: it was calculated from the maker's drawing."},
			{Text: "Made by ________________________  Date ______________  Next look ______________"},
		}},
	}}
}

// whom says who was checked: the lightest and the heaviest.
func (v voice) whom(a *trial.Answer) string {
	r := &a.Report
	list := r.Checked()
	if len(list) == 0 {
		return "Nobody: only the empty " + v.piece() + " was checked. Ask the maker before anybody uses it."
	}
	named := func(c check.Checked) string {
		return fmt.Sprintf("%s of %s", cutTo(plain(c.Name), 40), v.with(c.Mass, quantity.Mass))
	}
	light, heavy := list[0], list[len(list)-1]
	text := fmt.Sprintf("By calculation, the lightest: %s; the heaviest: %s.", named(light), named(heavy))
	if light == heavy {
		text = "By calculation: " + named(light) + "."
	}
	if !a.Holds() {
		text += " Not all of them keep the limits that the maker set: ask which before you use it."
	}
	switch v.kind {
	case piece.Cradle:
		return text + " Stop using it when the child weighs more, can sit, pull up or push up on hands and knees, or reaches the age that your local standard names, whichever comes first (common practice)."
	case piece.Horse:
		return text + " One rider at a time."
	case piece.Settee:
		return text + " Two together, or one alone; one alone at the end was looked at too."
	}
	text += " One at a time."
	if r.ForAChild() {
		text += " A child grows out of what was checked: have it looked at again before a bigger one sits in it."
	}
	for _, f := range of(a, trial.Warns) {
		if f.What == trial.Braces || f.What == trial.Rockers {
			text += " " + v.warning(a, f).Text
		}
	}
	return text
}

// shouldRest says what the owner can see of the rest with a tape, empty and still.
func (v voice) shouldRest(r *check.Report) string {
	empty := &r.Loads[0]
	if !empty.Upright() {
		return "Empty, it does not stand by itself. Ask the maker before you use it."
	}
	noseUp, tailUp := r.TipsAtRest(empty)
	nose, tail := v.tips()
	text := fmt.Sprintf("Empty and still on a level floor, the %s ends of the rockers stand about %s and the %s ends about %s off the floor, the same on both sides.",
		tail, v.with(tailUp, quantity.Length), nose, v.with(noseUp, quantity.Length))
	if v.sideways() {
		text += " It stands level from side to side, and comes back to that by itself."
	} else if v.kind != piece.Cradle {
		text += " With somebody in it, it leans by itself to where that person sits at ease; it should never need to be held."
	}
	return text + " If it comes to rest in another way than when it was new, something has moved or worn."
}

// where says on what floor it stands, and the room it takes.
func (v voice) where(rocking *trial.Rocking) string {
	text := "On a hard, level floor. A thick rug, a slope, a porch laid to shed the rain or a gap between boards changes how it rests and how near it is to going over. Not by stairs, a step, a hearth or the edge of a porch."
	if rocking == nil || math.IsNaN(rocking.Room.Behind) {
		return text
	}
	return text + " From the middle of the rockers it reaches " + v.reaches(*rocking) + " in a good rock: leave that clear, and a hand more."
}

// reaches says how far a piece reaches on both sides while it rocks.
func (v voice) reaches(r trial.Rocking) string {
	behind, ahead := "behind", "ahead"
	switch {
	case v.sideways():
		behind, ahead = "to the left", "to the right"
	case v.kind == piece.Cradle:
		behind, ahead = "at the head", "at the foot"
	}
	by := func(who string) string {
		if who == "" {
			return ""
		}
		return " (" + plain(short(who)) + ")"
	}
	return fmt.Sprintf("%s %s%s and %s %s%s", v.with(r.Room.Behind, quantity.Length), behind, by(r.Room.BehindBy), v.with(r.Room.Front, quantity.Length), ahead, by(r.Room.FrontBy))
}

func (v voice) childrenTitle() string {
	switch v.kind {
	case piece.Cradle:
		return "The infant, and other children"
	case piece.Horse:
		return "Riders"
	case piece.Settee:
		return "Children, and one at the end"
	}
	return "Children on the tail"
}

// children says what children do to a piece on rockers.
func (v voice) children() []Line {
	switch v.kind {
	case piece.Cradle:
		return []Line{
			{Text: "Never leave an infant in it unless it is locked and stands level. Infants have died in cradles that came to rest tilted with the lock not used."},
			{Text: "Its stops and its lock are not for taking off. A brother or sister who leans on a side, climbs in or rocks it hard takes it over: be there."}}
	case piece.Horse:
		return []Line{{Text: "A young child rides only with a grown-up within reach, sitting, holding on, feet on the rests. Nobody stands on it, climbs on the bows or the tail, or stands in front of or behind it while somebody rides. Toes and fingers are caught under the bows."}}
	}
	lines := []Line{{Text: "A child who stands on the ends of the rockers behind, climbs up the back or leans over it can take it over, with or without somebody in it. It is no ladder and no toy. Nobody stands on the seat."}}
	if v.kind == piece.Settee {
		lines = append(lines, Line{Text: "Sit down and rise one at a time. One alone sits in the middle sooner than at the end: at the end one rocker carries nearly all, and the far end can lift."})
	}
	return lines
}

// wear says when the maker should see it again.
func (v voice) wear() string {
	text := "The rockers wear first at the middle, where it stands. Once a year turn it over and look: bring it back when the middle has gone flat or shows a ridge, when a joint moves, clicks or opens, when a rocker, a leg or a rail has a crack, when it creeps over the floor as it rocks, when the two sides stand unlike, or when it no longer rests as it did."
	if v.kind == piece.Cradle {
		text += " A cradle with a lock or a stop that is loose or lost is not used until it is mended."
	}
	return text
}
