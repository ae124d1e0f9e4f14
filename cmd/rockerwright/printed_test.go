package main

import (
	"fmt"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"
)

// A printedCell is one cell of a printed table and the column in which it ends.
type printedCell struct {
	text string
	end  int
}

var cellPattern = regexp.MustCompile(`\S+(?: \S+)*`)

// cellsOf parts a line where two spaces or more stand.
func cellsOf(line string) (cells []printedCell) {
	for _, at := range cellPattern.FindAllStringIndex(line, -1) {
		cells = append(cells, printedCell{line[at[0]:at[1]], utf8.RuneCountInString(line[:at[1]])})
	}
	return cells
}

// printedParts returns what stands under each heading of a printed page, which is a line of capitals, line by line;
// what comes before the first is under "".
func printedParts(page string) map[string][][]printedCell {
	parts, under := map[string][][]printedCell{}, ""
	heading := regexp.MustCompile(`^[A-Z][A-Z0-9 ,]+(:[A-Z0-9 ,]+)?$`)
	repeated := 0
	for line := range strings.Lines(page) {
		line = strings.TrimSuffix(line, "\n")
		if heading.MatchString(line) {
			under = line
			if _, there := parts[under]; there {
				repeated++
				under += fmt.Sprint(" #", repeated) // the next columns of a wide table
			}
		}
		parts[under] = append(parts[under], cellsOf(line))
	}
	return parts
}

// headsOver returns the heads of columns, by where a column ends: a head may stand on several lines.
func headsOver(lines [][]printedCell, columns []printedCell) map[int]string {
	heads := map[int]string{}
	for _, column := range columns {
		for i := len(lines) - 1; i >= 0 && len(lines[i]) > 0; i-- {
			for _, cell := range lines[i] {
				if cell.end == column.end {
					heads[column.end] = strings.TrimSpace(cell.text + " " + heads[column.end])
				}
			}
		}
	}
	return heads
}

// numberCell is a cell of a number alone, with its unit or which way it goes.
var numberCell = regexp.MustCompile(`^[-+]?\d[\d ./]*( (fwd|right|left|in|mm|lb|N|s|degrees?|ft/s|m/s))?$`)

// TestColumns: where a number stands under a number in a printed table, both end in the same column, but for the last,
// which is set as words are.
func TestColumns(t *testing.T) {
	pages, err := filepath.Glob(filepath.Join(testdata, "*", "stdout"))
	if err != nil {
		t.Fatal(err)
	}
	pairs := 0
	for _, page := range pages {
		var above []printedCell
		for line := range strings.Lines(read(t, page)) {
			cells := cellsOf(strings.TrimSuffix(line, "\n"))
			if len(cells) == len(above) {
				for i := 1; i < len(cells)-1; i++ {
					if !numberCell.MatchString(cells[i].text) || !numberCell.MatchString(above[i].text) {
						continue
					}
					if pairs++; cells[i].end != above[i].end {
						t.Errorf("%s: %q does not end under %q: %s", page, cells[i].text, above[i].text, line)
					}
				}
			}
			above = cells
		}
	}
	if pairs < 1000 {
		t.Errorf("%d pairs were found", pairs)
	}
}
