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
		Use:   "new [KIND] [FILE]",
		Short: "print a starting design, or write it to FILE",
		Long: `Prints a design to start from, or writes it to FILE. Every line in it comes off a
tape. KIND is one of: ` + strings.Join(design.Starts(), ", ") + `.

An existing file is never written over.`,
		Example: `  rockerwright new chair               print it
  rockerwright new chair mine.toml     write it
  rockerwright new cradle`,
		Args: cobra.MaximumNArgs(2),
		RunE: func(cmd *cobra.Command, args []string) error {
			return startNew(cmd.OutOrStdout(), args)
		},
	}
}

// startNew prints or writes a starting design.
func startNew(out io.Writer, args []string) error {
	kind := "chair"
	if len(args) > 0 {
		kind = args[0]
	}
	text, found := design.Start(kind)
	if !found {
		return fmt.Errorf("there is no starting design %q; there are %s. For example: rockerwright new chair mine.toml", kind, strings.Join(design.Starts(), ", "))
	}
	if len(args) < 2 {
		_, err := io.WriteString(out, text)
		return err
	}
	path := args[1]
	if err := writeNew(path, text); err != nil {
		return err
	}
	_, err := fmt.Fprintf(out, "Wrote %s. Open it in a text editor, change the measures, save, then type:\n  rockerwright check %s\n", path, shellWord(path))
	return err
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
