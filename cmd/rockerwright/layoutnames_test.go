package main

import (
	"bytes"
	"encoding/csv"
	"encoding/xml"
	"slices"
	"strings"
	"testing"
)

// panelled is a design with coopered panels of these names.
func panelled(t *testing.T, names ...string) string {
	t.Helper()
	text, panel, _ := strings.Cut(designText(t, "layout-full/full.toml"), "[[panel]]")
	panel, sitter, _ := strings.Cut(panel, "[sitter]")
	text += "[sitter]" + sitter
	for _, name := range names {
		text += "[[panel]]" + strings.Replace(panel, "headrest", name, 1)
	}
	return text
}

// layoutFiles lays out a text in a fresh folder and returns the files, and what was complained.
func layoutFiles(t *testing.T, text string, changes ...string) (map[string]string, string) {
	t.Helper()
	t.Chdir(t.TempDir())
	overwrite(t, "x.toml", text)
	var out, errs bytes.Buffer
	if code := run(append([]string{"layout", "x.toml"}, changes...), &out, &errs); code == noAnswer {
		return nil, errs.String()
	}
	return filesIn(t, "x-layout"), errs.String()
}

// TestNamesKeepTheirLetters in the names of files, in DXF as ezdxf reads it, in SVG and in the
// cut list, which then begins with a byte order mark, by which spreadsheets know UTF-8.
func TestNamesKeepTheirLetters(t *testing.T) {
	const name = "Kopfstütze żółw 椅"
	files, errs := layoutFiles(t, panelled(t, name))
	file := "for cutting/" + name + " (inches).dxf"
	if files[file] == "" {
		t.Fatalf("%s is not there: %s", file, errs)
	}
	var r struct {
		Groups []struct {
			Texts []string `xml:"text"`
		} `xml:"g"`
	}
	if err := xml.Unmarshal([]byte(files["for cutting/"+name+" (millimetres).svg"]), &r); err != nil {
		t.Fatal(err)
	}
	var texts []string
	for _, g := range r.Groups {
		texts = append(texts, g.Texts...)
	}
	if !slices.Contains(texts, name) {
		t.Errorf("SVG has %q", texts)
	}
	list, marked := strings.CutPrefix(files["cut list.csv"], "\ufeff")
	table, err := csv.NewReader(strings.NewReader(list)).ReadAll()
	if err != nil || !marked || !slices.ContainsFunc(table, func(row []string) bool { return row[0] == "stave of the "+name }) {
		t.Errorf("marked %v, %v: %q", marked, err, table)
	}
	if texts := cutDXF(t, "x-layout/"+file).texts; !slices.Contains(texts, name) {
		t.Errorf("DXF has %q", texts)
	}
	if files, _ := layoutFiles(t, panelled(t, "headrest")); strings.HasPrefix(files["cut list.csv"], "\ufeff") {
		t.Error("a list in ASCII begins with a byte order mark")
	}
}

// TestNoFileTakesAnothersPlace where parts have one name, upper case or lower.
func TestNoFileTakesAnothersPlace(t *testing.T) {
	files, errs := layoutFiles(t, panelled(t, "rest", "Rest", "rocker", "a/b", "ab"))
	for _, name := range []string{"rest", "Rest 2", "rocker", "rocker 2", "ab", "ab 2"} {
		if files["for cutting/"+name+" (inches).dxf"] == "" || files["for cutting/"+name+" (millimetres).svg"] == "" {
			t.Errorf("%s is not there: %s", name, errs)
		}
	}
}

// TestTooLargeToDraw says which pattern, how large, and how large it may be: 500 in, of 10 m.
func TestTooLargeToDraw(t *testing.T) {
	_, errs := layoutFiles(t, designText(t, "layout-full/full.toml"), "arms.length=500")
	for _, want := range []string{`x.toml, changed: the pattern "arms left and right" would reach 500 in`, "393 11/16 in is the most"} {
		if !strings.Contains(errs, want) {
			t.Errorf("no %q in: %s", want, errs)
		}
	}
}
