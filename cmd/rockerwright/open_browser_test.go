package main

import (
	"os/exec"
	"path/filepath"
	"testing"
)

// TestOpenInBrowser does with the live page what a maker does, in a browser; see
// validation/node/live.mjs for what it holds.
func TestOpenInBrowser(t *testing.T) {
	if testing.Short() {
		t.Skip("short: no browser opened the live page")
	}
	node := browser(t)
	folder := t.TempDir()
	for _, kind := range []string{"chair", "cradle"} {
		startIn(t, folder, kind)
	}
	hostile(t, folder)
	command := filepath.Join(folder, "rockerwright")
	if out, err := exec.Command("go", "build", "-o", command, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	script, err := filepath.Abs(browserModules + "/live.mjs")
	if err != nil {
		t.Fatal(err)
	}
	for _, fault := range saidBy(t, node, script, command, folder) {
		t.Error(fault)
	}
}
