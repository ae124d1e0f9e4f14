// Package bench turns a rocker and its legs into what the bench needs.
package bench
