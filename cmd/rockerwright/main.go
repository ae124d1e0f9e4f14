// Rockerwright works out how a rocking chair rests and rocks, and how near it is to
// going over, from measures that come off a tape.
//
// Usage:
//
//	rockerwright [command]
//
// With no command it checks a built-in reading chair. For example:
//
//	rockerwright new chair mine.toml
//	rockerwright check mine.toml rocker.radius=40,42,44
package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"runtime/debug"
)

// The exit codes: all limits hold, one does not, no answer from this input or call.
const (
	allHold  = 0
	oneFails = 1
	noAnswer = 2
)

func main() {
	// little is kept at a time: 100,000 chairs stay under 100 MB, and collecting costs a third of their time
	debug.SetGCPercent(400)
	os.Exit(run(os.Args[1:], os.Stdout, os.Stderr))
}

// run carries out one call and returns its exit code.
func run(args []string, stdout, stderr io.Writer) int {
	root := rootCommand()
	root.SetArgs(append([]string{}, args...)) // never nil, for which cobra takes the process's own
	root.SetOut(stdout)
	root.SetErr(stderr)
	switch err := root.Execute(); {
	case err == nil:
		return allHold
	case errors.Is(err, errFails):
		return oneFails
	default:
		fmt.Fprintln(stderr, err)
		return noAnswer
	}
}
