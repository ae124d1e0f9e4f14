// Speed prints what the work of this project costs beside a floor: the same work written
// by hand in Go for the one case that is asked, with nothing checked, nothing general and
// nothing kept. Their ratio hangs little on the machine, so it can be held:
//
//	go run ./validation/speed          # work | floor | ours | ratio | noted
//	go run ./validation/speed -note    # writes the ratios down, on an idle machine
//
// It exits with 1 where a ratio is more than one and a half times the noted one. No time
// is ever held. Each figure is the median of 21, floor and ours in turn.
package main
