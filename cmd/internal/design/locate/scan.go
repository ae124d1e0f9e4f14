package locate

import (
	"fmt"
	"strconv"
	"strings"
)

// Bounds of what any design needs: the deepest entry, sitter[0].lying_back.ahead, has four parts,
// and the longest name 16 letters. Beyond them a decoder's memory grows with the square of a text.
const (
	deepest = 8  // parts of a path: of a header, a dotted key, arrays and inline tables together
	longest = 60 // bytes of one name
)

// A Bound is the first place where a text goes beyond what any design needs.
type Bound struct {
	Offset int
	Reason string
}

// Entries returns the entries of a text in the order of the text: tables, keys, the elements of
// arrays, whose key, counting from 0, is that of element, and stray lines. In a text that TOML does
// not accept it finds what it can. With a bound, nil where none is passed, the entries end.
func Entries(text string, element func(list string, n int) string) ([]Entry, *Bound) {
	s := scan{text: text, element: element, count: map[string]int{}, in: -1}
	if s.next(Mark) {
		s.pos = len(Mark)
	}
	for s.bound == nil {
		s.skip(blanks + "\r\n")
		switch {
		case s.pos >= len(s.text):
			return s.entries, nil
		case s.next("["):
			s.header()
		case !s.next("#"):
			s.pair(s.in)
		}
		s.until("\n")
	}
	return s.entries, s.bound
}

// A scan is one walk over a text. Every step moves it on; a bound that is passed ends it.
type scan struct {
	text    string
	pos     int
	element func(list string, n int) string
	in      int            // index of the header the walk is under, −1 before the first
	count   map[string]int // how many tables of an array there were, by key
	entries []Entry
	bound   *Bound
}

const (
	blanks = " \t"
	letter = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-" // of a name without quotes
)

// beyond ends the walk where a bound is passed.
func (s *scan) beyond(offset int, reason string) {
	if s.bound == nil {
		s.bound = &Bound{offset, reason}
	}
	s.pos = len(s.text)
}

// tooDeep reports whether a key has too many parts, and ends the walk if so.
func (s *scan) tooDeep(depth int) bool {
	if depth <= deepest {
		return false
	}
	s.beyond(s.pos, fmt.Sprintf("this is nested more than %d deep; no entry of a design is", deepest))
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

// next reports whether the text goes on with these bytes.
func (s *scan) next(bytes string) bool { return strings.HasPrefix(s.text[s.pos:], bytes) }

// header reads [table] or [[table]].
func (s *scan) header() {
	array := s.next("[[")
	s.skip("[")
	s.skip(blanks)
	e := Entry{Kind: Header, Start: s.pos, ValueStart: s.pos, In: -1}
	names, end := s.names()
	for i, name := range names {
		e.Key = joined(e.Key, name)
		if array && i == len(names)-1 {
			s.count[e.Key]++
		}
		if n := s.count[e.Key]; n > 0 {
			e.Key = s.element(e.Key, n-1)
		}
	}
	e.ValueEnd, e.depth, s.in = end, len(names), len(s.entries)
	s.entries = append(s.entries, e)
}

// pair reads key = value in a table or an inline table, whose index is in; a line without an equals
// sign is a stray one.
func (s *scan) pair(in int) {
	e := Entry{Start: s.pos, In: in}
	if in >= 0 {
		e.Key, e.depth = s.entries[in].Key, s.entries[in].depth
	}
	names, end := s.names()
	switch {
	case s.next("="):
		for _, name := range names {
			e.Key = joined(e.Key, name)
		}
		e.depth += len(names)
		s.pos++
		s.skip(blanks)
		s.value(e)
	case in == s.in:
		line, _, _ := strings.Cut(s.text[end:], "\n")
		e.Kind, e.Key, e.Raw = Stray, strings.Join(names, "."), strings.TrimRight(line, blanks+"\r")
		e.ValueStart, e.ValueEnd = end, end+len(e.Raw)
		s.entries = append(s.entries, e)
	}
}

// names reads the names of a dotted key, and returns where they end.
func (s *scan) names() (names []string, end int) {
	for !s.tooDeep(len(names) + 1) {
		start := s.pos
		if s.next(`"`) || s.next("'") {
			s.quoted()
		} else {
			s.skip(letter)
		}
		if end = s.pos; end-start > longest {
			s.beyond(start, fmt.Sprintf("this name has more than %d letters; no entry of a design has", longest))
			break
		}
		if end > start {
			names = append(names, nameOf(s.text[start:end]))
		}
		s.skip(blanks)
		if !s.next(".") {
			break
		}
		s.pos++
		s.skip(blanks)
	}
	return names, end
}

// nameOf returns a name without its quotes; one that would be taken for another key keeps quotes.
func nameOf(typed string) string {
	name := typed
	switch plain, err := strconv.Unquote(typed); {
	case typed[0] == '"' && err == nil:
		name = plain
	case typed[0] == '"' || typed[0] == '\'':
		name = strings.Trim(typed, typed[:1])
	}
	if name == "" || strings.ContainsAny(name, `."`) {
		return strconv.Quote(name)
	}
	return name
}

// value reads the value of an entry, and adds the entry and those inside it.
func (s *scan) value(e Entry) {
	e.ValueStart = s.pos
	index := len(s.entries)
	s.entries = append(s.entries, e)
	switch n := 0; {
	case s.tooDeep(e.depth):
	case s.next("["):
		s.inside("]", func() {
			s.value(Entry{Kind: Element, Key: s.element(e.Key, n), Start: s.pos, In: index, depth: e.depth + 1})
			n++
		})
	case s.next("{"):
		s.inside("}", func() { s.pair(index) })
	case s.next(`"`) || s.next("'"):
		s.quoted()
	default:
		s.until(",]}#\n")
	}
	e.Raw = strings.TrimRight(s.text[e.ValueStart:s.pos], blanks+"\r")
	e.ValueEnd = e.ValueStart + len(e.Raw)
	s.entries[index] = e
}

// inside reads what stands between brackets or braces, over as many lines as it has.
func (s *scan) inside(end string, read func()) {
	for s.pos++; ; {
		s.skip(blanks + "\r\n,")
		switch before := s.pos; {
		case s.pos >= len(s.text):
			return
		case s.next(end):
			s.pos++
			return
		case s.next("#"):
			s.until("\n")
		default:
			if read(); s.pos == before {
				s.pos++
			}
		}
	}
}

// quoted passes over a string of one line or of many.
func (s *scan) quoted() {
	mark := s.text[s.pos : s.pos+1]
	end, long := mark, s.next(strings.Repeat(mark, 3))
	if long {
		end = strings.Repeat(mark, 3)
	}
	for s.pos += len(end); s.pos < len(s.text) && !s.next(end) && (long || !s.next("\n")); s.pos++ {
		if mark == `"` && s.next(`\`) {
			s.pos++
		}
	}
	s.pos = min(s.pos, len(s.text))
	if s.next(end) {
		s.pos += len(end)
	}
	for long && s.next(mark) { // a string may end in quotes of its own
		s.pos++
	}
}

func joined(table, name string) string { return strings.TrimPrefix(table+"."+name, ".") }
