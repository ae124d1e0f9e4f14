package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/validation"
)

// errMiss is returned by proof where a case misses its answer.
var errMiss = errors.New("a case misses its answer")

func proofCommand() *cobra.Command {
	var asJSON bool
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
		RunE: func(cmd *cobra.Command, args []string) error {
			return proof(cmd.OutOrStdout(), args, asJSON)
		},
	}
	cmd.Flags().BoolVar(&asJSON, "json", false, "the numbers for a program")
	return cmd
}

// A proven is one case and what it came to.
type proven struct {
	validation.Case
	got  float64
	miss error
}

// prove computes every case that has one of the words.
func prove(filter []string) []proven {
	var list []proven
	for _, c := range validation.Cases() {
		if !has(c, filter) {
			continue
		}
		got, err := c.Check()
		list = append(list, proven{c, got, err})
	}
	return list
}

func has(c validation.Case, filter []string) bool {
	for _, word := range filter {
		if strings.Contains(strings.ToLower(c.Group+"/"+c.Name), strings.ToLower(word)) {
			return true
		}
	}
	return len(filter) == 0
}

// proof answers one call of the proof command.
func proof(out io.Writer, filter []string, asJSON bool) error {
	list := prove(filter)
	if len(list) == 0 {
		return fmt.Errorf("no case has %q in its group or name; rockerwright proof prints them all", strings.Join(filter, " "))
	}
	var err error
	if asJSON {
		err = printProofJSON(out, list)
	} else {
		err = proofSheet(list).Text(out, true, isTerminal(out))
	}
	if err != nil {
		return err
	}
	for _, p := range list {
		if p.miss != nil {
			return errMiss
		}
	}
	return nil
}

// proofSheet lays the cases out, group by group.
func proofSheet(list []proven) words.Sheet {
	s := words.Sheet{Title: "Proof: cases with known answers, computed here"}
	missed := 0
	for i, p := range list {
		if i == 0 || p.Group != list[i-1].Group {
			s.Blocks = append(s.Blocks, words.Block{Title: strings.ToUpper(p.Group)})
		}
		verdict := "ok"
		switch {
		case p.miss != nil:
			verdict = "MISS"
			missed++
		case p.Memory:
			verdict = "not counted"
		}
		block := &s.Blocks[len(s.Blocks)-1]
		block.Lines = append(block.Lines, words.Line{Bad: p.miss != nil, Text: strings.TrimSpace(fmt.Sprintf("%s: want %.13g, got %.13g %s", p.Name, p.Want, p.got, p.Unit)) +
			fmt.Sprintf(" (%s) %s. %s.", agreed(p), verdict, p.Source)})
	}
	last := fmt.Sprintf("%d cases, all as they should be.", len(list))
	if len(list) == 1 {
		last = "1 case, as it should be."
	}
	if missed > 0 {
		last = fmt.Sprintf("%d of %d cases MISS.", missed, len(list))
	}
	s.Blocks = append(s.Blocks, words.Block{Lines: []words.Line{{Text: last, Bad: missed > 0}}})
	return s
}

// agreed says in how many digits a case agrees.
func agreed(p proven) string {
	if p.Want == 0 {
		return fmt.Sprintf("within %.1g, allowed %.1g", math.Abs(p.got), p.Tolerance)
	}
	return fmt.Sprintf("%.0f digits", math.Floor(p.Digits(p.got)))
}

func printProofJSON(out io.Writer, list []proven) error {
	rows := make([]wire.Object, len(list))
	for i, p := range list {
		rows[i] = wire.Case(p.Case, p.got, p.miss == nil)
	}
	return wire.Print(out, rows)
}
