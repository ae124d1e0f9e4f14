package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"rockerwright/validation"
)

// TestProof holds that proof prints every case with its source and exits 0, that a filter
// keeps only what it names, and that a miss exits 1.
func TestProof(t *testing.T) {
	var out, errs bytes.Buffer
	if code := run([]string{"proof"}, &out, &errs); code != allHold {
		t.Fatalf("exit %d: %s", code, &errs)
	}
	text := strings.Join(strings.Fields(out.String()), " ")
	for _, c := range validation.Cases() {
		if !strings.Contains(text, c.Name) || !strings.Contains(text, strings.Join(strings.Fields(c.Source), " ")) {
			t.Errorf("%s/%s is not printed with its source", c.Group, c.Name)
		}
	}
	out.Reset()
	if code := run([]string{"proof", "Housner", "block"}, &out, &errs); code != allHold ||
		strings.Contains(out.String(), "PENDULUM") || !strings.Contains(out.String(), "BLOCK") {
		t.Errorf("filtered: exit %d\n%s", code, &out)
	}
	out.Reset()
	var rows []struct {
		Group, Name string
		Holds       bool
	}
	if code := run([]string{"proof", "--json"}, &out, &errs); code != allHold ||
		json.Unmarshal(out.Bytes(), &rows) != nil || len(rows) != len(validation.Cases()) {
		t.Errorf("json: exit %d, %d rows", code, len(rows))
	}
	errs.Reset()
	if code := run([]string{"proof", "astrology"}, &out, &errs); code != noAnswer || !strings.Contains(errs.String(), "no case has") {
		t.Errorf("a filter of nothing: exit %d, %s", code, &errs)
	}
	miss := proven{validation.Case{Group: "g", Name: "n", Want: 1, Unit: "s", Source: "s", Accuracy: 1e-9}, 1.1, errors.New("off")}
	out.Reset()
	if err := proofSheet([]proven{miss}).Text(&out, true, false); err != nil || !strings.Contains(out.String(), "1 of 1 cases MISS") {
		t.Errorf("a miss reads %q, %v", out.String(), err)
	}
	if table := proofTable([]proven{miss}); !strings.Contains(table, "1 MISS") {
		t.Errorf("a miss in the table: %s", table)
	}
}
