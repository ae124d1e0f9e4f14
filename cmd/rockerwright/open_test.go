package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"
)

// A shared buffer is written by a command and read by its test.
type shared struct {
	mu   sync.Mutex
	text bytes.Buffer
}

func (s *shared) Write(p []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text.Write(p)
}

func (s *shared) String() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text.String()
}

// TestOpen holds that open says where it is, on a port that is free, serves the file with
// its changes, and ends within a second when it is told to.
func TestOpen(t *testing.T) {
	taken, err := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	port := taken.Addr().(*net.TCPAddr).Port
	path := startIn(t, t.TempDir(), "cradle")
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	var out shared
	ended := make(chan error, 1)
	root := rootCommand()
	root.SetArgs([]string{"open", path, "rocker.nose=12", "--no-browser", "--port", fmt.Sprint(port)})
	root.SetOut(&out)
	go func() { ended <- root.ExecuteContext(ctx) }()
	address := regexp.MustCompile(`http://127\.0\.0\.1:\d+/`)
	for until := time.Now().Add(10 * time.Second); !address.MatchString(out.String()) && time.Now().Before(until); {
		time.Sleep(time.Millisecond)
	}
	if want := fmt.Sprintf("Port %d is taken", port); !strings.HasPrefix(out.String(), want) {
		t.Errorf("it says %q, want first %q", out.String(), want)
	}
	answer, err := http.Get(address.FindString(out.String()) + "start")
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil || !bytes.Contains(body, []byte("A cradle that rocks")) || !bytes.Contains(body, []byte(`"rocker.nose=12"`)) {
		t.Errorf("it serves %.200s, %v", body, err)
	}
	begun := time.Now()
	stop()
	if err := <-ended; err != nil || time.Since(begun) > time.Second {
		t.Errorf("it ended after %v with %v", time.Since(begun), err)
	}
}
