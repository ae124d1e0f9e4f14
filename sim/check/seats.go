package check

import (
	"cmp"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
)

// A seated is one load to be: who is on the piece, and where.
type seated struct {
	name     string
	sitter   string
	role     piece.Role
	posture  person.Posture
	body     body.Body
	figures  []person.Joints // to draw the person from
	standing float64         // mass that the floor carries, kg
	onRocker bool            // body and figures are in the rocker frame, not in the seat frame
	people   []somebody      // who are posed, side by side
}

// seats returns everything that rides on the piece and is wanted, load by load: the design's
// sitters in file order, then the usual others and the hazards.
func seats(d piece.Design, people []somebody, edge rocker.Profile, wanted wanted) ([]seated, error) {
	list := make([]seated, 0, 3*len(d.Sitters)+3*len(people))
	next := 0
	for _, s := range sitters(d) {
		if s.Lies(d) {
			list = append(list, lain(d, s.Name, s.Name, s.Role, infantOf(s), s.Sitting.Ahead))
			continue
		}
		if !s.BySizes() {
			list = append(list, placed(s, d.Seat.Meet())...)
			continue
		}
		if s.Role == piece.Owner && d.Traits().ForTwo {
			next++
			continue // two sit together, below
		}
		list = posed(d, list, people[next], wanted)
		next++
	}
	if d.Traits().ForTwo {
		list = together(d, list, people[:next], wanted)
	}
	for _, one := range people[next:] {
		list = posed(d, list, one, wanted)
	}
	list = append(list, infants(d)...)
	if wanted(piece.Hazard, person.Unsaid) && d.Checks(piece.ChildOnTheTail) && d.Seat.SlopeKnown() && len(people) > 0 {
		tail, err := onTheTail(d, edge)
		if err != nil {
			return nil, err
		}
		list = append(list, tail...)
	}
	return list, nil
}

// wanted says which loads are, by role and posture.
type wanted func(role piece.Role, posture person.Posture) bool

// everyLoad leaves none out.
func everyLoad(piece.Role, person.Posture) bool { return true }

// posed appends somebody in each posture that is wanted.
func posed(d piece.Design, list []seated, one somebody, wanted wanted) []seated {
	alone := []somebody{one}
	for _, posture := range one.postures {
		if wanted(roleIn(one.role, posture), posture) {
			list = append(list, seat(d, one.name, one.role, posture, alone...))
		}
	}
	return list
}

// roleIn returns for whom a load is checked: who puts the arms behind the head is a hazard.
func roleIn(role piece.Role, posture person.Posture) piece.Role {
	if posture == person.ArmsBehindHead {
		return piece.Hazard
	}
	return role
}

// seat returns people side by side in one posture, on a stiff back.
func seat(d piece.Design, name string, role piece.Role, posture person.Posture, people ...somebody) seated {
	s := seated{name: name + ", " + posture.String(), sitter: name, role: roleIn(role, posture), posture: posture, people: people}
	s.pose(d, 0)
	return s
}

// pose places the people, the back having given way by an angle, rad.
func (s *seated) pose(d piece.Design, give float64) {
	s.body, s.standing, s.figures = body.Body{}, 0, s.figures[:0]
	for _, one := range s.people {
		pose := one.person.Pose(seatOf(d, give), s.posture)
		s.body = body.Join(s.body, pose.Body)
		s.standing += pose.Standing
		s.figures = append(s.figures, pose.Joints)
	}
	if s.posture != person.ChildOnLap {
		return
	}
	if child, err := person.New(person.Given{Age: cmp.Or(d.People.Lap, piece.OnTheLap)}); err == nil {
		lap := child.Pose(s.people[0].person.Lap(s.figures[0]), person.LyingBack)
		s.body = body.Join(s.body, lap.Body)
		s.figures = append(s.figures, lap.Joints)
	}
}

// together appends two owners side by side on a settee, and one of them at its end, as far as
// is wanted. One sitter given alone has a companion alike. Which end makes no difference to
// the rock.
func together(d piece.Design, list []seated, people []somebody, wanted wanted) []seated {
	var owners []somebody
	for _, one := range people {
		if one.role == piece.Owner {
			owners = append(owners, one)
		}
	}
	if len(owners) == 0 {
		return list
	}
	first, second := owners[0], owners[min(1, len(owners)-1)]
	for _, posture := range first.postures {
		if wanted(roleIn(piece.Owner, posture), posture) {
			list = append(list, seat(d, "both", piece.Owner, posture, first, second))
		}
	}
	if d.Checks(piece.OneAtTheEnd) {
		for _, posture := range []person.Posture{person.Sitting, person.LyingBack} {
			list = append(list, seat(d, piece.OneAtTheEnd.String(), piece.Owner, posture, first))
		}
	}
	return list
}

// onTheTail returns a child of 6 standing at the tail tip of the empty piece, read two
// ways: its weight acts at the feet; it holds on to the back and moves with it.
func onTheTail(d piece.Design, edge rocker.Profile) ([]seated, error) {
	child, err := person.New(person.Given{Age: piece.OnTheTail})
	if err != nil {
		return nil, err
	}
	feet := r2.Add(edge.Tail(), r2.Vec{Y: d.Rocker.DepthOr()})
	rigid, joints := child.Standing(feet)
	one := seated{sitter: piece.ChildOnTheTail.String(), role: piece.Hazard, figures: []person.Joints{joints}, onRocker: true}
	light, holding := one, one
	light.name, light.body = one.sitter, body.Body{Mass: rigid.Mass, Centre: feet}
	holding.name, holding.body = one.sitter+", holding the back", rigid
	return []seated{light, holding}, nil
}

// infants returns the infants of a cradle, at birth and at five months: where it rocks
// end to end at the foot, in the middle and at the head, where it rocks sideways in the
// middle and rolled to either side (how far up it lies makes no difference then).
func infants(d piece.Design) []seated {
	var list []seated
	for _, u := range []struct {
		who piece.Usual
		age float64
	}{{piece.Newborn, 0}, {piece.FiveMonths, 5.0 / 12}} {
		if !d.Checks(u.who) || !d.Bed.Drawn() {
			continue
		}
		infant := person.NewInfant(person.Either, u.age, 50)
		room := (d.Bed.Width - 2*infant.Radius) / 2
		places := [...]string{"in the middle", "at the right side", "at the left side"}
		if !d.Ways().Across {
			room = (d.Bed.Length - infant.Length) / 2
			places = [...]string{"in the middle", "at the foot", "at the head"}
		}
		for i, x := range []float64{0, max(0, room), -max(0, room)} {
			list = append(list, lain(d, u.who.String()+", "+places[i], u.who.String(), piece.Owner, infant, x))
		}
	}
	return list
}

// lain returns an infant on the bed, so far ahead of its middle: along its length in a
// cradle that rocks end to end, across it in one that rocks sideways.
func lain(d piece.Design, name, sitter string, role piece.Role, infant person.Infant, ahead float64) seated {
	inertia := infant.Along
	if !d.Ways().Across {
		inertia = infant.Across
	}
	at := r2.Vec{X: ahead, Y: d.Bed.Height + infant.Radius}
	return seated{name: name, sitter: sitter, role: role, body: body.Body{Mass: infant.Mass, Centre: at, Inertia: inertia}}
}

// infantOf returns the sitter as an infant: by the growth charts for its age, with the weight
// and length that were given.
func infantOf(s piece.Sitter) person.Infant {
	usual := person.NewInfant(s.Person.Sex, s.Person.Age, s.Person.Percentile)
	return person.Capsule(cmp.Or(s.Mass, usual.Mass), cmp.Or(s.Person.Sizes[person.Stature], usual.Length))
}

// leans reports whether the load bears on a back that gives.
func (s seated) leans(d piece.Design) bool {
	return d.Back.Braces.Drawn() && len(s.people) > 0 && (s.posture == person.LyingBack || s.posture == person.ArmsBehindHead)
}
