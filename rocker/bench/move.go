package bench

import "gonum.org/v1/gonum/spatial/r2"

// each returns the path with every point put elsewhere and every turn multiplied by turn.
func (p Path) each(turn float64, put func(r2.Vec) r2.Vec) Path {
	moved := Path{Start: put(p.Start), Closed: p.Closed}
	for _, s := range p.Strokes {
		moved.Strokes = append(moved.Strokes, Stroke{put(s.To), turn * s.Turn})
	}
	return moved
}

// Placed returns the path with every point put elsewhere by turning, moving and scaling alike.
func (p Path) Placed(put func(r2.Vec) r2.Vec) Path { return p.each(1, put) }

// Moved returns the path moved by the given way, m.
func (p Path) Moved(by r2.Vec) Path {
	return p.Placed(func(q r2.Vec) r2.Vec { return r2.Add(q, by) })
}

// Turned returns the path turned counter-clockwise by an angle (rad) about a point (m).
func (p Path) Turned(angle float64, about r2.Vec) Path {
	return p.Placed(func(q r2.Vec) r2.Vec { return r2.Rotate(q, angle, about) })
}

// Mirrored returns the path mirrored at the upright line through x (m). It runs the other
// way round, so that its area changes its sign.
func (p Path) Mirrored(x float64) Path {
	return p.each(-1, func(q r2.Vec) r2.Vec { return r2.Vec{X: 2*x - q.X, Y: q.Y} })
}

// Reversed returns the path walked from its end to its start.
func (p Path) Reversed() Path {
	back := pathOf(backwards(p.Pieces()), p.Closed)
	back.Start = p.End()
	return back
}
