package page

import (
	"context"
	"net"
	"net/http"
	"slices"
	"sync"
	"sync/atomic"
)

// mostConnections is how many connections each listener has at once. A browser has six.
const mostConnections = 64

// few is a listener with a bounded number of connections: one more takes the place of the
// oldest on which nothing is being answered, so that who opens many and asks nothing keeps
// nobody out.
type few struct {
	net.Listener
	mu   sync.Mutex
	open []*connection // the oldest first
}

// A connection knows how many answers are being made on it.
type connection struct {
	net.Conn
	answers atomic.Int32
	list    *few
}

// Accept waits for a connection.
func (f *few) Accept() (net.Conn, error) {
	c, err := f.Listener.Accept()
	if err != nil {
		return nil, err
	}
	fresh := &connection{Conn: c, list: f}
	if spare := f.add(fresh); spare != nil {
		spare.Close() // whoever had it asked nothing
	}
	return fresh, nil
}

// add takes a connection in and returns the one that must go, nil where there is room.
func (f *few) add(c *connection) *connection {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.open = append(f.open, c)
	if len(f.open) <= mostConnections {
		return nil
	}
	for _, old := range f.open {
		if old.answers.Load() == 0 {
			return old
		}
	}
	return c
}

// Close closes the connection and makes room for another.
func (c *connection) Close() error {
	c.list.mu.Lock()
	if at := slices.Index(c.list.open, c); at >= 0 {
		c.list.open = slices.Delete(c.list.open, at, at+1)
	}
	c.list.mu.Unlock()
	return c.Conn.Close()
}

// ofConnection is the key of a request's connection.
type ofConnection struct{}

// known gives the requests of a connection the connection.
func known(ctx context.Context, c net.Conn) context.Context {
	return context.WithValue(ctx, ofConnection{}, c)
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
