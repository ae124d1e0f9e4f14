package design

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
	"unicode/utf8"
)

// largest is the size beyond which a file is no design, bytes. A long one has 4 KiB.
const largest = 128 << 10

// Read reads the design file at path. The error is an [*Error].
func Read(path string) (*File, error) {
	text, err := readText(path)
	if err != nil {
		return nil, &Error{File: path, Message: err.Error()}
	}
	return Parse(path, text)
}

// readText returns what the file at path holds, or a sentence that says why not.
func readText(path string) (string, error) {
	f, err := os.Open(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "", errors.New("there is no such file. To make one: rockerwright new chair " + quoted(path))
	case errors.Is(err, fs.ErrPermission):
		return "", errors.New("this file may not be read; look at its permissions")
	case err != nil:
		return "", err
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return "", errors.New("this is a folder; name a design file in it, for example " + quoted(path+"/chair.toml"))
	}
	data, err := io.ReadAll(io.LimitReader(f, largest+1))
	switch {
	case err != nil:
		return "", err
	case len(data) > largest:
		return "", errors.New("this file is larger than 128 KiB; a design file has a page or two of text")
	case bytes.IndexByte(data, 0) >= 0 || !utf8.Valid(data):
		return "", errors.New("this is not a text file; save the design as plain text (UTF-8)")
	case len(strings.TrimSpace(strings.TrimPrefix(string(data), bom))) == 0:
		return "", fmt.Errorf("the file is empty. To see what a design looks like: rockerwright new chair")
	}
	return string(data), nil
}

// bom is the mark that some editors put at the start of a text.
const bom = "\ufeff"

// quoted returns a path as it is typed in a terminal.
func quoted(path string) string {
	if strings.ContainsAny(path, " \t'\"") {
		return `"` + path + `"`
	}
	return path
}
