package page

import (
	"bytes"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
)

const ourHost = "127.0.0.1:4600"

// chairSite is the site of the starting chair.
func chairSite(t testing.TB) *Site {
	t.Helper()
	return &Site{Start: work(t, "chair"), Version: "test"}
}

// work returns a starting design with changes.
func work(t testing.TB, kind string, changes ...string) Work {
	t.Helper()
	text, err := design.Start(kind)
	if err != nil {
		t.Fatal(err)
	}
	return Work{Name: kind + ".toml", Text: text, Changes: changes}
}

// asked sends an ask to a handler as the page does and returns its answer.
func asked(t testing.TB, h http.Handler, path string, what any) *httptest.ResponseRecorder {
	t.Helper()
	data, err := json.Marshal(what)
	if err != nil {
		t.Fatal(err)
	}
	r := httptest.NewRequest("POST", "http://"+ourHost+path, bytes.NewReader(data))
	r.Header.Set("Origin", "http://"+ourHost)
	r.Header.Set("Content-Type", "application/json")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w
}

// seen asks for a view.
func seen(t testing.TB, what ask) pageView {
	t.Helper()
	w := asked(t, chairSite(t).handler([]string{ourHost}), "/see", what)
	var v pageView
	if err := json.Unmarshal(w.Body.Bytes(), &v); err != nil || w.Code != http.StatusOK {
		t.Fatalf("%d %v: %.200s", w.Code, err, w.Body)
	}
	return v
}

// TestGuard holds that only the site's own page, by its own name, gets an answer: a name
// bound to this machine by somebody else (rebinding), another site's page, another port's,
// a file's, an address with something to do in it, and a path get none.
func TestGuard(t *testing.T) {
	h := chairSite(t).handler([]string{ourHost, "localhost:4600", "[::1]:4600"})
	body := `{"name":"x","text":"kind = \"chair\"","changes":[]}`
	for _, tt := range []struct {
		name, method, host, path string
		headers                  map[string]string
		want                     int
	}{
		{"the page", "GET", ourHost, "/", nil, 200},
		{"by its other name", "GET", "localhost:4600", "/", nil, 200},
		{"by the new loopback", "GET", "[::1]:4600", "/page.js", nil, 200},
		{"asked by the page", "POST", ourHost, "/see", map[string]string{"Origin": "http://" + ourHost}, 200},
		{"a script of the page", "GET", ourHost, "/page.js", map[string]string{"Sec-Fetch-Site": "same-origin"}, 200},
		{"rebound name", "GET", "evil.example:4600", "/", nil, 421},
		{"rebound name that asks", "POST", "evil.example:4600", "/see", map[string]string{"Origin": "http://evil.example:4600"}, 421},
		{"another port", "GET", "127.0.0.1:80", "/", nil, 421},
		{"no port", "GET", "127.0.0.1", "/", nil, 421},
		{"any address", "GET", "0.0.0.0:4600", "/", nil, 421},
		{"another site asks", "POST", ourHost, "/see", map[string]string{"Origin": "https://evil.example"}, 403},
		{"our name on another port", "POST", ourHost, "/see", map[string]string{"Origin": "http://127.0.0.1:4601"}, 403},
		{"our other name", "POST", ourHost, "/see", map[string]string{"Origin": "http://localhost:4600"}, 403},
		{"a sandboxed page asks", "POST", ourHost, "/see", map[string]string{"Origin": "null"}, 403},
		{"a browser's other page asks", "POST", ourHost, "/see", map[string]string{"Sec-Fetch-Site": "same-site"}, 403},
		{"no browser asks", "POST", ourHost, "/see", nil, 200},
		{"another site's image", "GET", ourHost, "/start", map[string]string{"Sec-Fetch-Site": "cross-site"}, 403},
		{"another site reads", "GET", ourHost, "/start",
			map[string]string{"Origin": "https://evil.example", "Sec-Fetch-Site": "cross-site"}, 403},
		{"a form's post", "POST", ourHost, "/see", map[string]string{"Origin": "http://" + ourHost, "Content-Type": "text/plain"}, 415},
		{"something to do in the address", "GET", ourHost, "/?file=/etc/passwd", nil, 400},
		{"a path", "GET", ourHost, "/../../etc/passwd", nil, 404},
		{"a path in disguise", "GET", ourHost, "/%2e%2e/%2e%2e/etc/passwd", nil, 404},
		{"a file of ours", "GET", ourHost, "/site.go", nil, 404},
		{"another way to ask", "PUT", ourHost, "/see", map[string]string{"Origin": "http://" + ourHost}, 405},
	} {
		r := httptest.NewRequest(tt.method, "http://"+ourHost+tt.path, strings.NewReader(body))
		r.Host = tt.host
		r.Header.Set("Content-Type", "application/json")
		for name, value := range tt.headers {
			r.Header.Set(name, value)
		}
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != tt.want && !(tt.want == 404 && w.Code >= 300 && w.Code < 400 &&
			!strings.Contains(w.Header().Get("Location"), "..")) { // a mux sends to the tidy path
			t.Errorf("%s: %d, want %d: %.100s", tt.name, w.Code, tt.want, w.Body)
		}
		if csp := w.Header().Get("Content-Security-Policy"); !strings.HasPrefix(csp, "default-src 'none'") ||
			strings.Contains(csp, "unsafe") || strings.Contains(csp, "*") {
			t.Errorf("%s: the policy is %q", tt.name, csp)
		}
		if w.Header().Get("Access-Control-Allow-Origin") != "" {
			t.Errorf("%s: another page may read it", tt.name)
		}
	}
}

// TestFaults holds that a mistake comes with its place and nothing else.
func TestFaults(t *testing.T) {
	text, _ := design.Start("chair")
	for _, tt := range []struct {
		name   string
		what   Work
		key    string
		line   int
		column int
	}{
		{"a change that is none", Work{"x", text, []string{"rocker.tail=12 lb"}}, "rocker.tail", 0, 0},
		{"an entry that is none", Work{"x", text, []string{"rocker.tial=12"}}, "rocker.tial", 0, 0},
		{"not a change", Work{"x", text, []string{"rocker.tail"}}, "", 0, 0},
		{"a measure below zero", Work{"x", text, []string{"rocker.nose=-1"}}, "rocker.nose", 0, 0},
		{"a fraction without quotes", Work{"x", strings.Replace(text, `= "16 1/2"`, "= 16 1/2", 1), nil}, "front", 14, 10},
		{"the tail left out", Work{"x", strings.Replace(text, "tail ", "#tail ", 1), nil}, "rocker.tail", 8, 2},
		{"nothing", Work{"x", " \n", nil}, "", 0, 0},
		{"a picture", Work{"x", "\x89PNG\x00", nil}, "", 0, 0},
		{"too long", Work{"x", strings.Repeat("# long\n", 20_000), nil}, "", 0, 0},
		{"a crowd", Work{"x", text + strings.Repeat("\n[[part]]\n", 300), nil}, "part", strings.Count(text, "\n") + 2*201, 3},
	} {
		v := seen(t, ask{Work: tt.what})
		if v.Fault == nil || v.Picture != "" || v.Fault.Message == "" {
			t.Errorf("%s: no fault was found", tt.name)
			continue
		}
		if key := v.Fault.Key; tt.key != "" && key != tt.key && !strings.HasSuffix(tt.key, key) ||
			v.Fault.Line != tt.line || v.Fault.Column != tt.column {
			t.Errorf("%s: %+v, want %s at %d:%d", tt.name, *v.Fault, tt.key, tt.line, tt.column)
		}
	}
}

// TestEveryStart holds that each starting design is seen, moved and compared, for a phone
// and in metric units, and that its form has what it is drawn by.
func TestEveryStart(t *testing.T) {
	for _, kind := range design.Starts() {
		w := work(t, kind)
		v := seen(t, ask{Work: w, Narrow: true, More: true, Before: &w, Motion: &motion{From: "5"}})
		if v.Fault != nil {
			t.Fatalf("%s: %v", kind, v.Fault)
		}
		if !strings.Contains(v.Picture, "data-samples") || v.Both == "" || v.More == "" || v.Became == "" || v.Form == nil || !v.Live.Moving {
			t.Errorf("%s: something is missing: %.300s", kind, v.Picture)
		}
		if strings.Contains(v.Picture, "style=") || strings.Contains(v.Sheet, "style=") {
			t.Errorf("%s: a style that the policy forbids", kind)
		}
		if again := seen(t, ask{Work: w, Form: v.FormID}); again.Form != nil || again.FormID != v.FormID {
			t.Errorf("%s: the form was sent again", kind)
		}
		for _, h := range v.Live.Handles {
			for _, p := range h.Pulls {
				if v.Values[p.Key].At == 0 || p.By == 0 {
					t.Errorf("%s: %s pulls %s, which has no value", kind, h.Name, p.Key)
				}
			}
		}
		turned := asked(t, chairSite(t).handler([]string{ourHost}), "/units", ask{Work: w, Units: "metric"})
		var metric Work
		if err := json.Unmarshal(turned.Body.Bytes(), &metric); err != nil {
			t.Fatal(err)
		}
		m := seen(t, ask{Work: metric})
		if m.Units != "metric" || len(m.Values) != len(v.Values) {
			t.Errorf("%s in metric units: %s, %d entries, want %d: %v", kind, m.Units, len(m.Values), len(v.Values), m.Fault)
		}
	}
}

// TestHeld holds that what is said of the limits is what the report found.
func TestHeld(t *testing.T) {
	for _, change := range []string{"rocker.tail=24", "rocker.tail=15", "rocker.tail=9", "rocker.radius=20"} {
		w := work(t, "chair", change)
		_, report, bad := checked(w, true)
		if bad != nil {
			t.Fatal(bad)
		}
		v := seen(t, ask{Work: w})
		if v.Held.Holds != report.Holds() || strings.Contains(v.Held.Text, "NO") == v.Held.Holds ||
			(strings.Contains(v.Sheet, "FAILS:") || strings.Contains(v.Sheet, "does not stand")) == v.Held.Holds {
			t.Errorf("%s: %+v, and the report says %v", change, v.Held, report.Holds())
		}
	}
}

// TestHandles holds that what a handle promises is what happens: the tip is moved by one
// step of its measure, and stands so much further along the handle.
func TestHandles(t *testing.T) {
	before := seen(t, ask{Work: work(t, "chair"), Load: "empty"})
	for _, tt := range []struct{ handle, change string }{{"tail", "rocker.tail=24-1/8"}, {"nose", "rocker.nose=17-1/8"}} {
		after := seen(t, ask{Work: work(t, "chair", tt.change), Load: "empty"})
		for i, h := range before.Live.Handles {
			if h.Name != tt.handle {
				continue
			}
			now := after.Live.Handles[i]
			way := (now.At[0]-h.At[0])*h.Along[0] + (now.At[1]-h.At[1])*h.Along[1]
			if got := way * h.Pulls[0].By; got < 0.09 || got > 0.16 { // 1/8 in, and the little by which it rests otherwise
				t.Errorf("%s: moved %.3f in along the handle, want 0.125", tt.handle, got)
			}
		}
	}
}

// FuzzRequest holds that whatever is asked, an answer comes that is JSON, no failure of
// the server, and never both a picture and a fault.
func FuzzRequest(f *testing.F) {
	for _, kind := range design.Starts() {
		data, err := json.Marshal(ask{Work: work(f, kind, "rocker.nose=12"), Motion: &motion{Push: "10"}})
		if err != nil {
			f.Fatal(err)
		}
		f.Add("/see", string(data))
		f.Add("/units", string(data))
	}
	f.Add("/see", // a radius of next to nothing
		`{"text":"kind = \"chair\"\n[rocker]\nradius = 1e-300\nnose=1\ntail=1\n[body]\nmass=1\ncentre=[0,1]\ninertia=0","motion":{"from":"90"}}`)
	f.Add("/like", `{"text":"","before":{"text":"","name":"","changes":null},"way":"same time"}`)
	f.Add("/start", `{"kind":"../../etc/passwd"}`)
	f.Add("/see", `{"text":"","unknown":1}`)
	site := &Site{Version: "fuzz"}
	h := site.handler([]string{ourHost})
	f.Fuzz(func(t *testing.T, path, body string) {
		switch path {
		case "/see", "/units", "/like", "/start", "/file":
		default:
			path = "/see"
		}
		r := httptest.NewRequest("POST", "http://"+ourHost+path, strings.NewReader(body))
		r.Header.Set("Origin", "http://"+ourHost)
		r.Header.Set("Content-Type", "application/json")
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		var v pageView
		if err := json.Unmarshal(w.Body.Bytes(), &v); w.Code != 200 && w.Code != 400 {
			t.Fatalf("%d: %.200s", w.Code, w.Body)
		} else if path == "/see" && (err != nil || (v.Fault == nil) == (v.Picture == "")) {
			t.Fatalf("%v: fault %v, %d bytes of picture", err, v.Fault, len(v.Picture))
		}
	})
}

// TestSize holds how much a browser loads before it is shown anything.
func TestSize(t *testing.T) {
	h := chairSite(t).handler([]string{ourHost})
	total := 0
	for _, path := range []string{"/", "/page.css", "/page.js", "/form.js", "/picture.js", "/sheet.js", "/work.js", "/rocking.js", "/start"} {
		r := httptest.NewRequest("GET", "http://"+ourHost+path, nil)
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		data, err := io.ReadAll(w.Body)
		if err != nil || w.Code != 200 {
			t.Fatal(path, w.Code, err)
		}
		total += len(data)
	}
	total += asked(t, h, "/see", ask{Work: work(t, "chair")}).Body.Len()
	t.Logf("%d bytes with the first picture and Sheet", total)
	if total > 150_000 {
		t.Errorf("the page has %d bytes, want 150 kB at most", total)
	}
}

// TestLetGoTooFar: a tilt that cannot be asked for is refused, at its entry, and nothing else is rocked in its place.
func TestLetGoTooFar(t *testing.T) {
	for from, refused := range map[string]bool{"90": false, "-90": false, "91": true, "200": true, "-200": true} {
		v := seen(t, ask{Work: work(t, "chair"), Motion: &motion{From: from}})
		if got := v.Fault != nil && v.Fault.Key == "from" &&
			strings.Contains(v.Fault.Message, "at most 90 degrees"); got != refused || refused == (v.Became != "") {
			t.Errorf("let go by %s: %+v, %q", from, v.Fault, v.Became)
		}
	}
}
