package sim

import (
	"math"
	"slices"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/rocker/root"
)

// A reach is a range of rolls on one arc over which no foot changes its stage.
type reach struct {
	arc      int
	from, to float64 // rad
	stages   []body.Stage
}

// carries fills in what the floor carries of each leg at a roll in the reach.
func (s *Seated) carries(in reach, roll float64, carried []float64) []float64 {
	b := s.Profile.Bearing(in.arc)
	for i := range s.Legs {
		l := &s.Legs[i]
		y, _, _ := b.Above(l.Knee, roll)
		carried[i] = l.Carried(in.stages[i], y)
	}
	return carried
}

// moment returns M/g at a roll on an arc with so much of each leg on the floor, kg·m.
func (s *Seated) moment(arc int, roll float64, carried []float64) float64 {
	r := s.held(carried)
	return r.Body.Mass * r.Floor.ground().arm(r.stand(r.Profile.Bearing(arc), roll))
}

// potential returns V/g at a roll on an arc, kg·m.
func (s *Seated) potential(hanging *Rig, arc int, roll float64) float64 {
	b := s.Profile.Bearing(arc)
	v := hanging.Body.Mass * hanging.Floor.ground().rise(hanging.stand(b, roll))
	for i := range s.Legs {
		y, _, _ := b.Above(s.Legs[i].Knee, roll)
		v -= s.Legs[i].Borne(y)
	}
	return v
}

// turns returns the rolls on an arc at which the knees of legs stand at a height y:
// R − |w| cos(φ − φ₀) = y, w from the centre of the arc to the knee.
func (s *Seated) turns(b *rocker.Bearing, l *body.Legs, y float64, list []float64) []float64 {
	knee := Rig{Profile: s.Profile, Body: body.Body{Centre: l.Knee}}
	length, level := knee.turned(b)
	cos := (b.Radius - y) / length
	if !(math.Abs(cos) < 1) {
		return list
	}
	middle, off := (b.From+b.To)/2, math.Acos(cos)
	for _, roll := range [...]float64{within(level-off, middle), within(level+off, middle)} {
		if b.From < roll && roll < b.To {
			list = append(list, roll)
		}
	}
	return list
}

// reaches returns the reaches between upside down forward and upside down back, in order.
func (s *Seated) reaches() []reach {
	n := len(s.Legs)
	list := make([]reach, 0, s.Profile.Bearings()+2*n) // a knee passes both heights once, mostly
	stages := make([]body.Stage, 0, n*cap(list))
	least, most := -math.Pi/2-s.Floor.Slope, math.Pi/2-s.Floor.Slope
	var store [8]float64
	for arc := range s.Profile.Bearings() {
		b := s.Profile.Bearing(arc)
		if b.To <= least || b.From >= most {
			continue
		}
		from, to := max(b.From, least), min(b.To, most)
		cuts := append(store[:0], from, to)
		for i := range s.Legs {
			l := &s.Legs[i]
			cuts = s.turns(b, l, l.ToeHeight(), s.turns(b, l, l.HeelHeight(), cuts))
		}
		cuts = slices.DeleteFunc(cuts, func(roll float64) bool { return roll < from || roll > to })
		slices.Sort(cuts)
		for k := range len(cuts) - 1 {
			for i := range s.Legs {
				y, _, _ := b.Above(s.Legs[i].Knee, (cuts[k]+cuts[k+1])/2)
				stages = append(stages, s.Legs[i].StageAt(y))
			}
			list = append(list, reach{arc, cuts[k], cuts[k+1], stages[len(stages)-n:]})
		}
	}
	return list
}

// A footing is a rest or a hilltop of people at ease.
type footing struct {
	Equilibrium
	carried   []float64 // of each leg, kg
	potential float64   // V/g, kg·m
}

// footings returns every rest and hilltop, in order of roll, but none that are AtHilltop of each other.
func (s *Seated) footings(in []reach) []footing {
	list := make([]footing, 0, 4) // a rest, a hilltop on either side of it, and one more
	hanging := s.Hanging()
	add := func(e Equilibrium, carried []float64) {
		if n := len(list); n > 0 && list[n-1].Stable != e.Stable && e.roll-list[n-1].roll < AtHilltop {
			list = list[:n-1]
			return
		}
		list = append(list, footing{e, carried, s.potential(&hanging, e.before, e.roll)})
	}
	n := len(s.Legs)
	var last float64 // M at the end of the reach before
	before, first := make([]float64, n), make([]float64, n)
	var store [4]Equilibrium
	for k, r := range in {
		s.carries(r, r.from, first)
		start := s.moment(r.arc, r.from, first)
		if k > 0 && (last < 0) != (start < 0) { // a heel that lifts, a flat, or a hilltop just on a joint
			carried := make([]float64, n)
			for i := range carried {
				carried[i] = before[i] + (first[i]-before[i])*last/(last-start)
			}
			held := s.held(carried)
			find := search{rig: &held, ground: held.Floor.ground()}
			add(find.found(in[k-1].arc, r.arc, r.from, last < 0), carried)
		}
		before = s.carries(r, r.to, before)
		last = s.moment(r.arc, r.to, before)
		for _, e := range s.inside(store[:0], r, start, last) {
			add(e, s.carries(r, e.roll, make([]float64, n)))
		}
	}
	return list
}

// sign returns −1 for what is below zero, else 1.
func sign(x float64) int {
	if x < 0 {
		return -1
	}
	return 1
}

// parts is into how many parts a reach is cut where a foot turns on its toe.
const parts = 8

// inside appends to list the zeros of M inside a reach, of which M at either end is known.
func (s *Seated) inside(list []Equilibrium, r reach, start, end float64) []Equilibrium {
	carried := s.carries(r, r.from, make([]float64, len(s.Legs)))
	held := s.held(carried)
	find := search{rig: &held, ground: held.Floor.ground()}
	if !slices.Contains(r.stages, body.HeelLifted) {
		b := s.Profile.Bearing(r.arc)
		find.length, find.level = held.turned(b)
		find.start, find.end = sign(start), sign(end)
		return find.between(list, r.arc, r.from, r.to)
	}
	m := func(roll float64) float64 { return s.moment(r.arc, roll, s.carries(r, roll, carried)) }
	from, at := r.from, start
	for k := 1; k <= parts; k++ {
		to := r.from + (r.to-r.from)*float64(k)/parts
		then := end
		if k < parts {
			then = m(to)
		}
		if (at < 0) != (then < 0) {
			held.Body = s.held(carried).Body
			list = append(list, find.found(r.arc, r.arc, root.Between(m, from, to, 0), at < 0))
		}
		from, at = to, then
	}
	return list
}
