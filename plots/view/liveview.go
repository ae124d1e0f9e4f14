package view

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/trial"
)

// A Live is a side view that a page moves, leans and pulls at: the load at rest, and below it its righting arm and
// its tilt in time over the same tilts, with a level line at the tilt in which it stands. Lengths are units of the
// drawing, y down; tilts are degrees from as drawn, + back.
//
// Its samples are the motion or, where it is not let go, all tilts it can be leaned to: the n-th is First + n·Step.
type Live struct {
	scene.Picture
	Handles     []Handle
	Pivot       [2]float64 // where the load touches the floor at rest
	Rest        float64
	First, Step float64
	Tilts       int // how many tilts there are; 0 where the load does not stand
}

// A Handle is a place of the picture that a maker pulls to change a measure.
type Handle struct {
	Name   string     // of its group, "handle-" in front
	At     [2]float64 // where it stands
	Along  [2]float64 // the direction in which it is pulled, of length 1
	Metres float64    // that one unit along it stands for
}

// What is drawn, mm.
const (
	liveWide   = 178.0
	liveNarrow = 84.0 // of a phone, so that its letters are read
	liveHigh   = 104.0
	liveTop    = 5.0
	liveLow    = panelFoot + livePanel + 15
	livePanel  = 34.0
	panelFoot  = 11.0
)

// leanStep is how far apart the tilts are to which a piece is leaned, rad.
const leanStep = math.Pi / 360

// A Watched is what a live view shows.
type Watched struct {
	Report check.Report
	Load   *check.Load
	Motion *trial.Rocking // whose tilt in time is drawn; nil where the load does not stand
	Moving bool           // the samples are of the motion
	Narrow bool           // for a phone
	Before *Watched       // drawn in grey behind it; nil for none
}

// LiveView draws what is watched.
func LiveView(w Watched) Live {
	v := liveView{watched: w, rest: w.rest()}
	v.pose = poseAt(w.Report, v.rest)
	v.least, v.most = v.rest-math.Pi/12, v.rest+math.Pi/12
	if arms := w.Load.Righting(); w.Load.Upright() && len(arms) > 0 {
		v.least, v.most = min(v.least, arms[0].Tilt), max(v.most, arms[len(arms)-1].Tilt)
	}
	v.least, v.most = max(v.least, -math.Pi/2), min(v.most, math.Pi/2)
	if w.Motion != nil {
		v.tilt, v.span = w.Motion.Whole()
		v.span = min(v.span, mostSampled)
	}
	v.moving = ghost{name: "seated", load: w.Load, tilt: v.rest, Pen: seatedPen, moves: true}
	v.frame = v.room()
	v.setCharts()
	pivot := v.svg(v.place(v.contact))
	return Live{Picture: scene.Picture{Name: "live", Scene: v.lay()}, Handles: v.handles(),
		Pivot: [2]float64{pivot.X, pivot.Y},
		Rest:  inDegrees(v.rest), First: inDegrees(v.least), Step: inDegrees(leanStep), Tilts: v.tilts()}
}

// A liveView is a view being laid out.
type liveView struct {
	frame
	pose        // at rest
	watched     Watched
	moving      ghost
	rest        float64
	least, most float64 // tilts shown
	tilt        func(time float64) float64
	span        float64
	arm, time   panel // the small charts under it
}

// rest returns the tilt in which the load is drawn at rest.
func (w Watched) rest() float64 {
	if w.Load.Upright() {
		return w.Load.Balance.Rest.Tilt
	}
	return w.Report.Design.Floor.Slope
}

// room returns the frame of the piece at rest, leaned to both sides and, where it moves, in its motion. It grows in
// steps of a hand, so that the scale stays while a measure is pulled a little.
func (v *liveView) room() frame {
	w := v.watched
	room := area{width: liveWide, high: liveHigh, top: liveTop, low: liveLow}
	if w.Narrow {
		room.width, room.narrow = liveNarrow, true
	}
	leaned := []float64{v.rest, v.rest - math.Pi/9, v.rest + math.Pi/9}
	if w.Moving && v.tilt != nil {
		for time := 0.0; time < v.span; time += 0.1 {
			leaned = append(leaned, v.tilt(time))
		}
		leaned = append(leaned, v.tilt(v.span))
	}
	ghosts := make([]ghost, len(leaned))
	for i, tilt := range leaned {
		ghosts[i] = v.moving
		ghosts[i].tilt = tilt
	}
	f := frameOf(w.Report, ghosts, room)
	if b := w.Before; b != nil {
		other := frameOf(b.Report, []ghost{{load: b.Load, tilt: b.rest()}}, room)
		f.include(other.from, other.to)
	}
	const hand = 0.1
	f.from.X, f.to.X = math.Floor(f.from.X/hand)*hand, math.Ceil(f.to.X/hand)*hand
	f.to.Y = math.Ceil(f.to.Y/hand) * hand
	f.fit()
	return f
}

// tilts returns how many tilts there are to lean the piece to.
func (v *liveView) tilts() int {
	if v.watched.Motion == nil {
		return 0
	}
	return int((v.most-v.least)/leanStep) + 1
}

func (v *liveView) lay() scene.Scene {
	w := v.watched
	s := v.standing(w.Report)
	s.Alt = v.alt()
	if b := w.Before; b != nil {
		s.Add(v.ghost(b.Report, ghost{name: "before", load: b.Load, tilt: b.rest(), Pen: beforePen})...)
	}
	s.Add(v.ghost(w.Report, v.moving)...)
	if w.Moving && w.Motion != nil {
		least, most := between(append(sampled(v.span, v.tilt), instant{tilt: v.rest}))
		s.Add(v.paths(*w.Motion, least, most)[0])
	}
	marks := v.marks(w.Report, v.moving)
	marks.Moves = scene.WithContact
	s.Add(marks)
	for _, h := range v.handles() {
		s.Add(v.handle(h))
	}
	s.Add(v.rule(w.Report, v.height-4))
	s.Add(v.charts()...)
	if v.tilt != nil {
		s.Samples = v.written(w.Report, v.moving, v.instants(), v.within)
	}
	return s
}

// instants returns what the samples are of: see [Live].
func (v *liveView) instants() []instant {
	if v.watched.Moving {
		return sampled(max(v.span, sampleEvery), v.tilt)
	}
	var list []instant
	for i := range v.tilts() {
		list = append(list, instant{0, v.least + float64(i)*leanStep})
	}
	return list
}

func (v *liveView) alt() string {
	l, d := v.watched.Load, v.watched.Report.Design
	text := "Side view to scale: " + scene.Cut(l.Name, 60)
	if !l.Upright() {
		return text + ", as drawn. It does not stand: " + l.Balance.Outcome.String() + "."
	}
	text += " rests at " + sided(v.rest, d) + smallRock(l)
	for _, m := range margins(l) {
		text += ", goes over at " + sided(m.Tip, d)
	}
	return text + "."
}

// margins returns how far a load that stands is from going over, back and forward, where it can.
func margins(l *check.Load) []sim.Margin {
	var list []sim.Margin
	both := []sim.Margin{l.Balance.Back, l.Balance.Forward}
	if len(l.Legs) > 0 { // forward is said of feet off the floor
		both = []sim.Margin{l.Back}
	}
	for _, m := range both {
		if l.Upright() && m.Exists() {
			list = append(list, m)
		}
	}
	return list
}

// handles returns what can be pulled: both tips and the low point; nothing of an edge that was measured.
func (v *liveView) handles() []Handle {
	r := v.watched.Report
	edge := r.Edge.Outline(0.0002)
	if len(edge) < 2 || r.Curve != nil {
		return nil
	}
	handle := func(name string, p, along r2.Vec) Handle {
		const little = 1e-4 // m
		at := v.svg(v.place(p))
		run := r2.Sub(v.svg(v.place(r2.Add(p, r2.Scale(little, along)))), at)
		length := r2.Norm(run)
		return Handle{name, [2]float64{at.X, at.Y}, [2]float64{run.X / length, run.Y / length}, little / length}
	}
	tip := func(name string, at, before r2.Vec) Handle { return handle(name, at, r2.Unit(r2.Sub(at, before))) }
	n := len(edge)
	return []Handle{tip("nose", edge[0], edge[1]), tip("tail", edge[n-1], edge[n-2]), handle("low", r2.Vec{}, r2.Vec{X: 1})}
}

// handle draws a handle: a ring, and around it a larger one that is not seen but felt.
func (v *liveView) handle(h Handle) scene.Group {
	at := r2.Vec{X: h.At[0], Y: v.height - h.At[1]}
	seen := scene.Pen{Colour: scene.Blue, Width: 0.7}.Ring(at, 1.9).Filled(scene.White)
	return scene.Group{Name: "handle-" + h.Name, Moves: scene.WithPiece,
		Shapes: []scene.Shape{scene.Pen{}.Ring(at, 6), seen}}
}
