package page

import (
	"context"
	"net"
	"net/http"
	"slices"
	"sync"
	"sync/atomic"
)

// mostConnections is how many connections there are at once. A browser has six.
const mostConnections = 64

// connections bounds those of a server: one more takes the place of the oldest on which nothing is
// being answered, so that who opens many and asks nothing keeps nobody out.
type connections struct {
	mu   sync.Mutex
	open []*connection // the oldest first
}

// A connection knows how many answers are being made on it.
type connection struct {
	net.Conn
	answers atomic.Int32
}

// ofConnection is the key of a request's connection.
type ofConnection struct{}

// begun takes a connection in and gives its requests the connection. It is the ConnContext of a server.
func (f *connections) begun(ctx context.Context, c net.Conn) context.Context {
	f.mu.Lock()
	defer f.mu.Unlock()
	fresh := &connection{Conn: c}
	f.open = append(f.open, fresh)
	if len(f.open) > mostConnections {
		spare := slices.IndexFunc(f.open, func(c *connection) bool { return c.answers.Load() == 0 }) // or the fresh one
		f.open[spare].Close()
		f.open = slices.Delete(f.open, spare, spare+1)
	}
	return context.WithValue(ctx, ofConnection{}, fresh)
}

// ended makes room for another connection. It is the ConnState of a server.
func (f *connections) ended(c net.Conn, state http.ConnState) {
	if state == http.StateClosed {
		f.mu.Lock()
		defer f.mu.Unlock()
		f.open = slices.DeleteFunc(f.open, func(open *connection) bool { return open.Conn == c })
	}
}

// atWork marks the connection of a request as one on which an answer is being made, until done
// is called. A request whose body is still to come is not at work: who sends half of one would
// hold a place for nothing.
func atWork(r *http.Request) (done func()) {
	c, ours := r.Context().Value(ofConnection{}).(*connection)
	if !ours {
		return func() {}
	}
	c.answers.Add(1)
	return func() { c.answers.Add(-1) }
}
