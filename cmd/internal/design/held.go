package design

import (
	"strings"

	"github.com/BurntSushi/toml"

	"rockerwright/sim/quantity"
)

// Held returns what stands for an entry, as a maker reads it: what was changed, else what
// is in the file, a text without its quotes; held is false where neither says anything.
func (f *File) Held(key string) (text string, held bool) {
	for _, name := range []string{key, without1(key), with1(key)} {
		if value, changed := f.changed[name]; changed {
			return value, true
		}
	}
	e, found := f.find(key)
	if !found {
		return "", false
	}
	if !strings.ContainsAny(e.Raw, `"'`) {
		return strings.TrimSpace(e.Raw), true
	}
	if inner := strings.Trim(e.Raw, `"`); !strings.ContainsAny(inner, `"'\`) && len(inner) == len(e.Raw)-2 {
		return inner, true
	}
	var raw struct{ X string }
	if _, err := toml.Decode("X = "+e.Raw, &raw); err == nil {
		return raw.X, true
	}
	return strings.TrimSpace(e.Raw), true
}

// AsTyped returns a value as a maker types it, where that says it to a thousandth of a
// millimetre; else in its SI unit.
func AsTyped(x float64, kind quantity.Kind, units quantity.System) string {
	return typed(x, kind, units)
}
