package design

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/cmd/internal/design/locate"
)

// Read reads the design file at path. The error is an [*Error].
func Read(path string) (*File, error) {
	text, err := readText(path)
	if err != nil {
		return nil, &Error{File: path, Message: err.Error()}
	}
	return Parse(path, text)
}

// readText returns what the file at path holds, no more than one byte too many, or a sentence that says why not.
func readText(path string) (string, error) {
	if strings.ContainsFunc(path, unicode.IsControl) {
		return "", errors.New("the name of this file has a control character in it; give the file another name")
	}
	f, err := os.Open(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "", errors.New("there is no such file. To make one: rockerwright new chair " + ShellWord(path))
	case errors.Is(err, fs.ErrPermission):
		return "", errors.New("this file may not be read; look at its permissions")
	case err != nil:
		return "", unread(err)
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return "", errors.New("this is a folder; name a design file in it, for example " + ShellWord(path+"/chair.toml"))
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

// Largest is the size beyond which a file is no design, bytes. A long one has 4 KiB, one with as
// many entries as are read 40.
const Largest = 64 << 10

// Marks by which a file that is no plain text begins.
const (
	richText          = `{\rtf`
	archive           = "PK\x03\x04"                       // a document of a word processor, packed
	compound          = "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" // an older one
	littleEnd, bigEnd = "\xff\xfe", "\xfe\xff"             // UTF-16
)

// plain returns a file's text with its line ends as they are read, or a sentence that says why it
// is no text of a design.
func plain(text string) (string, error) {
	begins := func(mark string) bool { return strings.HasPrefix(text, mark) }
	wide := len(text) > 3 && (text[0]|text[2] == 0) != (text[1]|text[3] == 0)
	switch {
	case len(text) > Largest:
		return "", errors.New("this file is larger than 64 KiB; a design file has a page or two of text")
	case begins(richText) || begins(archive) || begins(compound):
		return "", errors.New("this is a document of a word processor, not plain text. Open it there, choose Save as, " +
			"the type plain text (.txt) and the encoding UTF-8; then name the new file here")
	case begins(littleEnd) || begins(bigEnd) || wide:
		return "", errors.New("this file is saved as UTF-16 (Unicode with two bytes a letter). Open it in the editor, " +
			"choose Save as and the encoding UTF-8")
	case strings.IndexByte(text, 0) >= 0 || !utf8.ValidString(text):
		return "", errors.New("this is not a text file; save the design as plain text (UTF-8)")
	case strings.TrimSpace(strings.TrimPrefix(text, locate.Mark)) == "":
		return "", errors.New("the file is empty. To see what a design looks like: rockerwright new chair")
	}
	return newlines.Replace(text), nil
}

// newlines makes newlines of line ends that are a carriage return alone.
var newlines = strings.NewReplacer("\r\n", "\r\n", "\r", "\n")
