package main

import (
	"bufio"
	"bytes"
	"encoding/csv"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
)

// noted is the file of the ratios that were written down.
const noted = "validation/speed/noted.csv"

// allowed is how much more than its noted ratio a work may come to cost; our judgement of what noise
// and another machine do to a ratio of medians.
const allowed = 1.5

func main() {
	if len(os.Args) == 4 && os.Args[1] == write {
		exit(writeAgain(os.Args[2], os.Args[3]))
	}
	note := flag.Bool("note", false, "write the ratios down in "+noted)
	flag.Parse()
	exit(run(*note))
}

func exit(err error) {
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	os.Exit(0)
}

// run measures every work and holds it to what was noted, or notes it.
func run(note bool) error {
	before, err := readNoted()
	if err != nil && !note {
		return err
	}
	folder, err := os.MkdirTemp("", "speed")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	works, stop, err := everything(folder)
	if err != nil {
		return err
	}
	defer stop()
	out := bufio.NewWriter(os.Stdout)
	defer out.Flush()
	fmt.Fprintf(out, "%-24s %12s %12s %8s %8s\n", "work", "floor", "ours", "ratio", "noted")
	var now bytes.Buffer
	now.WriteString("# how many times the floor a work costs: go run ./validation/speed -note\nwork,ratio\n")
	var slower []string
	for _, w := range works {
		floor, ours, err := w.measure()
		if err != nil {
			return fmt.Errorf("%s: %w", w.name, err)
		}
		ratio, was := ours/floor, before[w.name]
		fmt.Fprintf(out, "%-24s %12s %12s %8.3g %8.3g\n", w.name, written(floor), written(ours), ratio, was)
		out.Flush()
		fmt.Fprintf(&now, "%s,%.3g\n", w.name, ratio)
		if !(ratio <= allowed*was) {
			slower = append(slower, fmt.Sprintf("%s costs %.3g times its floor, %.3g was noted", w.name, ratio, was))
		}
	}
	if note {
		return os.WriteFile(noted, now.Bytes(), 0o644)
	}
	if len(slower) > 0 {
		return fmt.Errorf("slower than noted:\n%s", strings.Join(slower, "\n"))
	}
	return nil
}

// everything builds the command into the folder and returns all works.
func everything(folder string) (works []work, stop func(), err error) {
	rockerwright := filepath.Join(folder, "rockerwright.exe") // Windows runs no other; elsewhere a name
	if out, err := exec.Command("go", "build", "-o", rockerwright, "./cmd/rockerwright").CombinedOutput(); err != nil {
		return nil, nil, fmt.Errorf("run this from the project's top: %w: %s", err, out)
	}
	whole, err := report()
	if err != nil {
		return nil, nil, err
	}
	answer, stop, err := pageAnswer(rockerwright, folder)
	if err != nil {
		return nil, nil, err
	}
	processes, err := commands(rockerwright, folder)
	if err != nil {
		stop()
		return nil, nil, err
	}
	return append(append(statics(), whole, answer), processes...), stop, nil
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
