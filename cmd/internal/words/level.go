package words

import (
	"strings"

	"rockerwright/sim/readings"
)

// levelErrs says how a level and what belongs to it usually errs.
const levelErrs = "A level errs by 0.2 degree, read both ways round; a balance on the ends by half of what its two readings " +
	"differ, of one alone by 0.6 degree for the finger; the place of an end by 1/4 in (6 mm)."

// slips says of each tilt how large a slip the other readings would tell.
func slips(r *readings.Result) string {
	var parts []string
	for _, s := range r.Slips {
		parts = append(parts, inDegrees(s.Noticed, 1)+" degrees in "+plainKey(s.Reading))
	}
	return when(len(parts) > 0, "Noticed 95 times in 100: a slip of %s.", strings.Join(parts, ", "))
}
