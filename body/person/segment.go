package person

import "sync"

// A Part is one segment of the chain, left and right limbs as one.
type Part int

const (
	Head     Part = iota // head and neck
	Trunk                // from the seventh neck vertebra to the middle of the hip joints
	UpperArm             // both
	Forearm
	Hand
	Thigh
	Shank
	Foot
	parts int = iota
)

// A segment is one Part of one kind of person.
type segment struct {
	share    float64 // of the body's mass, both limbs
	centre   float64 // of its length, from the end named first in chain
	gyration float64 // about its centre and the left-right axis, of its length
	length   float64 // of the stature
}

// chain says which rows of de Leva's table are taken: the segment and its two ends.
var chain = [parts]struct {
	segment, from, to string
	limbs             float64
}{
	Head:     {"head_and_neck", "VERT", "CERV", 1},
	Trunk:    {"trunk", "CERV", "MIDH", 1},
	UpperArm: {"upper_arm", "SJC", "EJC", 2},
	Forearm:  {"forearm", "EJC", "WJC", 2},
	Hand:     {"hand", "WJC", "DAC3", 2},
	Thigh:    {"thigh", "HJC", "KJC", 2},
	Shank:    {"shank", "KJC", "AJC", 2},
	Foot:     {"foot", "HEEL", "TTIP", 2},
}

// Mean statures of de Leva's sample, m: 15 women and 100 men.
const (
	deLevaWoman = 1.735
	deLevaMan   = 1.741
)

// segments holds each kind of person's segments, the shares summing to one.
//
// Source: de Leva P. (1996), J. Biomechanics 29:1223-1230, Table 4. The column of the
// left-right axis is the one headed "transverse".
var segments = sync.OnceValue(func() [3][parts]segment {
	var women, men [parts]segment
	for _, r := range rows(deLevaTable) {
		for part, c := range chain {
			if r["segment"] != c.segment || r["proximal"] != c.from || r["distal"] != c.to {
				continue
			}
			of, stature := &women, deLevaWoman
			if r["sex"] == "male" {
				of, stature = &men, deLevaMan
			}
			of[part] = segment{
				share:    r.number("mass_pct", 0.01) * c.limbs,
				centre:   r.number("cm_pct_from_proximal", 0.01),
				gyration: r.number("rg_transverse_pct", 0.01),
				length:   r.number("length_mm", 1e-3) / stature,
			}
		}
	}
	var both [parts]segment
	for i := range both {
		w, m := women[i], men[i]
		both[i] = segment{(w.share + m.share) / 2, (w.centre + m.centre) / 2, (w.gyration + m.gyration) / 2, (w.length + m.length) / 2}
	}
	return [3][parts]segment{Either: whole(both), Woman: whole(women), Man: whole(men)}
})

// whole returns segments whose shares sum to one; printed ones miss it by rounding.
func whole(list [parts]segment) [parts]segment {
	sum := 0.0
	for _, s := range list {
		sum += s.share
	}
	for i := range list {
		list[i].share /= sum
	}
	return list
}
