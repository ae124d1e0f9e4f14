// Package page serves the live page to this machine: the piece drawn to scale with its
// person, what a maker changes, and the Sheet beside it.
//
// The server keeps nothing: each request brings the maker's own text and the list of
// changes to it, "section.key=value" as on the command line, and gets a fresh drawing and
// a fresh Sheet. The page lays out nothing itself, and neither writes to the disk. It
// listens on loopback alone, answers only what was asked by its own name and by its own
// page, takes no path from a request, and bounds size, time and how many it works on.
package page
