package bench

// Springback returns the part of its bend that a stack of n like strips loses when it comes
// off the form, glued without creep: 1/n².
//
// Derived here: strips of second moment I are bent freely, n of them under a moment n·E·I·κ;
// glued they are one bar of n³·I, which that moment, let go, unbends by n·E·I·κ/(E·n³·I).
// Common practice says the same. Zero strips lose all of it.
func Springback(strips int) float64 {
	if strips < 1 {
		return 1
	}
	return 1 / float64(strips*strips)
}

// FormRadius returns the radius of the form, m, that leaves a stack of n strips at the
// wanted radius: the curvature of the form is the larger by the springback, 1/R =
// (1 − 1/n²)/form. One strip springs back flat, and has none (zero).
func FormRadius(wanted float64, strips int) float64 {
	return wanted * (1 - Springback(strips))
}
