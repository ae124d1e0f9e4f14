package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// sizeFlags are the options of size.
type sizeFlags struct {
	all, json, text bool
	like            string
	keep            string
	curve           string
	write           string
	seed            uint64
}

func sizeCommand() *cobra.Command {
	var flags sizeFlags
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
  seat_falls = 6           # degrees, sitting; or back_leans = 20
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
		RunE: func(cmd *cobra.Command, args []string) error {
			return sizeOf(cmd.OutOrStdout(), args, flags)
		},
	}
	f := cmd.Flags()
	f.StringVar(&flags.like, "like", "", "the `file` of the piece that is liked")
	f.BoolVar(&flags.all, "all", false, "every load, rules of the trade, assumptions")
	f.BoolVar(&flags.text, "text", false, "as a letter to another maker")
	f.BoolVar(&flags.json, "json", false, "the numbers for a program: SI units, degrees")
	f.StringVar(&flags.keep, "keep", "time", "what --write keeps with --like: time, steadiness, proportion or radius")
	f.StringVar(&flags.curve, "curve", "", "what --write takes without --like: one, two, three, flatter or even")
	f.StringVar(&flags.write, "write", "", "save the answer under this new `name`")
	f.Uint64Var(&flags.seed, "seed", 0, "of the starts of a search")
	return cmd
}

// sizeOf answers one call of size.
func sizeOf(out io.Writer, args []string, flags sizeFlags) error {
	_, file, err := readOne(args, "size takes one design at a time:")
	if err != nil {
		return err
	}
	if flags.write != "" {
		if err := designName(flags.write); err != nil {
			return err
		}
		if err := file.Rewritable(); err != nil {
			return err
		}
	}
	if flags.like == "" {
		return sizeFor(out, file, flags)
	}
	return sizeLike(out, file, flags)
}

// sizeLike answers which radius keeps the feel.
func sizeLike(out io.Writer, file *design.File, flags sizeFlags) error {
	way, err := wayNamed(flags.keep)
	if err != nil {
		return err
	}
	old, err := readLiked(flags.like)
	if err != nil {
		return err
	}
	likeness, err := size.Like(old.Design, file.Design)
	if wrong := (*size.OldError)(nil); errors.As(err, &wrong) {
		return explained(old, wrong.Err)
	}
	if err != nil {
		return explained(file, err)
	}
	if flags.write != "" {
		kept := likeness.Ways[way]
		if !kept.Found {
			return fmt.Errorf("no radius gives %s the %s as %s: nothing was written", file.Name, way, old.Name)
		}
		return save(out, file, kept.Design, flags.write)
	}
	switch {
	case flags.json:
		return wire.Print(out, wire.Like(likeness))
	case flags.text:
		return words.LikeLetter(likeness, file.Changes).Text(out, true, false)
	}
	take := file.Call("size", "--like", flags.like, "--write", "new.toml")
	return words.Like(likeness, file.Name, file.Changes, take).Text(out, flags.all, isTerminal(out))
}

// readLiked reads the file of the piece that is liked.
func readLiked(path string) (*design.File, error) {
	if path == design.BuiltInName {
		return design.BuiltIn()
	}
	return design.Read(path)
}

// wayNamed returns what is kept by its name on the command line.
func wayNamed(name string) (size.Way, error) {
	names := []string{"time", "steadiness", "proportion", "radius"}
	if i := slices.Index(names, name); i >= 0 {
		return size.Ways[i], nil
	}
	return 0, fmt.Errorf("--keep is one of %s; %q is none", strings.Join(names, ", "), name)
}

// explained gives an error of sizing its file, and its place where it has one.
func explained(f *design.File, err error) error {
	if unsuited := (*size.UnsuitedError)(nil); errors.As(err, &unsuited) {
		return fmt.Errorf("%s: %s", f.Name, unsuited.Reason)
	}
	return f.Explain(err)
}

// save writes a design under a new name, and says what to do with it.
func save(out io.Writer, file *design.File, d piece.Design, path string) error {
	text, err := file.Saved(d)
	if err != nil {
		return err
	}
	if err := writeNew(path, text); err != nil {
		return err
	}
	_, err = fmt.Fprintf(out, "Wrote %s. Look at it, then type:\n  rockerwright check %s\n", path, design.ShellWord(path))
	return err
}
