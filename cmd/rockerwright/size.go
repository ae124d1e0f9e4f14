package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// sizing is a call of size.
type sizing struct {
	telling
	like, keep, curve, write string
	seed                     uint64
}

func sizeCommand() *cobra.Command {
	var s sizing
	cmd := &cobra.Command{
		Use:   "size FILE [section.key=value…] [--like OLD]",
		Short: "find the radius that keeps the feel, or the rocker for a target",
		Long: `With --like: the old piece is liked, and the one in FILE differs: its sitter, its seat,
its legs. Says which radius keeps the time of a rock, which the steadiness, which the
proportion, and what each does to all the rest. Either may be the same file, with
changes typed behind FILE.

Without --like: finds one, two or three arcs, the low point, nose and tail for what
FILE asks for under [target]:

  [target]
  one_rock = 2.0           # seconds, there and back, with the owner at ease
  seat_falls = 6           # degrees, at ease; or back_leans = 20
  seat_falls_empty = 2     # degrees, nobody in it
  back_margin = 20         # degrees to keep before going back; back_lift = "1 1/4"
  longest = 40             # tip to tip
  stock_width = 8          # of the board; stock_length = 48
  smallest_radius = 36     # to which the strips bend
  largest_tilt = 10        # of a cradle or a horse: where it stands on its tips
  arcs = 1                 # at most so many; else as few as will do

--write saves the answer under another name, your comments and all.`,
		Example: `  rockerwright size mine.toml "sitter.height=6 ft 3 in" --like mine.toml
  rockerwright size child.toml --like mine.toml --text
  rockerwright size mine.toml target.one_rock=2.0 target.seat_falls=6
  rockerwright size mine.toml --like old.toml --keep steadiness --write new.toml`,
		RunE: s.run,
	}
	f := cmd.Flags()
	f.StringVar(&s.like, "like", "", "the `file` of the piece that is liked")
	f.BoolVar(&s.all, "all", false, "every load, rules of the trade, assumptions")
	f.BoolVar(&s.text, "text", false, "as a letter to another maker")
	s.jsonFlag(cmd)
	f.StringVar(&s.keep, "keep", "time", "what --write keeps with --like: time, steadiness, proportion or radius")
	f.StringVar(&s.curve, "curve", "", "what --write takes without --like: one, two, three, flatter or even")
	f.StringVar(&s.write, "write", "", "save the answer under this new `name`")
	f.Uint64Var(&s.seed, "seed", 0, "of the starts of a search")
	return cmd
}

func (s *sizing) run(cmd *cobra.Command, args []string) error {
	_, file, err := readOne(args, "size takes one design at a time:")
	if err != nil {
		return err
	}
	if s.write != "" {
		if err := designName(s.write); err != nil {
			return err
		}
		if err := file.Rewritable(); err != nil {
			return err
		}
	}
	if s.like == "" {
		return s.forTarget(cmd, file)
	}
	return s.forFeel(cmd, file)
}

// forFeel answers which radius keeps the feel.
func (s *sizing) forFeel(cmd *cobra.Command, file *design.File) error {
	way := slices.Index([]string{"time", "steadiness", "proportion", "radius"}, s.keep) // as in size.Keeps
	if way < 0 {
		return fmt.Errorf("--keep is one of time, steadiness, proportion, radius; %q is none", s.keep)
	}
	old, err := design.BuiltIn()
	if s.like != design.BuiltInName {
		old, err = design.Read(s.like)
	}
	if err != nil {
		return err
	}
	likeness, err := size.Like(old.Design, file.Design)
	var wrong *size.OldError
	if errors.As(err, &wrong) {
		return explained(old, wrong.Err)
	}
	if err != nil {
		return explained(file, err)
	}
	if s.write != "" {
		kept := likeness.Kept[way]
		if !kept.Found {
			return fmt.Errorf("no radius gives %s the %s as %s: nothing was written", file.Name, kept.Keep, old.Name)
		}
		return save(cmd.OutOrStdout(), file, kept.Design, s.write)
	}
	take := file.Call("size", "--like", s.like, "--write", "new.toml")
	return s.tell(cmd, nil, answer{
		sheet:  func() sheet.Sheet { return words.Like(likeness, file.Name, file.Changes, take) },
		letter: func() sheet.Sheet { return words.LikeLetter(likeness, file.Changes) },
		json:   func() any { return wire.Like(likeness) },
	})
}

// forTarget answers which rocker does what a file aims for; it fails where that cannot all be had.
func (s *sizing) forTarget(cmd *cobra.Command, file *design.File) error {
	found, err := size.Solve(file.Design, s.seed)
	if errors.Is(err, size.ErrNoTarget) {
		return fmt.Errorf(`%s aims for nothing. Say under [target] what you want, or type it, for example:
  %s target.one_rock=2.0 target.seat_falls=6
Or name a piece that is liked:
  %s --like old.toml`, file.Name, file.Call("size"), file.Call("size"))
	}
	if err != nil {
		return explained(file, err)
	}
	others := found.Others()
	if s.write != "" {
		p, err := curveNamed(s.curve, found, others)
		if err != nil {
			return err
		}
		return save(cmd.OutOrStdout(), file, p.Design, s.write)
	}
	take := file.Call("size", "--write", "new.toml")
	return s.tell(cmd, nil, answer{
		sheet:  func() sheet.Sheet { return words.Sized(file.Design, found, others, file.Name, file.Changes, take) },
		letter: func() sheet.Sheet { return words.SizedLetter(file.Design, found, others) },
		json:   func() any { return wire.Sized(file.Design, found, others) },
		fails:  !found.Take().Met(),
	})
}

// explained gives an error of sizing its file, and its place where it has one.
func explained(f *design.File, err error) error {
	var unsuited *size.UnsuitedError
	if errors.As(err, &unsuited) {
		return fmt.Errorf("%s: %s", f.Name, unsuited.Reason)
	}
	return f.Explain(err)
}

// save writes a file with the measures of a design under a new name.
func save(out io.Writer, file *design.File, d piece.Design, path string) error {
	text, err := file.Saved(d)
	if err != nil {
		return err
	}
	return writeNew(out, path, text, "Look at it")
}

// curveNamed returns the rocker to save by its name on the command line, the first word of its curve;
// without one the one to take.
func curveNamed(name string, found size.Solution, others []size.Proposal) (size.Proposal, error) {
	if name == "" {
		return found.Take(), nil
	}
	var there []string
	for _, p := range slices.Concat(found.Proposals, others) {
		first, _, _ := strings.Cut(p.Shape.String(), " ")
		if first == name && (p.Shape != size.EvenTime || words.Shown(p)) {
			return p, nil
		}
		there = append(there, first)
	}
	return size.Proposal{}, fmt.Errorf("there is no rocker %q among those found; there are %s", name,
		strings.Join(slices.Compact(there), ", "))
}
