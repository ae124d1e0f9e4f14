package size

import (
	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// A ForSitter is what a piece for one sitter would want for another.
type ForSitter struct {
	Stature float64 // m
	Like    Likeness
}

// ForSitters returns what radius keeps the feel that the owner likes for owners of other
// statures, as stout as the mean, the piece staying as it is. It is empty where the first
// sitter is no grown-up given by sizes.
func ForSitters(d piece.Design, statures []float64) ([]ForSitter, error) {
	if len(d.Sitters) == 0 || d.Sitters[0].Person.Sizes[person.Stature] == 0 || d.Sitters[0].Person.Age > 0 {
		return nil, nil
	}
	var list []ForSitter
	for _, stature := range statures {
		other := d.Clone()
		s := &other.Sitters[0]
		s.Mass, s.Person = 0, person.Given{Sex: s.Person.Sex}
		s.Person.Sizes[person.Stature] = stature
		l, err := Like(d, other)
		if err != nil {
			return nil, err
		}
		list = append(list, ForSitter{stature, l})
	}
	return list, nil
}
