package trial

import (
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// An Answer is what is said of a design: what was found out about it standing, and what becomes of it in motion.
type Answer struct {
	check.Report
	Survives *Survival // what the worst of the loads that are asked something comes back from; nil where none rests
}

// Check returns all that is asked of a design. The error is that of [check.Check].
func Check(d piece.Design, options check.Options) (Answer, error) {
	report, err := check.Check(d, options)
	a := Answer{Report: report}
	if worst := report.WorstLimited(); err == nil && worst != nil {
		survives := survival(d, worst, &report.Loads[0], report.Edge, report.Loads)
		a.Survives = &survives
	}
	return a, err
}
