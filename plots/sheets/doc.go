// Package sheets draws the blank measuring sheets: pages to print, on which a maker writes the measures of a person
// and of a finished piece under the numbers of [piece.Measure.Blank].
package sheets
