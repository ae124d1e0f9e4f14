package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"html"
	"math"
	"net/http"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/page"
	"rockerwright/sim/quantity"
)

// A number as papers write lengths and angles: "16 1/2", "3/8", "430".
const paperNumber = `(\d+(?: \d+/\d+|\.\d+)?|\d+/\d+)`

// papersOf returns all that is written of x.toml with changes to it, by the name of the paper, its words a space apart.
func papersOf(t *testing.T, changes []string) map[string]string {
	t.Helper()
	p := map[string]string{}
	flat := func(text string) string { return strings.Join(strings.Fields(text), " ") }
	say := func(command string, more ...string) string {
		var out, errs bytes.Buffer
		if code := run(append(append([]string{command, "x.toml"}, changes...), more...), &out, &errs); code == noAnswer {
			t.Fatalf("%s: %s", command, &errs)
		}
		return flat(out.String())
	}
	p["layout"], p["first page"], p["all"], p["json"] = say("layout"), say("check"), say("check", "--all"), say("check", "--json")
	p["letter"] = say("report", "--text")
	say("report", "-o", "x.html")
	p["report"] = flat(html.UnescapeString(regexp.MustCompile(`<script[^>]*>[\s\S]*?</script>|<[^>]*>`).ReplaceAllString(read(t, "x.html"), " ")))
	for name, glob := range map[string]string{"card": "1 bench card.pdf", "pattern": "2 rocker (*.pdf", "legs": "* legs.pdf"} {
		files, err := filepath.Glob("x-layout/" + glob)
		if name == "legs" && len(files) == 0 {
			continue
		}
		if err != nil || len(files) != 1 {
			t.Fatalf("%q are %q", glob, files)
		}
		p[name] = flat(reader(t, "pdftotext", "-layout", files[0], "-"))
	}
	p["cut list"] = read(t, "x-layout/cut list.csv")
	p["page"] = flat(html.UnescapeString(regexp.MustCompile(`<[^>]*>`).ReplaceAllString(onLivePage(t, changes), " ")))
	p["for cutting"] = floorEdge(t, "x-layout/for cutting/rocker (millimetres).svg")
	return p
}

// onLivePage returns what the live page answers of x.toml.
func onLivePage(t *testing.T, changes []string) string {
	t.Helper()
	door, err := page.Open(0)
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(t.Context())
	ended := make(chan error)
	go func() { ended <- door.Serve(ctx, &page.Site{Version: version, Today: today}) }()
	defer func() { stop(); <-ended }()
	ask, err := json.Marshal(map[string]any{"name": "x.toml", "text": read(t, "x.toml"), "changes": changes})
	if err != nil {
		t.Fatal(err)
	}
	r, err := http.NewRequestWithContext(ctx, "POST", door.URL()+"see", bytes.NewReader(ask))
	if err != nil {
		t.Fatal(err)
	}
	r.Header.Set("Content-Type", "application/json")
	r.Header.Set("Origin", strings.TrimSuffix(door.URL(), "/"))
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	var seen struct{ Title, Sheet, Picture string }
	if err := json.NewDecoder(answer.Body).Decode(&seen); err != nil || seen.Sheet == "" {
		t.Fatalf("%s: %v", answer.Status, err)
	}
	return seen.Title + " " + seen.Sheet + " " + seen.Picture
}

// floorEdge measures the longest curved stroke of an outline for cutting: the circle through its ends and its
// middle, and its length.
func floorEdge(t *testing.T, file string) string {
	t.Helper()
	var edge cutStroke
	for _, part := range cutSVG(t, file).parts {
		for _, stroke := range part {
			if !stroke.straight && stroke.length() > edge.length() {
				edge = stroke
			}
		}
	}
	n := len(edge.points)
	a, b, c := edge.points[0], edge.points[n/2], edge.points[n-1]
	radius := r2.Norm(r2.Sub(a, b)) * r2.Norm(r2.Sub(b, c)) * r2.Norm(r2.Sub(a, c)) / (2 * math.Abs(r2.Cross(r2.Sub(b, a), r2.Sub(c, a))))
	chord := r2.Norm(r2.Sub(a, c))
	return fmt.Sprintf("Outline of a rocker: radius %.4f in, %.4f in along it", radius/0.0254, 2*radius*math.Asin(chord/2/radius)/0.0254)
}

// A fact is one thing that papers tell: where, in the words around its number, #.
type fact struct {
	name string
	kind quantity.Kind
	want float64 // by the file as typed, or by hand; SI; NaN: as the JSON has it
	in   [][2]string
}

// A typed piece is its file's numbers, in inches.
type typedPiece struct {
	kind                                           string
	title                                          string
	radius, nose, tail, front, rear, depth, behind float64
}

var typedPieces = []typedPiece{
	{"chair", "Reading chair", 42, 17, 24, 16.5, 15.875, 18, 9},
	{"child", "Small chair", 30, 11, 16, 10.25, 9.875, 9.5, 4.5},
	{"settee", "Porch settee", 44, 18, 26, 16.5, 15.5, 18, 9},
}

// TestPapersAgree: of one design all papers and answers tell one title, one radius, one nose and tail, one fall of
// the seat and one length of each leg, as typed or as worked out by hand, with the seat slid and the legs cut too.
// A paper that comes to say one of these gets a line here.
func TestPapersAgree(t *testing.T) {
	if testing.Short() {
		t.Skip("nine designs are laid out and reported only without -short")
	}
	for _, p := range typedPieces {
		for _, tt := range []struct {
			name              string
			slid, front, rear float64
		}{{"as drawn", 0, 0, 0}, {"slid", 0.5, 0, 0}, {"cut", 0, 0.25, 0.75}, {"slid and cut", 0.75, 0.5, 0}} {
			t.Run(p.kind+" "+tt.name, func(t *testing.T) {
				t.Chdir(t.TempDir())
				text, known := design.Start(p.kind)
				if !known {
					t.Fatal("no such start")
				}
				overwrite(t, "x.toml", text)
				changes := []string{
					fmt.Sprintf("rocker.radius=%v", p.radius+1), fmt.Sprintf("rocker.nose=%v", p.nose-0.5), fmt.Sprintf("rocker.tail=%v", p.tail+0.75),
					fmt.Sprintf("seat.slide=%v", tt.slid), fmt.Sprintf("seat.front_cut=%v", tt.front), fmt.Sprintf("seat.rear_cut=%v", tt.rear),
				}
				q := p
				q.radius, q.nose, q.tail = p.radius+1, p.nose-0.5, p.tail+0.75
				agree(t, papersOf(t, changes), q.title, q.facts(tt.front, tt.rear))
			})
		}
	}
}

// TestPapersOfCradleAndHorse is [TestPapersAgree] of what rocks without a seat: one arc, and three that touch.
func TestPapersOfCradleAndHorse(t *testing.T) {
	if testing.Short() {
		t.Skip("two designs are laid out and reported only without -short")
	}
	const in = 0.0254
	length := quantity.Length
	pages := func(before, after string) (list [][2]string) {
		for _, name := range []string{"first page", "all", "letter", "report", "page"} {
			list = append(list, [2]string{name, before + "#" + after})
		}
		return list
	}
	low, join := 40*(1-math.Cos(11.0/40)), math.Cos(11.0/40) // of the horse, where its arcs touch
	for kind, tt := range map[string]struct {
		title string
		facts []fact
	}{
		"cradle": {"Cradle", []fact{
			{"radius", length, 34 * in, append(pages("", " in rocker"), [2]string{"card", "FLOOR EDGE RADIUS # in"}, [2]string{"pattern", "pin to floor edge # in"}, [2]string{"for cutting", "radius # in"})},
			{"left tip", length, 34 * (1 - math.Cos(13.0/34)) * in, append(pages("tips ", ` \(left\)`), [2]string{"card", "and left tip # in off"})},
			{"right tip", length, 34 * (1 - math.Cos(13.0/34)) * in, append(pages("and ", ` in \(right\)`), [2]string{"card", "Right tip # in and"})},
			{"floor edge", length, 26 * in, [][2]string{{"card", "# in along the floor edge"}, {"for cutting", "# in along"}, {"cut list", "strip of the rockers,.*?,.*?,# in,"}}},
		}},
		"horse": {"Rocking horse", []fact{
			{"middle radius", length, 40 * in, [][2]string{{"card", "FLOOR EDGE RADIUS 60, #, 60 in"}, {"for cutting", "radius # in"}}},
			{"nose tip", length, (low + 60*(join-math.Cos(11.0/40+9.0/60))) * in, append(pages(`\(tail\) and `, ` in \(nose\)`), [2]string{"card", "Nose tip # in and"})},
			{"tail tip", length, (low + 60*(join-math.Cos(11.0/40+10.0/60))) * in, append(pages("tips ", ` \(tail\)`), [2]string{"card", "and tail tip # in off"})},
			{"floor edge", length, 41 * in, [][2]string{{"card", "# in along the floor edge"}, {"cut list", "strip of the rockers,.*?,.*?,# in,"}}},
		}},
	} {
		t.Run(kind, func(t *testing.T) {
			t.Chdir(t.TempDir())
			text, _ := design.Start(kind)
			overwrite(t, "x.toml", text)
			agree(t, papersOf(t, nil), tt.title, tt.facts)
		})
	}
}

// facts are what the papers of a chair tell, by hand: the tips of one arc, and the legs, plumb under the front edge
// and where back and seat meet, from the concentric top 2 1/4 in over the floor edge to the top of the seat, by their
// longest edge.
func (p typedPiece) facts(frontCut, rearCut float64) []fact {
	const in, deep, side = 0.0254, 2.25, 0.040 / 0.0254
	up := func(way float64) float64 { return p.radius * (1 - math.Cos(way/p.radius)) * in }
	leg := func(x, top, cut float64) float64 {
		slope := x / math.Sqrt((p.radius-deep)*(p.radius-deep)-x*x)
		foot := p.radius - math.Sqrt((p.radius-deep)*(p.radius-deep)-x*x)
		return (top - foot - cut + side*math.Abs(slope)/2) * in
	}
	front := -p.behind + math.Sqrt(p.depth*p.depth-(p.front-p.rear)*(p.front-p.rear))
	length, angle := quantity.Length, quantity.Angle
	return []fact{
		{"radius", length, p.radius * in, [][2]string{{"first page", "# in rocker"}, {"all", "# in rocker"}, {"letter", "# in rocker"}, {"report", "# in rocker"},
			{"card", "FLOOR EDGE RADIUS # in"}, {"card", "pivot over the floor line #"}, {"pattern", "pin to floor edge # in"}, {"page", "# in rocker"}, {"for cutting", "radius # in"}}},
		{"nose tip", length, up(p.nose), [][2]string{{"first page", `\(tail\) and # in \(nose\)`}, {"letter", `\(tail\) and # in \(nose\)`}, {"report", `\(tail\) and # in \(nose\)`},
			{"page", `\(tail\) and # in \(nose\)`}, {"card", "Nose tip # in and"}, {"card", "nose tip off the floor #"}, {"all", `\(tail\) and # in \(nose\)`}}},
		{"tail tip", length, up(p.tail), [][2]string{{"first page", `tips # \(tail\)`}, {"letter", `tips # \(tail\)`}, {"report", `tips # \(tail\)`},
			{"card", "and tail tip # in off"}, {"card", "tail tip off the floor #"}}},
		{"floor edge", length, (p.nose + p.tail) * in, [][2]string{{"card", "tip to tip, # in along the floor edge"}, {"cut list", `strip of the rockers,\d+,,# in,`}, {"for cutting", "# in along"}}},
		{"front leg", length, leg(front, p.front, frontCut), [][2]string{{"card", "length, foot to top of the seat #"}, {"legs", "front leg, # in long"}, {"legs", "length, foot to top of the seat #"}, {"cut list", "front leg,2,,# in,"}}},
		{"rear leg", length, leg(-p.behind, p.rear, rearCut), [][2]string{{"card", "length, foot to top of the seat " + paperSkip + " #"}, {"legs", "rear leg, # in long"}, {"cut list", "rear leg,2,,# in,"}}},
		{"seat falls, empty", angle, math.NaN(), [][2]string{{"json", `"name":"empty".*?"seat_slope_deg":#`}, {"first page", "seat falls back #"}, {"letter", "seat falls back #"}, {"report", "seat falls back #"},
			{"card", "the seat should fall # degrees"}, {"card", "seat falls back #"}, {"page", "seat falls back #"}, {"report", "empty seat falls #°? back"}}},
	}
}

// paperSkip is a number that is passed over.
const paperSkip = `(?:\d+(?: \d+/\d+|\.\d+)?|\d+/\d+)`

// agree holds that each paper tells each fact, and all of them one.
func agree(t *testing.T, papers map[string]string, title string, facts []fact) {
	t.Helper()
	for name, text := range papers {
		if name != "cut list" && name != "for cutting" && !strings.Contains(text, title) {
			t.Errorf("%s does not name %q", name, title)
		}
	}
	for _, f := range facts {
		want := f.want
		for _, in := range f.in {
			m := regexp.MustCompile(strings.ReplaceAll(in[1], "#", paperNumber)).FindStringSubmatch(papers[in[0]])
			if m == nil {
				t.Errorf("%s: %s does not say %q", f.name, in[0], in[1])
				continue
			}
			got, err := quantity.Parse(m[1], f.kind, quantity.Inch)
			if err != nil {
				t.Fatal(err)
			}
			if math.IsNaN(want) {
				want = got
			}
			// as read: a sixteenth of an inch, half a degree
			if step := map[quantity.Kind]float64{quantity.Length: 0.0254 / 16, quantity.Angle: math.Pi / 360}[f.kind]; math.Abs(got-want) > step*1.0001 {
				t.Errorf("%s: %s says %s by %q, want %s", f.name, in[0], m[1], in[1], quantity.With(want, f.kind, quantity.Inch))
			}
		}
	}
}
