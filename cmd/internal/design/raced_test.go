//go:build race

package design

// raced says that the race detector watches, which takes its own time and memory.
const raced = true
