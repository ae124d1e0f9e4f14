// Package locate finds where each key and each value stands in a TOML text. It does not
// judge the text: that is done by a TOML library, whose own positions are kept by the
// name of a key, so that of several tables of one name it knows only the last.
package locate
