package main

import (
	"fmt"
	"strings"

	"rockerwright/sim/piece"
)

// entries lists every entry of a design file, as check's help shows them.
func entries() string {
	var b strings.Builder
	b.WriteString("Entries of a design file. Where a list has several, N counts from 1; with one it\nmay be left out.\n")
	for _, c := range piece.Choices() {
		words := strings.Join(c.Words, " | ")
		if words == "" {
			words = "a text"
		}
		fmt.Fprintf(&b, "  %-26s %s: %s\n", c.Key, c.Label, words)
	}
	for _, m := range piece.Measures() {
		fmt.Fprintf(&b, "  %-26s %s\n", m.Key, m.Label)
	}
	return strings.TrimRight(b.String(), "\n")
}
