package piece

// Measured holds raw shop readings of a finished piece. Zero is not read.
type Measured struct {
	Weight float64 // of the whole piece

	Front, Rear float64 // scales under two marks on the floor edge, both marks level
	Apart       float64 // between the marks, straight
	FrontMark   float64 // along the floor edge from the low point forward to the front mark

	Raised                  float64 // the front mark raised against the rear one
	FrontRaised, RearRaised float64 // the scales then

	DowelAhead, DowelAbove float64 // lines on which the piece balances on a dowel

	TenRocks, LetGo             float64 // time of ten rocks there and back, empty; tilt from which it was let go
	RiddenTenRocks, RiddenLetGo float64 // the same with the first sitter in it

	Spacing     float64   // of stations along a straightedge under the rocker
	LowPoint    float64   // which station is the low point, counted from 1 at the nose
	Left, Right []float64 // rises from the straightedge to the floor edge, from the nose
}
