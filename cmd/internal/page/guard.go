package page

import (
	"net/http"
	"slices"
	"strings"
)

// policy is what the page may load: what is served beside it, and nothing else.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; " +
	"base-uri 'none'; form-action 'none'; frame-ancestors 'none'"

// guard lets through what is asked by one of the site's own names and, where the browser says from
// where, by its own page: a name that somebody else bound to this machine, and a page from elsewhere,
// get nothing. Who asks without a browser is let in: what is on this machine can say anything of itself.
func guard(hosts []string, next http.Handler) http.Handler {
	ours := http.NewCrossOriginProtection()
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
		case ours.Check(r) != nil, r.Header.Get("Sec-Fetch-Site") == "cross-site":
			refuse(w, http.StatusForbidden, "another page asks for this")
		case r.URL.RawQuery != "":
			refuse(w, http.StatusBadRequest, "nothing is asked for in an address")
		default:
			next.ServeHTTP(w, r)
		}
	})
}
