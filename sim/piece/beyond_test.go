package piece

import (
	"math"
	"testing"
)

// TestBeyond: the top edge of a concentric rocker with square ends ends on the radius through the tip,
// at (R − depth) sin(length/R); a leg further out stands beyond it by the rest.
func TestBeyond(t *testing.T) {
	d := readingChair()
	d.Rocker.Depth, d.Rocker.Width = 2*inch, inch
	end := func(length float64) float64 {
		return (d.Rocker.Radius - d.Rocker.Depth) * math.Sin(length/d.Rocker.Radius)
	}
	for _, tt := range []struct {
		front, rear float64
		want        []Beyond
	}{
		{6 * inch, -8 * inch, nil},
		{end(d.Rocker.Nose) - 0.001, -end(d.Rocker.Tail) + 0.001, nil},
		{end(d.Rocker.Nose) + 0.003, -8 * inch, []Beyond{{Front, false, false, 0.003}}},
		{6 * inch, -end(d.Rocker.Tail) - 0.002, []Beyond{{Rear, false, true, 0.002}}},
	} {
		d.Legs = []Leg{{Which: Front, At: tt.front}, {Which: Rear, At: tt.rear}}
		r, err := Check(d, Options{Brief: true})
		if err != nil {
			t.Fatal(err)
		}
		if len(r.Beyond) != len(tt.want) {
			t.Fatalf("legs at %v and %v: %+v, want %+v", tt.front, tt.rear, r.Beyond, tt.want)
		}
		for i, got := range r.Beyond {
			want := tt.want[i]
			if off := math.Abs(got.By - want.By); off > 1e-9 || got.Which != want.Which || got.Tail != want.Tail || got.Taken {
				t.Errorf("legs at %v and %v: %+v, want %+v", tt.front, tt.rear, got, want)
			}
		}
	}
	d.Legs = nil
	d.Rocker.Nose = 5.875 * inch
	r, err := Check(d, Options{Brief: true})
	if err != nil || len(r.Beyond) != 1 || !r.Beyond[0].Taken || r.Beyond[0].Which != Front {
		t.Errorf("legs taken under a seat that reaches over the nose: %+v, %v", r.Beyond, err)
	}
}
