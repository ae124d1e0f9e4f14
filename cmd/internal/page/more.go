package page

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"strings"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/papers"
	"rockerwright/cmd/internal/report"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// begin answers with a starting design.
func (s *Site) begin(_ context.Context, a ask) (any, error) {
	text, err := design.Start(a.Kind)
	return Work{Name: a.Kind + ".toml", Text: text, Changes: []string{}}, err
}

// of makes an answer about the design that is asked of, which it reads.
func of(answer func(context.Context, ask, *design.File) (any, error)) job {
	return func(ctx context.Context, a ask) (any, error) {
		f, err := a.Work.file()
		if err := cmp.Or(err, ctx.Err()); err != nil {
			return nil, err
		}
		return answer(ctx, a, f)
	}
}

// file answers with the design file, the changes written into it.
func (s *Site) file(_ context.Context, a ask, f *design.File) (any, error) {
	text, err := f.Saved(f.Design)
	return Work{Name: a.Name, Text: text, Changes: []string{}}, err
}

// units answers with the design file for other units.
func (s *Site) units(_ context.Context, a ask, f *design.File) (any, error) {
	units := quantity.Inch
	if a.Units == quantity.Metric.String() {
		units = quantity.Metric
	}
	text, err := f.In(units)
	return Work{Name: a.Name, Text: text, Changes: []string{}}, err
}

// likeness are the changes after which a piece feels as the one that was kept.
type likeness struct {
	Found   bool     `json:"found"`
	Changes []string `json:"changes"`
	Says    string   `json:"says"`
}

// like answers what to change so that the feel is as before.
func (s *Site) like(ctx context.Context, a ask, f *design.File) (any, error) {
	if a.Before == nil {
		return nil, errors.New("keep a design as before first; then change the person or the seat")
	}
	old, err := a.Before.file()
	if err := cmp.Or(err, ctx.Err()); err != nil {
		return nil, err
	}
	l, err := size.Like(old.Design, f.Design)
	if err != nil {
		return nil, f.Explain(err)
	}
	for _, k := range l.Kept {
		if k.Keep.String() != a.Way {
			continue
		}
		if !k.Found {
			return likeness{Says: words.Feels(k)}, nil
		}
		changes, err := design.Changes(f.Design, k.Design)
		return likeness{Found: true, Changes: changes, Says: words.Feels(k)}, err
	}
	return nil, fmt.Errorf("there is no way %q", a.Way)
}

// document is a file for the page to hand over.
type document struct {
	Name string `json:"name"`
	Text string `json:"text,omitempty"`
	Data []byte `json:"data,omitempty"` // of what is no text
}

// patterns answers with the layout of the piece, all its files in one.
func (s *Site) patterns(ctx context.Context, _ ask, f *design.File) (any, error) {
	date, err := report.Today()
	if err := cmp.Or(err, ctx.Err()); err != nil {
		return nil, err
	}
	data, err := papers.Zip(f, date)
	return document{Name: strings.TrimSuffix(f.Name, ".toml") + "-layout.zip", Data: data}, err
}

// report answers with the report to keep with the piece.
func (s *Site) report(ctx context.Context, _ ask, f *design.File) (any, error) {
	date, err := report.Today()
	if err != nil {
		return nil, err
	}
	subject, err := report.About(f, words.Making{Source: f.Name, Command: f.CallChanged, Date: date, Version: s.Version})
	if err := cmp.Or(err, ctx.Err()); err != nil {
		return nil, err
	}
	var b strings.Builder
	err = report.Write(&b, subject)
	return document{Name: strings.TrimSuffix(f.Name, ".toml") + "-report.html", Text: b.String()}, err
}
