package papers

import "testing"

// TestSpreadsheetWord: what a spreadsheet takes for a formula, a number or a day is a word.
func TestSpreadsheetWord(t *testing.T) {
	for name, want := range map[string]string{
		"": "", "seat": "seat", "2nd rail": "2nd rail", "3/4": "'3/4", "1-2": "'1-2", "6.4": "'6.4", "12": "'12",
		"=1+1": "'=1+1", "+x": "'+x", "@x": "'@x",
	} {
		if got := spreadsheetWord(name); got != want {
			t.Errorf("%q is written as %q, want %q", name, got, want)
		}
	}
}
