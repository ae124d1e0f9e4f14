package piece

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
)

// A seated is one load to be: who is on the piece, and where.
type seated struct {
	name     string
	sitter   string
	role     Role
	posture  person.Posture
	body     body.Body
	figures  []person.Joints // to draw the person from
	standing float64         // mass that the floor carries, kg
	onRocker bool            // body and figures are in the rocker frame, not in the seat frame
	people   []somebody      // who are posed, side by side
}

// seats returns everything that rides on the piece and is wanted, load by load: the design's
// sitters in file order, then the usual others and the hazards.
func (d Design) seats(people []somebody, edge rocker.Profile, wanted wanted) ([]seated, error) {
	list := make([]seated, 0, 3*len(d.Sitters)+3*len(people))
	next := 0
	for _, s := range d.sitters() {
		if s.lies(d) {
			list = append(list, d.lain(s.Name, s.Name, s.Role, s.infant(), s.Sitting.Ahead))
			continue
		}
		if !s.bySizes() {
			list = append(list, s.placed(d.Seat.Meet())...)
			continue
		}
		if s.Role == Owner && d.Kind == Settee {
			next++
			continue // two sit together, below
		}
		list = d.posed(list, people[next], wanted)
		next++
	}
	if d.Kind == Settee {
		list = d.together(list, people[:next], wanted)
	}
	for _, one := range people[next:] {
		list = d.posed(list, one, wanted)
	}
	if d.Kind == Cradle && d.Bed.Height > 0 {
		list = append(list, d.infants()...)
	}
	if wanted(Hazard, person.Unsaid) && d.asked(ChildOnTheTail) && d.Seat.level() && (d.Kind == Chair || d.Kind == Settee) && len(people) > 0 {
		tail, err := d.onTheTail(edge)
		if err != nil {
			return nil, err
		}
		list = append(list, tail...)
	}
	return list, nil
}

// wanted says which loads are, by role and posture.
type wanted func(role Role, posture person.Posture) bool

// everyLoad leaves none out.
func everyLoad(Role, person.Posture) bool { return true }

// posed appends somebody in each posture that is wanted.
func (d Design) posed(list []seated, one somebody, wanted wanted) []seated {
	alone := []somebody{one}
	for _, posture := range one.postures {
		if wanted(roleIn(one.role, posture), posture) {
			list = append(list, d.seat(one.name, one.role, posture, alone...))
		}
	}
	return list
}

// roleIn returns for whom a load is checked: who puts the arms behind the head is a hazard.
func roleIn(role Role, posture person.Posture) Role {
	if posture == person.ArmsBehindHead {
		return Hazard
	}
	return role
}

// seat returns people side by side in one posture, on a stiff back.
func (d Design) seat(name string, role Role, posture person.Posture, people ...somebody) seated {
	s := seated{name: name + ", " + posture.String(), sitter: name, role: roleIn(role, posture), posture: posture, people: people}
	s.pose(d, 0)
	return s
}

// pose places the people, the back having given way by an angle, rad.
func (s *seated) pose(d Design, give float64) {
	s.body, s.standing, s.figures = body.Body{}, 0, s.figures[:0]
	for _, one := range s.people {
		pose := one.person.Pose(d.place(give), s.posture)
		s.body = body.Join(s.body, pose.Body)
		s.standing += pose.Standing
		s.figures = append(s.figures, pose.Joints)
	}
	if s.posture != person.ChildOnLap {
		return
	}
	if child, err := person.New(person.Given{Age: or(d.People.Lap, onTheLap)}); err == nil {
		lap := child.Pose(s.people[0].person.Lap(s.figures[0]), person.LyingBack)
		s.body = body.Join(s.body, lap.Body)
		s.figures = append(s.figures, lap.Joints)
	}
}

// together appends two owners side by side on a settee, and one of them at its end, as far as
// is wanted. One sitter given alone has a companion alike. Which end makes no difference to
// the rock.
func (d Design) together(list []seated, people []somebody, wanted wanted) []seated {
	var owners []somebody
	for _, one := range people {
		if one.role == Owner {
			owners = append(owners, one)
		}
	}
	if len(owners) == 0 {
		return list
	}
	first, second := owners[0], owners[min(1, len(owners)-1)]
	for _, posture := range first.postures {
		if wanted(roleIn(Owner, posture), posture) {
			list = append(list, d.seat("both", Owner, posture, first, second))
		}
	}
	if d.asked(OneAtTheEnd) {
		for _, posture := range []person.Posture{person.Sitting, person.LyingBack} {
			list = append(list, d.seat(OneAtTheEnd.String(), Owner, posture, first))
		}
	}
	return list
}

// onTheTail returns a child of 6 standing at the tail tip of the empty piece, read two
// ways: its weight acts at the feet; it holds on to the back and moves with it.
func (d Design) onTheTail(edge rocker.Profile) ([]seated, error) {
	child, err := person.New(person.Given{Age: onTheTail})
	if err != nil {
		return nil, err
	}
	depth, _ := d.Rocker.size()
	feet := r2.Add(edge.Tail(), r2.Vec{Y: depth})
	rigid, joints := child.Standing(feet)
	one := seated{sitter: ChildOnTheTail.String(), role: Hazard, figures: []person.Joints{joints}, onRocker: true}
	light, holding := one, one
	light.name, light.body = one.sitter, body.Body{Mass: rigid.Mass, Centre: feet}
	holding.name, holding.body = one.sitter+", holding the back", rigid
	return []seated{light, holding}, nil
}

// infants returns the infants of a cradle, at birth and at five months: where it rocks
// end to end at the foot, in the middle and at the head, where it rocks sideways in the
// middle and rolled to either side (how far up it lies makes no difference then).
func (d Design) infants() []seated {
	var list []seated
	for _, u := range []struct {
		who Usual
		age float64
	}{{Newborn, 0}, {FiveMonths, 5.0 / 12}} {
		if !d.asked(u.who) {
			continue
		}
		infant := person.NewInfant(person.Either, u.age, 50)
		room := (d.Bed.Width - 2*infant.Radius) / 2
		places := [...]string{"in the middle", "at the right side", "at the left side"}
		if d.Rocks == End {
			room = (d.Bed.Length - infant.Length) / 2
			places = [...]string{"in the middle", "at the foot", "at the head"}
		}
		for i, x := range []float64{0, max(0, room), -max(0, room)} {
			list = append(list, d.lain(u.who.String()+", "+places[i], u.who.String(), Owner, infant, x))
		}
	}
	return list
}

// lain returns an infant on the bed, so far ahead of its middle: along its length in a
// cradle that rocks end to end, across it in one that rocks sideways.
func (d Design) lain(name, sitter string, role Role, infant person.Infant, ahead float64) seated {
	inertia := infant.Along
	if d.Rocks == End {
		inertia = infant.Across
	}
	at := r2.Vec{X: ahead, Y: d.Bed.Height + infant.Radius}
	return seated{name: name, sitter: sitter, role: role, body: body.Body{Mass: infant.Mass, Centre: at, Inertia: inertia}}
}

// infant returns the sitter as an infant: by the growth charts for its age, with the weight
// and length that were given.
func (s Sitter) infant() person.Infant {
	usual := person.NewInfant(s.Person.Sex, s.Person.Age, s.Person.Percentile)
	return person.Capsule(or(s.Mass, usual.Mass), or(s.Person.Sizes[person.Stature], usual.Length))
}

// leans reports whether the load bears on a back that gives.
func (s seated) leans(d Design) bool {
	return d.Back.Braces.drawn() && len(s.people) > 0 && (s.posture == person.LyingBack || s.posture == person.ArmsBehindHead)
}
