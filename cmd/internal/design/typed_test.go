package design

import "testing"

// TestCall: a call names file and changes as they were typed, in quotes where a terminal needs them; one more change
// takes the place of an earlier one to the same entry.
func TestCall(t *testing.T) {
	built, err := BuiltIn()
	if err != nil {
		t.Fatal(err)
	}
	for _, change := range [][2]string{{"rocker.tail", "20-1/2"}, {"rocker.radius", "40"}} {
		if err := built.Set(change[0], change[1]); err != nil {
			t.Fatal(err)
		}
	}
	mine := built.Clone()
	mine.Name = "my chair.toml"
	for _, tt := range []struct{ got, want string }{
		{built.Call("size"), "rockerwright size rocker.tail=20-1/2 rocker.radius=40"},
		{mine.Call("size", "--like", "it's.toml"),
			`rockerwright size "my chair.toml" rocker.tail=20-1/2 rocker.radius=40 --like "it's.toml"`},
		{mine.CallChanged("rocker.radius", "38,40 in"), `rockerwright check "my chair.toml" rocker.tail=20-1/2 "rocker.radius=38,40 in"`},
		{mine.CallChanged("--all", ""), `rockerwright check "my chair.toml" rocker.tail=20-1/2 rocker.radius=40 --all`},
		{mine.Call("check"), `rockerwright check "my chair.toml" rocker.tail=20-1/2 rocker.radius=40`},
	} {
		if tt.got != tt.want {
			t.Errorf("%s, want %s", tt.got, tt.want)
		}
	}
}
