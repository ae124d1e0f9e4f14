package design

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"strings"
	"unicode"
)

// Read reads the design file at path. The error is an [*Error].
func Read(path string) (*File, error) {
	text, err := readText(path)
	if err != nil {
		return nil, &Error{File: path, Message: err.Error()}
	}
	return Parse(path, text)
}

// readText returns what the file at path holds, no more than one byte too many, or a sentence
// that says why not.
func readText(path string) (string, error) {
	if strings.ContainsFunc(path, unicode.IsControl) {
		return "", errors.New("the name of this file has a control character in it; give the file another name")
	}
	f, err := os.Open(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "", errors.New("there is no such file. To make one: rockerwright new chair " + quoted(path))
	case errors.Is(err, fs.ErrPermission):
		return "", errors.New("this file may not be read; look at its permissions")
	case err != nil:
		return "", unread(err)
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return "", errors.New("this is a folder; name a design file in it, for example " + quoted(path+"/chair.toml"))
	}
	data, err := io.ReadAll(io.LimitReader(f, Largest+1))
	if err != nil {
		return "", unread(err)
	}
	return string(data), nil
}

// unread returns why a file could not be read, without the path that stands before it already.
func unread(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		err = path.Err
	}
	return errors.New("this file cannot be read: " + err.Error())
}

// quoted returns a path as it is typed in a terminal.
func quoted(path string) string {
	if strings.ContainsAny(path, " \t'\"") {
		return `"` + path + `"`
	}
	return path
}
