package words

import (
	"fmt"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// ForSitters returns the block that says what radius a piece would want for other sitters; none
// where there are none.
func ForSitters(d piece.Design, list []size.ForSitter) []Block {
	if len(list) == 0 {
		return nil
	}
	v := voiceOf(d)
	t := &Table{Caption: "Radius for other sitters", Head: []string{"sitter", "same time", "same steadiness", "same proportion", "rocks as it is", ""}}
	for _, s := range list {
		cells := []string{quantity.Tall(s.Stature, v.units)}
		for _, way := range []size.Way{size.SameTime, size.SameSteadiness, size.SameProportion} {
			k := s.Like.Ways[way]
			text := "–"
			if k.Found {
				text = v.with(k.Design.Rocker.Radius, quantity.Length)
				if len(k.Design.Rocker.Arcs) > 0 {
					text = fmt.Sprintf("all %.0f %%", 100*k.Scale)
				}
			}
			cells = append(cells, text)
		}
		rocks := "no rest"
		if s.Like.New.Period > 0 {
			rocks = fmt.Sprintf("%.2f s", s.Like.New.Period)
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, rocks, "")})
	}
	return []Block{{
		Title: "What radius for another sitter",
		Lines: []Line{{Text: fmt.Sprintf("The radius that keeps what is liked here, %.2f s on %s, when another as stout as the mean sits in this piece and nothing else is changed.", list[0].Like.Old.Period, v.with(list[0].Like.Old.Radius, quantity.Length))}},
		Table: t, All: true,
	}}
}
