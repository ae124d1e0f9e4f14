package design

import (
	"math"
	"strings"
	"testing"

	"rockerwright/sim/check"
)

// TestReadingOfZero holds that a reading of 0 is read, in the file and as a change, and
// stays with a copy; that one left out is not; and that 0 where none can be is refused.
func TestReadingOfZero(t *testing.T) {
	measured := strings.Replace(text, "[piece]\nweight = 26", "[measured]\nweight = 26\ndowel_above = 17\ndowel_ahead = 0", 1)
	for name, file := range map[string]func() (*File, error){
		"in the file": func() (*File, error) { return Parse("chair.toml", measured) },
		"in a copy": func() (*File, error) {
			f, err := Parse("chair.toml", measured)
			if err != nil {
				return nil, err
			}
			return f.Clone(), nil
		},
		"as a change": func() (*File, error) {
			f, err := Parse("chair.toml", strings.Replace(measured, "dowel_ahead = 0", "dowel_ahead = 3", 1))
			if err != nil {
				return nil, err
			}
			return f, f.Set("measured.dowel_ahead", "0")
		},
	} {
		f, err := file()
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		found, err := check.Examine(f.Design)
		if err != nil || found.Read.Ahead.Value != 0 || math.Abs(found.Read.Above.Value-17*0.0254) > 1e-12 {
			t.Errorf("%s: %v, %+v", name, err, found.Read)
		}
	}
	f, err := Parse("chair.toml", strings.Replace(measured, "dowel_ahead = 0\n", "", 1))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := check.Examine(f.Design); err == nil || !strings.Contains(err.Error(), "measured.dowel_ahead") {
		t.Errorf("left out: %v", err)
	}
	for _, line := range []string{"dowel_above = 0", "apart = 0", "raised = 0", "ten_rocks = 0", "let_go = 0"} {
		_, err := Parse("chair.toml", strings.Replace(measured, "dowel_ahead = 0", line, 1))
		if line == "dowel_above = 0" {
			_, err = Parse("chair.toml", strings.Replace(measured, "dowel_above = 17", line, 1))
		}
		if err == nil || !strings.Contains(err.Error(), "is more than 0; 0 is not") {
			t.Errorf("%s: %v", line, err)
		}
	}
	scales := strings.Replace(measured, "dowel_ahead = 0", "front = 12\nrear = 14\napart = 24", 1)
	for line, want := range map[string]string{
		"front_mark = 0": "",
		"front_mark = 1": "",
		"":               "measured.front_mark",
	} {
		f, err := Parse("chair.toml", strings.Replace(scales, "apart = 24", "apart = 22\n"+line, 1))
		if err != nil {
			t.Fatal(err)
		}
		_, err = check.Examine(f.Design)
		if want == "" && err != nil || want != "" && (err == nil || !strings.Contains(err.Error(), want)) {
			t.Errorf("%q: %v, want an error of %q", line, err, want)
		}
	}
}
