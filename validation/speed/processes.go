package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// write is the argument with which this program is its own floor: a process that starts, reads
// what is to be written from one folder and writes it to another.
const write = "-write-floor"

// writeAgain is that floor.
func writeAgain(from, to string) error {
	if err := os.RemoveAll(to); err != nil {
		return err
	}
	return os.CopyFS(to, os.DirFS(from))
}

// commands are works of the command in a folder of its own, each a whole process. The floor of each
// writes the same bytes.
func commands(rockerwright, folder string) ([]work, error) {
	self, err := os.Executable()
	if err != nil {
		return nil, err
	}
	var works []work
	for _, w := range []struct{ name, args, writes string }{
		{"layout", "layout --replace", "reading-chair-layout"},
		{"report", "report --replace", ""},
		{"whatif --chairs 100", "whatif --chairs 100", ""},
	} {
		here := filepath.Join(folder, strings.ReplaceAll(w.name, " ", "-"))
		if err := os.MkdirAll(here, 0o755); err != nil {
			return nil, err
		}
		ours := func() error { return process(here, rockerwright, strings.Fields(w.args)...) }
		if err := ours(); err != nil {
			return nil, err
		}
		floor := func() error { return process(folder, self, write, here, here+"-floor") }
		works = append(works, work{w.name, floor, ours})
	}
	return works, nil
}

// process runs a command to its end; 1, a limit that fails, is an answer too.
func process(folder, name string, args ...string) error {
	c := exec.Command(name, args...)
	c.Dir = folder
	if out, err := c.CombinedOutput(); err != nil && c.ProcessState.ExitCode() != 1 {
		return fmt.Errorf("%s %s: %w: %s", filepath.Base(name), strings.Join(args, " "), err, out)
	}
	return nil
}

// pageAnswer is one move of a slider by the live page, over the network of this machine. The floor
// is a server that has the answer ready.
func pageAnswer(rockerwright, folder string) (w work, stop func(), err error) {
	design, err := exec.Command(rockerwright, "new", "chair").Output()
	if err != nil {
		return w, nil, err
	}
	port, err := free()
	if err != nil {
		return w, nil, err
	}
	server := exec.Command(rockerwright, "open", "--no-browser", "--port", strconv.Itoa(port))
	server.Dir = folder
	if err := server.Start(); err != nil {
		return w, nil, err
	}
	home := fmt.Sprintf("http://127.0.0.1:%d", port)
	asked, err := json.Marshal(map[string]any{"name": "chair.toml", "text": string(design), "changes": []string{"rocker.tail=20-1/2"}, "Form": "x"})
	if err != nil {
		return w, nil, err
	}
	var answer []byte
	for range 100 { // until it listens
		if answer, err = post(home, asked); err == nil {
			break
		}
		time.Sleep(50 * time.Millisecond)
	}
	ready, listenErr := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil || listenErr != nil {
		server.Process.Kill()
		return w, nil, fmt.Errorf("no page: %w", errors.Join(err, listenErr))
	}
	go http.Serve(ready, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		var a any
		if json.NewDecoder(r.Body).Decode(&a) == nil {
			w.Write(answer)
		}
	}))
	return work{
		name:  "a page answer",
		floor: func() error { _, err := post("http://"+ready.Addr().String(), asked); return err },
		ours:  func() error { _, err := post(home, asked); return err },
	}, func() { server.Process.Kill(); server.Wait(); ready.Close() }, nil
}

// post asks a page as its own browser would.
func post(home string, asked []byte) ([]byte, error) {
	r, err := http.NewRequest(http.MethodPost, home+"/see", bytes.NewReader(asked))
	if err != nil {
		return nil, err
	}
	r.Header.Set("Content-Type", "application/json")
	r.Header.Set("Origin", home)
	reply, err := http.DefaultClient.Do(r)
	if err != nil {
		return nil, err
	}
	defer reply.Body.Close()
	answer, err := io.ReadAll(reply.Body)
	if err == nil && (reply.StatusCode != http.StatusOK || bytes.Contains(answer, []byte(`"fault":`))) {
		err = fmt.Errorf("%s: %.200s", reply.Status, answer)
	}
	return answer, err
}

// free returns a port of this machine that nobody has.
func free() (int, error) {
	l, err := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil {
		return 0, err
	}
	return l.Addr().(*net.TCPAddr).Port, l.Close()
}
