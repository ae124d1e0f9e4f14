package words

import (
	"math"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A voice speaks of one design: in its units, and with the words for its kind.
type voice struct {
	units quantity.System
	kind  piece.Kind
	rocks piece.Direction
}

func voiceOf(d piece.Design) voice { return voice{d.Units, d.Kind, d.Rocks} }

// sideways reports whether the piece is a cradle that rocks from side to side, of
// which one says left and right.
func (v voice) sideways() bool { return v.kind == piece.Cradle && v.rocks == piece.Side }

func (v voice) backwards() string {
	switch {
	case v.sideways():
		return "to the left"
	case v.kind == piece.Cradle:
		return "to the head"
	}
	return "back"
}

func (v voice) forwards() string {
	switch {
	case v.sideways():
		return "to the right"
	case v.kind == piece.Cradle:
		return "to the foot"
	}
	return "forward"
}

// inKind returns an outcome or the name of a trial in the words for the kind: a cradle goes over to a side, and
// its rockers have ends to the left and right.
func (v voice) inKind(text string) string {
	if v.kind != piece.Cradle {
		return text
	}
	nose, tail := v.tips()
	return strings.NewReplacer("backwards", v.backwards(), "forwards", v.forwards(), "nose tip", nose+" tip", "tail tip", tail+" tip",
		"to the front", v.forwards(), "sitter leans back", "lies further "+v.backwards()).Replace(text)
}

// ofEnds returns what the two ends are called where no tip follows, the front one first.
func (v voice) ofEnds() (nose, tail string) {
	if nose, tail = v.tips(); v.sideways() {
		return nose + " end", tail + " end"
	}
	return nose, tail
}

// pair returns the words for the two rockers: what lies to the left of who faces the nose lies at the head of a
// cradle that rocks from side to side.
func (v voice) pair() (left, right string) {
	if v.sideways() {
		return "at head", "at foot"
	}
	return "left", "right"
}

// along returns the words for the two ways along a rocker from a place on it, towards the nose and towards the tail.
func (v voice) along() (ahead, behind string) {
	if v.kind == piece.Cradle {
		return v.forwards(), v.backwards()
	}
	return "ahead", "behind"
}

// fromLow says on which side of the low point a station counts, and on which below zero.
func (v voice) fromLow() string {
	if v.kind == piece.Cradle {
		return v.forwardOf("the low point") + " (" + v.backwards() + ", below zero)"
	}
	return "ahead of the low point (behind it, below zero)"
}

// forwardOf says that something lies towards the nose from a place.
func (v voice) forwardOf(place string) string {
	if v.kind == piece.Cradle {
		return "from " + place + ", " + v.forwards()
	}
	return "forward of " + place
}

// marked returns the label of a reading in the words for the kind: a cradle's marks stand as its tips do.
func (v voice) marked(label string) string {
	if v.kind != piece.Cradle {
		return label
	}
	nose, tail := v.tips()
	return strings.NewReplacer("front mark", nose+" mark", "rear mark", tail+" mark", "the rear one", "the "+tail+" one",
		"front raised", nose+" raised", "ahead of the low point", v.forwardOf("the low point")).Replace(label)
}

// rider returns who is at ease in the piece, for a sentence, and what their column is headed.
func (v voice) rider() (who, column string) {
	if v.kind == piece.Cradle {
		return "the first infant", "laden"
	}
	return "the owner at ease", "seated"
}

// tips returns the words for the two ends of a rocker, the front one first.
func (v voice) tips() (nose, tail string) {
	if v.sideways() {
		return "right", "left"
	}
	return "nose", "tail"
}

func (v voice) shop(x float64, kind quantity.Kind) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	return quantity.Shop(x, kind, v.units)
}

func (v voice) with(x float64, kind quantity.Kind) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	return quantity.With(x, kind, v.units)
}

// towards returns an angle with its side, "2 1/2 fwd"; back goes without saying where
// a table says so.
func (v voice) towards(x float64) string {
	text := v.shop(math.Abs(x), quantity.Angle)
	switch {
	case math.IsNaN(x) || text == "0":
		return text
	case v.sideways() && x > 0:
		return text + " left"
	case v.sideways():
		return text + " right"
	case x < 0:
		return text + " fwd"
	}
	return text
}

// piece returns what the piece is called.
func (v voice) piece() string {
	return map[piece.Kind]string{piece.Chair: "chair", piece.Settee: "settee", piece.Cradle: "cradle", piece.Horse: "horse"}[v.kind]
}

// seconds returns a time to a tenth of a second.
func (v voice) seconds(x float64) string { return v.shop(x, quantity.Time) }

// limitName returns what a limit is called after the load's name.
func (v voice) limitName(name string) string {
	switch name {
	case "back_margin":
		return "tilt, going " + v.backwards()
	case "back_lift":
		return "lift, going " + v.backwards()
	case "forward_margin":
		return "tilt, going " + v.forwards()
	case "forward_lift":
		return "lift, going " + v.forwards()
	case "rest_tilt":
		return "tilt at rest"
	}
	return name
}

// upper returns a text in capitals, as labels are.
func upper(text string) string { return strings.ToUpper(text) }
