package words

import (
	"fmt"
	"math"
	"strings"

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
		t.Add(who(r.Report.Load(h.Load)), leans, overWith(&h.Whole)+when(h.Way != sim.Rocks, ", %s", way(w, h.Way)),
			overWith(&h.Fifth), w.bare(h.Lifts), w.unit(), h.Use.String())
	}
	return below(sheet.Block{Table: t}, "Trunk, head and arms turn about the hips, at once and at each turn of the rock, "+
		"feet off the floor: from the back forward, or astride back and forward, by so much, and by a fifth of it "+
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
	t := &sheet.Table{Caption: "Pushed with the feet, load by load",
		Over: []string{"", "ahead of", "a degree:", "", "a light", "rocks,", "ends it", ""},
		Head: []string{"BY THE FEET", "the hips", "feet", "at top", "push", "degrees", "from", ""}}
	for _, f := range r.Treads {
		l := r.Report.Load(f.Load)
		t.Add(who(l), w.length(f.Ahead), force(w.units, f.OneDegree), force(w.units, l.EffortBack), force(w.units, f.Force),
			pick(math.IsNaN(f.Turn), "over", w.angle(f.Turn)),
			pick(f.None, "none", force(w.units, f.Hardest)), "")
	}
	return below(sheet.Block{Table: t}, "What a bathroom scale under the feet would show. Where they stand matters more "+
		"than how hard they push: here "+pick(r.FeetGiven, "as you said", "under the knees")+", say it by --feet-ahead. "+
		"The push is the same until the legs are nearly straight (our judgement), which is more than legs do; "+
		"all else rides.")
}

// inUse says of people what they do with a piece that takes it over: of what is done every day, or rocking hard.
func inUse(w wording, f *trial.Finding) string {
	does := ""
	switch {
	case f.What == trial.RockedHard && f.Got < 2:
		does = ", rocking hard, leans once: it"
	case f.What == trial.RockedHard:
		does = ", rocking hard, leans once each way: it"
	default:
		does = map[string]string{trial.DropsIn: " drops in and", trial.Rises: " rises and, empty, it",
			trial.LiesBack: " lies back at once and"}[f.Trial.Name]
	}
	return brief(f.Who) + does + " goes over" +
		when(f.Side != check.NoSide, " %s", pick(f.Side == check.Forward, w.overForward, w.overBack))
}
