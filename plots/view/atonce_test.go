package view

import (
	"bytes"
	"sync"
	"testing"

	"rockerwright/plots/scene"
	"rockerwright/sim/check"
)

// TestDrawnAtOnce: pictures that are drawn at once, as a server does, are those drawn alone, to the
// byte; the race detector sees whether they share anything.
func TestDrawnAtOnce(t *testing.T) {
	r, err := check.Check(designs()["chair"])
	if err != nil {
		t.Fatal(err)
	}
	drawn := func(p scene.Picture) []byte {
		var b bytes.Buffer
		if err := p.Draw(&b, scene.PDF); err != nil {
			t.Error(err)
		}
		return b.Bytes()
	}
	pictures := Pictures(r)
	pictures = append(pictures, pictures...)
	together := make([][]byte, len(pictures))
	var work sync.WaitGroup
	for i, p := range pictures {
		work.Go(func() { together[i] = drawn(p) })
	}
	work.Wait()
	for i, p := range pictures {
		if alone := drawn(p); len(alone) == 0 || !bytes.Equal(alone, together[i]) {
			t.Errorf("%s: drawn with others it has %d bytes, alone %d, not the same", p.Name, len(together[i]), len(alone))
		}
	}
}
