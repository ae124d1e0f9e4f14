package page

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/piece"
)

// An ask is what the page asks: a design, and what to do with it.
type ask struct {
	Work

	Load   string // who sits, as check names it; "" for the first person
	Narrow bool   // drawn for a phone
	More   bool   // with the blocks of check --all
	Form   string // the form that the page has
	Motion *motion
	Before *Work  // the design that was kept
	Way    string // of the likeness that is asked
	Units  string // that the text is to be written for
	Kind   string // of a starting design
}

// A Work is a maker's text with the changes to it.
type Work struct {
	Name    string   `json:"name"` // of the file
	Text    string   `json:"text"`
	Changes []string `json:"changes"` // "section.key=value"
}

// A motion is how it is set going.
type motion struct {
	From string // degrees from the rest, + back
	Push string // at the top of the back, + to the rear
}

// What one request may bring. A settee for two with all its parts has a tenth of it.
const (
	mostBytes   = 10 * design.Largest // two designs, written as JSON
	mostChanges = 400
	mostName    = 200
	mostArcs    = 60
)

// readAsk reads a request's body, strictly.
func readAsk(body io.Reader) (ask, error) {
	var a ask
	data, err := io.ReadAll(body)
	if err != nil {
		return a, err
	}
	if !utf8.Valid(data) {
		return a, errors.New("this is not a text")
	}
	d := json.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(&a); err != nil {
		return a, err
	}
	if _, err := d.Token(); err != io.EOF {
		return a, errors.New("something stands behind the request")
	}
	return a, nil
}

// file reads a design with its changes as the command line does. The error is a
// [*design.Error], or says that it is more than a page takes.
func (w Work) file() (*design.File, error) {
	switch {
	case len(w.Changes) > mostChanges || len(w.Name) > mostName:
		return nil, fmt.Errorf("the page takes %d changes to one design", mostChanges)
	case strings.TrimSpace(strings.TrimPrefix(w.Text, "\ufeff")) == "":
		return nil, errors.New("the file is empty. Start from a chair, or drop a design file here")
	}
	f, err := design.Parse(w.Name, w.Text)
	if err != nil {
		return nil, err
	}
	if arcs := len(f.Design.Rocker.Arcs); arcs > mostArcs { // more than is worked out while a slider moves
		return nil, fmt.Errorf("the page takes %d arcs, this design has %d: use rockerwright check", mostArcs, arcs)
	}
	for _, change := range w.Changes {
		key, value, found := strings.Cut(change, "=")
		if !found {
			return nil, &design.Error{File: change, Message: "a change is written section.key=value. For example: rocker.tail=20-1/2"}
		}
		if err := f.Set(strings.TrimSpace(key), value); err != nil {
			return nil, err
		}
	}
	return f, nil
}

// A fault is the error of a mistake with its place: the entry, or the line of the file.
type fault struct {
	Key     string `json:"key,omitempty"`
	Before  bool   `json:"before,omitempty"` // it is in the design that was kept
	Line    int    `json:"line,omitempty"`
	Column  int    `json:"column,omitempty"`
	Message string `json:"message"`
}

func (f *fault) Error() string { return f.Message }

// faultOf returns where a mistake is.
func faultOf(err error) *fault {
	var f *fault
	if errors.As(err, &f) {
		return f
	}
	f = &fault{Message: err.Error()}
	var entry *piece.KeyError
	if errors.As(err, &entry) {
		f.Key = entry.Key
	}
	var placed *design.Error
	if errors.As(err, &placed) {
		f.Line, f.Column, f.Message = placed.Line, placed.Column, placed.Message
		if key, _, changed := strings.Cut(placed.File, "="); changed && placed.Line == 0 {
			f.Key = key
		} else if key, _, said := strings.Cut(placed.Message, ": "); said && !strings.Contains(key, " ") {
			f.Key = key
		}
	}
	return f
}
