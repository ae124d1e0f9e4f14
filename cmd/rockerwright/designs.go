package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/quantity"
)

// A variant is a design file with its changes, one column of an answer.
type variant struct {
	file   *design.File
	column words.Column // what sets it apart from the others, without its report
}

// readDesigns reads the files and the changes of a call, and returns each combination of
// a file with one value of each change.
func readDesigns(args []string) (paths []string, variants []variant, err error) {
	paths, changes, err := parted(args, isThere)
	if err != nil {
		return nil, nil, err
	}
	names, read := paths, design.Read
	if len(paths) == 0 {
		names, read = []string{design.BuiltInName}, func(string) (*design.File, error) { return design.BuiltIn() }
	}
	for _, name := range names {
		f, err := read(name)
		if err != nil {
			return nil, nil, err
		}
		var column words.Column
		if len(names) > 1 {
			column.Head = filepath.Base(f.Name)
			column.Values = []string{column.Head}
		}
		variants = append(variants, variant{f, column})
	}
	for _, c := range changes {
		if variants, err = c.applied(variants); err != nil {
			return nil, nil, err
		}
	}
	return paths, variants, nil
}

// readOne reads the one design of a call; does says of which command it is the one.
func readOne(args []string, does string) (paths []string, file *design.File, err error) {
	paths, variants, err := readDesigns(args)
	if err == nil && len(variants) != 1 {
		err = notOne(does)
	}
	if err != nil {
		return nil, nil, err
	}
	return paths, variants[0].file, nil
}

func notOne(does string) error {
	return fmt.Errorf("%s name one file, and one value for each change", does)
}

// isThere reports whether there is a file or a folder of a name.
func isThere(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

// parted parts the words of a call into names and changes; isName knows names that could be taken
// for something else. The error is of a change that was typed in several words.
func parted(args []string, isName func(string) bool) (names []string, changes []change, err error) {
	for i, arg := range args {
		if isName(arg) {
			names = append(names, arg)
			continue
		}
		if n, whole := design.Torn(args[i:], isName); n > 1 {
			torn, whole := quantity.Shown(strings.Join(args[i:i+n], " "), shownWords), quantity.Shown(whole, shownWords)
			return nil, nil, fmt.Errorf("%s: a change is one word, so type: %s", torn, design.ShellWord(whole))
		}
		if key, values, ok := design.SplitChange(arg); ok {
			changes = append(changes, change{key, values})
			continue
		}
		names = append(names, arg)
	}
	return names, changes, nil
}

// shownWords is how much of a call is shown in a message, letters.
const shownWords = 200

// A change is one entry of a design, and the values it is to have, one after another.
type change struct {
	key    string
	values []string
}

// applied returns each variant with each value of the change.
func (c change) applied(variants []variant) ([]variant, error) {
	var changed []variant
	for _, v := range variants {
		if err := v.file.Doubtful(c.key, c.values); err != nil {
			return nil, err
		}
		for _, value := range c.values {
			f := v.file.Clone()
			if err := f.Set(c.key, value); err != nil {
				return nil, err
			}
			column := v.column
			if len(c.values) > 1 {
				entry, value, _ := strings.Cut(f.Changes[len(f.Changes)-1], " = ")
				_, name, _ := strings.Cut(entry, ".")
				column.Head = strings.TrimSpace(column.Head + " " + strings.ReplaceAll(name, "_", " ") + " " + value)
				column.Values = append(slices.Clone(column.Values), value)
				column.By = append(slices.Clone(column.By), f.Label(c.key))
			}
			changed = append(changed, variant{f, column})
		}
	}
	if len(changed) > 100 {
		return nil, fmt.Errorf("%d designs are more than one call compares; ask for fewer values", len(changed))
	}
	return changed, nil
}
