package main

import (
	"archive/zip"
	"bytes"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/layout"
)

// zippedLayout returns the layout of a design as a zip archive of its files; the same design
// gives the same bytes.
func zippedLayout(f *design.File) ([]byte, error) {
	_, files, err := laid(f, "", layout.Options{})
	if err != nil {
		return nil, err
	}
	var packed bytes.Buffer
	archive := zip.NewWriter(&packed)
	for _, file := range files {
		w, err := archive.Create(file.name)
		if err != nil {
			return nil, err
		}
		if _, err := w.Write(file.data); err != nil {
			return nil, err
		}
	}
	err = archive.Close()
	return packed.Bytes(), err
}
