package speed

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// write is the argument with which this test is its own floor: a process that starts, reads
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
func commands(t *testing.T, rockerwright, folder string) []work {
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	var works []work
	for _, w := range []struct{ name, args string }{
		{"layout", "layout --replace"},
		{"report", "report --replace"},
		{"whatif --chairs 100", "whatif --chairs 100"},
	} {
		here := filepath.Join(folder, strings.ReplaceAll(w.name, " ", "-"))
		if err := os.MkdirAll(here, 0o755); err != nil {
			t.Fatal(err)
		}
		ours := func() error { return process(here, rockerwright, strings.Fields(w.args)...) }
		if err := ours(); err != nil {
			t.Fatal(err)
		}
		floor := func() error { return process(folder, self, write, here, here+"-floor") }
		works = append(works, work{w.name, floor, ours})
	}
	return works
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
func pageAnswer(t *testing.T, rockerwright, folder string) work {
	design, err := exec.Command(rockerwright, "new", "chair").Output()
	if err != nil {
		t.Fatal(err)
	}
	port, err := free()
	if err != nil {
		t.Fatal(err)
	}
	server := exec.Command(rockerwright, "open", "--no-browser", "--port", strconv.Itoa(port))
	server.Dir = folder
	if err := server.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { server.Process.Kill(); server.Wait() })
	home := fmt.Sprintf("http://127.0.0.1:%d", port)
	asked, err := json.Marshal(map[string]any{
		"name": "chair.toml", "text": string(design), "changes": []string{"rocker.tail=20-1/2"}, "Form": "x",
	})
	if err != nil {
		t.Fatal(err)
	}
	var answer []byte
	for range 100 { // until it listens
		if answer, err = post(home, asked); err == nil {
			break
		}
		time.Sleep(50 * time.Millisecond)
	}
	if err != nil {
		t.Fatal("no page: ", err)
	}
	ready := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		var a any
		if json.NewDecoder(r.Body).Decode(&a) == nil {
			w.Write(answer)
		}
	}))
	t.Cleanup(ready.Close)
	return work{
		name:  "a page answer",
		floor: func() error { _, err := post(ready.URL, asked); return err },
		ours:  func() error { _, err := post(home, asked); return err },
	}
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
