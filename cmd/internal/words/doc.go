// Package words says what a report found, in the words of the trade: one Sheet of
// verdicts, tables, notes and cautions, printed as text. It is the only package that
// knows sentences, and it computes nothing.
package words
