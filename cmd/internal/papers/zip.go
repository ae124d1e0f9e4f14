package papers

import (
	"archive/zip"
	"bytes"
	"fmt"
	"time"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/layout"
)

// Zip returns the layout of a design as a zip archive of its files, dated by the day: the same design
// gives the same bytes on the same day. The error is that of [Of], or of a day that a zip cannot say.
func Zip(f *design.File, now time.Time) ([]byte, error) {
	day := time.Date(now.Year(), now.Month(), now.Day(), 0, 0, 0, 0, now.Location())
	if year := day.Year(); year < 1980 || year > 2105 { // a zip counts from 1980, and in 32 bits of seconds until 2106
		return nil, fmt.Errorf("the files in a zip are dated 1980 to 2105, and by SOURCE_DATE_EPOCH or the clock "+
			"it is %d: set that right, and try again", year)
	}
	_, files, err := Of(f, "", layout.Options{})
	if err != nil {
		return nil, err
	}
	var packed bytes.Buffer
	archive := zip.NewWriter(&packed)
	for _, file := range files {
		w, err := archive.CreateHeader(&zip.FileHeader{Name: file.Name, Method: zip.Deflate, Modified: day})
		if err == nil {
			_, err = w.Write(file.Data)
		}
		if err != nil {
			return nil, fmt.Errorf("%s does not go into the zip: %w", file.Name, err)
		}
	}
	if err := archive.Close(); err != nil {
		return nil, fmt.Errorf("the zip cannot be closed: %w", err)
	}
	return packed.Bytes(), nil
}
