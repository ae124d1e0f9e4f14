package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
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
		RunE: func(cmd *cobra.Command, args []string) error {
			return startNew(cmd.OutOrStdout(), args)
		},
	}
}

// startNew prints or writes a starting design.
func startNew(out io.Writer, args []string) error {
	kind, path := "chair", ""
	names, changes, err := parted(args, func(word string) bool {
		_, found := design.Start(word)
		return found
	})
	if err != nil {
		return err
	}
	switch len(names) {
	case 0:
	case 1:
		kind = names[0]
	case 2:
		kind, path = names[0], names[1]
	default:
		return fmt.Errorf("new makes one design; %q is one name too many. For example: rockerwright new chair mine.toml", names[2])
	}
	text, found := design.Start(kind)
	if !found {
		return fmt.Errorf("there is no starting design %q; there are %s. For example: rockerwright new chair mine.toml", kind, strings.Join(design.Starts(), ", "))
	}
	text, err = filled(kind, text, changes)
	if err != nil {
		return err
	}
	if path == "" {
		_, err := io.WriteString(out, text)
		return err
	}
	if err := writeNew(path, text); err != nil {
		return err
	}
	_, err = fmt.Fprintf(out, "Wrote %s. Open it in a text editor, change the measures, save, then type:\n  rockerwright check %s\n", path, shellWord(path))
	return err
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

// writeNew writes a file that must not exist yet, whole or not at all.
func writeNew(path, text string) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	switch {
	case errors.Is(err, fs.ErrExist):
		return fmt.Errorf("%s is already there and was left as it is. Choose another name", path)
	case err != nil:
		return fmt.Errorf("%s cannot be written: %w", path, errors.Unwrap(err))
	}
	_, err = io.WriteString(f, text)
	if closeErr := f.Close(); err == nil {
		err = closeErr
	}
	if err != nil {
		return errors.Join(fmt.Errorf("%s could not be written whole and was taken away: %w", path, err), os.Remove(path))
	}
	return nil
}
