// Package pattern writes one full-size drawing as PDF, SVG or DXF.
//
// A [Drawing] is a list of items on named layers, in metres with y up. Every drawing carries on its own a title block,
// a square of 4 in and one of 100 mm to be measured before anything is cut, and the long check from tip to tip with room
// for what the tape says. A PDF is true size on sheets to be glued, on one sheet, or on a roll; on sheets the two
// squares stand on the first page, whole, so that they are measured before gluing.
//
// The edge is the middle of its line.
package pattern
