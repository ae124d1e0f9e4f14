package validation

import (
	"fmt"
	"math"
)

// A Case is one number that is known from outside this project's code.
type Case struct {
	Group, Name string
	Checks      string  // what it checks, a sentence
	Source      string  // author, year, title, place; or the derivation, "derived here: …"
	Unit        string  // of Want
	Want        float64 // from the source
	Accuracy    float64 // the largest relative error
	Why         string  // the reason for Accuracy
	Compute     func() (float64, error)
}

// Check computes the case and returns what it got; the error says by how much it misses.
func (c Case) Check() (got float64, err error) {
	got, err = c.Compute()
	if err != nil {
		return got, err
	}
	if off := math.Abs(got - c.Want); !(off <= c.Accuracy*math.Abs(c.Want)) {
		return got, fmt.Errorf("got %v %s, want %v, %.1g off", got, c.Unit, c.Want, off/math.Abs(c.Want))
	}
	return got, nil
}

// The accuracies that cases ask for, and why.
const (
	twelveDigits = 1e-12
	tenDigits    = 1e-10

	whyClosed     = "a closed form on both sides: a dozen roundings"
	whyQuadrature = "the period of a finite rock is promised to 1e-10"
	whyPrinted    = "the source prints so many digits"
)

// Cases returns every case, group by group.
func Cases() []Case {
	var all []Case
	for _, group := range [][]Case{pendulums(), cylinders(), rests(), tips(), slopes(), swings()} {
		all = append(all, group...)
	}
	return all
}
