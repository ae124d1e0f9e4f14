package page

import (
	"context"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"strconv"
	"syscall"
	"time"

	"golang.org/x/net/netutil"
)

// Port is where the page is looked for first.
const Port = 4600

// triedPorts is how many ports are tried, one after the other.
const triedPorts = 20

// A Listener holds the ports on which a site is served, on loopback alone.
type Listener struct {
	Port      int // the one that was free
	listeners []net.Listener
}

// URL returns the address of the page.
func (d *Listener) URL() string { return fmt.Sprintf("http://127.0.0.1:%d/", d.Port) }

// Open listens on a port of 127.0.0.1, and of ::1 where there is one; where the port is
// taken, on the next that is free. Port 0 is any.
func Open(port int) (*Listener, error) {
	var err error
	for p := port; p <= 65535 && p < port+triedPorts; p++ {
		var d *Listener
		if d, err = open(p); err == nil {
			return d, nil
		}
		if !taken(err) {
			break
		}
	}
	return nil, fmt.Errorf("no port from %d on can be opened on this machine: %w. For another: --port 5000", port, err)
}

// taken reports whether a port could not be opened because somebody else has it. Windows has a number of
// its own for that (WSAEADDRINUSE), which package syscall does not take for the one of other systems.
func taken(err error) bool {
	const windows = syscall.Errno(10048)
	return errors.Is(err, syscall.EADDRINUSE) || errors.Is(err, windows)
}

func open(port int) (*Listener, error) {
	four, err := net.Listen("tcp4", net.JoinHostPort("127.0.0.1", strconv.Itoa(port)))
	if err != nil {
		return nil, err
	}
	d := &Listener{Port: four.Addr().(*net.TCPAddr).Port, listeners: []net.Listener{four}}
	six, err := net.Listen("tcp6", net.JoinHostPort("::1", strconv.Itoa(d.Port)))
	switch {
	case err == nil:
		d.listeners = append(d.listeners, six)
	case taken(err): // "localhost" would lead to somebody else
		return nil, errors.Join(err, four.Close())
	}
	return d, nil
}

// hosts are the names by which the page is asked for.
func (d *Listener) hosts() []string {
	port := ":" + strconv.Itoa(d.Port)
	return []string{"127.0.0.1" + port, "localhost" + port, "[::1]" + port}
}

// mostConnections is how many connections each port has at once: twice as many as one browser opens to
// all the world. One more waits until another ends, by the bounds in time at the latest.
const mostConnections = 512

// Bounds in time: of a whole request, of an answer to who reads slowly, between two
// requests, and of those under way when it is closed.
const (
	headTime  = 5 * time.Second
	readTime  = 10 * time.Second
	writeTime = 30 * time.Second
	idleTime  = 60 * time.Second
	closeTime = 400 * time.Millisecond
)

// Serve serves the site until ctx is done, and then closes within half a second.
func (d *Listener) Serve(ctx context.Context, s *Site) error {
	server := &http.Server{
		Handler:           s.handler(d.hosts()),
		ReadHeaderTimeout: headTime, ReadTimeout: readTime, WriteTimeout: writeTime, IdleTimeout: idleTime,
		MaxHeaderBytes: 16 << 10, ErrorLog: log.New(io.Discard, "", 0),
		BaseContext: func(net.Listener) context.Context { return ctx },
	}
	ended := make(chan error, len(d.listeners))
	for _, l := range d.listeners {
		go func() { ended <- server.Serve(netutil.LimitListener(l, mostConnections)) }()
	}
	select {
	case err := <-ended:
		return errors.Join(err, server.Close())
	case <-ctx.Done():
	}
	last, cancel := context.WithTimeout(context.Background(), closeTime)
	defer cancel()
	if err := server.Shutdown(last); err != nil {
		return server.Close()
	}
	return nil
}
