package locate

import (
	"fmt"
	"strings"
)

// deepest is how deep arrays and tables may nest before the scan stops looking inside.
const deepest = 100

// Entries returns the entries of a text in the order of the text: tables, keys, and the
// elements of arrays. In a text that TOML does not accept it finds what it can.
func Entries(text string) []Entry {
	s := scan{ruler: newRuler(text), count: map[string]int{}}
	s.pos = s.lines[0]
	for {
		s.skip(" \t\r\n")
		switch {
		case s.pos >= len(s.text):
			return s.entries
		case s.text[s.pos] == '#':
			s.comment()
		case s.text[s.pos] == '[':
			s.header()
		default:
			s.pair(s.table, 0)
			s.restOfLine()
		}
	}
}

// A scan is one walk over a text. Every step moves it on.
type scan struct {
	ruler
	pos     int
	table   string         // path of the table the walk is in
	count   map[string]int // how many tables of an array there were, by path
	entries []Entry
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
	names := s.keys("]\n")
	s.restOfLine()
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
	s.table = path
	s.add(path, start, start, start)
}

// pair reads key = value in a table or an inline table.
func (s *scan) pair(table string, depth int) {
	start := s.pos
	path := table
	for _, name := range s.keys("=\n,}]") {
		path = joined(path, name)
	}
	if !s.next("=") {
		if s.pos == start && s.pos < len(s.text) {
			s.pos++ // nothing that was a key
		}
		return
	}
	s.pos++
	s.skip(" \t")
	s.value(path, start, depth)
}

// keys reads a dotted key up to one of the ends.
func (s *scan) keys(ends string) []string {
	var names []string
	for s.pos < len(s.text) && strings.IndexByte(ends, s.text[s.pos]) < 0 {
		s.skip(" \t.")
		start := s.pos
		if s.pos < len(s.text) && (s.text[s.pos] == '"' || s.text[s.pos] == '\'') {
			s.quoted()
			names = append(names, strings.Trim(s.text[start:s.pos], `"'`))
		} else {
			s.until(" \t." + ends)
			if s.pos > start {
				names = append(names, s.text[start:s.pos])
			}
		}
		s.skip(" \t")
		if s.pos == start {
			break
		}
	}
	return names
}

// value reads a value and adds its entry, and those inside it.
func (s *scan) value(path string, key, depth int) {
	start, index := s.pos, len(s.entries)
	s.entries = append(s.entries, Entry{})
	switch {
	case s.pos >= len(s.text):
	case depth > deepest:
		s.restOfLine()
	case s.text[s.pos] == '[':
		s.array(path, depth)
	case s.text[s.pos] == '{':
		s.inline(path, depth)
	case s.text[s.pos] == '"' || s.text[s.pos] == '\'':
		s.quoted()
	default:
		s.until(",]}#\n")
	}
	end := start + len(strings.TrimRight(s.text[start:s.pos], " \t\r"))
	s.entries[index] = Entry{Path: path, Key: s.at(key), Value: s.at(start), ValueStart: start, ValueEnd: end, Raw: s.text[start:end]}
}

// array reads the elements of an array, over as many lines as it has.
func (s *scan) array(path string, depth int) {
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
			s.value(fmt.Sprintf("%s[%d]", path, n), s.pos, depth+1)
			if n++; s.pos == before {
				s.pos++
			}
		}
	}
}

// inline reads the pairs of an inline table.
func (s *scan) inline(path string, depth int) {
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
			s.pair(path, depth+1)
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

func (s *scan) add(path string, key, start, end int) {
	s.entries = append(s.entries, Entry{Path: path, Key: s.at(key), Value: s.at(start), ValueStart: start, ValueEnd: end, Raw: s.text[start:end]})
}

func joined(path, name string) string {
	if path == "" {
		return name
	}
	return path + "." + name
}
