package check

import (
	"math"
	"testing"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// TestTwoOfOneName: two people who are called the same have each what they have alone.
func TestTwoOfOneName(t *testing.T) {
	sized := func(name string, stature, mass float64) piece.Sitter {
		s := piece.Sitter{Name: name, Mass: mass}
		s.Person.Sizes[person.Stature] = stature
		return s
	}
	check := func(sitters ...piece.Sitter) Report {
		t.Helper()
		d := readingChair()
		d.Sitters = sitters
		r := checked(t, d)
		return r
	}
	big, small := sized("owner", 1.9, 110), sized("owner", 1.5, 50)
	both, alone := check(big, small), check(small)
	seen := map[string]int{}
	for i, l := range both.Loads {
		if seen[l.Name]++; seen[l.Name] > 1 {
			t.Errorf("two loads are called %q, the second is load %d", l.Name, i)
		}
	}
	for _, want := range alone.Loads {
		if want.Sitter != "owner" {
			continue
		}
		name := "owner 2, " + want.Posture.String()
		found := false
		for _, got := range both.Loads {
			if got.Name == name {
				found = true
				if got.Rig.Body != want.Rig.Body || math.Abs(got.Balance.Rest.Tilt-want.Balance.Rest.Tilt) > 0 {
					t.Errorf("%s: %+v, alone %+v", name, got.Rig.Body, want.Rig.Body)
				}
			}
		}
		if !found {
			t.Errorf("there is no load %q", name)
		}
	}
	limit := func(r Report, load string) float64 {
		for _, l := range r.Limits {
			if l.Load == load && l.Name == "back_margin" {
				return l.Got
			}
		}
		t.Fatalf("nothing is asked of %q", load)
		return 0
	}
	if got, want := limit(both, "owner 2, at ease"), limit(alone, "owner, at ease"); got != want {
		t.Errorf("the second keeps %v, alone %v", got, want)
	}
	d := readingChair()
	d.Sitters = []piece.Sitter{big, small, small}
	if sitters(d); d.Sitters[1].Name != "owner" {
		t.Error("the design itself was changed")
	}
	if names := sitters(d); names[1].Name != "owner 2" || names[2].Name != "owner 3" {
		t.Errorf("three of a name become %q, %q", names[1].Name, names[2].Name)
	}
}

// TestOnePersonInTwoEntries: balance points of one person in postures of their own keep one name.
func TestOnePersonInTwoEntries(t *testing.T) {
	d := readingChair()
	one := d.Sitters[0]
	upright, eased := one, one
	upright.AtEase, upright.Rising = piece.Place{}, piece.Place{}
	eased.Placed, eased.Rising = piece.Place{}, piece.Place{}
	d.Sitters = []piece.Sitter{upright, eased}
	if names := sitters(d); names[1].Name != one.Name {
		t.Errorf("one person in two entries is called %q and %q", names[0].Name, names[1].Name)
	}
	d.Sitters = []piece.Sitter{upright, upright}
	if names := sitters(d); names[1].Name == one.Name {
		t.Errorf("two balance points in one posture are both called %q", one.Name)
	}
}
