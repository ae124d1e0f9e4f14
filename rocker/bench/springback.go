package bench

// Springback returns the part of its bend that a stack of n like strips loses when it comes
// off the form, glued without creep: 1/n².
//
// Derived here. A strip b wide and t thick has the second moment I = b·t³/12. On the form n
// strips are bent freely to the curvature κ, each under E·I·κ, together n·E·I·κ. Glued, they
// are one bar of b·(n·t)³/12 = n³·I. Off the form nothing holds their moment, so the bar bends
// back by n·E·I·κ/(E·n³·I) = κ/n². All strips are taken at one curvature, that of the middle of
// the stack. Common practice says the same. Zero strips lose all of it.
func Springback(strips int) float64 {
	if strips < 1 {
		return 1
	}
	return 1 / float64(strips*strips)
}
