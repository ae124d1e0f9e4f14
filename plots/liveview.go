package plots

import (
	"fmt"
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/trial"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
)

// A Live is a side view that a page moves, leans and pulls at: the load at rest, and below
// it its righting arm and its tilt in time over the same tilts, with a level line at the
// tilt in which it stands. Lengths are units of the drawing, y down; tilts are degrees from
// as drawn, + back.
//
// Its samples are the motion, or, where it is not let go, all tilts that it can be leaned
// to: then the n-th sample is the tilt First + n·Step.
type Live struct {
	Picture
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
	Along  [2]float64 // the way in which it is pulled, of length 1
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

// leanStep is from one tilt to the next to which a piece is leaned, rad.
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
	v := newLiveView(w)
	live := Live{Handles: v.handles(), Rest: inDegrees(v.rest), First: inDegrees(v.least), Step: inDegrees(leanStep), Tilts: v.tilts()}
	at := poseAt(w.Report.Edge, v.rest, w.Report.Design.Floor.Slope)
	pivot := v.svg(at.place(at.contact))
	live.Pivot = [2]float64{pivot.X, pivot.Y}
	s := v.scene()
	live.Picture = Picture{Name: "live", Alt: s.alt, draw: s.write}
	return live
}

// A liveView is a view being laid out.
type liveView struct {
	frame
	watched     Watched
	moving      ghost
	rest        float64
	least, most float64 // tilts shown
	tilt        func(time float64) float64
	span        float64
}

func newLiveView(w Watched) liveView {
	v := liveView{watched: w, rest: w.Report.Design.Floor.Slope}
	stands := w.Load.Upright()
	if stands {
		v.rest = w.Load.Balance.Rest.Tilt
	}
	v.least, v.most = v.rest-math.Pi/12, v.rest+math.Pi/12
	if arms := w.Load.Righting(); stands && len(arms) > 0 {
		v.least, v.most = min(v.least, arms[0].Tilt), max(v.most, arms[len(arms)-1].Tilt)
	}
	v.least, v.most = max(v.least, -math.Pi/2), min(v.most, math.Pi/2)
	if w.Motion != nil {
		v.tilt, v.span = w.Motion.Whole()
		v.span = min(v.span, mostSampled)
	}
	v.moving = ghost{name: "seated", load: w.Load, tilt: v.rest, colour: ink, wide: 0.6, moves: true}
	v.frame = liveFrame(w, v)
	return v
}

// liveFrame returns the frame of the piece at rest, leaned to both sides and, where it
// moves, in its motion. It grows in steps of a hand, so that the scale stays while a
// measure is pulled a little.
func liveFrame(w Watched, v liveView) frame {
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
	var ghosts []ghost
	for _, tilt := range leaned {
		g := v.moving
		g.tilt = tilt
		ghosts = append(ghosts, g)
	}
	f := frameOf(w.Report, ghosts, room)
	if w.Before != nil {
		g := v.moving
		g.load, g.tilt = w.Before.Load, restOf(w.Before.Load, w.Before.Report)
		other := frameOf(w.Before.Report, []ghost{g}, room)
		f.from = r2.Vec{X: min(f.from.X, other.from.X), Y: min(f.from.Y, other.from.Y)}
		f.to = r2.Vec{X: max(f.to.X, other.to.X), Y: max(f.to.Y, other.to.Y)}
	}
	const hand = 0.1
	f.from.X, f.to.X = math.Floor(f.from.X/hand)*hand, math.Ceil(f.to.X/hand)*hand
	f.to.Y = math.Ceil(f.to.Y/hand) * hand
	size := r2.Sub(f.to, f.from)
	f.scale = min((f.width-2*margin)/size.X, f.high/size.Y)
	if wide := (f.width - 2*margin) / f.scale; wide > size.X {
		f.from.X -= (wide - size.X) / 2
		f.to.X = f.from.X + wide
	}
	f.height = size.Y*f.scale + f.top + f.low
	return f
}

// restOf returns the tilt in which a load is drawn at rest.
func restOf(l *check.Load, r check.Report) float64 {
	if l.Upright() {
		return l.Balance.Rest.Tilt
	}
	return r.Design.Floor.Slope
}

// tilts returns to how many tilts the piece is leaned.
func (v *liveView) tilts() int {
	if v.watched.Motion == nil {
		return 0
	}
	return int((v.most-v.least)/leanStep) + 1
}

// scene lays out the view.
func (v *liveView) scene() scene {
	w := v.watched
	s := scene{width: v.width, height: v.height, title: cut(w.Report.Design.Title, 60), alt: v.alt()}
	s.groups = append(s.groups, v.ground(w.Report))
	if w.Before != nil {
		g := ghost{name: "before", load: w.Before.Load, tilt: restOf(w.Before.Load, w.Before.Report), colour: rgb(140, 140, 140), dash: []float64{1.6, 1.2}, wide: 0.4}
		s.groups = append(s.groups, v.ghost(w.Before.Report, g)...)
	}
	s.groups = append(s.groups, v.ghost(w.Report, v.moving)...)
	marks := v.marks(w.Report, v.moving)
	marks.moves = withContact
	if w.Moving && w.Motion != nil {
		least, most := v.reached()
		s.groups = append(s.groups, v.paths(*w.Motion, least, most)[0])
	}
	s.groups = append(s.groups, marks)
	for _, h := range v.handles() {
		s.groups = append(s.groups, v.handle(h))
	}
	s.groups = append(s.groups, v.ruleAt(w.Report, r2.Vec{X: margin, Y: v.height - 4}))
	p := livePanels(v)
	s.groups = append(s.groups, p.groups()...)
	if v.tilt != nil {
		s.samples = v.written(w.Report, v.rest, v.instants(), func(time, tilt float64) r2.Vec { return p.within(p.time.at(time, tilt)) })
	}
	return s
}

// reached returns the least and the largest tilt of the motion.
func (v *liveView) reached() (least, most float64) {
	least, most = v.rest, v.rest
	for time := 0.0; time <= v.span; time += sampleEvery {
		least, most = min(least, v.tilt(time)), max(most, v.tilt(time))
	}
	return least, most
}

// instants returns what the samples are of: see [Live].
func (v *liveView) instants() []instant {
	var list []instant
	if !v.watched.Moving {
		for i := range v.tilts() {
			list = append(list, instant{0, v.least + float64(i)*leanStep})
		}
		return list
	}
	for i := range max(2, int(v.span/sampleEvery+1e-9)+1) {
		time := float64(i) * sampleEvery
		list = append(list, instant{time, v.tilt(time)})
	}
	return list
}

// alt says what is drawn.
func (v *liveView) alt() string {
	l, d := v.watched.Load, v.watched.Report.Design
	text := "Side view to scale: " + cut(l.Name, 60)
	if !l.Upright() {
		return text + ", as drawn. It does not stand: " + l.Balance.Outcome.String() + "."
	}
	text += " rests at " + sided(v.rest, d)
	if t := l.Balance.Period; !math.IsNaN(t) {
		text += fmt.Sprintf(", a small rock in %.1f s", t)
	}
	for _, m := range []sim.Margin{l.Balance.Back, l.Balance.Forward} {
		if m.Exists() {
			text += ", goes over at " + sided(m.Tip, d)
		}
	}
	return text + "."
}
