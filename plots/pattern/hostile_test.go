package pattern

import (
	"bytes"
	"errors"
	"io"
	"math"
	"os"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// TestSameBytes: two runs write the same files.
func TestSameBytes(t *testing.T) {
	for name, write := range map[string]func(io.Writer) error{
		"pdf":  func(w io.Writer) error { return sample().WritePDF(w, papers[1], quantity.Inch) },
		"roll": func(w io.Writer) error { return sample().WritePDF(w, rollOf(0.61), quantity.Inch) },
		"svg":  func(w io.Writer) error { return sample().WriteSVG(w, quantity.Inch) },
		"dxf":  func(w io.Writer) error { return sample().WriteDXF(w, quantity.Inch) },
	} {
		var a, b bytes.Buffer
		if err := errors.Join(write(&a), write(&b)); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(a.Bytes(), b.Bytes()) {
			t.Errorf("%s: two runs differ", name)
		}
		if strings.Contains(a.String(), "(D:20") {
			t.Errorf("%s says what day it is", name)
		}
	}
}

// hostile are texts that break files.
var hostile = []string{
	`"quotes" 'and' <script>alert(1)</script> & ]]> -->`, "🪑 rocking 椅子 Ωμέγα żółw",
	"(paren \\ back) ) Tj ET Q", "line\r\n  0\r\nEOF\r\nbreak\x00\x07",
	"%%c ^J \\U+0041 %%U", strings.Repeat("chair ", 1667), strings.Repeat("W", 10000),
	"\xff\xfe broken \xc3", "", "½ Müller’s – “Sessel”", "\u202eright to left\u200b",
}

// TestHostileText: every text, as every text, leaves files that their readers read, with
// the same outline.
func TestHostileText(t *testing.T) {
	for _, text := range hostile {
		d := sample()
		d.Part, d.Piece = text, text
		d.Items = append(d.Items, Mark{At: r2.Vec{X: 0.1, Y: 0.03}, Label: text}, Text{At: r2.Vec{Y: 0.15}, Text: text},
			Dimension{From: r2.Vec{}, To: r2.Vec{X: 0.2}, Offset: -0.02, Text: text}, Line{To: r2.Vec{X: 0.1}, Label: text})
		r := readSVG(t, d, quantity.Inch)
		if len(r.Groups) != len(layers) || len(r.Groups[0].Paths) != 1 {
			t.Errorf("%.20q: %d groups", text, len(r.Groups))
		}
	}
}

// TestHostileDXF and TestHostilePDF hold the same for the other two, apart, for their
// readers may be missing.
func TestHostileDXF(t *testing.T) {
	all := sample()
	for i, text := range hostile {
		all.Items = append(all.Items, Text{At: r2.Vec{Y: 0.2 + 0.01*float64(i)}, Text: text})
	}
	all.Part, all.Piece = hostile[0], hostile[1]
	r := readDXF(t, all, quantity.Inch)
	if len(r.Outline) != 4 {
		t.Errorf("the outline has %d strokes, want 4", len(r.Outline))
	}
	for _, want := range []string{"½ Müller’s – “Sessel”", "? rocking 椅子 Ωμέγα żółw", `\U+0041`} {
		if all := strings.Join(r.Texts, "\n"); !strings.Contains(all, want) {
			t.Errorf("the texts came back as %q", all)
		}
	}
}

func TestHostilePDF(t *testing.T) {
	all := sample()
	for i, text := range hostile {
		all.Items = append(all.Items, Text{At: r2.Vec{Y: 0.2 + 0.01*float64(i)}, Text: text})
	}
	all.Part, all.Piece = hostile[2], hostile[9]
	pages := readPDF(t, pdfOf(t, all, "roll 36 in", quantity.Inch))
	if len(pages) != 1 || !pages[0].closed {
		t.Errorf("%d pages", len(pages))
	}
	for _, want := range []string{"½ Müller’s – “Sessel”", "(paren \\ back) ) Tj ET Q", "<script>", "? rocking ??"} {
		if !strings.Contains(pages[0].text, want) {
			t.Errorf("%q is not in\n%s", want, pages[0].text)
		}
	}
}

// TestErrors holds what is refused and how it is said.
func TestErrors(t *testing.T) {
	with := func(items ...Item) Drawing {
		d := sample()
		d.Items = items
		return d
	}
	nan := math.NaN()
	still := sample()
	still.TipToTip[1] = still.TipToTip[0]
	for says, d := range map[string]Drawing{
		"at least one item":  with(),
		"reaches NaN m":      with(Line{To: r2.Vec{X: nan}}),
		"reaches 11 m":       with(Line{To: r2.Vec{X: 11}}),
		"less than a full":   with(Contour{Path: bench.Path{Strokes: []bench.Stroke{{To: r2.Vec{X: 1}, Turn: 7}}}}),
		"turns by NaN":       with(Contour{Path: bench.Path{Strokes: []bench.Stroke{{To: r2.Vec{X: 1}, Turn: nan}}}}),
		"10 m is the furth":  with(Contour{Path: bench.Path{Strokes: []bench.Stroke{{To: r2.Vec{X: 1}, Turn: 6.28}}}}),
		"reaches NaN m from": with(Mark{Angle: math.Inf(1)}),
		"has no length":      still,
		"NaN m from the ori": {Items: sample().Items, TipToTip: [2]r2.Vec{{X: nan}}},
	} {
		for name, err := range map[string]error{
			"pdf": d.WritePDF(io.Discard, papers[0], quantity.Inch),
			"svg": d.WriteSVG(io.Discard, quantity.Inch),
			"dxf": d.WriteDXF(io.Discard, quantity.Inch),
		} {
			var wrong *Error
			var far *ReachError
			if !errors.As(err, &wrong) && !errors.As(err, &far) || !strings.Contains(err.Error(), says) {
				t.Errorf("%s: %v; want it to say %q", name, err, says)
			}
		}
	}
	if _, err := PaperNamed("foolscap"); err == nil || !strings.Contains(err.Error(), "letter, A4, tabloid, A3, roll 24 in") {
		t.Errorf("foolscap: %v", err)
	}
	if p, err := PaperNamed("  LETTER "); err != nil || p.Name != "letter" {
		t.Errorf("LETTER: %v, %v", p, err)
	}
	err := big().WritePDF(io.Discard, rollOf(0.61), quantity.Metric)
	if err == nil || !strings.Contains(err.Error(), "whichever way it is turned") {
		t.Errorf("a ring of 1 m on a roll of 610 mm: %v", err)
	}
	for _, p := range []Paper{rollOf(0.05), {"stamp", 0.02, 0.02}, {"none", nan, nan}} {
		if err := sample().WritePDF(io.Discard, p, quantity.Inch); err == nil || !strings.Contains(err.Error(), "at least") {
			t.Errorf("%v: %v", p, err)
		}
	}
}

// TestWriterFails: what the writer says comes back.
func TestWriterFails(t *testing.T) {
	full, err := os.Open(os.DevNull) // not for writing
	if err != nil {
		t.Fatal(err)
	}
	defer full.Close()
	for _, err := range []error{
		sample().WritePDF(full, papers[0], quantity.Inch),
		sample().WriteSVG(full, quantity.Inch),
		sample().WriteDXF(full, quantity.Inch),
	} {
		if err == nil {
			t.Error("written to what cannot be written")
		}
	}
}

// FuzzDrawing: rockers of any size from 1 cm to 3 m, with any text, are written in all
// formats on any paper, or an [*Error] says why not.
func FuzzDrawing(f *testing.F) {
	f.Add(0.8, 0.05, 0.7, "Rocker", 0)
	f.Add(0.01, 0.002, -1.0, "<&>", 4)
	f.Add(3.0, 0.3, 3.0, "🪑", 3)
	f.Fuzz(func(t *testing.T, length, depth, turn float64, text string, paper int) {
		if !(length >= 0.01 && length <= 3 && depth >= 1e-3 && depth <= 3 && math.Abs(turn) < 6) {
			t.Skip("no part of a chair")
		}
		d := Drawing{Part: text, Piece: text, TipToTip: [2]r2.Vec{{}, {X: length}}, Items: []Item{
			bowed(length, depth, turn),
			Mark{At: r2.Vec{X: length / 2}, Label: text}, Grain{To: r2.Vec{X: length}}, Corner{At: r2.Vec{Y: depth}},
		}}
		p := papers[((paper%len(papers))+len(papers))%len(papers)]
		var b bytes.Buffer
		for _, err := range []error{d.WritePDF(&b, p, quantity.Metric), d.WriteSVG(&b, quantity.Inch), d.WriteDXF(&b, quantity.Metric)} {
			var wrong *Error
			if err != nil && !errors.As(err, &wrong) {
				t.Errorf("%v", err)
			}
		}
	})
}
