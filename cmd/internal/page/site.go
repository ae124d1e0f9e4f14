// Package page serves the live page to this machine: the piece drawn to scale with its
// person, what a maker changes, and the Sheet beside it.
//
// The server keeps nothing: each request brings the maker's own text and the list of changes to it,
// "section.key=value" as on the command line, and gets a fresh drawing and a fresh Sheet. The page lays out nothing
// itself, and neither writes to the disk. It listens on loopback alone, answers only what was asked by its own name
// and by its own page, takes no path from a request, and bounds size, time and how many it works on.
package page

import (
	"context"
	"embed"
	"encoding/json"
	"errors"
	"io"
	"net/http"
	"strings"

	"rockerwright/plots/view"
)

//go:embed page.html page.css *.js
var files embed.FS

// A Site is the live page of one design. Its fields are read alone once it serves.
type Site struct {
	Start   Work   // what it begins with
	Version string // of the program
}

// handler answers for a site whose names are hosts, "127.0.0.1:4600".
func (s *Site) handler(hosts []string) http.Handler {
	mux := http.NewServeMux()
	serve := func(path, name, kind string) {
		data, err := files.ReadFile(name)
		if err != nil {
			panic("page: " + err.Error()) // it is embedded
		}
		mux.Handle("GET /"+path, content(kind, data))
	}
	serve("{$}", "page.html", "html")
	serve("page.css", "page.css", "css")
	for _, name := range []string{"page.js", "form.js", "picture.js", "sheet.js", "work.js"} {
		serve(name, name, "javascript")
	}
	mux.Handle("GET /rocking.js", content("javascript", []byte(view.Script)))
	d := queue{slots: make(chan struct{}, mostAtOnce), line: make(chan struct{}, mostWaiting)}
	mux.Handle("GET /start", d.answer(func(context.Context, ask) (any, error) { return s.Start, nil }))
	mux.Handle("POST /start", d.answer(s.begin))
	mux.Handle("POST /see", d.answer(func(ctx context.Context, a ask) (any, error) { return s.see(ctx, a) }))
	mux.Handle("POST /like", d.answer(of(s.like)))
	mux.Handle("POST /file", d.answer(of(s.file)))
	mux.Handle("POST /units", d.answer(of(s.units)))
	mux.Handle("POST /report", d.answer(of(s.report)))
	mux.Handle("POST /patterns", d.answer(of(s.patterns)))
	return guard(hosts, mux)
}

// content answers with what is embedded, a kind of text.
func content(kind string, data []byte) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/"+kind+"; charset=utf-8")
		w.Write(data) // a reader that has gone is no error of ours
	})
}

// How many requests are worked on at once, and how many wait for that.
const (
	mostAtOnce  = 2
	mostWaiting = 64
)

// A queue is where requests are worked on, few at once.
type queue struct{ slots, line chan struct{} }

var errBusy = errors.New("too much is asked at once; try again")

// A job makes an answer of what is asked.
type job func(context.Context, ask) (any, error)

// answer answers requests with what a job makes of them.
func (d *queue) answer(make job) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		var a ask
		if r.Method == http.MethodPost {
			if r.Header.Get("Content-Type") != "application/json" {
				refuse(w, http.StatusUnsupportedMediaType, "this is asked for in JSON")
				return
			}
			var err error
			if a, err = readAsk(http.MaxBytesReader(w, r.Body, mostBytes)); err != nil {
				refuse(w, http.StatusBadRequest, err.Error())
				return
			}
		}
		made, err := d.work(r.Context(), func() (any, error) { return make(r.Context(), a) })
		switch {
		case r.Context().Err() != nil: // nobody reads it
		case errors.Is(err, errBusy):
			refuse(w, http.StatusServiceUnavailable, err.Error())
		case err != nil:
			send(w, http.StatusOK, pageView{Fault: faultOf(err)})
		default:
			send(w, http.StatusOK, made)
		}
	})
}

// work does one thing when it is its turn, if its reader is still there.
func (d *queue) work(ctx context.Context, do func() (any, error)) (any, error) {
	select {
	case d.line <- struct{}{}:
		defer func() { <-d.line }()
	default:
		return nil, errBusy
	}
	select {
	case d.slots <- struct{}{}:
		defer func() { <-d.slots }()
	case <-ctx.Done():
		return nil, ctx.Err()
	}
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	return do()
}

func send(w http.ResponseWriter, code int, made any) {
	var b strings.Builder
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(made); err != nil {
		refuse(w, http.StatusInternalServerError, "no answer can be written")
		return
	}
	w.Header().Set("Content-Type", "application/json")
	w.WriteHeader(code)
	io.WriteString(w, b.String()) // as above
}

func refuse(w http.ResponseWriter, code int, why string) {
	send(w, code, pageView{Fault: &fault{Message: why}})
}
