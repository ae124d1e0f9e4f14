package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// fits returns whom the piece fits, who they are, and how its wood bends under them.
func fits(w wording, a *trial.Answer) []sheet.Block {
	return slices.Concat(fitTable(w.units, a), people(w.units, a.Report), gives(w.units, a.Report), bends(w, a.Report))
}

// off says in which way a measure is beyond common practice: too much, too little.
var off = map[string][2]string{
	"seat.front":  {"high", "low"},
	"seat.depth":  {"deep", "shallow"},
	"seat.width":  {"wide", "narrow"},
	"arms.height": {"high", "low"},
	"back.height": {"tall", "short"},
	"back.lumbar": {"high", "low"},
}

// fitTable returns have, want and change by of each measure.
func fitTable(u units, a *trial.Answer) []sheet.Block {
	t := &sheet.Table{Head: []string{"Owner at ease", "have", "want", "change by", "goes by"}}
	for _, f := range a.Fit {
		want, change := u.bare(f.Low)+" to "+u.bare(f.High), "–"
		if math.IsInf(f.High, 1) {
			want = u.bare(f.Low) + " or more"
		}
		if f.Change != 0 {
			change = pick(f.Change > 0, "+", "-") + u.bare(unsigned(f.Change))
		}
		t.Mark(!f.Holds(), f.What, u.bare(f.Have), want, change, f.Size.String())
	}
	return below(sheet.Block{Title: "Fit", All: true, Table: t}, misfits(u, a), "In "+inUnits(u, "inches", "millimetres")+
		". The clearances between a person and a seat are common practice among chairmakers; change them to taste.")
}

// trouble says in what way a seat does not fit.
func trouble(u units, m check.Misfit) string {
	by := u.length(m.By)
	return map[check.Trouble]string{
		check.FeetHang: "feet " + by + " off the floor", check.KneesUp: "knees " + by + " above the hips",
		check.TooWide: "hips " + by + " wider than the seat", check.TooDeep: "seat " + by + " deeper than the thigh",
		check.KneesOverChin: "knees above the chin",
	}[m.Trouble]
}

// people returns what was given and what was estimated of each person.
func people(u units, r check.Report) []sheet.Block {
	first := slices.IndexFunc(r.Somebody, func(s check.Somebody) bool { return s.Role == piece.Owner })
	if first < 0 {
		return nil
	}
	owner := &r.Somebody[first]
	t := &sheet.Table{Head: []string{"Sizes of " + brief(owner.Name), "", "", ""}}
	for _, s := range person.Sizes() {
		text := u.length(owner.Person.Sizes[s])
		switch s {
		case person.Stature:
			text = quantity.Tall(owner.Person.Sizes[s], u.System)
		case person.Mass:
			text = mass(u, owner.Person.Sizes[s])
		}
		t.Add(s.String()+" ("+s.Science()+")", text, "", owner.Person.Sources[s].String())
	}
	var others []string
	for _, one := range r.Somebody {
		if sizes := one.Person.Sizes; one.Name != owner.Name {
			others = append(others, fmt.Sprintf("%s %s, %s", brief(one.Name), quantity.Tall(sizes[person.Stature], u.System),
				mass(u, sizes[person.Mass])))
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
