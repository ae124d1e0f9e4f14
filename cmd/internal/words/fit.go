package words

import (
	"fmt"
	"math"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/body"
	"rockerwright/body/person"
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

// upperFirst returns a text with its first letter as a capital, whatever the script.
func upperFirst(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 || first == utf8.RuneError {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}

// fitTable returns have, want and change by of each measure.
func (v voice) fitTable(a *trial.Answer) []Block {
	r := &a.Report
	if len(r.Fit) == 0 {
		return nil
	}
	t := &Table{Head: []string{"Owner at ease", "have", "want", "change by", "goes by"}}
	for _, f := range r.Fit {
		change := "–"
		switch {
		case f.Change > 0:
			change = "+" + v.shop(f.Change, quantity.Length)
		case f.Change < 0:
			change = "-" + v.shop(-f.Change, quantity.Length)
		}
		t.Rows = append(t.Rows, Row{Cells: []string{f.What, v.shop(f.Have, quantity.Length), v.between(f.Low, f.High), change, f.Size.String()}, Bad: !f.Holds()})
	}
	note := Line{Text: fmt.Sprintf("In %s. The clearances between a person and a seat are common practice among chairmakers; change them to taste.", map[quantity.System]string{quantity.Inch: "inches", quantity.Metric: "millimetres"}[v.units])}
	return []Block{{Title: "Fit", All: true, Table: t}, {All: true, Lines: append(v.misfits(a), note)}}
}

// between says what is wanted: a range, or at least so much.
func (v voice) between(low, high float64) string {
	if math.IsInf(high, 1) {
		return v.shop(low, quantity.Length) + " or more"
	}
	return v.shop(low, quantity.Length) + " to " + v.shop(high, quantity.Length)
}

// trouble says in what way a seat does not fit.
func (v voice) trouble(m check.Misfit) string {
	by := v.with(m.By, quantity.Length)
	switch m.Trouble {
	case check.FeetHang:
		return "feet " + by + " off the floor"
	case check.TooWide:
		return "hips " + by + " wider than the seat"
	case check.TooDeep:
		return "seat " + by + " deeper than the thigh"
	}
	if m.Trouble == check.KneesOverChin {
		return "knees above the chin"
	}
	return "knees " + by + " above the hips"
}

// people returns what was given and what was estimated of each person.
func (v voice) people(r check.Report) []Block {
	var owner *check.Somebody
	for i := range r.Somebody {
		if r.Somebody[i].Role == piece.Owner {
			owner = &r.Somebody[i]
			break
		}
	}
	if owner == nil {
		return nil
	}
	t := &Table{Head: []string{"Sizes of " + plain(short(owner.Name)), "", "", ""}}
	for _, s := range person.Sizes() {
		text := v.with(owner.Person.Sizes[s], quantity.Length)
		switch s {
		case person.Stature:
			text = quantity.Tall(owner.Person.Sizes[s], v.units)
		case person.Mass:
			text = v.with(owner.Person.Sizes[s], quantity.Mass)
		}
		t.Rows = append(t.Rows, Row{Cells: []string{s.String() + " (" + s.Science() + ")", text, "", owner.Person.Sources[s].String()}})
	}
	var others []string
	for _, one := range r.Somebody {
		if one.Name != owner.Name {
			others = append(others, fmt.Sprintf("%s %s, %s", plain(short(one.Name)), quantity.Tall(one.Person.Sizes[person.Stature], v.units), v.with(one.Person.Sizes[person.Mass], quantity.Mass)))
		}
	}
	lines := []Line{{Text: "Estimated sizes go with the height in the ANSUR II survey of soldiers (2012), of children with the CDC growth charts (2000). Weights of limbs are by de Leva (1996), of children by Jensen (1986, 1989). A big belly or pregnancy carries the balance point forward; this does not know of it."}}
	if len(others) > 0 {
		lines = append(lines, Line{Text: "Others: " + strings.Join(others, "; ") + "."})
	}
	lines = append(lines, postures(r)...)
	return []Block{{Title: "People", All: true, Table: t}, {All: true, Lines: lines}}
}

// postures says how the postures are meant, of those that were checked.
func postures(r check.Report) []Line {
	meant := map[person.Posture]string{
		person.Sitting:        "sitting is at ease, shoulders a hand off the back, head up",
		person.LyingBack:      "lying back is trunk on the back and head behind it",
		person.Perched:        "perched is near the front edge with the feet drawn back on the floor, a bar on two supports: the seat carries what the feet do not",
		person.FeetFlat:       "feet flat leaves the feet and the ankles' share of the shanks to the floor, each shank a bar from knee to ankle",
		person.FeetUp:         "feet up is shanks stretched out, off the floor",
		person.PushingUp:      "pushing up has half of the weight on the ends of the arms, through the hands (our judgement)",
		person.RidingForward:  "riders lean 25 degrees fore and aft",
		person.ArmsBehindHead: "arms behind the head is lying back, elbows up",
	}
	var said []string
	for _, p := range person.Postures() {
		for _, l := range r.Loads {
			if l.Posture == p && len(l.Figures) > 0 && meant[p] != "" {
				said = append(said, meant[p])
				break
			}
		}
	}
	if len(said) == 0 {
		return nil
	}
	return []Line{{Text: upperFirst(strings.Join(said, "; ")) + ". In all but perched, feet flat and pushing up the whole person rides on the piece."}}
}

// noTest is said wherever wood is bent on paper.
const noTest = "Not a strength test: straight-grained, dry wood of the middle of its kind, pressed once and gently. Joints, knots, screw holes, shock and years of rocking are not in it."

// gives returns how a back of braces yields, load by load; nothing where it is stiff.
func (v voice) gives(r check.Report) []Block {
	t := &Table{Head: []string{"Leaning on the back", "presses", "yields", "leans on by", "of the strength"}}
	for _, l := range r.Loads {
		if g := l.Give; g != nil {
			t.Rows = append(t.Rows, Row{
				Cells: []string{plain(short(l.Name)), v.with(g.Force, quantity.Force), v.with(g.Yield, quantity.Length), v.degrees(g.Turn), share(g.Share, g.Least, g.Most)},
				Bad:   g.Most > 1,
			})
		}
	}
	if len(t.Rows) == 0 {
		return nil
	}
	b := r.Design.Back.Braces
	held := "resting in seat and crest rail"
	if b.Held == body.OneEnd {
		held = "fast in the seat, free at the top"
	}
	lines := []Line{{Text: fmt.Sprintf("%s braces of %s, %s by %s, %s long, bent as one beam %s. Rest, recline and the load on the back are solved together; the readings above are with the back bent. Shares in brackets: if the wood is stronger or weaker than the middle of its kind by two standard deviations (16 %% each, from memory); the yield goes from %s to %s of that shown, as stiffness spreads (22 %% each, from memory).",
		v.shop(b.Count, quantity.Count), plain(short(b.Wood)), v.with(b.Width, quantity.Length), v.with(b.Thickness, quantity.Length), v.with(b.Length, quantity.Length), held, percent(1/(1+2*piece.ModulusSpread)), percent(1/(1-2*piece.ModulusSpread)))}, {Text: noTest}}
	return []Block{{Title: "The back gives", All: true, Table: t}, {All: true, Lines: lines}}
}

// bends returns how the rockers bend with the heaviest load on one end; nothing where
// their sizes are not given.
func (v voice) bends(r check.Report) []Block {
	if len(r.Bending) == 0 {
		return nil
	}
	t := &Table{Head: []string{"Standing on", "floor pushes", "laminated or bent", "sawn from a board"}}
	var worst []string
	for _, b := range r.Bending {
		name := v.nose
		if b.Tail {
			name = v.tail
		}
		t.Rows = append(t.Rows, Row{
			Cells: []string{"the " + name + " tip", v.with(b.Force, quantity.Force), ofStrength(b.Along), ofStrength(b.Across)},
			Bad:   b.Across.Most > 1,
		})
		worst = append(worst, fmt.Sprintf("%s from the %s tip with the grain %s out", v.with(b.Across.From, quantity.Length), name, v.degrees(b.Across.Grain)))
	}
	lines := []Line{
		{Text: fmt.Sprintf("Of the bending strength of the wood, for each of two rockers, with %s on one end: a cantilever from the nearer leg. Sawn rockers are read at the worst short grain between leg and tip (%s) by Hankinson's formula with its whole range (Wood Handbook, chapter 5, from memory).", plain(short(r.Bending[0].Load)), list(worst))},
		{Text: noTest},
	}
	return []Block{{Title: "The rockers bend", All: true, Table: t}, {All: true, Lines: lines}}
}

func ofStrength(s check.Section) string {
	return percent(s.Least) + " to " + percent(s.Most)
}

// share writes a share of the strength with its spread.
func share(middle, least, most float64) string {
	return fmt.Sprintf("%s (%s to %s)", percent(middle), percent(least), percent(most))
}

func percent(x float64) string { return fmt.Sprintf("%.0f %%", x*100) }
