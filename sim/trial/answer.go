package trial

import (
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// An Answer is all that is said of a design: how it stands, what it comes back from, and what is wrong with it.
type Answer struct {
	check.Report
	Survives *Survival // what the worst of the loads that are asked something comes back from; nil where none rests
	Findings []Finding // all that is wrong, the gravest first: who says or judges anything of the design reads it here
}

// Check returns all that is asked of a design. The error is that of [check.Check].
func Check(d piece.Design) (Answer, error) {
	report, err := check.Check(d)
	if err != nil {
		return Answer{Report: report}, err
	}
	return Of(report), nil
}

// Of returns the answer of a design that was checked.
func Of(report check.Report) Answer {
	a := Answer{Report: report}
	a.Findings = findings(&a.Report)
	if worst := a.WorstLimited(); worst != nil {
		survives := survival(&a.Report, worst)
		a.Survives = &survives
	}
	return a
}

// Standing is [Check] without what it comes back from, which takes as long as all the rest.
func Standing(d piece.Design) (Answer, error) {
	report, err := check.Check(d)
	a := Answer{Report: report}
	if err == nil {
		a.Findings = findings(&a.Report)
	}
	return a, err
}

// Holds reports whether it stands and all limits hold.
func (a *Answer) Holds() bool { return len(a.Findings) == 0 || a.Findings[0].Level > Fails }
