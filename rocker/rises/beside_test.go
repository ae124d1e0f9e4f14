package rises

import (
	"math"
	"math/rand/v2"
	"testing"
)

// circle returns the rises of an arc at stations.
func circle(radius float64, r Row) []float64 {
	list := make([]float64, len(r.Rise))
	for i := range list {
		x := r.at(i)
		list[i] = radius - math.Sqrt(radius*radius-x*x)
	}
	return list
}

// TestBesideCoverage: of rises of the very curve, read with the usual error on a straightedge that stands off and aslant,
// no more than 5 rows in 100 are said not to agree, and of their bend as many as by the normal law.
func TestBesideCoverage(t *testing.T) {
	const draws = 4000
	rng := rand.New(rand.NewPCG(1, 2))
	for _, n := range []int{5, 9, 21} {
		row := Row{Spacing: 0.9 / float64(n), Low: n / 2, Rise: make([]float64, n)}
		curve, more, less := circle(1.1, row), circle(1.1*1.001, row), circle(1.1*0.999, row)
		way := make([]float64, n)
		for i := range way {
			way[i] = (more[i] - less[i]) / 0.002
		}
		agree, straight := 0, 0
		for range draws {
			offset, slope := 0.01*rng.NormFloat64(), 0.01*rng.NormFloat64()
			for i := range row.Rise {
				row.Rise[i] = curve[i] + offset + slope*row.at(i) + UsualError*rng.NormFloat64()
			}
			b, err := row.Against(curve)
			if err != nil {
				t.Fatal(err)
			}
			if b.Agrees() {
				agree++
			}
			if bend := Bent([]Row{row}, [][]float64{curve}, [][]float64{way}); math.Abs(bend.By) <= bend.Uncertain {
				straight++
			}
		}
		// Bonferroni's bound is 95 % or more; four standard errors of a share of 4,000 are 1.4 %
		if share := float64(agree) / draws; share < 0.95-0.014 {
			t.Errorf("%d stations: %.3f agree", n, share)
		}
		if share := float64(straight) / draws; math.Abs(share-0.95) > 0.014 {
			t.Errorf("%d stations: %.3f are not bent", n, share)
		}
	}
}

// TestBesideFindsTheOne: one misread station is the worst wherever it is, by what it was misread, and the others agree; a bend
// is found as large as it is.
func TestBesideFindsTheOne(t *testing.T) {
	row := Row{Spacing: 0.2, Low: 2, Rise: make([]float64, 5)}
	curve := circle(1.1, row)
	for i := range row.Rise {
		copy(row.Rise, curve)
		row.Rise[i] -= 0.004
		b, err := row.Against(curve)
		if err != nil || b.Station != i || math.Abs(b.Off+0.004) > 1e-12 || !b.Others || b.Alone > 1e-12 || b.Agrees() {
			t.Errorf("station %d: %+v, %v", i, b, err)
		}
	}
	way := make([]float64, 5)
	for i, y := range circle(1.1*1.0001, row) {
		way[i] = (y - curve[i]) / 0.0001
	}
	for i := range row.Rise {
		row.Rise[i] = curve[i] + 0.05*way[i] + 0.002 - 0.01*row.at(i)
	}
	if b := Bent([]Row{row}, [][]float64{curve}, [][]float64{way}); math.Abs(b.By-0.05) > 1e-12 || b.Squares > 1e-12 {
		t.Errorf("a bend of 0.05 is %+v", b)
	}
	level := make([]float64, 5)
	if b := Bent([]Row{row}, [][]float64{curve}, [][]float64{level}); !math.IsInf(b.Uncertain, 1) {
		t.Errorf("without a way there is no bend: %+v", b)
	}
	if _, err := (Row{Spacing: 0.2, Low: 1, Rise: curve[:3]}).Against(curve[:3]); err == nil {
		t.Error("three stations are enough")
	}
}
