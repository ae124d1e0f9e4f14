package locate

import (
	"fmt"
	"strings"
)

// Bounds of what any design needs: the deepest entry, sitter[0].lying_back.ahead, has four parts,
// and the longest name 16 letters. Beyond them a decoder's memory grows with the square of a text.
const (
	deepest = 8  // parts of a path: of a header, a dotted key, arrays and inline tables together
	longest = 60 // bytes of one name
)

// A BoundError is the first place where a text goes beyond what any design needs.
type BoundError struct {
	At     Position
	Reason string
}

func (e *BoundError) Error() string { return e.Reason }

// Entries returns the entries of a text in the order of the text: tables, keys, and the
// elements of arrays. In a text that TOML does not accept it finds what it can. The error is a
// [*BoundError], with which the entries end.
func Entries(text string) ([]Entry, error) {
	s := scan{ruler: newRuler(text), count: map[string]int{}, in: -1}
	s.pos = s.offset
	for s.bound == nil {
		s.skip(" \t\r\n")
		switch {
		case s.pos >= len(s.text):
			return s.entries, nil
		case s.text[s.pos] == '#':
			s.comment()
		case s.text[s.pos] == '[':
			s.header()
		default:
			s.pair(s.table, s.in, s.depth)
			s.restOfLine()
		}
	}
	return s.entries, s.bound
}

// A scan is one walk over a text. Every step moves it on; a bound that is passed ends it.
type scan struct {
	ruler
	pos     int
	table   string         // path of the table the walk is in
	in      int            // its index among the entries, −1 before the first header
	depth   int            // how many names its header has
	count   map[string]int // how many tables of an array there were, by path
	entries []Entry
	bound   error
}

// beyond ends the walk where a bound is passed.
func (s *scan) beyond(offset int, reason string) {
	if s.bound == nil {
		s.bound = &BoundError{s.at(offset), reason}
	}
	s.pos = len(s.text)
}

// tooDeep reports whether a path has too many parts, and ends the walk if so.
func (s *scan) tooDeep(depth, offset int) bool {
	if depth <= deepest {
		return false
	}
	s.beyond(offset, fmt.Sprintf("this is nested more than %d deep; no entry of a design is", deepest))
	return true
}

// skip passes over any of the given bytes.
func (s *scan) skip(bytes string) {
	for s.pos < len(s.text) && strings.IndexByte(bytes, s.text[s.pos]) >= 0 {
		s.pos++
	}
}

// until passes over all but the given bytes.
func (s *scan) until(bytes string) {
	for s.pos < len(s.text) && strings.IndexByte(bytes, s.text[s.pos]) < 0 {
		s.pos++
	}
}

func (s *scan) comment()    { s.until("\n") }
func (s *scan) restOfLine() { s.until("\n") }

// next reports whether the text goes on with these bytes.
func (s *scan) next(bytes string) bool { return strings.HasPrefix(s.text[s.pos:], bytes) }

// header reads [table] or [[table]].
func (s *scan) header() {
	array := s.next("[[")
	s.skip("[")
	s.skip(" \t")
	start := s.pos
	at := s.at(start)
	names := s.keys("]\n")
	s.restOfLine()
	if s.bound != nil {
		return
	}
	path := ""
	for i, name := range names {
		path = joined(path, name)
		last := i == len(names)-1
		if last && array {
			s.count[path]++
		}
		if n := s.count[path]; n > 0 {
			path = fmt.Sprintf("%s[%d]", path, n-1)
		}
	}
	s.table, s.in, s.depth = path, len(s.entries), len(names)
	s.entries = append(s.entries, Entry{Path: path, Key: at, Value: at, KeyStart: start, ValueStart: start, ValueEnd: start, In: -1})
}

// pair reads key = value in a table or an inline table, whose index is in.
func (s *scan) pair(table string, in, depth int) {
	start := s.pos
	at := s.at(start)
	path := table
	for _, name := range s.keys("=\n,}]") {
		path = joined(path, name)
		depth++
	}
	if !s.next("=") {
		if s.pos == start && s.pos < len(s.text) {
			s.pos++ // nothing that was a key
		}
		return
	}
	s.pos++
	s.skip(" \t")
	s.value(Entry{Path: path, Key: at, KeyStart: start, In: in}, depth)
}

// keys reads a dotted key up to one of the ends.
func (s *scan) keys(ends string) []string {
	var names []string
	dots := 0 // words that no dot parts are a mistake, not a depth
	ends += "#"
	for s.pos < len(s.text) && strings.IndexByte(ends, s.text[s.pos]) < 0 {
		start := s.pos
		s.skip(" \t.")
		dots += strings.Count(s.text[start:s.pos], ".")
		if start = s.pos; s.tooDeep(dots+1, start) {
			return names
		}
		if s.pos < len(s.text) && (s.text[s.pos] == '"' || s.text[s.pos] == '\'') {
			s.quoted()
			names = append(names, strings.Trim(s.text[start:s.pos], `"'`))
		} else {
			s.until(" \t." + ends)
			if s.pos > start {
				names = append(names, s.text[start:s.pos])
			}
		}
		if s.pos-start > longest {
			s.beyond(start, fmt.Sprintf("this name has more than %d letters; no entry of a design has", longest))
			return names
		}
		s.skip(" \t")
		if s.pos == start {
			break
		}
	}
	return names
}

// value reads the value of an entry, so many names deep, and adds the entry and those inside it.
func (s *scan) value(e Entry, depth int) {
	e.ValueStart, e.Value = s.pos, s.at(s.pos)
	index := len(s.entries)
	s.entries = append(s.entries, e)
	switch {
	case s.pos >= len(s.text) || s.tooDeep(depth, s.pos):
	case s.text[s.pos] == '[':
		s.array(e.Path, index, depth)
	case s.text[s.pos] == '{':
		s.inline(e.Path, index, depth)
	case s.text[s.pos] == '"' || s.text[s.pos] == '\'':
		s.quoted()
	default:
		s.until(",]}#\n")
	}
	e.Raw = strings.TrimRight(s.text[e.ValueStart:s.pos], " \t\r")
	e.ValueEnd = e.ValueStart + len(e.Raw)
	s.entries[index] = e
}

// array reads the elements of an array, over as many lines as it has.
func (s *scan) array(path string, in, depth int) {
	s.pos++
	for n := 0; ; {
		s.skip(" \t\r\n,")
		switch {
		case s.pos >= len(s.text):
			return
		case s.text[s.pos] == ']':
			s.pos++
			return
		case s.text[s.pos] == '#':
			s.comment()
		default:
			before := s.pos
			s.value(Entry{Path: fmt.Sprintf("%s[%d]", path, n), Key: s.at(before), KeyStart: before, In: in}, depth+1)
			if n++; s.pos == before {
				s.pos++
			}
		}
	}
}

// inline reads the pairs of an inline table.
func (s *scan) inline(path string, in, depth int) {
	s.pos++
	for {
		s.skip(" \t\r\n,")
		switch {
		case s.pos >= len(s.text):
			return
		case s.text[s.pos] == '}':
			s.pos++
			return
		case s.text[s.pos] == '#':
			s.comment()
		default:
			s.pair(path, in, depth)
		}
	}
}

// quoted passes over a string of one line or of many.
func (s *scan) quoted() {
	mark := s.text[s.pos : s.pos+1]
	if long := strings.Repeat(mark, 3); s.next(long) {
		s.pos += 3
		for s.pos < len(s.text) && !s.next(long) {
			s.escaped(mark)
		}
		s.pos = min(s.pos+3, len(s.text))
		for s.next(mark) { // a string may end in quotes of its own
			s.pos++
		}
		return
	}
	s.pos++
	for s.pos < len(s.text) && s.text[s.pos] != '\n' && !s.next(mark) {
		s.escaped(mark)
	}
	if s.next(mark) {
		s.pos++
	}
}

// escaped passes over one byte, or two where the first is an escape.
func (s *scan) escaped(mark string) {
	if mark == `"` && s.text[s.pos] == '\\' {
		s.pos++
	}
	s.pos = min(s.pos+1, len(s.text))
}

func joined(path, name string) string {
	if path == "" {
		return name
	}
	return path + "." + name
}
