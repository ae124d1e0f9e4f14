// Package body describes rigid bodies in the plane a chair rocks in, and what they weigh in wood.
//
// A [Body] is a mass, its centre, and its moment of inertia about the left-right
// axis through that centre. Bodies are placed by [Body.Moved] and [Body.Turned] and
// put together by [Join]. The solids ([Box], [Cylinder], [Cone] and the like) are
// uniform and start with the middle of their sizes at the origin; the table of
// [Woods] gives the density that makes a volume a mass.
//
// The frame is the chair's: x points forward, y up, z across the chair along the axis of rocking. Lengths are metres,
// masses kilograms, inertias kg·m², angles radians, positive leaning back: counter-clockwise with the front to the
// right. A mass below zero is a hole. Sizes of solids below zero mean nothing and are not looked for: what comes out
// is no body. NaN and infinities carry through; nothing here panics.
package body
