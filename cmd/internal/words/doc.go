// Package words says what a report found, in the words of the trade: a sheet of verdicts, tables, notes and
// cautions. It is the only package that knows sentences, and it computes nothing.
package words
