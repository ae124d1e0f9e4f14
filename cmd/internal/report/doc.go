// Package report writes what a maker keeps with the piece: one HTML file that needs no
// network and no script, and prints well. Its sentences and tables are those of package
// words, its pictures those of package plots; it computes nothing.
//
// The first page is for the maker, the last one, alone on its sheet, for the owner. The
// whole design file stands before it, in the element with the id "design".
package report
