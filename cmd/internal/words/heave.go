package words

import (
	"cmp"
	"fmt"
	"math"
	"strings"

	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/trial"
)

// rockedHard says with which lean people take a piece over who lean to and fro at each turn of the rock.
func rockedHard(w wording, r trial.Rocking) []sheet.Block {
	t := &sheet.Table{Caption: "Rocked hard, load by load",
		Over: []string{"", "leans,", "over with", "a fifth", "a lean", "", ""},
		Head: []string{"ROCKED HARD", "degrees", "lean", "of it", "lifts", "", "how often"}}
	for _, h := range r.Heaved {
		leans := w.angle(unsigned(h.Forward))
		if h.Back != 0 {
			leans = w.angle(h.Back) + ", " + leans
		}
		t.Add(brief(r.Report.Load(h.Load).Sitter), leans, overWith(&h.Whole)+when(h.Way != sim.Rocks, ", %s", way(w, h.Way)),
			overWith(&h.Fifth), w.bare(h.Lifts), w.unit(), h.Use.String())
	}
	return below(sheet.Block{Table: t}, "Trunk, head and arms turn about the hips, at once and at each turn of the rock, "+
		"feet off the floor: forward from how they sit, or astride back and forward, by so much, and by a fifth of it "+
		"(our judgement; no quicker than "+w.degrees(check.TrunkRate)+" a second in half a rock). "+
		"A lean lifts: the hardest of them takes as much as lifting all that rocks so far. "+
		"Counted from the first lean; more than "+fmt.Sprint(check.MostLeans)+" are not tried. "+
		"Where no way is named it hangs on the last degree. "+
		"No lean that is well timed does nothing: in the end each takes a piece over.")
}

// overWith says with which of the leans it goes over.
func overWith(h *motion.Heaving) string {
	if h.Outcome == sim.Rocks {
		return "not by the " + nth(len(h.Leans))
	}
	return nth(len(h.Leans))
}

// nth writes a number in a row.
func nth(n int) string {
	if n < 4 {
		return [...]string{"0th", "1st", "2nd", "3rd"}[n]
	}
	return fmt.Sprint(n) + "th"
}

// way says in a word which way it goes over.
func way(w wording, o sim.Outcome) string {
	return strings.TrimPrefix(w.renamed.Replace(o.String()), "goes over ")
}

// trodden says what a push of the feet on the floor does.
func trodden(w wording, r trial.Rocking) []sheet.Block {
	light := pick(r.Options.Feet > 0, force(w.units, r.Options.Feet), "a tenth")
	t := &sheet.Table{Caption: "Pushed with the feet, load by load",
		Over: []string{"", "ahead of", "1 degree", "", light, "ends it", ""},
		Head: []string{"BY THE FEET", "hips, " + w.unit(), "by feet", "at top", "makes, deg", "from", "in"}}
	for _, f := range r.Treads {
		l := r.Report.Load(f.Load)
		cells := []string{who(l), w.bare(f.Ahead), "–", force(w.units, l.EffortBack), "–", "–", "out of reach"}
		if f.Reaches {
			cells[2] = pick(math.IsNaN(f.OneDegree), "–", force(w.units, f.OneDegree))
			cells[4] = cmp.Or(ended(w, f.Made), towards(w, f.Turn))
			cells[5], cells[6] = pick(f.None, "none", force(w.units, f.Hardest)), ended(w, f.EndedBy)
		}
		t.Add(cells...)
	}
	return below(sheet.Block{Table: t}, "What a bathroom scale under the feet would show, of two people under all their feet; "+
		pick(r.Options.Feet > 0, "", "a tenth is of the own weight; ")+"at the top of the back as somebody beside it pushes. "+
		"Where the feet stand matters more than how hard they push: here "+
		pick(r.Options.FeetAhead > 0, "as you said", "under the knees")+", say it by --feet-ahead. "+
		"The push is the same until the legs are nearly straight (our judgement), which is more than legs do; all else rides.")
}

// ended says in a word or two how a motion ends that does not come back; "" where it does.
func ended(w wording, by string) string { return strings.TrimPrefix(w.renamed.Replace(by), "goes ") }

// inUse says what people do with a piece that takes it over, of findings of what is done every day and of rocking hard: those
// who do the same, with one and the same end, together.
func inUse(w wording, findings []*trial.Finding) []string {
	type deed struct{ does, ends string }
	var deeds []deed
	people := map[deed][]string{}
	for _, f := range findings {
		d := deed{"", " goes over" + when(f.Side != check.NoSide, " %s", pick(f.Side == check.Forward, w.overForward, w.overBack))}
		switch {
		case f.What == trial.RockedHard && f.Got < 2:
			d.does = "leans once, quickly: it"
		case f.What == trial.RockedHard:
			d.does = "leans once each way, rocking hard: it"
		case f.Trial != nil:
			d.does = map[string]string{trial.DropsIn: "drops in: it", trial.Rises: "rises: empty, it",
				trial.LiesBack: "lies back at once: it"}[f.Trial.Name]
		default:
			continue
		}
		if people[d] == nil {
			deeds = append(deeds, d)
		}
		name := brief(f.Who)
		if f.Load.Posture != person.AtEase && f.Load.Posture != person.Riding {
			name = brief(f.Load.Name)
		}
		people[d] = append(people[d], name)
	}
	var said []string
	for _, d := range deeds {
		does := d.does
		if names := people[d]; len(names) > 1 || names[0] == "both" {
			does = strings.NewReplacer("drops", "drop", "rises", "rise", "lies", "lie", "leans", "lean").Replace(does)
		}
		said = append(said, list(people[d])+" "+does+d.ends)
	}
	return said
}
