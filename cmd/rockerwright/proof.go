package main

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/validation"
)

// proving is a call of proof.
type proving struct{ telling }

func proofCommand() *cobra.Command {
	p := proving{telling{all: true}}
	cmd := &cobra.Command{
		Use:   "proof [WORD…]",
		Short: "compute every case with a known answer, here and now",
		Long: `Computes, on this machine, every case whose answer is known from outside this program:
closed forms, published measurements, other methods, a stranger's engine. It prints
what is wanted, what it got, how many digits agree, and the source. A value from
memory is printed and never counted. With a WORD, only cases that have it in their
group or name.`,
		Example: `  rockerwright proof
  rockerwright proof pendulum
  rockerwright proof --json`,
		RunE: p.run,
	}
	cmd.Flags().BoolVar(&p.json, "json", false, "the numbers for a program")
	return cmd
}

// A proven is one case and what it came to.
type proven struct {
	validation.Case
	got  float64
	miss error
}

// prove computes every case that has one of the words, without words all.
func prove(filter []string) []proven {
	var list []proven
	for _, c := range validation.Cases() {
		name := strings.ToLower(c.Group + "/" + c.Name)
		has := func(word string) bool { return strings.Contains(name, strings.ToLower(word)) }
		if len(filter) == 0 || slices.ContainsFunc(filter, has) {
			got, err := c.Check()
			list = append(list, proven{c, got, err})
		}
	}
	return list
}

func (p *proving) run(cmd *cobra.Command, filter []string) error {
	list := prove(filter)
	if len(list) == 0 {
		return fmt.Errorf("no case has %q in its group or name; rockerwright proof prints them all",
			strings.Join(filter, " "))
	}
	return p.tell(cmd, nil, answer{
		sheet: func() sheet.Sheet { return proofSheet(list) },
		json: func() any {
			rows := make([]wire.Object, len(list))
			for i, one := range list {
				rows[i] = wire.Case(one.Case, one.got, one.miss == nil)
			}
			return rows
		},
		fails: slices.ContainsFunc(list, func(one proven) bool { return one.miss != nil }),
	})
}

// proofSheet lays the cases out, group by group.
func proofSheet(list []proven) sheet.Sheet {
	s := sheet.Sheet{Title: "Proof: cases with known answers, computed here"}
	missed := 0
	for i, p := range list {
		if i == 0 || p.Group != list[i-1].Group {
			s.Blocks = append(s.Blocks, sheet.Block{Title: strings.ToUpper(p.Group)})
		}
		verdict := "ok"
		switch {
		case p.miss != nil:
			verdict = "MISS"
			missed++
		case p.Memory:
			verdict = "not counted"
		}
		text := strings.TrimSpace(fmt.Sprintf("%s: want %.13g, got %.13g %s", p.Name, p.Want, p.got, p.Unit)) +
			fmt.Sprintf(" (%s) %s. %s.", agreed(p), verdict, p.Source)
		block := &s.Blocks[len(s.Blocks)-1]
		block.Lines = append(block.Lines, sheet.Line{Bad: p.miss != nil, Text: text})
	}
	last := fmt.Sprintf("%d cases, all as they should be.", len(list))
	if len(list) == 1 {
		last = "1 case, as it should be."
	}
	if missed > 0 {
		last = fmt.Sprintf("%d of %d cases MISS.", missed, len(list))
	}
	s.Blocks = append(s.Blocks, sheet.Block{Lines: []sheet.Line{{Text: last, Bad: missed > 0}}})
	return s
}

// agreed says in how many digits a case agrees.
func agreed(p proven) string {
	if p.Want == 0 {
		return fmt.Sprintf("within %.1g, allowed %.1g", math.Abs(p.got), p.Tolerance)
	}
	return fmt.Sprintf("%.0f digits", math.Floor(p.Digits(p.got)))
}
