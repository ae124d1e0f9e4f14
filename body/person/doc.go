// Package person gives a seated person's mass, centre and inertia from what a tape and a scale say of them.
//
// A person is a planar chain of segments: head and neck, trunk, and both upper arms, forearms, hands, thighs, shanks
// and feet, left and right as one. Each has a share of the mass, a centre along its length and a radius of gyration
// about the left-right axis, by de Leva (1996), J. Biomechanics 29:1223-1230, Table 4; of children the shares of the
// mass are by Jensen (1986, 1989).
//
// [Given] says what was measured; [New] estimates all else from the ANSUR II survey
// (adults) or the CDC growth charts (children) and keeps both apart. [Person.Pose]
// places the chain on a [Seat].
//
// Lengths are m, masses kg, angles rad. In a seat's frame x points forward, y up, and
// an angle above zero leans back, as in package rocker.
package person
