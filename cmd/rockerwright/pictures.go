package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"path/filepath"

	"rockerwright/plots"
)

// draw draws pictures into a folder, all of them or none, and returns the files. option is
// what the folder was named by. No design file is written over.
func draw(pictures []plots.Picture, option, folder, wanted string, designs []string) (drawn []string, err error) {
	format := plots.Format(wanted)
	if format != plots.SVG && format != plots.PDF {
		return nil, fmt.Errorf("--format is svg or pdf; %q is neither", wanted)
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return nil, fmt.Errorf("%s %s: this folder cannot be made: %w", option, folder, errors.Unwrap(err))
	}
	var drafts []draft
	signal.Ignore(os.Interrupt) // all of them or none, also when it is stopped
	defer signal.Reset(os.Interrupt)
	defer func() {
		for _, d := range drafts {
			if removeErr := os.Remove(d.temporary); removeErr != nil && !errors.Is(removeErr, os.ErrNotExist) {
				err = errors.Join(err, removeErr)
			}
		}
	}()
	for _, picture := range pictures {
		path := filepath.Join(folder, picture.Name+"."+string(format))
		for _, d := range designs {
			if same(path, d) {
				return nil, fmt.Errorf("%s is the design itself; choose another folder for the pictures", path)
			}
		}
		temporary, err := writeDraft(path, func(w io.Writer) error { return picture.Draw(w, format) })
		if temporary != "" {
			drafts = append(drafts, draft{temporary, path})
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %s could not be drawn: %w", option, path, err)
		}
	}
	for _, d := range drafts {
		if err := os.Rename(d.temporary, d.path); err != nil {
			return nil, fmt.Errorf("%s: %s could not be written: %w", option, d.path, err)
		}
		drawn = append(drawn, d.path)
	}
	return drawn, nil
}

// list says which files were drawn.
func list(out io.Writer, drawn []string) error {
	for _, path := range drawn {
		if _, err := fmt.Fprintf(out, "Drew %s\n", path); err != nil {
			return err
		}
	}
	return nil
}

// A draft is a file that is written but not yet in its place.
type draft struct{ temporary, path string }

// writeDraft writes a file beside path and returns its name, "" where there is none.
func writeDraft(path string, write func(io.Writer) error) (string, error) {
	f, err := os.CreateTemp(filepath.Dir(path), ".draft-*")
	if err != nil {
		return "", err
	}
	err = write(f)
	if chmodErr := f.Chmod(0o644); err == nil {
		err = chmodErr
	}
	if closeErr := f.Close(); err == nil {
		err = closeErr
	}
	return f.Name(), err
}

// same reports whether two paths are one existing file.
func same(a, b string) bool {
	infoA, errA := os.Stat(a)
	infoB, errB := os.Stat(b)
	return errA == nil && errB == nil && os.SameFile(infoA, infoB)
}
