package person

import (
	"sync"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// fleshAhead returns how far ahead of the balance point what a person weighs more than the survey's mean for the height
// acts, along the thighs, m: belly and seat flesh, so that the balance point of a man of the survey's mean height
// moves as the published pair says. The lighter of the two is lighter than that mean.
//
// Source: UMTRI, Whole-body center of mass location in seated posture (447 women and 315 men, scanned), abstract: 220 mm
// ahead of the back of the buttocks at 77 kg, 273 at 140; one source, which prints a difference of 63 mm too.
var fleshAhead = sync.OnceValue(func() float64 {
	pair := rows(umtriTable)
	light, heavy := pair[0], pair[1]
	further := heavy.number("cm_forward_mm", 1e-3) - light.number("cm_forward_mm", 1e-3)
	return further / (1 - ansur().mean(Man, "weight")/heavy.number("mass_kg", 1))
})

// flesh returns how far ahead the trunk and the thighs of who sits carry their weight along the thighs, m, so that the
// whole balances where its flesh brings it. A grown-up of the survey's mean weight for the height, or lighter, is as
// de Leva's chain has it, for nothing published says how the lean differ; and so is a child.
func (p *Person) flesh() float64 {
	a := ansur()
	taller := p.Sizes[Stature] / a.mean(p.Sex, "stature")
	more := p.Sizes[Mass] - float64(a.mean(p.Sex, "weight")*(taller*taller)) // nothing of who is as stout as the mean: not fused
	if p.Age > 0 || more <= 0 {
		return 0
	}
	return fleshAhead() * more / ((p.segments[Trunk].share + p.segments[Thigh].share) * p.Sizes[Mass])
}

// carryFlesh moves the centres of trunk and thighs of a seated chain ahead as lumps: their masses, and the inertia of each
// about its own centre, stay; the joints stay too.
func (p *Person) carryFlesh(list *[parts]body.Body, j Joints) {
	by := r2.Scale(p.ahead, unit(r2.Sub(j.Knee, j.Hip)))
	list[Trunk], list[Thigh] = list[Trunk].Moved(by), list[Thigh].Moved(by)
}
