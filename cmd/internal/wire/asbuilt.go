package wire

import (
	"errors"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// AsBuilt returns a finished piece beside its drawing, with a sentence for each row on what to do, and what check says
// of it as built.
func AsBuilt(b check.Built, mends []string, asBuilt Object) Object {
	rows := []Object{}
	for i, r := range b.Rows {
		rows = append(rows, Object{
			{"what", r.What}, {"key", r.Key}, {"station", where(r.Station > 0, r.Station)}, {"readings", r.Readings},
			{"unit", unit(r.Kind)}, {"drawn", amount(r.Drawn, r.Kind)}, {"measured", amount(r.Read, r.Kind)},
			{"uncertain_95", amount(r.Uncertain, r.Kind)}, {"agrees", r.Agrees()},
			{"mend", where(!r.Agrees(), r.Mend.String())}, {"what_to_do", where(!r.Agrees(), mends[i])},
		})
	}
	var refused Object
	if wrong := (*piece.KeyError)(nil); errors.As(b.Refused, &wrong) {
		refused = Object{{"key", wrong.Key}, {"reason", wrong.Reason}}
	}
	return Object{{"design", b.As.Design.Title}, {"compared", rows}, {"as_drawn", append([]string{}, b.As.Lacked...)},
		{"refused", refused}, {"as_built", asBuilt}}
}
