package person

import "fmt"

// A Size is one measure of a person. Heights over the seat are taken sitting on a hard stool.
type Size int

const (
	Stature       Size = iota // floor to top of head, standing without shoes, m
	Mass                      // kg
	KneeCrease                // floor to the crease behind the knee, shoes on, m
	ThighLength               // back of the buttocks to the crease behind the knee, m
	Hips                      // across them where widest, m
	Elbow                     // seat to the underside of the elbow, m
	Shoulder                  // seat to the top of the shoulder, m
	SittingHeight             // seat to the top of the head, sitting tall, m
	Lumbar                    // seat to the deepest of the hollow of the back, m
	sizes         int  = iota
)

// names holds the trade's word of each size, and the anthropometric one.
var names = [sizes]struct{ trade, science string }{
	Stature:       {"height", "stature"},
	Mass:          {"weight", "body mass"},
	KneeCrease:    {"knee crease", "popliteal height"},
	ThighLength:   {"thigh", "buttock-popliteal length"},
	Hips:          {"hips", "hip breadth, sitting"},
	Elbow:         {"elbow", "elbow rest height"},
	Shoulder:      {"shoulder", "acromial height, sitting"},
	SittingHeight: {"sitting height", "sitting height, erect"},
	Lumbar:        {"hollow of the back", "lumbar height"},
}

// Sizes returns every Size, in order.
func Sizes() []Size {
	list := make([]Size, sizes)
	for i := range list {
		list[i] = Size(i)
	}
	return list
}

// String returns the trade's word for s.
func (s Size) String() string { return names[s].trade }

// Science returns the anthropometric name of s.
func (s Size) Science() string { return names[s].science }

// Measures holds one number for each [Size]; zero means not known.
type Measures [sizes]float64

// A Source says where a size of a person comes from.
type Source int

const (
	Estimated      Source = iota // from the height, or the age
	Measured                     // given as such
	Survey                       // the given percentile of a survey
	CommonPractice               // common practice
)

func (s Source) String() string {
	return [...]string{"estimated", "given", "survey", "common practice"}[s]
}

// A SizeError reports a size that no person has, or that does not go with another.
type SizeError struct {
	Size   Size
	Value  float64 // as given, m or kg
	Reason string  // what is wrong, without the value
	Near   float64 // about what was expected, m or kg; zero where that is not known
}

func (e *SizeError) Error() string {
	return fmt.Sprintf("person: %s of %g: %s", e.Size, e.Value, e.Reason)
}
