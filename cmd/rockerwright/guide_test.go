package main

import (
	"io/fs"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestGuideNamesFiles: each file and room that DEVELOPERS.md names is there.
func TestGuideNamesFiles(t *testing.T) {
	var files []string
	err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		files = append(files, filepath.ToSlash(path)+map[bool]string{true: "/"}[err == nil && entry.IsDir()])
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	there := "\n" + strings.Join(files, "\n") + "\n"
	names := regexp.MustCompile("`([a-z/_]+\\.(?:go|js|mjs|html|csv))`|\\| `([a-z/]+)` \\|")
	named := names.FindAllStringSubmatch(read(t, filepath.Join(root, "DEVELOPERS.md")), -1)
	if len(named) < 60 {
		t.Errorf("only %d names were found", len(named))
	}
	for _, name := range named {
		if file := name[1]; file != "" && !strings.Contains(there, "/"+file+"\n") {
			t.Errorf("there is no file %s", file)
		}
		if room := name[2]; room != "" && !strings.Contains(there, "/"+room+"/\n") {
			t.Errorf("there is no room %s", room)
		}
	}
}
