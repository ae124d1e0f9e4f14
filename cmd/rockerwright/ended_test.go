package main

import (
	"bytes"
	"encoding/json"
	"testing"
)

// TestEndedByInJSON: a program reads what ended each least shove, in the words of the sheet; nothing where none was found.
func TestEndedByInJSON(t *testing.T) {
	ways := map[string]bool{"goes over backwards": true, "goes over forwards": true, "floor lets go": true, "lifts off": true}
	seen := 0
	for _, friction := range []string{"0.2", "50"} {
		var out, errs bytes.Buffer
		run([]string{"rock", "--json", "floor.friction=" + friction}, &out, &errs)
		var got struct {
			Survives []struct {
				Load    string
				Shove   *float64 `json:"shove_n"`
				EndedBy *string  `json:"ended_by"`
			}
		}
		if err := json.Unmarshal(out.Bytes(), &got); err != nil {
			t.Fatalf("%v: %s", err, &errs)
		}
		for _, s := range got.Survives {
			if s.EndedBy == nil || (s.Shove != nil) != ways[*s.EndedBy] || s.Shove == nil && *s.EndedBy != "" {
				t.Errorf("friction %s, %s: a shove of %v is ended by %v", friction, s.Load, s.Shove, s.EndedBy)
			}
			seen++
		}
	}
	if seen == 0 {
		t.Error("no load was pushed")
	}
}
