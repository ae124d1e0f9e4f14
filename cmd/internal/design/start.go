package design

import (
	"embed"
	"strings"
)

//go:embed start/*.toml
var startFiles embed.FS

// Starts returns the names of the starting designs.
func Starts() []string { return []string{"chair", "child", "settee", "cradle", "horse"} }

// Start returns the text of a starting design by its name, and whether there is one.
func Start(name string) (text string, found bool) {
	name = strings.ToLower(name)
	for _, s := range Starts() {
		if s != name && name != s+"'s" && name != s+"s" {
			continue
		}
		data, err := startFiles.ReadFile("start/" + s + ".toml")
		return string(data), err == nil
	}
	return "", false
}

// BuiltInName is what messages call the design that is taken where none is named.
const BuiltInName = "built-in example"

// BuiltIn returns the design that is taken where none is named.
func BuiltIn() (*File, error) {
	text, _ := Start("chair")
	return Parse(BuiltInName, text)
}
