package page

import (
	"cmp"
	"context"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/view"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// A pageView is what the page shows of a design.
type pageView struct {
	Fault *fault `json:"fault,omitempty"` // and nothing else

	Title   string `json:"title,omitempty"`
	Units   string `json:"units,omitempty"`
	Picture string `json:"picture,omitempty"`
	Alt     string `json:"alt,omitempty"`
	Sheet   string `json:"sheet,omitempty"` // the first page of check
	More    string `json:"more,omitempty"`  // the rest of it
	Both    string `json:"both,omitempty"`  // before and now side by side
	Held    held   `json:"held"`
	Became  string `json:"became,omitempty"` // of the motion

	Load  string    `json:"load"`
	Loads []string  `json:"loads,omitempty"`
	Sides [2]string `json:"sides"` // to which it rocks, + first
	Back  bool      `json:"back"`  // it has one, at which it can be pushed
	Live  *live     `json:"live,omitempty"`

	Form   *form            `json:"form,omitempty"` // where the page has another one
	FormID string           `json:"formID,omitempty"`
	Values map[string]value `json:"values,omitempty"`
}

// held says whether the limits hold.
type held struct {
	Holds bool   `json:"holds"`
	Text  string `json:"text"`
}

// live is by what the page moves the drawing: see view.Live.
type live struct {
	Handles []handle   `json:"handles"`
	Pivot   [2]float64 `json:"pivot"`
	Rest    float64    `json:"rest"`
	First   float64    `json:"first"`
	Step    float64    `json:"step"`
	Tilts   int        `json:"tilts"`
	Moving  bool       `json:"moving"`
}

// see answers what is seen of a design. Work stops between its parts when ctx is done.
func (s *Site) see(ctx context.Context, a ask) (v pageView, err error) {
	f, answer, err := checked(a.Work, !a.More)
	if err != nil {
		return v, err
	}
	report := answer.Report
	v = pageView{Title: report.Design.Title, Units: report.Design.Units.String()}
	w := watchedOf(report, a.Load)
	w.Narrow = a.Narrow
	if err := v.move(&w, a.Motion); err != nil {
		return v, err
	}
	if a.Before != nil {
		_, before, err := checked(*a.Before, true)
		if err != nil {
			bad := faultOf(err)
			bad.Before = true
			return v, bad
		}
		then := watchedOf(before.Report, w.Load.Name)
		w.Before = &then
		v.Both = string(sheet.HTML(words.Columns("", "", []words.Column{{Head: "before", Report: before.Balanced},
			{Head: "now", Report: report.Balanced}}).Blocks, 3))
	}
	if err := ctx.Err(); err != nil {
		return v, err
	}
	if err := cmp.Or(v.draw(w), ctx.Err()); err != nil {
		return v, err
	}
	v.sheet(words.Check(answer, f.Name, f.CallChanged, nil), a.More)
	line := words.Held(answer)
	v.Held = held{!line.Bad, line.Text}
	v.Load, v.Sides = w.Load.Name, [2]string{report.Design.Directions().Back, report.Design.Directions().Forward}
	_, v.Back = report.Design.TopOfBack()
	for i := range report.Loads {
		v.Loads = append(v.Loads, report.Loads[i].Name)
	}
	form := formOf(f)
	v.FormID, v.Values = form.id(), form.values()
	if v.FormID != a.Form {
		v.Form = &form
	}
	return v, nil
}

// checked reads and checks a design, in brief without what only --all shows.
func checked(w Work, brief bool) (*design.File, trial.Answer, error) {
	f, err := w.file()
	if err != nil {
		return nil, trial.Answer{}, err
	}
	ask := trial.Check
	if brief {
		ask = trial.Standing
	}
	answer, err := ask(f.Design)
	if err != nil {
		bad := faultOf(f.Explain(err))
		if entry := faultOf(err); entry.Key != "" {
			bad.Key = entry.Key
		}
		return nil, trial.Answer{}, bad
	}
	answer.Releases = nil // let go from elsewhere
	return f, answer, nil
}

// watchedOf returns the load of a name, or else the first person, and its motion.
func watchedOf(r check.Report, name string) view.Watched {
	return view.Watched{Report: r, Load: cmp.Or(r.Load(name), r.Seated())}
}

// watchedFor is how long a motion is followed, s.
const watchedFor = 12

// move works out the motion that is asked for, or the usual one to be drawn beside it.
func (v *pageView) move(w *view.Watched, m *motion) error {
	options := trial.RockOptions{Load: w.Load.Name, Duration: watchedFor}
	if m == nil {
		if w.Load.Moves() {
			if rocking, err := trial.Follow(w.Report, options); err == nil {
				w.Motion = &rocking
			}
		}
		return nil
	}
	w.Moving = true
	var err error
	units := w.Report.Design.Units
	if m.From != "" {
		if options.From, err = quantity.Parse(m.From, quantity.Angle, units); err != nil {
			return &fault{Key: "from", Message: err.Error()}
		}
		if math.Abs(options.From) > math.Pi/2 {
			return &fault{Key: "from", Message: "it is let go from at most 90 degrees to either side: type a smaller tilt, such as 15"}
		}
	}
	if m.Push != "" {
		if options.Force, err = quantity.Parse(m.Push, quantity.Force, units); err != nil {
			return &fault{Key: "push", Message: err.Error()}
		}
	}
	if !w.Load.Moves() {
		return &fault{Key: "from", Message: words.DoesNotRock(w.Report, w.Load)}
	}
	rocking, err := trial.Follow(w.Report, options)
	if err != nil {
		bad := faultOf(err)
		bad.Key = "push"
		return bad
	}
	w.Motion, v.Became = &rocking, words.Became(rocking)
	return nil
}

func (v *pageView) draw(w view.Watched) error {
	drawn := view.LiveView(w)
	var svg strings.Builder
	if err := drawn.InPage(&svg); err != nil {
		return err
	}
	v.Picture, v.Alt = svg.String(), drawn.Alt
	v.Live = &live{Pivot: drawn.Pivot, Rest: drawn.Rest, First: drawn.First, Step: drawn.Step, Tilts: drawn.Tilts, Moving: w.Moving}
	for _, h := range drawn.Handles {
		v.Live.Handles = append(v.Live.Handles, handle{h.Name, h.At, h.Along, pulls(w.Report.Design, h)})
	}
	return nil
}

// sheet writes the first page, and the rest where it is asked for.
func (v *pageView) sheet(answer sheet.Sheet, more bool) {
	first := slices.DeleteFunc(slices.Clone(answer.Blocks), func(b sheet.Block) bool { return b.All })
	v.Sheet = string(sheet.Heading(2, answer.Title) + "\n" + sheet.HTML(first, 3))
	if more {
		rest := slices.DeleteFunc(slices.Clone(answer.Blocks), func(b sheet.Block) bool { return !b.All })
		v.More = string(sheet.HTML(rest, 3))
	}
}
