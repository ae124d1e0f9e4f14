package trial

import (
	"cmp"

	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
)

// losses returns what a rock of a load loses on the design's floor.
func losses(d piece.Design, l *check.Load) motion.Losses {
	losses := motion.Losses{Rolling: cmp.Or(d.Floor.Rolling, piece.GroundOf(d.Floor.Surface).Rolling), Viscous: d.Floor.Viscous}
	if d.Floor.Halves > 0 && d.Floor.Viscous == 0 {
		losses.Viscous = motion.HalvesIn(l.Rig, l.Balance, d.Floor.Halves)
	}
	return losses
}
