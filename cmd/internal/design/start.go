package design

import (
	"embed"
	"fmt"
	"slices"
	"strings"
)

//go:embed start/*.toml
var startFiles embed.FS

// Starts returns the names of the starting designs.
func Starts() []string { return []string{"chair", "child", "settee", "cradle", "horse"} }

// Start returns the text of a starting design by its name. The error lists the names.
func Start(name string) (string, error) {
	for _, s := range Starts() {
		if slices.Contains([]string{s, s + "'s", s + "s"}, strings.ToLower(name)) {
			data, err := startFiles.ReadFile("start/" + s + ".toml")
			return string(data), err
		}
	}
	return "", fmt.Errorf("there is no starting design %q; there are %s", name, strings.Join(Starts(), ", "))
}

// BuiltInName is what messages call the design that is taken where none is named.
const BuiltInName = "built-in example"

// BuiltIn returns the design that is taken where none is named.
func BuiltIn() (*File, error) {
	text, _ := Start("chair")
	return Parse(BuiltInName, text)
}
