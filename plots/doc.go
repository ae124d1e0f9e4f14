// Package plots draws the charts of a rocking piece: its righting arm against the tilt, the time of one rock against
// the release, and a motion in time, as SVG or PDF. A [Chart] draws them of any [sim.Rig]; [OfReport] and [OfMotion]
// draw those of a design that was checked, [Effects] and [Shares] the bars of what its measures do.
//
// Charts are meant for paper: at least 9 points at 7 inches wide, lines that differ in dash and in lightness, and
// labels at the lines.
package plots
