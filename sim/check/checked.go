package check

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// A Checked is somebody with whom the piece was checked.
type Checked struct {
	Name     string
	Mass     float64 // of the person alone, kg
	Postures int     // in how many it was checked
}

// Checked returns who was checked, the lightest first; no hazards, of which nothing is
// asked.
func (r Report) Checked() []Checked {
	var list []Checked
	for i := range r.Loads {
		l := &r.Loads[i]
		if l.Empty || l.Role == piece.Hazard {
			continue
		}
		at := slices.IndexFunc(list, func(c Checked) bool { return c.Name == l.Sitter })
		if at < 0 {
			list = append(list, Checked{Name: l.Sitter, Mass: r.massOf(l)})
			at = len(list) - 1
		}
		list[at].Postures++
	}
	slices.SortStableFunc(list, func(a, b Checked) int { return cmp.Compare(a.Mass, b.Mass) })
	return list
}

// massOf returns the mass of a load's person: as given or estimated, else what rides.
func (r Report) massOf(l *Load) float64 {
	for _, s := range r.Somebody {
		if s.Name == l.Sitter {
			return s.Person.Sizes[person.Mass]
		}
	}
	return l.Person.Mass
}

// TipsAtRest returns how high the two tips of a rocker stand over the floor where a load
// rests, m; NaN where it does not.
func (b *Balanced) TipsAtRest(l *Load) (nose, tail float64) {
	_, nose = l.Rig.Place(b.Edge.Nose(), l.Balance.Rest.Tilt)
	_, tail = l.Rig.Place(b.Edge.Tail(), l.Balance.Rest.Tilt)
	return nose, tail
}

// pickLoad returns the load of a name.
func LoadNamed(loads []Load, name string) (*Load, error) {
	if name == "" {
		return &loads[min(1, len(loads)-1)], nil
	}
	for i := range loads { // one name may be the beginning of another
		if loads[i].Name == name {
			return &loads[i], nil
		}
	}
	var names []string
	for i := range loads {
		if strings.HasPrefix(strings.ToLower(loads[i].Name), strings.ToLower(name)) {
			return &loads[i], nil
		}
		names = append(names, loads[i].Name)
	}
	return nil, fmt.Errorf("there is no load %q; there are %s", name, strings.Join(names, "; "))
}
