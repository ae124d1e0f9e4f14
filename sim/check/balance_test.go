package check

import (
	"slices"
	"testing"

	"rockerwright/sim/quantity"
)

// TestCompanyIsCheck holds that a company in a changed design finds what Check finds.
func TestCompanyIsCheck(t *testing.T) {
	company, err := SittersOf(sized())
	if err != nil {
		t.Fatal(err)
	}
	d := sized()
	d.Rocker.Radius, d.Seat.Front, d.Seat.RearCut = 40*quantity.In, 17*quantity.In, quantity.In/4
	want := checked(t, d)
	got, err := company.Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	if len(got.Limits) != len(want.Limits) || len(got.Limits) < 10 {
		t.Fatalf("%d limits, want %d", len(got.Limits), len(want.Limits))
	}
	for i, l := range got.Limits {
		if l.Got != want.Limits[i].Got || l.Load != want.Limits[i].Load {
			t.Errorf("%+v, want %+v", l, want.Limits[i])
		}
	}
	for i := range got.Loads {
		l := &got.Loads[i]
		w := find(t, want, l.Name)
		if l.Balance.Rest != w.Balance.Rest || l.SeatFall != w.SeatFall || l.BackRecline != w.BackRecline ||
			l.Standing == 0 && (l.Balance != w.Balance || l.EffortBack != w.EffortBack) {
			t.Errorf("%s: %+v, want %+v", l.Name, l.Balance, w.Balance)
		}
	}
}

func BenchmarkCompany(b *testing.B) {
	d := sized()
	company, err := SittersOf(d)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if r, err := company.Balance(d); err != nil || len(r.Limits) == 0 {
			b.Fatal(err)
		}
	}
}

// TestForLimits holds that whoever decides most limits is asked the same, and that nobody is left out where
// every tilt is asked.
func TestForLimits(t *testing.T) {
	d := sized()
	company, err := SittersOf(d)
	if err != nil {
		t.Fatal(err)
	}
	all, err := company.Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	few, err := company.ForLimits(d).Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	if few.Loads[1].Balance != all.Loads[1].Balance || len(few.Loads) >= len(all.Loads) {
		t.Errorf("%d of %d loads", len(few.Loads), len(all.Loads))
	}
	asked := map[string]bool{} // of how many limits something is asked of few
	for _, l := range few.Limits {
		if !slices.Contains(all.Limits, l) {
			t.Errorf("of few alone: %+v", l)
		}
		asked[l.Name] = true
	}
	for _, l := range all.Limits {
		if load := all.Load(l.Load); !asked[l.Name] || slices.Contains(decide, load.Posture) && !slices.Contains(few.Limits, l) {
			t.Errorf("not asked of few: %+v", l)
		}
	}
	first, err := company.First().Balance(d)
	if err != nil || len(first.Loads) != 2 || first.Loads[1].Balance != all.Loads[1].Balance {
		t.Errorf("%d loads of the first, %v", len(first.Loads), err)
	}
	d.Limits.RestTilt = 0.1
	if few, err = company.ForLimits(d).Balance(d); err != nil || len(few.Loads) != len(all.Loads) {
		t.Errorf("%d of %d loads, %v", len(few.Loads), len(all.Loads), err)
	}
}
