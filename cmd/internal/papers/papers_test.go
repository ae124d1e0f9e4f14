package papers

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
// words. Dates are of seconds since 1970 (date -u -d @…): after 1000000000 it was 9 September 2001 in Greenwich.
func TestZipDates(t *testing.T) {
	f := startingChair(t)
	for _, tt := range []struct {
		epoch int64
		want  string
	}{
		{1000000000, "2001-09-09"}, {315532800, "1980-01-01"}, {4291747199, "2105-12-31"},
		{315532799, "it is 1979"}, {1, "it is 1970"}, {4291747200, "it is 2106"},
	} {
		packed, err := Zip(f, time.Unix(tt.epoch, 0).UTC())
		if err != nil {
			if !strings.Contains(err.Error(), tt.want) {
				t.Errorf("%d: %v, want %s", tt.epoch, err, tt.want)
			}
			continue
		}
		archive, err := zip.NewReader(bytes.NewReader(packed), int64(len(packed)))
		if err != nil {
			t.Fatal(err)
		}
		for _, entry := range archive.File {
			if got := entry.Modified.Format(time.DateOnly); got != tt.want {
				t.Errorf("%d: %s is of %s, want %s", tt.epoch, entry.Name, got, tt.want)
			}
		}
	}
}

// TestZippedLayout holds that the archive has the files that layout writes, whole.
func TestZippedLayout(t *testing.T) {
	f := startingChair(t)
	_, files, err := Of(f, "", layout.Options{})
	if err != nil {
		t.Fatal(err)
	}
	packed, err := Zip(f, time.Unix(1000000000, 0))
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
		if err != nil || entry.Name != files[i].Name || !bytes.Equal(data, files[i].Data) {
			t.Errorf("%s: %v, %d bytes, want %s of %d", entry.Name, err, len(data), files[i].Name, len(files[i].Data))
		}
	}
}
