package design

import (
	"slices"
	"strings"

	"rockerwright/cmd/internal/design/locate"
)

// An edit puts a text in the place of a stretch of the file's, by byte offsets.
type edit struct {
	from, to int
	text     string
}

// edited returns a text with edits made, of which none overlap; at one place in their order.
func edited(text string, edits []edit) string {
	slices.SortStableFunc(edits, func(a, b edit) int { return a.from - b.from })
	var made strings.Builder
	done := 0
	for _, e := range edits {
		made.WriteString(text[done:e.from] + e.text)
		done = e.to
	}
	return made.String() + text[done:]
}

// newline returns the line end of the file.
func (f *File) newline() string {
	if strings.Contains(f.Text, "\r\n") {
		return "\r\n"
	}
	return "\n"
}

// lineEnd returns where the line of an offset ends, before its line end.
func (f *File) lineEnd(offset int) int {
	line, _, _ := strings.Cut(f.Text[offset:], "\n")
	return offset + len(strings.TrimSuffix(line, "\r"))
}

// lineStart returns where the line of an offset begins.
func (f *File) lineStart(offset int) int {
	if start := strings.LastIndexByte(f.Text[:offset], '\n') + 1; start > 0 || !strings.HasPrefix(f.Text, bom) {
		return start
	}
	return len(bom)
}

// replacing puts another value in the place of an entry's; the comment behind it stays where it
// was if there is room.
func (f *File) replacing(e locate.Entry, value string) edit {
	rest := f.Text[e.ValueEnd:f.lineEnd(e.ValueEnd)]
	comment := strings.TrimLeft(rest, " ")
	if !strings.HasPrefix(comment, "#") {
		return edit{e.ValueStart, e.ValueEnd, value}
	}
	gap := len(rest) - len(comment) + len([]rune(e.Raw)) - len([]rune(value))
	return edit{e.ValueStart, e.ValueEnd + len(rest) - len(comment), value + strings.Repeat(" ", max(1, gap))}
}

// adding puts a new entry at the end of its section, in the way in which the file writes that:
// under a header, as dotted keys, in braces, or under a new header at the end. comment is left
// out where none can stand; made are the new headers so far.
func (f *File) adding(section, name, value, comment string, made map[string]bool) edit {
	line := name + " = " + value
	if section == "" {
		return f.onTop(line + comment)
	}
	if e, found := f.find(section); found {
		if strings.HasPrefix(e.Raw, "{") {
			return f.inBraces(e, line)
		}
		return f.below(f.endOf(e), line+comment)
	}
	if at, prefix, dotted := f.dotted(section); dotted {
		return f.below(at, prefix+"."+line+comment)
	}
	if dot := strings.LastIndexByte(section, '.'); dot > 0 { // within the braces or the entry of a list around it
		if e, found := f.find(section[:dot]); found && (strings.HasPrefix(e.Raw, "{") || strings.HasSuffix(e.Path, "]")) {
			return f.adding(section[:dot], section[dot+1:]+"."+name, value, comment, made)
		}
	}
	end, nl := len(strings.TrimRight(f.Text, "\r\n")), f.newline()
	if !made[section] {
		made[section] = true
		line = nl + "[" + section + "]" + nl + line
	}
	return edit{end, end, nl + line + comment}
}

// below puts a line below that of an offset.
func (f *File) below(offset int, line string) edit {
	end := f.lineEnd(offset)
	return edit{end, end, f.newline() + line}
}

// onTop puts a line behind those that stand before the first section.
func (f *File) onTop(line string) edit {
	for i := len(f.entries) - 1; i >= 0; i-- {
		if e := f.entries[i]; e.In < 0 && e.Raw != "" {
			return f.below(e.ValueEnd, line)
		}
	}
	start := f.lineStart(0)
	return edit{start, start, line + f.newline()}
}

// inBraces puts a pair at the end of an inline table.
func (f *File) inBraces(e locate.Entry, pair string) edit {
	inside := strings.TrimRight(strings.TrimSuffix(e.Raw, "}"), " \t\r\n,")
	end := e.ValueStart + len(inside)
	if inside != "{" {
		pair = ", " + pair
	}
	return edit{end, end, pair}
}

// endOf returns where the last entry under a header ends.
func (f *File) endOf(header locate.Entry) int {
	end := header.ValueEnd
	for _, e := range f.entries {
		if e.In >= 0 && f.entries[e.In] == header {
			end = max(end, e.ValueEnd)
		}
	}
	return end
}

// dotted returns where the last of the dotted keys of a section ends, and what stands before the
// name in it.
func (f *File) dotted(section string) (end int, prefix string, found bool) {
	for _, e := range f.entries {
		around := ""
		if e.In >= 0 {
			around = without1(keyOf(f.entries[e.In].Path)) + "."
		}
		inside, within := strings.CutPrefix(section, around)
		if e.Raw != "" && within && inside != "" && strings.HasPrefix(without1(keyOf(e.Path)), section+".") {
			end, prefix, found = max(end, e.ValueEnd), inside, true
		}
	}
	return end, prefix, found
}
