package main

import (
	"cmp"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/report"
	"rockerwright/cmd/internal/words"
)

// reporting is a call of report.
type reporting struct {
	telling
	output string
}

func reportCommand() *cobra.Command {
	r := reporting{telling: telling{all: true}}
	cmd := &cobra.Command{
		Use:   "report [FILE [FILE]] [section.key=value…]",
		Short: "write all of it on pages to keep with the piece",
		Long: `Writes a report to keep with the piece: one HTML file that any browser opens, without
a network, and that prints on letter and A4. First what was found, with the side view,
which rocks at true speed; then every load, curve and trial, what it all rests on and
the design file, from which the piece can be rebuilt; on the last sheet a page for its
owner. With no FILE it reports on the built-in reading chair.

Two files, or two values of a change, make a class sheet: side by side, with the
differences in words. --text prints a letter to another maker instead.

It is written where you are, as NAME-report.html; a file that is there is kept, unless
you say --replace. The date is today's, or that of SOURCE_DATE_EPOCH.`,
		Example: `  rockerwright report mine.toml
  rockerwright report mine.toml rocker.tail=20-1/2 -o shorter.html
  rockerwright report mine.toml hers.toml
  rockerwright report mine.toml --text`,
		RunE: r.run,
	}
	f := cmd.Flags()
	f.StringVarP(&r.output, "output", "o", "", "write to this `file`")
	f.BoolVar(&r.replace, "replace", false, "write over a report that is there")
	f.BoolVar(&r.text, "text", false, "print a letter to another maker")
	return cmd
}

func (r *reporting) run(cmd *cobra.Command, args []string) error {
	files, variants, err := readDesigns(args)
	if err != nil {
		return err
	}
	if len(variants) > 2 || r.text && len(variants) > 1 {
		return fmt.Errorf("report tells of one design, or sets two side by side; %d were named%s", len(variants),
			map[bool]string{true: ", and a letter tells of one", false: ""}[r.text])
	}
	if r.text && (r.output != "" || r.replace) {
		return fmt.Errorf("--text prints the letter; to keep it, put > and a file behind the command instead of -o")
	}
	date, err := report.Today()
	if err != nil {
		return err
	}
	var subjects [2]report.Subject
	var columns [2]words.Column
	for i, v := range variants {
		kept := v.file.Clone()
		kept.Name = filepath.Base(kept.Name) // a page that is kept says nothing of the folders here
		making := words.Making{Source: kept.Name, Command: kept.CallChanged, Date: date, Version: version()}
		if subjects[i], err = report.About(v.file, making); err != nil {
			return err
		}
		columns[i] = v.column
	}
	return r.tell(cmd, files, answer{
		fails: slices.ContainsFunc(subjects[:len(variants)], func(s report.Subject) bool { return !s.Answer.Holds() }),
		printed: func(out io.Writer) error {
			s := subjects[0]
			switch {
			case r.text:
				if err := words.Letter(s.Answer, s.Rocking, s.Making).Text(out, true, isTerminal(out)); err != nil {
					return err
				}
				_, err := fmt.Fprintf(out, "\n%s\n%s", strings.Repeat("-", 80), s.Text) // the design file below it
				return err
			case len(variants) == 2:
				return r.write(out, files, variants, "The first page is the class sheet, the design files follow.",
					func(w io.Writer) error { return report.Class(w, columns, subjects) })
			}
			return r.write(out, files, variants, "The last sheet is for the owner.",
				func(w io.Writer) error { return report.Write(w, s) })
		},
	})
}

// write writes a file whole or not at all, never over a design, over another file only if told so, and
// says what to do next.
func (r *reporting) write(out io.Writer, designs []string, variants []variant, last string,
	page func(io.Writer) error) error {
	const what = "to be a report, which is an HTML file to be opened in a browser and printed from there"
	path := cmp.Or(r.output, reportName(variants))
	if err := mayBeWritten(path, designs, true, ""); err != nil { // a design before its ending
		return err
	}
	if err := endsIn(path, what, ".html", ".htm"); err != nil {
		return err
	}
	err := writeOutputs([]output{{path, page}}, designs, r.replace, "Choose another file with -o, or add --replace")
	if err == nil {
		_, err = fmt.Fprintf(out, "Wrote %s. Open it in a browser: it rocks there, and prints on letter or A4.\n%s\n",
			path, last)
	}
	return err
}

// reportName returns the name of a report of some designs.
func reportName(variants []variant) string {
	var names []string
	for _, v := range variants {
		name := strings.TrimSuffix(filepath.Base(v.file.Name), ".toml")
		if v.file.Name == design.BuiltInName {
			name = "chair"
		}
		if len(names) == 0 || names[0] != name {
			names = append(names, name)
		}
	}
	return strings.Join(names, "-and-") + "-report.html"
}
