package main

import (
	"archive/zip"
	"bytes"
	"io"
	"strings"
	"testing"
	"time"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/layout"
)

// startingChair returns the starting design of a chair.
func startingChair(t *testing.T) *design.File {
	t.Helper()
	text, _ := design.Start("chair")
	f, err := design.Parse("chair.toml", text)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// TestZipDates: every file has the date of the day, and a year that a zip cannot say is refused in
// words. 1000000000 s after 1970 it was 9 September 2001 in Greenwich.
func TestZipDates(t *testing.T) {
	f := startingChair(t)
	for _, tt := range []struct{ epoch, want string }{
		{"1000000000", "2001-09-09"}, {"315532800", "1980-01-01"}, {"4291747199", "2105-12-31"}, // date -u -d @…
		{"315532799", "it is 1979"}, {"1", "it is 1970"}, {"4291747200", "it is 2106"}, {"soon", "SOURCE_DATE_EPOCH is a number of seconds"},
	} {
		t.Setenv("SOURCE_DATE_EPOCH", tt.epoch)
		packed, err := zippedLayout(f)
		if err != nil {
			if !strings.Contains(err.Error(), tt.want) {
				t.Errorf("%s: %v, want %s", tt.epoch, err, tt.want)
			}
			continue
		}
		archive, err := zip.NewReader(bytes.NewReader(packed), int64(len(packed)))
		if err != nil {
			t.Fatal(err)
		}
		for _, entry := range archive.File {
			if got := entry.Modified.Format(time.DateOnly); got != tt.want {
				t.Errorf("%s: %s is of %s, want %s", tt.epoch, entry.Name, got, tt.want)
			}
		}
	}
}

// TestZippedLayout holds that the archive has the files that layout writes, whole.
func TestZippedLayout(t *testing.T) {
	f := startingChair(t)
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
