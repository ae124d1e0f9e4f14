// Package quantity reads and writes a number with its unit as the trade does:
// "17 1/2 in", "3' 6", "17½", and as programs do: "1e-05 m".
//
// Values are SI: m, rad, kg, kg·m², s, N, N·m, m/s², kg/m³; a ratio is a plain number.
// It is the only package that knows inches.
package quantity
