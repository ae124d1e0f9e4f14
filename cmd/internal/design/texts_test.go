package design

import "testing"

// FuzzTexts: a title or a name that is taken comes out of the file that is written as it went in, letter by letter; one
// that is not taken is refused in words, never changed.
func FuzzTexts(f *testing.F) {
	for _, text := range []string{`He said "hi"`, `back\slash \" \n`, "Ludwigs Stühlchen — 椅子 🪑", "a\tb", "two\nlines",
		"'", `"""`, "#", "= [x]", "\u202e", "\x1b[31m", "a\u2028b", ""} {
		f.Add(text)
	}
	start, _ := Start("chair")
	f.Fuzz(func(t *testing.T, text string) {
		for _, key := range []string{"title", "sitter.name"} {
			file, err := Parse("chair.toml", start)
			if err != nil {
				t.Fatal(err)
			}
			if err := file.Set(key, text); err != nil {
				continue
			}
			for name, write := range map[string]func() (string, error){
				"new":  file.Filled,
				"size": func() (string, error) { return file.Saved(file.Design) },
			} {
				written, err := write()
				if err != nil {
					t.Fatalf("%s cannot write %s = %q: %v", name, key, text, err)
				}
				again, err := Parse("again.toml", written)
				if err != nil {
					t.Fatalf("%s wrote %s = %q so that it cannot be read: %v\n%s", name, key, text, err, written)
				}
				got := again.Design.Title
				if key != "title" {
					got = again.Design.Sitters[0].Name
				}
				if got != text && !(text == "" && key != "title") { // nobody's name is the usual one
					t.Errorf("%s: %s = %q came out as %q", name, key, text, got)
				}
			}
		}
	})
}
