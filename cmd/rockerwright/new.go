package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
)

func newCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "new [KIND] [FILE] [section.key=value…]",
		Short: "print a starting design, or write it to FILE",
		Long: `Prints a design to start from, or writes it to FILE. Every line in it comes off a
tape; the numbers in its comments are the blanks of the sheets that "rockerwright
measure" prints. KIND is one of: ` + strings.Join(design.Starts(), ", ") + `.

Given sizes of the person, it sizes seat, arms and back to them, by common practice
and at the rest with that person at ease; the rockers stay as they are. Each further
size that was measured replaces an estimate.

An existing file is never written over.`,
		Example: `  rockerwright new chair               print it
  rockerwright new chair mine.toml     write it
  rockerwright new chair mine.toml "sitter.height=6 ft 1 in" sitter.weight=210
  rockerwright new cradle`,
		RunE: startNew,
	}
}

// newExample stands at the end of a message.
const newExample = "For example: rockerwright new chair mine.toml"

// startNew prints or writes a starting design.
func startNew(cmd *cobra.Command, args []string) error {
	out := cmd.OutOrStdout()
	names, changes, err := parted(args, func(word string) bool {
		_, err := design.Start(word)
		return err == nil
	})
	if err != nil {
		return err
	}
	if len(names) > 2 {
		return fmt.Errorf("new makes one design; %q is one name too many. "+newExample, names[2])
	}
	names = append(names, []string{"chair", ""}[len(names):]...)
	kind, path := names[0], names[1]
	text, err := design.Start(kind)
	if err != nil {
		return fmt.Errorf("%w. "+newExample, err)
	}
	if path != "" {
		if err := designName(path); err != nil {
			return err
		}
	}
	text, err = filled(kind, text, changes)
	if err != nil {
		return err
	}
	if path == "" {
		_, err := io.WriteString(out, text)
		return err
	}
	return writeNew(out, path, text, "Open it in a text editor, change the measures, save")
}

// filled returns a starting design with changes written in.
func filled(kind, text string, changes []change) (string, error) {
	if len(changes) == 0 {
		return text, nil
	}
	f, err := design.Parse("new "+kind, text)
	if err != nil {
		return "", err
	}
	for _, c := range changes {
		if err := f.Doubtful(c.key, c.values); err != nil {
			return "", err
		}
		if len(c.values) > 1 {
			return "", fmt.Errorf("%s: new takes one value for each entry", c.key)
		}
		if err := f.Set(c.key, c.values[0]); err != nil {
			return "", err
		}
	}
	return f.Filled()
}

// writeNew writes a design, which no option writes over, and says what to do before it is checked.
func writeNew(out io.Writer, path, text, first string) error {
	write := func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	}
	if err := writeOutputs([]output{{path, write}}, nil, false, "Choose another name"); err != nil {
		return err
	}
	_, err := fmt.Fprintf(out, "Wrote %s. %s, then type:\n  rockerwright check %s\n", path, first, design.ShellWord(path))
	return err
}
