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
			at = len(list)
			list = append(list, Checked{Name: l.Sitter, Mass: cmp.Or(r.sizesOf(l.Sitter)[person.Mass], l.Person.Mass)})
		}
		list[at].Postures++
	}
	slices.SortStableFunc(list, func(a, b Checked) int { return cmp.Compare(a.Mass, b.Mass) })
	return list
}

// sizesOf returns the sizes of who is posed under a name, given or estimated; zeros where nobody is.
func (r Report) sizesOf(name string) person.Measures {
	for _, s := range r.Somebody {
		if s.Name == name {
			return s.Person.Sizes
		}
	}
	return person.Measures{}
}

// TipsAtRest returns how high the two tips of a rocker stand over the floor where a load
// rests, m; NaN where it does not.
func (b *Balanced) TipsAtRest(l *Load) (nose, tail float64) {
	_, nose = l.Rig.Place(b.Edge.Nose(), l.Balance.Rest.Tilt)
	_, tail = l.Rig.Place(b.Edge.Tail(), l.Balance.Rest.Tilt)
	return nose, tail
}

// Load returns the load of a name; nil where there is none.
func (b *Balanced) Load(name string) *Load {
	for i := range b.Loads {
		if b.Loads[i].Name == name {
			return &b.Loads[i]
		}
	}
	return nil
}

// LoadNamed returns the load of a name or of the beginning of one, in letters of either case; of "" the first person.
func (b *Balanced) LoadNamed(name string) (*Load, error) {
	if name == "" {
		return b.Seated(), nil
	}
	if l := b.Load(name); l != nil { // one name may be the beginning of another
		return l, nil
	}
	var names []string
	for i := range b.Loads {
		if strings.HasPrefix(strings.ToLower(b.Loads[i].Name), strings.ToLower(name)) {
			return &b.Loads[i], nil
		}
		names = append(names, b.Loads[i].Name)
	}
	return nil, fmt.Errorf("there is no load %q; there are %s", name, strings.Join(names, "; "))
}
