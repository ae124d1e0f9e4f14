// Package validation holds cases with known answers, each with the source of the answer,
// computed through the same public API that the product uses.
//
// Lengths are metres, angles radians, g is the standard 9.80665 m/s².
package validation
