package page

import (
	"net/http"
	"slices"
	"strings"
)

// policy is what the page may load: what is served beside it, and nothing else.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; " +
	"base-uri 'none'; form-action 'none'; frame-ancestors 'none'"

// guard lets through what is asked by one of the site's own names and, where the browser
// says by which page, by its own: a name that was bound to this machine by somebody else,
// and a page from elsewhere, get nothing.
func guard(hosts []string, next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cache-Control", "no-store")
		switch {
		case !slices.Contains(hosts, strings.ToLower(r.Host)):
			refuse(w, http.StatusMisdirectedRequest, "this machine is not called that")
		case !ours(hosts, r):
			refuse(w, http.StatusForbidden, "another page asks for this")
		case r.URL.RawQuery != "":
			refuse(w, http.StatusBadRequest, "nothing is asked for in an address")
		default:
			next.ServeHTTP(w, r)
		}
	})
}

// ours reports whether a request comes from the site's own page, or, where it changes
// nothing, from nowhere.
func ours(hosts []string, r *http.Request) bool {
	origin, said := r.Header["Origin"]
	if !said {
		site := r.Header.Get("Sec-Fetch-Site")
		return r.Method == http.MethodGet && (site == "" || site == "same-origin" || site == "none")
	}
	host, plain := strings.CutPrefix(strings.ToLower(origin[0]), "http://")
	return len(origin) == 1 && plain && host == strings.ToLower(r.Host) && slices.Contains(hosts, host)
}
