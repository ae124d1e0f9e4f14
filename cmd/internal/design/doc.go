// Package design reads a design file: text into a piece.Design, strictly, with the
// line and column of every mistake. It is the only package that knows TOML.
package design
