package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/wire"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/size"
)

// sizeFor answers which rocker does what a file aims for. It returns errLimit where that
// cannot all be had.
func sizeFor(out io.Writer, file *design.File, flags sizeFlags) error {
	found, err := size.Solve(file.Design, size.Options{Seed: flags.seed})
	if nothing := (*size.NoTargetError)(nil); errors.As(err, &nothing) {
		return fmt.Errorf(`%s aims for nothing. Say under [target] what you want, or type it, for example:
  %s target.one_rock=2.0 target.seat_falls=6
Or name a piece that is liked:
  %s --like old.toml`, file.Name, file.Call("size"), file.Call("size"))
	}
	if err != nil {
		return explained(file, err)
	}
	others := found.Others()
	if flags.write != "" {
		p, err := curveNamed(flags.curve, found, others)
		if err != nil {
			return err
		}
		return save(out, file, p.Design, flags.write)
	}
	switch {
	case flags.json:
		err = wire.Print(out, wire.Sized(file.Design, found, others))
	case flags.text:
		err = words.SizedLetter(file.Design, found, others).Text(out, true, false)
	default:
		take := file.Call("size", "--write", "new.toml")
		err = words.Sized(file.Design, found, others, file.Name, file.Changes, take).Text(out, flags.all, isTerminal(out))
	}
	if err == nil && !found.Take().Met() {
		return errLimit
	}
	return err
}

// curveNamed returns the rocker to save by its name on the command line; without one the one
// to take.
func curveNamed(name string, found size.Solution, others []size.Proposal) (size.Proposal, error) {
	if name == "" {
		return found.Take(), nil
	}
	curves := map[string]size.Curve{"one": size.OneArc, "two": size.TwoArcs, "three": size.ThreeArcs, "flatter": size.FlatterTail, "even": size.EvenTime}
	var there []string
	for _, p := range slices.Concat(found.Proposals, others) {
		if curve, known := curves[name]; known && p.Curve == curve && (curve != size.EvenTime || words.Shown(p)) {
			return p, nil
		}
		there = append(there, strings.Fields(p.Curve.String())[0])
	}
	return size.Proposal{}, fmt.Errorf("there is no rocker %q among those found; there are %s", name, strings.Join(slices.Compact(there), ", "))
}
