package person

// A Posture is how a person sits, stands or rides.
type Posture int

const (
	Unsaid         Posture = iota
	AtEase                 // on the back, trunk and head along it, feet on the floor
	FeetOff                // on the back, knees 20 degrees short of straight, feet off the floor
	Upright                // trunk plumb, off the back, feet on the floor
	Rising                 // near the front edge, leaning forward, feet drawn back on the floor, about to rise
	PushingUp              // half of the weight through the hands on the arms, the rest through the feet
	ChildOnLap             // as AtEase, with a child on the thighs
	ArmsBehindHead         // as AtEase, elbows up, hands behind the head
	Riding                 // astride, feet on the rests, trunk plumb
	RidingForward          // astride, leaning forward
	RidingBack             // astride, leaning back
	postures       int     = iota
)

var postureNames = [postures]string{
	"", "at ease", "feet off", "upright", "rising", "pushing up", "child on the lap", "arms behind the head",
	"riding", "leaning forward", "leaning back",
}

// String returns the trade's word for p, "" for Unsaid.
func (p Posture) String() string { return postureNames[p] }

// Postures returns every posture but Unsaid, in order.
func Postures() []Posture {
	list := make([]Posture, 0, postures-1)
	for p := AtEase; int(p) < postures; p++ {
		list = append(list, p)
	}
	return list
}
