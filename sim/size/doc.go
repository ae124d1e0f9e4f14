// Package size asks the question of package piece backwards: it varies a design's measures and asks again.
//
// [Like] finds the radius that keeps one thing of a piece that is liked when piece or sitter changes; [Solve] finds
// rockers for what a maker aims for; [WhatIf] says what each measure does and how exactly it must be held; [Study]
// makes many pieces with a shop's errors and counts.
//
// On one arc of radius R on a level floor, H being the height of the balance point at rest,
// k the radius of gyration about it, T the time of a small rock there and back,
//
//	R = H + (k² + H²)(2π/T)²/g
//
// (derived: the small rock's period solved for R). H and k are those at the rest, which moves
// with R, so the equation is solved together with the rest.
//
// SI units and radians throughout.
package size
