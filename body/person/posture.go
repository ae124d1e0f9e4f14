package person

// A Posture is how a person sits, stands or rides.
type Posture int

const (
	Unsaid         Posture = iota
	Sitting                // at ease: seat bones at the back, shoulders a hand off it, head up
	LyingBack              // trunk along the back, head back
	Perched                // near the front edge, leaning forward, feet drawn back on the floor, about to rise
	Upright                // trunk plumb
	FeetFlat               // as Sitting; the floor carries its share of shanks and feet
	FeetUp                 // as Sitting, shanks stretched out, feet off the floor
	PushingUp              // rising: half of the weight through the hands on the arms, the rest through the feet
	ChildOnLap             // as Sitting, with a child on the thighs
	ArmsBehindHead         // as LyingBack, elbows up, hands behind the head
	Riding                 // astride, feet on the rests, trunk plumb
	RidingForward          // astride, leaning forward
	RidingBack             // astride, leaning back
	postures       int     = iota
)

var postureNames = [postures]string{
	"", "sitting", "lying back", "perched", "upright", "feet flat", "feet up", "pushing up", "child on the lap",
	"arms behind the head", "riding", "leaning forward", "leaning back",
}

// String returns the trade's word for p, "" for Unsaid.
func (p Posture) String() string { return postureNames[p] }

// Postures returns every posture but Unsaid, in order.
func Postures() []Posture {
	list := make([]Posture, 0, postures-1)
	for p := Sitting; int(p) < postures; p++ {
		list = append(list, p)
	}
	return list
}
