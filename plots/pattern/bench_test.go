package pattern

import (
	"io"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// BenchmarkPDF is the cost of a set of sheets: a rocker on letter paper, and a bow of 3 m
// by 1.5 m.
func BenchmarkPDF(b *testing.B) {
	bow := Drawing{Part: "Bow", TipToTip: [2]r2.Vec{{}, {X: 3}}, Items: []Item{
		bowed(3, 0.1, 3),
	}}
	for name, d := range map[string]Drawing{"rocker": sample(), "bow": bow} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if err := d.WritePDF(io.Discard, papers[0], quantity.Inch); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
