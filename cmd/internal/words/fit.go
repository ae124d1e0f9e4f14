package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// off says in which way a measure is beyond custom: too much, too little.
var off = map[string][2]string{
	"seat.front":  {"high", "low"},
	"seat.depth":  {"deep", "shallow"},
	"seat.width":  {"wide", "narrow"},
	"arms.height": {"high", "low"},
	"back.height": {"tall", "short"},
	"back.lumbar": {"high", "low"},
}

// below returns a block of a table, and what is said below it; nothing of a table without rows.
func below(b sheet.Block, texts ...string) []sheet.Block {
	if len(b.Table.Rows) == 0 {
		return nil
	}
	return []sheet.Block{b, {All: b.All, Lines: sheet.Says(texts...)}}
}

// fitTable returns have, want and change by of each measure.
func (v voice) fitTable(a *trial.Answer) []sheet.Block {
	t := &sheet.Table{Head: []string{"Owner at ease", "have", "want", "change by", "goes by"}}
	for _, f := range a.Fit {
		want, change := v.bare(f.Low)+" to "+v.bare(f.High), "–"
		if math.IsInf(f.High, 1) {
			want = v.bare(f.Low) + " or more"
		}
		if f.Change != 0 {
			change = pick(f.Change > 0, "+", "-") + v.bare(math.Abs(f.Change))
		}
		t.Mark(!f.Holds(), f.What, v.bare(f.Have), want, change, f.Size.String())
	}
	return below(sheet.Block{Title: "Fit", All: true, Table: t}, v.misfits(a), "In "+v.inUnits("inches", "millimetres")+
		". The clearances between a person and a seat are common practice among chairmakers; change them to taste.")
}

// trouble says in what way a seat does not fit.
func (v voice) trouble(m check.Misfit) string {
	by := v.length(m.By)
	return map[check.Trouble]string{
		check.FeetHang: "feet " + by + " off the floor", check.KneesUp: "knees " + by + " above the hips",
		check.TooWide: "hips " + by + " wider than the seat", check.TooDeep: "seat " + by + " deeper than the thigh",
		check.KneesOverChin: "knees above the chin",
	}[m.Trouble]
}

// people returns what was given and what was estimated of each person.
func (v voice) people(r check.Report) []sheet.Block {
	first := slices.IndexFunc(r.Somebody, func(s check.Somebody) bool { return s.Role == piece.Owner })
	if first < 0 {
		return nil
	}
	owner := &r.Somebody[first]
	t := &sheet.Table{Head: []string{"Sizes of " + brief(owner.Name), "", "", ""}}
	for _, s := range person.Sizes() {
		text := v.length(owner.Person.Sizes[s])
		switch s {
		case person.Stature:
			text = quantity.Tall(owner.Person.Sizes[s], v.units)
		case person.Mass:
			text = v.mass(owner.Person.Sizes[s])
		}
		t.Add(s.String()+" ("+s.Science()+")", text, "", owner.Person.Sources[s].String())
	}
	var others []string
	for _, one := range r.Somebody {
		if sizes := one.Person.Sizes; one.Name != owner.Name {
			others = append(others, brief(one.Name)+" "+quantity.Tall(sizes[person.Stature], v.units)+", "+v.mass(sizes[person.Mass]))
		}
	}
	return below(sheet.Block{Title: "People", All: true, Table: t},
		"Estimated sizes go with the height in the ANSUR II survey of soldiers (2012), "+
			"of children with the CDC growth charts (2000). Weights of limbs are by de Leva (1996), "+
			"of children by Jensen (1986, 1989). "+
			"A big belly or pregnancy carries the balance point forward; this does not know of it.",
		when(len(others) > 0, "Others: %s.", strings.Join(others, "; ")), postures(r))
}

// postures says how the postures are meant, of those that were checked.
func postures(r check.Report) string {
	meant := map[person.Posture]string{
		person.Sitting:   "sitting is at ease, shoulders a hand off the back, head up",
		person.LyingBack: "lying back is trunk on the back and head behind it",
		person.Perched: "perched is near the front edge with the feet drawn back on the floor, a bar on two supports: " +
			"the seat carries what the feet do not",
		person.FeetFlat: "feet flat leaves the feet and the ankles' share of the shanks to the floor, " +
			"each shank a bar from knee to ankle",
		person.FeetUp:         "feet up is shanks stretched out, off the floor",
		person.PushingUp:      "pushing up has half of the weight on the ends of the arms, through the hands (our judgement)",
		person.RidingForward:  "riders lean 25 degrees fore and aft",
		person.ArmsBehindHead: "arms behind the head is lying back, elbows up",
	}
	var said []string
	for _, p := range person.Postures() {
		checked := func(l check.Load) bool { return l.Posture == p && len(l.Figures) > 0 }
		if meant[p] != "" && slices.ContainsFunc(r.Loads, checked) {
			said = append(said, meant[p])
		}
	}
	return when(len(said) > 0, "%s. In all but perched, feet flat and pushing up the whole person rides on the piece.",
		upperFirst(strings.Join(said, "; ")))
}

// noTest is said wherever wood is bent on paper.
const noTest = "Not a strength test: straight-grained, dry wood of the middle of its kind, pressed once and gently. " +
	"Joints, knots, screw holes, shock and years of rocking are not in it."

// gives returns how a back of braces yields, load by load; nothing where it is stiff.
func (v voice) gives(r check.Report) []sheet.Block {
	t := &sheet.Table{Head: []string{"Leaning on the back", "presses", "yields", "leans on by", "of the strength"}}
	for _, l := range r.Loads {
		if g := l.Give; g != nil {
			share := percent(g.Share) + " (" + shares(g.Least, g.Most) + ")"
			t.Mark(g.Most > 1, brief(l.Name), v.force(g.Force), v.length(g.Yield), v.degrees(g.Turn), share)
		}
	}
	b := r.Design.Back.Braces
	return below(sheet.Block{Title: "The back gives", All: true, Table: t}, fmt.Sprintf(
		"%s braces of %s, %s by %s, %s long, bent as one beam %s. "+
			"Rest, recline and the load on the back are solved together; the readings above are with the back bent. "+
			"Shares in brackets: if the wood is stronger or weaker than the middle of its kind "+
			"by two standard deviations (16 %% each, from memory); "+
			"the yield goes from %s of that shown, as stiffness spreads (22 %% each, from memory).",
		v.shop(b.Count, quantity.Count), brief(b.Wood), v.length(b.Width), v.length(b.Thickness), v.length(b.Length),
		pick(b.Held == body.OneEnd, "fast in the seat, free at the top", "resting in seat and crest rail"),
		shares(1/(1+2*piece.ModulusSpread), 1/(1-2*piece.ModulusSpread))), noTest)
}

// bends returns how the rockers bend with the heaviest load on one end; nothing where
// their sizes are not given.
func (v voice) bends(r check.Report) []sheet.Block {
	if len(r.Bending) == 0 {
		return nil
	}
	t := &sheet.Table{Head: []string{"Standing on", "floor pushes", "laminated or bent", "sawn from a board"}}
	var worst []string
	for _, b := range r.Bending {
		tip := "the " + pick(b.Tail, v.tail, v.nose) + " tip"
		t.Mark(b.Across.Most > 1, tip, v.force(b.Force), shares(b.Along.Least, b.Along.Most), shares(b.Across.Least, b.Across.Most))
		worst = append(worst, fmt.Sprintf("%s from %s with the grain %s out",
			v.length(b.Across.From), tip, v.degrees(b.Across.Grain)))
	}
	return below(sheet.Block{Title: "The rockers bend", All: true, Table: t}, fmt.Sprintf(
		"Of the bending strength of the wood, for each of two rockers, "+
			"with %s on one end: a cantilever from the nearer leg. "+
			"Sawn rockers are read at the worst short grain between leg and tip (%s) "+
			"by Hankinson's formula with its whole range (Wood Handbook, chapter 5, from memory).",
		brief(r.Bending[0].Load), list(worst)), noTest)
}
