package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"rockerwright/cmd/internal/papers"
)

// writeFolder writes files into a folder that is made for them, all or none: into one beside
// it first, which then takes its place. A folder that is there is kept, or with replace taken
// away once the new one is whole, if nothing is in it but what a layout writes.
func writeFolder(folder string, files []papers.File, replace bool) (err error) {
	there, err := oldLayout(folder, replace)
	if err != nil {
		return err
	}
	drafts, done, err := draftsIn(filepath.Dir(folder))
	stranded := false // what was there is among the drafts and could not be put back
	defer func() {
		if !stranded {
			err = errors.Join(err, done())
		}
	}()
	if err != nil {
		return fmt.Errorf("%s cannot be made: %w. Nothing was written", named(folder), reason(err))
	}
	fresh := filepath.Join(drafts, "new")
	for _, f := range files {
		path := filepath.Join(fresh, filepath.FromSlash(f.Name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return fmt.Errorf("%s could not be written: %w. Nothing was kept", named(folder), reason(err))
		}
		if err := os.WriteFile(path, f.Data, 0o644); err != nil {
			return fmt.Errorf("%s: %s could not be written: %w. Nothing was kept", named(folder), named(f.Name), reason(err))
		}
	}
	old := filepath.Join(drafts, "old")
	if there {
		if err := os.Rename(folder, old); err != nil {
			return fmt.Errorf("%s could not be replaced: %w. It is as it was", named(folder), reason(err))
		}
	}
	if err := os.Rename(fresh, folder); err != nil {
		err = fmt.Errorf("%s could not be put in its place: %w", named(folder), reason(err))
		if there {
			if back := os.Rename(old, folder); back != nil {
				stranded = true
				err = fmt.Errorf("%w. What was there is in %s now", err, named(old))
			}
		}
		return err
	}
	return nil
}

// oldLayout reports whether a layout is there that may be replaced.
func oldLayout(folder string, replace bool) (there bool, err error) {
	info, err := os.Lstat(folder)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return false, nil
	case err != nil:
		return false, fmt.Errorf("%s cannot be looked at: %w", named(folder), reason(err))
	case !replace:
		return false, alreadyThere(folder, "To make it anew, add --replace")
	case !info.IsDir():
		return false, fmt.Errorf("%s is there and is no folder: it was left as it is", named(folder))
	}
	return true, filepath.WalkDir(folder, func(path string, entry fs.DirEntry, err error) error {
		if err != nil {
			return fmt.Errorf("%s cannot be read: %w", named(folder), reason(err))
		}
		name, err := filepath.Rel(folder, path)
		if err != nil || name == "." || papers.Ours(filepath.ToSlash(name)) {
			return err
		}
		return fmt.Errorf("%s holds %s, which no layout wrote: take it out, and try again. Nothing was changed",
			named(folder), named(name))
	})
}
