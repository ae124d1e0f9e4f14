package person

import (
	"math"
	"sync"
)

// A Segment is one link of the chain, left and right limbs as one.
type Segment int

const (
	Head     Segment = iota // head and neck
	Trunk                   // from the seventh neck vertebra to the middle of the hip joints
	UpperArm                // both
	Forearm
	Hand
	Thigh
	Shank
	Foot
	parts int = iota
)

// proportions are those of one segment of one kind of person.
type proportions struct {
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
var segments = sync.OnceValue(func() [3][parts]proportions {
	var women, men [parts]proportions
	for _, r := range rows(deLevaTable) {
		for part, c := range chain {
			if r["segment"] != c.segment || r["proximal"] != c.from || r["distal"] != c.to {
				continue
			}
			of, stature := &women, deLevaWoman
			if r["sex"] == "male" {
				of, stature = &men, deLevaMan
			}
			of[part] = proportions{
				share:    r.number("mass_pct", 0.01) * c.limbs,
				centre:   r.number("cm_pct_from_proximal", 0.01),
				gyration: r.number("rg_transverse_pct", 0.01),
				length:   r.number("length_mm", 1e-3) / stature,
			}
		}
	}
	var both [parts]proportions
	for i := range both {
		w, m := women[i], men[i]
		both[i] = proportions{(w.share + m.share) / 2, (w.centre + m.centre) / 2, (w.gyration + m.gyration) / 2, (w.length + m.length) / 2}
	}
	return [3][parts]proportions{Either: whole(both), Woman: whole(women), Man: whole(men)}
})

// whole returns segments whose shares sum to one; printed ones miss it by rounding.
func whole(list [parts]proportions) [parts]proportions {
	sum := 0.0
	for _, s := range list {
		sum += s.share
	}
	for i := range list {
		list[i].share /= sum
	}
	return list
}

// Where joints lie against what a tape finds, as parts of the stature: derived from the
// means of ANSUR II and of de Leva's segments, men and women alike.
const (
	hipBehind      = 0.125 / 1.741 // hip joints ahead of the plane behind the buttocks: buttock-knee length less thigh less knee
	kneeOverCrease = 0.0465        // knee joint over the crease: shank and ankle less popliteal height, 81 mm of 1741
	kneeAhead      = 0.055 / 1.741 // knee joint ahead of the crease: buttock-knee less buttock-popliteal length less 60 mm to the kneecap
	ankleUp        = 0.040         // ankle joint over the sole: lateral malleolus height over stature

	// Shoulder joint under the top of the shoulder, as a part of the upper arm: 0.104/0.853, de Leva
	// (1996b), J. Biomechanics 29:1231-1233.
	acromion = 0.122
)

// build fills in segments and joints. expected holds the sizes as estimated before the given ones took their place.
func (p *Person) build(expected Measures) {
	p.segments = segments()[p.Sex]
	stature := p.Sizes[Stature]
	for i, s := range p.segments {
		p.lengths[i] = s.length * stature
	}
	if p.Age > 0 {
		p.childSegments()
	}
	p.hipAhead = hipBehind * stature
	p.hipUp = stature * hipShare(p.Sex)
	p.lengths[Trunk] = p.Sizes[SittingHeight] - p.lengths[Head] - p.hipUp
	p.lengths[UpperArm] *= (p.Sizes[Shoulder] - p.Sizes[Elbow]) / (expected[Shoulder] - expected[Elbow])
	p.lengths[Thigh] = p.Sizes[ThighLength] + kneeAhead*stature - p.hipAhead
	p.lengths[Shank] = p.Sizes[KneeCrease] - Shoe + (kneeOverCrease-ankleUp)*stature
	p.shoulder = p.Sizes[Shoulder] - acromion*p.lengths[UpperArm] - p.hipUp
}

// hipShare returns the height of the hip joints over a hard seat as a part of the stature: what the head and the
// trunk of de Leva's sample leave of the survey's sitting height. It comes to 65 mm for men and 51 mm for women of
// the middle size, and is the least certain number of the chain.
func hipShare(sex Sex) float64 {
	a, s := ansur(), segments()[sex]
	return a.mean(sex, "sitting_height")/a.mean(sex, "stature") - s[Head].length - s[Trunk].length
}

// childSegments takes the child's shares of the mass, and a head as long as one of its
// mass: lengths go as the cube root of masses (derived here).
func (p *Person) childSegments() {
	grown := p.segments[Head]
	for i, knots := range jensen() {
		p.segments[i].share = between(knots, p.Age)
	}
	p.segments = whole(p.segments)
	_, median := child(p.Sex, min(p.Age, chartEnd), 50, false)
	sample := p.Sex.mixed(61.9, 73.0) // mean masses of de Leva's sample, kg
	mass := p.segments[Head].share * median / (grown.share * sample)
	p.lengths[Head] = grown.length * p.Sex.mixed(deLevaWoman, deLevaMan) * math.Cbrt(mass)
}
