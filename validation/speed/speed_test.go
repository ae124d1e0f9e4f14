package speed

import (
	"bytes"
	"encoding/csv"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"testing"
)

// noted is the file of the ratios that were written down.
const noted = "noted.csv"

// allowed is how much more than its noted ratio a work may come to cost; our judgement of what noise
// and another machine do to a ratio of medians.
const allowed = 1.5

var (
	timed = flag.Bool("timed", false, "measure every work, on an idle machine")
	note  = flag.Bool("note", false, "with -timed: write the ratios down in "+noted)
)

func TestMain(m *testing.M) {
	if len(os.Args) == 4 && os.Args[1] == write {
		if err := writeAgain(os.Args[2], os.Args[3]); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
		return
	}
	os.Exit(m.Run())
}

// TestSpeed measures every work and holds it to what was noted, or notes it.
func TestSpeed(t *testing.T) {
	if !*timed {
		t.Skip("nothing was measured: go test ./validation/speed -v -timed, on an idle machine")
	}
	before, err := readNoted()
	if err != nil && !*note {
		t.Fatal(err)
	}
	var now bytes.Buffer
	now.WriteString("# how many times the floor a work costs: go test ./validation/speed -timed -note\nwork,ratio\n")
	t.Logf("%-24s %12s %12s %8s %8s", "work", "floor", "ours", "ratio", "noted")
	for _, w := range everything(t) {
		floor, ours, err := w.measure()
		if err != nil {
			t.Fatalf("%s: %v", w.name, err)
		}
		ratio, was := ours/floor, before[w.name]
		t.Logf("%-24s %12s %12s %8.3g %8.3g", w.name, written(floor), written(ours), ratio, was)
		fmt.Fprintf(&now, "%s,%.3g\n", w.name, ratio)
		if !(ratio <= allowed*was) && !*note {
			t.Errorf("%s costs %.3g times its floor, %.3g was noted", w.name, ratio, was)
		}
	}
	if *note {
		if err := os.WriteFile(noted, now.Bytes(), 0o644); err != nil {
			t.Error(err)
		}
	}
}

// everything builds the command and returns all works.
func everything(t *testing.T) []work {
	folder := t.TempDir()
	rockerwright := filepath.Join(folder, "rockerwright.exe") // Windows runs no other; elsewhere a name
	if out, err := exec.Command("go", "build", "-o", rockerwright, "rockerwright/cmd/rockerwright").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	return slices.Concat(statics(), []work{report(t), pageAnswer(t, rockerwright, folder)}, commands(t, rockerwright, folder))
}

// readNoted returns the noted ratio of each work.
func readNoted() (map[string]float64, error) {
	file, err := os.Open(noted)
	if err != nil {
		return nil, fmt.Errorf("no ratios are noted: %w", err)
	}
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		return nil, err
	}
	ratios := map[string]float64{}
	for _, row := range rows[1:] {
		if ratios[row[0]], err = strconv.ParseFloat(row[1], 64); err != nil {
			return nil, err
		}
	}
	return ratios, nil
}

// written writes a time with its unit.
func written(seconds float64) string {
	switch {
	case seconds < 1e-6:
		return fmt.Sprintf("%.3g ns", seconds*1e9)
	case seconds < 1e-3:
		return fmt.Sprintf("%.3g µs", seconds*1e6)
	}
	return fmt.Sprintf("%.3g ms", seconds*1e3)
}
