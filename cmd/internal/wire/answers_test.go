package wire

import (
	"math"
	"strings"
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// TestLimitsAndAims: each is in the unit that its name ends in, a limit says which way it holds, and what there is not
// is null. Half a turn is 180 degrees.
func TestLimitsAndAims(t *testing.T) {
	most := check.Limit{Name: "rest_tilt", Load: "empty", Kind: quantity.Angle, Want: math.Pi, AtMost: true, Got: math.Pi / 2,
		Holds: true, Basis: check.OurJudgement}
	least := check.Limit{Name: "pull", Load: "owner", Kind: quantity.Force, Want: 20, Got: math.NaN(), Basis: check.YourFile}
	for _, tt := range []struct {
		made Object
		want string
	}{
		{limit(most),
			`{"name":"rest_tilt_deg","load":"empty","at_most":180,"got":90,"holds":true,"basis":"our judgement","spread":0,"near":false}`},
		{limit(least),
			`{"name":"pull_n","load":"owner","at_least":20,"got":null,"holds":false,"basis":"your file","spread":0,"near":false}`},
		{aim(size.Miss{Aim: size.OneRock, Want: 2, Got: 2.25, Steps: 3}), `{"aim":"one_rock_s","want":2,"got":2.25,"met":false}`},
		{aim(size.Miss{Aim: size.LargestTilt, Want: math.Pi, Got: math.NaN()}),
			`{"aim":"largest_tilt_deg","want":180,"got":null,"met":true}`},
		{aim(size.Miss{Aim: size.KeepsLimit, Limit: most, Want: math.Pi, Got: math.Pi}),
			`{"aim":"rest_tilt_deg","load":"empty","want":180,"got":180,"met":true}`},
		{aim(size.Miss{Aim: size.Sensible}), `{"aim":"sensible","want":0,"got":0,"met":true}`},
		{rocker(check.Balanced{}), `null`},
	} {
		var out strings.Builder
		if err := Print(&out, tt.made); err != nil || out.String() != tt.want+"\n" {
			t.Errorf("got  %swant %s (%v)", out.String(), tt.want, err)
		}
	}
}

// TestEveryAimHasAName: and so has every quantity that is read of a piece.
func TestEveryAimHasAName(t *testing.T) {
	for a := size.OneRock; a <= size.Sensible; a++ {
		if a != size.KeepsLimit && aims[a].name == "" { // which has that of its limit
			t.Errorf("aim %d has no name", a)
		}
	}
	var all size.Readings
	if len(read) != len(all) {
		t.Errorf("%d quantities have a name, of %d", len(read), len(all))
	}
	for q, of := range read {
		if of.name == "" {
			t.Errorf("quantity %d has no name", q)
		}
	}
}
