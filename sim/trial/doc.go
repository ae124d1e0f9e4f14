// Package trial is a design in motion: rocked, pushed, dropped into, what it survives and the room it sweeps.
//
// [Check] answers all that is asked of a design: the report of package check, and the
// trials. [Rock] follows one load. SI units and radians throughout.
package trial
