package main

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/signal"
	"path/filepath"
	"slices"
	"strings"

	"rockerwright/sim/quantity"
)

// replaceFlag is what a command with outputs takes to write over old ones.
const replaceFlag = "write over what is there"

// An output is a file to be written.
type output struct {
	path  string
	write func(io.Writer) error
}

// shownPath is how much of a path a message shows, letters.
const shownPath = 200

// named writes a path for a message: clipped, without control characters.
func named(path string) string { return quantity.Shown(path, shownPath) }

// writeOutputs writes all files, which lie in one folder, or none, also when it is stopped. What is there is
// kept unless replace is said, and then only plain files are written over; never a design. otherwise says
// what to do about a file that is there.
func writeOutputs(files []output, designs []string, replace bool, otherwise string) (err error) {
	for _, f := range files {
		if err := mayBeWritten(f.path, designs, replace, otherwise); err != nil {
			return err
		}
	}
	drafts, done, err := draftsIn(filepath.Dir(files[0].path))
	defer func() { err = errors.Join(err, done()) }()
	if err != nil {
		return fmt.Errorf("%s cannot be written: %w", named(files[0].path), reason(err))
	}
	draftOf := func(f output) string { return filepath.Join(drafts, filepath.Base(f.path)) }
	for _, f := range files {
		if err := writeDraft(draftOf(f), f.write); err != nil {
			return fmt.Errorf("%s cannot be written: %w", named(f.path), reason(err))
		}
	}
	for _, f := range files {
		switch err := place(draftOf(f), f.path, replace); {
		case errors.Is(err, fs.ErrExist): // somebody made it meanwhile
			return alreadyThere(f.path, otherwise)
		case err != nil:
			return fmt.Errorf("%s cannot be written: %w", named(f.path), reason(err))
		}
	}
	return nil
}

// draftsIn makes a folder within another, in which something is made before it takes its place. What is
// being written is finished, also when it is stopped meanwhile, until done, which takes away what is left.
func draftsIn(folder string) (drafts string, done func() error, err error) {
	stopped := make(chan os.Signal, 1)
	signal.Notify(stopped, os.Interrupt)
	drafts, err = os.MkdirTemp(folder, ".draft-*")
	return drafts, func() error {
		defer signal.Stop(stopped)
		return os.RemoveAll(drafts)
	}, err
}

// mayBeWritten returns why a file may not be written.
func mayBeWritten(path string, designs []string, replace bool, otherwise string) error {
	if slices.ContainsFunc(designs, func(d string) bool { return same(path, d) }) {
		return fmt.Errorf("%s is the design itself, and is left as it is. Choose another name", named(path))
	}
	folder := filepath.Dir(path)
	if info, err := os.Stat(folder); errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s cannot be written: there is no folder %s. Make it first", named(path), named(folder))
	} else if err == nil && !info.IsDir() {
		return fmt.Errorf("%s cannot be written: %s is a file, not a folder", named(path), named(folder))
	}
	info, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return fmt.Errorf("%s cannot be written: %w", named(path), reason(err))
	case !info.Mode().IsRegular():
		return fmt.Errorf("%s is %s, and is left as it is. Choose another name", named(path), sortOf(info.Mode()))
	case !replace:
		return alreadyThere(path, otherwise)
	}
	return nil
}

func alreadyThere(path, otherwise string) error {
	return fmt.Errorf("%s is already there and was left as it is. %s", named(path), otherwise)
}

// sortOf says what stands in the place of a plain file.
func sortOf(mode fs.FileMode) string {
	switch {
	case mode.IsDir():
		return "a folder"
	case mode&fs.ModeSymlink != 0:
		return "a link to another file"
	case mode&fs.ModeNamedPipe != 0:
		return "a pipe"
	}
	return "a device"
}

// endsIn returns why a name does not fit what is written under it: what, whose names end in one of the
// given endings, the first of which is offered.
func endsIn(path, what string, endings ...string) error {
	ending := filepath.Ext(path)
	if slices.Contains(endings, strings.ToLower(ending)) {
		return nil
	}
	return fmt.Errorf("%s is %s: name it %s", named(path), what, named(strings.TrimSuffix(path, ending)+endings[0]))
}

// designName returns why a new design may not be called so.
func designName(path string) error {
	return endsIn(path, "to be a design, which is plain text", ".toml", ".txt")
}

// outputFolder makes the folder that an option names, where it is not there.
func outputFolder(option, folder string) error {
	if info, err := os.Stat(folder); err == nil && !info.IsDir() {
		return fmt.Errorf("%s names a folder, and %s is a file. Choose another name", option, named(folder))
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return fmt.Errorf("%s %s: this folder cannot be made: %w", option, named(folder), reason(err))
	}
	return nil
}

// writeDraft writes a file that is not there yet.
func writeDraft(path string, write func(io.Writer) error) error {
	f, err := os.Create(path)
	if err != nil {
		return err
	}
	return cmp.Or(write(f), f.Chmod(0o644), f.Close())
}

// place gives a finished draft its name: over another file only if told so.
func place(temporary, path string, replace bool) error {
	if replace {
		return os.Rename(temporary, path)
	}
	err := os.Link(temporary, path) // fails where path is, whoever made it meanwhile
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	if _, statErr := os.Lstat(path); statErr == nil { // a disk that knows no links, such as a stick
		return fs.ErrExist
	}
	return os.Rename(temporary, path)
}

// reason returns what the system says, without the name of the draft.
func reason(err error) error {
	var onPath *fs.PathError
	if errors.As(err, &onPath) {
		return onPath.Err
	}
	var onLink *os.LinkError
	if errors.As(err, &onLink) {
		return onLink.Err
	}
	return err
}

// same reports whether two paths are one existing file.
func same(a, b string) bool {
	infoA, errA := os.Stat(a)
	infoB, errB := os.Stat(b)
	return errA == nil && errB == nil && os.SameFile(infoA, infoB)
}
