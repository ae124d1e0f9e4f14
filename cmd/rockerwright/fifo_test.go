//go:build unix

package main

import (
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"syscall"
	"testing"
	"time"
)

// TestOpenOfAPipeEnds: open waits for a pipe that nobody writes to, and ends when it is told to.
func TestOpenOfAPipeEnds(t *testing.T) {
	folder := t.TempDir()
	command, pipe := filepath.Join(folder, "rockerwright"), filepath.Join(folder, "pipe.toml")
	build := exec.Command("go", "build", "-o", command, ".")
	build.Env = append(os.Environ(), "GOARCH=") // for the machine itself, also where the test is emulated
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	if err := syscall.Mkfifo(pipe, 0o600); err != nil {
		t.Skipf("no pipe can be made here: %v", err)
	}
	for _, told := range []os.Signal{os.Interrupt, syscall.SIGTERM} {
		if signal.Ignored(told) {
			t.Logf("%v is ignored where this test was started: not tried", told)
			continue
		}
		run := exec.Command(command, "open", "--no-browser", "--port", "0", pipe)
		if err := run.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(300 * time.Millisecond) // it waits for the pipe by now; if not, it ends all the same
		if err := run.Process.Signal(told); err != nil {
			t.Fatal(err)
		}
		ended := make(chan error, 1)
		go func() { ended <- run.Wait() }()
		select {
		case <-ended:
		case <-time.After(10 * time.Second):
			t.Errorf("it has not ended 10 s after %v", told)
			if err := run.Process.Kill(); err != nil {
				t.Fatal(err)
			}
			<-ended
		}
	}
}
