// Package speed holds what the work of this project costs beside a floor: the same work written
// by hand in Go for the one case that is asked, with nothing checked, nothing general and
// nothing kept. Their ratio hangs little on the machine, so it can be held:
//
//	go test ./validation/speed -v -timed         # work | floor | ours | ratio | noted
//	go test ./validation/speed -timed -note      # writes the ratios down, on an idle machine
//
// It fails where a ratio is more than one and a half times the noted one. No time is ever
// held. Each figure is the median of 21, floor and ours in turn.
package speed
