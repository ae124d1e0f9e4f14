package main

import (
	"path/filepath"
	"strings"
	"testing"
)

// TestOnlyWhatIsNotDrawnIsTaken: of two sizes that go together a layout says of that one alone which is not in the file
// that it was taken: rockers 2 1/4 in deep and 1 1/4 in wide, arms 0.8 of a seat of 18 in long and 60 mm wide.
func TestOnlyWhatIsNotDrawnIsTaken(t *testing.T) {
	for _, tt := range []struct{ depth, width, long, wide, want string }{
		{"", "", "", "", "rockers 2 1/4 in deep and 1 1/4 in wide; arms 14 3/8 in long and 2 3/8 in wide;"},
		{"2", "", "13", "", "rockers 1 1/4 in wide; arms 2 3/8 in wide;"},
		{"", "1", "", "3", "rockers 2 1/4 in deep; arms 14 3/8 in long;"},
		{"2", "1", "13", "3", "where back and seat meet; rockers glued up"},
	} {
		folder := t.TempDir()
		args := []string{"layout", startIn(t, folder, "chair"), "--paper", "roll 36 in"}
		for key, value := range map[string]string{
			"rocker.depth": tt.depth, "rocker.width": tt.width, "arms.length": tt.long, "arms.width": tt.wide,
		} {
			if value != "" {
				args = append(args, key+"="+value)
			}
		}
		_, taken, _ := strings.Cut(command(t, args...), "NOT DRAWN, SO TAKEN: ")
		cards := flat(reader(t, "pdftotext", "-layout", filepath.Join(folder, "chair-layout", "1 bench card.pdf"), "-"))
		for where, said := range map[string]string{"printed": taken, "cards": cards} {
			if !strings.Contains(said, tt.want) {
				t.Errorf("%+v: %s: %s", tt, where, taken)
			}
		}
	}
}
