// Package plots draws what a report found: the side view, the righting arm against the
// tilt, and the time of a rock against the release, as SVG or PDF. It computes no
// physics; the curves come from package sim.
//
// Pictures are meant for paper: at least 9 points at 7 inches wide, lines that differ in
// dash and in lightness, and labels at the lines.
package plots
