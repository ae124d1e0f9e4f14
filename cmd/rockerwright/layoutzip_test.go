package main

import (
	"archive/zip"
	"bytes"
	"io"
	"testing"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/layout"
)

// TestZippedLayout holds that the archive has the files that layout writes, whole.
func TestZippedLayout(t *testing.T) {
	text, _ := design.Start("chair")
	f, err := design.Parse("chair.toml", text)
	if err != nil {
		t.Fatal(err)
	}
	_, files, err := laid(f, "", layout.Options{})
	if err != nil {
		t.Fatal(err)
	}
	packed, err := zippedLayout(f)
	if err != nil {
		t.Fatal(err)
	}
	archive, err := zip.NewReader(bytes.NewReader(packed), int64(len(packed)))
	if err != nil || len(archive.File) != len(files) || len(files) < 5 {
		t.Fatalf("%v, %d of %d files", err, len(archive.File), len(files))
	}
	for i, entry := range archive.File {
		r, err := entry.Open()
		if err != nil {
			t.Fatal(err)
		}
		data, err := io.ReadAll(r)
		if err != nil || entry.Name != files[i].name || !bytes.Equal(data, files[i].data) {
			t.Errorf("%s: %v, %d bytes, want %s of %d", entry.Name, err, len(data), files[i].name, len(files[i].data))
		}
	}
}
