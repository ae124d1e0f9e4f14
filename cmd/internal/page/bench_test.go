package page

import (
	"context"
	"testing"
)

// BenchmarkSee is one move of a slider, without the network.
func BenchmarkSee(b *testing.B) {
	site := chairSite(b)
	what := ask{Work: work(b, "chair", "rocker.tail=20-1/2"), Form: "x"}
	b.ReportAllocs()
	for b.Loop() {
		if v, err := site.see(context.Background(), what); err != nil || v.Fault != nil {
			b.Fatal(err, v.Fault)
		}
	}
}
