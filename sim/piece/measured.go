package piece

// Measured holds raw shop readings of a finished piece. Zero is not read, unless Zero
// names it.
type Measured struct {
	Weight    float64 // of the whole piece
	ScaleStep float64 // the smallest step that the scales show; zero means 0.2 kg, about half a pound

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

	Zero []string // the readings that are truly 0, by the last part of their keys: "dowel_ahead"
}

// Weighed reports whether the readings say what the piece weighs.
func (m Measured) Weighed() bool { return m.Weight > 0 || m.Front > 0 || m.Rear > 0 }

// curved reports whether the readings say how the rockers are curved.
func (m Measured) curved() bool { return len(m.Left) > 0 || len(m.Right) > 0 }
