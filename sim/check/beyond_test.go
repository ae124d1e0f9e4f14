package check

import (
	"math"
	"testing"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestBeyond: the top edge of a concentric rocker with square ends ends on the radius through the tip,
// at (R − depth) sin(length/R); a leg further out stands beyond it by the rest.
func TestBeyond(t *testing.T) {
	d := readingChair()
	d.Rocker.Depth, d.Rocker.Width = 2*quantity.In, quantity.In
	end := func(length float64) float64 {
		return (d.Rocker.Radius - d.Rocker.Depth) * math.Sin(length/d.Rocker.Radius)
	}
	for _, tt := range []struct {
		front, rear float64
		want        []piece.Beyond
	}{
		{6 * quantity.In, -8 * quantity.In, nil},
		{end(d.Rocker.Nose) - 0.001, -end(d.Rocker.Tail) + 0.001, nil},
		{end(d.Rocker.Nose) + 0.003, -8 * quantity.In, []piece.Beyond{{Which: piece.Front, By: 0.003}}},
		{6 * quantity.In, -end(d.Rocker.Tail) - 0.002, []piece.Beyond{{Which: piece.Rear, Tail: true, By: 0.002}}},
	} {
		d.Legs = []piece.Leg{{Which: piece.Front, At: tt.front}, {Which: piece.Rear, At: tt.rear}}
		r, err := Check(d)
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
	d.Rocker.Nose = 5.875 * quantity.In
	r, err := Check(d)
	if err != nil || len(r.Beyond) != 1 || !r.Beyond[0].Taken || r.Beyond[0].Which != piece.Front {
		t.Errorf("legs taken under a seat that reaches over the nose: %+v, %v", r.Beyond, err)
	}
}
